/** What came of a finding's change is written down, frozen with the date of the data. */
import { useState } from 'preact/hooks';
import {
  changeVerdicts,
  type ChangeVerdict,
  type Finding,
  type RecordId,
} from '../../../core/records/index.ts';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { d, t, terms } from '../../words/index.ts';
import { outcomeOf } from '../../words/say-change.ts';
import { useWork } from '../desk-state.ts';
import { saveFromForm, SelectField, SmallForm } from '../form-parts.tsx';
import { speakerOf } from '../speaker.ts';
import type { FindingProps } from './finding-props.ts';
import { LinesField, linesOf } from './lines-field.tsx';

/** The rounds that can show what came of a finding. */
export const laterRounds = ({ rounds }: FindingProps['review'], finding: Finding) => {
  const shownBy = rounds.find(({ id }) => id === finding.round);
  return rounds.filter(({ order }) => order > (shownBy?.order ?? 0));
};

interface FormProps extends FindingProps {
  /** The rounds to choose from. */
  readonly later: ReturnType<typeof laterRounds>;
  readonly close: () => void;
}

/** Begins with what was written before, else with what the comparison of the two rounds proposes. */
export const OutcomeForm = (props: FormProps) => {
  const { review, records, finding } = props;
  const { id } = finding.revision;
  const answer = useWork(
    async (desk) => ({ proposed: await desk.proposeOutcome(review.project.id, id) }),
    records,
    [id],
  );
  if (!answer) return <p class="soft">{t().loading}</p>;
  const { proposed } = answer;
  const begin =
    finding.body.outcome ??
    (proposed &&
      outcomeOf(
        proposed,
        finding.body,
        toInstant(proposed.untilMs),
        settings.value.language,
        speakerOf(props),
      ));
  return <Fields {...props} begin={begin} />;
};

const Fields = (props: FormProps & { readonly begin: Finding['outcome'] | null }) => {
  const { review, finding, begin, later, close } = props;
  const { body, revision } = finding;
  const words = d().report;
  const [round, setRound] = useState<RecordId | ''>(
    begin?.round ?? body.carriedBy ?? later[0]?.id ?? '',
  );
  const [verdict, setVerdict] = useState<ChangeVerdict>(begin?.verdict ?? 'too-little');
  const [lines, setLines] = useState((begin?.lines ?? []).join('\n'));
  return (
    <SmallForm
      save={async () => {
        if (round === '') return `${words.board.outcomeRound}: ${d().missing}`;
        if (linesOf(lines).length === 0) return words.board.missing;
        const saved = await saveFromForm(
          'finding',
          {
            ...body,
            outcome: {
              round,
              verdict,
              until: toInstant(review.nowMs),
              lines: linesOf(lines),
              // Words that were there before are in the language that they were written in, known or not.
              ...(begin
                ? begin.language !== undefined && { language: begin.language }
                : { language: settings.value.language }),
            },
          },
          revision.id,
        );
        if (typeof saved === 'string') return saved;
        close();
        return null;
      }}
    >
      <div class="field-row">
        <SelectField
          label={words.board.outcomeRound}
          value={round}
          options={later.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={setRound}
        />
        <SelectField
          label={words.board.verdict}
          value={verdict}
          options={changeVerdicts.map((value) => ({
            value,
            label: terms().changeVerdicts[value].name,
          }))}
          onChange={setVerdict}
        />
      </div>
      <LinesField label={words.board.outcomeLines} value={lines} onInput={setLines} />
    </SmallForm>
  );
};

/** What came of a finding's change is written down, frozen with the date of the data. */
import { useState } from 'preact/hooks';
import {
  changeVerdicts,
  type ChangeVerdict,
  type Finding,
  type RecordId,
} from '../../../core/records/index.ts';
import { toInstant } from '../../parts/instant.ts';
import { d, terms } from '../../words/index.ts';
import { saveRecord, SelectField, SmallForm } from '../form-parts.tsx';
import type { FindingProps } from './finding-props.ts';
import { LinesField, linesOf } from './lines-field.tsx';

/** What a comparison of rounds says of the change; the lead may write otherwise. */
export interface ProposedOutcome {
  readonly round: RecordId;
  readonly verdict: ChangeVerdict;
  readonly lines: readonly string[];
}

/** The rounds that can show what came of a finding. */
export const laterRounds = ({ rounds }: FindingProps['review'], finding: Finding) => {
  const shownBy = rounds.find(({ id }) => id === finding.round);
  return rounds.filter(({ order }) => order > (shownBy?.order ?? 0));
};

/**
 * @param props.proposed what the form begins with, where something was compared
 * @param props.later the rounds to choose from
 */
export const OutcomeForm = (
  props: FindingProps & {
    readonly proposed?: ProposedOutcome;
    readonly later: ReturnType<typeof laterRounds>;
    readonly close: () => void;
  },
) => {
  const { review, finding, proposed, later, close } = props;
  const { body, revision } = finding;
  const words = d().report;
  const before = proposed ?? body.outcome;
  const [round, setRound] = useState<RecordId | ''>(
    before?.round ?? body.carriedBy ?? later[0]?.id ?? '',
  );
  const [verdict, setVerdict] = useState<ChangeVerdict>(before?.verdict ?? 'too-little');
  const [lines, setLines] = useState((before?.lines ?? []).join('\n'));
  return (
    <SmallForm
      save={async () => {
        if (round === '') return `${words.board.outcomeRound}: ${d().missing}`;
        if (linesOf(lines).length === 0) return words.board.missing;
        const saved = await saveRecord(
          'finding',
          {
            ...body,
            outcome: { round, verdict, until: toInstant(review.nowMs), lines: linesOf(lines) },
          },
          revision.id,
        );
        if (!saved) return d().trouble;
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

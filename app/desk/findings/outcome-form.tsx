/** What came of a finding's change is written down, frozen with the date of the data. */
import { useState } from 'preact/hooks';
import { changeVerdicts, type Finding } from '../../../core/records/index.ts';
import { carriersOf, draftOfOutcome, readOutcome } from '../../drafts/finding.ts';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { d, t, terms } from '../../words/index.ts';
import { outcomeOf } from '../../words/say-change.ts';
import { useWork } from '../desk-state.ts';
import { saveFromForm, SelectField, SmallForm } from '../parts/form-parts.tsx';
import { speakerOf } from '../parts/speaker.ts';
import type { FindingProps } from './finding-props.ts';
import { LinesField } from './lines-field.tsx';

interface FormProps extends FindingProps {
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
  return <Fields {...props} begin={begin ?? null} />;
};

const Fields = (props: FormProps & { readonly begin: NonNullable<Finding['outcome']> | null }) => {
  const { review, finding, begin, close } = props;
  const { body, revision } = finding;
  const words = d().report.board;
  const later = carriersOf(review.rounds, body.round);
  const [draft, setDraft] = useState(() => draftOfOutcome(begin, body.carriedBy ?? later[0]?.id));
  /** Saving was tried: from then on each field says what is wrong with it. */
  const [tried, setTried] = useState(false);
  const change = (part: Partial<typeof draft>) => setDraft((now) => ({ ...now, ...part }));
  const read = readOutcome(draft, body, begin, {
    until: toInstant(review.nowMs),
    language: settings.value.language,
  });
  const isMissing = (field: 'round' | 'lines'): boolean =>
    tried && !read.ok && read.missing.includes(field);
  return (
    <SmallForm
      save={async () => {
        setTried(true);
        if (!read.ok) return '';
        const saved = await saveFromForm('finding', read.body, revision.id);
        if (typeof saved === 'string') return saved;
        close();
        return null;
      }}
    >
      <div class="field-row">
        <SelectField
          label={words.outcomeRound}
          value={draft.round}
          options={later.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(round) => change({ round })}
          error={isMissing('round') ? d().missing : undefined}
        />
        <SelectField
          label={words.verdict}
          value={draft.verdict}
          options={changeVerdicts.map((value) => ({
            value,
            label: terms().changeVerdicts[value].name,
          }))}
          onChange={(verdict) => change({ verdict })}
        />
      </div>
      <LinesField
        label={words.outcomeLines}
        value={draft.lines}
        onInput={(lines) => change({ lines })}
        error={isMissing('lines') ? words.missing : undefined}
      />
    </SmallForm>
  );
};

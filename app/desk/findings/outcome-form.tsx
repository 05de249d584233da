/** What came of a finding's change is written down, frozen with the date of the data. */
import { useState } from 'preact/hooks';
import { changeVerdicts, type ChangeVerdict, type RecordId } from '../../../core/records/index.ts';
import { toInstant } from '../../parts/instant.ts';
import { d } from '../../words/index.ts';
import { saveRecord, SelectField, SmallForm, Unfold } from '../form-parts.tsx';
import type { FindingProps } from './finding-card.tsx';
import { LinesField, linesOf } from './lines-field.tsx';

/** What a comparison of rounds says of the change; the lead may write otherwise. */
export interface ProposedOutcome {
  readonly round: RecordId;
  readonly verdict: ChangeVerdict;
  readonly lines: readonly string[];
}

/** @param props.proposed what the form begins with, where something was compared */
export const OutcomeForm = (props: FindingProps & { readonly proposed?: ProposedOutcome }) => {
  const { review, finding } = props;
  const shownBy = review.rounds.find(({ id }) => id === finding.body.round);
  const later = review.rounds.filter(({ order }) => order > (shownBy?.order ?? 0));
  if (later.length === 0) return null;
  return (
    <Unfold label={d().report.board.writeOutcome}>
      {(close) => <Fields {...props} later={later} close={close} />}
    </Unfold>
  );
};

const Fields = (
  props: Parameters<typeof OutcomeForm>[0] & {
    readonly later: FindingProps['review']['rounds'];
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
          options={changeVerdicts.map((value) => ({ value, label: words.outcomes[value] }))}
          onChange={setVerdict}
        />
      </div>
      <LinesField label={words.board.outcomeLines} value={lines} onInput={setLines} />
    </SmallForm>
  );
};

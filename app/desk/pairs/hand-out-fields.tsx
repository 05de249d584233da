/** What one hand-out and several at once ask alike: since when, blind or not; and how a pair is told from others. */
import type { PairSummary } from '../../../core/review/index.ts';
import { formatDateTime, formatSize } from '../../parts/format.ts';
import { toLocalMinute } from '../../parts/instant.ts';
import { clauses, d } from '../../words/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { DateTimeField } from '../parts/form-parts.tsx';
import { promisedTo, type SinceTrouble } from '../../drafts/hand-out.ts';

/** A pair with its round and size, to be told from the others in a list. */
export const pairLabel = (
  { code, round, sizeMm }: PairSummary,
  review: TabProps['review'],
): string =>
  clauses(
    ...[code, review.rounds.find(({ id }) => id === round)?.name ?? '', formatSize(sizeMm)].filter(
      (one) => one !== '',
    ),
  );

/** Pairs that nobody has and that may be worn, the latest round first. */
export const freePairs = ({ pairs, rounds }: TabProps['review']): readonly PairSummary[] => {
  const place = new Map(rounds.map(({ id }, at) => [id, at]));
  return pairs
    .filter(({ holder, stopUse }) => holder === null && !stopUse)
    .sort((a, b) => (place.get(b.round) ?? 0) - (place.get(a.round) ?? 0));
};

/** Why a pair cannot have been handed out then. */
export const sinceInWords = (trouble: SinceTrouble): string => {
  const { heldUntil, notYet } = d().pairs;
  switch (trouble.why) {
    case 'held':
      return heldUntil(formatDateTime(trouble.untilMs));
    case 'not-yet':
      return notYet;
    case 'missing':
      return d().missing;
  }
};

/** That a pair goes to somebody else later, and so comes back then; nothing where it does not. */
export const Promised = ({ records, review, pair }: TabProps & { readonly pair: RecordId }) => {
  const next = promisedTo(records['hand-out'], pair, review.nowMs);
  return next ? (
    <p class="soft small">
      {d().pairs.promised(
        namesIn(review, records).tester(next.tester),
        formatDateTime(Date.parse(next.from)),
      )}
    </p>
  ) : null;
};

export const SinceField = (props: {
  readonly value: string | null;
  readonly onInput: (since: string) => void;
  /** What is wrong with it. */
  readonly error?: string | undefined;
}) => (
  <DateTimeField
    label={d().pairs.since}
    hint={d().pairs.sinceHint}
    value={props.value ?? toLocalMinute(Date.now())}
    onInput={props.onInput}
    error={props.error}
  />
);

export const BlindField = (props: {
  readonly value: boolean;
  readonly onChange: (blind: boolean) => void;
}) => (
  <label class="row">
    <input
      type="checkbox"
      class="tick"
      checked={props.value}
      onChange={(event) => props.onChange(event.currentTarget.checked)}
    />
    {d().pairs.blind}
  </label>
);

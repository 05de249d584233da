/** What one hand-out and several at once ask alike: since when, blind or not; and how a pair is told from others. */
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import type { PairSummary } from '../../../core/review/index.ts';
import { formatDateTime, formatSize } from '../../parts/format.ts';
import { toLocalMinute } from '../../parts/instant.ts';
import { d } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { DateTimeField } from '../parts/form-parts.tsx';
import { sinceTrouble } from '../../drafts/hand-out.ts';

/** A pair with its round and size, to be told from the others in a list. */
export const pairLabel = (
  { code, round, sizeMm }: PairSummary,
  review: TabProps['review'],
): string =>
  [code, review.rounds.find(({ id }) => id === round)?.name, formatSize(sizeMm)]
    .filter(Boolean)
    .join(', ');

/** Pairs that nobody has and that may be worn, the latest round first. */
export const freePairs = ({ pairs, rounds }: TabProps['review']): readonly PairSummary[] => {
  const place = new Map(rounds.map(({ id }, at) => [id, at]));
  return pairs
    .filter(({ holder, stopUse }) => holder === null && !stopUse)
    .sort((a, b) => (place.get(b.round) ?? 0) - (place.get(a.round) ?? 0));
};

/** Why the pair cannot have been handed out then, or null. */
export const troubleInWords = (
  handOuts: readonly RecordOf<'hand-out'>[],
  pair: RecordId,
  fromMs: number,
): string | null => {
  const trouble = sinceTrouble(handOuts, pair, fromMs, Date.now());
  if (trouble === null) return null;
  const { since, heldUntil, notYet } = d().pairs;
  const why =
    trouble.why === 'held'
      ? heldUntil(formatDateTime(trouble.untilMs))
      : trouble.why === 'not-yet'
        ? notYet
        : d().missing;
  return `${since}: ${why}`;
};

/** Since when, as it is typed; null: now. */
export const sinceMs = (since: string | null): number =>
  since === null ? Date.now() : new Date(since).getTime();

export const SinceField = (props: {
  readonly value: string | null;
  readonly onInput: (since: string) => void;
}) => (
  <DateTimeField
    label={d().pairs.since}
    hint={d().pairs.sinceHint}
    value={props.value ?? toLocalMinute(Date.now())}
    onInput={props.onInput}
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

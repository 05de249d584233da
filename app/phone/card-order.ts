/**
 * In which order do the pairs in hand stand on the first screen? As a tester will act on them: what they began, then
 * the pair that they wore last, and what must not be worn at the end.
 */
import type { RecordId } from '../../core/records/index.ts';
import type { HeldPair } from './own-mileage.ts';

export interface PairsByState {
  /** A run in them is half filled in. */
  readonly begun: ReadonlySet<RecordId>;
  /** Not to be worn: under a stop-use notice, or pain or damage stands. */
  readonly stopped: ReadonlySet<RecordId>;
}

/** Those worn last first, then those never worn; of two alike the lower code. */
export const byLastWorn = (a: HeldPair, b: HeldPair): number =>
  (b.lastRunMs ?? 0) - (a.lastRunMs ?? 0) || (a.pair.body.code < b.pair.body.code ? -1 : 1);

export const inCardOrder = <P extends HeldPair>(
  held: readonly P[],
  { begun, stopped }: PairsByState,
): readonly P[] => {
  const place = ({ pair: { revision } }: HeldPair): number =>
    begun.has(revision.id) ? 0 : stopped.has(revision.id) ? 2 : 1;
  return [...held].sort((a, b) => place(a) - place(b) || byLastWorn(a, b));
};

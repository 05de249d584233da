/** Which two rounds are compared? As chosen; else the two latest that anybody has run in. */
import type { RecordId } from '../../../core/records/index.ts';

interface Round {
  readonly id: RecordId;
  readonly order: number;
  readonly size: { readonly runs: number };
}

export interface RoundPair<R> {
  /** Undefined: there are not two rounds. */
  readonly earlier: R | undefined;
  readonly later: R | undefined;
  /** The rounds that the later one can be set against. */
  readonly before: readonly R[];
}

/**
 * @param rounds by order
 * @param chosen a round that was chosen and has gone is no choice any more
 */
export const roundsOf = <R extends Round>(
  rounds: readonly R[],
  chosen: { readonly earlier?: RecordId; readonly later?: RecordId },
): RoundPair<R> => {
  const worn = rounds.filter(({ size }) => size.runs > 0);
  const later =
    rounds.find(({ id, order }) => id === chosen.later && order > (rounds[0]?.order ?? 0)) ??
    (worn.length > 1 ? worn.at(-1) : rounds.at(-1));
  const before = rounds.filter(({ order }) => later && order < later.order);
  const earlier =
    before.find(({ id }) => id === chosen.earlier) ??
    before.findLast(({ size }) => size.runs > 0) ??
    before.at(-1);
  return { earlier, later: earlier && later, before };
};

/** How many pairs are out, which of them nobody may run in, and which has come farthest? In one sentence, by rule. */
import type { RecordId } from '../records/index.ts';
import { mustNotRun, type PairRow } from '../review/index.ts';
import type { Metres } from '../units/index.ts';
import type { Claim } from './stamp.ts';

interface Out {
  readonly out: number;
  readonly of: number;
  readonly testers: number;
}

export type PairsHeadline = { readonly claims: Claim } & (
  | { readonly case: 'no-round' }
  | { readonly case: 'none' }
  /** Pairs that somebody holds although nobody may run in them. */
  | ({ readonly case: 'stop-held'; readonly pairs: readonly RecordId[] } & Out)
  | ({ readonly case: 'stopped'; readonly pairs: readonly RecordId[] } & Out)
  | {
      readonly case: 'all-in';
      readonly of: number;
      /** Somebody has run in one of them. */
      readonly worn: boolean;
    }
  | ({ readonly case: 'not-run' } & Out)
  | ({
      readonly case: 'farthest';
      readonly pair: RecordId;
      readonly totalM: Metres;
      readonly briefM: Metres;
    } & Out)
);

/**
 * What the list of pairs says first: whoever may be hurt, then how many are out, then the farthest.
 * @param rounds of the shoe: a pair belongs to one
 */
export const pairsHeadline = (
  rows: readonly PairRow[],
  briefM: Metres,
  rounds: number,
): PairsHeadline => {
  const claims = 'nothing';
  if (rows.length === 0) return { case: rounds === 0 ? 'no-round' : 'none', claims };
  const held = rows.filter(({ holder }) => holder !== null);
  const out: Out = {
    out: held.length,
    of: rows.length,
    testers: new Set(held.map(({ holder }) => holder)).size,
  };
  const stopped = rows.filter(mustNotRun);
  const worn = stopped.filter(({ holder }) => holder !== null);
  if (worn.length > 0)
    return { case: 'stop-held', claims, pairs: worn.map(({ pair }) => pair), ...out };
  if (stopped.length > 0)
    return { case: 'stopped', claims, pairs: stopped.map(({ pair }) => pair), ...out };
  if (held.length === 0)
    return { case: 'all-in', claims, of: rows.length, worn: rows.some(({ runs }) => runs > 0) };
  const farthest = rows.reduce((a, b) => (b.totalM > a.totalM ? b : a));
  return farthest.runs === 0
    ? { case: 'not-run', claims, ...out }
    : {
        case: 'farthest',
        claims,
        pair: farthest.pair,
        totalM: farthest.totalM,
        briefM,
        ...out,
      };
};

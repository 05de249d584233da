/**
 * Does the shoe do what its brief asks, in one sentence? Of the latest round that anybody has run in, by the same
 * words as its stamp; an open verdict is never made to sound better than open.
 */
import type { RecordId } from '../records/index.ts';
import type { GridRow, VerdictGrid } from '../review/index.ts';
import { stampOf, type Claim, type Stamp } from './stamp.ts';

export type VerdictHeadline = { readonly claims: Claim } & (
  | { readonly case: 'no-round' }
  | { readonly case: 'nobody-ran' }
  | {
      readonly case: 'fails';
      readonly round: RecordId;
      /** The first that fails, in the order of the rows. */
      readonly what: GridRow['what'];
      readonly count: number;
      readonly of: number;
    }
  | { readonly case: 'holds'; readonly round: RecordId; readonly of: number }
  | {
      readonly case: 'open';
      readonly round: RecordId;
      readonly open: number;
      readonly of: number;
    }
);

/** The word of the latest round with a run. */
export const verdictStamp = ({ rounds, latest }: Pick<VerdictGrid, 'rounds' | 'latest'>): Stamp => {
  const word = rounds.find(({ id }) => id === latest)?.word;
  return word === undefined ? 'open' : stampOf(word);
};

/** @returns the case, and what it is about */
export const verdictHeadline = ({ rounds, latest, rows }: VerdictGrid): VerdictHeadline => {
  if (rounds.length === 0) return { case: 'no-round', claims: 'nothing' };
  if (latest === null) return { case: 'nobody-ran', claims: 'nothing' };
  const own = rows.flatMap(({ what, cells }) => {
    const cell = cells.find((one) => one?.round === latest);
    return cell ? [{ what, word: cell.item.word }] : [];
  });
  const stamp = verdictStamp({ rounds, latest });
  const failing = own.filter(({ word }) => word === 'does-not-hold');
  const about = { round: latest, of: own.length };
  if (stamp === 'holds') return { case: 'holds', claims: 'holds', ...about };
  const [worst] = failing;
  if (stamp === 'fails' && worst)
    return { case: 'fails', claims: 'fails', what: worst.what, count: failing.length, ...about };
  return {
    case: 'open',
    claims: 'nothing',
    open: own.filter(({ word }) => word === 'not-known-yet').length,
    ...about,
  };
};

/** Which pairs are listed, and in which order? Pure. */
import type { RecordId } from '../../../core/records/index.ts';
import { mustNotRun, type PairRow } from '../../../core/review/index.ts';
import { holdsText, type SortKey } from '../list/sorting.ts';

export const pairColumns = [
  'pair',
  'round',
  'size',
  'holder',
  'distance',
  'runs',
  'lastRun',
  'complaints',
  'checks',
  'state',
] as const;
export type PairColumn = (typeof pairColumns)[number];

export const pairStates = [
  'all',
  'out',
  'in',
  'do-not-run',
  'silent',
  'out-of-tolerance',
  'never-run',
] as const;
export type PairState = (typeof pairStates)[number];

export interface PairFilter {
  readonly round: RecordId | null;
  readonly state: PairState;
  /** Of the pair's code, or of whoever has it. */
  readonly text: string;
}

export const everyPair: PairFilter = { round: null, state: 'all', text: '' };

const isInState: Readonly<Record<PairState, (row: PairRow) => boolean>> = {
  all: () => true,
  out: ({ holder }) => holder !== null,
  in: ({ holder }) => holder === null,
  'do-not-run': mustNotRun,
  silent: ({ holderSilentDays }) => holderSilentDays !== null,
  'out-of-tolerance': ({ outOfTolerance }) => outOfTolerance,
  'never-run': ({ runs }) => runs === 0,
};

/** @param texts what a row is found by: its code, its tester's code and name */
export const filteredPairs = (
  rows: readonly PairRow[],
  { round, state, text }: PairFilter,
  texts: (row: PairRow) => readonly string[],
): readonly PairRow[] =>
  rows.filter(
    (row) =>
      (round === null || row.round === round) &&
      isInState[state](row) &&
      holdsText(texts(row), text),
  );

/** Do not run first, then out of tolerance, then silent. */
const urgencyOf = (row: PairRow): number =>
  mustNotRun(row) ? 0 : row.outOfTolerance ? 1 : row.holderSilentDays !== null ? 2 : 3;

/** @param codeOf a tester's code */
export const pairKey = (
  row: PairRow,
  column: PairColumn,
  codeOf: (tester: RecordId) => string,
): SortKey => {
  switch (column) {
    case 'pair':
      return row.code;
    case 'round':
      return row.roundAt;
    case 'size':
      return row.sizeMm;
    case 'holder':
      return row.holder === null ? null : codeOf(row.holder);
    case 'distance':
      return row.totalM;
    case 'runs':
      return row.runs;
    case 'lastRun':
      return row.lastRunMs;
    case 'complaints':
      return row.asked === 0 ? null : row.complained / row.asked;
    case 'checks':
      return row.checks;
    case 'state':
      return urgencyOf(row);
  }
};

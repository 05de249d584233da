/** Which testers are listed, and in which order? Pure. */
import type { TesterRow } from '../../../core/review/index.ts';
import { holdsText, type SortKey } from '../list/sorting.ts';

export const testerColumns = [
  'tester',
  'pairs',
  'runs',
  'distance',
  'lastRun',
  'silent',
  'most',
  'complaints',
  'pain',
] as const;
export type TesterColumn = (typeof testerColumns)[number];

export const testerStates = ['all', 'holds', 'silent', 'pain', 'never-ran'] as const;
export type TesterState = (typeof testerStates)[number];

export interface TesterFilter {
  readonly state: TesterState;
  /** Of the code or the name, or of a pair that they hold. */
  readonly text: string;
}

export const everyTester: TesterFilter = { state: 'all', text: '' };

const isInState: Readonly<Record<TesterState, (row: TesterRow) => boolean>> = {
  all: () => true,
  holds: ({ pairs }) => pairs.length > 0,
  silent: ({ silentDays }) => silentDays !== null,
  pain: ({ pain }) => pain !== null,
  'never-ran': ({ runs }) => runs === 0,
};

/** @param texts what a row is found by */
export const filteredTesters = (
  rows: readonly TesterRow[],
  { state, text }: TesterFilter,
  texts: (row: TesterRow) => readonly string[],
): readonly TesterRow[] =>
  rows.filter((row) => isInState[state](row) && holdsText(texts(row), text));

export const testerKey = (row: TesterRow, column: TesterColumn): SortKey => {
  switch (column) {
    case 'tester':
      return row.code;
    case 'pairs':
      return row.pairs.length;
    case 'runs':
      return row.runs;
    case 'distance':
      return row.distanceM;
    case 'lastRun':
      return row.lastRunMs;
    case 'silent':
      return row.silentDays;
    case 'most':
      return row.most?.runs ?? null;
    case 'complaints':
      return row.asked === 0 ? null : row.complained / row.asked;
    case 'pain':
      return row.pain?.score ?? null;
  }
};

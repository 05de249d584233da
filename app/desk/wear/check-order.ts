/** Which bench checks are listed, with which readings, and in which order? Pure. */
import type { Measure, RecordId } from '../../../core/records/index.ts';
import type { ListedCheck, ListedReading } from '../../../core/review/index.ts';
import { holdsText, type SortKey } from '../list/sorting.ts';

export type CheckColumn = 'date' | 'pair' | 'distance' | 'readings' | 'gauge' | 'by';

export interface CheckFilter {
  /** Null: of every pair. */
  readonly pair: RecordId | null;
  /** Null: every measure. */
  readonly measure: Measure | null;
  /** Of the pair's code, a gauge or who measured. */
  readonly text: string;
}

export const everyCheck: CheckFilter = { pair: null, measure: null, text: '' };

/** The readings of a check that the list shows. */
export const readingsShown = (
  { readings }: Pick<ListedCheck, 'readings'>,
  { measure }: Pick<CheckFilter, 'measure'>,
): readonly ListedReading[] =>
  measure === null ? readings : readings.filter((one) => one.measure === measure);

const gaugesOf = (check: Pick<ListedCheck, 'readings'>): readonly string[] => [
  ...new Set(check.readings.flatMap(({ gauge }) => (gauge === undefined ? [] : [gauge]))),
];

/** @param codeOf a pair's code */
export const filteredChecks = (
  checks: readonly ListedCheck[],
  filter: CheckFilter,
  codeOf: (pair: RecordId) => string,
): readonly ListedCheck[] =>
  checks.filter(
    (check) =>
      (filter.pair === null || check.pair === filter.pair) &&
      readingsShown(check, filter).length > 0 &&
      holdsText([codeOf(check.pair), check.operator ?? '', ...gaugesOf(check)], filter.text),
  );

export const checkKey = (
  check: ListedCheck,
  column: CheckColumn,
  codeOf: (pair: RecordId) => string,
): SortKey => {
  switch (column) {
    case 'date':
      return Date.parse(check.at);
    case 'pair':
      return codeOf(check.pair);
    case 'distance':
      return check.distanceM;
    case 'readings':
      return check.readings.length;
    case 'gauge':
      return gaugesOf(check)[0] ?? null;
    case 'by':
      return check.operator;
  }
};

/** Runs of a table and on record, to find the same one again. Pure. */
import { SAME_RUN_SHARE } from '../../../core/mileage/index.ts';
import { groupBy } from '../../../core/statistics/index.ts';
import type { KnownRun } from './row.ts';

/** Runs of the table and on record, to find the same one again. */
export class RunIndex {
  readonly #known: ReadonlyMap<string, readonly KnownRun[]>;
  readonly #rows = new Map<string, { run: KnownRun; line: number }[]>();

  constructor(known: readonly KnownRun[]) {
    this.#known = groupBy(known, dayKey);
  }

  /** How many rows so far name this tester and day without an hour. */
  withoutHour(key: string): number {
    return (this.#rows.get(key) ?? []).filter(({ run }) => run.dayOnly).length;
  }

  /** The same run on record, an earlier row, or one that may be the same. */
  find(run: KnownRun): { same: 'record' | number | null; maybe: 'record' | number | null } {
    const key = dayKey(run);
    const onRecord = this.#known.get(key) ?? [];
    const inRows = this.#rows.get(key) ?? [];
    const of = (is: (other: KnownRun) => boolean): 'record' | number | null =>
      onRecord.some(is) ? 'record' : (inRows.find((row) => is(row.run))?.line ?? null);
    return { same: of((other) => isSame(run, other)), maybe: of((other) => isAlike(run, other)) };
  }

  add(run: KnownRun, line: number): void {
    const key = dayKey(run);
    this.#rows.set(key, [...(this.#rows.get(key) ?? []), { run, line }]);
  }
}

const dayKey = ({ tester, startedAt }: Pick<KnownRun, 'tester' | 'startedAt'>): string =>
  `${tester} ${startedAt.slice(0, 10)}`;

/** As far to the metre, in the same pair and begun in the same minute, or on a day of which no hour is known. */
const isSame = (a: KnownRun, b: KnownRun): boolean =>
  a.pair === b.pair &&
  Math.round(a.distanceM) === Math.round(b.distanceM) &&
  (a.dayOnly || b.dayOnly || Math.abs(Date.parse(a.startedAt) - Date.parse(b.startedAt)) < 60_000);

/** Nearly as far in the same pair on the same day. */
const isAlike = (a: KnownRun, b: KnownRun): boolean =>
  a.pair === b.pair &&
  Math.abs(a.distanceM - b.distanceM) <= SAME_RUN_SHARE * Math.max(a.distanceM, b.distanceM);

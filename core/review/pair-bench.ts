/** What did the bench read on one pair, beside what its round is expected to read and the brief's limit? */
import type { Limit, RecordId } from '../records/index.ts';
import { metres, type Metres } from '../units/index.ts';
import type { WearKind } from '../wear/index.ts';
import type { LoggedPair, ProjectLog } from './project-log.ts';
import { fitOf, isOf, seriesOf } from './wear-series.ts';

/** The readings of one kind at one site on this pair, beside its round's curve. */
export interface PairBench {
  readonly kind: WearKind;
  readonly site: string;
  /** The limit of the brief that it is held against, in the reading's unit; null: none. */
  readonly limit: { readonly limit: Limit; readonly value: number } | null;
  readonly marks: readonly {
    readonly check: RecordId;
    readonly m: Metres;
    readonly value: number;
  }[];
  readonly others: readonly {
    readonly check: RecordId;
    readonly m: Metres;
    readonly value: number;
  }[];
  /** What a new pair of the round is expected to read; empty where nothing tells its start. */
  readonly curve: readonly {
    readonly m: Metres;
    readonly lower: number;
    readonly median: number;
    readonly upper: number;
  }[];
  /** The latest reading is at the limit or past it. */
  readonly isPast: boolean;
}

const CURVE_POINTS = 21;
/** More lanes of readings than this are not taken in at a glance. */
const MOST_BENCH = 3;

/**
 * The lanes of readings of one pair, those with a limit first.
 * @param untilM where the axis ends
 */
export const benchOf = (
  log: ProjectLog,
  pair: LoggedPair,
  untilM: number,
): readonly PairBench[] => {
  const { series, checks } = seriesOf(log, pair.round, 'distance');
  const checkAt = new Map(
    checks.map(({ pair: id, distance, check }) => [`${id} ${distance}`, check]),
  );
  const own = series.flatMap((one) => {
    const points = one.checks.flatMap(({ pair: id, distance, value }) => {
      const check = checkAt.get(`${id} ${distance}`);
      return check ? [{ of: id, check, m: distance, value }] : [];
    });
    const marks = points.filter(({ of }) => of === pair.id);
    const limit = log.project.brief.limits.find((each) => isOf(each, one)) ?? null;
    return marks.length === 0 ? [] : [{ one, points, marks, limit }];
  });
  return own
    .sort(
      (a, b) =>
        Number(b.limit !== null) - Number(a.limit !== null) || b.marks.length - a.marks.length,
    )
    .slice(0, MOST_BENCH)
    .map(({ one, points, marks, limit }): PairBench => {
      const fit = fitOf(log, pair.round, one);
      const end = Math.min(untilM, fit.reach);
      const curve = Array.from({ length: CURVE_POINTS }, (_, at) => {
        const m = metres((end * at) / (CURVE_POINTS - 1));
        const value = fit.valueAt(m);
        return value ? [{ m, lower: value.lower, median: value.median, upper: value.upper }] : [];
      }).flat();
      const start = marks.find(({ m }) => m === 0)?.value ?? curve[0]?.median;
      const value =
        limit === null
          ? null
          : limit.basis === 'reading'
            ? limit.value
            : start === undefined
              ? null
              : limit.value * start;
      const last = marks.at(-1);
      const rises = fit.direction === 'rises';
      return {
        kind: one.kind,
        site: one.site,
        limit: limit && value !== null ? { limit, value } : null,
        marks: marks.map(({ check, m, value: read }) => ({ check, m, value: read })),
        others: points
          .filter(({ of }) => of !== pair.id)
          .map(({ check, m, value: read }) => ({ check, m, value: read })),
        curve,
        isPast:
          value !== null &&
          last !== undefined &&
          last.m > 0 &&
          (rises ? last.value >= value : last.value <= value),
      };
    });
};

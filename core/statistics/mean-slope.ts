/**
 * By how much does a value change with x, when each unit starts elsewhere and changes at a pace of its own?
 *
 * A start and a slope of each unit's own (mixed model by REML, sources in `core/statistics/mixed.ts`), so that a
 * unit of four points counts for as much as four points tell; the mean slope with Student's interval on units − 1
 * degrees of freedom.
 */
import { tQuantile } from './beta.ts';
import { groupBy } from './group-by.ts';
import { LEVEL, type Interval } from './interval.ts';
import { linearMixedModel, type MixedModel } from './mixed.ts';
import type { MixedRow } from './mixed-rows.ts';

/** One value of one unit. */
export interface UnitPoint {
  readonly unit: string;
  readonly x: number;
  readonly y: number;
}

export interface MeanSlope {
  /** Change of y per 1 of x. */
  readonly mean: number;
  readonly interval: Interval;
  /** Units with enough points to have a slope. */
  readonly units: number;
}

/** Points a unit needs for a slope of its own, and units for a mean of slopes. */
const LEAST_POINTS = 3;
const LEAST_UNITS = 2;

/** Null where the values of each unit lie on a line, or never change: they leave no scatter to judge by. */
const modelOf = (rows: readonly MixedRow[]): MixedModel | null => {
  try {
    return linearMixedModel(rows, { method: 'REML', correlated: false });
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
};

/** @returns null below two units with three points each that vary in x, or where nothing scatters */
export const meanSlope = (points: readonly UnitPoint[], level = LEVEL): MeanSlope | null => {
  const usable = [...groupBy(points, ({ unit }) => unit).values()].filter(
    (own) => own.length >= LEAST_POINTS && own.some(({ x }) => x !== own[0]?.x),
  );
  if (usable.length < LEAST_UNITS) return null;
  const model = modelOf(
    usable.flatMap((own) =>
      own.map(({ unit, x, y }) => {
        const effects = [1, x];
        return { y, group: unit, fixed: effects, random: effects };
      }),
    ),
  );
  if (model === null) return null;
  const [mean, error] = [model.fixed[1] as number, model.standardErrors[1] as number];
  if (!(error > 0) || !Number.isFinite(mean + error)) return null;
  const reach = tQuantile((1 + level) / 2, usable.length - 1) * error;
  return { mean, interval: { lower: mean - reach, upper: mean + reach }, units: usable.length };
};

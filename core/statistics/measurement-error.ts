/**
 * By how much does a score move when nothing changed? Standard error of measurement and smallest detectable
 * change (Weir JP, J Strength Cond Res 2005;19:231-240; Bland JM & Altman DG, Lancet 1986;i:307-310, who call
 * twice the former's root of two the repeatability).
 */
import { normalQuantile } from './normal.ts';
import { chiSquaredUpper } from './gamma.ts';
import { LEVEL, type Interval } from './interval.ts';

export interface MeasurementError {
  /** Standard error of measurement, in the unit of the scores. */
  readonly standardError: number;
  /** 95 % of two scores of the same thing differ by less. */
  readonly smallestChange: number;
}

/** @param meanSquare of the error of a two-way analysis, or within the groups of a one-way one */
export const measurementError = (meanSquare: number): MeasurementError => {
  const standardError = Math.sqrt(meanSquare);
  return {
    standardError,
    smallestChange: normalQuantile((1 + LEVEL) / 2) * Math.SQRT2 * standardError,
  };
};

export interface Repeatability extends MeasurementError {
  /** Of the standard error (χ² of the mean square). */
  readonly interval: Interval;
  /** Groups with at least two scores, and scores in them. */
  readonly groups: number;
  readonly scores: number;
}

/** The value that a χ² variable exceeds with this probability. */
const chiSquaredAbove = (p: number, df: number): number => {
  let [low, high] = [0, df + 20 + 20 * Math.sqrt(df)];
  for (let step = 0; step < 100; step++) {
    const middle = (low + high) / 2;
    if (chiSquaredUpper(middle, df) > p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/**
 * Pooled spread of scores within groups of scores of the same thing.
 * @returns null where no group has two scores
 */
export const repeatability = (
  groups: readonly (readonly number[])[],
  level = LEVEL,
): Repeatability | null => {
  let [squares, df, count, scores] = [0, 0, 0, 0];
  for (const group of groups) {
    if (group.length < 2) continue;
    const mean = group.reduce((a, b) => a + b, 0) / group.length;
    squares += group.reduce((sum, score) => sum + (score - mean) ** 2, 0);
    df += group.length - 1;
    scores += group.length;
    count++;
  }
  if (df === 0) return null;
  const end = (p: number) => Math.sqrt(squares / chiSquaredAbove(p, df));
  return {
    ...measurementError(squares / df),
    interval: { lower: end((1 - level) / 2), upper: end((1 + level) / 2) },
    groups: count,
    scores,
  };
};

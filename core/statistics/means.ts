/**
 * How sure is a mean of a few units, and the difference of two? Student's t (1908); unequal variances by
 * Welch BL, Biometrika 1947;34:28-35.
 */
import { tQuantile, tTwoSided } from './beta.ts';
import { LEVEL, type Interval } from './interval.ts';

export interface MeanOfUnits {
  readonly n: number;
  readonly mean: number;
  /** Standard deviation over the units; null below two. */
  readonly sd: number | null;
  /** Null below two units. */
  readonly interval: Interval | null;
  /** Two-sided, against a mean of zero; null below two units. */
  readonly p: number | null;
}

/** @returns null where there is no unit */
export const meanOfUnits = (values: readonly number[], level = LEVEL): MeanOfUnits | null => {
  const n = values.length;
  if (n === 0) return null;
  const mean = values.reduce((a, b) => a + b, 0) / n;
  if (n === 1) return { n, mean, sd: null, interval: null, p: null };
  const sd = Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (n - 1));
  const se = sd / Math.sqrt(n);
  const half = tQuantile((1 + level) / 2, n - 1) * se;
  return {
    n,
    mean,
    sd,
    interval: { lower: mean - half, upper: mean + half },
    p: se > 0 ? tTwoSided(mean / se, n - 1) : mean === 0 ? 1 : 0,
  };
};

export interface DifferenceOfMeans {
  readonly difference: number;
  readonly interval: Interval;
  readonly p: number;
  readonly df: number;
}

/** First less second, two sets of different units. @returns null below two units in either */
export const welch = (
  first: readonly number[],
  second: readonly number[],
  level = LEVEL,
): DifferenceOfMeans | null => {
  const [a, b] = [meanOfUnits(first), meanOfUnits(second)];
  if (a === null || b === null || a.sd === null || b.sd === null) return null;
  const [va, vb] = [a.sd ** 2 / a.n, b.sd ** 2 / b.n];
  const difference = a.mean - b.mean;
  const se = Math.sqrt(va + vb);
  if (se === 0)
    return {
      difference,
      interval: { lower: difference, upper: difference },
      p: difference === 0 ? 1 : 0,
      df: a.n + b.n - 2,
    };
  const df = (va + vb) ** 2 / (va ** 2 / (a.n - 1) + vb ** 2 / (b.n - 1));
  const half = tQuantile((1 + level) / 2, df) * se;
  return {
    difference,
    interval: { lower: difference - half, upper: difference + half },
    p: tTwoSided(difference / se, df),
    df,
  };
};

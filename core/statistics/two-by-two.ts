/**
 * Is a feature more frequent in one group than in the other, within strata?
 *
 * Fisher's exact test for one table, and its stratified form: the sum of the first cells given all
 * margins, whose exact distribution is the convolution of hypergeometric ones (Mantel N & Haenszel W,
 * J Natl Cancer Inst 1959;22:719-748; exact form as in Agresti A, Categorical Data Analysis, 2002,
 * section 6.7). Strata without both groups or without both outcomes say nothing and change nothing.
 */
import { TIE, type Side } from './binomial-test.ts';
import { chiSquaredUpper, logChoose } from './gamma.ts';

/** Counts: group 1 with and without the feature, group 2 with and without. */
export type TwoByTwo = readonly [a: number, b: number, c: number, d: number];

/** Probabilities of the first cell of a table from its least possible value on, given the margins. */
const hypergeometric = ([a, b, c, d]: TwoByTwo) => {
  const [row, column, n] = [a + b, a + c, a + b + c + d];
  const least = Math.max(0, row + column - n);
  const most = Math.min(row, column);
  const total = logChoose(n, column);
  const probabilities = Float64Array.from({ length: most - least + 1 }, (_, at) =>
    Math.exp(logChoose(row, least + at) + logChoose(n - row, column - least - at) - total),
  );
  return { least, probabilities };
};

/** The distribution of the sum of independent whole numbers. */
export const convolve = (p: Float64Array, q: Float64Array): Float64Array => {
  const sum = new Float64Array(p.length + q.length - 1);
  for (let i = 0; i < p.length; i++)
    for (let j = 0; j < q.length; j++)
      sum[i + j] = (sum[i + j] as number) + (p[i] as number) * (q[j] as number);
  return sum;
};

/** The p-value of a place in a distribution over whole numbers. */
export const exactP = (probabilities: Float64Array, at: number, side: Side): number => {
  const seen = (probabilities[at] ?? 0) * TIE;
  let p = 0;
  for (let k = 0; k < probabilities.length; k++) {
    const likely = probabilities[k] as number;
    if (side === 'greater' ? k >= at : side === 'less' ? k <= at : likely <= seen) p += likely;
  }
  return Math.min(1, p);
};

export interface StratifiedResult {
  readonly p: number;
  /** The common odds ratio of Mantel and Haenszel; null where it is 0/0, Infinity where it is x/0. */
  readonly oddsRatio: number | null;
  /** Strata that say something. */
  readonly strata: number;
  /** Mantel-Haenszel chi-squared with one degree of freedom, without and with continuity correction. */
  readonly chiSquared: number | null;
  readonly chiSquaredCorrected: number | null;
  readonly method: 'exact' | 'chi-squared';
}

const isTelling = ([a, b, c, d]: TwoByTwo): boolean =>
  a + b > 0 && c + d > 0 && a + c > 0 && b + d > 0;

/**
 * The stratified exact test; beyond `exactUpTo` possible sums the corrected chi-squared (two-sided).
 * @param tables one a stratum
 */
export const stratifiedTwoByTwo = (
  tables: readonly TwoByTwo[],
  side: Side = 'two-sided',
  exactUpTo = 2000,
): StratifiedResult => {
  const telling = tables.filter(isTelling);
  let [seen, expected, variance, up, down, range] = [0, 0, 0, 0, 0, 1];
  for (const [a, b, c, d] of telling) {
    const n = a + b + c + d;
    seen += a;
    expected += ((a + b) * (a + c)) / n;
    variance += ((a + b) * (c + d) * (a + c) * (b + d)) / (n * n * (n - 1));
    up += (a * d) / n;
    down += (b * c) / n;
    range += Math.min(a + b, a + c) - Math.max(0, a - d);
  }
  const gap = Math.abs(seen - expected);
  const square = (by: number) => (variance > 0 ? Math.max(0, gap - by) ** 2 / variance : null);
  const chiSquaredCorrected = square(0.5);
  const oddsRatio = down > 0 ? up / down : up > 0 ? Infinity : null;
  const common = { oddsRatio, strata: telling.length, chiSquared: square(0), chiSquaredCorrected };
  if (telling.length === 0) return { ...common, p: 1, method: 'exact' };
  if (range > exactUpTo && side === 'two-sided')
    return { ...common, p: chiSquaredUpper(chiSquaredCorrected ?? 0, 1), method: 'chi-squared' };
  let sum: { least: number; probabilities: Float64Array } = {
    least: 0,
    probabilities: Float64Array.of(1),
  };
  for (const table of telling) {
    const { least, probabilities } = hypergeometric(table);
    sum = {
      least: sum.least + least,
      probabilities: convolve(sum.probabilities, probabilities),
    };
  }
  return { ...common, p: exactP(sum.probabilities, seen - sum.least, side), method: 'exact' };
};

/** Fisher's exact test of one table (Fisher RA, The Design of Experiments, 1935, section 11). */
export const fisherExact = (table: TwoByTwo, side: Side = 'two-sided'): number =>
  stratifiedTwoByTwo([table], side, Infinity).p;

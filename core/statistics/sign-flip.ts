/**
 * Is the mean of paired differences zero? Exact permutation of their signs, the unit being whatever has
 * one difference (Fisher RA, The Design of Experiments, 1935, section 21).
 */
import { normalQuantile, normalTwoSided } from './normal.ts';

export interface SignFlip {
  readonly pTwoSided: number;
  /** Against a mean above zero. */
  readonly pGreater: number;
  /** `normal`: the flips' own variance, beyond 20 differences that are not zero. */
  readonly method: 'exact' | 'normal';
}

/** Zero differences keep their place in the sum and change nothing. */
export const signFlip = (differences: readonly number[]): SignFlip => {
  const moving = differences.filter((d) => d !== 0).map(Math.abs);
  const seen = differences.reduce((a, b) => a + b, 0);
  if (moving.length > 20) {
    const z = seen / Math.sqrt(moving.reduce((sum, d) => sum + d * d, 0));
    const p = normalTwoSided(z);
    return { pTwoSided: p, pGreater: z > 0 ? p / 2 : 1 - p / 2, method: 'normal' };
  }
  const slack = 1e-9 * moving.reduce((a, b) => a + b, 0);
  const flips = 2 ** moving.length;
  let sum = -moving.reduce((a, b) => a + b, 0);
  let [greater, beyond] = [0, 0];
  let signs = 0;
  for (let flip = 0; flip < flips; flip++) {
    if (flip > 0) {
      // Gray code: one sign changes from one pattern to the next.
      const bit = 31 - Math.clz32(flip & -flip);
      signs ^= 1 << bit;
      sum += (signs & (1 << bit) ? 2 : -2) * (moving[bit] as number);
    }
    if (sum >= seen - slack) greater++;
    if (Math.abs(sum) >= Math.abs(seen) - slack) beyond++;
  }
  return { pTwoSided: beyond / flips, pGreater: greater / flips, method: 'exact' };
};

export interface SignFlipInterval {
  /** Null: the differences are too few for any bound at this tail. */
  readonly lower: number | null;
  readonly upper: number | null;
  /** `normal`: the flips' own variance, beyond 12 differences. */
  readonly method: 'exact' | 'normal';
}

/** How many of the subset means lie outside a bound, at a tail; below 1 there is no bound. */
const outside = (tail: number, n: number): number => Math.floor(tail * 2 ** n + 1e-9);

/** The means of all 2^n − 1 subsets of the values, ascending. */
const subsetMeans = (values: readonly number[]): Float64Array => {
  const sums = new Float64Array(2 ** values.length);
  const sizes = new Uint8Array(sums.length);
  for (let set = 1; set < sums.length; set++) {
    const rest = set & (set - 1);
    const last = 31 - Math.clz32(set ^ rest);
    sums[set] = (sums[rest] as number) + (values[last] as number);
    sizes[set] = (sizes[rest] as number) + 1;
  }
  for (let set = 1; set < sums.length; set++)
    sums[set] = (sums[set] as number) / (sizes[set] as number);
  return sums.subarray(1).sort();
};

/**
 * The centres that the sign-flip test does not reject: the differences less the centre are as likely with
 * either sign. Exact up to 12 differences: the means of all subsets cut the line into 2^n pieces, each as
 * likely to hold the centre (Hartigan JA, J Am Stat Assoc 1969;64:1303-1317). Zero lies outside exactly
 * where {@link signFlip} rejects it at that tail.
 * @param tails greatest probability that the centre lies below `lower`, and above `upper`
 */
export const signFlipInterval = (
  differences: readonly number[],
  tails: { readonly lower: number; readonly upper: number },
): SignFlipInterval => {
  const n = differences.length;
  const [below, above] = [outside(tails.lower, n), outside(tails.upper, n)];
  if (n <= 12) {
    const means = subsetMeans(differences);
    // Sums that are nought but for rounding are nought, as in the test.
    const slack = 1e-9 * differences.reduce((sum, d) => sum + Math.abs(d), 0);
    const at = (index: number) => {
      const mean = means[index] as number;
      return Math.abs(mean) <= slack ? 0 : mean;
    };
    return {
      lower: below < 1 ? null : at(below - 1),
      upper: above < 1 ? null : at(means.length - above),
      method: 'exact',
    };
  }
  const mean = differences.reduce((a, b) => a + b, 0) / n;
  const variance = differences.reduce((sum, d) => sum + (d - mean) ** 2, 0) / n;
  // |Σ(d − c)| = z · √Σ(d − c)², solved for the centre c.
  const half = (tail: number) => {
    const z2 = normalQuantile(1 - tail) ** 2;
    return z2 < n ? Math.sqrt((z2 * variance) / (n - z2)) : Infinity;
  };
  const { pGreater } = signFlip(differences);
  const pLess = signFlip(differences.map((d) => -d)).pGreater;
  const [lower, upper] = [mean - half(tails.lower), mean + half(tails.upper)];
  return {
    lower: pGreater <= tails.lower ? Math.max(lower, Number.MIN_VALUE) : Math.min(lower, 0),
    upper: pLess <= tails.upper ? Math.min(upper, -Number.MIN_VALUE) : Math.max(upper, 0),
    method: 'normal',
  };
};

/**
 * The normal distribution.
 *
 * Source: its tail as an incomplete gamma function, Abramowitz & Stegun 7.1.5 and 26.2; the quantile
 * starts at their 26.2.23 and is mended by Halley steps on the tail, so its error is that of the tail.
 */
import { upperGamma } from './gamma.ts';

/** Probability that a standard normal variable is at most z. */
export const normalCdf = (z: number): number => {
  const tail = upperGamma(0.5, (z * z) / 2) / 2;
  return z > 0 ? 1 - tail : tail;
};

/** Two-sided p-value of a standard normal statistic. */
export const normalTwoSided = (z: number): number => upperGamma(0.5, (z * z) / 2);

/** The quantile of the standard normal distribution; p from 0 to 1, exclusive. */
export const normalQuantile = (p: number): number => {
  // The rational start is off at the middle, where the steps on the tail lose their digits.
  if (p === 0.5) return 0;
  const tail = Math.min(p, 1 - p);
  const s = Math.sqrt(-2 * Math.log(tail));
  let z =
    s -
    (2.515517 + 0.802853 * s + 0.010328 * s * s) /
      (1 + 1.432788 * s + 0.189269 * s * s + 0.001308 * s ** 3);
  for (let step = 0; step < 3; step++) {
    const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    const miss = (upperGamma(0.5, (z * z) / 2) / 2 - tail) / density;
    z += miss / (1 - (z * miss) / 2);
  }
  return p < 0.5 ? -z : z;
};

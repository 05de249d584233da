/**
 * The regularised incomplete beta function and its inverse, and with them Student's t and the F
 * distribution.
 *
 * Source: continued fraction 8.17.22 of the NIST Digital Library of Mathematical Functions by Lentz's
 * method; t and F by Abramowitz & Stegun 26.5.27 and 26.5.28. The inverses halve an interval, which
 * cannot fail to converge.
 */
import { logGamma } from './gamma.ts';

const TINY = 1e-300;

const continuedFraction = (x: number, a: number, b: number): number => {
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1) || TINY);
  let fraction = d;
  for (let m = 1; m < 10_000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / (1 + even * d || TINY);
    c = 1 + even / c || TINY;
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + odd * d || TINY);
    c = 1 + odd / c || TINY;
    const step = d * c;
    fraction *= step;
    if (Math.abs(step - 1) < 4e-16) break;
  }
  return fraction;
};

/** I(x; a, b), the probability that a Beta(a, b) variable is at most x; a, b > 0, x from 0 to 1. */
export const betaLower = (x: number, a: number, b: number): number => {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(
    logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x),
  );
  return x < (a + 1) / (a + b + 2)
    ? (front * continuedFraction(x, a, b)) / a
    : 1 - (front * continuedFraction(1 - x, b, a)) / b;
};

/** The x at which betaLower(x, a, b) is p. */
export const betaQuantile = (p: number, a: number, b: number): number => {
  if (p <= 0) return 0;
  if (p >= 1) return 1;
  let low = 0;
  let high = 1;
  for (let step = 0; step < 1100; step++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (betaLower(middle, a, b) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** Probability that Student's t with `df` degrees of freedom is at most t. */
export const tCdf = (t: number, df: number): number => {
  const tail = betaLower(df / (df + t * t), df / 2, 0.5) / 2;
  return t > 0 ? 1 - tail : tail;
};

/** Two-sided p-value of a t statistic. */
export const tTwoSided = (t: number, df: number): number =>
  betaLower(df / (df + t * t), df / 2, 0.5);

/** The quantile of Student's t; p from 0 to 1, exclusive. */
export const tQuantile = (p: number, df: number): number => {
  if (p === 0.5) return 0;
  const x = betaQuantile(2 * Math.min(p, 1 - p), df / 2, 0.5);
  return Math.sign(p - 0.5) * Math.sqrt((df * (1 - x)) / x);
};

/** The quantile of the F distribution. */
export const fQuantile = (p: number, df1: number, df2: number): number => {
  const x = betaQuantile(1 - p, df2 / 2, df1 / 2);
  return (df2 * (1 - x)) / (df1 * x);
};

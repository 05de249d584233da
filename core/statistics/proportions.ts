/**
 * How sure is a share of x out of n, and the difference of two shares? Each unit counts once; where runs
 * of one tester hang together, `clusteredProportion` is the one to take.
 *
 * Sources: Wilson EB, J Am Stat Assoc 1927;22:209-212; Clopper CJ & Pearson ES, Biometrika
 * 1934;26:404-413; Jeffreys' interval as in Brown LD, Cai TT & DasGupta A, Stat Sci 2001;16:101-133;
 * differences by Newcombe RG, Stat Med 1998;17:873-890 (independent, method 10) and 1998;17:2635-2650
 * (paired, method 10).
 */
import { betaQuantile } from './beta.ts';
import { LEVEL, type Interval } from './interval.ts';
import { normalQuantile } from './normal.ts';

const clamp = (share: number): number => Math.min(1, Math.max(0, share));

/** Wilson's interval for a share p of n units with the critical value z; n need not be whole. */
export const wilsonAt = (p: number, n: number, z: number): Interval => {
  const z2 = z * z;
  const centre = (p + z2 / (2 * n)) / (1 + z2 / n);
  const half = (z * Math.sqrt((p * (1 - p)) / n + z2 / (4 * n * n))) / (1 + z2 / n);
  return {
    lower: p <= 0 ? 0 : clamp(centre - half),
    upper: p >= 1 ? 1 : clamp(centre + half),
  };
};

/** Wilson's score interval for x of n; n ≥ 1. The one shown beside shares of testers. */
export const wilson = (x: number, n: number, level = LEVEL): Interval =>
  wilsonAt(x / n, n, normalQuantile((1 + level) / 2));

/** The exact interval of Clopper and Pearson: never too short, often too long. */
export const clopperPearson = (x: number, n: number, level = LEVEL): Interval => {
  const tail = (1 - level) / 2;
  return {
    lower: x <= 0 ? 0 : betaQuantile(tail, x, n - x + 1),
    upper: x >= n ? 1 : betaQuantile(1 - tail, x + 1, n - x),
  };
};

/** The equal-tailed interval under Jeffreys' prior, with 0 and 1 at the ends. */
export const jeffreys = (x: number, n: number, level = LEVEL): Interval => {
  const tail = (1 - level) / 2;
  return {
    lower: x <= 0 ? 0 : betaQuantile(tail, x + 0.5, n - x + 0.5),
    upper: x >= n ? 1 : betaQuantile(1 - tail, x + 0.5, n - x + 0.5),
  };
};

/** Newcombe's interval for x1/n1 − x2/n2, two independent sets of units. */
export const differenceOfShares = (
  x1: number,
  n1: number,
  x2: number,
  n2: number,
  level = LEVEL,
): Interval & { readonly difference: number } => {
  const [p1, p2] = [x1 / n1, x2 / n2];
  const [a, b] = [wilson(x1, n1, level), wilson(x2, n2, level)];
  return {
    difference: p1 - p2,
    lower: p1 - p2 - Math.hypot(p1 - a.lower, b.upper - p2),
    upper: p1 - p2 + Math.hypot(a.upper - p1, p2 - b.lower),
  };
};

/**
 * Newcombe's interval for the difference of two shares of the same units.
 * @param both units with the feature both times
 * @param first only the first time
 * @param second only the second time
 * @param neither never
 */
export const differenceOfPairedShares = (
  both: number,
  first: number,
  second: number,
  neither: number,
  level = LEVEL,
): Interval & { readonly difference: number } => {
  const n = both + first + second + neither;
  const [p1, p2] = [(both + first) / n, (both + second) / n];
  const [a, b] = [wilson(both + first, n, level), wilson(both + second, n, level)];
  const margins = (both + first) * (second + neither) * (both + second) * (first + neither);
  const cross = both * neither - first * second;
  const corrected = cross > 0 ? Math.max(cross - n / 2, 0) : cross;
  const phi = margins > 0 ? corrected / Math.sqrt(margins) : 0;
  const span = (u: number, v: number) => Math.sqrt(u * u - 2 * phi * u * v + v * v);
  return {
    difference: p1 - p2,
    lower: p1 - p2 - span(p1 - a.lower, b.upper - p2),
    upper: p1 - p2 + span(a.upper - p1, p2 - b.lower),
  };
};

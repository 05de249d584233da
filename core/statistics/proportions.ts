/**
 * How sure is a share of x out of n? Each unit counts once; where runs
 * of one tester hang together, `clusteredProportion` is the one to take.
 *
 * Sources: Wilson EB, J Am Stat Assoc 1927;22:209-212; Clopper CJ & Pearson ES, Biometrika
 * 1934;26:404-413.
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

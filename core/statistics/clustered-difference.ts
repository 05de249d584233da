/**
 * How far apart are two shares of trials, when the trials of one unit hang together?
 *
 * How much they do is the intraclass correlation by analysis of variance, within the sets (Ridout MS,
 * Demétrio CGB & Firth D, Biometrics 1999;55:137-148, from memory). A unit's n trials are worth
 * n / (1 + (n − 1) ρ) independent ones (Donner A & Klar N, 2000); each share then has Wilson's interval,
 * its trials shrunk for few units as in `clustered.ts`, and the two are joined by square and add (Newcombe
 * RG, Stat Med 1998;17:873-890; for any pair of estimates Zou GY & Donner A, Stat Med 2008;27:1693-1702).
 */
import { betaQuantile, tQuantile } from './beta.ts';
import { normalQuantile } from './normal.ts';
import { wilsonAt } from './proportions.ts';
import type { UnitCount } from './rate-evidence.ts';

const total = (units: readonly UnitCount[]): UnitCount => ({
  x: units.reduce((sum, { x }) => sum + x, 0),
  n: units.reduce((sum, { n }) => sum + n, 0),
});

/**
 * The intraclass correlation of trials of one unit, pooled over sets of units that may have different
 * shares. May be below 0.
 * @returns null where no unit has two trials, every set has one unit, or all trials are alike
 */
export const intraclassOfShares = (sets: readonly (readonly UnitCount[])[]): number | null => {
  let [between, within, units, trials, dfBetween, spread] = [0, 0, 0, 0, 0, 0];
  for (const set of sets) {
    if (set.length === 0) continue;
    const { x, n } = total(set);
    units += set.length;
    trials += n;
    dfBetween += set.length - 1;
    spread += n - set.reduce((sum, one) => sum + one.n * one.n, 0) / n;
    for (const one of set) {
      between += one.n * (one.x / one.n - x / n) ** 2;
      within += (one.x * (one.n - one.x)) / one.n;
    }
  }
  if (dfBetween === 0 || trials === units) return null;
  const msBetween = between / dfBetween;
  const msWithin = within / (trials - units);
  const n0 = spread / dfBetween;
  const whole = msBetween + (n0 - 1) * msWithin;
  return whole > 0 ? (msBetween - msWithin) / whole : null;
};

/** How many independent trials the trials of these units are worth, at a correlation of 0 to 1. */
export const worthOfTrials = (units: readonly UnitCount[], correlation: number): number =>
  units.reduce((sum, { n }) => sum + n / (1 + (n - 1) * correlation), 0);

/**
 * Upper bound of the share, by Clopper and Pearson at as many independent trials as the units' are worth.
 * @param tail probability that the share is above
 */
export const clusteredUpper = (
  units: readonly UnitCount[],
  correlation: number,
  tail: number,
): number => {
  const { x, n } = total(units);
  if (n === 0 || x >= n) return 1;
  const worth = worthOfTrials(units, correlation);
  const successes = (x / n) * worth;
  return betaQuantile(1 - tail, successes + 1, worth - successes);
};

export interface ClusteredDifference {
  /** Second less first. */
  readonly difference: number;
  readonly lower: number;
  readonly upper: number;
}

/** Wilson's interval of a share, each side at its own tail. */
const sides = (units: readonly UnitCount[], correlation: number, below: number, above: number) => {
  const { x, n } = total(units);
  const share = x / n;
  const worth = worthOfTrials(units, correlation);
  const at = (tail: number) => {
    const z = normalQuantile(1 - tail);
    // With one unit nothing tells how units differ: it counts as one trial.
    const trials = units.length < 2 ? 1 : worth * (z / tQuantile(1 - tail, units.length - 1)) ** 2;
    return wilsonAt(share, trials, z);
  };
  return { share, lower: at(below).lower, upper: at(above).upper };
};

/**
 * The second share less the first, two sets of units.
 * @param correlation of the trials of one unit, 0 to 1
 * @param tails probability that the difference lies below `lower`, and above `upper`; each below 0.5
 * @returns null where a set has no unit
 */
export const clusteredDifference = (
  first: readonly UnitCount[],
  second: readonly UnitCount[],
  correlation: number,
  tails: { readonly lower: number; readonly upper: number },
): ClusteredDifference | null => {
  if (first.length === 0 || second.length === 0) return null;
  const a = sides(first, correlation, tails.upper, tails.lower);
  const b = sides(second, correlation, tails.lower, tails.upper);
  const difference = b.share - a.share;
  return {
    difference,
    lower: difference - Math.hypot(b.share - b.lower, a.upper - a.share),
    upper: difference + Math.hypot(b.upper - b.share, a.share - a.lower),
  };
};

/**
 * One-sided p-value against "the second share is not above the first": the least tail at which the interval
 * of {@link clusteredDifference} leaves zero out, to 1e-6; 0.5 where the second is not above.
 */
export const pOfClusteredRise = (
  first: readonly UnitCount[],
  second: readonly UnitCount[],
  correlation: number,
): number => {
  const isAbove = (tail: number) =>
    (clusteredDifference(first, second, correlation, { lower: tail, upper: tail })?.lower ?? 0) > 0;
  let [no, yes] = [1e-6, 0.4999];
  if (!isAbove(yes)) return 0.5;
  if (isAbove(no)) return no;
  for (let step = 0; step < 24; step++) {
    const tail = Math.sqrt(no * yes);
    if (isAbove(tail)) yes = tail;
    else no = tail;
  }
  return yes;
};

/**
 * How likely is a test to show a difference that is there? Exact, no simulation.
 *
 * Two-sided tests at the level α; only the right direction counts as shown.
 */
import { tQuantile } from './beta.ts';
import { betaBinomialAll } from './beta-binomial.ts';
import { binomialUpper } from './binomial-test.ts';
import { logGamma } from './gamma.ts';
import { normalCdf } from './normal.ts';

/** The level of every test where the caller says nothing else. */
const ALPHA = 0.05;

/**
 * Power of the exact sign test, which for a yes and no is McNemar's (McNemar Q, Psychometrika 1947;12:153-157;
 * power as in Connor RJ, Biometrics 1987;43:207-211, but exact): units that got better against units that got
 * worse, the others set aside.
 * @param units how many are asked twice
 * @param better probability that a unit gets better
 * @param worse probability that it gets worse; the two together at most 1
 * @returns 0 to 1
 */
export const signTestPower = (
  units: number,
  better: number,
  worse: number,
  alpha = ALPHA,
): number => {
  const moving = better + worse;
  if (moving <= 0) return 0;
  const movers = betaBinomialAll(units, Math.min(1, moving), 0);
  let power = 0;
  for (let m = 1; m <= units; m++) {
    // The test is symmetric at one half: twice the tail is its two-sided p.
    let critical = m + 1;
    while (critical > 0 && 2 * binomialUpper(critical - 1, m, 0.5) <= alpha) critical--;
    if (critical > m) continue;
    const rate = better / moving;
    const tail = rate >= 1 ? 1 : binomialUpper(critical, m, rate);
    power += (movers[m] as number) * tail;
  }
  return Math.min(1, power);
};

/**
 * Probability that a non-central t variable is above `t`: the normal tail over the distribution of the
 * standard deviation, by Simpson's rule (the definition; Johnson NL, Kotz S & Balakrishnan N, Continuous
 * Univariate Distributions 2, 1995, ch. 31).
 */
const nonCentralTUpper = (t: number, df: number, shift: number): number => {
  // s² is χ²/df; nearly all of s lies within 9 of its standard deviations of 1.
  const width = 9 / Math.sqrt(2 * df);
  const [low, high] = [Math.max(0, 1 - width), 1 + width * (df < 4 ? 2 : 1)];
  // With few degrees of freedom the tail turns within 1 / t of zero.
  const steps = df < 10 ? 8000 : 400;
  const logFront = (df / 2) * Math.log(df / 2) - logGamma(df / 2) + Math.log(2);
  const at = (s: number): number =>
    s === 0 && df > 1
      ? 0
      : Math.exp(logFront + (df > 1 ? (df - 1) * Math.log(s) : 0) - (df * s * s) / 2) *
        normalCdf(shift - t * s);
  let sum = 0;
  for (let step = 0; step <= steps; step++)
    sum +=
      at(low + ((high - low) * step) / steps) *
      (step === 0 || step === steps ? 1 : step % 2 === 1 ? 4 : 2);
  return Math.min(1, (sum * (high - low)) / steps / 3);
};

/**
 * Power of Student's t test of paired differences.
 * @param units how many have a difference, at least 2; may be broken, as sample size formulas give it
 * @param difference the mean that is there
 * @param sd standard deviation of the differences, above 0, in the same unit
 */
export const pairedTPower = (
  units: number,
  difference: number,
  sd: number,
  alpha = ALPHA,
): number => {
  if (units < 2) return 0;
  const df = units - 1;
  const shift = (Math.abs(difference) / sd) * Math.sqrt(units);
  return nonCentralTUpper(tQuantile(1 - alpha / 2, df), df, shift);
};

/** Probability that something that befalls a unit at this rate is seen in at least one of them. */
export const seenOnce = (units: number, rate: number): number => 1 - (1 - rate) ** units;

/** The fewest units from 2 on whose power reaches the goal; null where `most` do not. */
export const fewestUnits = (
  powerOf: (units: number) => number,
  goal: number,
  most: number,
): number | null => {
  for (let units = 2; units <= most; units++) if (powerOf(units) >= goal) return units;
  return null;
};

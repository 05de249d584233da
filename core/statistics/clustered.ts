/**
 * How sure is a share of trials, when the trials of one unit hang together?
 *
 * The unit is drawn, its trials come with it: twelve runs of one tester are not twelve witnesses. The
 * variance is that of the ratio estimator over units (Rao JNK & Scott AJ, Biometrics 1992;48:577-585);
 * it gives the design effect, never taken below 1, and the number of independent trials worth as much.
 * That number is shrunk for the few units behind the variance, by the square of z over Student's t with
 * units − 1 degrees of freedom (Korn EL & Graubard BI, Survey Methodology 1998;24:193-201), and Wilson's
 * interval is read at it. Where the data say nothing about how trials hang together (no unit or every
 * unit has the feature throughout, or there is one unit), each unit counts as a single trial: the widest
 * that can be meant.
 */
import { tQuantile } from './beta.ts';
import { LEVEL, type Interval } from './interval.ts';
import { normalQuantile } from './normal.ts';
import { wilsonAt } from './proportions.ts';

export interface ClusteredShare extends Interval {
  readonly share: number;
  /** Standard error of the share with the unit as the cluster. */
  readonly standardError: number;
  /** Variance against that of as many independent trials; null where the data do not tell. */
  readonly designEffect: number | null;
  /** Independent trials worth as much, before the shrinkage for few units. */
  readonly effectiveTrials: number;
}

/**
 * The share of successes over the trials of all units.
 * @param successes of each unit
 * @param trials of each unit, ≥ 1
 * @returns null where there is no unit
 */
export const clusteredProportion = (
  successes: ArrayLike<number>,
  trials: ArrayLike<number>,
  level = LEVEL,
): ClusteredShare | null => {
  const units = trials.length;
  let x = 0;
  let n = 0;
  let squares = 0;
  for (let unit = 0; unit < units; unit++) {
    x += successes[unit] as number;
    n += trials[unit] as number;
  }
  if (units === 0 || n === 0) return null;
  const share = x / n;
  for (let unit = 0; unit < units; unit++)
    squares += ((successes[unit] as number) - share * (trials[unit] as number)) ** 2;
  return clusteredFromSums({ units, x, n, squares }, level);
};

/** The same from sums: units, successes, trials, and Σ (successes − share · trials)² over the units. */
export const clusteredFromSums = (
  sums: {
    readonly units: number;
    readonly x: number;
    readonly n: number;
    readonly squares: number;
  },
  level = LEVEL,
): ClusteredShare => {
  const { units, x, n, squares } = sums;
  const share = x / n;
  const z = normalQuantile((1 + level) / 2);
  if (units < 2 || x === 0 || x === n)
    return {
      share,
      standardError: 0,
      designEffect: null,
      effectiveTrials: units,
      ...wilsonAt(share, units, z),
    };
  const variance = ((units / (units - 1)) * squares) / (n * n);
  const designEffect = (variance * n) / (share * (1 - share));
  const effectiveTrials = n / Math.max(1, designEffect);
  const shrunk = effectiveTrials * (z / tQuantile((1 + level) / 2, units - 1)) ** 2;
  return {
    share,
    standardError: Math.sqrt(variance),
    designEffect,
    effectiveTrials,
    ...wilsonAt(share, shrunk, z),
  };
};

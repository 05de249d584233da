/**
 * How far do pairs go before they come apart? Each pair is a lifetime in distance: ended by its first
 * damage, or only known to have lasted so far.
 *
 * The share that still holds by Kaplan and Meier (sources in `core/statistics/survival.ts`) with an interval
 * for few pairs. A Weibull curve, which alone may be read beyond the last failure, from three
 * failures on (judgement, no source).
 */
import {
  clopperPearson,
  kaplanMeier,
  weibull,
  weibullSurvival,
  type Interval,
  type Lifetime,
  type SurvivalStep,
} from '../statistics/index.ts';
import { metres, type Metres } from '../units/index.ts';
import { WEAR_LEVEL, type HoldWord } from './fit.ts';

/** Share of pairs that must still hold at the brief's distance. Judgement, no source. */
export const HOLDING_SHARE = 0.9;
const LEAST_FAILURES = 3;
const SHORTEST_M = 100;

export interface Held extends Interval {
  /** Share that still holds where the last of them broke, or at the distance asked for. */
  readonly share: number;
  /** Pairs that came as far as the distance asked for; 0: the share is only known not to be greater. */
  readonly reached: number;
}

export interface Structure {
  readonly pairs: number;
  readonly failed: number;
  /** Whether so many pairs can show that it holds at all, if no other breaks. */
  readonly canHold: boolean;
  /** Steps over metres. */
  readonly steps: readonly SurvivalStep[];
  /** At the distance asked for; null where no pair has come so far and none has broken. */
  readonly held: Held | null;
  /** From three failures on: shape (above 1: wears out), scale in metres, and the share held by it. */
  readonly weibull: {
    readonly shape: number;
    readonly scaleM: Metres;
    readonly held: Interval & { readonly share: number };
  } | null;
  readonly word: HoldWord;
}

/** More pairs than this are never asked for. */
const MOST_PAIRS = 1000;

/**
 * How many pairs must go the distance to show that it holds, if no further one breaks: 29 without a failure.
 * @param failed pairs that broke before it
 */
export const pairsToHold = (failed: number): number | null => {
  for (let pairs = failed + 1; pairs <= MOST_PAIRS; pairs++)
    if (clopperPearson(pairs - failed, pairs, WEAR_LEVEL).lower >= HOLDING_SHARE) return pairs;
  return null;
};

/**
 * Clopper and Pearson's interval over as many pairs as the curve is worth: n* = S (1 − S) / variance, by
 * Greenwood's formula (Dorey FJ & Korn EL, Stat Med 1987;6:679-687, from memory); the pairs at risk at the
 * last failure where none is left. It is the exact one while no pair leaves before it breaks.
 */
const heldAt = (
  lifetimes: readonly Lifetime[],
  steps: readonly SurvivalStep[],
  distance: number,
): Held | null => {
  const reached = lifetimes.filter(({ time }) => time >= distance).length;
  const last = steps.filter(({ time, events }) => events > 0 && time < distance).at(-1);
  if (!last)
    return reached === 0
      ? null
      : { share: 1, reached, ...clopperPearson(reached, reached, WEAR_LEVEL) };
  const { survival: share, standardError, atRisk } = last;
  const worth = standardError > 0 ? (share * (1 - share)) / standardError ** 2 : atRisk;
  const { lower, upper } = clopperPearson(share * worth, worth, WEAR_LEVEL);
  // The curve can fall between the last failure and a distance that nobody has come to.
  return { share, reached, lower: reached === 0 ? 0 : lower, upper };
};

const wordOf = (held: Held | null): HoldWord =>
  held === null
    ? 'not-known-yet'
    : held.lower >= HOLDING_SHARE
      ? 'holds'
      : held.upper < HOLDING_SHARE
        ? 'does-not-hold'
        : 'not-known-yet';

/**
 * What the pairs of a round say of its structure.
 * @param lifetimes metres of each pair: at its first damage, or so far
 * @param distance the brief's distance
 */
export const reviewStructure = (lifetimes: readonly Lifetime[], distance: Metres): Structure => {
  // A pair that broke before its first kilometre was logged is a failure, not one that was never worn.
  const worn = lifetimes
    .filter(({ time, event }) => event || time > 0)
    .map(({ time, event }) => ({ time: Math.max(time, SHORTEST_M), event }));
  const steps = kaplanMeier(worn, WEAR_LEVEL);
  const failed = worn.filter(({ event }) => event).length;
  const early = worn.filter(({ time, event }) => event && time < distance).length;
  const all = lifetimes.length;
  const held = heldAt(worn, steps, distance);
  const fit = failed >= LEAST_FAILURES ? weibull(worn) : null;
  const at = fit && weibullSurvival(fit, distance, WEAR_LEVEL);
  return {
    pairs: lifetimes.length,
    failed,
    canHold: all > 0 && clopperPearson(all - early, all, WEAR_LEVEL).lower >= HOLDING_SHARE,
    steps,
    held,
    weibull: fit &&
      at && {
        shape: fit.shape,
        scaleM: metres(fit.scale),
        held: { share: at.survival, lower: at.lower, upper: at.upper },
      },
    word: wordOf(held),
  };
};

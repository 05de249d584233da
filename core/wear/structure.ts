/**
 * How far do pairs go before they come apart? Each pair is a lifetime in distance: ended by its first
 * damage, or only known to have lasted so far.
 *
 * The share that still holds at a distance by Kaplan and Meier with the interval on the log-minus-log scale
 * (sources in `core/statistics/survival.ts`); while nothing has broken, Clopper and Pearson's interval over
 * the pairs that came so far. A Weibull curve, which alone may be read beyond the last failure, from three
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

export interface Held extends Interval {
  readonly share: number;
  /** Pairs that came so far, or broke before. */
  readonly pairs: number;
}

export interface Structure {
  readonly pairs: number;
  readonly failed: number;
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

const heldAt = (
  lifetimes: readonly Lifetime[],
  steps: readonly SurvivalStep[],
  distance: number,
): Held | null => {
  const reached = lifetimes.filter(({ time }) => time >= distance).length;
  const broken = lifetimes.filter(({ time, event }) => event && time < distance).length;
  if (broken === 0)
    return reached === 0
      ? null
      : { share: 1, pairs: reached, ...clopperPearson(reached, reached, WEAR_LEVEL) };
  const step = steps.filter(({ time }) => time <= distance).at(-1) as SurvivalStep;
  // Nobody at risk any more: the curve says nothing from the last pair on.
  const { survival, lower, upper } = step;
  return {
    share: survival,
    lower,
    upper: reached === 0 ? Math.max(upper, survival) : upper,
    pairs: reached + broken,
  };
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
  const worn = lifetimes.filter(({ time }) => time > 0);
  const steps = kaplanMeier(worn, WEAR_LEVEL);
  const failed = worn.filter(({ event }) => event).length;
  const held = heldAt(worn, steps, distance);
  const fit = failed >= LEAST_FAILURES ? weibull(worn) : null;
  const at = fit && weibullSurvival(fit, distance, WEAR_LEVEL);
  return {
    pairs: lifetimes.length,
    failed,
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

/**
 * Which Weibull distribution do lifetimes follow, when some units are only known to have lasted so long?
 *
 * Source: maximum likelihood with right censoring, the shape from its own equation (Cohen AC, Technometrics
 * 1965;7:579-588); intervals by the observed information and the delta method, on scales without bounds as
 * in Meeker WQ & Escobar LA, Statistical Methods for Reliability Data (1998), chapter 8.
 */
import { LEVEL, type Interval } from './interval.ts';
import { normalQuantile } from './normal.ts';
import type { Lifetime } from './survival.ts';

export interface WeibullFit {
  readonly n: number;
  readonly events: number;
  /** Above one: wears out, the hazard grows with time. */
  readonly shape: number;
  /** The time by which 63.2 % have had the event. */
  readonly scale: number;
  /** Of ln(scale) and ln(shape), in this order. */
  readonly covariance: readonly [readonly [number, number], readonly [number, number]];
  readonly standardErrorLogScale: number;
  readonly standardErrorLogShape: number;
  readonly logLik: number;
}

/**
 * The most likely Weibull distribution.
 *
 * @returns null where there is none: no event, or every event at the latest time seen
 * @throws RangeError for a time that is not above zero
 */
export const weibull = (lifetimes: readonly Lifetime[]): WeibullFit | null => {
  if (!lifetimes.every(({ time }) => time > 0 && time < Infinity))
    throw new RangeError('A lifetime must be above zero');
  const n = lifetimes.length;
  const happened = lifetimes.filter(({ event }) => event);
  const events = happened.length;
  if (events === 0) return null;
  const latest = lifetimes.reduce((most, { time }) => Math.max(most, time), 0);
  // In shares of the latest time every power stays between nought and one.
  const logs = lifetimes.map(({ time }) => Math.log(time / latest));
  const eventLogs = happened.reduce((sum, { time }) => sum + Math.log(time / latest), 0);
  if (eventLogs > -1e-12 * events) return null;

  /** Σ tᵏ (ln t)ʲ for j = 0, 1, 2. */
  const sums = (k: number): [number, number, number] => {
    let [s0, s1, s2] = [0, 0, 0];
    for (const log of logs) {
      const power = Math.exp(k * log);
      s0 += power;
      s1 += power * log;
      s2 += power * log * log;
    }
    return [s0, s1, s2];
  };
  // The equation rises with the shape throughout, so its root is kept between two bounds.
  let [low, high] = [0, Infinity];
  let shape = -events / eventLogs;
  for (let round = 0; round < 200; round++) {
    const [s0, s1, s2] = sums(shape);
    const value = s1 / s0 - 1 / shape - eventLogs / events;
    if (value < 0) low = shape;
    else high = shape;
    const rise = s2 / s0 - (s1 / s0) ** 2 + 1 / shape ** 2;
    const newton = shape - value / rise;
    const next =
      newton > low && newton < high ? newton : high < Infinity ? (low + high) / 2 : 2 * low;
    const done = Math.abs(next - shape) <= 1e-14 * shape;
    shape = next;
    if (done) break;
  }

  const logScale = Math.log(sums(shape)[0] / events) / shape;
  let [wEvents, e0, e1, e2] = [0, 0, 0, 0];
  lifetimes.forEach(({ event }, i) => {
    const w = shape * ((logs[i] as number) - logScale);
    if (event) wEvents += w;
    e0 += Math.exp(w);
    e1 += w * Math.exp(w);
    e2 += w * w * Math.exp(w);
  });
  const byScale = shape ** 2 * e0;
  const both = -shape * (e0 - events + e1);
  const byShape = e1 + e2 - wEvents;
  const determinant = byScale * byShape - both ** 2;
  const [scaleVariance, shapeVariance] = [byShape / determinant, byScale / determinant];
  const joint = -both / determinant;
  return {
    n,
    events,
    shape,
    scale: latest * Math.exp(logScale),
    covariance: [
      [scaleVariance, joint],
      [joint, shapeVariance],
    ],
    standardErrorLogScale: Math.sqrt(scaleVariance),
    standardErrorLogShape: Math.sqrt(shapeVariance),
    logLik: events * (Math.log(shape) - Math.log(latest)) + wEvents - eventLogs - e0,
  };
};

/** Standard error of a value with these slopes by ln(scale) and ln(shape). */
const deltaError = ({ covariance: [[a, b], [, d]] }: WeibullFit, u: number, v: number): number =>
  Math.sqrt(u * u * a + 2 * u * v * b + v * v * d);

export interface WeibullSurvival extends Interval {
  /** Share still without the event. */
  readonly survival: number;
}

/** The share without the event at a time above zero; its interval on the scale of ln(-ln S). */
export const weibullSurvival = (fit: WeibullFit, time: number, level = LEVEL): WeibullSurvival => {
  const w = fit.shape * Math.log(time / fit.scale);
  const half = normalQuantile((1 + level) / 2) * deltaError(fit, -fit.shape, w);
  const share = (at: number): number => Math.exp(-Math.exp(at));
  return { survival: share(w), lower: share(w + half), upper: share(w - half) };
};

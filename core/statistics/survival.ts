/**
 * How long until an event, when some units are only known to have lasted so long?
 *
 * Sources: Kaplan EL & Meier P, J Am Stat Assoc 1958;53:457-481; Greenwood's variance (1926) with the
 * interval on the log-minus-log scale as in Kalbfleisch JD & Prentice RL, The Statistical Analysis of
 * Failure Time Data (1980).
 */
import type { Interval } from './interval.ts';
import { LEVEL } from './interval.ts';
import { normalQuantile } from './normal.ts';

export interface Lifetime {
  readonly time: number;
  /** False: still without the event when last seen. */
  readonly event: boolean;
}

export interface SurvivalStep extends Interval {
  readonly time: number;
  readonly atRisk: number;
  readonly events: number;
  readonly censored: number;
  /** Share without the event after this time. */
  readonly survival: number;
  /** Greenwood's standard error of the share. */
  readonly standardError: number;
}

/** The curve's steps, one for each time seen, ascending. A unit censored at an event's time is at risk then. */
export const kaplanMeier = (lifetimes: readonly Lifetime[], level = LEVEL): SurvivalStep[] => {
  const z = normalQuantile((1 + level) / 2);
  const sorted = [...lifetimes].sort((a, b) => a.time - b.time);
  const steps: SurvivalStep[] = [];
  let survival = 1;
  let greenwood = 0;
  for (let at = 0; at < sorted.length;) {
    const { time } = sorted[at] as Lifetime;
    const atRisk = sorted.length - at;
    let [events, censored] = [0, 0];
    for (; at < sorted.length && (sorted[at] as Lifetime).time === time; at++)
      if ((sorted[at] as Lifetime).event) events++;
      else censored++;
    survival *= 1 - events / atRisk;
    if (events < atRisk) greenwood += events / (atRisk * (atRisk - events));
    const gone = survival <= 0;
    const stretch = gone || survival >= 1 ? 0 : (z * Math.sqrt(greenwood)) / Math.log(survival);
    steps.push({
      time,
      atRisk,
      events,
      censored,
      survival,
      standardError: gone ? 0 : survival * Math.sqrt(greenwood),
      lower: gone ? 0 : survival ** Math.exp(-stretch),
      upper: gone ? 0 : survival ** Math.exp(stretch),
    });
  }
  return steps;
};

/** The first time at which the curve is at or below one half; null where it never is. */
export const medianSurvival = (steps: readonly SurvivalStep[]): number | null =>
  steps.find(({ survival }) => survival <= 0.5 + 1e-12)?.time ?? null;

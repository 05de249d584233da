/** From when until when does a plan put a pair in a tester's hands? */
import type { HandOutPlan } from '../records/index.ts';

const WEEK_MS = 7 * 86_400_000;

export type PlannedPlace = HandOutPlan['places'][number];

/** Milliseconds since 1970. */
export interface PlaceSpan {
  readonly fromMs: number;
  readonly untilMs: number;
}

type Periods = Pick<HandOutPlan, 'from' | 'weeksPerPeriod'>;

/** When a period begins; the period after the last one begins when the plan ends. */
export const periodStartMs = ({ from, weeksPerPeriod }: Periods, period: number): number =>
  Date.parse(from) + period * weeksPerPeriod * WEEK_MS;

/** The days of a place: its period's, or its own where a tester stopped or took over within the period. */
export const placeSpan = (plan: Periods, { period, from, until }: PlannedPlace): PlaceSpan => ({
  fromMs: from === undefined ? periodStartMs(plan, period) : Date.parse(from),
  untilMs: until === undefined ? periodStartMs(plan, period + 1) : Date.parse(until),
});

/** The first period that begins at an instant or after it; as many as there are periods where none does. */
export const firstPeriodFrom = (plan: HandOutPlan, atMs: number): number => {
  for (let period = 0; period < plan.periods; period++)
    if (periodStartMs(plan, period) >= atMs) return period;
  return plan.periods;
};

/**
 * After how many kilometres in the pair does a complaint come a second time?
 *
 * The tester is the unit, and counts their own kilometres in the pair, so that a pair that came worn counts
 * from where they took it. The event is the second asked run of one pair that reported it; a tester without
 * one is censored at the kilometres before the last asked run: handed back, or the test still runs. Curve by
 * Kaplan and Meier (sources in `core/statistics/survival.ts`).
 */
import { groupBy, kaplanMeier, medianSurvival, type SurvivalStep } from '../statistics/index.ts';
import { metres, type Metres } from '../units/index.ts';
import { reports, type CellName, type ObservedRun } from './observed-runs.ts';

export interface FirstRepeat {
  /** Steps over metres in the pair; `survival` is the share of testers without a repeated complaint. */
  readonly steps: readonly SurvivalStep[];
  /** Metres by which half the testers have it twice; null where the curve stays above, few were left, or it is no distance. */
  readonly medianM: Metres | null;
  readonly testers: number;
  readonly repeated: number;
}

/** Below so many at risk a median would be the story of one or two testers. */
const LEAST_AT_RISK = 3;
/** Less says that runs began at the same time, not when a complaint came again. Judgement, no source. */
const LEAST_M = 100;

/** A tester with several pairs of the round counts by the pair that came first to an event, else the longest. */
export const firstRepeat = (runs: readonly ObservedRun[], cell: CellName): FirstRepeat => {
  const lifetimes = [...groupBy(runs, ({ tester }) => tester).values()].map((own) => {
    const wearings = [...groupBy(own, ({ pair }) => pair).values()].map((worn) => {
      const sorted = [...worn].sort((a, b) => a.startMs - b.startMs || (a.run < b.run ? -1 : 1));
      const start = sorted[0]?.pairM ?? 0;
      const second = sorted.filter((run) => reports(run, cell))[1];
      const last = sorted.at(-1)?.pairM ?? 0;
      return { time: (second?.pairM ?? last) - start, event: second !== undefined };
    });
    const events = wearings.filter(({ event }) => event);
    const times = (events.length > 0 ? events : wearings).map(({ time }) => time);
    return events.length > 0
      ? { time: Math.min(...times), event: true }
      : { time: Math.max(...times), event: false };
  });
  const steps = kaplanMeier(lifetimes);
  const half = medianSurvival(steps);
  const there = steps.find(({ time }) => time === half);
  return {
    steps,
    medianM:
      there && there.atRisk >= LEAST_AT_RISK && there.time >= LEAST_M ? metres(there.time) : null,
    testers: lifetimes.length,
    repeated: lifetimes.filter(({ event }) => event).length,
  };
};

/**
 * After how many kilometres on the pair is a complaint first repeated?
 *
 * The tester is the unit. The event is the second asked run that reported it; a tester without one is
 * censored at the kilometres after the last asked run: handed back, or the test still runs. Curve by
 * Kaplan and Meier (sources in `core/statistics/survival.ts`).
 */
import { groupBy, kaplanMeier, medianSurvival, type SurvivalStep } from '../statistics/index.ts';
import type { Metres } from '../units/index.ts';
import { reports, type CellName, type ObservedRun } from './observed-runs.ts';

export interface FirstRepeat {
  /** Steps over metres on the pair; `survival` is the share of testers without a repeated complaint. */
  readonly steps: readonly SurvivalStep[];
  /** Metres by which half the testers have it repeated; null where the curve stays above one half. */
  readonly medianM: Metres | null;
  readonly testers: number;
  readonly repeated: number;
}

/** A tester with several pairs of the round counts by the pair that came first to an event, else the last. */
export const firstRepeat = (runs: readonly ObservedRun[], cell: CellName): FirstRepeat => {
  const lifetimes = [...groupBy(runs, ({ tester }) => tester).values()].map((own) => {
    const sorted = [...own].sort((a, b) => a.startMs - b.startMs || (a.run < b.run ? -1 : 1));
    const second = sorted.filter((run) => reports(run, cell))[1];
    return second
      ? { time: second.pairM, event: true }
      : { time: Math.max(...sorted.map(({ pairM }) => pairM)), event: false };
  });
  const steps = kaplanMeier(lifetimes);
  return {
    steps,
    medianM: medianSurvival(steps) as Metres | null,
    testers: lifetimes.length,
    repeated: lifetimes.filter(({ event }) => event).length,
  };
};

/**
 * Is a run that is about to be saved one that was logged already?
 *
 * Wider than what `checkRuns` leaves out by itself: here a person is asked, and may say that it is another one.
 */
import { PLAUSIBLE_PACE_S_PER_KM } from './plausible.ts';
import type { LoggedRun } from './logged-run.ts';
import { isSameRun, SAME_RUN_SHARE } from './runs.ts';

const isAsFar = (a: LoggedRun, b: LoggedRun): boolean =>
  Math.abs(a.distanceM - b.distanceM) <= SAME_RUN_SHARE * Math.max(a.distanceM, b.distanceM);

/** How long a run took at the least, ms: as typed, or at the fastest pace that nobody is asked about. */
const leastMs = ({ startMs, endMs, distanceM }: LoggedRun): number =>
  Math.max(endMs - startMs, distanceM * PLAUSIBLE_PACE_S_PER_KM.fastest);

/** Whether the later began before the earlier can have ended: nobody runs both. */
const clash = (a: LoggedRun, b: LoggedRun): boolean => {
  const [earlier, later] = a.startMs <= b.startMs ? [a, b] : [b, a];
  return later.startMs - earlier.startMs < leastMs(earlier);
};

/** The day where the runner was. */
const localDay = ({ run }: LoggedRun): string => run.startedAt.slice(0, 10);

/** As long to the second, or nobody knows at which hour it was. */
const isAlike = (a: LoggedRun, b: LoggedRun, isHourKnown: boolean): boolean =>
  !isHourKnown || (a.run.durationS !== undefined && a.run.durationS === b.run.durationS);

/**
 * The run of the same tester that this one may be: what `checkRuns` takes for the same; as far (within 1 %) and at a
 * time that clashes, in any pair; or as far in the same pair on the same day, and as long or at an hour that nobody
 * said. Null where there is none.
 * @param isHourKnown whether somebody, or a clock, said at which hour `run` began
 */
export const sameRunAs = (
  run: LoggedRun,
  others: readonly LoggedRun[],
  isHourKnown: boolean,
): LoggedRun | null =>
  others.find(
    (other) =>
      other.id !== run.id &&
      other.tester === run.tester &&
      (isSameRun(other, run) ||
        (isAsFar(other, run) &&
          (clash(other, run) ||
            (other.pair === run.pair &&
              localDay(other) === localDay(run) &&
              isAlike(other, run, isHourKnown))))),
  ) ?? null;

/**
 * What becomes of a plan when a tester stops? Only what has not happened changes: every place, or part of one, that
 * lies before the instant stays as it is.
 */
import type { HandOutPlan, RecordId } from '../records/index.ts';
import { firstPeriodFrom, placeSpan } from './plan-days.ts';

export interface Stop {
  readonly tester: RecordId;
  /** From then on; an instant with offset, and not before now. */
  readonly at: string;
  /** Who takes the pairs over; null: they stay in store. */
  readonly reserve: RecordId | null;
}

/** The plan without the tester from the instant on. */
export const stopTester = (plan: HandOutPlan, { tester, at, reserve }: Stop): HandOutPlan => {
  const atMs = Date.parse(at);
  const places = plan.places.flatMap((place) => {
    const { fromMs, untilMs } = placeSpan(plan, place);
    if (place.tester !== tester || untilMs <= atMs) return [place];
    const isRunning = fromMs < atMs;
    return [
      ...(isRunning ? [{ ...place, until: at }] : []),
      ...(reserve === null ? [] : [{ ...place, tester: reserve, ...(isRunning && { from: at }) }]),
    ];
  });
  const gone = firstPeriodFrom(plan, atMs);
  const testers = plan.testers.map((one) =>
    one.tester === tester
      ? { ...one, droppedOutAt: Math.min(gone, one.droppedOutAt ?? gone) }
      : one,
  );
  const isNew = reserve !== null && !testers.some((one) => one.tester === reserve);
  return { ...plan, places, testers: isNew ? [...testers, { tester: reserve }] : testers };
};

/**
 * Whether a tester could take over from another: nothing of the plan is in their hands at the same time, they wear
 * none of these rounds in another place of the plan, and they did not stop themselves.
 */
export const couldTakeOver = (
  plan: HandOutPlan,
  candidate: RecordId,
  { tester, at }: Pick<Stop, 'tester' | 'at'>,
): boolean => {
  const own = plan.testers.find((one) => one.tester === candidate);
  if (candidate === tester || own?.droppedOutAt !== undefined) return false;
  const atMs = Date.parse(at);
  const left = plan.places.filter(
    (place) => place.tester === tester && placeSpan(plan, place).untilMs > atMs,
  );
  return plan.places
    .filter((place) => place.tester === candidate)
    .every((held) =>
      left.every(({ period, round }) => held.period !== period && held.round !== round),
    );
};

/** How far has a pair come, on what, on whose feet, and may it be worn? */
import {
  isWithin,
  pairMileage,
  runLoad,
  sumLoads,
  type LoggedRun,
  type RunLoad,
} from '../mileage/index.ts';
import { isStanding, type RecordId, type RecordOf, type Tester } from '../records/index.ts';
import { metres, type Metres } from '../units/index.ts';
import type { LoggedPair, ProjectLog } from './project-log.ts';
import type { PairReview } from './review-types.ts';

/**
 * Reviews one pair.
 * @param stops the project's stop-use notices
 * @param testers bodies by id, for the load of each run
 * @param silent days by tester, of those who are
 */
export const reviewPair = (
  { id, round, record: { body }, runs, spans, tolerance }: LoggedPair,
  { project, nowMs }: ProjectLog,
  stops: readonly RecordOf<'stop-use'>[],
  testers: ReadonlyMap<RecordId, Tester>,
  silent: ReadonlyMap<RecordId, number>,
): PairReview => {
  const holder = spans.find((span) => isWithin(span, nowMs))?.tester ?? null;
  const briefM = project.brief.distanceM;
  const loads = runs.map((run) => ({
    run,
    distance: run.distanceM,
    load: loadOf(run, testers.get(run.tester)),
  }));
  const mileage = pairMileage(id, runs, body.carriedInM ?? metres(0), spans);
  const stop = stops.find((one) => one.body.pairs.includes(id) && isStanding(one.body, nowMs));
  const byDistance = (a: { distanceM: number }, b: { distanceM: number }) =>
    b.distanceM - a.distanceM;
  return {
    id,
    code: body.code,
    round,
    sizeMm: body.sizeMm,
    totalM: mileage.totalM,
    carriedInM: mileage.carriedInM,
    runs: mileage.runs,
    shareOfBrief: briefM > 0 ? mileage.totalM / briefM : 0,
    bySurface: mileage.bySurface,
    load: sumLoads(loads),
    course: courseOf(loads, body.carriedInM ?? metres(0)),
    byTester: [...mileage.byTester]
      .map(([tester, distanceM]) => ({ tester, distanceM }))
      .sort(byDistance),
    byHandOut: [...mileage.byHandOut]
      .map(([handOut, distanceM]) => ({ handOut, distanceM }))
      .sort(byDistance),
    holder,
    holderSilentDays: holder === null ? null : (silent.get(holder) ?? null),
    lastRunMs: mileage.lastRunMs,
    stopUse: stop ? { id: stop.revision.id, reason: stop.body.reason } : null,
    outOfTolerance: tolerance,
  };
};

const courseOf = (
  loads: readonly { readonly run: LoggedRun; readonly load: RunLoad | null }[],
  carriedInM: Metres,
): PairReview['course'] => {
  let [totalM, stepsPerShoe] = [carriedInM as number, 0];
  return [...loads]
    .sort((a, b) => a.run.endMs - b.run.endMs)
    .map(({ run, load }) => {
      totalM += run.distanceM;
      stepsPerShoe += load?.stepsPerShoe ?? 0;
      return { atMs: run.endMs, totalM: metres(totalM), stepsPerShoe: Math.round(stepsPerShoe) };
    });
};

/** The load of a run on each shoe; null where its steps are not known. */
export const loadOf = ({ distanceM, run }: LoggedRun, tester: Tester | undefined): RunLoad | null =>
  runLoad({
    distance: distanceM,
    time: run.track?.movingS ?? run.durationS ?? null,
    stepsFromTrack: run.track?.stepsPerShoe ?? null,
    heightM: tester?.heightM ?? null,
    mass: tester?.massKg ?? null,
  });

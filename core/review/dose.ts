/**
 * How much has a pair carried by an instant: in distance, in steps, or in force over its steps?
 *
 * Steps and load are given as the distance that a reference runner covers with as many: 450 steps in each
 * shoe a kilometre, 70 kg at 3 m/s, 2.51 body weights at the peak (steps and force as in
 * `core/mileage/load.ts`), so that one model serves all three.
 */
import { GRAVITY, mileageAt, peakInBodyWeights } from '../mileage/index.ts';
import type { BenchCheck, RecordId, Tester } from '../records/index.ts';
import { metres, type Metres } from '../units/index.ts';
import { loadOf } from './pair-review.ts';
import type { LoggedPair } from './project-log.ts';

export const doses = ['distance', 'steps', 'load'] as const;
export type Dose = (typeof doses)[number];

const STEPS_PER_M = 0.45;
const REFERENCE_KN = (70 * GRAVITY * peakInBodyWeights(3)) / 1000;

/** What a metre of the reference runner is in each dose: metres, steps in each shoe, kilonewtons. */
export const PER_METRE: Readonly<Record<Dose, number>> = {
  distance: 1,
  steps: STEPS_PER_M,
  load: STEPS_PER_M * REFERENCE_KN,
};

/**
 * The dose on a pair at a bench check, in metres of the reference runner.
 * @returns null where it is not known: a run before it has no steps or force, the pair came worn, or the
 * shop gave a distance of its own
 */
export const doseAt = (
  pair: LoggedPair,
  check: BenchCheck,
  testers: ReadonlyMap<RecordId, Tester>,
  dose: Dose,
): Metres | null => {
  const atMs = Date.parse(check.at);
  if (dose === 'distance') return check.distanceM ?? mileageAt(pair.curve, atMs);
  if ((pair.record.body.carriedInM ?? 0) > 0 || check.distanceM !== undefined) return null;
  let sum = 0;
  for (const run of pair.runs) {
    if (run.endMs > atMs || run.distanceM <= 0) continue;
    const load = loadOf(run, testers.get(run.tester));
    const part = dose === 'steps' ? load?.stepsPerShoe : load?.loadKN;
    if (part === undefined || part === null) return null;
    sum += part;
  }
  return metres(sum / PER_METRE[dose]);
};

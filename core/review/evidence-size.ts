/** How much evidence stands behind a figure. */
import type { LoggedRun } from '../mileage/index.ts';
import { metres, type Metres } from '../units/index.ts';
import type { EvidenceSize } from './review-types.ts';

/** Distance of all the runs. */
export const sumM = (runs: readonly LoggedRun[]): Metres =>
  metres(runs.reduce((sum, { distanceM }) => sum + distanceM, 0));

export const sizeOf = (pairs: number, runs: readonly LoggedRun[]): EvidenceSize => ({
  pairs,
  testers: new Set(runs.map(({ tester }) => tester)).size,
  runs: runs.length,
  distanceM: sumM(runs),
});

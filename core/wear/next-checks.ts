/**
 * Which pair is worth measuring next, and at which distance? The one whose reading is expected to narrow the
 * 90 % interval at the brief's distance most, before anybody knows what the reading will be (Lindley DV, Ann
 * Math Stat 1956;27:986-1005, with the variance in place of the entropy).
 */
import type { Metres } from '../units/index.ts';
import type { CandidateCheck, Of, WearFit } from './fit.ts';
import type { WearKind } from './series.ts';

/** A candidate with the share, 0 to 1, by which the interval is expected to narrow. */
export interface RankedCheck extends CandidateCheck {
  readonly narrowing: number;
}

/**
 * The candidates from the most to the least telling; equal ones in the order given.
 * @param goal distance at which the value is wanted
 * @param of the pair whose value is wanted; absent: a new pair's
 */
export const nextChecks = <Kind extends WearKind>(
  fit: WearFit<Kind>,
  candidates: readonly CandidateCheck[],
  goal: Metres,
  of: Of = {},
): readonly RankedCheck[] =>
  candidates
    .map((candidate) => ({ ...candidate, narrowing: fit.narrowing(candidate, goal, of) }))
    .sort((a, b) => b.narrowing - a.narrowing);

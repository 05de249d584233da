/** What is said of a round beside its counts: what recurs looked at closer, the verdict, and what changed? */
import type { LayersAndHeat } from '../rounds/index.ts';
import { lookCloser, recurring, type CloserLook } from './closer-look.ts';
import { compareRounds, type RoundComparison } from './compare-rounds.ts';
import { influenceOn, type RoundInfluence } from './influence.ts';
import { lookAtLayers } from './layers-look.ts';
import type { ProjectLog } from './project-log.ts';
import type { Review, RoundReview } from './review-types.ts';
import { verdictOf, type Verdict } from './verdict.ts';

export interface RoundLook {
  /** Of what recurs. */
  readonly looks: readonly CloserLook[];
  readonly verdict: Verdict;
  /** Who alone decides it. */
  readonly influence: RoundInfluence;
  /** What its changes did, against the round before; null for the first. */
  readonly against: RoundComparison | null;
  /** Layers of material against heat and wet; null where none were counted. */
  readonly layers: LayersAndHeat | null;
}

/** @param earlier the round before; absent for the first */
export const lookAtRound = (
  log: ProjectLog,
  round: RoundReview,
  earlier: RoundReview | undefined,
): RoundLook => {
  const verdict = verdictOf(log, round);
  return {
    looks: lookCloser(log, round.id, recurring(round)),
    verdict,
    influence: influenceOn(log, round, verdict),
    against: earlier ? compareRounds(log, earlier, round) : null,
    layers: lookAtLayers(log, round.id),
  };
};

/** One for each round, in their order. */
export const lookAtRounds = (log: ProjectLog, { rounds }: Review): readonly RoundLook[] =>
  rounds.map((round, at) => lookAtRound(log, round, rounds[at - 1]));

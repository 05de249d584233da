/** A project's log, reviewed once; what costs more is worked out when it is first asked for, and kept. */
import {
  influences,
  reviewProject,
  verdictOf,
  type ProjectLog,
  type Review,
  type RoundInfluence,
  type Verdict,
} from '../../../core/review/index.ts';

export interface Opened {
  readonly log: ProjectLog;
  readonly review: Review;
  /** One for each round, in their order. */
  readonly verdicts: () => readonly Verdict[];
  readonly influences: () => readonly RoundInfluence[];
}

/** Reviews an opened log. */
export const openedOf = (log: ProjectLog): Opened => {
  const review = reviewProject(log);
  let verdicts: readonly Verdict[] | null = null;
  let influenced: readonly RoundInfluence[] | null = null;
  const verdictsOf = () => (verdicts ??= review.rounds.map((round) => verdictOf(log, round)));
  return {
    log,
    review,
    verdicts: verdictsOf,
    influences: () => (influenced ??= influences(log, review, verdictsOf())),
  };
};

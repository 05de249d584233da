/**
 * What of a review does a screen need at once? All but what is asked for one thing at a time: the runs
 * behind a cell, a pair's course, the bench readings. With 1,000 testers that is nearly all of it.
 */
import type {
  RoundComplaints,
  RoundPain,
  TwoSidedReview,
  WeighedCell,
} from '../complaints/index.ts';
import type { LeftOut } from '../records/index.ts';
import type { PairReview, Review, RoundReview } from './review-types.ts';

/** Whom a screen names as proven; of a thousand nobody reads more. */
const MOST_NAMED = 12;

/** The counts of one cell and what they prove, without the runs and testers behind it. */
export type CellSummary = Omit<WeighedCell, 'byTester' | 'runIds'>;

/** The answers on pain, without the runs and testers behind them. */
export type PainSummary = Omit<RoundPain, 'byTester' | 'runIds'>;

/** The answers to a two-sided question, without each tester's. */
export type TwoSidedSummary = Omit<TwoSidedReview, 'testers'>;

export interface RoundSummary extends Omit<
  RoundReview,
  'complaints' | 'pain' | 'zones' | 'twoSided'
> {
  readonly twoSided: readonly TwoSidedSummary[];
  readonly pain: PainSummary | null;
  readonly complaints: Omit<RoundComplaints, 'cells'> & {
    readonly cells: readonly CellSummary[];
  };
}

export type PairSummary = Omit<PairReview, 'course' | 'byTester' | 'byHandOut'>;

export interface ReviewSummary extends Omit<Review, 'rounds' | 'pairs' | 'bench' | 'leftOut'> {
  readonly rounds: readonly RoundSummary[];
  readonly pairs: readonly PairSummary[];
  /** How many records this version cannot read. */
  readonly leftOut: Readonly<Record<LeftOut['why'], number>>;
}

/** Names as many testers as a screen does. */
export const summarisePain = ({
  byTester: _byTester,
  runIds: _runIds,
  provenTesters,
  ...pain
}: RoundPain): PainSummary => ({ ...pain, provenTesters: provenTesters.slice(0, MOST_NAMED) });

/** The review without its long lists. */
export const summarise = (review: Review): ReviewSummary => {
  const { rounds, pairs, bench: _bench, leftOut, ...rest } = review;
  const unread = { 'unknown-kind': 0, 'newer-schema': 0, unreadable: 0 };
  for (const { why } of leftOut) unread[why]++;
  return {
    ...rest,
    leftOut: unread,
    rounds: rounds.map(({ complaints, pain, twoSided, zones: _zones, ...round }) => ({
      ...round,
      twoSided: twoSided.map(({ testers: _testers, ...one }) => one),
      pain: pain && summarisePain(pain),
      complaints: {
        ...complaints,
        cells: complaints.cells.map(
          ({ byTester: _byTester, runIds: _runIds, provenTesters, ...cell }) => ({
            ...cell,
            provenTesters: provenTesters.slice(0, MOST_NAMED),
          }),
        ),
      },
    })),
    pairs: pairs.map(
      ({ course: _course, byTester: _byTester, byHandOut: _byHandOut, ...pair }) => pair,
    ),
  };
};

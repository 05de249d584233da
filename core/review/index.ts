export * from './review-types.ts';
export * from './project-log.ts';
export * from './review.ts';
export * from './standing/standing.ts';
export { newlyWaiting } from './standing/newly-waiting.ts';
export { decisionOn, type Subject } from './standing/rulings.ts';
export { isProven, lookCloser, recurring, type CloserLook } from './closer-look.ts';
export * from './dose.ts';
export type { LimitOutlook, WearPlace } from './wear-series.ts';
export type { FittedLimit } from './wear-limits.ts';
export type { SpreadCause } from './spread-cause.ts';
export * from './wear-look.ts';
export * from './verdict.ts';
export { influences, type Influence, type RoundInfluence } from './influence.ts';
export { overviewOf, type NextStep, type Overview } from './overview.ts';
export { isReady, nextStep, startOf, startSteps, type Start, type StartStep } from './start.ts';
export * from './felt.ts';
export * from './compare-rounds.ts';
export * from './propose-outcome.ts';
export * from './summary.ts';
export { isOutOfTolerance, type PairTolerance } from './tolerance.ts';
export { withoutPairsOutOfTolerance } from './without-pairs.ts';
export type { GaugeReview } from './gauges.ts';
export * from './layers-look.ts';
export * from './feet-look.ts';
export * from './freeze.ts';
export { lookAtRounds, type RoundLook } from './round-look.ts';
export * from './round-report.ts';
export type { PairLine, PairReading, SaidOfRun } from './report-parts.ts';
export { feetAnswers } from './round-review.ts';
export { byCode } from './by-code.ts';
export type { Preference } from './preferences.ts';
export * from './panel-check.ts';
export { calloutsOf, type Callout, type Reported, type Side } from './callouts.ts';
export {
  calendarOf,
  MOST_ROWS,
  type Calendar,
  type CalendarFold,
  type CalendarRow,
  type CalendarRun,
} from './calendar.ts';
export {
  arrivedAnswer,
  lookAtChanges,
  type Arrival,
  type CarriedFinding,
  type ChangesLook,
  type ComfortMove,
  type FeltMove,
  type MoveWord,
} from './changes-look.ts';
export { lookAtShoe, type RoundFelt, type ShoeComplaint, type ShoeLook } from './shoe-look.ts';
export * from './zone-look.ts';
export {
  lookAtComfort,
  lookAtTwoSided,
  type AttributeLook,
  type ComfortRound,
  type TwoSidedLook,
  type TwoSidedRound,
} from './comfort-look.ts';
export { arrivalOf, type ArrivalDimension } from './arrival-look.ts';
export * from './wear-cards.ts';
export * from './check-list.ts';
export {
  verdictGrid,
  type GridCell,
  type GridPicture,
  type GridRow,
  type GridShare,
  type VerdictGrid,
} from './verdict-grid.ts';
export { settleRate, testersToShow, type NextVisit, type Settle } from './settle.ts';
export { expectedAt, type Expected } from './pace.ts';
export { mustNotRun, pairRows, type PairRow } from './pair-rows.ts';
export { lookAtPair, type PairLook } from './pair-look.ts';
export type { PairBench } from './pair-bench.ts';
export { testerRows, type TesterRow } from './tester-rows.ts';
export { lookAtTester, type FeltByTester, type TesterLook } from './tester-look.ts';
export type { FeltInRuns, Note } from './felt-in-runs.ts';
export { zoneOfDamageAt } from './shoe-spots.ts';
export { lookAtRun, type Neighbour, type RunLook } from './run-look.ts';
export {
  listRuns,
  runFilters,
  runSorts,
  type RunFilter,
  type RunQuery,
  type RunRow,
  type RunSlice,
  type RunSort,
} from './run-list.ts';
export { runStates, type RunState } from './run-states.ts';
export { versionsOf, type RunField, type RunVersion } from './run-versions.ts';
export * from './talk-look.ts';
export { doubtsOf, unaskedDoubts, type Doubt, type DoubtFacts } from './doubts.ts';
export { findingTurns } from './finding-turns.ts';
export { outlyingScores, type OutlyingScore } from './score-doubts.ts';
export {
  lookAtThanks,
  thanksDue,
  thanksOf,
  type ThanksDue,
  type ThanksLook,
  type Withheld,
} from './thanks-due.ts';

/**
 * Which runs and readings of a project count, and what waits for its lead? `openProject` reads the log through this,
 * so every figure does: what waits or was set aside is out of the runs, out of the checks and out of the records.
 */
import type { HandOutSpan } from '../../mileage/index.ts';
import type { RecordId, RecordOf } from '../../records/index.ts';
import { rulingsIn } from './rulings.ts';
import {
  standingReadings,
  type DecidedReadingItem,
  type WaitingGaugeItem,
  type WaitingReadingItem,
} from './standing-readings.ts';
import {
  standingRuns,
  type DecidedRunItem,
  type StandingRuns,
  type WaitingRunItem,
} from './standing-runs.ts';

/** What a lead is asked to decide. */
export type WaitingItem = WaitingRunItem | WaitingReadingItem | WaitingGaugeItem;
/** What a lead decided, as far as it holds. */
export type DecidedItem = DecidedRunItem | DecidedReadingItem;

export interface Standing {
  /** Runs first, by start; then readings, by time. What stays out of the figures goes before what counts meanwhile. */
  readonly waiting: readonly WaitingItem[];
  /** Latest first. */
  readonly decided: readonly DecidedItem[];
}

export interface StandingRecords extends Standing {
  readonly runs: StandingRuns;
  readonly checks: readonly RecordOf<'bench-check'>[];
}

/** The records of a project that the question needs. */
export interface OfProject {
  readonly runs: readonly RecordOf<'run'>[];
  readonly checks: readonly RecordOf<'bench-check'>[];
  readonly decisions: readonly RecordOf<'decision'>[];
  readonly pairs: readonly RecordOf<'pair'>[];
  readonly rounds: readonly RecordOf<'round'>[];
  readonly spans: readonly HandOutSpan[];
  readonly nowMs: number;
}

const whenMs = (item: WaitingItem): number =>
  item.about === 'run'
    ? Date.parse(item.startedAt)
    : item.about === 'reading'
      ? Date.parse(item.measuredAt)
      : Infinity;

const byUrgency = (a: WaitingItem, b: WaitingItem): number =>
  Number(a.counts) - Number(b.counts) || whenMs(a) - whenMs(b) || 0;

/** Sorts out runs and readings of a project. */
export const standingOf = (own: OfProject): StandingRecords => {
  const rulings = rulingsIn(own.decisions);
  const pairs = new Set<RecordId>(own.pairs.map(({ revision }) => revision.id));
  const runs = standingRuns(own.runs, { pairs, spans: own.spans, nowMs: own.nowMs }, rulings);
  const readings = standingReadings(own.checks, own.pairs, own.rounds, rulings);
  return {
    runs,
    checks: readings.checks,
    waiting: [...runs.waitingItems, ...readings.waitingItems.toSorted(byUrgency)],
    decided: [...runs.decidedItems, ...readings.decidedItems].toSorted(
      (a, b) => Date.parse(b.at) - Date.parse(a.at),
    ),
  };
};

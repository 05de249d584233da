/**
 * The test day by day: a row for each pair, with whose hands it was in, its runs, bench checks, damage, and the time
 * in which nobody may run in it; and what the drawn plan still holds. Kept small enough to be drawn, however long the
 * log: where a round has too many pairs it is one row of runs a day, and a span of days bounds the rest.
 */
import { placeSpan } from '../panel/index.ts';
import { isStanding, type HandOutPlan, type RecordId } from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';
import type { Metres } from '../units/index.ts';
import { ownRecords, type LoggedPair, type ProjectLog } from './project-log.ts';

/** With more pairs than this the rounds fold to one row each. Judgement: forty rows fill a screen. */
export const MOST_ROWS = 40;
/** With more runs than this in a row each day is one mark. */
const MOST_MARKS = 400;
const DAY_MS = 86_400_000;

export interface CalendarRun {
  /** Null where the mark stands for the runs of a day. */
  readonly run: RecordId | null;
  readonly atMs: number;
  readonly count: number;
  /** Of them with a complaint. */
  readonly complained: number;
}

export interface CalendarRow {
  readonly pair: RecordId;
  readonly round: RecordId;
  readonly totalM: Metres;
  readonly hands: readonly {
    readonly handOut: RecordId;
    readonly tester: RecordId;
    readonly fromMs: number;
    /** Null: still out. */
    readonly untilMs: number | null;
  }[];
  readonly runs: readonly CalendarRun[];
  readonly checks: readonly { readonly check: RecordId; readonly atMs: number }[];
  readonly damages: readonly { readonly damage: RecordId; readonly atMs: number }[];
  readonly stops: readonly {
    readonly stop: RecordId;
    readonly fromMs: number;
    readonly untilMs: number | null;
  }[];
}

export interface CalendarFold {
  readonly round: RecordId;
  readonly pairs: number;
  /** A mark a day. */
  readonly runs: readonly CalendarRun[];
}

export interface Calendar {
  readonly fromMs: number;
  readonly untilMs: number;
  readonly nowMs: number;
  /** By round, then farthest first. */
  readonly rows: readonly CalendarRow[];
  /** Rounds that are folded because there are too many pairs; empty where all pairs have a row. */
  readonly folds: readonly CalendarFold[];
  readonly planned: readonly {
    readonly pair: RecordId;
    readonly tester: RecordId;
    readonly fromMs: number;
    readonly untilMs: number;
  }[];
}

const hasComplaint = ({ run }: LoggedPair['runs'][number]): boolean =>
  run.feet?.answer === 'complaints';

const byDay = (runs: LoggedPair['runs']): CalendarRun[] =>
  [...groupBy(runs, ({ startMs }) => Math.floor(startMs / DAY_MS))]
    .sort(([a], [b]) => a - b)
    .map(([day, own]) => ({
      run: own.length === 1 ? (own[0]?.id ?? null) : null,
      atMs: (day + 0.5) * DAY_MS,
      count: own.length,
      complained: own.filter(hasComplaint).length,
    }));

const marksOf = (runs: LoggedPair['runs']): CalendarRun[] =>
  runs.length > MOST_MARKS
    ? byDay(runs)
    : runs.map((run) => ({
        run: run.id,
        atMs: run.startMs,
        count: 1,
        complained: hasComplaint(run) ? 1 : 0,
      }));

/** The places of the latest plan that have not begun yet. */
const plannedOf = (log: ProjectLog): Calendar['planned'] => {
  const plans = ownRecords(log.records['hand-out-plan'], log.id);
  const plan = plans.reduce<HandOutPlan | null>(
    (latest, { body }) => (latest && Date.parse(latest.at) >= Date.parse(body.at) ? latest : body),
    null,
  );
  if (!plan) return [];
  return plan.places
    .map((place) => ({ pair: place.pair, tester: place.tester, ...placeSpan(plan, place) }))
    .filter(({ fromMs }) => fromMs > log.nowMs);
};

/**
 * @param span bounds the days that are looked at; null: from the first hand-out, run or check to now or the end of the plan
 * @param open the round whose pairs are shown one by one although there are many; null: none
 */
export const calendarOf = (
  log: ProjectLog,
  span: { readonly fromMs: number; readonly untilMs: number } | null,
  open: RecordId | null,
): Calendar => {
  const { nowMs, pairs, records } = log;
  const planned = plannedOf(log);
  const damages = groupBy(ownRecords(records['damage-report'], log.id), ({ body }) => body.pair);
  const stops = ownRecords(records['stop-use'], log.id);
  const starts = pairs.flatMap(({ runs, spans, checks }) => [
    ...runs.slice(0, 1).map(({ startMs }) => startMs),
    ...spans.map(({ fromMs }) => fromMs),
    ...checks.slice(0, 1).map(({ body }) => Date.parse(body.at)),
  ]);
  const whole = {
    fromMs: starts.reduce((a, b) => Math.min(a, b), nowMs) - DAY_MS,
    untilMs: planned.reduce((a, { untilMs }) => Math.max(a, untilMs), nowMs) + DAY_MS,
  };
  const { fromMs, untilMs } = span ?? whole;
  const isIn = (ms: number) => ms >= fromMs && ms <= untilMs;
  const reaches = (from: number, until: number | null) =>
    from <= untilMs && (until ?? nowMs) >= fromMs;
  const runsIn = ({ runs }: LoggedPair) => runs.filter(({ startMs }) => isIn(startMs));
  const rowOf = (pair: LoggedPair): CalendarRow => ({
    pair: pair.id,
    round: pair.round,
    totalM: (pair.curve.totalM.at(-1) ?? pair.curve.carriedInM) as Metres,
    hands: pair.spans
      // What was agreed ahead is drawn as planned.
      .filter((one) => one.fromMs <= nowMs)
      .map(({ id, tester, fromMs: from, untilMs: until }) => ({
        handOut: id,
        tester,
        fromMs: from,
        untilMs: Number.isFinite(until) ? until : null,
      }))
      .filter((one) => reaches(one.fromMs, one.untilMs)),
    runs: marksOf(runsIn(pair)),
    checks: pair.checks
      .map(({ body, revision }) => ({ check: revision.id, atMs: Date.parse(body.at) }))
      .filter(({ atMs }) => isIn(atMs)),
    damages: (damages.get(pair.id) ?? [])
      .map(({ body, revision }) => ({ damage: revision.id, atMs: Date.parse(body.at) }))
      .filter(({ atMs }) => isIn(atMs)),
    stops: stops
      .filter(({ body }) => body.pairs.includes(pair.id))
      .map(({ body, revision }) => ({
        stop: revision.id,
        fromMs: Date.parse(body.from),
        untilMs:
          isStanding(body, nowMs) || body.until === undefined ? null : Date.parse(body.until),
      }))
      .filter((one) => reaches(one.fromMs, one.untilMs)),
  });
  const folds = pairs.length > MOST_ROWS;
  const byTotal = (a: CalendarRow, b: CalendarRow) => b.totalM - a.totalM;
  return {
    ...{ fromMs, untilMs, nowMs },
    rows: log.rounds.flatMap(({ revision: { id } }) =>
      folds && id !== open
        ? []
        : pairs
            .filter(({ round }) => round === id)
            .map(rowOf)
            .sort(byTotal)
            .slice(0, MOST_ROWS),
    ),
    folds: folds
      ? log.rounds.map(({ revision: { id } }) => {
          const own = pairs.filter(({ round }) => round === id);
          return { round: id, pairs: own.length, runs: byDay(own.flatMap(runsIn)) };
        })
      : [],
    planned: planned.filter((one) => reaches(one.fromMs, one.untilMs)),
  };
};

/** From the records to the question of a plan, and from a plan to its hand-outs. No screen, no clock. */
import {
  ALLOWED_MM,
  firstPeriodFrom,
  leastImbalance,
  placeSpan,
  planBalance,
  rowsOfPlaces,
  stopTester,
  type DrawnPlan,
  type PlanBalance,
  type PlanQuestion,
} from '../../../core/panel/index.ts';
import type { HandOutPlan, RecordId, RecordOf, Tester } from '../../../core/records/index.ts';
import { fittedSizes } from '../../../core/fitting/index.ts';
import { longerFootMm } from '../../../core/rounds/index.ts';
import { millimetres, type Millimetres } from '../../../core/units/index.ts';
import type { DeskRecords } from '../worker/desk-work.ts';
import { handedOut, withdrawnPairs } from './settle-plan.ts';

/** What the lead chose. */
export interface PlanForm {
  readonly rounds: readonly RecordId[];
  readonly periods: number;
  /** Periods in which each tester of the plan is away, from 0; a tester who is not in it takes no part. */
  readonly testers: ReadonlyMap<RecordId, readonly number[]>;
  readonly allowedMm: number;
  /** Pairs that are out now will be back on the first day. */
  readonly outComeBack: boolean;
  readonly seed: number;
}

type Known = Pick<DeskRecords, 'pair' | 'tester' | 'hand-out' | 'stop-use' | 'fit-trial'>;

const isOut = ({ body }: RecordOf<'hand-out'>): boolean => body.until === undefined;

/**
 * The size that was right in a fit trial; else the length of the longer foot; where that was not measured, the size of
 * the pair that was handed out last.
 */
export const footLengthOf = (
  tester: RecordId,
  body: Tester | undefined,
  records: Known,
): Millimetres | null => {
  const fitted = fittedSizes(records['fit-trial'], records.pair).get(tester);
  if (fitted !== undefined) return fitted;
  const measured = body ? longerFootMm(body) : null;
  if (measured !== null) return measured;
  const last = records['hand-out']
    .filter((handOut) => handOut.body.tester === tester)
    .sort((a, b) => Date.parse(a.body.from) - Date.parse(b.body.from))
    .at(-1);
  return records.pair.find(({ revision }) => revision.id === last?.body.pair)?.body.sizeMm ?? null;
};

const testersOf = (
  away: Iterable<readonly [RecordId, readonly number[]]>,
  records: Known,
): PlanQuestion['testers'] => {
  const bodies = new Map(records.tester.map(({ body, revision }) => [revision.id, body]));
  return [...away].map(([id, periods]) => ({
    id,
    footLengthMm: footLengthOf(id, bodies.get(id), records),
    away: periods,
  }));
};

export interface PlanChoice {
  readonly question: PlanQuestion;
  /** Pairs of the rounds that are left out: still out, or withdrawn. */
  readonly pairsOut: number;
  readonly pairsWithdrawn: number;
  /** Testers of whom no size is known. */
  readonly withoutSize: readonly RecordId[];
}

/** What is asked of `drawPlan`, and what of it is left out. */
export const questionOf = (form: PlanForm, records: Known): PlanChoice => {
  const stopped = withdrawnPairs(records);
  const out = new Set(records['hand-out'].filter(isOut).map(({ body }) => body.pair));
  const own = records.pair.filter(({ body }) => form.rounds.includes(body.round));
  const worn = own.filter(({ revision }) => !stopped.has(revision.id));
  const free = worn.filter(({ revision }) => form.outComeBack || !out.has(revision.id));
  const testers = testersOf(form.testers, records);
  return {
    question: {
      seed: form.seed,
      rounds: form.rounds,
      periods: form.periods,
      testers,
      pairs: free.map(({ body, revision }) => ({
        id: revision.id,
        round: body.round,
        sizeMm: body.sizeMm,
      })),
      allowedMm: form.allowedMm,
    },
    pairsOut: worn.length - free.length,
    pairsWithdrawn: own.length - worn.length,
    withoutSize: testers.flatMap(({ id, footLengthMm }) => (footLengthMm === null ? [id] : [])),
  };
};

/** A drawn plan as the record keeps it. */
export const planBody = (
  { question }: PlanChoice,
  drawn: DrawnPlan,
  about: Pick<HandOutPlan, 'project' | 'at' | 'from' | 'weeksPerPeriod'>,
): HandOutPlan => ({
  ...about,
  seed: question.seed,
  rounds: [...question.rounds],
  basis: drawn.basis,
  periods: question.periods,
  allowedMm: millimetres(question.allowedMm),
  testers: question.testers.map(({ id, away }) => ({
    tester: id,
    ...(away.length > 0 && { away: [...away] }),
  })),
  places: drawn.places.map((place) => ({ ...place })),
});

/** How even a saved plan is, counted anew from its places. */
export const balanceOf = (plan: HandOutPlan): PlanBalance =>
  planBalance(
    rowsOfPlaces(
      plan.places,
      plan.testers.map(({ tester }) => tester),
      plan.rounds,
      plan.periods,
    ),
    plan.rounds.length,
  );

/** The least imbalance of any plan of so many testers; null: not known, or somebody is away. */
export const leastOf = (plan: HandOutPlan): number | null =>
  plan.testers.some((one) => one.droppedOutAt !== undefined || (one.away ?? []).length > 0)
    ? null
    : leastImbalance(plan.rounds.length, plan.periods, plan.testers.length);

export interface DropOut {
  /** What to ask of `drawPlan` for the rest. */
  readonly question: PlanQuestion;
  /** The plan with the tester marked and what the tester cannot wear any more taken out. */
  readonly left: HandOutPlan;
}

export interface DrawnAnew {
  readonly plan: HandOutPlan;
  readonly before: PlanBalance;
  /** The rest left as it was, without the tester. */
  readonly untouched: PlanBalance;
  readonly after: PlanBalance;
  readonly empty: number;
}

/**
 * What it takes to make a plan anew from an instant on, without one tester. What is past or running then stays.
 * @param at an instant with offset, not before now
 */
export const dropOut = (
  plan: HandOutPlan,
  tester: RecordId,
  at: string,
  records: Known,
): DropOut => {
  const left = stopTester(plan, { tester, at, reserve: null });
  const atMs = Date.parse(at);
  const stopped = withdrawnPairs(records);
  const ofPlan = new Set([...handedOut(plan, records).values()].map(({ revision }) => revision.id));
  const elsewhere = new Set(
    records['hand-out']
      .filter((handOut) => isOut(handOut) && !ofPlan.has(handOut.revision.id))
      .map(({ body }) => body.pair),
  );
  const kept = left.places.filter((place) => placeSpan(plan, place).fromMs < atMs);
  const keptPairs = new Set(kept.map(({ pair }) => pair));
  // What the plan counts on comes back, as it did when it was drawn.
  for (const { pair } of plan.places) elsewhere.delete(pair);
  const away = left.testers.map((one): [RecordId, readonly number[]] => [
    one.tester,
    Array.from({ length: plan.periods }, (_, period) => period).filter(
      (period) => (one.away ?? []).includes(period) || period >= (one.droppedOutAt ?? Infinity),
    ),
  ]);
  return {
    left,
    question: {
      seed: plan.seed,
      rounds: plan.rounds,
      periods: plan.periods,
      testers: testersOf(away, records),
      pairs: records.pair.flatMap(({ body, revision: { id } }) =>
        plan.rounds.includes(body.round) &&
        (keptPairs.has(id) || (!stopped.has(id) && !elsewhere.has(id)))
          ? [{ id, round: body.round, sizeMm: body.sizeMm }]
          : [],
      ),
      allowedMm: plan.allowedMm ?? ALLOWED_MM,
      kept,
      fromPeriod: firstPeriodFrom(plan, atMs),
      before: left.places,
    },
  };
};

/** The plan with its rest as it was drawn, and how even it was, would be untouched, and is. */
export const drawnAnew = (plan: HandOutPlan, { left }: DropOut, drawn: DrawnPlan): DrawnAnew => ({
  plan: { ...left, basis: drawn.basis, places: drawn.places.map((place) => ({ ...place })) },
  before: balanceOf(plan),
  untouched: balanceOf(left),
  after: drawn.balance,
  empty: drawn.empty.length,
});

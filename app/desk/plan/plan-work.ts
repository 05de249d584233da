/** From the records to the question of a plan, and from a plan to its hand-outs. No screen, no clock. */
import {
  ALLOWED_MM,
  leastImbalance,
  planBalance,
  rowsOfPlaces,
  type DrawnPlan,
  type PlanBalance,
  type PlanQuestion,
} from '../../../core/panel/index.ts';
import type {
  HandOut,
  HandOutPlan,
  RecordId,
  RecordOf,
  Tester,
} from '../../../core/records/index.ts';
import { millimetres, type Millimetres } from '../../../core/units/index.ts';
import type { DeskRecords } from '../worker/desk-work.ts';

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

type Known = Pick<DeskRecords, 'pair' | 'tester' | 'hand-out' | 'stop-use'>;

const isOut = ({ body }: RecordOf<'hand-out'>): boolean => body.until === undefined;

/** Pairs of the project under a notice that was not lifted. */
const withdrawn = (records: Known): ReadonlySet<RecordId> =>
  new Set(records['stop-use'].flatMap(({ body }) => (body.until === undefined ? body.pairs : [])));

/** Length of the longer foot; where it was not measured, the size of the pair that was handed out last. */
export const footLengthOf = (
  tester: RecordId,
  body: Tester | undefined,
  records: Known,
): Millimetres | null => {
  if (body?.footLengthMm)
    return millimetres(Math.max(body.footLengthMm.left, body.footLengthMm.right));
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
  const stopped = withdrawn(records);
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

type Place = HandOutPlan['places'][number];

/** The hand-outs that were made by the plan. */
export const handedOut = (
  plan: HandOutPlan,
  records: Known,
): ReadonlyMap<Place, RecordOf<'hand-out'>> => {
  const made = new Map<Place, RecordOf<'hand-out'>>();
  for (const place of plan.places) {
    const handOut = records['hand-out'].find(
      ({ body }) =>
        body.tester === place.tester &&
        body.pair === place.pair &&
        Date.parse(body.from) >= Date.parse(plan.at),
    );
    if (handOut) made.set(place, handOut);
  }
  return made;
};

/** The first period in which nothing was handed out; null where all began. */
export const nextPeriod = (plan: HandOutPlan, records: Known): number | null => {
  const begun = new Set([...handedOut(plan, records).keys()].map(({ period }) => period));
  for (let period = 0; period < plan.periods; period++) if (!begun.has(period)) return period;
  return null;
};

export type Waiting =
  | { readonly why: 'withdrawn'; readonly place: Place }
  | { readonly why: 'out'; readonly place: Place; readonly by: RecordOf<'hand-out'> };

export interface PeriodHandOut {
  /** Hand-outs of earlier periods of the plan that end now. */
  readonly takeBack: readonly RecordOf<'hand-out'>[];
  /** Hand-outs to make: blind. */
  readonly give: readonly HandOut[];
  /** Places that wait: the pair is withdrawn, or out by a hand-out that the plan does not end. */
  readonly cannot: readonly Waiting[];
}

/**
 * What it takes to hand out a period.
 * @param now instant with offset
 */
export const handOutPeriod = (
  plan: HandOutPlan,
  period: number,
  records: Known,
  now: string,
): PeriodHandOut => {
  const made = handedOut(plan, records);
  const stopped = withdrawn(records);
  const takeBack = [...made].flatMap(([place, handOut]) =>
    place.period < period && isOut(handOut) ? [handOut] : [],
  );
  const back = new Set(takeBack.map(({ revision }) => revision.id));
  const give: HandOut[] = [];
  const cannot: Waiting[] = [];
  for (const place of plan.places) {
    if (place.period !== period || made.has(place)) continue;
    const { pair, tester } = place;
    const other = records['hand-out'].find(
      (handOut) => handOut.body.pair === pair && isOut(handOut) && !back.has(handOut.revision.id),
    );
    if (stopped.has(pair)) cannot.push({ place, why: 'withdrawn' });
    else if (other) cannot.push({ place, why: 'out', by: other });
    else give.push({ project: plan.project, pair, tester, from: now, blind: true });
  }
  return { takeBack, give, cannot };
};

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

/** What it takes to make a plan anew from a period on, without one tester. What was handed out stays. */
export const dropOut = (
  plan: HandOutPlan,
  tester: RecordId,
  fromPeriod: number,
  records: Known,
): DropOut => {
  const testers = plan.testers.map((one) =>
    one.tester === tester
      ? { ...one, droppedOutAt: Math.min(fromPeriod, one.droppedOutAt ?? fromPeriod) }
      : one,
  );
  const goneFrom = new Map(testers.map((one) => [one.tester, one.droppedOutAt ?? Infinity]));
  const made = handedOut(plan, records);
  const left = plan.places.filter(
    (place) => made.has(place) || place.period < (goneFrom.get(place.tester) ?? 0),
  );
  const stopped = withdrawn(records);
  const ofPlan = new Set([...made.values()].map(({ revision }) => revision.id));
  const elsewhere = new Set(
    records['hand-out']
      .filter((handOut) => isOut(handOut) && !ofPlan.has(handOut.revision.id))
      .map(({ body }) => body.pair),
  );
  const kept = left.filter((place) => made.has(place) || place.period < fromPeriod);
  const keptPairs = new Set(kept.map(({ pair }) => pair));
  // What the plan counts on comes back, as it did when it was drawn.
  for (const { pair } of plan.places) elsewhere.delete(pair);
  const away = testers.map((one): [RecordId, readonly number[]] => [
    one.tester,
    Array.from({ length: plan.periods }, (_, period) => period).filter(
      (period) => (one.away ?? []).includes(period) || period >= (one.droppedOutAt ?? Infinity),
    ),
  ]);
  return {
    left: { ...plan, testers, places: left },
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
      fromPeriod,
      before: left,
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

/**
 * From an agreed plan to its hand-outs, on the plan's own days. Pure.
 *
 * A hand-out of a place to come begins on the plan's day and ends when its period does, those of the last period stay
 * open until the pairs are taken back. What has happened is never touched: a hand-out that began keeps its beginning,
 * and one that ended stays ended.
 */
import { placeSpan, type PlannedPlace } from '../../../core/panel/index.ts';
import {
  editBody,
  type HandOut,
  type HandOutPlan,
  type RecordId,
  type RecordOf,
} from '../../../core/records/index.ts';
import type { DeskRecords } from '../worker/desk-work.ts';

type HandOuts = Pick<DeskRecords, 'hand-out' | 'stop-use'>;

const spanOf = ({ from, until }: HandOut) => ({
  fromMs: Date.parse(from),
  untilMs: until === undefined ? Infinity : Date.parse(until),
});

/** Pairs under a notice that was not lifted. */
export const withdrawnPairs = (records: Pick<DeskRecords, 'stop-use'>): ReadonlySet<RecordId> =>
  new Set(records['stop-use'].flatMap(({ body }) => (body.until === undefined ? body.pairs : [])));

/**
 * The hand-outs that carry out places of the plan: same tester, same pair, in the place's days or, noted late, after
 * the plan was drawn.
 */
export const handedOut = (
  plan: HandOutPlan,
  records: Pick<DeskRecords, 'hand-out'>,
): ReadonlyMap<PlannedPlace, RecordOf<'hand-out'>> => {
  const made = new Map<PlannedPlace, RecordOf<'hand-out'>>();
  const drawnMs = Date.parse(plan.at);
  for (const place of plan.places) {
    const { fromMs, untilMs } = placeSpan(plan, place);
    const own = records['hand-out'].filter(
      ({ body }) => body.tester === place.tester && body.pair === place.pair,
    );
    // A pair that is to go to somebody else first is not the one that the tester has now.
    const goesFirst = plan.places.some(
      (other) =>
        other.pair === place.pair &&
        other.tester !== place.tester &&
        placeSpan(plan, other).fromMs < fromMs,
    );
    const found =
      own.find(
        ({ body }) =>
          spanOf(body).fromMs < untilMs &&
          spanOf(body).untilMs > fromMs &&
          !(goesFirst && spanOf(body).fromMs < drawnMs),
      ) ?? own.find(({ body }) => spanOf(body).fromMs >= drawnMs);
    if (found) made.set(place, found);
  }
  return made;
};

export type Waiting =
  | { readonly why: 'withdrawn'; readonly place: PlannedPlace }
  /** Somebody else is to have the pair at that time, by a hand-out that the plan does not know. */
  | { readonly why: 'promised'; readonly place: PlannedPlace };

export interface Settled {
  /** Hand-outs to make: blind. */
  readonly give: readonly HandOut[];
  /** Hand-outs whose days change; only days to come. */
  readonly change: readonly { readonly id: RecordId; readonly body: HandOut }[];
  /** Hand-outs that have not begun and will not. */
  readonly drop: readonly RecordId[];
  readonly cannot: readonly Waiting[];
}

/** A plan goes by days that begin at eight: with midnight the day is over, and what did not go out is late. */
const DAY_LEFT_MS = 16 * 3_600_000;

/** Whether the day on which a place was to begin is over. */
export const isLate = (fromMs: number, nowMs: number): boolean => nowMs - fromMs >= DAY_LEFT_MS;

export interface SettleOptions {
  readonly nowMs: number;
  /** An instant with offset for milliseconds since 1970. */
  readonly instant: (ms: number) => string;
  /** When places whose day is past were or are handed out; null: they are left out. */
  readonly lateAt: string | null;
  /** Plans that this one takes the place of: what they promised and this one does not is dropped. */
  readonly before?: readonly HandOutPlan[];
  /** The first periods only, so many of them; absent: all. */
  readonly periods?: number;
}

/** When a place's hand-out ends: an instant, or undefined where it stays open. */
const endOf = (plan: HandOutPlan, place: PlannedPlace, last: number, { instant }: SettleOptions) =>
  place.until ?? (place.period >= last - 1 ? undefined : instant(placeSpan(plan, place).untilMs));

/** A hand-out of the plan with the days that are still to come as the plan has them; null: nothing changes. */
const inStep = (
  { body }: RecordOf<'hand-out'>,
  wanted: { readonly from: string; readonly until: string | undefined },
  nowMs: number,
): HandOut | null => {
  const { fromMs, untilMs } = spanOf(body);
  if (untilMs <= nowMs) return null;
  const from = fromMs > nowMs ? wanted.from : body.from;
  // A place that stays open does not open what a lead has set an end to.
  const until = wanted.until ?? body.until;
  const same =
    Date.parse(from) === fromMs && (until === undefined ? Infinity : Date.parse(until)) === untilMs;
  return same ? null : editBody<'hand-out'>(body, { from, until });
};

/** What it takes for the hand-outs to follow the plan from now on. */
export const settlePlan = (
  plan: HandOutPlan,
  records: HandOuts,
  options: SettleOptions,
): Settled => {
  const { nowMs, instant, lateAt, before = [] } = options;
  const last = Math.min(plan.periods, options.periods ?? plan.periods);
  const made = handedOut(plan, records);
  const stopped = withdrawnPairs(records);
  const ofPlan = new Set([...made.values()].map(({ revision }) => revision.id));
  const drop = before
    .flatMap((one) => [...handedOut(one, records).values()])
    .filter(({ body, revision }) => !ofPlan.has(revision.id) && spanOf(body).fromMs > nowMs)
    .map(({ revision }) => revision.id);
  const give: HandOut[] = [];
  const cannot: Waiting[] = [];
  const changed = new Map<RecordId, HandOut>();
  const byDay = plan.places.toSorted(
    (a, b) => placeSpan(plan, a).fromMs - placeSpan(plan, b).fromMs,
  );
  for (const place of byDay) {
    const span = placeSpan(plan, place);
    if (span.untilMs <= nowMs || place.period >= last) continue;
    const from = isLate(span.fromMs, nowMs) ? lateAt : (place.from ?? instant(span.fromMs));
    const until = endOf(plan, place, last, options);
    const own = made.get(place);
    if (own) {
      const body = inStep(own, { from: from ?? own.body.from, until }, nowMs);
      if (body) changed.set(own.revision.id, body);
      continue;
    }
    if (from === null) continue;
    if (stopped.has(place.pair)) {
      cannot.push({ why: 'withdrawn', place });
      continue;
    }
    const fromMs = Date.parse(from);
    const others = records['hand-out'].filter(
      ({ body, revision }) =>
        body.pair === place.pair &&
        !ofPlan.has(revision.id) &&
        !drop.includes(revision.id) &&
        spanOf(body).untilMs > fromMs &&
        spanOf(body).fromMs < span.untilMs,
    );
    if (others.some(({ body }) => spanOf(body).fromMs >= fromMs)) {
      cannot.push({ why: 'promised', place });
      continue;
    }
    // Whoever has the pair gives it back on the day on which it goes out again.
    for (const { body, revision } of others)
      if (!changed.has(revision.id))
        changed.set(revision.id, editBody<'hand-out'>(body, { until: from }));
    const { project } = plan;
    give.push({
      ...{ project, pair: place.pair, tester: place.tester, from, blind: true },
      ...(until !== undefined && { until }),
    });
  }
  return {
    give,
    change: [...changed].map(([id, body]) => ({ id, body })),
    drop: [...new Set(drop)],
    cannot,
  };
};

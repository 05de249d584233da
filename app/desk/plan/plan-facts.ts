/** What a plan's first sentence, its calendar and its list of days are made of. Pure. */
import type { PlanFacts } from '../../../core/headlines/index.ts';
import { periodStartMs, placeSpan, type PlannedPlace } from '../../../core/panel/index.ts';
import type { HandOutPlan, RecordId } from '../../../core/records/index.ts';
import type { RoomWord } from '../../../core/rounds/index.ts';
import { isOutNow } from '../../drafts/hand-out.ts';
import type { DeskRecords } from '../worker/desk-work.ts';
import type { RoomIn } from './plan-fit.ts';
import { handedOut, isLate } from './settle-plan.ts';

/** Where a place stands: drawn only (its day may be today), agreed ahead, in hands, over, or late. */
export type PlaceState = 'drawn' | 'agreed' | 'running' | 'over' | 'late';

export interface DatedPlace {
  readonly place: PlannedPlace;
  readonly fromMs: number;
  readonly untilMs: number;
  readonly state: PlaceState;
}

const stateOf = (
  nowMs: number,
  plannedFromMs: number,
  untilMs: number,
  made: boolean,
): PlaceState => {
  if (untilMs <= nowMs) return 'over';
  if (plannedFromMs > nowMs) return made ? 'agreed' : 'drawn';
  if (made) return 'running';
  return isLate(plannedFromMs, nowMs) ? 'late' : 'drawn';
};

/** Every place with its days, the earliest first; what was handed out has the days of its hand-out. */
export const datedPlaces = (
  plan: HandOutPlan,
  records: Pick<DeskRecords, 'hand-out'>,
  nowMs: number,
): readonly DatedPlace[] => {
  const made = handedOut(plan, records);
  return plan.places
    .map((place): DatedPlace => {
      const span = placeSpan(plan, place);
      const own = made.get(place)?.body;
      const fromMs = own ? Math.max(Date.parse(own.from), span.fromMs) : span.fromMs;
      const untilMs = own?.until === undefined ? span.untilMs : Date.parse(own.until);
      return { place, fromMs, untilMs, state: stateOf(nowMs, fromMs, untilMs, own !== undefined) };
    })
    .sort((a, b) => a.fromMs - b.fromMs);
};

const DAY_MS = 86_400_000;

/** The places that need a slip in their box: those to come, and those that began within a day, whose box may stand here. */
export const slipsOf = (places: readonly DatedPlace[], nowMs: number): readonly DatedPlace[] =>
  places.filter(
    ({ state, fromMs }) =>
      state === 'drawn' ||
      state === 'agreed' ||
      state === 'late' ||
      (state === 'running' && nowMs - fromMs < DAY_MS),
  );

/** What the first sentence is made of. */
export const planFacts = (
  plan: HandOutPlan | null,
  records: Pick<DeskRecords, 'hand-out' | 'pair' | 'tester'>,
  project: RecordId,
  nowMs: number,
): PlanFacts => {
  const pairs = records.pair.filter(({ body }) => body.project === project).length;
  const testers = records.tester.length;
  if (plan === null) return { pairs, testers, plan: null };
  const places = datedPlaces(plan, records, nowMs);
  const late = places.filter(({ state }) => state === 'late');
  const toCome = places.filter(({ state }) => state === 'drawn' || state === 'agreed');
  const nextMs = toCome[0]?.fromMs ?? null;
  const endMs = periodStartMs(plan, plan.periods);
  return {
    pairs,
    testers,
    plan: {
      rounds: plan.rounds.filter((id) => plan.places.some(({ round }) => round === id)),
      wearers: new Set(plan.places.map(({ tester }) => tester)).size,
      // Also those that should have come back when the plan ended.
      out: [...handedOut(plan, records).values()].filter(({ body }) => isOutNow(body, nowMs))
        .length,
      late: late.length,
      lateSinceMs: late[0]?.fromMs ?? null,
      open: toCome.filter(({ state }) => state === 'drawn').length,
      nextMs,
      next: toCome.filter(({ fromMs }) => fromMs === nextMs).length,
      endMs,
      isOver: endMs <= nowMs,
    },
  };
};

/** Who wears what first, and whom the pairs fit: the line beneath the first sentence. */
export interface PlanCounts {
  /** Testers who begin with each round, in the order of the plan. */
  readonly starts: readonly { readonly round: RecordId; readonly testers: number }[];
  /** Testers by the worst room in any of their pairs; `unknown`: feet not measured. */
  readonly rooms: Readonly<Record<RoomWord | 'unknown', readonly RecordId[]>>;
}

export const planCounts = (
  plan: HandOutPlan,
  records: Pick<DeskRecords, 'hand-out'>,
  room: RoomIn,
): PlanCounts => {
  const places = datedPlaces(plan, records, 0);
  const first = new Map<RecordId, PlannedPlace>();
  for (const { place } of places) if (!first.has(place.tester)) first.set(place.tester, place);
  const words = new Map<RecordId, RoomWord | 'unknown'>();
  for (const { place } of places) {
    const word = room(place.tester, place.pair)?.word ?? 'unknown';
    if ((words.get(place.tester) ?? 'good') === 'good') words.set(place.tester, word);
  }
  const those = (word: RoomWord | 'unknown') =>
    [...words].flatMap(([tester, own]) => (own === word ? [tester] : []));
  return {
    starts: plan.rounds
      .map((round) => ({
        round,
        testers: [...first.values()].filter((place) => place.round === round).length,
      }))
      .filter(({ testers }) => testers > 0),
    rooms: {
      good: those('good'),
      short: those('short'),
      long: those('long'),
      unknown: those('unknown'),
    },
  };
};

/** One day on which something happens, by the plan. */
export interface PlanDay {
  readonly atMs: number;
  readonly out: readonly DatedPlace[];
  readonly back: readonly DatedPlace[];
  /** The plan ends: whatever is out comes back. */
  readonly isEnd: boolean;
}

/** Days to come, and what happens on them. */
export const planDays = (
  plan: HandOutPlan,
  places: readonly DatedPlace[],
  nowMs: number,
): readonly PlanDay[] => {
  const endMs = periodStartMs(plan, plan.periods);
  const days = new Set(
    [endMs, ...places.flatMap(({ fromMs, untilMs }) => [fromMs, untilMs])].filter(
      (ms) => ms > nowMs,
    ),
  );
  return [...days]
    .sort((a, b) => a - b)
    .map((atMs) => ({
      atMs,
      out: places.filter(({ fromMs }) => fromMs === atMs),
      back: places.filter(({ untilMs, state }) => untilMs === atMs && state !== 'late'),
      isEnd: atMs === endMs,
    }));
};

/** From when until when is a pair noted as handed out, as a person types it? Pure. */
import { editBody, type HandOut, type RecordId, type RecordOf } from '../../core/records/index.ts';
import { toInstant, toLocalMinute } from '../parts/instant.ts';

export type SinceTrouble =
  | { readonly why: 'missing' }
  | { readonly why: 'not-yet' }
  /** An earlier hand-out of the pair lasted until then. */
  | { readonly why: 'held'; readonly untilMs: number };

/** When each hand-out of the pair that has begun came or comes back, the latest last. */
const returnsOf = (
  handOuts: readonly RecordOf<'hand-out'>[],
  pair: RecordId,
  nowMs: number,
): readonly number[] =>
  handOuts
    .flatMap(({ body }) =>
      body.pair === pair && body.until !== undefined && Date.parse(body.from) <= nowMs
        ? [Date.parse(body.until)]
        : [],
    )
    .sort((a, b) => a - b);

/** To whom a pair goes next by a hand-out that was agreed ahead, such as a plan's; null: to nobody. */
export const promisedTo = (
  handOuts: readonly RecordOf<'hand-out'>[],
  pair: RecordId,
  nowMs: number,
): Pick<HandOut, 'tester' | 'from'> | null =>
  handOuts
    .map(({ body }) => body)
    .filter((body) => body.pair === pair && Date.parse(body.from) > nowMs)
    .sort((a, b) => Date.parse(a.from) - Date.parse(b.from))[0] ?? null;

/**
 * Why a pair cannot have been handed out at an instant; null where it can.
 * @param fromMs not a number where nothing readable was typed
 */
export const sinceTrouble = (
  handOuts: readonly RecordOf<'hand-out'>[],
  pair: RecordId,
  fromMs: number,
  nowMs: number,
): SinceTrouble | null => {
  if (Number.isNaN(fromMs)) return { why: 'missing' };
  if (fromMs > nowMs) return { why: 'not-yet' };
  const untilMs = returnsOf(handOuts, pair, nowMs).at(-1);
  return untilMs !== undefined && fromMs < untilMs ? { why: 'held', untilMs } : null;
};

/**
 * The instant of a hand-out whose date and time were shown to be changed, or null where nothing readable was typed. What
 * still stands as shown is the stored instant: the field has no seconds.
 */
export const sinceInstant = (typed: string, stored: string): string | null => {
  if (typed === toLocalMinute(stored)) return stored;
  const ms = new Date(typed).getTime();
  return Number.isNaN(ms) ? null : toInstant(ms);
};

/** A new hand-out as it stands in its form. */
export interface NewHandOutDraft {
  /** Empty: not chosen. */
  readonly pair: RecordId | '';
  readonly tester: RecordId | '';
  /** Local date and time; null: now. */
  readonly since: string | null;
  readonly blind: boolean;
}

/** Since when, as it is typed; null: now. */
export const sinceMs = (since: string | null, nowMs: number): number =>
  since === null ? nowMs : new Date(since).getTime();

export type NewHandOutTrouble =
  | { readonly field: 'pair' | 'tester'; readonly why: 'missing' }
  | ({ readonly field: 'since' } & SinceTrouble);

export type ReadNewHandOut =
  | { readonly ok: true; readonly body: HandOut }
  | { readonly ok: false; readonly troubles: readonly NewHandOutTrouble[] };

/**
 * Reads a new hand-out, or says everything that is wrong with it. A pair that was promised to somebody comes back when
 * it goes there.
 * @param handOuts all of the group's: the pair must be back
 * @param nowMs milliseconds since 1970
 */
export const readNewHandOut = (
  { pair, tester, since, blind }: NewHandOutDraft,
  project: RecordId,
  handOuts: readonly RecordOf<'hand-out'>[],
  nowMs: number,
): ReadNewHandOut => {
  const fromMs = sinceMs(since, nowMs);
  // Without a pair the time alone is judged.
  const trouble = sinceTrouble(pair === '' ? [] : handOuts, pair as RecordId, fromMs, nowMs);
  const troubles: readonly NewHandOutTrouble[] = [
    ...(pair === '' ? [{ field: 'pair', why: 'missing' } as const] : []),
    ...(tester === '' ? [{ field: 'tester', why: 'missing' } as const] : []),
    ...(trouble === null ? [] : [{ field: 'since', ...trouble } as const]),
  ];
  if (pair === '' || tester === '' || troubles.length > 0) return { ok: false, troubles };
  const next = promisedTo(handOuts, pair, nowMs);
  const body = { project, pair, tester, from: toInstant(fromMs), blind };
  return { ok: true, body: next ? { ...body, until: next.from } : body };
};

/** A hand-out as it stands in its form; times are local, to the minute. */
export interface HandOutDraft {
  readonly from: string;
  /** Empty: the pair is still out. */
  readonly until: string;
  readonly blind: boolean;
}

export type HandOutTrouble =
  | { readonly field: 'from'; readonly why: 'missing' | 'not-yet' }
  | { readonly field: 'until'; readonly why: 'missing' | 'not-yet' | 'before-from' }
  /** Another tester had the pair in that time; `untilMs` is null where they still have it. */
  | {
      readonly field: 'from' | 'until';
      readonly why: 'held';
      readonly fromMs: number;
      readonly untilMs: number | null;
    };

export type ReadHandOut =
  | { readonly ok: true; readonly body: HandOut }
  | { readonly ok: false; readonly troubles: readonly HandOutTrouble[] };

/** The draft of a hand-out that is on record. */
export const draftOfHandOut = ({ from, until, blind }: HandOut): HandOutDraft => ({
  from: toLocalMinute(from),
  until: until === undefined ? '' : toLocalMinute(until),
  blind,
});

/** Whether a hand-out's beginning, and its end, were agreed ahead. */
const aheadOf = ({ from, until }: HandOut, nowMs: number): readonly [boolean, boolean] => {
  const isAhead = Date.parse(from) > nowMs;
  return [isAhead, isAhead || (until !== undefined && Date.parse(until) > nowMs)];
};

/** Whether the pair is out by this hand-out; one that a plan agreed ahead has not begun. */
export const isOutNow = ({ from, until }: HandOut, nowMs: number): boolean =>
  Date.parse(from) <= nowMs && (until === undefined || Date.parse(until) > nowMs);

const untilOf = (typed: string, stored: string | undefined): string | null | undefined =>
  typed.trim() === '' ? undefined : sinceInstant(typed, stored ?? '');

/** Other hand-outs of the pair whose time overlaps, as trouble of the end that runs into each. */
const heldBy = (
  old: RecordOf<'hand-out'>,
  handOuts: readonly RecordOf<'hand-out'>[],
  fromMs: number,
  untilMs: number,
): readonly HandOutTrouble[] =>
  handOuts.flatMap(({ body, revision }): HandOutTrouble[] => {
    if (body.pair !== old.body.pair || revision.id === old.revision.id) return [];
    const others = {
      fromMs: Date.parse(body.from),
      untilMs: body.until === undefined ? null : Date.parse(body.until),
    };
    if (others.fromMs >= untilMs || (others.untilMs ?? Infinity) <= fromMs) return [];
    return [{ field: others.fromMs > fromMs ? 'until' : 'from', why: 'held', ...others }];
  });

/**
 * Reads changed dates of a hand-out, or says everything that is wrong with them.
 * @param old as it is on record; what no form knows is kept
 * @param handOuts all of the group's: another one of the same pair must not overlap
 * @param nowMs milliseconds since 1970
 */
export const readHandOutDraft = (
  draft: HandOutDraft,
  old: RecordOf<'hand-out'>,
  handOuts: readonly RecordOf<'hand-out'>[],
  nowMs: number,
): ReadHandOut => {
  const from = sinceInstant(draft.from, old.body.from);
  const until = untilOf(draft.until, old.body.until);
  const fromMs = from === null ? Number.NaN : Date.parse(from);
  const untilMs = until ? Date.parse(until) : Infinity;
  // What a plan agreed ahead may be moved to another day ahead; nothing else lies in the future.
  const [fromAhead, untilAhead] = aheadOf(old.body, nowMs);
  const troubles: HandOutTrouble[] = [];
  if (from === null) troubles.push({ field: 'from', why: 'missing' });
  else if (fromMs > nowMs && !fromAhead) troubles.push({ field: 'from', why: 'not-yet' });
  if (until === null) troubles.push({ field: 'until', why: 'missing' });
  else if (until !== undefined && untilMs > nowMs && !untilAhead)
    troubles.push({ field: 'until', why: 'not-yet' });
  else if (untilMs <= fromMs) troubles.push({ field: 'until', why: 'before-from' });
  // An overlap that is there already keeps nobody from changing anything else.
  const isChanged = from !== old.body.from || until !== old.body.until;
  if (troubles.length === 0 && isChanged) troubles.push(...heldBy(old, handOuts, fromMs, untilMs));
  if (from === null || until === null || troubles.length > 0) return { ok: false, troubles };
  return { ok: true, body: editBody<'hand-out'>(old.body, { from, until, blind: draft.blind }) };
};

export type ReadReturn =
  | {
      readonly ok: true;
      readonly returned: readonly { readonly id: RecordId; readonly body: HandOut }[];
    }
  | { readonly ok: false; readonly why: 'missing' | 'not-yet' }
  /** Pairs that were handed out only after that time. */
  | { readonly ok: false; readonly why: 'before-from'; readonly pairs: readonly RecordId[] };

/**
 * Reads one time at which several pairs came back.
 * @param typed local date and time; null: now
 * @param out the hand-outs that end then
 */
export const readReturn = (
  typed: string | null,
  out: readonly RecordOf<'hand-out'>[],
  nowMs: number,
): ReadReturn => {
  const ms = typed === null ? nowMs : new Date(typed).getTime();
  if (Number.isNaN(ms)) return { ok: false, why: 'missing' };
  if (ms > nowMs) return { ok: false, why: 'not-yet' };
  const late = out.filter(({ body }) => Date.parse(body.from) >= ms);
  if (late.length > 0)
    return { ok: false, why: 'before-from', pairs: late.map(({ body }) => body.pair) };
  const until = toInstant(ms);
  return {
    ok: true,
    returned: out.map(({ body, revision }) => ({
      id: revision.id,
      body: editBody<'hand-out'>(body, { until }),
    })),
  };
};

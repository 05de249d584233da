/** What of a run is asked about before it is saved? It may be right: nothing is refused. Pure. */
import { handOutSpan, isWithin } from '../../../core/mileage/hand-out-span.ts';
import { whereWas } from '../../../core/mileage/judge-run.ts';
import { isPlausibleRun } from '../../../core/mileage/plausible.ts';
import { loggedRun, type LoggedRun } from '../../../core/mileage/logged-run.ts';
import { sameRunAs } from '../../../core/mileage/same-run.ts';
import type { RecordId, RecordOf, Run } from '../../../core/records/index.ts';
import type { RunForm } from '../../drafts/run.ts';

export type RunDoubt =
  | { readonly why: 'distance-or-pace' | 'not-handed-out' }
  /** The tester had other pairs then, and not this one. */
  | { readonly why: 'other-pair'; readonly held: readonly RecordId[] }
  /** The same run seems to be logged already. */
  | { readonly why: 'logged-twice'; readonly other: LoggedRun }
  /** This phone's clock is off; by the others' the run began then, milliseconds since 1970. */
  | { readonly why: 'clock'; readonly startMs: number };

export interface DoubtContext {
  readonly handOuts: readonly RecordOf<'hand-out'>[];
  /** Those on this phone so far. */
  readonly runs: readonly RecordOf<'run'>[];
  /** The run that is changed, as it was. */
  readonly before: RecordOf<'run'> | null;
  readonly nowMs: number;
  /** By how much this phone's clock is off ({@link clockOff}). */
  readonly clockOffMs: number;
}

/** A clock that is off by less puts a run on its day and in its order. Judgement, no source. */
const CLOCK_OFF_MS = 3_600_000;

/**
 * By how much this phone's clock is off, as far as a phone can know, ms to add to it; 0 where it is not known to be.
 * The hub says so at each sync. Without a hub only a slow clock shows: others wrote what is here at a time that it has
 * not reached. A fast one looks like a phone that lay unused.
 * @param hubOffsetMs what the hub's clock showed more at the last sync; 0: they agree, or nothing is known
 * @param lastToldMs when the others last wrote about the pair, by their clocks; 0: never
 */
export const clockOff = (nowMs: number, hubOffsetMs: number, lastToldMs: number): number => {
  const off = hubOffsetMs === 0 ? Math.max(0, lastToldMs - nowMs) : hubOffsetMs;
  return Math.abs(off) >= CLOCK_OFF_MS ? off : 0;
};

/** The pairs that the tester had when the run began. */
const heldThen = (
  { tester, startedAt }: Pick<Run, 'tester' | 'startedAt'>,
  handOuts: readonly RecordOf<'hand-out'>[],
): readonly RecordId[] =>
  handOuts
    .filter(
      (handOut) =>
        handOut.body.tester === tester && isWithin(handOutSpan(handOut), Date.parse(startedAt)),
    )
    .map(({ body }) => body.pair);

/** An id for what has none yet. */
const NEW = '' as RecordId;

/** The run that this one may be, unless it was the same before the change. */
const loggedBefore = (
  run: Run,
  isHourKnown: boolean,
  { runs, before }: DoubtContext,
): LoggedRun | null => {
  const id = before?.revision.id ?? NEW;
  const others = runs.filter(({ revision }) => revision.id !== id).map(loggedRun);
  const logged = (body: Run): LoggedRun => {
    const startMs = Date.parse(body.startedAt);
    const { pair, tester, distanceM, durationS = 0 } = body;
    return { id, pair, tester, startMs, endMs: startMs + 1000 * durationS, distanceM, run: body };
  };
  const other = sameRunAs(logged(run), others, isHourKnown);
  const was = before && sameRunAs(logged(before.body), others, true);
  return other && other.id === was?.id ? null : other;
};

/**
 * What is odd about a run; not what was as odd before it was changed. That the pair was not handed out is not asked
 * about a start that nobody chose: the pair is at hand, and its hand-out may be noted a little late; unless the tester
 * had others, and it may be noted in the wrong one. The clock is asked about where it made the start, or lets one
 * pass that is still to come.
 */
export const doubtsOf = (
  run: Run,
  form: Pick<RunForm, 'start' | 'startMs' | 'isHourMade'>,
  context: DoubtContext,
): readonly RunDoubt[] => {
  const before = context.before?.body;
  const isChosen = form.start !== '' || form.startMs !== null;
  const isNewStart = run.startedAt !== before?.startedAt;
  const isOdd =
    !isPlausibleRun(run.distanceM, run.durationS) &&
    (run.distanceM !== before?.distanceM || run.durationS !== before.durationS);
  const { clockOffMs: off, nowMs } = context;
  const startMs = Date.parse(run.startedAt);
  const isOfClock = !isChosen || form.isHourMade || startMs > nowMs + off + CLOCK_OFF_MS;
  const other = loggedBefore(run, !form.isHourMade, context);
  const spans = context.handOuts.map(handOutSpan).filter(({ pair }) => pair === run.pair);
  const was = isNewStart ? whereWas({ ...run, startMs }, spans) : 'here';
  const held = was === 'elsewhere' ? heldThen(run, context.handOuts) : [];
  return [
    ...(isOdd ? [{ why: 'distance-or-pace' } as const] : []),
    ...(other ? [{ why: 'logged-twice', other } as const] : []),
    ...(off !== 0 && isOfClock && isNewStart
      ? [{ why: 'clock', startMs: startMs + off } as const]
      : []),
    ...(held.length > 0 ? [{ why: 'other-pair', held } as const] : []),
    ...(was !== 'here' && isChosen && held.length === 0
      ? [{ why: 'not-handed-out' } as const]
      : []),
  ];
};

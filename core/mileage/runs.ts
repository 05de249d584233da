/**
 * Which of the logged runs count, and what is odd about the others?
 *
 * Nothing is dropped in silence and nothing counts twice: a run that comes a second time is reported
 * and left out of the sum; everything else that looks wrong is reported and counted as logged.
 */
import { isSameTrack, type RecordId, type RecordOf, type Run } from '../records/index.ts';
import { isWithin, type HandOutSpan } from './hand-out-span.ts';
import { isPlausibleDistance, isPlausiblePace } from './plausible.ts';
import { groupBy } from '../statistics/index.ts';
import { metres, type Metres } from '../units/index.ts';

/** One run with what the sums need, times in milliseconds since 1970. */
export interface LoggedRun {
  readonly id: RecordId;
  readonly pair: RecordId;
  readonly tester: RecordId;
  readonly startMs: number;
  /** Start plus duration; the start itself where no duration was given. */
  readonly endMs: number;
  readonly distanceM: Metres;
  readonly run: Run;
}

export type RunOddity =
  /** The same run logged again: it counts once, as `counted`. */
  | { readonly why: 'logged-twice'; readonly run: RecordId; readonly counted: RecordId }
  /** Two runs of one tester overlap in time; both count. */
  | { readonly why: 'tester-overlap'; readonly run: RecordId; readonly other: RecordId }
  /** Two testers wore one pair at the same time; both count. */
  | { readonly why: 'pair-overlap'; readonly run: RecordId; readonly other: RecordId }
  | { readonly why: 'pace'; readonly run: RecordId; readonly secondsPerKm: number }
  | { readonly why: 'distance'; readonly run: RecordId; readonly distanceM: Metres }
  /** The pair was not handed out to this tester at that time. */
  | { readonly why: 'not-handed-out'; readonly run: RecordId }
  | { readonly why: 'in-the-future'; readonly run: RecordId }
  | { readonly why: 'unknown-pair'; readonly run: RecordId };

export interface CheckedRuns {
  /** The runs that count, by start, then id. */
  readonly counted: readonly LoggedRun[];
  /** The runs that came again, by start, then id. */
  readonly repeated: readonly LoggedRun[];
  readonly oddities: readonly RunOddity[];
}

/** Two logs are the same run when they start this close together … (judgement, no source) */
export const SAME_RUN_MS = 5 * 60_000;
/** … and differ by no more than this share of the longer distance (judgement, no source). */
export const SAME_RUN_SHARE = 0.01;

/** A phone's clock may run a little ahead of the reader's. */
const FUTURE_MS = 24 * 3_600_000;

const byStart = (a: LoggedRun, b: LoggedRun): number =>
  a.startMs - b.startMs || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

/** A record of a run as the sums take it. */
export const loggedRun = (record: RecordOf<'run'>): LoggedRun => {
  const { body, revision } = record;
  const startMs = Date.parse(body.startedAt);
  return {
    id: revision.id,
    pair: body.pair,
    tester: body.tester,
    startMs,
    endMs: startMs + (body.durationS ?? 0) * 1000,
    distanceM: body.distanceM,
    run: body,
  };
};

const sameTrack = (a: LoggedRun, b: LoggedRun): boolean =>
  a.run.track !== undefined &&
  b.run.track !== undefined &&
  isSameTrack(a.run.track.fingerprint, b.run.track.fingerprint);

/** The same tester, the same pair, and either the same track or nearly the same start and distance. */
const isSameRun = (a: LoggedRun, b: LoggedRun): boolean =>
  a.tester === b.tester &&
  a.pair === b.pair &&
  (sameTrack(a, b) ||
    (Math.abs(a.startMs - b.startMs) <= SAME_RUN_MS &&
      Math.abs(a.distanceM - b.distanceM) <= SAME_RUN_SHARE * Math.max(a.distanceM, b.distanceM)));

const overlap = (a: LoggedRun, b: LoggedRun): boolean => a.startMs < b.endMs && b.startMs < a.endMs;

/** Neighbours in time that overlap; each later run is compared with every one still going on. */
const overlaps = (
  runs: readonly LoggedRun[],
  why: 'tester-overlap' | 'pair-overlap',
  clash: (a: LoggedRun, b: LoggedRun) => boolean,
): RunOddity[] => {
  const found: RunOddity[] = [];
  let going: LoggedRun[] = [];
  for (const run of runs) {
    going = going.filter((other) => other.endMs > run.startMs);
    for (const other of going)
      if (overlap(run, other) && clash(run, other))
        found.push({ why, run: run.id, other: other.id });
    going.push(run);
  }
  return found;
};

/** Of each run that came again, which one it repeats: the first by start, then id. @param runs in that order */
const repeatsIn = (runs: readonly LoggedRun[]): ReadonlyMap<RecordId, RecordId> => {
  const repeated = new Map<RecordId, RecordId>();
  for (const group of groupBy(runs, (run) => `${run.pair} ${run.tester}`).values()) {
    const kept: LoggedRun[] = [];
    const byFingerprint = new Map<string, LoggedRun>();
    for (const run of group) {
      const print = run.run.track?.fingerprint;
      let same = print === undefined ? undefined : byFingerprint.get(print);
      // The group is sorted, so only runs that started within the window can be the same one.
      for (let at = kept.length - 1; !same && at >= 0; at--) {
        const earlier = kept[at] as LoggedRun;
        if (run.startMs - earlier.startMs > SAME_RUN_MS) break;
        if (isSameRun(earlier, run)) same = earlier;
      }
      if (same) repeated.set(run.id, same.id);
      else {
        kept.push(run);
        if (print !== undefined) byFingerprint.set(print, run);
      }
    }
  }
  return repeated;
};

/** Splits runs into those that count and those that came again, both by start, then id. */
export const withoutRepeats = (runs: readonly LoggedRun[]) => {
  const sorted = [...runs].sort(byStart);
  const repeats = repeatsIn(sorted);
  return {
    counted: sorted.filter((run) => !repeats.has(run.id)),
    repeated: sorted.filter((run) => repeats.has(run.id)),
    repeats,
  };
};

export interface RunsContext {
  readonly pairs: ReadonlySet<RecordId>;
  readonly handOuts: readonly HandOutSpan[];
  /** When the question is asked, milliseconds since 1970. */
  readonly nowMs: number;
}

/** Sorts out all runs of a project. The order in which they come never changes the answer. */
export const checkRuns = (runs: readonly LoggedRun[], context: RunsContext): CheckedRuns => {
  const { counted, repeated, repeats } = withoutRepeats(runs);
  const oddities: RunOddity[] = repeated.map((run) => ({
    why: 'logged-twice',
    run: run.id,
    counted: repeats.get(run.id) as RecordId,
  }));
  for (const group of groupBy(counted, (run) => run.tester).values())
    oddities.push(...overlaps(group, 'tester-overlap', () => true));
  for (const group of groupBy(counted, (run) => run.pair).values())
    oddities.push(...overlaps(group, 'pair-overlap', (a, b) => a.tester !== b.tester));

  const held = new Map<string, HandOutSpan[]>();
  for (const span of context.handOuts) {
    const key = `${span.pair} ${span.tester}`;
    held.set(key, [...(held.get(key) ?? []), span]);
  }
  for (const run of counted) oddities.push(...odditiesOf(run, context, held));
  return { counted, repeated, oddities };
};

const odditiesOf = (
  run: LoggedRun,
  { pairs, nowMs }: RunsContext,
  held: ReadonlyMap<string, readonly HandOutSpan[]>,
): RunOddity[] => {
  const found: RunOddity[] = [];
  const { id, distanceM, startMs, endMs } = run;
  if (!pairs.has(run.pair)) found.push({ why: 'unknown-pair', run: id });
  else {
    const spans = held.get(`${run.pair} ${run.tester}`) ?? [];
    if (!spans.some((span) => isWithin(span, startMs)))
      found.push({ why: 'not-handed-out', run: id });
  }
  if (!isPlausibleDistance(distanceM))
    found.push({ why: 'distance', run: id, distanceM: metres(distanceM) });
  if (endMs > startMs && distanceM > 0) {
    const secondsPerKm = (endMs - startMs) / distanceM;
    if (!isPlausiblePace(secondsPerKm)) found.push({ why: 'pace', run: id, secondsPerKm });
  }
  if (startMs > nowMs + FUTURE_MS) found.push({ why: 'in-the-future', run: id });
  return found;
};

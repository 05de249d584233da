/**
 * Which of the logged runs count, and what is odd about the others?
 *
 * Nothing is dropped in silence and nothing counts twice. A run that cannot be right stays out of every figure
 * until a lead decides; one that comes a second time is reported and left out; everything else that looks
 * wrong is reported and counted as logged.
 */
import { isSameTrack, type RecordId, type Ruling } from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';
import type { HandOutSpan } from './hand-out-span.ts';
import { judgeRun, type OwnOddity } from './judge-run.ts';
import type { LoggedRun } from './logged-run.ts';

export type RunOddity =
  /** The same run logged again: it counts once, as `counted`. */
  | { readonly why: 'logged-twice'; readonly run: RecordId; readonly counted: RecordId }
  /** Two runs of one tester overlap in time; both count. */
  | { readonly why: 'tester-overlap'; readonly run: RecordId; readonly other: RecordId }
  /** Two testers wore one pair at the same time; both count. */
  | { readonly why: 'pair-overlap'; readonly run: RecordId; readonly other: RecordId }
  | OwnOddity;

/** A run that stays out of every figure until a lead decides, and everything that speaks against it. */
export interface WaitingRun {
  readonly run: LoggedRun;
  readonly whys: readonly OwnOddity[];
}

export interface CheckedRuns {
  /** The runs that count, by start, then id. */
  readonly counted: readonly LoggedRun[];
  /** The runs that came again, by start, then id. */
  readonly repeated: readonly LoggedRun[];
  /** The runs that wait for a lead, by start, then id. They count nowhere. */
  readonly waiting: readonly WaitingRun[];
  /** What is odd about the runs that count, and which came again. */
  readonly oddities: readonly RunOddity[];
}

/** Two logs are the same run when they start this close together … (judgement, no source) */
export const SAME_RUN_MS = 5 * 60_000;
/** … and differ by no more than this share of the longer distance (judgement, no source). */
export const SAME_RUN_SHARE = 0.01;

const byStart = (a: LoggedRun, b: LoggedRun): number =>
  a.startMs - b.startMs || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

const sameTrack = (a: LoggedRun, b: LoggedRun): boolean =>
  a.run.track !== undefined &&
  b.run.track !== undefined &&
  isSameTrack(a.run.track.fingerprint, b.run.track.fingerprint);

/** The same tester, the same pair, and either the same track or nearly the same start and distance. */
export const isSameRun = (a: LoggedRun, b: LoggedRun): boolean =>
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

/**
 * The runs that came again, each with the one that counts for it: the first by start, then id.
 * @param runs by start, then id
 * @param isKept whether a run counts whatever it resembles
 */
const repeatsIn = (runs: readonly LoggedRun[], isKept: (run: LoggedRun) => boolean) => {
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
      if (same && !isKept(run)) repeated.set(run.id, same.id);
      else {
        kept.push(run);
        if (print !== undefined) byFingerprint.set(print, run);
      }
    }
  }
  return repeated;
};

/** Runs that count and those that came again, as one phone sums them: it knows no lead's decision. */
export const withoutRepeats = (runs: readonly LoggedRun[]) => {
  const sorted = [...runs].sort(byStart);
  const repeats = repeatsIn(sorted, () => false);
  return { counted: sorted.filter((run) => !repeats.has(run.id)), repeats };
};

export interface RunsContext {
  readonly pairs: ReadonlySet<RecordId>;
  readonly handOuts: readonly HandOutSpan[];
  /** When the question is asked, milliseconds since 1970. */
  readonly nowMs: number;
  /** What a lead decided of a run as it stands now; nothing where nobody did. */
  readonly rulings?: ReadonlyMap<RecordId, Ruling>;
}

/**
 * Sorts out all runs of a project. The order in which they come never changes the answer, and what waits or was set
 * aside changes nothing about the others: they are judged as if it were not there.
 */
export const checkRuns = (
  runs: readonly LoggedRun[],
  { rulings, ...context }: RunsContext,
): CheckedRuns => {
  const spansOf = groupBy(context.handOuts, ({ pair }) => pair);
  const waiting: WaitingRun[] = [];
  const own = new Map<RecordId, readonly OwnOddity[]>();
  const standing = [...runs].sort(byStart).filter((run) => {
    const ruling = rulings?.get(run.id);
    if (ruling !== undefined) return ruling === 'counted';
    const { whys, keepsOut } = judgeRun(run, { ...context, spansOf });
    if (keepsOut) waiting.push({ run, whys });
    else own.set(run.id, whys);
    return !keepsOut;
  });
  const isDecided = ({ id }: LoggedRun) => rulings?.has(id) === true;
  const repeats = repeatsIn(standing, isDecided);
  const counted = standing.filter((run) => !repeats.has(run.id));
  const repeated = standing.filter((run) => repeats.has(run.id));
  const oddities: RunOddity[] = repeated.map((run) => ({
    why: 'logged-twice',
    run: run.id,
    counted: repeats.get(run.id) as RecordId,
  }));
  const clashes = [
    ...[...groupBy(counted, (run) => run.tester).values()].flatMap((group) =>
      overlaps(group, 'tester-overlap', () => true),
    ),
    ...[...groupBy(counted, (run) => run.pair).values()].flatMap((group) =>
      overlaps(group, 'pair-overlap', (a, b) => a.tester !== b.tester),
    ),
  ];
  // Nobody is asked again about a run that a lead let count.
  oddities.push(...clashes.filter(({ run }) => rulings?.has(run) !== true));
  for (const run of counted) oddities.push(...(own.get(run.id) ?? []));
  return { counted, repeated, waiting, oddities };
};

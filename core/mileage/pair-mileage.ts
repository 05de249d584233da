/** How many kilometres are on a pair, at any instant, and on what and by whom were they run? */
import type { RecordId, Surface } from '../records/index.ts';
import { metres, type Metres } from '../units/index.ts';
import { isWithin, type HandOutSpan } from './hand-out-span.ts';
import type { LoggedRun } from './logged-run.ts';

/** Distance by surface; `unknown` where the tester did not say. */
export type BySurface = Readonly<Partial<Record<Surface | 'unknown', Metres>>>;

export interface PairMileage {
  readonly pair: RecordId;
  /** Carried in before the test plus every counted run. */
  readonly totalM: Metres;
  readonly carriedInM: Metres;
  readonly loggedM: Metres;
  readonly runs: number;
  readonly bySurface: BySurface;
  readonly byTester: ReadonlyMap<RecordId, Metres>;
  /** By hand-out; runs outside of every hand-out are under null. */
  readonly byHandOut: ReadonlyMap<RecordId | null, Metres>;
  readonly lastRunMs: number | null;
}

/** The distance on a pair over time: for questions about one instant, such as a bench check's. */
export interface MileageCurve {
  /** End of each counted run, ascending, milliseconds since 1970. */
  readonly endMs: Float64Array;
  /** Distance on the pair after that run, metres, carried-in distance included. */
  readonly totalM: Float64Array;
  readonly carriedInM: Metres;
}

const add = <K>(to: Map<K, Metres>, key: K, distanceM: number): void => {
  to.set(key, metres((to.get(key) ?? 0) + distanceM));
};

/**
 * Sums one pair's counted runs (see {@link import('./runs.ts').checkRuns}).
 * @param runs the counted runs of this pair, by start
 * @param carriedInM distance on the pair before the test
 * @param handOuts this pair's hand-outs
 */
export const pairMileage = (
  pair: RecordId,
  runs: readonly LoggedRun[],
  carriedInM: Metres,
  handOuts: readonly HandOutSpan[],
): PairMileage => {
  const bySurface = new Map<Surface | 'unknown', Metres>();
  const byTester = new Map<RecordId, Metres>();
  const byHandOut = new Map<RecordId | null, Metres>();
  let loggedM = 0;
  for (const { distanceM, run, tester, startMs } of runs) {
    loggedM += distanceM;
    add(byTester, tester, distanceM);
    add(byHandOut, handOutAt(handOuts, tester, startMs), distanceM);
    if (!run.surfaces) add(bySurface, 'unknown', distanceM);
    else
      for (const [surface, share] of Object.entries(run.surfaces) as [Surface, number][])
        if (share > 0) add(bySurface, surface, share * distanceM);
  }
  return {
    pair,
    totalM: metres(carriedInM + loggedM),
    carriedInM,
    loggedM: metres(loggedM),
    runs: runs.length,
    bySurface: Object.fromEntries(bySurface),
    byTester,
    byHandOut,
    lastRunMs: runs.at(-1)?.startMs ?? null,
  };
};

const handOutAt = (
  handOuts: readonly HandOutSpan[],
  tester: RecordId,
  ms: number,
): RecordId | null =>
  handOuts.find((span) => span.tester === tester && isWithin(span, ms))?.id ?? null;

/** The curve of one pair from its counted runs. */
export const mileageCurve = (runs: readonly LoggedRun[], carriedInM: Metres): MileageCurve => {
  const sorted = [...runs].sort((a, b) => a.endMs - b.endMs);
  const endMs = new Float64Array(sorted.length);
  const totalM = new Float64Array(sorted.length);
  let sum: number = carriedInM;
  for (const [at, run] of sorted.entries()) {
    sum += run.distanceM;
    endMs[at] = run.endMs;
    totalM[at] = sum;
  }
  return { endMs, totalM, carriedInM };
};

/**
 * The distance by which a run, its answers and its words are placed on a pair: what the pair had on it as the run began.
 * One figure for every sum, picture and list. A run without a duration ends as it begins, and is not before itself.
 */
export const mileageBefore = (curve: MileageCurve, startMs: number): Metres =>
  mileageAt(curve, startMs - 1);

/** Distance on the pair at an instant: every run that had ended by then. O(log n). */
export const mileageAt = ({ endMs, totalM, carriedInM }: MileageCurve, ms: number): Metres => {
  let lo = 0;
  let hi = endMs.length;
  while (lo < hi) {
    const mid = (lo + hi) >> 1;
    if ((endMs[mid] as number) <= ms) lo = mid + 1;
    else hi = mid;
  }
  return lo === 0 ? carriedInM : metres(totalM[lo - 1] as number);
};

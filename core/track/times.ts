/**
 * Which times of a track can be used? One fix without a time, or with one of another year, must not cost a
 * run its pace; times that are all the same must not cost it its distance. Limits are judgement, no source.
 */
import { nearDistance } from './geodesic.ts';
import type { Segment, Track, TrackPoint } from './track.ts';

/** More of a span than this without a time of its own: its times are not known. */
const MOST_FILLED = 0.1;
/** Farther from the middle time than this is a clock that was not set. */
const UNSET_MS = 7 * 86_400_000;
/** A clock that writes whole minutes is the coarsest that can be told from a pause. */
const COARSEST_MS = 60_000;

type Timed = { readonly point: TrackPoint; timeMs: number | null };

const isInOrder = (segment: Segment): boolean => {
  let before = -Infinity;
  for (const { timeMs } of segment) {
    if (timeMs === null || timeMs <= before) return false;
    before = timeMs;
  }
  return true;
};

const isSamePlace = (a: TrackPoint, b: TrackPoint): boolean => a.lat === b.lat && a.lon === b.lon;

/** Fixes that repeat the time of the one before them at another place: a clock coarser than the fixes. */
const repeats = (fixes: readonly Timed[], at: number): boolean => {
  const [before, fix] = [fixes[at - 1], fixes[at]] as [Timed | undefined, Timed];
  return (
    before !== undefined &&
    fix.timeMs !== null &&
    before.timeMs === fix.timeMs &&
    !isSamePlace(before.point, fix.point)
  );
};

/** Gives each fix without a time its share, by distance, of the time between its neighbours that have one. */
const filled = (fixes: readonly Timed[], isCoarse: boolean): Segment => {
  const alongM = [0];
  for (let at = 1; at < fixes.length; at++)
    alongM.push(
      (alongM[at - 1] as number) +
        nearDistance((fixes[at - 1] as Timed).point, (fixes[at] as Timed).point),
    );
  const known = fixes.flatMap(({ timeMs }, at) => (timeMs === null ? [] : [at]));
  const timeOf = (at: number) => (fixes[at] as Timed).timeMs as number;
  const far = (from: number, to: number) => (alongM[to] as number) - (alongM[from] as number);
  const [first, last] = [known[0] as number, known.at(-1) as number];
  const spentMs = Math.abs(timeOf(last) - timeOf(first));
  // Beside the known times the mean speed between them has to do.
  const msPerM = far(first, last) > 0 && spentMs > 0 ? spentMs / far(first, last) : 400;
  let next = 0;
  return fixes.map(({ point, timeMs }, at) => {
    while (next < known.length && (known[next] as number) < at) next++;
    if (timeMs !== null) return point.timeMs === timeMs ? point : { ...point, timeMs };
    const [before, after] = [known[next - 1], known[next]];
    if (before === undefined)
      return { ...point, timeMs: Math.round(timeOf(first) - msPerM * far(at, first)) };
    const rest = msPerM * far(before, at);
    if (after === undefined)
      return {
        ...point,
        timeMs: Math.round(timeOf(before) + Math.min(rest, isCoarse ? COARSEST_MS - 1 : rest)),
      };
    const whole = far(before, after);
    const share = whole > 0 ? far(before, at) / whole : (at - before) / (after - before);
    const between = timeOf(after) - timeOf(before);
    const spread = isCoarse ? Math.min(between, COARSEST_MS) : between;
    return { ...point, timeMs: Math.round(timeOf(before) + share * spread) };
  });
};

/** The span with a time at every fix; null where too few are known. `middleMs`: the track's middle time. */
const usable = (segment: Segment, middleMs: number): Segment | null => {
  if (
    isInOrder(segment) &&
    segment.every((one) => Math.abs((one.timeMs as number) - middleMs) < UNSET_MS)
  )
    return segment;
  const fixes: Timed[] = segment.map((point) => ({
    point,
    timeMs:
      point.timeMs === null || Math.abs(point.timeMs - middleMs) > UNSET_MS ? null : point.timeMs,
  }));
  const lacking = fixes.filter(({ timeMs }) => timeMs === null).length;
  if (lacking > Math.max(1, MOST_FILLED * fixes.length) || lacking === fixes.length) return null;
  const repeated = fixes.flatMap((_, at) => (repeats(fixes, at) ? [at] : []));
  const isCoarse = repeated.length > MOST_FILLED * fixes.length;
  if (isCoarse) {
    if (new Set(fixes.flatMap(({ timeMs }) => timeMs ?? [])).size < 2) return null;
    for (const at of repeated) (fixes[at] as Timed).timeMs = null;
  }
  return filled(fixes, isCoarse);
};

/**
 * The same track with a time at every fix, or at none: few missing times are filled in between their
 * neighbours, a coarse clock's are spread, and where that would be guessing only the places are left.
 */
export const withUsableTimes = (track: Track): Track => {
  const known = track.segments.flatMap((segment) => segment.flatMap(({ timeMs }) => timeMs ?? []));
  const middleMs = Float64Array.from(known).sort()[known.length >> 1];
  const spans = middleMs === undefined ? [] : track.segments.map((one) => usable(one, middleMs));
  const isUsable = middleMs !== undefined && spans.every((one) => one !== null);
  return {
    ...track,
    segments: isUsable
      ? spans
      : track.segments.map((one) => one.map((point) => ({ ...point, timeMs: null }))),
  };
};

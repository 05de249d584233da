/**
 * Which fixes of a span are good to measure by, and when did the runner stand? Fixes are put in order,
 * doubled ones and spikes left out, standing drawn together to one place, and what white noise is left is
 * smoothed where fixes come evenly. Limits below without a source are judgement.
 */
import { geodesicDistance, toPlane } from './geodesic.ts';
import type { Segment, TrackPoint } from './track.ts';

/** Nobody runs faster, metres per second: a fix that needs it there and back is a spike. */
const SPIKE_MPS = 12;
/** Slower over the window than this is standing, metres per second. */
const STANDING_MPS = 0.6;
const WINDOW_MS = 40_000;
/** A step so long without a fix, and so slow, is a pause of the recorder. */
const GAP_MS = 30_000;
/** Below this the noise of a fix is not worth smoothing, metres. */
const NOISE_M = 0.5;

export interface CleanPoint extends TrackPoint {
  /** True for the fixes that stand together at one place. */
  readonly standing: boolean;
}

export interface CleanSegment {
  readonly points: readonly CleanPoint[];
  /** Standard deviation of a fix in east and in north, metres, as its neighbours show it. */
  readonly noiseM: number;
  /** Whether the fixes were smoothed because of it. */
  readonly smoothed: boolean;
}

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;

/** By time where every fix has one; doubled times keep the first fix. */
const inOrder = (segment: Segment): TrackPoint[] => {
  if (segment.some(({ timeMs }) => timeMs === null)) return [...segment];
  const sorted = [...segment].sort((a, b) => (a.timeMs as number) - (b.timeMs as number));
  return sorted.filter((point, at) => at === 0 || point.timeMs !== sorted[at - 1]?.timeMs);
};

const speed = (a: TrackPoint, b: TrackPoint): number | null =>
  a.timeMs === null || b.timeMs === null || a.timeMs === b.timeMs
    ? null
    : (1000 * geodesicDistance(a, b)) / (b.timeMs - a.timeMs);

/** Leaves out single fixes that are far off and from which the next one is back. */
const withoutSpikes = (points: readonly TrackPoint[]): TrackPoint[] => {
  const kept: TrackPoint[] = [];
  for (const [at, point] of points.entries()) {
    const before = kept.at(-1);
    const after = points[at + 1];
    if (before && after) {
      const [there, back, past] = [speed(before, point), speed(point, after), speed(before, after)];
      const isFar = there !== null && back !== null && there > SPIKE_MPS && back > SPIKE_MPS;
      if (isFar && past !== null && past <= SPIKE_MPS) continue;
    }
    kept.push(point);
  }
  return kept;
};

/**
 * Which fixes stand: those over whose window the mean place of the second half is hardly away from that of
 * the first. Means, because a single fix of a standing watch jumps by metres.
 */
const standingFixes = (points: readonly TrackPoint[]): boolean[] => {
  const origin = points[0];
  if (!origin || points.some(({ timeMs }) => timeMs === null)) return points.map(() => false);
  const plane = points.map(toPlane(origin));
  const times = points.map(({ timeMs }) => timeMs as number);
  const sums = plane.reduce<{ x: number; y: number }[]>(
    (all, { x, y }) => {
      const last = all.at(-1) as { x: number; y: number };
      all.push({ x: last.x + x, y: last.y + y });
      return all;
    },
    [{ x: 0, y: 0 }],
  );
  const mean = (from: number, to: number) => {
    const [a, b] = [sums[from], sums[to]] as [{ x: number; y: number }, { x: number; y: number }];
    return { x: (b.x - a.x) / (to - from), y: (b.y - a.y) / (to - from) };
  };
  let low = 0;
  let high = 0;
  return points.map((_, at) => {
    const now = times[at] as number;
    while ((times[low] as number) < now - WINDOW_MS / 2) low++;
    while (high < points.length && (times[high] as number) <= now + WINDOW_MS / 2) high++;
    if (high - at < 2 && at - low < 2) return false;
    const [first, second] = [mean(low, at + 1), mean(at, high)];
    const [from, to] = [low, high - 1].map((i) => times[i] as number) as [number, number];
    const seconds = (to - from) / 2000;
    if (seconds < 5) return false;
    return Math.hypot(second.x - first.x, second.y - first.y) / seconds < STANDING_MPS;
  });
};

/** Draws each stretch of standing, and the fixes beside it that are no farther off, to its middle. */
const drawnTogether = (points: readonly TrackPoint[]): CleanPoint[] => {
  const stands = standingFixes(points);
  const result: CleanPoint[] = points.map((point) => ({ ...point, standing: false }));
  for (let from = 0; from < points.length; from++) {
    if (!stands[from]) continue;
    let to = from;
    while (to + 1 < points.length && stands[to + 1]) to++;
    const those = points.slice(from, to + 1);
    const middle = {
      lat: median(those.map(({ lat }) => lat)),
      lon: median(those.map(({ lon }) => lon)),
    };
    const away = those.map((point) => geodesicDistance(middle, point));
    const reach = Math.max(8, 3 * median(away));
    let [first, last] = [from, to];
    const isNear = (point: TrackPoint | undefined) =>
      point !== undefined && geodesicDistance(middle, point) <= reach;
    // A fix that jumped away does not end the standing while one of the next is back.
    const nearest = (from: number, step: 1 | -1) =>
      [3, 2, 1].map((far) => from + step * far).find((at) => isNear(points[at]));
    for (let at = nearest(first, -1); at !== undefined; at = nearest(first, -1)) {
      if (result[at]?.standing) break;
      first = at;
    }
    for (let at = nearest(last, 1); at !== undefined; at = nearest(last, 1)) last = at;
    for (let at = first; at <= last; at++)
      result[at] = { ...(points[at] as TrackPoint), ...middle, standing: true };
    from = last;
  }
  return result;
};

/** Whether the seven fixes around this one come evenly and none of them stands. */
const isEven = (points: readonly CleanPoint[], at: number, reach: number): boolean => {
  const around = points.slice(at - reach, at + reach + 1);
  if (at < reach || around.length < 2 * reach + 1 || around.some(({ standing }) => standing))
    return false;
  const steps = around
    .slice(1)
    .map(({ timeMs }, i) => (timeMs ?? 0) - ((around[i] as CleanPoint).timeMs ?? 0));
  const [least, most] = [Math.min(...steps), Math.max(...steps)];
  return least > 0 ? most <= 1.6 * least : steps.every((step) => step === 0);
};

/**
 * White noise of the fixes from their fourth differences, which a smooth way leaves almost empty: of
 * independent errors their variance is 70 times that of one (binomial coefficients). The median makes it
 * robust against corners.
 */
const noiseOf = (points: readonly CleanPoint[]): number => {
  const sizes: number[] = [];
  for (let at = 2; at < points.length - 2; at++) {
    if (!isEven(points, at, 2)) continue;
    const plane = toPlane(points[at] as CleanPoint);
    const five = points.slice(at - 2, at + 3).map(plane);
    for (const axis of ['x', 'y'] as const) {
      const [a, b, c, d, e] = five.map((one) => one[axis]) as [
        number,
        number,
        number,
        number,
        number,
      ];
      sizes.push(Math.abs(a - 4 * b + 6 * c - 4 * d + e));
    }
  }
  // 0.6745: the median size of a standard normal error.
  return sizes.length < 20 ? 0 : median(sizes) / 0.6745 / Math.sqrt(70);
};

/** Cubic through seven even points (Savitzky & Golay, Anal Chem 1964;36:1627-39, table I). */
const WEIGHTS = [-2, 3, 6, 7, 6, 3, -2].map((weight) => weight / 21);

const smoothed = (points: readonly CleanPoint[]): CleanPoint[] =>
  points.map((point, at) => {
    if (!isEven(points, at, 3)) return point;
    const around = points.slice(at - 3, at + 4);
    const turn = ({ lon }: TrackPoint) => ((lon - point.lon + 540) % 360) - 180;
    const lat = around.reduce((sum, one, i) => sum + (WEIGHTS[i] as number) * one.lat, 0);
    const lon = around.reduce((sum, one, i) => sum + (WEIGHTS[i] as number) * turn(one), point.lon);
    return { ...point, lat, lon: lon >= 180 ? lon - 360 : lon < -180 ? lon + 360 : lon };
  });

/** Variance of the difference of two smoothed neighbours, in one axis, as a share of that of one fix (by arithmetic). */
const STEP_VARIANCE = 78 / 441;

/**
 * How much longer what noise is left makes a step: an error across the way always lengthens it, by its
 * variance over twice the step (first term of the mean of a Rice distribution).
 */
export const lengthening = (
  stepM: number,
  { noiseM, smoothed: isSmoothed }: CleanSegment,
): number =>
  isSmoothed && stepM > 0 ? Math.min(stepM, (STEP_VARIANCE * noiseM * noiseM) / (2 * stepM)) : 0;

/** A span made fit to be measured. */
export const cleanSegment = (segment: Segment): CleanSegment => {
  const points = drawnTogether(withoutSpikes(inOrder(segment)));
  const noiseM = noiseOf(points);
  const isNoisy = noiseM > NOISE_M;
  return { points: isNoisy ? smoothed(points) : points, noiseM, smoothed: isNoisy };
};

/** Whether the time between two fixes counts as moving. */
export const isMoving = (a: CleanPoint, b: CleanPoint, metres: number): boolean => {
  if (a.standing && b.standing) return false;
  const ms = (b.timeMs ?? 0) - (a.timeMs ?? 0);
  return ms <= GAP_MS || (1000 * metres) / ms >= STANDING_MPS;
};

/**
 * When did the runner stand? A standing watch jumps by metres and wanders, so places are judged by the means of
 * many; a slow walk, a turn on the spot and a bend must not pass for standing. Limits are judgement, no source.
 */
import { geodesicDistance } from './geodesic.ts';
import type { Span } from './span.ts';

/** Slower over the window than this may be standing, metres per second. */
const STANDING_MPS = 0.6;
/** Faster than this it is a slow walk, where the fixes move on steadily. */
const SLOWEST_WALK_MPS = 0.3;
/** F of a straight line over the window from which the fixes move on (1 % of still ones by chance, five fixes). */
const STEADY_F = 8;
/** Fixes of one place lie no wider about their mean, metres. */
const WIDEST_M = 12;
/** Half of the window, milliseconds; longer where fixes are rare. */
const HALF_MS = 20_000;

interface Sums {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly xx: Float64Array;
  readonly t: Float64Array;
  readonly tt: Float64Array;
  readonly tx: Float64Array;
  readonly ty: Float64Array;
}

/** Sums up to each fix, for the mean and the straight line of any stretch; seconds and metres. */
const sumsOf = ({ x, y, timesMs, length }: Span): Sums => {
  const start = timesMs[0] as number;
  const empty = () => new Float64Array(length + 1);
  const sums = {
    x: empty(),
    y: empty(),
    xx: empty(),
    t: empty(),
    tt: empty(),
    tx: empty(),
    ty: empty(),
  };
  for (let at = 0; at < length; at++) {
    const [east, north, s] = [
      x[at] as number,
      y[at] as number,
      ((timesMs[at] as number) - start) / 1000,
    ];
    const add = (all: Float64Array, value: number) => {
      all[at + 1] = (all[at] as number) + value;
    };
    add(sums.x, east);
    add(sums.y, north);
    add(sums.xx, east * east + north * north);
    add(sums.t, s);
    add(sums.tt, s * s);
    add(sums.tx, s * east);
    add(sums.ty, s * north);
  }
  return sums;
};

/** The straight line through the fixes [from, to): speed in m/s, its F, and how wide they lie (root mean square). */
const lineOf = (sums: Sums, from: number, to: number) => {
  const n = to - from;
  const of = (all: Float64Array) => (all[to] as number) - (all[from] as number);
  const [x, y, t] = [of(sums.x), of(sums.y), of(sums.t)];
  const tt = of(sums.tt) - (t * t) / n;
  const [tx, ty] = [of(sums.tx) - (t * x) / n, of(sums.ty) - (t * y) / n];
  const all = Math.max(0, of(sums.xx) - (x * x + y * y) / n);
  const explained = tt > 0 ? (tx * tx + ty * ty) / tt : 0;
  const rest = Math.max(1e-6, all - explained);
  return {
    n,
    mps: tt > 0 ? Math.hypot(tx, ty) / tt : 0,
    f: n > 2 ? (explained * (n - 2)) / rest : 0,
    wideM: Math.sqrt(all / n),
  };
};

/** Which fixes stand: those over whose window the mean place of the second half is hardly away from that of the first. */
export const standingFixes = (span: Span): Uint8Array => {
  const { timesMs, length, stepMs } = span;
  const stands = new Uint8Array(length);
  if (!span.isTimed || length === 0) return stands;
  const half = Math.max(HALF_MS, 2 * stepMs);
  const sums = sumsOf(span);
  const [firstMs, lastMs] = [timesMs[0] as number, timesMs[length - 1] as number];
  let [low, high, lineLow, lineHigh] = [0, 0, 0, 0];
  for (let at = 0; at < length; at++) {
    const now = timesMs[at] as number;
    while ((timesMs[low] as number) < now - half) low++;
    while (high < length && (timesMs[high] as number) <= now + half) high++;
    const lineMs = Math.max(firstMs, Math.min(now - half, lastMs - 2 * half));
    while ((timesMs[lineLow] as number) < lineMs) lineLow++;
    while (lineHigh < length && (timesMs[lineHigh] as number) <= lineMs + 2 * half) lineHigh++;
    const seconds = ((timesMs[high - 1] as number) - (timesMs[low] as number)) / 2000;
    if (seconds < 5 || (high - at < 2 && at - low < 2)) continue;
    const mean = (all: Float64Array, from: number, to: number) =>
      ((all[to] as number) - (all[from] as number)) / (to - from);
    const between = (all: Float64Array) => mean(all, at, high) - mean(all, low, at + 1);
    const mps = Math.hypot(between(sums.x), between(sums.y)) / seconds;
    if (mps >= STANDING_MPS) continue;
    const whole = lineOf(sums, low, high);
    if (whole.wideM > WIDEST_M) continue;
    // At either end of the span too few rare fixes are near: the line reaches farther in.
    const line = whole.n >= 5 ? whole : lineOf(sums, lineLow, lineHigh);
    if (line.n >= 5 && line.mps > SLOWEST_WALK_MPS && line.f >= STEADY_F) continue;
    // There and back: both halves move on, and their means meet.
    const halves = [lineOf(sums, low, at + 1), lineOf(sums, at, high)];
    if (halves.every(({ n, mps: one, f }) => n >= 5 && one >= STANDING_MPS && f >= 2 * STEADY_F))
      continue;
    stands[at] = 1;
  }
  return stands;
};

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;

/** Draws each stretch of standing, and the fixes beside it that are no farther off, to its middle. */
export const drawTogether = (span: Span): void => {
  const { points, standing } = span;
  const stands = standingFixes(span);
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
    const isNear = (at: number) => {
      const point = points[at];
      return point !== undefined && geodesicDistance(middle, point) <= reach;
    };
    // A fix that jumped away does not end the standing while one of the next is back.
    const nearest = (at: number, step: 1 | -1) =>
      [3, 2, 1].map((far) => at + step * far).find((other) => isNear(other));
    for (let at = nearest(first, -1); at !== undefined; at = nearest(first, -1)) {
      if (standing[at]) break;
      first = at;
    }
    for (let at = nearest(last, 1); at !== undefined; at = nearest(last, 1)) last = at;
    span.moveTo(first, last, middle);
    from = last;
  }
};

/** Whether the time between two fixes counts as moving: not where both stand, nor in a pause of the recorder. */
export const isMoving = (span: Span, at: number, stepM: number): boolean => {
  if (span.standing[at] && span.standing[at + 1]) return false;
  const ms = (span.timesMs[at + 1] as number) - (span.timesMs[at] as number);
  return ms <= Math.max(30_000, 3 * span.stepMs) || (1000 * stepM) / ms >= STANDING_MPS;
};

/**
 * How long is each step of a span once noise is taken out and bends between its fixes are put in? Where fixes are
 * dense and noisy they are smoothed first. Where they are sparse, smoothing would cut the bends, so the mean
 * lengthening by noise is taken off instead, and the way between two fixes is an arc, or a corner. Limits without
 * a source are judgement, by the table in DEVELOPERS.md.
 */
import { geodesicDistance } from './geodesic.ts';
import { NOISY_SHARE, type Noise } from './noise.ts';
import type { Span } from './span.ts';

/** No smoothing over more of the way than this, metres: a bend can hide in it. */
const SMOOTHED_M = 26;
/** A turn sharper than this share of a step, and than this many deviations of a fix, is a corner. */
const CORNER_SHARE = 0.5;
const CORNER_SIGMAS = 9;
/** The way beside a corner is straight up to this share of a step, and to this many deviations of a second difference. */
const FLANK_SHARE = 0.15;
const FLANK_SIGMAS = 2;

interface Smoother {
  readonly reach: number;
  readonly weights: readonly number[];
  /** What a cubic leaves of the fixes: their products with orthogonal polynomials, and the sums of squares of these. */
  readonly rests: readonly (readonly [polynomial: readonly number[], squares: number])[];
  /** The squares of the rests in both axes, in variances of a fix, that noise passes once in 1,000 times (χ²). */
  readonly most: number;
}

/** Cubics through seven and five even points (Savitzky & Golay, Anal Chem 1964;36:1627-39, table I). */
const SEVEN: Smoother = {
  reach: 3,
  weights: [-2, 3, 6, 7, 6, 3, -2].map((weight) => weight / 21),
  rests: [
    [[3, -7, 1, 6, 1, -7, 3], 154],
    [[-1, 4, -5, 0, 5, -4, 1], 84],
    [[1, -6, 15, -20, 15, -6, 1], 924],
  ],
  most: 22.46,
};
const FIVE: Smoother = {
  reach: 2,
  weights: [-3, 12, 17, 12, -3].map((weight) => weight / 35),
  rests: [[[1, -4, 6, -4, 1], 70]],
  most: 13.82,
};

/** What became of a fix, as its place in the table of variances. */
const STANDS = 0;
const RAW = 1;
const KINDS: readonly (readonly number[])[] = [[0], [1], FIVE.weights, SEVEN.weights];

/**
 * Variance of the difference of two neighbours in one axis, in variances of a fix (by arithmetic from their weights):
 * of independent errors, and of a random walk with the same second differences.
 */
const stepVariance = (from: readonly number[], to: readonly number[]) => {
  const reach = 4;
  const weights = new Float64Array(2 * reach + 2);
  for (const [i, weight] of from.entries()) weights[reach + i - (from.length >> 1)]! -= weight;
  for (const [i, weight] of to.entries()) weights[reach + 1 + i - (to.length >> 1)]! += weight;
  let [white, walk, sum] = [0, 0, 0];
  for (const weight of weights) {
    white += weight * weight;
    sum += weight;
    walk += sum * sum;
  }
  // Standing beside moving: the one error that is left.
  return from === KINDS[STANDS] || to === KINDS[STANDS]
    ? { white, walk: white }
    : { white, walk: 3 * walk };
};
const VARIANCES = KINDS.map((from) => KINDS.map((to) => stepVariance(from, to)));

/** How well the cubic fits: the squares of the rests in both axes. */
const misfit = ({ x, y }: Span, at: number, { reach, rests }: Smoother): number => {
  let squares = 0;
  for (const [polynomial, size] of rests)
    for (const axis of [x, y]) {
      let product = 0;
      for (let i = 0; i < polynomial.length; i++)
        product += (polynomial[i] as number) * (axis[at - reach + i] as number);
      squares += (product * product) / size;
    }
  return squares;
};

/** Smooths the places of the span where a cubic fits as noise allows; what became of each fix. */
const smooth = (span: Span, { sigmaM, stepM }: Noise): Uint8Array => {
  const kinds = span.standing.map((stands) => (stands ? STANDS : RAW));
  if (sigmaM <= NOISY_SHARE * stepM) return kinds;
  const smoothers = [SEVEN, FIVE].filter(({ reach }) => 2 * reach * stepM <= SMOOTHED_M);
  const [lat, lon] = [span.lat.slice(), span.lon.slice()];
  for (let at = 0; at < span.length; at++) {
    const fits = smoothers.find(
      (one) => span.isEven(at, one.reach) && misfit(span, at, one) <= one.most * sigmaM * sigmaM,
    );
    if (!fits) continue;
    kinds[at] = KINDS.indexOf(fits.weights);
    const here = lon[at] as number;
    let [north, east] = [0, here];
    for (const [i, weight] of fits.weights.entries()) {
      const other = at - fits.reach + i;
      north += weight * (lat[other] as number);
      east += weight * ((((lon[other] as number) - here + 540) % 360) - 180);
    }
    span.lat[at] = north;
    span.lon[at] = east >= 180 ? east - 360 : east < -180 ? east + 360 : east;
  }
  return kinds;
};

/** The part of the second difference that lies across the way, metres; NaN where the fixes are not even. */
const acrossOf = (span: Span): Float64Array => {
  const { x, y, length } = span;
  const across = new Float64Array(length).fill(NaN);
  for (let at = 1; at < length - 1; at++) {
    if (!span.isEven(at, 1)) continue;
    const [fromX, fromY] = [
      (x[at] as number) - (x[at - 1] as number),
      (y[at] as number) - (y[at - 1] as number),
    ];
    const [toX, toY] = [
      (x[at + 1] as number) - (x[at] as number),
      (y[at + 1] as number) - (y[at] as number),
    ];
    const wide = Math.hypot(fromX + toX, fromY + toY);
    if (wide > 0) across[at] = (2 * (fromX * toY - fromY * toX)) / wide;
  }
  return across;
};

/**
 * By how much an arc is longer than its chord, times the chord, square metres: c²/24 (first term), c the second
 * difference across the way, the mean square of those at both ends without that of noise.
 */
const arcOf = (from: number, to: number, noise: number): number => {
  if (Number.isNaN(from)) return Number.isNaN(to) ? 0 : (to * to - noise) / 24;
  return (Number.isNaN(to) ? from * from - noise : (from * from + to * to) / 2 - noise) / 24;
};

const angle = (ax: number, ay: number, bx: number, by: number): number =>
  Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));

/**
 * Length of a step in which the runner turned a corner: no longer than the straight lines before and after until
 * they meet, nor than the steps beside it, because a runner keeps the pace. Null where there is no such corner.
 */
const cornerOf = (
  span: Span,
  at: number,
  { sigmaM }: Noise,
  lengths: { readonly flankM: number; readonly chordM: number },
): number | null => {
  const { x, y } = span;
  if (!span.isEven(at, 2) || !span.isEven(at + 1, 2)) return null;
  const east = (from: number, to: number) => (x[at + to] as number) - (x[at + from] as number);
  const north = (from: number, to: number) => (y[at + to] as number) - (y[at + from] as number);
  const [beforeX, beforeY, afterX, afterY] = [east(-2, 0), north(-2, 0), east(1, 3), north(1, 3)];
  const { flankM, chordM } = lengths;
  const turn = Math.hypot(beforeX - afterX, beforeY - afterY) / 2;
  if (turn <= Math.max(CORNER_SHARE * flankM, CORNER_SIGMAS * sigmaM)) return null;
  const most = Math.max(FLANK_SHARE * flankM, FLANK_SIGMAS * Math.sqrt(6) * sigmaM);
  const bend = (from: number) =>
    Math.hypot(
      east(from, from + 1) - east(from + 1, from + 2),
      north(from, from + 1) - north(from + 1, from + 2),
    );
  if (bend(-2) > most || bend(1) > most) return null;
  const [alongX, alongY] = [east(0, 1), north(0, 1)];
  const [enter, leave] = [
    angle(beforeX, beforeY, alongX, alongY),
    angle(alongX, alongY, afterX, afterY),
  ];
  // Lines that turn back hardly meet.
  const meet = enter + leave;
  const byLines =
    meet < 2.6 ? (chordM * (Math.sin(enter) + Math.sin(leave))) / Math.sin(meet) : Infinity;
  return Math.min(byLines, flankM);
};

export interface Way {
  /** Length of the step from each fix to the next, metres. */
  readonly stepsM: Float64Array;
  /** Noise was taken out: fixes were smoothed, or it had made the way longer by half a percent. */
  readonly isSmoothed: boolean;
}

/** Geodesics between the fixes where they are now. */
const chordsOf = ({ length, lat, lon }: Span): Float64Array => {
  const chords = new Float64Array(Math.max(0, length - 1));
  for (let at = 0; at < chords.length; at++)
    chords[at] = geodesicDistance(
      { lat: lat[at] as number, lon: lon[at] as number },
      { lat: lat[at + 1] as number, lon: lon[at + 1] as number },
    );
  return chords;
};

/**
 * The chords without what noise adds: an error across the way always lengthens a step, by its variance over twice
 * the step (first term of the mean of a Rice distribution).
 */
const quietSteps = (chords: Float64Array, kinds: Uint8Array, noise: Noise): Float64Array =>
  chords.map((chord, at) => {
    if (chord === 0) return 0;
    const { white, walk } = VARIANCES[kinds[at] as number]?.[kinds[at + 1] as number] as {
      white: number;
      walk: number;
    };
    const variance = noise.sigmaM * noise.sigmaM * (white + noise.lasting * (walk - white));
    return chord - Math.min(chord / 2, variance / 2 / chord);
  });

const sum = (values: Float64Array): number => values.reduce((all, one) => all + one, 0);

/** Moves the fixes of the span where they are smoothed, and measures its steps. */
export const measureWay = (span: Span, noise: Noise): Way => {
  const kinds = smooth(span, noise);
  const chords = chordsOf(span);
  const quiet = quietSteps(chords, kinds, noise);
  const isSmoothed =
    kinds.some((kind) => kind > RAW) || sum(chords) - sum(quiet) > 0.005 * sum(chords);
  // What is noise and what a bend must be known; and without times fixes may have been left out, as on a planned route.
  if (!noise.isKnown || !span.isTimed) return { stepsM: quiet, isSmoothed };

  const isRaw = (at: number) =>
    (chords[at] as number) > 0 && kinds[at] === RAW && kinds[at + 1] === RAW;
  const across = acrossOf(span);
  const stepsM = quiet.slice();
  const corners = new Map<number, number>();
  for (let at = 2; at + 2 < chords.length; at++) {
    if (!isRaw(at)) continue;
    const [a, b, c, d] = [at - 2, at - 1, at + 1, at + 2].map((i) => quiet[i] as number);
    const flankM = ((a as number) + (b as number) + (c as number) + (d as number)) / 4;
    const cornerM = cornerOf(span, at, noise, { flankM, chordM: chords[at] as number });
    if (cornerM !== null) corners.set(at, cornerM);
  }
  // The way turns in the corner, so the steps beside it are straight there.
  const noiseAcross = 6 * noise.sigmaM * noise.sigmaM;
  const bent = (at: number): number => {
    const chord = chords[at] as number;
    const arc = arcOf(
      corners.has(at - 1) ? NaN : (across[at] as number),
      corners.has(at + 1) ? NaN : (across[at + 1] as number),
      noiseAcross,
    );
    return Math.max(chord / 2, Math.min(1.6 * chord, (quiet[at] as number) + arc / chord));
  };
  for (let at = 0; at < chords.length; at++)
    if (isRaw(at)) stepsM[at] = Math.max(bent(at), corners.get(at) ?? 0);
  return { stepsM, isSmoothed };
};

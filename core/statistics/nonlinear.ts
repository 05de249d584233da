/**
 * Which curve of a given shape fits best? Least squares where the parameters do not enter linearly.
 *
 * Source: Levenberg-Marquardt with a trust region scaled by the columns of the Jacobian, Moré JJ, in
 * Numerical Analysis, Lecture Notes in Mathematics 630 (1978), 105-116, the steps solved by orthogonal
 * factors and never by the normal equations; the test of convergence is the relative offset of Bates DM &
 * Watts DG, Technometrics 1981;23:179-183; standard errors from the tangent plane at the optimum, as in
 * Bates & Watts, Nonlinear Regression Analysis and Its Applications (1988).
 */
import { backward, forward, inverseCross, norm, triangulate } from './dense.ts';

/** The curve at one row, with these parameters. */
export type Curve = (parameters: readonly number[], row: number) => number;

export interface NonlinearFit {
  readonly parameters: readonly number[];
  /** Null where the data do not settle every parameter, or where no degree of freedom is left. */
  readonly standardErrors: readonly number[] | null;
  /** Of the parameters, p by p; null as the standard errors. */
  readonly covariance: readonly (readonly number[])[] | null;
  readonly residualSumOfSquares: number;
  /** Null without a degree of freedom. */
  readonly residualSd: number | null;
  readonly degreesOfFreedom: number;
  /** Jacobians taken, over all attempts. */
  readonly iterations: number;
  /** False: the best that was found, not known to be a minimum. */
  readonly converged: boolean;
}

const EPSILON = Number.EPSILON;
const MOST_ITERATIONS = 500;
/** A residual this nearly at right angles to the tangent plane leaves nothing to gain. */
const OFFSET = 1e-9;
/** How far the first step of each attempt may go, in lengths of the scaled start (Moré's factor). */
const FIRST_REACH = [100, 1, 0.1, 0.01];

const scaledNorm = (x: ArrayLike<number>, scale: Float64Array): number =>
  norm(scale.map((s, j) => s * (x[j] as number)));

/** A column this short beside its own length before the others were taken out adds nothing to them. */
const isSingular = (r: Float64Array, scale: Float64Array, p: number): boolean =>
  scale.some((s, j) => !(Math.abs(r[j * p + j] as number) > 1e-14 * s));

interface Step {
  readonly step: Float64Array;
  /** The factor of the damped problem. */
  readonly r: Float64Array;
}

const dampedStep = (
  r: Float64Array,
  target: Float64Array,
  scale: Float64Array,
  damping: number,
): Step => {
  const p = scale.length;
  const stacked = new Float64Array(2 * p * p);
  stacked.set(r.subarray(0, p * p));
  for (let j = 0; j < p; j++) stacked[(p + j) * p + j] = Math.sqrt(damping) * (scale[j] as number);
  const right = new Float64Array(2 * p);
  right.set(target.subarray(0, p));
  triangulate(stacked, right, 2 * p, p);
  return { step: backward(stacked, right, p), r: stacked };
};

/** The step that stays within reach: Gauss-Newton's where that does, else the damped one on the rim. */
const stepWithin = (
  r: Float64Array,
  target: Float64Array,
  scale: Float64Array,
  singular: boolean,
  reach: number,
): { readonly step: Float64Array; readonly damping: number } => {
  const p = scale.length;
  let low = 0;
  if (!singular) {
    const step = backward(r, target, p);
    const length = scaledNorm(step, scale);
    if (length <= 1.1 * reach) return { step, damping: 0 };
    const w = forward(
      r,
      step.map((s, j) => ((scale[j] as number) ** 2 * s) / length),
    );
    low = (length - reach) / (reach * norm(w) ** 2);
  }
  const gradient = new Float64Array(p);
  for (let j = 0; j < p; j++) {
    for (let i = 0; i <= j; i++)
      gradient[j] =
        (gradient[j] as number) +
        ((r[i * p + j] as number) * (target[i] as number)) / (scale[j] as number);
  }
  let high = norm(gradient) / reach;
  let damping = Math.max(low, 1e-3 * high);
  for (let round = 0; ; round++) {
    const { step, r: factor } = dampedStep(r, target, scale, damping);
    const length = scaledNorm(step, scale);
    const excess = length - reach;
    if (Math.abs(excess) <= 0.1 * reach || round >= 30 || !(length > 0)) return { step, damping };
    if (excess > 0) low = Math.max(low, damping);
    else high = Math.min(high, damping);
    const w = forward(
      factor,
      step.map((s, j) => ((scale[j] as number) ** 2 * s) / length),
    );
    const next = damping + excess / reach / norm(w) ** 2;
    damping = next > low && next < high ? next : Math.max(1e-3 * high, Math.sqrt(low * high));
  }
};

/**
 * Differences of fourth order. The step is shorter than a smooth curve would allow, for one that bends
 * within a hundredth of a parameter's value; the rounding costs no more than 1e-11 of the slope.
 */
const slopesByDifferences = (curve: Curve, at: readonly number[], row: number): number[] =>
  at.map((value, j) => {
    const h = EPSILON ** 0.25 * (Math.abs(value) || 1);
    const moved = (by: number): number => curve(at.with(j, value + by), row);
    return (8 * (moved(h) - moved(-h)) - (moved(2 * h) - moved(-2 * h))) / (12 * h);
  });

interface Attempt {
  readonly parameters: readonly number[];
  readonly rss: number;
  /** The factor of the Jacobian at the parameters. */
  readonly r: Float64Array;
  readonly singular: boolean;
  readonly iterations: number;
  readonly converged: boolean;
}

const attempt = (
  y: readonly number[],
  curve: Curve,
  slopes: (at: readonly number[], row: number) => readonly number[],
  start: readonly number[],
  firstReach: number,
): Attempt => {
  const [n, p] = [y.length, start.length];
  const residualsAt = (at: readonly number[]): Float64Array =>
    Float64Array.from(y, (value, row) => value - curve(at, row));

  let parameters = start;
  let residuals = residualsAt(parameters);
  let rss = norm(residuals) ** 2;
  const scale = new Float64Array(p);
  let reach = 0;
  let unseen = Infinity;
  for (let iterations = 1; ; iterations++) {
    const r = new Float64Array(n * p);
    for (let row = 0; row < n; row++) r.set(slopes(parameters, row), row * p);
    const lengths = Float64Array.from({ length: p }, (_, j) => {
      let sum = 0;
      for (let row = 0; row < n; row++) sum += (r[row * p + j] as number) ** 2;
      return Math.sqrt(sum);
    });
    const target = residuals.slice();
    triangulate(r, target, n, p);
    const singular = isSingular(r, lengths, p);
    for (let j = 0; j < p; j++) scale[j] = Math.max(scale[j] as number, lengths[j] as number) || 1;
    if (iterations === 1) reach = firstReach * (scaledNorm(parameters, scale) || 1);
    const ended = (converged: boolean): Attempt => ({
      parameters,
      rss,
      r,
      singular,
      iterations,
      converged,
    });

    if (rss === 0) return ended(true);
    const rounding = EPSILON * (rss + Math.sqrt(rss) * norm(y));
    const inPlane = norm(target.subarray(0, p));
    const outside = n > p ? norm(target.subarray(p)) : 0;
    if (inPlane <= OFFSET * outside) return ended(!singular);
    // Below the rounding of the sum of squares only the slope tells whether a step was a gain.
    if (inPlane > 0.9 * unseen) return ended(!singular);
    unseen = Infinity;
    if (iterations >= MOST_ITERATIONS || !Number.isFinite(inPlane)) return ended(false);

    for (;;) {
      const { step, damping } = stepWithin(r, target, scale, singular, reach);
      const length = scaledNorm(step, scale);
      if (!(length > 0)) return ended(false);
      // Steps below the rounding of the parameters: nothing better can be written down.
      const still = length <= EPSILON * scaledNorm(parameters, scale);
      const next = parameters.map((value, j) => value + (step[j] as number));
      const nextResiduals = residualsAt(next);
      const nextRss = norm(nextResiduals) ** 2;
      const image = new Float64Array(p);
      for (let i = 0; i < p; i++)
        for (let j = i; j < p; j++)
          image[i] = (image[i] as number) + (r[i * p + j] as number) * (step[j] as number);
      const promised = (norm(image) ** 2 + 2 * damping * length ** 2) / rss;
      const ratio = nextRss < Infinity ? (1 - nextRss / rss) / promised : -Infinity;
      if (promised <= rounding / rss && !singular && nextRss <= rss + 4 * rounding) {
        unseen = inPlane;
        parameters = next;
        residuals = nextResiduals;
        rss = nextRss;
        break;
      }
      if (still) return ended(!singular && damping === 0);
      if (ratio > 0.75 || (damping === 0 && ratio >= 0.5)) reach = Math.max(reach, 2 * length);
      else if (!(ratio > 0.25)) reach = (ratio > -9 ? 0.5 : 0.1) * Math.min(reach, 10 * length);
      if (ratio > 1e-4) {
        parameters = next;
        residuals = nextResiduals;
        rss = nextRss;
        break;
      }
    }
  }
};

/**
 * Least squares of a curve whose parameters do not enter linearly.
 *
 * @param y what was measured, one per row
 * @param curve the curve at a row; where it is not a number, the search turns back
 * @param start one value for each parameter
 * @param slopes the curve's derivative by each parameter; by differences where left out
 * @throws RangeError for fewer rows than parameters, or a start where the curve is not a number
 */
export const nonlinearLeastSquares = (
  y: readonly number[],
  curve: Curve,
  start: readonly number[],
  slopes: (parameters: readonly number[], row: number) => readonly number[] = (at, row) =>
    slopesByDifferences(curve, at, row),
): NonlinearFit => {
  const [n, p] = [y.length, start.length];
  if (n < p) throw new RangeError(`${String(n)} rows cannot settle ${String(p)} parameters`);
  if (!y.every((value, row) => Number.isFinite(value - curve(start, row))))
    throw new RangeError('The curve is not a number at the start');

  let best: Attempt | null = null;
  let iterations = 0;
  for (const reach of FIRST_REACH) {
    const found = attempt(y, curve, slopes, start, reach);
    iterations += found.iterations;
    if (best === null || found.rss < best.rss) best = found;
    if (found.converged) break;
  }
  const { parameters, rss, r, singular, converged } = best as Attempt;
  const df = n - p;
  const settled = !singular && df > 0;
  const covariance = settled ? inverseCross(r, p, rss / df) : null;
  return {
    parameters,
    standardErrors: covariance?.map((row, j) => Math.sqrt(row[j] as number)) ?? null,
    covariance,
    residualSumOfSquares: rss,
    residualSd: df > 0 ? Math.sqrt(rss / df) : null,
    degreesOfFreedom: df,
    iterations,
    converged,
  };
};

/**
 * What holds over groups, and how much do the groups differ? Linear mixed models with one grouping factor:
 * a random intercept, or an intercept and slopes, with or without correlations.
 *
 * Source: the deviance profiled over the relative covariance factor, Bates D, Mächler M, Bolker B & Walker
 * S, J Stat Softw 2015;67(1):1-48; its derivative by that of V⁻¹, Harville DA, J Am Stat Assoc
 * 1977;72:320-338; minimised by BFGS, Nocedal J & Wright SJ, Numerical Optimization, 2nd ed. (2006), 6.1.
 */
import { backward, forwardInPlace, inverseCross, norm, triangulate } from './dense.ts';
import { evaluate, reduceGroup, type Evaluation } from './mixed-criterion.ts';
import { prepare, type MixedRow, type Prepared } from './mixed-rows.ts';

export interface GroupEffect {
  readonly group: string;
  /** The group's best linear unbiased predictions, one for each random effect. */
  readonly effects: readonly number[];
  /** Their standard deviations given the data and the model's parameters. */
  readonly conditionalSd: readonly number[];
}

export interface MixedModel {
  readonly fixed: readonly number[];
  readonly standardErrors: readonly number[];
  /** Of the fixed effects. */
  readonly covariance: readonly (readonly number[])[];
  /** Standard deviations of the random effects between groups. */
  readonly sd: readonly number[];
  /** Correlations of the random effects; null with an effect that does not vary. */
  readonly correlation: readonly (readonly (number | null)[])[];
  /** Standard deviation within groups. */
  readonly sigma: number;
  /** The restricted one for REML. */
  readonly logLik: number;
  /** Minus twice the log-likelihood: the deviance, or the REML criterion. */
  readonly criterion: number;
  /** The groups in the order of their first rows. */
  readonly groups: readonly GroupEffect[];
  /** True: a variance is estimated as zero, or a correlation as one. */
  readonly singular: boolean;
  readonly converged: boolean;
}

export interface MixedOptions {
  readonly method: 'ML' | 'REML';
  /** False: the random effects of a group are independent of each other. */
  readonly correlated: boolean;
}

const MOST_ITERATIONS = 200;
/** Slopes of the criterion by the logarithm of the factor, per group: where the search ends ... */
const FLAT = 1e-8;
/** ... and what still counts as found where rounding ends it before, good for the sixth digit. */
const FLAT_ENOUGH = 1e-6;
/** A column of the factor below this is tried at zero, which is where the search only tends to. */
const NEAR_ZERO = 1e-3;

interface Found {
  readonly lambda: Float64Array;
  readonly at: Evaluation;
  readonly converged: boolean;
}

/**
 * BFGS from the identity. The criterion does not change with the sign of a column of the factor, so a
 * variance of zero is an ordinary minimum and needs no bound.
 */
const minimise = (data: Prepared, { method, correlated }: MixedOptions): Found => {
  const { q } = data;
  const cells: number[] = [];
  for (let i = 0; i < q; i++) for (let j = correlated ? 0 : i; j <= i; j++) cells.push(i * q + j);
  const spread = (theta: readonly number[]): Float64Array => {
    const lambda = new Float64Array(q * q);
    cells.forEach((cell, k) => (lambda[cell] = theta[k] as number));
    return lambda;
  };
  const at = (theta: readonly number[]) => evaluate(data, spread(theta), method === 'REML');
  const slopes = ({ gradient }: Evaluation) => cells.map((cell) => gradient[cell] as number);
  const dot = (a: readonly number[], b: readonly number[]) =>
    a.reduce((sum, v, i) => sum + v * (b[i] as number), 0);

  let theta: readonly number[] = cells.map((cell) => (cell % (q + 1) === 0 ? 1 : 0));
  const first = at(theta);
  if (first === null) throw new RangeError('Nothing varies within groups');
  let here = first;
  let slope = slopes(here);
  // A variance's curvature grows with the number of groups, so that many is the first guess of it.
  const unit = () =>
    cells.map((_, i) => cells.map((__, j) => (i === j ? 0.5 / data.groups.length : 0)));
  let inverse = unit();
  const flat = (most: number): boolean =>
    slope.every(
      (s, i) =>
        Math.abs(s) * Math.max(1, Math.abs(theta[i] as number)) <= most * data.groups.length,
    );
  for (let round = 0; round < MOST_ITERATIONS && !flat(FLAT); round++) {
    let direction = inverse.map((row) => -dot(row, slope));
    if (!(dot(direction, slope) < 0)) {
      inverse = unit();
      direction = slope.map((s) => (-0.5 * s) / data.groups.length);
    }
    const fall = dot(direction, slope);
    // Groups may differ a thousand times as much as rows do, so the stride may grow with the factor.
    const furthest = 2 * Math.max(1, ...theta.map(Math.abs));
    let stride = Math.min(1, furthest / Math.max(...direction.map(Math.abs)));
    let next: readonly number[] = theta;
    let there: Evaluation | null = null;
    for (let halving = 0; halving < 40; halving++, stride /= 2) {
      next = theta.map((t, i) => t + stride * (direction[i] as number));
      there = at(next);
      if (
        there !== null &&
        there.criterion <= here.criterion + 1e-4 * stride * fall + 1e-14 * Math.abs(here.criterion)
      )
        break;
      there = null;
    }
    if (there === null) break;
    const moved = next.map((t, i) => t - (theta[i] as number));
    const slopeThere = slopes(there);
    const turned = slopeThere.map((s, i) => s - (slope[i] as number));
    const curvature = dot(moved, turned);
    if (curvature > 0) {
      const mapped = inverse.map((row) => dot(row, turned));
      const weight = (1 + dot(turned, mapped) / curvature) / curvature;
      inverse = inverse.map((row, i) =>
        row.map(
          (v, j) =>
            v +
            weight * (moved[i] as number) * (moved[j] as number) -
            ((mapped[i] as number) * (moved[j] as number) +
              (moved[i] as number) * (mapped[j] as number)) /
              curvature,
        ),
      );
    }
    [theta, here, slope] = [next, there, slopeThere];
  }

  const converged = flat(FLAT_ENOUGH);
  let lambda = spread(theta);
  for (let j = 0; j < q; j++) {
    const without = lambda.map((v, cell) => (cell % q === j ? 0 : v));
    if (lambda.every((v, cell) => cell % q !== j || Math.abs(v) < NEAR_ZERO)) {
      const tried = evaluate(data, without, method === 'REML');
      if (tried !== null && tried.criterion <= here.criterion + 1e-9)
        [lambda, here] = [without, tried];
    }
  }
  return { lambda, at: here, converged };
};

/** a b, or a bᵀ. */
const product = (
  a: Float64Array,
  b: Float64Array,
  q: number,
  transposed: boolean,
): Float64Array => {
  const out = new Float64Array(q * q);
  for (let i = 0; i < q; i++)
    for (let j = 0; j < q; j++)
      for (let k = 0; k < q; k++)
        out[i * q + j] =
          (out[i * q + j] as number) +
          (a[i * q + k] as number) * ((transposed ? b[j * q + k] : b[k * q + j]) as number);
  return out;
};

/**
 * A linear mixed model with one grouping factor.
 *
 * @param rows one per measurement; the effects in the same order in every row
 * @throws RangeError where the rows cannot carry the model: covariates that are sums of each other, one
 *   group, nothing left to explain
 */
export const linearMixedModel = (
  rows: readonly MixedRow[],
  options: MixedOptions = { method: 'REML', correlated: true },
): MixedModel => {
  const data = prepare(rows, options.correlated);
  const { p, q, fixedFactor, randomFactor, plain } = data;
  const { lambda, at, converged } = minimise(data, options);
  const { variance, beta, r } = at;

  // Back from the bases: the fixed effects by R⁻¹, the random ones by T⁻¹.
  const fixed = backward(fixedFactor, beta, p).map((v, j) => v + (plain[j] as number));
  const joint = product(r, fixedFactor, p, false);
  const covariance = inverseCross(joint, p, variance);
  const back = (column: ArrayLike<number>): Float64Array => backward(randomFactor, column, q);
  /** T⁻¹ a, column by column. */
  const backAll = (a: Float64Array): Float64Array => {
    const out = new Float64Array(q * q);
    for (let j = 0; j < q; j++)
      back(Float64Array.from({ length: q }, (_, i) => a[i * q + j] as number)).forEach(
        (v, i) => (out[i * q + j] = v),
      );
    return out;
  };
  const factor = backAll(lambda);
  const between = product(factor, factor, q, true);
  const sd = Array.from({ length: q }, (_, i) =>
    Math.sqrt(variance * (between[i * q + i] as number)),
  );

  const w = q + p + 1;
  const b = new Float64Array(q * w);
  const [l, m] = [new Float64Array(q * q), new Float64Array(q * q)];
  const groups = data.groups.map((group, g): GroupEffect => {
    reduceGroup(data.blocks, g * q * w, q, w, lambda, b, l, m);
    // ΛᵀZᵀV⁻¹(y - Xβ), which the factor turns into the effects.
    const u = new Float64Array(q);
    for (let k = 0; k < q; k++) {
      let half = b[k * w + q + p] as number;
      for (let j = 0; j < p; j++) half -= (beta[j] as number) * (b[k * w + q + j] as number);
      for (let i = 0; i < q; i++)
        for (let j = 0; j < q; j++)
          u[j] = (u[j] as number) + (lambda[i * q + j] as number) * (b[k * w + i] as number) * half;
    }
    // The effects' precision given the rows is I + MᵀM in units of the factor: here its triangle.
    const root = new Float64Array(2 * q * q);
    for (let j = 0; j < q; j++) root[j * q + j] = 1;
    root.set(m, q * q);
    triangulate(root, new Float64Array(2 * q), 2 * q, q);
    const effects: number[] = [];
    const conditionalSd: number[] = [];
    for (let i = 0; i < q; i++) {
      const row = factor.slice(i * q, (i + 1) * q);
      let effect = 0;
      for (let j = 0; j < q; j++) effect += (row[j] as number) * (u[j] as number);
      forwardInPlace(root, row, q);
      effects.push(effect);
      conditionalSd.push(Math.sqrt(variance) * norm(row));
    }
    return { group, effects, conditionalSd };
  });

  return {
    fixed: [...fixed],
    standardErrors: covariance.map((row, j) => Math.sqrt(row[j] as number)),
    covariance,
    sd,
    correlation: sd.map((one, i) =>
      sd.map((other, j) =>
        one > 0 && other > 0 ? (variance * (between[i * q + j] as number)) / (one * other) : null,
      ),
    ),
    sigma: Math.sqrt(variance),
    logLik: -at.criterion / 2,
    criterion: at.criterion,
    groups,
    singular: Array.from({ length: q }, (_, i) => lambda[i * q + i] as number).some(
      (v) => Math.abs(v) < NEAR_ZERO,
    ),
    converged,
  };
};

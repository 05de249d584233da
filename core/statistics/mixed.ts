/**
 * What holds over groups, and how much do the groups differ? Linear mixed models with one grouping factor:
 * a random intercept, or an intercept and slopes, with or without correlations.
 *
 * Source: the deviance profiled over the relative covariance factor, Bates D, Mächler M, Bolker B & Walker
 * S, J Stat Softw 2015;67(1):1-48; its derivative by that of V⁻¹, Harville DA, J Am Stat Assoc
 * 1977;72:320-338; minimised by BFGS, Nocedal J & Wright SJ, Numerical Optimization, 2nd ed. (2006), 6.1.
 */
import {
  backward,
  cholesky,
  forward,
  forwardInPlace,
  inverseCross,
  norm,
  triangulate,
} from './dense.ts';

export interface MixedRow {
  readonly y: number;
  readonly group: string;
  /** The row's fixed effects: 1 for an intercept, then the covariates. */
  readonly fixed: readonly number[];
  /** The row's random effects: 1 for an intercept, then what its slopes go with. */
  readonly random: readonly number[];
}

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
/** Of the criterion by the factor, per row: far below what moves the fifth digit of an estimate. */
const FLAT = 1e-9;
/** A column of the factor below this is tried at zero, which is where the search only tends to. */
const NEAR_ZERO = 1e-3;

/** The rows in bases where the covariates are orthonormal, and sums of products for each group. */
interface Prepared {
  readonly n: number;
  readonly p: number;
  readonly q: number;
  readonly groups: readonly string[];
  /** For each group, the products of [random, fixed, y] with themselves. */
  readonly products: Float64Array;
  /** X = (basis) R. */
  readonly fixedFactor: Float64Array;
  /** Z = (basis) T. */
  readonly randomFactor: Float64Array;
  /** Least squares without random effects; y is kept as what they leave. */
  readonly plain: Float64Array;
}

const factorOf = (columns: Float64Array, y: Float64Array, n: number, p: number): Float64Array => {
  const lengths = Array.from({ length: p }, (_, j) => {
    let sum = 0;
    for (let i = 0; i < n; i++) sum += (columns[i * p + j] as number) ** 2;
    return Math.sqrt(sum);
  });
  triangulate(columns, y, n, p);
  if (lengths.some((length, j) => !(Math.abs(columns[j * p + j] as number) > 1e-10 * length)))
    throw new RangeError('A covariate is a sum of the others');
  return columns.slice(0, p * p);
};

const addProducts = (products: Float64Array, at: number, joint: Float64Array): void => {
  const w = joint.length;
  for (let i = 0; i < w; i++)
    for (let j = 0; j < w; j++)
      products[at + i * w + j] =
        (products[at + i * w + j] as number) + (joint[i] as number) * (joint[j] as number);
};

const prepare = (rows: readonly MixedRow[], correlated: boolean): Prepared => {
  const n = rows.length;
  const [p, q] = [rows[0]?.fixed.length ?? 0, rows[0]?.random.length ?? 0];
  if (p === 0 || q === 0 || n <= p) throw new RangeError('Too few rows or no effects');
  if (rows.some(({ fixed, random }) => fixed.length !== p || random.length !== q))
    throw new RangeError('Rows differ in their number of effects');
  const index = new Map<string, number>();
  for (const { group } of rows) if (!index.has(group)) index.set(group, index.size);
  if (index.size < 2) throw new RangeError('One group says nothing of how groups differ');

  const target = Float64Array.from(rows, ({ y }) => y);
  const x = new Float64Array(n * p);
  const z = new Float64Array(n * q);
  rows.forEach(({ fixed, random }, row) => {
    for (let j = 0; j < p; j++) x[row * p + j] = fixed[j] as number;
    for (let j = 0; j < q; j++) z[row * q + j] = random[j] as number;
  });
  const fixedFactor = factorOf(x, target, n, p);
  const plain = backward(fixedFactor, target, p);
  if (!(norm(target.subarray(p)) > 1e-12 * norm(target)))
    throw new RangeError('Nothing is left to explain, or a value is not a number');
  const randomFactor = factorOf(z.slice(), new Float64Array(n), n, q).map((v) => v / Math.sqrt(n));
  // Without correlations only the scale of each effect is free to choose.
  if (!correlated)
    for (let j = 0; j < q; j++)
      for (let i = 0; i < q; i++) {
        let length = 0;
        for (let row = 0; row < n; row++) length += (z[row * q + j] as number) ** 2;
        randomFactor[i * q + j] = i === j ? Math.sqrt(length / n) : 0;
      }

  const w = q + p + 1;
  const products = new Float64Array(index.size * w * w);
  const joint = new Float64Array(w);
  for (const { y, group, fixed, random } of rows) {
    let left = y;
    for (let j = 0; j < q; j++) joint[j] = random[j] as number;
    for (let j = 0; j < p; j++) {
      joint[q + j] = fixed[j] as number;
      left -= (fixed[j] as number) * (plain[j] as number);
    }
    joint[w - 1] = left;
    forwardInPlace(randomFactor, joint, q);
    forwardInPlace(fixedFactor, joint, p, q);
    addProducts(products, (index.get(group) as number) * w * w, joint);
  }
  return { n, p, q, groups: [...index.keys()], products, fixedFactor, randomFactor, plain };
};

/** B = L⁻¹ΛᵀZᵀ[Z X y] of one group, with LLᵀ = ΛᵀZᵀZΛ + I; [Z X y]ᵀV⁻¹[Z X y] is the products less BᵀB. */
const reduceGroup = (
  products: Float64Array,
  at: number,
  q: number,
  w: number,
  lambda: Float64Array,
  b: Float64Array,
  l: Float64Array,
): number => {
  for (let i = 0; i < q; i++)
    for (let j = 0; j < w; j++) {
      let sum = 0;
      for (let k = i; k < q; k++)
        sum += (lambda[k * q + i] as number) * (products[at + k * w + j] as number);
      b[i * w + j] = sum;
    }
  let logDeterminant = 0;
  for (let i = 0; i < q; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = i === j ? 1 : 0;
      for (let k = j; k < q; k++) sum += (b[i * w + k] as number) * (lambda[k * q + j] as number);
      for (let k = 0; k < j; k++) sum -= (l[i * q + k] as number) * (l[j * q + k] as number);
      l[i * q + j] = i === j ? Math.sqrt(sum) : sum / (l[j * q + j] as number);
    }
    logDeterminant += 2 * Math.log(l[i * q + i] as number);
  }
  for (let i = 0; i < q; i++)
    for (let j = 0; j < w; j++) {
      let sum = b[i * w + j] as number;
      for (let k = 0; k < i; k++) sum -= (l[i * q + k] as number) * (b[k * w + j] as number);
      b[i * w + j] = sum / (l[i * q + i] as number);
    }
  return logDeterminant;
};

/** Sums over the groups, of products with V⁻¹ between. */
interface Sums {
  /** [X y]ᵀ V⁻¹ [X y]. */
  readonly total: Float64Array;
  /** Zᵀ V⁻¹ Z. */
  readonly zz: Float64Array;
  /** For each pair of random effects, the products of their rows of Zᵀ V⁻¹ [X y]. */
  readonly pairs: Float64Array;
}

/** On its own, and on nothing but numbers: this is what the time goes into. */
const addGroup = (
  { total, zz, pairs }: Sums,
  products: Float64Array,
  at: number,
  b: Float64Array,
  weighted: Float64Array,
  q: number,
  e: number,
): void => {
  const w = q + e;
  for (let i = 0; i < w; i++)
    for (let j = i; j < w; j++) {
      let value = products[at + i * w + j] as number;
      for (let k = 0; k < q; k++) value -= (b[k * w + i] as number) * (b[k * w + j] as number);
      if (i >= q) total[(i - q) * e + j - q] = (total[(i - q) * e + j - q] as number) + value;
      else if (j >= q) weighted[i * e + j - q] = value;
      else zz[i * q + j] = (zz[i * q + j] as number) + value;
    }
  for (let i = 0; i < q; i++)
    for (let j = i; j < q; j++)
      for (let c = 0; c < e; c++)
        for (let d = 0; d < e; d++) {
          const cell = ((i * q + j) * e + c) * e + d;
          pairs[cell] =
            (pairs[cell] as number) +
            (weighted[i * e + c] as number) * (weighted[j * e + d] as number);
        }
};

interface Evaluation {
  readonly criterion: number;
  /** By the elements of the factor, q by q. */
  readonly gradient: Float64Array;
  /** Upper factor of XᵀV⁻¹X. */
  readonly r: Float64Array;
  readonly beta: Float64Array;
  readonly variance: number;
}

/** The profiled criterion at a relative covariance factor; its cost does not depend on the rows. */
const evaluate = (data: Prepared, lambda: Float64Array, reml: boolean): Evaluation | null => {
  const { n, p, q, products, fixedFactor } = data;
  const [w, e] = [q + p + 1, p + 1];
  const df = reml ? n - p : n;
  const [b, l] = [new Float64Array(q * w), new Float64Array(q * q)];
  const sums: Sums = {
    total: new Float64Array(e * e),
    zz: new Float64Array(q * q),
    pairs: new Float64Array(q * q * e * e),
  };
  const { total, zz, pairs } = sums;
  const weighted = new Float64Array(q * e);
  let logDeterminant = 0;
  for (let group = 0; group < data.groups.length; group++) {
    const at = group * w * w;
    logDeterminant += reduceGroup(products, at, q, w, lambda, b, l);
    addGroup(sums, products, at, b, weighted, q, e);
  }

  const cross = new Float64Array(p * p);
  const right = new Float64Array(p);
  for (let i = 0; i < p; i++) {
    for (let j = i; j < p; j++) cross[i * p + j] = total[i * e + j] as number;
    right[i] = total[i * e + p] as number;
  }
  const r = cholesky(cross, p);
  if (r === null) return null;
  const explained = forward(r, right);
  const beta = backward(r, explained, p);
  const squares = explained.reduce((sum, v) => sum - v * v, total[e * e - 1] as number);
  if (!(squares > 0)) return null;

  let criterion = logDeterminant + df * (1 + Math.log((2 * Math.PI * squares) / df));
  if (reml)
    for (let i = 0; i < p; i++)
      criterion +=
        2 * Math.log(Math.abs((r[i * p + i] as number) * (fixedFactor[i * p + i] as number)));

  // Of the three terms by V: ZᵀV⁻¹Z, less what the fixed effects take, less the residuals' own squares.
  const inverse = inverseCross(r, p, 1);
  const inner = new Float64Array(q * q);
  for (let i = 0; i < q; i++)
    for (let j = i; j < q; j++) {
      let value = zz[i * q + j] as number;
      for (let c = 0; c < e; c++)
        for (let d = 0; d < e; d++) {
          const cell = pairs[((i * q + j) * e + c) * e + d] as number;
          const left = c < p ? -(beta[c] as number) : 1;
          const other = d < p ? -(beta[d] as number) : 1;
          value -= (df / squares) * left * other * cell;
          if (reml && c < p && d < p) value -= (inverse[c]?.[d] as number) * cell;
        }
      inner[i * q + j] = value;
      inner[j * q + i] = value;
    }
  const gradient = new Float64Array(q * q);
  for (let i = 0; i < q; i++)
    for (let j = 0; j <= i; j++)
      for (let k = j; k < q; k++)
        gradient[i * q + j] =
          (gradient[i * q + j] as number) +
          2 * (inner[i * q + k] as number) * (lambda[k * q + j] as number);
  return { criterion, gradient, r, beta, variance: squares / df };
};

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
  const { q, n } = data;
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
  if (first === null)
    throw new RangeError('Nothing varies within groups, or a value is not a number');
  let here = first;
  let slope = slopes(here);
  // A variance's curvature grows with the number of groups, so that many is the first guess of it.
  const unit = () =>
    cells.map((_, i) => cells.map((__, j) => (i === j ? 0.5 / data.groups.length : 0)));
  let inverse = unit();
  let converged = false;
  for (let round = 0; round < MOST_ITERATIONS && !converged; round++) {
    let direction = inverse.map((row) => -dot(row, slope));
    if (!(dot(direction, slope) < 0)) {
      inverse = unit();
      direction = slope.map((s) => (-0.5 * s) / data.groups.length);
    }
    const fall = dot(direction, slope);
    let stride = Math.min(1, 2 / Math.max(...direction.map(Math.abs)));
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
    converged = Math.max(...slope.map(Math.abs)) <= FLAT * n;
  }

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
  const [b, l] = [new Float64Array(q * w), new Float64Array(q * q)];
  const groups = data.groups.map((group, g): GroupEffect => {
    reduceGroup(data.products, g * w * w, q, w, lambda, b, l);
    // B holds L⁻¹ΛᵀZᵀ(y - Xβ) in parts; each effect is its product with a row of (factor)L⁻ᵀ.
    const half = new Float64Array(q);
    for (let i = 0; i < q; i++) {
      let sum = b[i * w + q + p] as number;
      for (let j = 0; j < p; j++) sum -= (beta[j] as number) * (b[i * w + q + j] as number);
      half[i] = sum;
    }
    const effects: number[] = [];
    const conditionalSd: number[] = [];
    const row = new Float64Array(q);
    for (let i = 0; i < q; i++) {
      let [effect, squares] = [0, 0];
      for (let j = 0; j < q; j++) {
        let sum = factor[i * q + j] as number;
        for (let k = 0; k < j; k++) sum -= (l[j * q + k] as number) * (row[k] as number);
        const value = sum / (l[j * q + j] as number);
        row[j] = value;
        effect += value * (half[j] as number);
        squares += value * value;
      }
      effects.push(effect);
      conditionalSd.push(Math.sqrt(variance * squares));
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

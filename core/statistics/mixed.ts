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
/** Slopes of the criterion by the logarithm of the factor, per group: where the search ends ... */
const FLAT = 1e-8;
/** ... and what still counts as found where rounding ends it before, good for the sixth digit. */
const FLAT_ENOUGH = 1e-6;
/** A column of the factor below this is tried at zero, which is where the search only tends to. */
const NEAR_ZERO = 1e-3;

/** The rows in bases where the covariates are orthonormal, and each group brought down to as many rows as it has random effects. */
interface Prepared {
  readonly n: number;
  readonly p: number;
  readonly q: number;
  readonly groups: readonly string[];
  /** For each group, [Z X y] turned so that Z is a triangle: the q rows that hold it. */
  readonly blocks: Float64Array;
  /** Products of [X y] over the other rows, which random effects do not touch. */
  readonly untouched: Float64Array;
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

/** One group's block, and its other rows' products. No sum of squares is ever taken from another. */
const turnGroup = (
  rows: readonly MixedRow[],
  plain: Float64Array,
  fixedFactor: Float64Array,
  randomFactor: Float64Array,
  block: Float64Array,
  untouched: Float64Array,
): void => {
  const [m, p] = [rows.length, plain.length];
  const e = p + 1;
  const q = Math.round(Math.sqrt(randomFactor.length));
  const width = q + p;
  const a = new Float64Array(m * width);
  const left = new Float64Array(m);
  for (let row = 0; row < m; row++) {
    const { y, fixed, random } = rows[row] as MixedRow;
    const at = row * width;
    let rest = y;
    for (let j = 0; j < q; j++) a[at + j] = random[j] as number;
    for (let j = 0; j < p; j++) {
      a[at + q + j] = fixed[j] as number;
      rest -= (fixed[j] as number) * (plain[j] as number);
    }
    left[row] = rest;
    forwardInPlace(randomFactor, a, q, at);
    forwardInPlace(fixedFactor, a, p, at + q);
  }
  triangulate(a, left, m, width, q);
  for (let row = 0; row < m; row++) {
    const at = row * width;
    if (row < q) {
      for (let j = 0; j < width; j++) block[row * (width + 1) + j] = a[at + j] as number;
      block[row * (width + 1) + width] = left[row] as number;
    } else
      for (let i = 0; i < e; i++)
        for (let j = i; j < e; j++)
          untouched[i * e + j] =
            (untouched[i * e + j] as number) +
            ((i < p ? a[at + q + i] : left[row]) as number) *
              ((j < p ? a[at + q + j] : left[row]) as number);
  }
};

const prepare = (rows: readonly MixedRow[], correlated: boolean): Prepared => {
  const n = rows.length;
  const [p, q] = [rows[0]?.fixed.length ?? 0, rows[0]?.random.length ?? 0];
  if (p === 0 || q === 0 || n <= p) throw new RangeError('Too few rows or no effects');
  if (rows.some(({ fixed, random }) => fixed.length !== p || random.length !== q))
    throw new RangeError('Rows differ in their number of effects');
  const members = new Map<string, MixedRow[]>();
  for (const row of rows) {
    const known = members.get(row.group);
    if (known === undefined) members.set(row.group, [row]);
    else known.push(row);
  }
  if (n <= members.size * (correlated ? q : 1))
    throw new RangeError('As many random effects as rows: nothing tells them from what is left');
  if (members.size < 2) throw new RangeError('One group says nothing of how groups differ');

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

  const [w, e] = [q + p + 1, p + 1];
  const blocks = new Float64Array(members.size * q * w);
  const untouched = new Float64Array(e * e);
  let at = 0;
  for (const group of members.values()) {
    turnGroup(group, plain, fixedFactor, randomFactor, blocks.subarray(at, at + q * w), untouched);
    at += q * w;
  }
  const spread = norm(target.subarray(p)) ** 2;
  if (n > members.size * q && !((untouched[e * e - 1] as number) > 1e-24 * spread))
    throw new RangeError('Nothing varies within groups');
  const groups = [...members.keys()];
  return { n, p, q, groups, blocks, untouched, fixedFactor, randomFactor, plain };
};

/** B = L⁻¹[T C] with LLᵀ = I + TΛΛᵀTᵀ, from a block [T C]; the log of the determinant. M is TΛ. */
const reduceGroup = (
  blocks: Float64Array,
  at: number,
  q: number,
  w: number,
  lambda: Float64Array,
  b: Float64Array,
  l: Float64Array,
  m: Float64Array,
): number => {
  for (let i = 0; i < q; i++)
    for (let j = 0; j < q; j++) {
      let sum = 0;
      for (let k = Math.max(i, j); k < q; k++)
        sum += (blocks[at + i * w + k] as number) * (lambda[k * q + j] as number);
      m[i * q + j] = sum;
    }
  let logDeterminant = 0;
  for (let i = 0; i < q; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = i === j ? 1 : 0;
      for (let k = 0; k < q; k++) sum += (m[i * q + k] as number) * (m[j * q + k] as number);
      for (let k = 0; k < j; k++) sum -= (l[i * q + k] as number) * (l[j * q + k] as number);
      l[i * q + j] = i === j ? Math.sqrt(sum) : sum / (l[j * q + j] as number);
    }
    logDeterminant += 2 * Math.log(l[i * q + i] as number);
  }
  for (let i = 0; i < q; i++)
    for (let j = 0; j < w; j++) {
      let sum = blocks[at + i * w + j] as number;
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
  b: Float64Array,
  weighted: Float64Array,
  q: number,
  e: number,
): void => {
  const w = q + e;
  for (let i = 0; i < w; i++)
    for (let j = i; j < w; j++) {
      let value = 0;
      for (let k = 0; k < q; k++) value += (b[k * w + i] as number) * (b[k * w + j] as number);
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
  const { n, p, q, blocks, fixedFactor } = data;
  const [w, e] = [q + p + 1, p + 1];
  const df = reml ? n - p : n;
  const b = new Float64Array(q * w);
  const [l, m] = [new Float64Array(q * q), new Float64Array(q * q)];
  const sums: Sums = {
    total: data.untouched.slice(),
    zz: new Float64Array(q * q),
    pairs: new Float64Array(q * q * e * e),
  };
  const { total, zz, pairs } = sums;
  const weighted = new Float64Array(q * e);
  let logDeterminant = 0;
  for (let group = 0; group < data.groups.length; group++) {
    logDeterminant += reduceGroup(blocks, group * q * w, q, w, lambda, b, l, m);
    addGroup(sums, b, weighted, q, e);
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

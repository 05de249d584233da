/**
 * The deviance of a linear mixed model, or its REML criterion, profiled over the relative covariance factor, and its
 * slopes. Sources as in `mixed.ts`.
 */
import { backward, cholesky, forward, inverseCross } from './dense.ts';
import type { Prepared } from './mixed-rows.ts';

/** B = L⁻¹[T C] with LLᵀ = I + TΛΛᵀTᵀ, from a block [T C]; the log of the determinant. M is TΛ. */
export const reduceGroup = (
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

export interface Evaluation {
  readonly criterion: number;
  /** By the elements of the factor, q by q. */
  readonly gradient: Float64Array;
  /** Upper factor of XᵀV⁻¹X. */
  readonly r: Float64Array;
  readonly beta: Float64Array;
  readonly variance: number;
}

/** The profiled criterion at a relative covariance factor; its cost does not depend on the rows. */
export const evaluate = (
  data: Prepared,
  lambda: Float64Array,
  reml: boolean,
): Evaluation | null => {
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

/**
 * The rows of a linear mixed model, turned so that what follows costs by the group and not by the row: QR of the
 * covariates, of the random effects, and of each group's block.
 */
import { backward, forwardInPlace, norm, triangulate } from './dense.ts';

export interface MixedRow {
  readonly y: number;
  readonly group: string;
  /** The row's fixed effects: 1 for an intercept, then the covariates. */
  readonly fixed: readonly number[];
  /** The row's random effects: 1 for an intercept, then what its slopes go with. */
  readonly random: readonly number[];
}

/** The rows in bases where the covariates are orthonormal, and each group brought down to as many rows as it has random effects. */
export interface Prepared {
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

export const prepare = (rows: readonly MixedRow[], correlated: boolean): Prepared => {
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

/**
 * The small dense matrices of the models: one array, row after row.
 *
 * Source: Golub GH & Van Loan CF, Matrix Computations, 4th ed. (2013): Householder's factors 5.2, Cholesky's
 * 4.2, the triangular systems 3.1.
 */

/**
 * Householder reflections in place: a (m by p, row after row) becomes R on top, b becomes Qᵀb; with fewer
 * pivots only the first columns are brought to a triangle, and the others follow.
 */
export const triangulate = (
  a: Float64Array,
  b: Float64Array,
  m: number,
  p: number,
  pivots = p,
): void => {
  for (let k = 0; k < Math.min(m, pivots); k++) {
    let squares = 0;
    for (let i = k; i < m; i++) squares += (a[i * p + k] as number) ** 2;
    if (squares === 0) continue;
    const norm = Math.sqrt(squares);
    const head = a[k * p + k] as number;
    const alpha = head > 0 ? -norm : norm;
    a[k * p + k] = head - alpha;
    const scale = 1 / (norm * (norm + Math.abs(head)));
    for (let j = k + 1; j <= p; j++) {
      let dot = 0;
      for (let i = k; i < m; i++)
        dot += (a[i * p + k] as number) * ((j < p ? a[i * p + j] : b[i]) as number);
      dot *= scale;
      for (let i = k; i < m; i++) {
        const taken = dot * (a[i * p + k] as number);
        if (j < p) a[i * p + j] = (a[i * p + j] as number) - taken;
        else b[i] = (b[i] as number) - taken;
      }
    }
    a[k * p + k] = alpha;
    for (let i = k + 1; i < m; i++) a[i * p + k] = 0;
  }
};

/** x with R x = b. */
export const backward = (r: Float64Array, b: ArrayLike<number>, p: number): Float64Array => {
  const x = new Float64Array(p);
  for (let i = p - 1; i >= 0; i--) {
    let sum = b[i] as number;
    for (let j = i + 1; j < p; j++) sum -= (r[i * p + j] as number) * (x[j] as number);
    x[i] = sum / (r[i * p + i] as number);
  }
  return x;
};

/** x with Rᵀ x = b, where b stands in a row of numbers from a place on; x takes its place. */
export const forwardInPlace = (r: Float64Array, x: Float64Array, p: number, from = 0): void => {
  for (let i = 0; i < p; i++) {
    let sum = x[from + i] as number;
    for (let j = 0; j < i; j++) sum -= (r[j * p + i] as number) * (x[from + j] as number);
    x[from + i] = sum / (r[i * p + i] as number);
  }
};

/** x with Rᵀ x = b. */
export const forward = (r: Float64Array, b: ArrayLike<number>): Float64Array => {
  const x = Float64Array.from(b);
  forwardInPlace(r, x, x.length);
  return x;
};

/** (RᵀR)⁻¹ times a factor. */
export const inverseCross = (r: Float64Array, p: number, factor: number): number[][] => {
  const half = Array.from({ length: p }, (_, j) =>
    forward(
      r,
      Array.from({ length: p }, (_, i) => (i === j ? 1 : 0)),
    ),
  );
  return half.map((a) =>
    half.map((b) => factor * a.reduce((sum, v, i) => sum + v * (b[i] as number), 0)),
  );
};

export const norm = (x: ArrayLike<number>): number => {
  let sum = 0;
  for (let i = 0; i < x.length; i++) sum += (x[i] as number) ** 2;
  return Math.sqrt(sum);
};

/** The upper R with RᵀR = a, of which the upper half is read; null where a is not positive definite. */
export const cholesky = (a: Float64Array, p: number): Float64Array | null => {
  const r = new Float64Array(p * p);
  for (let i = 0; i < p; i++)
    for (let j = i; j < p; j++) {
      let sum = a[i * p + j] as number;
      for (let k = 0; k < i; k++) sum -= (r[k * p + i] as number) * (r[k * p + j] as number);
      if (j > i) r[i * p + j] = sum / (r[i * p + i] as number);
      else if (sum > 1e-14 * (a[i * p + i] as number)) r[i * p + i] = Math.sqrt(sum);
      else return null;
    }
  return r;
};

/** Do two lists of numbers rise and fall together? Pearson's r, its interval by Fisher RA, Metron 1921;1:3-32. */
import { LEVEL, type Interval } from './interval.ts';
import { normalCdf, normalQuantile } from './normal.ts';

export interface Correlation extends Interval {
  readonly r: number;
  readonly n: number;
  /** Against a correlation of zero or more. */
  readonly pBelowZero: number;
}

/** @returns null below four points, or where one of the lists does not vary */
export const correlation = (
  x: readonly number[],
  y: readonly number[],
  level = LEVEL,
): Correlation | null => {
  const n = Math.min(x.length, y.length);
  if (n < 4) return null;
  const mean = (list: readonly number[]) => list.reduce((a, b) => a + b, 0) / n;
  const [mx, my] = [mean(x), mean(y)];
  let [xx, yy, xy] = [0, 0, 0];
  for (let at = 0; at < n; at++) {
    const [dx, dy] = [(x[at] as number) - mx, (y[at] as number) - my];
    xx += dx * dx;
    yy += dy * dy;
    xy += dx * dy;
  }
  if (xx === 0 || yy === 0) return null;
  const r = Math.max(-1, Math.min(1, xy / Math.sqrt(xx * yy)));
  // At ±1 the transform is infinite; the last digit of r is of no account.
  const z = Math.atanh(Math.max(-1 + 1e-12, Math.min(1 - 1e-12, r)));
  const half = normalQuantile((1 + level) / 2) / Math.sqrt(n - 3);
  return {
    r,
    n,
    lower: Math.tanh(z - half),
    upper: Math.tanh(z + half),
    pBelowZero: normalCdf(z * Math.sqrt(n - 3)),
  };
};

/**
 * Is the mean of paired differences zero? Exact permutation of their signs, the unit being whatever has
 * one difference (Fisher RA, The Design of Experiments, 1935, section 21).
 */
import { normalTwoSided } from './normal.ts';

export interface SignFlip {
  readonly pTwoSided: number;
  /** Against a mean above zero. */
  readonly pGreater: number;
  /** `normal`: the flips' own variance, beyond 20 differences that are not zero. */
  readonly method: 'exact' | 'normal';
}

/** Zero differences keep their place in the sum and change nothing. */
export const signFlip = (differences: readonly number[]): SignFlip => {
  const moving = differences.filter((d) => d !== 0).map(Math.abs);
  const seen = differences.reduce((a, b) => a + b, 0);
  if (moving.length > 20) {
    const z = seen / Math.sqrt(moving.reduce((sum, d) => sum + d * d, 0));
    const p = normalTwoSided(z);
    return { pTwoSided: p, pGreater: z > 0 ? p / 2 : 1 - p / 2, method: 'normal' };
  }
  const slack = 1e-9 * moving.reduce((a, b) => a + b, 0);
  const flips = 2 ** moving.length;
  let sum = -moving.reduce((a, b) => a + b, 0);
  let [greater, beyond] = [0, 0];
  let signs = 0;
  for (let flip = 0; flip < flips; flip++) {
    if (flip > 0) {
      // Gray code: one sign changes from one pattern to the next.
      const bit = 31 - Math.clz32(flip & -flip);
      signs ^= 1 << bit;
      sum += (signs & (1 << bit) ? 2 : -2) * (moving[bit] as number);
    }
    if (sum >= seen - slack) greater++;
    if (Math.abs(sum) >= Math.abs(seen) - slack) beyond++;
  }
  return { pTwoSided: beyond / flips, pGreater: greater / flips, method: 'exact' };
};

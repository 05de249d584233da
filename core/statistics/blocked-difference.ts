/**
 * By how much does one set of things differ from another, where only things of one block are alike (pairs of one size)?
 *
 * One block: the difference of two means with unequal variances (Welch BL, Biometrika 1947;34:28-35). Several: least
 * squares with an effect of each block and one of the set (two-way layout without interaction: Cochran WG & Cox GM,
 * Experimental Designs, 2nd ed. 1957, section 4.3, from memory). Each block's difference is weighed by n₁n₂/(n₁ + n₂); the scatter is
 * what neither explains, on N − blocks − 1 degrees of freedom. With one thing of each set in each block it is the paired t.
 */
import { meanOfUnits } from './means.ts';

export interface Block {
  readonly first: readonly number[];
  readonly second: readonly number[];
}

export interface BlockedDifference {
  /** Second less first. */
  readonly difference: number;
  /** Means of the sets over the blocks, weighed alike, so that their difference is that one. */
  readonly first: { readonly n: number; readonly mean: number };
  readonly second: { readonly n: number; readonly mean: number };
  /** Standard deviation of one thing, within block and set; null where nothing is left to estimate it from. */
  readonly scatter: number | null;
  /** Of the difference, with its degrees of freedom; null as the scatter is. */
  readonly error: { readonly se: number; readonly df: number } | null;
}

/** Welch's standard error and degrees of freedom; null below two things in either set. */
const errorOfOne = ({ first, second }: Block, least: number) => {
  const [a, b] = [meanOfUnits(first), meanOfUnits(second)];
  if (!a || !b || a.sd === null || b.sd === null) return null;
  const [va, vb] = [Math.max(a.sd, least) ** 2 / a.n, Math.max(b.sd, least) ** 2 / b.n];
  const scatter = Math.sqrt(
    ((a.n - 1) * Math.max(a.sd, least) ** 2 + (b.n - 1) * Math.max(b.sd, least) ** 2) /
      (a.n + b.n - 2),
  );
  const sum = va + vb;
  const df = sum > 0 ? sum ** 2 / (va ** 2 / (a.n - 1) + vb ** 2 / (b.n - 1)) : a.n + b.n - 2;
  return { scatter, error: { se: Math.sqrt(sum), df } };
};

/**
 * @param blocks those without things of both sets say nothing
 * @param least scatter that is known to be there even where the figures show none, such as that of rounding
 * @returns null where no block has things of both
 */
export const blockedDifference = (
  blocks: readonly Block[],
  least = 0,
): BlockedDifference | null => {
  const own = blocks.flatMap((block) => {
    const [a, b] = [meanOfUnits(block.first), meanOfUnits(block.second)];
    return a && b ? [{ block, a, b, weight: (a.n * b.n) / (a.n + b.n) }] : [];
  });
  const [only] = own;
  if (!only) return null;
  const weights = own.reduce((sum, { weight }) => sum + weight, 0);
  const over = (value: (one: (typeof own)[number]) => number) =>
    own.reduce((sum, one) => sum + one.weight * value(one), 0) / weights;
  const [first, second] = [over(({ a }) => a.mean), over(({ b }) => b.mean)];
  const difference = second - first;
  const found = {
    difference,
    first: { n: own.reduce((sum, { a }) => sum + a.n, 0), mean: first },
    second: { n: own.reduce((sum, { b }) => sum + b.n, 0), mean: second },
  };
  if (own.length === 1) return { ...found, ...(errorOfOne(only.block, least) ?? NO_ERROR) };
  const df = found.first.n + found.second.n - own.length - 1;
  if (df < 1) return { ...found, ...NO_ERROR };
  const within = ({ n, sd }: { readonly n: number; readonly sd: number | null }) =>
    (n - 1) * (sd ?? 0) ** 2;
  const squares = own.reduce(
    (sum, { a, b, weight }) =>
      sum + within(a) + within(b) + weight * (b.mean - a.mean - difference) ** 2,
    0,
  );
  const scatter = Math.max(Math.sqrt(squares / df), least);
  return { ...found, scatter, error: { se: scatter / Math.sqrt(weights), df } };
};

const NO_ERROR = { scatter: null, error: null } as const;

/** Which surface lies where along a run? Stretches painted one over the other; the last one counts. */
import type { Surface } from '../records/index.ts';

export interface Stretch {
  readonly fromM: number;
  readonly toM: number;
  readonly surface: Surface;
}

/**
 * The way with one more stretch painted: what lay under it is cut back, ends may be given in any order.
 * @param lengthM length of the whole way, metres
 */
export const paint = (
  stretches: readonly Stretch[],
  { fromM, toM, surface }: Stretch,
  lengthM: number,
): readonly Stretch[] => {
  const clamp = (value: number) => Math.min(lengthM, Math.max(0, value));
  const [from, to] = [clamp(Math.min(fromM, toM)), clamp(Math.max(fromM, toM))];
  if (to <= from) return stretches;
  const rest = stretches.flatMap((one) => [
    { ...one, toM: Math.min(one.toM, from) },
    { ...one, fromM: Math.max(one.fromM, to) },
  ]);
  return [...rest, { fromM: from, toM: to, surface }]
    .filter((one) => one.toM > one.fromM)
    .sort((a, b) => a.fromM - b.fromM);
};

/**
 * Share of the way on each surface; they sum to 1.
 * @param base surface of whatever is not painted; null where it is not known
 * @returns null where some of the way is unknown, because shares of a part would pass for the whole
 */
export const sharesOf = (
  stretches: readonly Stretch[],
  base: Surface | null,
  lengthM: number,
): Readonly<Partial<Record<Surface, number>>> | null => {
  const painted = stretches.reduce((sum, { fromM, toM }) => sum + toM - fromM, 0);
  const bare = lengthM - painted;
  if (lengthM <= 0 || (bare > 1e-6 * lengthM && base === null)) return null;
  const shares = new Map<Surface, number>();
  for (const { fromM, toM, surface } of stretches)
    shares.set(surface, (shares.get(surface) ?? 0) + (toM - fromM) / lengthM);
  if (base !== null && bare > 0) shares.set(base, (shares.get(base) ?? 0) + bare / lengthM);
  // Rounding must not make the whole more or less than 1: the largest share takes it.
  const [largest] = [...shares].sort(([, a], [, b]) => b - a)[0] ?? [];
  const others = [...shares].reduce(
    (sum, [key, share]) => (key === largest ? sum : sum + share),
    0,
  );
  if (largest !== undefined) shares.set(largest, 1 - others);
  return Object.fromEntries(shares);
};

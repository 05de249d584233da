/** Seeded randomness for the demo: the same seed gives the same wear test for ever. */

export interface Dice {
  /** A number from 0 up to 1. */
  next(): number;
  /** True with this probability. */
  chance(probability: number): boolean;
  /** From `lo` up to `hi`. */
  between(lo: number, hi: number): number;
  /** A normal draw (Box and Muller, Ann Math Stat 1958). */
  normal(mean: number, sd: number): number;
  pick<T>(from: readonly T[]): T;
  bytes(count: number): Uint8Array;
}

/** A 32-bit mixing generator (the finaliser of MurmurHash3, public domain, over a Weyl sequence). */
export const seededDice = (seed: number): Dice => {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
  };
  return {
    next,
    chance: (probability) => next() < probability,
    between: (lo, hi) => lo + (hi - lo) * next(),
    normal: (mean, sd) =>
      mean + sd * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    pick: (from) => from[Math.floor(next() * from.length)] as (typeof from)[number],
    bytes: (count) => Uint8Array.from({ length: count }, () => Math.floor(next() * 256)),
  };
};

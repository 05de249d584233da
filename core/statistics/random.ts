/**
 * Chance that can be repeated: the same seed gives the same numbers on every machine. For plans and
 * simulations, not for secrets.
 *
 * Generator xoshiro128** of Blackman D & Vigna S, ACM Trans Math Softw 2021;47(4):36. Its state is filled
 * from the seed by a Weyl sequence mixed as in SplitMix (Steele GL, Lea D & Flood CH, OOPSLA 2014), in 32
 * bits with the finaliser of MurmurHash3.
 */

export interface Chance {
  /** A whole number from 0 to below `n`, 1 ≤ n ≤ 2^32; each equally likely to within n / 2^32. */
  below(n: number): number;
  /** A number from 0 up to 1, in steps of 2^-32. */
  share(): number;
  /** The items in an order of chance; the list itself is not changed (Fisher & Yates 1938; Durstenfeld 1964). */
  shuffled<T>(items: readonly T[]): T[];
}

const rotate = (x: number, by: number): number => (x << by) | (x >>> (32 - by));

/** @param seed a whole number, 0 to 2^53 − 1 */
export const seededChance = (seed: number): Chance => {
  let weyl = (seed ^ Math.floor(seed / 2 ** 32)) >>> 0;
  const mixed = (): number => {
    weyl = (weyl + 0x9e3779b9) >>> 0;
    let z = Math.imul(weyl ^ (weyl >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    return z ^ (z >>> 16);
  };
  let [a, b, c, d] = [mixed(), mixed(), mixed(), mixed() | 1];
  const next = (): number => {
    const answer = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotate(d, 11);
    return answer;
  };
  const share = (): number => next() / 2 ** 32;
  const below = (n: number): number => Math.floor(share() * n);
  return {
    below,
    share,
    shuffled: (items) => {
      const list = [...items];
      for (let at = list.length - 1; at > 0; at--) {
        const other = below(at + 1);
        [list[at], list[other]] = [list[other] as never, list[at] as never];
      }
      return list;
    },
  };
};

/**
 * Plans that are known to be balanced: Williams squares, and balanced incomplete blocks.
 *
 * Williams EJ, Aust J Sci Res A 1949;2:149-168: for an even number one square in which each round comes
 * once in each period and once after each other; for an odd number two squares, and twice. Blocks: (b, r,
 * λ) as in Fisher RA & Yates F, Statistical Tables, 1938, and ISO 29842:2024 Annex A; the orders inside
 * blocks as in Patterson HD, J R Stat Soc B 1951;13:256-271.
 */

/** The rows of a Williams square (of two for an odd number), each an order of 0 … n − 1. */
export const williamsRows = (n: number): number[][] => {
  // 0, 1, n − 1, 2, n − 2, …: neighbours differ by each amount once.
  const first = Array.from({ length: n }, (_, at) =>
    at % 2 === 1 ? (at + 1) / 2 : (n - at / 2) % n,
  );
  const square = Array.from({ length: n }, (_, shift) => first.map((round) => (round + shift) % n));
  return n % 2 === 0 ? square : [...square, ...square.map((row) => [...row].reverse())];
};

/** Smaller sets of blocks than "every choice of k"; a digit is a round. By `v,k`. */
const BLOCKS: Readonly<Record<string, string>> = {
  '6,3': '014 015 023 025 034 123 124 135 245 345',
  '7,3': '013 124 235 346 450 561 602',
  '7,4': '2456 0356 0146 0125 1236 0234 1345',
  '8,4': '0123 4567 0145 2367 0167 2345 0246 1357 0257 1346 0347 1256 0356 1247',
  '9,3': '012 345 678 036 147 258 048 156 237 057 138 246',
};

const digits = (word: string): number[] => Array.from(word, (digit) => Number(digit));

const choose = (from: readonly number[], k: number): number[][] => {
  if (k === 0) return [[]];
  return from.flatMap((one, at) => choose(from.slice(at + 1), k - 1).map((rest) => [one, ...rest]));
};

/** More blocks than this are of no use to a panel. */
const MOST_BLOCKS = 500;

const choices = (n: number, k: number): number => {
  let count = 1;
  for (let at = 1; at <= k; at++) count = (count * (n - k + at)) / at;
  return count;
};

/**
 * Balanced incomplete blocks of `size` out of `rounds`: each round in r blocks, each two rounds together in
 * λ of them. From the catalogue, else every choice.
 * @returns null where that would be more than 500 blocks
 */
export const balancedBlocks = (rounds: number, size: number): number[][] | null => {
  const listed = BLOCKS[`${rounds},${size}`];
  if (listed !== undefined) return listed.split(' ').map(digits);
  if (choices(rounds, size) > MOST_BLOCKS) return null;
  return choose(
    Array.from({ length: rounds }, (_, at) => at),
    size,
  );
};

/**
 * The rows that a fully balanced plan repeats: a Williams square, or blocks with a Williams square in each.
 * @param rounds how many are compared
 * @param periods how many of them each tester wears
 * @returns null where no set of blocks of a useful size is known
 */
export const balancedRows = (rounds: number, periods: number): number[][] | null => {
  if (periods === rounds) return williamsRows(rounds);
  const orders = williamsRows(periods);
  const blocks = balancedBlocks(rounds, periods);
  if (!blocks) return null;
  // Row by row over the blocks, so that a beginning of the list is as even as it can be.
  return orders.flatMap((order) =>
    blocks.map((block) => order.map((place) => block[place] as number)),
  );
};

/** Plans that a long search found and a short one may miss; a word is a tester, a digit a round. */
const FOUND: Readonly<Record<string, Readonly<Record<number, string>>>> = {
  '5,3': { 11: '210 423 204 132 014 041 302 103 124 431 340' },
  '5,4': { 5: '0142 3210 1304 4023 2431' },
  '5,5': { 5: '40123 04231 32410 14302 21034' },
  '6,4': {
    10: '5342 0451 1435 2150 5203 1324 3012 3105 4023 2541',
    11: '3250 3542 0134 5213 0312 5304 4023 1520 4105 2451 1435',
  },
  '6,5': {
    5: '01352 50214 24530 15423 32041',
    6: '02514 13405 45230 54321 20153 31042',
    7: '10254 34521 42305 53140 20413 15032 01243',
    8: '23145 40351 34210 41523 05432 12504 20135 53024',
  },
};

/**
 * A good beginning of a plan for so many testers: one that was found, or the first of the balanced rows.
 * Where no balanced rows are known, everybody wears the first rounds in their order.
 */
export const firstRows = (rounds: number, periods: number, testers: number): number[][] => {
  const found = FOUND[`${rounds},${periods}`]?.[testers];
  if (found !== undefined) return found.split(' ').map(digits);
  const known = balancedRows(rounds, periods) ?? [
    Array.from({ length: periods }, (_, period) => period),
  ];
  return Array.from({ length: testers }, (_, at) => known[at % known.length] as number[]);
};

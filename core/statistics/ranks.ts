/**
 * Rank tests: two groups (Wilcoxon, Mann & Whitney), and two groups within strata. Exact, ties included, by counting all ways to share the ranks out (Streitberg B & Röhmel J,
 * Biom J 1987;29; Hollander M & Wolfe DA, Nonparametric Statistical Methods, 1973); the normal
 * distribution with the variance of the permutations where counting would be long.
 */
import { normalTwoSided } from './normal.ts';
import { convolve } from './two-by-two.ts';

/** Twice the midrank of each value, so that ties stay whole. */
export const doubledRanks = (values: readonly number[]): number[] => {
  const order = values
    .map((_, at) => at)
    .sort((a, b) => (values[a] as number) - (values[b] as number));
  const ranks = new Array<number>(values.length).fill(0);
  for (let from = 0; from < order.length;) {
    let to = from;
    while (to < order.length && values[order[to] as number] === values[order[from] as number]) to++;
    for (let at = from; at < to; at++) ranks[order[at] as number] = from + to + 1;
    from = to;
  }
  return ranks;
};

/** Distribution of the sum of `take` of the whole numbers, all choices equally likely; from sum 0 on. */
const sumOfChosen = (numbers: readonly number[], take: number): Float64Array => {
  const most = [...numbers]
    .sort((a, b) => b - a)
    .slice(0, take)
    .reduce((a, b) => a + b, 0);
  const ways = Array.from({ length: take + 1 }, () => new Float64Array(most + 1));
  (ways[0] as Float64Array)[0] = 1;
  for (const [seen, number] of numbers.entries())
    for (let chosen = Math.min(take, seen + 1); chosen >= 1; chosen--) {
      const from = ways[chosen - 1] as Float64Array;
      const to = ways[chosen] as Float64Array;
      for (let sum = most; sum >= number; sum--)
        to[sum] = (to[sum] as number) + (from[sum - number] as number);
    }
  const last = ways[take] as Float64Array;
  const total = last.reduce((a, b) => a + b, 0);
  return last.map((count) => count / total);
};

export interface RankResult {
  /** Two-sided. */
  readonly p: number;
  /** The rank sum against its mean, in standard deviations of the permutations. */
  readonly z: number;
  /** Probability that a value of the first group is above one of the second, ties as half; 0.5: neither. */
  readonly chanceAbove: number | null;
  readonly method: 'exact' | 'normal';
  /** Strata that say something. */
  readonly strata: number;
}

/** One stratum: the values, and which of them belong to the first group. */
export interface RankStratum {
  readonly values: readonly number[];
  readonly inFirst: readonly boolean[];
}

/** The values of a stratum as ranks, made once for many features of the same values. */
export interface RankedValues {
  /** Twice the midranks. */
  readonly ranks: readonly number[];
  /** Their variance; 0: all values are the same. */
  readonly spread: number;
}

/** A stratum of ranked values: how many are in the first group, and twice their rank sum. */
export interface RankedStratum {
  readonly of: RankedValues;
  readonly take: number;
  readonly sum: number;
}

export const rankValues = (values: readonly number[]): RankedValues => {
  const n = values.length;
  const ranks = doubledRanks(values);
  const squares = ranks.reduce((total, rank) => total + (rank - n - 1) ** 2, 0);
  return { ranks, spread: n > 1 ? squares / (n - 1) : 0 };
};

/** Beyond this many steps the normal distribution is taken. */
const EXACT_STEPS = 3e6;

/** Both tails of a distribution over whole numbers, by distance from its mean. */
const beyondMean = (probabilities: Float64Array, at: number, mean: number): number => {
  const far = Math.abs(at - mean) - 1e-9;
  let p = 0;
  for (let k = 0; k < probabilities.length; k++)
    if (Math.abs(k - mean) >= far) p += probabilities[k] as number;
  return Math.min(1, p);
};

/**
 * Do the values of the first group lie above or below those of the second, within strata? The sum over
 * strata of the first group's rank sums. With one stratum, the test of Wilcoxon, Mann and Whitney; with
 * time as the value and a feature as the group, Kendall's S against time within strata (Hirsch RM &
 * Slack JR, Water Resour Res 1984;20:727-732).
 */
export const stratifiedRankTest = (strata: readonly RankStratum[]): RankResult =>
  rankedTest(
    strata.map(({ values, inFirst }) => {
      const of = rankValues(values);
      return {
        of,
        take: inFirst.filter(Boolean).length,
        sum: of.ranks.reduce((total, rank, at) => total + (inFirst[at] ? rank : 0), 0),
      };
    }),
  );

/** {@link stratifiedRankTest} of values that are ranked already. */
export const rankedTest = (strata: readonly RankedStratum[]): RankResult => {
  const telling = strata.filter(
    ({ of, take }) => take > 0 && take < of.ranks.length && of.spread > 0,
  );
  if (telling.length === 0) return { p: 1, z: 0, chanceAbove: null, method: 'exact', strata: 0 };
  let [seen, mean, variance, wins, pairs, steps, range] = [0, 0, 0, 0, 0, 0, 1];
  const parts: { ranks: readonly number[]; take: number }[] = [];
  for (const { of, take, sum } of telling) {
    const { ranks, spread } = of;
    const n = ranks.length;
    seen += sum;
    mean += take * (n + 1);
    variance += ((take * (n - take)) / n) * spread;
    wins += sum / 2 - (take * (take + 1)) / 2;
    pairs += take * (n - take);
    // The fewer are counted: the ranks of the others are what is left.
    const fewer = Math.min(take, n - take);
    const most = fewer * 2 * n;
    steps += n * fewer * most + range * most;
    range += most;
    parts.push({ ranks, take });
  }
  const z = (seen - mean) / Math.sqrt(variance);
  const common = { z, chanceAbove: wins / pairs, strata: telling.length };
  if (steps > EXACT_STEPS) return { ...common, p: normalTwoSided(z), method: 'normal' };
  let probabilities: Float64Array = Float64Array.of(1);
  let least = 0;
  for (const { ranks, take } of parts) {
    const own = sumOfFirst(ranks, take);
    least += own.least;
    probabilities = convolve(probabilities, own.probabilities);
  }
  return { ...common, p: beyondMean(probabilities, seen - least, mean - least), method: 'exact' };
};

/** Distribution of the first group's rank sum; the smaller group is counted, the other is what is left. */
const sumOfFirst = (ranks: readonly number[], take: number) => {
  const fewer = Math.min(take, ranks.length - take);
  const counted = sumOfChosen(ranks, fewer);
  const from = counted.findIndex((p) => p > 0);
  const probabilities = counted.slice(from);
  if (fewer === take) return { least: from, probabilities };
  const total = ranks.reduce((a, b) => a + b, 0);
  return { least: total - (counted.length - 1), probabilities: probabilities.reverse() };
};

/** Two independent groups: {@link stratifiedRankTest} with one stratum. */
export const rankSumTest = (first: readonly number[], second: readonly number[]): RankResult =>
  stratifiedRankTest([
    {
      values: [...first, ...second],
      inFirst: [...first.map(() => true), ...second.map(() => false)],
    },
  ]);

/** The middle value; null where there is none. */
export const median = (values: readonly number[]): number | null => {
  if (values.length === 0) return null;
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1
    ? (sorted[middle] as number)
    : ((sorted[middle - 1] as number) + (sorted[middle] as number)) / 2;
};

/**
 * Do two rounds or foams wear differently, and do left and right shoes?
 *
 * Two fits know nothing of each other, so the variances of their changes add; each posterior is read as
 * normal on its scale, by the width of its 90 % interval. Left against right is paired within the pair, as
 * in the shoe experiment of Box GEP, Hunter WG & Hunter JS, Statistics for Experimenters (1978), 4.2.
 */
import {
  meanOfUnits,
  normalQuantile,
  type Interval,
  type MeanOfUnits,
} from '../statistics/index.ts';
import type { Metres } from '../units/index.ts';
import { WEAR_LEVEL, type WearFit } from './fit.ts';
import { scaleOf, type WearKind } from './series.ts';

const Z = normalQuantile((1 + WEAR_LEVEL) / 2);

/** The mean change of the first less that of the second by a distance: a ratio of factors on a ratio scale. */
export interface ChangeDifference extends Interval {
  readonly median: number;
}

/** Compares two fits of one kind and site at a distance that both reach. */
export const differenceOfChanges = <Kind extends WearKind>(
  first: WearFit<Kind>,
  second: WearFit<NoInfer<Kind>>,
  x: Metres,
): ChangeDifference => {
  const ratio = scaleOf(first.kind) === 'ratio';
  const plain = ({ lower, median, upper }: Interval & { median: number }) => {
    const [low, middle, high] = [lower, median, upper].map((value) =>
      ratio ? Math.log(value) : value,
    ) as [number, number, number];
    return { middle, sd: (high - low) / (2 * Z) };
  };
  const [a, b] = [plain(first.meanChangeAt(x)), plain(second.meanChangeAt(x))];
  const middle = a.middle - b.middle;
  const reach = Z * Math.hypot(a.sd, b.sd);
  const [lower, median, upper] = [middle - reach, middle, middle + reach].map((value) =>
    ratio ? Math.exp(value) : value,
  ) as [number, number, number];
  return { lower, median, upper };
};

/** A reading of each shoe of a pair at one distance. */
export interface BothShoes {
  readonly pair: string;
  readonly distance: Metres;
  readonly left: number;
  readonly right: number;
}

/**
 * By how much more the left shoe changed than the right, from the first to the last check of each pair, in
 * the reading's unit; null below two pairs with two checks of both shoes, or where they do not differ.
 */
export const leftAgainstRight = (checks: readonly BothShoes[]): MeanOfUnits | null => {
  const byPair = new Map<string, BothShoes[]>();
  for (const check of checks) byPair.set(check.pair, [...(byPair.get(check.pair) ?? []), check]);
  const differences = [...byPair.values()].flatMap((own) => {
    const sorted = [...own].sort((a, b) => a.distance - b.distance);
    const [first, last] = [sorted[0], sorted.at(-1)];
    if (!first || !last || first.distance === last.distance) return [];
    return [last.left - first.left - (last.right - first.right)];
  });
  const mean = differences.length < 2 ? null : meanOfUnits(differences, WEAR_LEVEL);
  // Without any spread an interval would claim to know it exactly.
  return mean === null || mean.sd === 0 ? null : mean;
};

/**
 * By how much do the samples of a round differ from those of another at one place, whatever sizes they are?
 *
 * A pair counts once, by the mean of its shoes on arrival. Only what is alike is compared: pairs of one size with pairs
 * of that size, or, where the blueprint gives every size its own nominal, deviations from it. Where the earlier round was
 * not read there its nominal stands in for it, at the sizes that it is drawn for.
 *
 * The interval is 95 %: scatter of the pairs (`core/statistics/blocked-difference.ts`), never less than that of rounding
 * (step/√12, JCGM 100:2008, F.2.2.1), together with what the gauges err by. One set of gauges in both rounds errs alike,
 * so that it falls out; another set, or a nominal, does not: its half width is added in squares (as Zou GY & Donner A,
 * Stat Med 2008;27:1693-1702, add those of two independent parts), which never makes the interval narrower. Where it is
 * not known that is said, and it is taken to be as the caller says a usual gauge errs.
 */
import type { Dimension, Foot } from '../records/index.ts';
import {
  blockedDifference,
  groupBy,
  meanOfUnits,
  normalQuantile,
  tQuantile,
  tTwoSided,
  LEVEL,
  type Block,
  type Interval,
} from '../statistics/index.ts';
import type { FirstReading } from './bench-change.ts';

/** The readings of one place on one shoe of a new pair, put together. */
export interface SampleReading extends FirstReading {
  readonly foot: Foot;
  /** Foot length that the pair is made for, mm. */
  readonly sizeMm: number;
  readonly gauges: readonly string[];
  /** Standard, of the value; null: not known. */
  readonly uncertainty: number | null;
}

export interface SampleDifference {
  /** Later less earlier, in the readings' unit. */
  readonly difference: number;
  /** Null where too few pairs were read to tell how much they scatter. */
  readonly interval: Interval | null;
  /** Two-sided, against no difference; null as the interval is. */
  readonly p: number | null;
  /** Whether the interval leaves zero out; null without one. */
  readonly differs: boolean | null;
  /** What is compared: pairs, and their mean. Against a nominal no pair of the earlier round is. */
  readonly earlier: { readonly n: number; readonly mean: number };
  readonly later: { readonly n: number; readonly mean: number };
  readonly against: 'round' | 'nominal';
  /** The sizes that were compared, mm of foot length. */
  readonly sizes: readonly number[];
  /** Standard deviation of a pair among those of its size and round. */
  readonly scatter: number | null;
  /** Measured with other gauges than the earlier round, and what those err by is not known. */
  readonly gaugesUnknown: boolean;
}

/**
 * The nominal of a dimension at a pair's size; null where the blueprint does not say. A blueprint of today is drawn for
 * one size alone.
 * @param sampleMm that size; null: nobody noted it
 */
export const nominalFor = (
  { nominal }: Pick<Dimension, 'nominal'>,
  sizeMm: number,
  sampleMm: number | null,
): number | null => (sizeMm === sampleMm ? nominal : null);

interface PairValue {
  readonly sizeMm: number;
  readonly value: number;
}

const ofPairs = (readings: readonly SampleReading[]): PairValue[] =>
  [...groupBy(readings, ({ pair }) => pair).values()].flatMap((own) => {
    const mean = meanOfUnits(own.map(({ value }) => value))?.mean;
    const [one] = own;
    return one && mean !== undefined ? [{ sizeMm: one.sizeMm, value: mean }] : [];
  });

const STEPS = [1, 0.5, 0.1, 0.05, 0.01, 0.005] as const;
const SLACK = 1e-6;

/** The scatter that rounding alone makes of readings that were written in such steps. */
const roundingOf = (readings: readonly SampleReading[]): number => {
  const isIn = (step: number) =>
    readings.every(({ value }) => Math.abs(value / step - Math.round(value / step)) < SLACK / step);
  return (STEPS.find(isIn) ?? 0) / Math.sqrt(12);
};

const gaugesIn = (readings: readonly SampleReading[]): string =>
  [...new Set(readings.flatMap(({ gauges }) => gauges))].sort().join('\n');

/** The largest uncertainty of a set; null where one is not known. */
const uncertaintyOf = (readings: readonly SampleReading[]): number | null =>
  readings.reduce<number | null>(
    (most, { uncertainty }) =>
      most === null || uncertainty === null ? null : Math.max(most, uncertainty),
    0,
  );

/**
 * What the gauges add to the difference, in squares.
 * @param usual standard uncertainty of a gauge of which nothing is known
 */
const gaugeSquares = (
  earlier: readonly SampleReading[],
  later: readonly SampleReading[],
  usual: number,
): { readonly squares: number; readonly isKnown: boolean } => {
  if (earlier.length > 0 && gaugesIn(earlier) === gaugesIn(later))
    return { squares: 0, isKnown: true };
  const [before, after] = [uncertaintyOf(earlier), uncertaintyOf(later)];
  return {
    squares: (before ?? usual) ** 2 + (after ?? usual) ** 2,
    isKnown: before !== null && after !== null,
  };
};

interface Estimate {
  readonly difference: number;
  readonly earlier: SampleDifference['earlier'];
  readonly later: SampleDifference['later'];
  readonly scatter: number | null;
  readonly error: { readonly se: number; readonly df: number } | null;
}

const withInterval = (
  { difference, earlier, later, scatter, error }: Estimate,
  gauge: ReturnType<typeof gaugeSquares>,
): Pick<
  SampleDifference,
  'difference' | 'earlier' | 'later' | 'interval' | 'p' | 'differs' | 'scatter' | 'gaugesUnknown'
> => {
  const found = { difference, earlier, later, scatter, gaugesUnknown: !gauge.isKnown };
  if (error === null) return { ...found, interval: null, p: null, differs: null };
  const times = tQuantile((1 + LEVEL) / 2, error.df);
  const half = Math.hypot(
    times * error.se,
    normalQuantile((1 + LEVEL) / 2) * Math.sqrt(gauge.squares),
  );
  const interval = { lower: difference - half, upper: difference + half };
  return {
    ...found,
    interval,
    // By the same half width, so that it says what the interval says.
    p: half > 0 ? tTwoSided((times * difference) / half, error.df) : difference === 0 ? 1 : 0,
    differs: interval.lower > 0 || interval.upper < 0,
  };
};

const sizesOf = (values: readonly PairValue[]): number[] =>
  [...new Set(values.map(({ sizeMm }) => sizeMm))].sort((a, b) => a - b);

/** Round against round: by size, or in one block of deviations where every size has its nominal. */
const betweenRounds = (
  before: readonly PairValue[],
  after: readonly PairValue[],
  nominal: (sizeMm: number) => number | null,
): {
  readonly blocks: readonly Block[];
  readonly sizes: readonly number[];
  readonly by: number;
} => {
  const all = sizesOf([...before, ...after]);
  if (all.length > 1 && all.every((size) => nominal(size) !== null)) {
    const off = ({ sizeMm, value }: PairValue) => value - (nominal(sizeMm) ?? 0);
    const by = meanOfUnits(after.map(({ sizeMm }) => nominal(sizeMm) ?? 0))?.mean ?? 0;
    return { blocks: [{ first: before.map(off), second: after.map(off) }], sizes: all, by };
  }
  const shared = all.filter((size) =>
    [before, after].every((set) => set.some((one) => one.sizeMm === size)),
  );
  const at = (set: readonly PairValue[], size: number) =>
    set.flatMap(({ sizeMm, value }) => (sizeMm === size ? [value] : []));
  return {
    blocks: shared.map((size) => ({ first: at(before, size), second: at(after, size) })),
    sizes: shared,
    by: 0,
  };
};

/** The later round against what the earlier one was drawn as. */
const againstNominal = (
  after: readonly PairValue[],
  nominal: (sizeMm: number) => number | null,
  least: number,
): (Estimate & { readonly sizes: readonly number[] }) | null => {
  const own = after.flatMap((one) => {
    const drawn = nominal(one.sizeMm);
    return drawn === null ? [] : [{ ...one, drawn }];
  });
  const off = meanOfUnits(own.map(({ value, drawn }) => value - drawn));
  const drawn = meanOfUnits(own.map((one) => one.drawn));
  if (!off || !drawn) return null;
  const scatter = off.sd === null ? null : Math.max(off.sd, least);
  return {
    difference: off.mean,
    earlier: { n: 0, mean: drawn.mean },
    later: { n: off.n, mean: drawn.mean + off.mean },
    scatter,
    error: scatter === null ? null : { se: scatter / Math.sqrt(off.n), df: off.n - 1 },
    sizes: sizesOf(own),
  };
};

/**
 * Two rounds at one place.
 * @param earlier readings of one measure, site and unit on the new pairs of the round before
 * @param later of the round itself
 * @param nominal of the round before, at a size; null where it has none
 * @param usualGauge standard uncertainty that a gauge of unknown error is taken to have, in the unit
 * @returns null where nothing alike was read
 */
export const sampleDifference = (
  earlier: readonly SampleReading[],
  later: readonly SampleReading[],
  nominal: (sizeMm: number) => number | null = () => null,
  usualGauge = 0,
): SampleDifference | null => {
  if (later.length === 0) return null;
  const least = roundingOf([...earlier, ...later]);
  const after = ofPairs(later);
  const { blocks, sizes, by } = betweenRounds(ofPairs(earlier), after, nominal);
  const found = blockedDifference(blocks, least);
  if (found) {
    const { difference, first, second, scatter, error } = found;
    const moved = ({ n, mean }: typeof first) => ({ n, mean: mean + by });
    const estimate = { difference, earlier: moved(first), later: moved(second), scatter, error };
    const isUsed = ({ sizeMm }: SampleReading) => sizes.includes(sizeMm);
    const gauge = gaugeSquares(earlier.filter(isUsed), later.filter(isUsed), usualGauge);
    return { ...withInterval(estimate, gauge), against: 'round', sizes };
  }
  const drawn = againstNominal(after, nominal, least);
  if (!drawn) return null;
  const used = later.filter(({ sizeMm }) => drawn.sizes.includes(sizeMm));
  return {
    ...withInterval(drawn, gaugeSquares([], used, usualGauge)),
    against: 'nominal',
    sizes: drawn.sizes,
  };
};

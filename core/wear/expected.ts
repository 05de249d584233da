/**
 * What will the next reading at a place be, give or take? A range that a right reading leaves once in a thousand
 * times, from what is closest: the same shoe, the other shoe of the pair, other pairs of the round, the blueprint.
 *
 * On the logarithm the next reading is the closest one plus a step, and the step's spread is not known: the range is
 * Student's prediction interval, with four observations' worth of what is usual for the measure (below) added to
 * the steps seen at this place. The spread of those is read at nine tenths of them, so that one wrong reading in ten
 * does not widen it. Tread may wear down to nothing.
 */
import {
  dimensionOf,
  type BenchCheck,
  type Dimension,
  type Measure,
  type MeasureUnit,
  type Reading,
} from '../records/index.ts';
import { groupBy, median, tQuantile } from '../statistics/index.ts';

/** A reading with its pair and time. */
export interface KnownReading extends Pick<
  Reading,
  'measure' | 'site' | 'foot' | 'unit' | 'value' | 'gauge'
> {
  readonly pair: string;
  /** Milliseconds since 1970. */
  readonly atMs: number;
}

/** A reading as the questions about it take it. */
export const knownReading = (
  { pair, at }: Pick<BenchCheck, 'pair' | 'at'>,
  { measure, site, foot, unit, value, gauge }: Reading,
): KnownReading => ({
  pair,
  atMs: Date.parse(at),
  measure,
  site,
  foot,
  unit,
  value,
  ...(gauge !== undefined && { gauge }),
});

export interface Expected {
  readonly from: 'same-shoe' | 'other-shoe' | 'other-pairs' | 'blueprint';
  /** What a right reading lies between, both ends included, in the reading's unit. */
  readonly low: number;
  readonly high: number;
  /** The readings that it comes from, lowest and highest; of a blueprint its limits. */
  readonly least: number;
  readonly most: number;
  readonly readings: number;
}

/** Shares of the value by which two readings of one shoe usually differ. Judgement, no source. */
const STEP: Readonly<Record<Measure, number>> = {
  'stack-height': 0.03,
  hardness: 0.05,
  mass: 0.02,
  'tread-depth': 0.12,
  'impact-peak': 0.08,
  'energy-absorbed': 0.1,
  'energy-returned': 0.06,
  dimension: 0.02,
};
/** Below this nobody reads closer, in the unit. Judgement, no source. */
const LEAST_STEP: Readonly<Partial<Record<MeasureUnit, number>>> = {
  mm: 0.4,
  'asker-c': 1,
  'shore-a': 1,
};
/** Shoes differ from each other, and from their drawing, by so many times a step. Judgement, no source. */
const OTHERS = 1.7;
/** As many observations as the figures above count for. */
const PRIOR = 4;
/** Once in a thousand times, both ends. */
const TAIL = 0.0005;
/** More degrees of freedom change the quantile by less than a hundredth. */
const MOST_DF = 500;
/** Whatever the spread: farther than this many times away is asked about. Judgement, no source. */
const FARTHEST = 3;
/** Of more pairs than this one alone moves nothing: all are taken together. Judgement, no source. */
const MANY_PAIRS = 40;
/** Of a normal distribution nine tenths lie within so many standard deviations. */
const NINE_TENTHS = 1.645;

/** Readings that may be compared: of one measure, unit and site. */
export const placeKey = ({
  measure,
  unit,
  site,
}: Pick<Reading, 'measure' | 'unit' | 'site'>): string => `${measure} ${unit} ${site}`;

/**
 * The spread of steps about zero; a tenth of them may be wrong.
 * @param sizes of the steps, ascending
 * @param without sizes among them that are left out, ascending
 */
const spreadOf = (sizes: readonly number[], without: readonly number[] = []): number => {
  const left = sizes.length - without.length;
  if (left <= 0) return 0;
  let at = Math.ceil(0.9 * left) - 1;
  for (const size of without) if (size <= (sizes[at] as number)) at++;
  return (sizes[at] as number) / NINE_TENTHS;
};

const ascending = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b);

/** Student's quantile by its degrees of freedom: a log asks for the same ones again and again. */
const quantiles = new Map<number, number>();
const quantileOf = (observations: number): number => {
  const df = Math.min(observations, MOST_DF);
  const known = quantiles.get(df) ?? tQuantile(1 - TAIL, df);
  quantiles.set(df, known);
  return known;
};

/** Half width of the range on the logarithm. */
const halfWidth = (usual: number, seen: number, observations: number, ofMean: number): number => {
  const df = PRIOR + observations;
  const variance = (PRIOR * usual ** 2 + observations * seen ** 2) / df;
  return Math.min(Math.log(FARTHEST), quantileOf(df) * Math.sqrt(variance * (1 + ofMean)));
};

const usualStep = (measure: Measure, unit: MeasureUnit, value: number): number =>
  Math.max(STEP[measure], (LEAST_STEP[unit] ?? 0) / value);

type Shoe = Pick<KnownReading, 'pair' | 'measure' | 'site' | 'foot' | 'unit'>;

const isPositive = ({ value }: { readonly value: number }): boolean => value > 0;

/** The sizes of the steps from one reading to the next, on the logarithm. */
const stepsOf = (byTime: readonly KnownReading[]): number[] =>
  byTime
    .slice(1)
    // Not the logarithm of the ratio, which may be beyond what a number can hold.
    .map(({ value }, at) =>
      Math.abs(Math.log(value) - Math.log((byTime[at] as KnownReading).value)),
    );

/** What is known of one place of a round: its readings by pair, and the sizes of their steps, ascending. */
interface KnownPlace {
  readonly byPair: ReadonlyMap<string, readonly KnownReading[]>;
  readonly steps: readonly number[];
  /** Of all pairs, worked out once. */
  readonly all: () => Summary | null;
}

const knownPlace = (readings: readonly KnownReading[]): KnownPlace => {
  const positive = readings.filter(isPositive).sort((a, b) => a.atMs - b.atMs);
  const shoes = groupBy(positive, ({ pair, foot }) => `${pair} ${foot}`);
  const byPair = groupBy(positive, ({ pair }) => pair);
  let all: Summary | null = null;
  return {
    byPair,
    all: () => (all ??= summaryOf(byPair, null)),
    steps: ascending([...shoes.values()].flatMap(stepsOf)),
  };
};

interface Summary {
  /** Their median. */
  readonly middle: number;
  /** On the logarithm. */
  readonly spread: number;
  readonly least: number;
  readonly most: number;
  readonly readings: number;
}

/** The readings of a place, those of one pair left out; null where there is none. */
const summaryOf = (byPair: KnownPlace['byPair'], without: string | null): Summary | null => {
  const values = [...byPair].flatMap(([pair, own]) => (pair === without ? [] : valuesOf(own)));
  const logs = values.map(Math.log);
  const middle = median(logs);
  return middle === null
    ? null
    : {
        middle: Math.exp(middle),
        spread: spreadOf(ascending(logs.map((log) => Math.abs(log - middle)))),
        least: values.reduce((a, b) => Math.min(a, b)),
        most: values.reduce((a, b) => Math.max(a, b)),
        readings: values.length,
      };
};

/** The steps of a shoe from and to one of its readings: they tell nothing of whether it is right. */
const stepsAround = (ofShoe: readonly KnownReading[], one: KnownReading): number[] => {
  const at = ofShoe.indexOf(one);
  return at < 0 ? [] : ascending(stepsOf(ofShoe.slice(Math.max(0, at - 1), at + 2)));
};

/** Readings of one round, for questions about any of its places. */
export interface KnownReadings {
  /**
   * What a reading of this shoe at this time may be, the closest source first; empty where nothing tells.
   * @param without a reading of the log that is asked about itself: it and its steps tell nothing
   */
  readonly expect: (shoe: Shoe, atMs: number, without?: KnownReading) => Iterable<Expected>;
  /** Of a place, by time. */
  readonly at: (key: string) => readonly KnownReading[];
}

/**
 * @param readings of the pairs of one round; what cannot be right is left out before
 * @param blueprint of the round
 */
export const knownReadings = (
  readings: readonly KnownReading[],
  blueprint: readonly Dimension[],
): KnownReadings => {
  const byPlace = groupBy(readings, placeKey);
  const places = new Map<string, KnownPlace>();
  const placeOf = (key: string): KnownPlace => {
    const known = places.get(key) ?? knownPlace(byPlace.get(key) ?? []);
    places.set(key, known);
    return known;
  };
  return {
    at: (key) => [...(byPlace.get(key) ?? [])].sort((a, b) => a.atMs - b.atMs),
    *expect(shoe, atMs, without) {
      const { measure, unit, pair } = shoe;
      const place = placeOf(placeKey(shoe));
      const ownPair = (place.byPair.get(pair) ?? []).filter((one) => one !== without);
      const range = (
        from: Expected['from'],
        middle: number,
        half: number,
        own: readonly number[],
      ): Expected => ({
        from,
        low: measure === 'tread-depth' ? 0 : middle * Math.exp(-half),
        high: middle * Math.exp(half),
        least: Math.min(...own),
        most: Math.max(...own),
        readings: own.length,
      });
      for (const from of ['same-shoe', 'other-shoe'] as const) {
        const own = ownPair.filter(({ foot }) => (foot === shoe.foot) === (from === 'same-shoe'));
        const around =
          without && from === 'same-shoe'
            ? stepsAround(
                (place.byPair.get(pair) ?? []).filter(({ foot }) => foot === shoe.foot),
                without,
              )
            : [];
        const steps = from === 'same-shoe' ? place.steps.length - around.length : 0;
        const spread = spreadOf(place.steps, around);
        // Of a log any reading may be the wrong one: each that is beside it has its say, the closest first.
        for (const { value } of byCloseness(own, atMs).slice(0, without ? own.length : 1)) {
          const usual = usualStep(measure, unit, value) * (from === 'same-shoe' ? 1 : OTHERS);
          yield range(from, value, halfWidth(usual, spread, steps, 0), valuesOf(own));
        }
      }
      const others = place.byPair.size > MANY_PAIRS ? place.all() : summaryOf(place.byPair, pair);
      if (others) {
        const { middle, spread, readings: count, least, most } = others;
        const usual = OTHERS * usualStep(measure, unit, middle);
        const half = halfWidth(usual, spread, count, 1 / count);
        yield { ...range('other-pairs', middle, half, [least, most]), readings: count };
      }
      const drawn = dimensionOf(blueprint, shoe);
      if (drawn) {
        const [least, most] = [drawn.nominal + drawn.lower, drawn.nominal + drawn.upper];
        const middle = (least + most) / 2;
        if (!(middle > 0)) return;
        // A tolerance is read as two standard deviations either way.
        const allowed = (most - least) / 4 / middle;
        const usual = Math.max(allowed, OTHERS * usualStep(measure, unit, middle));
        yield {
          ...range('blueprint', middle, halfWidth(usual, 0, 0, 0), [least, most]),
          readings: 0,
        };
      }
    },
  };
};

const valuesOf = (readings: readonly KnownReading[]): number[] =>
  readings.map(({ value }) => value);

const byCloseness = (readings: readonly KnownReading[], atMs: number): KnownReading[] =>
  readings.toSorted((a, b) => Math.abs(a.atMs - atMs) - Math.abs(b.atMs - atMs) || b.atMs - a.atMs);

/**
 * Can a reading be right? Impossible is what the measure cannot be at all; the rest is held against what was to be
 * expected of this shoe at this place.
 */
import { isIn, rangeOf, type Reading } from '../records/index.ts';
import type { Expected, KnownReading, KnownReadings } from './expected.ts';

export type ReadingDoubt =
  /** Outside of what a reading of this measure can be; `expected` is null where nothing tells. */
  | {
      readonly why: 'impossible';
      readonly expected: Expected | null;
      readonly instead: number | null;
    }
  /** The decimal point one or two places off would make it right: then it reads `instead`. */
  | { readonly why: 'decimal-point'; readonly expected: Expected; readonly instead: number }
  /** Farther from what was to be expected than a right reading is once in a thousand times. */
  | { readonly why: 'unlike-others'; readonly expected: Expected; readonly instead: null };

/** Ways in which a decimal point is missed or put wrong. */
const SLIPS = [10, 0.1, 100, 0.01] as const;
/** More digits than any gauge shows; fewer than a product of decimals gets wrong. */
const DIGITS = 10;

const isWithin = (value: number, { low, high }: Expected): boolean => value >= low && value <= high;

const slipped = (value: number, expected: Expected): number | null => {
  const by = SLIPS.find((factor) => value > 0 && isWithin(value / factor, expected));
  return by === undefined ? null : Number((value / by).toPrecision(DIGITS));
};

/** The doubt about a value by one range; null where it lies within. */
const against = (value: number, expected: Expected): ReadingDoubt | null => {
  if (isWithin(value, expected)) return null;
  const instead = slipped(value, expected);
  return instead === null
    ? { why: 'unlike-others', expected, instead }
    : { why: 'decimal-point', expected, instead };
};

/** Whether a value is one that its measure can have at all. */
export const canBe = ({
  measure,
  unit,
  value,
}: Pick<Reading, 'measure' | 'unit' | 'value'>): boolean => isIn(value, rangeOf(measure, unit));

type Asked = Omit<KnownReading, 'gauge'>;

const impossible = (reading: Asked, ranges: Iterable<Expected>): ReadingDoubt | null => {
  if (canBe(reading)) return null;
  const [expected = null] = ranges;
  return { why: 'impossible', expected, instead: expected && slipped(reading.value, expected) };
};

/** The doubt about a reading while it is typed or imported: by what is closest to it. */
export const doubtAtEntry = (reading: Asked, known: KnownReadings): ReadingDoubt | null => {
  const ranges = [...known.expect(reading, reading.atMs)];
  const [expected] = ranges;
  return impossible(reading, ranges) ?? (expected ? against(reading.value, expected) : null);
};

/**
 * The doubt about a reading of the log. Of two readings that contradict each other the log does not say which is
 * wrong: only one that everything else contradicts too is doubted.
 */
export const doubtInLog = (reading: KnownReading, known: KnownReadings): ReadingDoubt | null => {
  const cannotBe = impossible(reading, known.expect(reading, reading.atMs, reading));
  if (cannotBe) return cannotBe;
  let first: ReadingDoubt | null = null;
  for (const expected of known.expect(reading, reading.atMs, reading)) {
    const doubt = against(reading.value, expected);
    if (doubt === null) return null;
    first ??= doubt;
  }
  return first;
};

/** Whether a doubted reading stays out of every figure until a lead decides; the others count meanwhile. */
export const keepsReadingOut = ({ why }: Pick<ReadingDoubt, 'why'>): boolean =>
  why === 'impossible' || why === 'decimal-point';

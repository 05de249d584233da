/**
 * What can each number be at all? The schemas refuse what lies outside, and forms and readers of tables say the
 * same range in their messages.
 *
 * Two things are told apart. `ranges` is what a record may hold: outside of it the record cannot be read. A bench
 * check holds many readings, and one missed decimal point must not cost the others: there the record takes any
 * `benchFigure`, and {@link rangeOf} says what a reading of that measure can be. A reading outside of it is
 * refused where it is typed or imported.
 *
 * Sources: hardness is read on scales from 0 to 100 (ASTM D2240, ISO 48-4:2018; Asker C likewise, from memory);
 * shares and percentages of energy by definition. Everything else is judgement: well outside of what a shoe, a
 * foot or a runner measures, well inside of what a missed decimal point makes of it, where that can be.
 */
import { unitsOf, type Measure, type MeasureUnit } from './measures.ts';

export type RangeUnit = MeasureUnit | 'm' | 'km' | 's' | 'h' | 'kg' | 'cm' | '°C';

/** Both ends belong to it. */
export interface Range {
  readonly least: number;
  readonly most: number;
  /** Of both ends; null: a plain number. */
  readonly unit: RangeUnit | null;
}

const from = (least: number, most: number, unit: RangeUnit | null = null): Range => ({
  least,
  most,
  unit,
});

export const ranges = {
  /** A run, and what is on a pair. */
  distanceM: from(0, 1_000_000, 'm'),
  /** What a brief asks of a pair. */
  briefDistanceM: from(1000, 1_000_000, 'm'),
  durationS: from(0, 864_000, 's'),
  temperatureC: from(-60, 80, '°C'),
  massKg: from(20, 300, 'kg'),
  heightM: from(0.5, 2.6, 'm'),
  share: from(0, 1),
  lineScore: from(0, 100),
  ten: from(0, 10),
  /** From a small child's foot to the longest known; also the length that a pair or a last is for. */
  footLengthMm: from(100, 400, 'mm'),
  footWidthMm: from(40, 160, 'mm'),
  ballGirthMm: from(100, 400, 'mm'),
  /** The last is longer than the foot by the toe's room. */
  lastLengthMm: from(100, 450, 'mm'),
  /** Growth by 5 mm of foot length. */
  widthPerStepMm: from(0, 10, 'mm'),
  girthPerStepMm: from(0, 20, 'mm'),
  /** How far a pair's size may lie from a foot. */
  sizeAllowanceMm: from(0, 100, 'mm'),
  /** A change that a finding asks for, either way. */
  wantedMm: from(-200, 200, 'mm'),
  /** Whatever the bench measures, in any unit: a record with such a figure can be read and computed with. */
  benchFigure: from(-100_000, 100_000),
  /** Half widths, uncertainties and differences of such figures. */
  benchWidth: from(0, 100_000),
  /** The width of a tolerance that a gauge shall decide: no gauge of a shop reads finer. */
  toleranceWidth: from(0.001, 100_000),
  loadN: from(0, 10_000, 'N'),
  restedH: from(0, 100_000, 'h'),
  steps: from(0, 1_000_000),
  roundOrder: from(1, 1000),
  layers: from(0, 50),
  periods: from(1, 12),
  /** Periods counted from 0; a tester who drops out after the last takes part in all. */
  periodAt: from(0, 12),
  weeks: from(1, 26),
  seed: from(0, Number.MAX_SAFE_INTEGER),
  /** Of a photo or a track, as the hub takes it. */
  attachmentBytes: from(0, 4_194_304),
  /** How many there are of something in a log. */
  count: from(0, 1_000_000_000),
  /** A figure that was computed, and the end of its interval. */
  computed: from(-1e12, 1e12),
  computedM: from(0, 1e12, 'm'),
  /** Evidence multiplies: its figures grow without any physical end. */
  eValue: from(0, Number.MAX_VALUE),
  /** Milliseconds since 1970, as far as a date can be. */
  epochMs: from(0, 8_640_000_000_000_000),
  /** Of a revision in the hub's feed. */
  sequence: from(0, Number.MAX_SAFE_INTEGER),
  version: from(1, 1_000_000),
} as const satisfies Readonly<Record<string, Range>>;

/** What a reading of a measure can be, in each unit it is given in. */
const readingRanges: Readonly<Record<Measure, Partial<Record<MeasureUnit, Range>>>> = {
  'stack-height': { mm: from(1, 100, 'mm') },
  hardness: { 'asker-c': from(0, 100, 'asker-c'), 'shore-a': from(0, 100, 'shore-a') },
  mass: { g: from(20, 2000, 'g') },
  'tread-depth': { mm: from(0, 30, 'mm') },
  'impact-peak': { N: from(10, 20_000, 'N') },
  'energy-absorbed': { J: from(0, 100, 'J'), '%': from(0, 100, '%') },
  'energy-returned': { '%': from(0, 100, '%'), J: from(0, 100, 'J') },
  dimension: { mm: from(0, 600, 'mm') },
};

/** Where a measure is given in a unit that is not its own. */
const unitRanges: Readonly<Record<MeasureUnit, Range>> = {
  mm: from(0, 600, 'mm'),
  g: from(0, 2000, 'g'),
  'asker-c': from(0, 100, 'asker-c'),
  'shore-a': from(0, 100, 'shore-a'),
  N: from(0, 20_000, 'N'),
  J: from(0, 100, 'J'),
  '%': from(0, 100, '%'),
  kPa: from(0, 5000, 'kPa'),
};

/** What a reading of this measure can be; without a unit in the first that the measure is given in. */
export const rangeOf = (measure: Measure, unit: MeasureUnit = unitsOf[measure][0]): Range =>
  readingRanges[measure][unit] ?? unitRanges[unit];

/** Whether a number lies in a range, its ends included. */
export const isIn = (value: number, { least, most }: Range): boolean =>
  value >= least && value <= most;

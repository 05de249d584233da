/**
 * What may the numbers of a record be? Outside of its range a number makes the record unreadable. Used as
 * `ranges.footLengthMm`; single constants, because each name of an object's field would be in the phone's first page.
 *
 * Shares, scores and counts by definition. Everything else is judgement: well outside of what a shoe, a foot or a
 * runner measures, well inside of what a missed decimal point makes of it, where that can be.
 */
import type { MeasureUnit } from './measures.ts';

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

/** A run, and what is on a pair. */
export const distanceM = from(0, 1_000_000, 'm');
/** What a brief asks of a pair. */
export const briefDistanceM = from(1000, 1_000_000, 'm');
export const durationS = from(0, 864_000, 's');
export const temperatureC = from(-60, 80, '°C');
export const massKg = from(20, 300, 'kg');
export const heightM = from(0.5, 2.6, 'm');
export const share = from(0, 1);
export const lineScore = from(0, 100);
/** Of a line with the good point in the middle: 0 is just right. */
export const twoSided = from(-100, 100);
export const ten = from(0, 10);
/** From a small child's foot to the longest known; also the length that a pair or a last is for. */
export const footLengthMm = from(100, 400, 'mm');
export const footWidthMm = from(40, 160, 'mm');
export const ballGirthMm = from(100, 400, 'mm');
/** The last is longer than the foot by the toe's room. */
export const lastLengthMm = from(100, 450, 'mm');
/** Growth by 5 mm of foot length. */
export const widthPerStepMm = from(0, 10, 'mm');
export const girthPerStepMm = from(0, 20, 'mm');
/** How far a pair's size may lie from a foot. */
export const sizeAllowanceMm = from(0, 100, 'mm');
/** A change that a finding asks for, either way. */
export const wantedMm = from(-200, 200, 'mm');
/** By how much a shoe is too short, tight, long or loose somewhere, as its fitter estimates it. */
export const fitMm = from(0.5, 40, 'mm');
/** By how much a part is to be changed, in any unit; {@link changeRangeOf} says what it can be in each. */
export const changeAmount = from(0.01, 2000);
/** Whatever the bench measures, in any unit: a record with such a figure can be read and computed with. */
export const benchFigure = from(-100_000, 100_000);
/** Half widths, uncertainties and differences of such figures. */
export const benchWidth = from(0, 100_000);
/** The width of a tolerance that a gauge shall decide: no gauge of a shop reads finer. */
export const toleranceWidth = from(0.001, 100_000);
export const loadN = from(0, 10_000, 'N');
export const restedH = from(0, 100_000, 'h');
export const steps = from(0, 1_000_000);
export const roundOrder = from(1, 1000);
export const layers = from(0, 50);
/** Points of a durometer's scale (ASTM D2240, ISO 48-4:2018). */
export const hardness = from(0, 100);
export const periods = from(1, 12);
/** Periods counted from 0; a tester who drops out after the last takes part in all. */
export const periodAt = from(0, 12);
export const weeks = from(1, 26);
export const seed = from(0, Number.MAX_SAFE_INTEGER);
/** Of a photo or a track, as the hub takes it. */
export const attachmentBytes = from(0, 4_194_304);
/** How many there are of something in a log. */
export const count = from(0, 1_000_000_000);
/** A figure that was computed, and the end of its interval. */
export const computed = from(-1e12, 1e12);
export const computedM = from(0, 1e12, 'm');
/** Evidence multiplies: its figures grow without any physical end. */
export const eValue = from(0, Number.MAX_VALUE);
/** Milliseconds since 1970, as far as a date can be. */
export const epochMs = from(0, 8_640_000_000_000_000);
/** Of a revision in the hub's feed. */
export const sequence = from(0, Number.MAX_SAFE_INTEGER);
export const version = from(1, 1_000_000);

/** Field schemas that several kinds of record share. */
import * as z from 'zod/mini';
import { twoSidedIds } from '../../foot/index.ts';
import { recordIdSchema } from '../revision.ts';
import { measures, measureUnits } from './measures.ts';
import { numberIn, wholeIn } from './number-in.ts';
import * as ranges from './field-ranges.ts';
import type { Range } from './field-ranges.ts';

export * from './measures.ts';
export * from './number-in.ts';

export const idField = recordIdSchema;

/** An instant as ISO 8601 / RFC 3339 text with its offset from UTC, so that the local day is known. */
export const instantField = z.iso.datetime({ offset: true });

/** One line of text that a person wrote. */
export const lineField = z.string().check(z.minLength(1), z.maxLength(200));

/** Free words, up to some paragraphs. */
export const wordsField = z.string().check(z.maxLength(4000));

export const metresField = numberIn(ranges.distanceM).brand<'Metres'>();
export const secondsField = numberIn(ranges.durationS).brand<'Seconds'>();
/** Millimetres of one thing: each has its own range. */
export const millimetresIn = (range: Range) => numberIn(range).brand<'Millimetres'>();
export const celsiusField = numberIn(ranges.temperatureC).brand<'Celsius'>();
export const kilogramsField = numberIn(ranges.massKg).brand<'Kilograms'>();

/** A share of a whole, 0 to 1. */
export const shareField = numberIn(ranges.share);

/** A point of a 0-100 line (comfort). */
export const lineScoreField = numberIn(ranges.lineScore);

/** A comfort question with the good point in the middle. */
export const twoSidedIdField = z.enum(twoSidedIds);

/** A mark on a line with the good point in the middle: −100 too little, 0 just right, 100 too much. */
export const twoSidedField = numberIn(ranges.twoSided);

/** A whole number 0 to 10 (severity, pain). */
export const tenField = wholeIn(ranges.ten);

export const measureField = z.enum(measures);
export const measureUnitField = z.enum(measureUnits);

/** A reading, a limit or a dimension, whatever it measures; {@link rangeOf} says what can be. */
export const figureOfBenchField = numberIn(ranges.benchFigure);

export const feet = ['left', 'right'] as const;
export type Foot = (typeof feet)[number];
export const footField = z.enum(feet);

export const surfaces = [
  'road',
  'track',
  'treadmill',
  'gravel',
  'trail',
  'grass',
  'sand',
  'snow',
] as const;
export type Surface = (typeof surfaces)[number];
export const surfaceField = z.enum(surfaces);

/** SHA-256 of the bytes of each photo, in the order they were taken. */
export const photosField = z
  .array(z.string().check(z.regex(/^[0-9a-f]{64}$/)))
  .check(z.maxLength(12));

/** Where on the sample a reading is taken: one word, e.g. `heel-centre`; the same word for the same place. */
const SITE = /^[a-z0-9][a-z0-9-]{0,39}$/;
export const siteField = z.string().check(z.regex(SITE));
export const isSite = (text: string): boolean => SITE.test(text);

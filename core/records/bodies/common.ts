/** Field schemas that several kinds of record share. */
import * as z from 'zod/mini';
import { recordIdSchema } from '../revision.ts';

export const idField = recordIdSchema;

/** An instant as ISO 8601 / RFC 3339 text with its offset from UTC, so that the local day is known. */
export const instantField = z.iso.datetime({ offset: true });

/** One line of text that a person wrote. */
export const lineField = z.string().check(z.minLength(1), z.maxLength(200));

/** Free words, up to some paragraphs. */
export const wordsField = z.string().check(z.maxLength(4000));

/** Metres; 0 to 1,000 km. */
export const metresField = z.number().check(z.minimum(0), z.maximum(1_000_000)).brand<'Metres'>();

/** Seconds; 0 to ten days. */
export const secondsField = z.number().check(z.minimum(0), z.maximum(864_000)).brand<'Seconds'>();

export const millimetresField = z.number().brand<'Millimetres'>();
export const celsiusField = z.number().check(z.minimum(-60), z.maximum(80)).brand<'Celsius'>();
export const kilogramsField = z.number().check(z.minimum(20), z.maximum(300)).brand<'Kilograms'>();

/** A share of a whole, 0 to 1. */
export const shareField = z.number().check(z.minimum(0), z.maximum(1));

/** A point of a 0-100 line (comfort). */
export const lineScoreField = z.number().check(z.minimum(0), z.maximum(100));

/** A whole number 0 to 10 (severity, pain). */
export const tenField = z.int().check(z.minimum(0), z.maximum(10));

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

/** What a bench reading measures, with the unit it is given in. */
export const measures = [
  'stack-height',
  'hardness',
  'mass',
  'tread-depth',
  'impact-peak',
  'energy-absorbed',
  'energy-returned',
  'dimension',
] as const;
export type Measure = (typeof measures)[number];
export const measureField = z.enum(measures);

/** mm, g, Asker C and Shore A points, newtons, joules, percent, kilopascals. */
export const measureUnits = ['mm', 'g', 'asker-c', 'shore-a', 'N', 'J', '%', 'kPa'] as const;
export type MeasureUnit = (typeof measureUnits)[number];
export const measureUnitField = z.enum(measureUnits);

/** In which units a measure is given; a limit or a blueprint without a unit means the first. */
export const unitsOf: Readonly<Record<Measure, readonly [MeasureUnit, ...MeasureUnit[]]>> = {
  'stack-height': ['mm'],
  hardness: ['asker-c', 'shore-a'],
  mass: ['g'],
  'tread-depth': ['mm'],
  'impact-peak': ['N'],
  'energy-absorbed': ['J', '%'],
  'energy-returned': ['%', 'J'],
  dimension: ['mm'],
};

/** Where on the sample a reading is taken: one word, e.g. `heel-centre`; the same word for the same place. */
export const siteField = z.string().check(z.regex(/^[a-z0-9][a-z0-9-]{0,39}$/));

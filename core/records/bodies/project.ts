/** What a project, its rounds and its pairs are. */
import * as z from 'zod/mini';
import {
  comfortAttributeIds,
  complaintKinds,
  foamIds,
  partIds,
  zoneCodes,
} from '../../foot/index.ts';
import {
  footField,
  idField,
  instantField,
  lineField,
  lineScoreField,
  measureField,
  measureUnitField,
  metresField,
  figureOfBenchField,
  millimetresIn,
  numberIn,
  wholeIn,
  shareField,
  siteField,
  surfaceField,
  wordsField,
} from './common.ts';
import * as ranges from './field-ranges.ts';
import { structuredChangeSchema } from './structured-change.ts';

/** A limit of the brief: beyond it a pair has failed. */
export const limitSchema = z.looseObject({
  measure: measureField,
  site: z.optional(siteField),
  bound: z.enum(['at-least', 'at-most']),
  value: figureOfBenchField,
  /** `reading`: in the measure's unit; `share-of-new`: of the same pair's reading at 0 km. */
  basis: z.enum(['reading', 'share-of-new']),
});

/** What the shoe is for, and which limits count as failure. */
const briefSchema = z.looseObject({
  runner: z.enum(['neutral', 'stability']),
  use: z.enum(['daily-training', 'long-run', 'tempo', 'race-day', 'trail', 'walking']),
  surfaces: z.array(surfaceField).check(z.minLength(1)),
  /** The distance that a pair must carry. */
  distanceM: numberIn(ranges.briefDistanceM).brand<'Metres'>(),
  /** Share of asked runs in which a complaint is still accepted. */
  allowedRate: z.looseObject({ complaint: shareField, pain: shareField }),
  limits: z.array(limitSchema),
  /** The comfort attributes that testers are asked about, in the order they are asked. */
  attributes: z.array(z.enum(comfortAttributeIds)).check(z.minLength(1)),
  /** The feet that the shoe is made for, in mm from and to. */
  feet: z.optional(
    z.looseObject({
      lengthMm: z.optional(
        z.tuple([millimetresIn(ranges.footLengthMm), millimetresIn(ranges.footLengthMm)]),
      ),
      widthMm: z.optional(
        z.tuple([millimetresIn(ranges.footWidthMm), millimetresIn(ranges.footWidthMm)]),
      ),
    }),
  ),
  words: z.optional(wordsField),
  /** What the lead asks of the testers, read on their phones; never what was changed. */
  forTesters: z.optional(wordsField),
  /** Whether the desk offers to tell testers what came of their reports; absent: it does. Nothing goes by itself. */
  tellTesters: z.optional(z.boolean()),
});

export const projectSchema = z.looseObject({
  name: lineField,
  brief: briefSchema,
  /** Since when it is put away; absent: open. Its pairs can still be worn and logged. */
  archived: z.optional(instantField),
});

export const roundStages = [
  'pullover',
  'first-samples',
  'wear-test-samples',
  'confirmation-samples',
  'production',
] as const;

/** One thing that differs from the round before, and the complaint it was meant to mend. */
const changeSchema = z.looseObject({
  part: z.enum(partIds),
  what: lineField,
  mends: z.optional(
    z.looseObject({ kind: z.enum(complaintKinds), zone: z.optional(z.enum(zoneCodes)) }),
  ),
  /** The same so that it can be measured; absent: said in words alone. */
  structured: z.optional(structuredChangeSchema),
  /** The finding that asked for it, and the proposal that was accepted. */
  finding: z.optional(idField),
  proposal: z.optional(idField),
});

/** A dimension of the blueprint: nominal value with its tolerance as deviations from it. */
const dimensionSchema = z.looseObject({
  measure: measureField,
  site: siteField,
  unit: measureUnitField,
  nominal: figureOfBenchField,
  /** Lowest and highest allowed deviation from nominal; lower is 0 or negative. */
  lower: figureOfBenchField,
  upper: figureOfBenchField,
  /** Absent: the same for both feet. */
  foot: z.optional(footField),
  /** Greatest allowed difference of left and right; absent: not named. */
  leftRight: z.optional(numberIn(ranges.benchWidth)),
});

/** The last that a round is built on, measured at one size, with its steps to the next sizes. */
const lastSchema = z.looseObject({
  name: lineField,
  /** Foot length that the measured last is for, in mm (Mondopoint, ISO 9407). */
  sizeMm: millimetresIn(ranges.footLengthMm),
  /** Length of the last itself. */
  lengthMm: z.optional(millimetresIn(ranges.lastLengthMm)),
  /** Width of the last at the ball. */
  ballWidthMm: z.optional(millimetresIn(ranges.footWidthMm)),
  /** Girth of the last at the ball. */
  ballGirthMm: z.optional(millimetresIn(ranges.ballGirthMm)),
  /** Growth of width and girth for every 5 mm of foot length. */
  widthPerStepMm: z.optional(millimetresIn(ranges.widthPerStepMm)),
  girthPerStepMm: z.optional(millimetresIn(ranges.girthPerStepMm)),
});

export const hardnessUnits = ['asker-c', 'shore-a'] as const;

/** What midsole or outsole is made of, as its maker calls it, and the hardness it was ordered with. */
const compoundSchema = z.looseObject({
  name: z.optional(lineField),
  hardness: z.optional(
    z.looseObject({ value: numberIn(ranges.hardness), unit: z.enum(hardnessUnits) }),
  ),
});

export const roundSchema = z.looseObject({
  project: idField,
  name: lineField,
  /** 1 for the first round of the project. */
  order: wholeIn(ranges.roundOrder),
  stage: z.enum(roundStages),
  changes: z.array(changeSchema),
  /** Foam of the midsole; absent: not said. */
  foam: z.optional(z.enum(foamIds)),
  /** The midsole's foam and the outsole's rubber. */
  midsole: z.optional(compoundSchema),
  outsole: z.optional(compoundSchema),
  blueprint: z.array(dimensionSchema),
  last: z.optional(lastSchema),
  /** Layers of material over a zone of the upper, counted on the sample. */
  layers: z.optional(
    z.array(z.looseObject({ zone: z.enum(zoneCodes), count: wholeIn(ranges.layers) })),
  ),
  words: z.optional(wordsField),
});

export const pairSchema = z.looseObject({
  project: idField,
  round: idField,
  /** What stands on the tongue label. It tells nothing of the build: testers see it. */
  code: z.string().check(z.regex(/^[A-Z0-9][A-Z0-9-]{0,11}$/)),
  /** Foot length that the pair is made for, in mm (Mondopoint, ISO 9407). */
  sizeMm: millimetresIn(ranges.footLengthMm),
  /** Distance on the pair before the test began. */
  carriedInM: z.optional(metresField),
});

/** The comfort scores of one answer, by attribute; an attribute that was not answered is absent. */
export const comfortSchema = z.partialRecord(z.enum(comfortAttributeIds), lineScoreField);

export type Project = z.infer<typeof projectSchema>;
export type Limit = z.infer<typeof limitSchema>;
export type Brief = z.infer<typeof briefSchema>;
export type Round = z.infer<typeof roundSchema>;
export type Change = z.infer<typeof changeSchema>;
export type Dimension = z.infer<typeof dimensionSchema>;
export type Compound = z.infer<typeof compoundSchema>;
export type Last = z.infer<typeof lastSchema>;
export type Pair = z.infer<typeof pairSchema>;
export type Comfort = z.infer<typeof comfortSchema>;

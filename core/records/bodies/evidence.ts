/**
 * What the data said when a finding was written: figures, so that they can be said in any language, and
 * sentences, for whoever wrote them and for an app from before the figures.
 *
 * A word in the figures (how sure, holds or not, better or worse) is any line of text here: a finding with a
 * word that a later version added stays readable, and is then shown by its sentences.
 */
import * as z from 'zod/mini';
import { comfortAttributeIds } from '../../foot/index.ts';
import {
  footField,
  instantField,
  lineField,
  measureField,
  measureUnitField,
  numberIn,
  shareField,
  siteField,
  wholeIn,
  wordsField,
} from './common.ts';
import { limitSchema } from './project.ts';
import * as ranges from './field-ranges.ts';

/** A language by its tag, such as `en` or `zh`. */
export const languageField = z
  .string()
  .check(z.regex(/^[a-z]{2,3}(-[A-Za-z0-9]{1,8})*$/), z.maxLength(35));

/** Metres, also beyond what one pair ever carries: an end of an interval. */
const farField = numberIn(ranges.computedM).brand<'Metres'>();
const figureField = numberIn(ranges.computed);
const intervalSchema = z.looseObject({ lower: figureField, upper: figureField });
const countField = wholeIn(ranges.count);

/** How sure a complaint is, and when and with whom it comes; absent where it was frozen before these were. */
const weighedSchema = z.looseObject({
  /** Shares of testers with two reports or more, and of asked runs. */
  shareTwice: intervalSchema,
  runShare: intervalSchema,
  allowedRate: shareField,
  severity: z.nullable(z.looseObject({ mean: figureField, most: figureField })),
  /** What the e-value must reach. */
  needed: numberIn(ranges.eValue),
  /** Codes of the testers for each of whom it is proven. */
  testers: z.array(lineField),
});

const lookSchema = z.looseObject({
  trend: z.looseObject({ word: lineField, testers: countField, adjustedP: shareField }),
  onset: z.nullable(
    z.looseObject({ medianM: farField, lowerM: farField, upperM: farField, testers: countField }),
  ),
  firstRepeat: z.looseObject({
    medianM: z.nullable(farField),
    repeated: countField,
    testers: countField,
  }),
  /** What it goes together with, as far as that is a hint; of `asked` things that were looked at. */
  hints: z.array(
    z.looseObject({
      factor: lineField,
      goesWith: lineField,
      adjustedP: shareField,
      testers: countField,
    }),
  ),
  asked: countField,
});

/** The counts behind a complaint. */
const complaintFiguresSchema = z.looseObject({
  word: lineField,
  askedRuns: countField,
  askedTesters: countField,
  runs: countField,
  testersOnce: countField,
  testersTwice: countField,
  left: countField,
  right: countField,
  eValue: numberIn(ranges.eValue),
  weighed: z.optional(weighedSchema),
  look: z.optional(lookSchema),
});

/** Median with its 90 % interval. */
const estimateSchema = z.looseObject({
  median: figureField,
  lower: figureField,
  upper: figureField,
  beyondChecks: z.boolean(),
});

const crossingField = z.union([farField, z.literal('beyond-checks')]);

/** How the readings of a place change on a new pair by the brief's distance, and whether limits hold. */
const wearFiguresSchema = z.looseObject({
  briefM: farField,
  /** From the checks, or from what is known of the foam alone. */
  basis: lineField,
  direction: lineField,
  foamKnown: z.boolean(),
  /** To draw it: readings, and the curve of a new pair; absent in findings from before this field was there. */
  course: z.optional(
    z.looseObject({
      readings: z.array(z.looseObject({ x: farField, value: figureField })).check(z.maxLength(200)),
      curve: z
        .array(
          z.looseObject({
            x: farField,
            median: figureField,
            lower: figureField,
            upper: figureField,
          }),
        )
        .check(z.maxLength(50)),
    }),
  ),
  /** Change in the unit, or as a ratio; value where a new pair's start is known. Null: beyond the reach of the checks. */
  atBrief: z.nullable(z.looseObject({ value: z.nullable(estimateSchema), change: estimateSchema })),
  limits: z.array(
    z.looseObject({
      limit: limitSchema,
      hold: z.nullable(z.looseObject({ chance: shareField, word: lineField })),
      /** By where it is crossed with 5, 50 and 95 % probability. */
      distance: z.nullable(
        z.looseObject({ lower: crossingField, median: crossingField, upper: crossingField }),
      ),
      tooFar: z.boolean(),
    }),
  ),
});

/** A reading of a new pair against the blueprint, in the unit of the place. */
const readingFiguresSchema = z.looseObject({
  /** Code of the pair. */
  pair: lineField,
  foot: footField,
  value: figureField,
  /** value − nominal; and how far from nominal the blueprint allows. */
  deviation: figureField,
  lower: figureField,
  upper: figureField,
  /** What is decided, and the chance that this is wrong; null where no uncertainty is known. */
  word: lineField,
  risk: z.nullable(shareField),
  disagree: z.boolean(),
});

/** Comfort of one attribute in a round, points of 100, and against the round before it. */
const comfortFiguresSchema = z.looseObject({
  attribute: z.enum(comfortAttributeIds),
  /** Mean over testers. */
  mean: figureField,
  interval: z.nullable(intervalSchema),
  testers: countField,
  scores: countField,
  /** Null: no earlier round has been scored. Rounds by name. */
  change: z.nullable(
    z.looseObject({
      earlier: lineField,
      later: lineField,
      difference: figureField,
      interval: z.nullable(intervalSchema),
      word: lineField,
    }),
  ),
});

/** Evidence as frozen when the finding was written. */
export const evidenceSchema = z.looseObject({
  until: instantField,
  /** All of it in sentences, in the language of the lead who wrote it. */
  lines: z.array(wordsField),
  /** Of these lines; absent in findings from before this field was there. */
  language: z.optional(languageField),
  /** Of the lines, those that no figure here says anew: the lead's own words. */
  own: z.optional(z.array(wordsField)),
  complaint: z.optional(complaintFiguresSchema),
  /** Of which readings the evidence speaks, so that their curve can be found again. */
  place: z.optional(
    z.looseObject({ measure: measureField, site: siteField, unit: measureUnitField }),
  ),
  /** Of the readings at `place`. */
  wear: z.optional(wearFiguresSchema),
  reading: z.optional(readingFiguresSchema),
  comfort: z.optional(comfortFiguresSchema),
});

export type Evidence = z.infer<typeof evidenceSchema>;
/** The figures of evidence, without when and in which words. */
export type EvidenceFigures = Pick<
  Evidence,
  'complaint' | 'place' | 'wear' | 'reading' | 'comfort'
>;

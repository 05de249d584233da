/**
 * A fit trial: several people try a pair on for some minutes, standing and walking, before anybody runs in it. It is no
 * run: it has no distance, and nothing of it counts as one.
 */
import * as z from 'zod/mini';
import { fitPlaces, zoneCodes } from '../../foot/index.ts';
import { footField, idField, instantField, lineField, numberIn, wordsField } from './common.ts';
import * as ranges from './field-ranges.ts';
import { structuredChangeSchema } from './structured-change.ts';
import { socks } from './wearing.ts';

/** Where and when people try pairs of a round on. Every phone has it, so that it can write without a network. */
export const fitSessionSchema = z.looseObject({
  project: idField,
  round: idField,
  /** What the group calls it, such as the place. */
  name: lineField,
  at: instantField,
  /** The pairs that are tried on. */
  pairs: z.array(idField).check(z.minLength(1), z.maxLength(60)),
  /** Since when phones no longer offer it; absent: it is open. */
  closed: z.optional(instantField),
});

/** Too little of it, just right, too much. */
export const fits = ['little', 'right', 'much'] as const;
export type Fit = (typeof fits)[number];

export const lacings = ['loose', 'usual', 'tight'] as const;
/** Where the heel was tried out: 20 steps, a stair, a minute on the treadmill. */
export const walkWays = ['floor', 'stair', 'treadmill'] as const;
export const heelSlips = ['stays', 'lifts', 'slips-out'] as const;
export type HeelSlip = (typeof heelSlips)[number];
export const fitSpots = ['presses', 'rubs', 'gapes'] as const;
export type FitSpotKind = (typeof fitSpots)[number];
export const fitPains = ['pain', 'numbness'] as const;
export type FitPain = (typeof fitPains)[number];

const fitAnswerSchema = z.looseObject({
  place: z.enum(fitPlaces),
  /** Absent: both feet alike. */
  foot: z.optional(footField),
  fit: z.enum(fits),
  /** By how much it is off, as the fitter estimates it; absent: not said. */
  mm: z.optional(numberIn(ranges.fitMm)),
});

/** What one person said of one pair. */
export const fitTrialSchema = z.looseObject({
  project: idField,
  session: idField,
  pair: idField,
  at: instantField,
  /** A member of the group, or else … */
  tester: z.optional(idField),
  /** … somebody without a membership: a code within the session, never a name. */
  fitter: z.optional(z.string().check(z.regex(/^[A-Z0-9][A-Z0-9-]{0,11}$/))),
  lacing: z.optional(z.enum(lacings)),
  sock: z.optional(z.enum(socks)),
  /** Of both feet, or of each; what is not in it was not answered. */
  standing: z.array(fitAnswerSchema).check(z.maxLength(3 * fitPlaces.length)),
  walked: z.optional(z.enum(walkWays)),
  heel: z.optional(
    z
      .array(z.looseObject({ foot: z.optional(footField), slip: z.enum(heelSlips) }))
      .check(z.maxLength(3)),
  ),
  /** Where it presses, rubs or gapes; empty: nowhere; absent: not answered. */
  spots: z.optional(
    z
      .array(z.looseObject({ foot: footField, zone: z.enum(zoneCodes), what: z.enum(fitSpots) }))
      .check(z.maxLength(60)),
  ),
  /** Empty: neither; absent: not answered. */
  pain: z.optional(z.array(z.enum(fitPains)).check(z.maxLength(fitPains.length))),
  /** What the fitter wants moved. */
  wanted: z.optional(z.array(structuredChangeSchema).check(z.maxLength(20))),
  words: z.optional(wordsField),
});

export type FitSession = z.infer<typeof fitSessionSchema>;
export type FitTrial = z.infer<typeof fitTrialSchema>;
export type FitAnswer = z.infer<typeof fitAnswerSchema>;

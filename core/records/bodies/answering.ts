/** What a lead answers and decides about single records: replies to testers, and what counts. */
import * as z from 'zod/mini';
import { stampSchema } from '../revision.ts';
import {
  footField,
  idField,
  instantField,
  measureField,
  measureUnitField,
  siteField,
  wordsField,
} from './common.ts';

export const advices = ['go-on', 'stay-out'] as const;
export type Advice = (typeof advices)[number];

/**
 * A lead's answer to a tester about one record. A run with pain needs one: go on in this pair, or stay
 * out of it. The latest reply about a record is the one that stands.
 */
export const replySchema = z.looseObject({
  project: idField,
  /** Whom it is for. */
  tester: idField,
  /** The record it is about. */
  about: idField,
  at: instantField,
  advice: z.optional(z.enum(advices)),
  words: z.optional(wordsField),
});

/** A record whose figures a lead may set aside. */
export const decidableKinds = ['run', 'bench-check'] as const;
export type DecidableKind = (typeof decidableKinds)[number];

export const rulings = ['counted', 'set-aside'] as const;
export type Ruling = (typeof rulings)[number];

/**
 * What a lead decided about a run or a reading: whether it counts, and why. It holds for the revision that
 * was judged: a later correction of that record opens the question again. Of several about the same
 * subject the latest stands.
 */
export const decisionSchema = z.looseObject({
  project: idField,
  /** The run or the bench check. */
  record: idField,
  recordKind: z.enum(decidableKinds),
  /** Which reading of the bench check; absent: the whole record. */
  reading: z.optional(
    z.looseObject({
      measure: measureField,
      site: siteField,
      foot: footField,
      unit: z.optional(measureUnitField),
    }),
  ),
  /** Stamp of the revision that was judged. */
  judged: stampSchema,
  ruling: z.enum(rulings),
  /** Why, in the lead's words. */
  why: wordsField,
  at: instantField,
});

export type Reply = z.infer<typeof replySchema>;
export type Decision = z.infer<typeof decisionSchema>;

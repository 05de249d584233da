/** What a lead says about single records: replies to testers, what counts, and what is quoted. */
import * as z from 'zod/mini';
import { stampSchema } from '../revision.ts';
import {
  footField,
  idField,
  instantField,
  lineField,
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

/** A record whose words can be quoted. */
export const quotableKinds = ['run', 'damage-report', 'bench-check', 'ranking'] as const;
export type QuotableKind = (typeof quotableKinds)[number];

/**
 * Words of a record that a lead marked, or quoted in a finding. It goes with its source: where that is taken
 * back, the words here are dropped as well, wherever they went.
 */
export const quoteSchema = z.looseObject({
  project: idField,
  /** The record that says it. */
  source: idField,
  sourceKind: z.enum(quotableKinds),
  /** Where in the body, e.g. `words` or `feet.complaints.0.words`. */
  field: lineField,
  /** As they stood there when they were quoted. */
  words: wordsField,
  /** Who said it; absent: the shop. */
  tester: z.optional(idField),
  /** The finding that quotes it; absent: only marked. */
  finding: z.optional(idField),
  at: instantField,
  /** Since when specialists may read it; absent: leads alone. */
  sent: z.optional(instantField),
});

export type Quote = z.infer<typeof quoteSchema>;
export type Reply = z.infer<typeof replySchema>;
export type Decision = z.infer<typeof decisionSchema>;

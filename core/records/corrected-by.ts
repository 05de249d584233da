/** Who put a record right on somebody's behalf, when, and why? Shared by runs and bench checks. */
import * as z from 'zod/mini';
import { idField, instantField } from './bodies/common.ts';

/**
 * The member who corrected the record, the instant, and the reason in their words (1 to 500 letters). An app that does
 * not know the field keeps it; it goes when the record is saved anew by whom it belongs to.
 */
export const correctedBySchema = z.looseObject({
  by: idField,
  at: instantField,
  why: z.string().check(z.minLength(1), z.maxLength(500)),
});

export type CorrectedBy = z.infer<typeof correctedBySchema>;

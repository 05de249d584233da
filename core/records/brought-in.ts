/** Who brought a run in from a table on its tester's behalf, and when? */
import * as z from 'zod/mini';
import { idField, instantField } from './bodies/common.ts';

/**
 * The lead who brought the run in and the instant, the same for all of one table. An app that does not know the field
 * keeps it; it goes when the tester saves the run anew.
 */
export const broughtInSchema = z.looseObject({
  by: idField,
  at: instantField,
  /** The table named the day and no hour: the hour of the start is made up. */
  dayOnly: z.optional(z.literal(true)),
});

export type BroughtIn = z.infer<typeof broughtInSchema>;

/** Whether only the day of a run is known, so that the hour of its start is said nowhere. */
export const isDayOnly = (run: {
  readonly dayOnly?: true | undefined;
  readonly broughtIn?: BroughtIn | undefined;
}): boolean => run.dayOnly === true || run.broughtIn?.dayOnly === true;

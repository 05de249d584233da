/** Numbers within a range; their schemas refuse what lies outside with both ends of it. */
import * as z from 'zod/mini';
import type { Range } from './field-ranges.ts';

/** A number within its physical range. */
export const numberIn = ({ least, most }: Range) => {
  const error = `a number from ${least} to ${most}`;
  return z.number().check(z.minimum(least, { error }), z.maximum(most, { error }));
};
/** A whole number within its range. */
export const wholeIn = ({ least, most }: Range) => {
  const error = `a whole number from ${least} to ${most}`;
  return z.int().check(z.minimum(least, { error }), z.maximum(most, { error }));
};

/** Whether a number lies in a range, its ends included. */
export const isIn = (value: number, { least, most }: Range): boolean =>
  value >= least && value <= most;

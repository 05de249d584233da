/** A mark on a line with the good point in the middle, in words. Pure. */
import { degreeOf } from '../../core/foot/two-sided-marks.ts';

export interface MarkWords {
  readonly right: string;
  readonly degree: (degree: 'little' | 'too' | 'far', end: string) => string;
}

/** "a little too soft"; null: not answered. */
export const markInWords = ({
  value,
  low,
  high,
  words,
}: {
  readonly value: number | null;
  readonly low: string;
  readonly high: string;
  readonly words: MarkWords;
}): string | null => {
  if (value === null) return null;
  const degree = degreeOf(value);
  return degree === 'right' ? words.right : words.degree(degree, value < 0 ? low : high);
};

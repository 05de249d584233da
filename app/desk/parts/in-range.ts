/** Whether a number that was typed can be, and the words for it where it cannot. */
import { isIn, type Range } from '../../../core/records/index.ts';
import { formatNumber } from '../../parts/format.ts';
import { d, saidOf, terms } from '../../words/index.ts';
import { rangeInWords } from '../../words/say-range.ts';

/** Which numbers are possible, in the language of the screen. */
export const sayRange = (range: Range): string =>
  rangeInWords(range, { desk: d(), glossary: terms(), number: formatNumber });

/**
 * What is wrong with a number of a form, with the field's label; null where nothing is.
 * @param value undefined: the field was left empty, which it may be; null: what was typed is no number
 */
export const numberTrouble = (
  label: string,
  value: number | null | undefined,
  range: Range,
): string | null => {
  if (value === undefined) return null;
  if (value === null) return saidOf(label, d().wrongNumber);
  return isIn(value, range) ? null : saidOf(label, sayRange(range));
};

/** The sizes of several pairs as they are typed in one line; pure. */
import { parseDecimal, plainText } from '../../core/units/index.ts';

/** Between two sizes: all of them from the one to the other. */
const RANGE = /\s*(?:[-–—~～至]|\bto\b)\s*/gi;
/** A comma before one digit alone is a decimal one: 42,5. Before two it parts sizes: 40,41. */
const DECIMAL_COMMA = /(\d),(?=\d(?!\d))/g;

const short = (size: number): string => String(Number(size.toFixed(1)));

/** From one size to another in whole ones, or in halves where one end is a half; null: that is no range. */
const between = (from: string, to: string, most: number): readonly string[] | null => {
  const [first, last] = [parseDecimal(from), parseDecimal(to)];
  if (first === null || last === null || last < first) return null;
  const step = Number.isInteger(last - first) ? 1 : 0.5;
  const count = Math.floor((last - first) / step) + 1;
  return count > most ? null : Array.from({ length: count }, (_, at) => short(first + at * step));
};

/**
 * The sizes that a line names: `40 41 42,5`, `40-45`, and `42` alone. Nothing typed are no sizes.
 * @param most a range of more is a slip of the finger
 * @returns as typed, each to be read as a pair's size is; null where a part is no size and no range
 */
export const sizesIn = (typed: string, most: number): readonly string[] | null => {
  const parts = plainText(typed)
    .replace(RANGE, '-')
    .replace(DECIMAL_COMMA, '$1.')
    .split(/[\s,;、，；]+/)
    .filter((part) => part !== '');
  const sizes: string[] = [];
  for (const part of parts) {
    const [from = '', to, ...more] = part.split('-');
    const named = to === undefined ? [from] : more.length > 0 ? null : between(from, to, most);
    if (named === null || named.some((size) => parseDecimal(size) === null)) return null;
    sizes.push(...named);
  }
  return sizes;
};

/** Numbers and lines as they stand in a field. Every draft reads them here; how a number is written: `core/units/typed.ts`. */
import type { Range } from '../../core/records/index.ts';
import { parseDecimal } from '../../core/units/typed.ts';

/** Undefined: not said; null: no number. */
export const typedNumber = (text: string): number | null | undefined =>
  text.trim() === '' ? undefined : parseDecimal(text);

/** A number from `least` to `most`; null where it is none. */
export const typedWithin = (text: string, least: number, most: number): number | null => {
  const value = parseDecimal(text);
  return value !== null && value >= least && value <= most ? value : null;
};

/** A whole number from `least` to `most`; null where it is none. */
export const typedWhole = (text: string, least: number, most: number): number | null => {
  const value = typedWithin(text, least, most);
  return value !== null && Number.isInteger(value) ? value : null;
};

/** The text without spaces around it; undefined where nothing was typed. */
export const typedLine = (text: string): string | undefined => text.trim() || undefined;

/** A range in the unit that the field is typed in. */
export const typedIn = (range: Range, unit: Range['unit'], factor: number): Range => ({
  least: range.least * factor,
  most: range.most * factor,
  unit,
});

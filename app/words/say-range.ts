/** What can a number be, in words? The same in forms, tables and the list of records that cannot be read. */
import type { Range } from '../../core/records/index.ts';
import type { Speaker } from './say-complaint.ts';

/** Which numbers are possible, as a sentence. */
export const rangeInWords = (
  { least, most, unit }: Range,
  { desk, glossary, number }: Pick<Speaker, 'desk' | 'glossary' | 'number'>,
): string => {
  const units: Readonly<Record<string, string>> = glossary.units;
  const named = unit === null ? '' : ` ${units[unit] ?? unit}`;
  return desk.mustBe(`${number(least, 3)}`, `${number(most, 3)}${named}`);
};

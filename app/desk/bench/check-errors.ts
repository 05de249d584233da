/** What is wrong with a check that is typed, in words at its fields. */
import { d } from '../../words/index.ts';
import type { CheckTrouble } from '../../drafts/check.ts';
import type { CircumstanceField, ReadingField, WrongRow } from '../../drafts/check-readings.ts';
import { sayRange } from '../parts/in-range.ts';

export type RowErrors = Partial<Readonly<Record<ReadingField, string>>>;

/** @returns the errors of the fields, and of each row of readings; that no value was typed stands at the first row */
export const checkErrors = (troubles: readonly CheckTrouble[]) => {
  const fields: Partial<Record<'pair' | 'at' | CircumstanceField, string>> = {};
  const rows = new Map<number, RowErrors>();
  const put = (at: number, field: ReadingField, said: string) =>
    rows.set(at, { ...rows.get(at), [field]: said });
  const number = ({ value, range }: Pick<WrongRow, 'value' | 'range'>) =>
    value === null ? d().wrongNumber : sayRange(range);
  for (const trouble of troubles)
    if (trouble.what === 'row') put(trouble.at, trouble.field, number(trouble));
    else if (trouble.what === 'number') fields[trouble.field] = number(trouble);
    else if (trouble.field === 'value') put(0, 'value', d().missing);
    else fields[trouble.field] = d().missing;
  return { fields, row: (at: number): RowErrors => rows.get(at) ?? {} };
};

/** Everything of a project in one file: each table as CSV, the whole as JSON, and what each column means. */
import { strToU8, zipSync } from 'fflate';
import { csvOf } from '../../report/tables/csv.ts';
import type { Table } from '../../report/tables/index.ts';
import { wordsOf } from '../../words/index.ts';

/** @param figures as the worker made them */
export const everythingZip = async ({
  tables,
  json,
}: {
  readonly tables: readonly (Pick<Table, 'name' | 'columns'> & { readonly csv: string })[];
  readonly json: string;
}): Promise<Uint8Array> => {
  // The meanings are fetched with the first file that is saved.
  const { dictionaryJson, dictionaryOf, dictionaryTable } =
    await import('../../report/tables/dictionary.ts');
  const [en, zh] = await Promise.all([wordsOf('en'), wordsOf('zh')]);
  const entries = dictionaryOf(tables, { en, zh });
  const files: Readonly<Record<string, string>> = {
    ...Object.fromEntries(tables.map(({ name, csv }) => [`${name}.csv`, csv])),
    'dictionary.csv': csvOf(dictionaryTable(entries)),
    'dictionary.json': dictionaryJson(entries),
    'review.json': json,
  };
  return zipSync(
    Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])),
  );
};

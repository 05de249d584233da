/** How do many revisions come into the feed at once, in either database? */
import { CompiledQuery, type Transaction } from 'kysely';
import { dialectOf } from './dialect.ts';
import type { Tables } from './schema.ts';

type Row = Tables['revisions'];

/** Every column with its type in PostgreSQL. */
const COLUMNS = {
  group_id: 'text',
  seq: 'bigint',
  id: 'text',
  kind: 'text',
  author: 'text',
  audience: 'text',
  stamp: 'text',
  hash: 'text',
  erased: 'integer',
  attachment: 'text',
  about: 'text',
  json: 'text',
  chain: 'text',
} as const satisfies Record<keyof Row, string>;

const names = Object.keys(COLUMNS) as (keyof Row)[];
const into = `insert into revisions (${names.join(', ')})`;
/** Run once for each row. */
const ONE_ROW = `${into} values (${names.map(() => '?').join(', ')})`;
/** Run once for all rows, each column as one array. */
const ALL_ROWS = `${into} select * from unnest(${names
  .map((name, at) => `$${at + 1}::${COLUMNS[name]}[]`)
  .join(', ')})`;

export const insertRevisions = async (
  tx: Transaction<Tables>,
  rows: readonly Row[],
): Promise<void> => {
  await tx.executeQuery(
    dialectOf(tx) === 'sqlite'
      ? CompiledQuery.raw(
          ONE_ROW,
          rows.map((row) => names.map((name) => row[name])),
        )
      : CompiledQuery.raw(
          ALL_ROWS,
          names.map((name) => rows.map((row) => row[name])),
        ),
  );
};

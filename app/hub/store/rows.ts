/** How are all rows of a table read without holding them all? */
import { sql, type Transaction } from 'kysely';
import type { Tables } from './schema.ts';
import { keysOf, type TableName } from './tables.ts';

/** Fewer of those with bytes in them: a chunk is half a megabyte, an attachment of the first format four. */
export const rowsAtOnce = (table: TableName): number =>
  table === 'chunks' || table === 'attachments' ? 20 : 500;

/** The rows of a table by its key, some at a time; each page begins after the key of the last row. */
export async function* rowsOf(
  tx: Transaction<Tables>,
  table: TableName,
): AsyncGenerator<Readonly<Record<string, unknown>>> {
  const keys: readonly string[] = keysOf[table];
  const columns = sql.join(keys.map((key) => sql.ref(key)));
  const limit = rowsAtOnce(table);
  let last: readonly unknown[] | null = null;
  for (;;) {
    const after: ReturnType<typeof sql> =
      last === null
        ? sql``
        : sql`where (${columns}) > (${sql.join(last.map((value) => sql`${value}`))})`;
    const { rows } = await sql<Record<string, unknown>>`
      select * from ${sql.table(table)} ${after} order by ${columns} limit ${sql.lit(limit)}`.execute(
      tx,
    );
    yield* rows;
    const end = rows.at(-1);
    if (!end || rows.length < limit) return;
    last = keys.map((key) => end[key]);
  }
}

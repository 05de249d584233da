/** How are all rows of a table read without holding them all? */
import { sql, type Transaction } from 'kysely';
import type { Tables } from './schema.ts';
import { keysOf, type TableName } from './tables.ts';

const ROWS_AT_ONCE = 500;
/** Rows with bytes in them: a photo's chunk is half a megabyte. */
const CHUNKS_AT_ONCE = 20;

/** The rows of a table by its key, some at a time; each page begins after the key of the last row. */
export async function* rowsOf(
  tx: Transaction<Tables>,
  table: TableName,
): AsyncGenerator<Readonly<Record<string, unknown>>> {
  const keys: readonly string[] = keysOf[table];
  const columns = sql.join(keys.map((key) => sql.ref(key)));
  const limit = table === 'chunks' ? CHUNKS_AT_ONCE : ROWS_AT_ONCE;
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

/** How do many revisions come into the feed at once, in either database? */
import type { Transaction } from 'kysely';
import type { Tables } from './schema.ts';

/** SQLite takes at most 32,766 values in a statement. */
const ROWS_AT_ONCE = 500;

export const insertRevisions = async (
  tx: Transaction<Tables>,
  rows: readonly Tables['revisions'][],
): Promise<void> => {
  for (let at = 0; at < rows.length; at += ROWS_AT_ONCE)
    await tx
      .insertInto('revisions')
      .values(rows.slice(at, at + ROWS_AT_ONCE))
      .execute();
};

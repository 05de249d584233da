/** Which format is a database in: that of this Pairlog, an older or newer one, or none yet? */
import { sql, type Transaction } from 'kysely';
import type { HubDatabase } from './database.ts';
import { dialectOf } from './dialect.ts';
import { isStep, LAST_STEP } from './migrations.ts';
import type { Tables } from './schema.ts';

/** The names of the tables that are there. */
export const tablesIn = async (
  db: HubDatabase | Transaction<Tables>,
): Promise<ReadonlySet<string>> => {
  const { rows } = await (
    dialectOf(db) === 'sqlite'
      ? sql<{ name: string }>`select name from sqlite_master where type = 'table'`
      : sql<{
          name: string;
        }>`select tablename as name from pg_tables where schemaname = current_schema()`
  ).execute(db);
  return new Set(rows.map(({ name }) => name));
};

/** The last step of the upgrade that a database has taken; null where it has no tables of a hub. */
export const stepOf = async (db: HubDatabase | Transaction<Tables>): Promise<string | null> => {
  if (!(await tablesIn(db)).has('kysely_migration')) return null;
  const { rows } = await sql<{ name: string }>`
    select name from kysely_migration order by name desc limit 1`.execute(db);
  return rows[0]?.name ?? null;
};

export type Format =
  | { readonly what: 'none' }
  /** `step` names the format. */
  | { readonly what: 'current' | 'older' | 'newer'; readonly step: string };

export const formatOf = async (db: HubDatabase): Promise<Format> => {
  const step = await stepOf(db);
  if (step === null) return { what: 'none' };
  return { what: step === LAST_STEP ? 'current' : isStep(step) ? 'older' : 'newer', step };
};

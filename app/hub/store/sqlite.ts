/** Opens the embedded database: write-ahead log, and on disk before any answer leaves. */
import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import SQLite from 'better-sqlite3';
import { Kysely, Migrator, SqliteDialect } from 'kysely';
import { migrations, type Tables } from './schema.ts';

export type HubDatabase = Kysely<Tables>;

/** Opens or makes the database in `file` (`:memory:` for tests) and brings its tables up to date. */
export const openSqlite = async (file: string): Promise<HubDatabase> => {
  if (file !== ':memory:') mkdirSync(dirname(file), { recursive: true });
  const sqlite = new SQLite(file);
  sqlite.pragma('journal_mode = WAL');
  // FULL: a commit is on the disk when it returns, so what was acknowledged survives a pulled plug.
  sqlite.pragma('synchronous = FULL');
  sqlite.pragma('foreign_keys = ON');
  sqlite.pragma('busy_timeout = 5000');
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: sqlite }) });
  const migrator = new Migrator({
    db,
    provider: { getMigrations: () => Promise.resolve({ ...migrations }) },
  });
  const { error } = await migrator.migrateToLatest();
  if (error) throw error instanceof Error ? error : new Error('the database could not be upgraded');
  return db;
};

/** Which of the two databases is behind this? For the few statements in which they differ. */
import { SqliteAdapter, type Transaction } from 'kysely';
import type { HubDatabase } from './database.ts';
import type { Dialect } from './migrations.ts';
import type { Tables } from './schema.ts';

export const dialectOf = (db: HubDatabase | Transaction<Tables>): Dialect =>
  db.getExecutor().adapter instanceof SqliteAdapter ? 'sqlite' : 'postgres';

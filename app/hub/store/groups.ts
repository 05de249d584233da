/** Which group does a hub hold, and has anybody joined it? */
import type { RecordId, Role } from '../../../core/records/index.ts';
import { sql, type Transaction } from 'kysely';
import type { HubDatabase } from './database.ts';
import { dialectOf } from './dialect.ts';
import type { Tables } from './schema.ts';

/** Makes a group; does nothing where it is already there. */
export const makeGroup = async (
  db: HubDatabase | Transaction<Tables>,
  group: RecordId,
  name: string,
  nowMs: number,
): Promise<void> => {
  await db
    .insertInto('groups')
    .values({
      group_id: group,
      name,
      last_seq: 0,
      last_chain: '0000000000000000',
      created_ms: nowMs,
    })
    .onConflict((conflict) => conflict.doNothing())
    .execute();
};

export const firstGroup = async (
  db: HubDatabase | Transaction<Tables>,
): Promise<{ group: RecordId; name: string } | null> => {
  const row = await db
    .selectFrom('groups')
    .select(['group_id', 'name'])
    .orderBy('created_ms')
    .executeTakeFirst();
  return row ? { group: row.group_id as RecordId, name: row.name } : null;
};

/** The first group, made where there is none; of several hubs that start at once on one database one makes it. */
export const makeFirstGroup = (
  db: HubDatabase,
  group: RecordId,
  name: string,
  nowMs: number,
): Promise<{ group: RecordId; name: string } | null> =>
  db.transaction().execute(async (tx) => {
    if (dialectOf(tx) === 'postgres')
      await sql`lock table groups in share row exclusive mode`.execute(tx);
    const known = await firstGroup(tx);
    if (known) return known;
    await makeGroup(tx, group, name, nowMs);
    return { group, name };
  });

/** Whether anybody has joined the group in this role. */
export const hasMember = async (db: HubDatabase, group: RecordId, role: Role): Promise<boolean> =>
  (await db
    .selectFrom('members')
    .select('member_id')
    .where('group_id', '=', group)
    .where('role', '=', role)
    .executeTakeFirst()) !== undefined;

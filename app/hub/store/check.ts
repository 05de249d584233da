/** Is everything that the hub holds whole: each index, each revision, each attachment? */
import { sql, type Transaction } from 'kysely';
import {
  FIRST_CHAIN,
  nextChain,
  parseRevision,
  type Revision,
} from '../../../core/records/index.ts';
import { sha256OfKept } from './attachments.ts';
import type { OpenDatabase } from './database.ts';
import type { Dialect } from './migrations.ts';
import { rowsOf } from './rows.ts';
import type { Tables } from './schema.ts';

export interface CheckReport {
  readonly revisions: number;
  readonly attachments: number;
  /** Attachments that a device has begun to send, or announced. */
  readonly waiting: number;
  readonly indexes: number;
  /** One plain line each; none: all is whole. */
  readonly problems: readonly string[];
  /** What could not be looked at, and why. */
  readonly notes: readonly string[];
}

const checkIndexes = async (
  tx: Transaction<Tables>,
  dialect: Dialect,
): Promise<{ indexes: number; problems: string[]; notes: string[] }> => {
  if (dialect === 'sqlite') {
    const { rows } = await sql<{ integrity_check: string }>`pragma integrity_check`.execute(tx);
    const said = rows.map((row) => row.integrity_check).filter((line) => line !== 'ok');
    const { rows: made } = await sql<{ n: number }>`
      select count(*) as n from sqlite_master where type = 'index'`.execute(tx);
    return {
      indexes: made[0]?.n ?? 0,
      problems: said.map((line) => `database: ${line}`),
      notes: [],
    };
  }
  const { rows: has } = await sql<{ installed: string | null }>`
    select installed_version as installed from pg_available_extensions where name = 'amcheck'`.execute(
    tx,
  );
  if (!has[0]) return { indexes: 0, problems: [], notes: ['indexes: amcheck is not available'] };
  if (has[0].installed === null)
    return {
      indexes: 0,
      problems: [],
      notes: ['indexes: run "create extension amcheck" in this database to have them checked'],
    };
  const { rows: indexes } = await sql<{ oid: number; name: string }>`
    select c.oid::int as oid, c.relname as name from pg_index i
      join pg_class c on c.oid = i.indexrelid
      join pg_am a on a.oid = c.relam
      join pg_namespace n on n.oid = c.relnamespace
     where n.nspname = current_schema() and a.amname = 'btree'`.execute(tx);
  const problems: string[] = [];
  for (const { oid, name } of indexes) {
    await sql`savepoint one_index`.execute(tx);
    try {
      await sql`select bt_index_check(${oid}::oid::regclass, true)`.execute(tx);
    } catch (error) {
      problems.push(`index ${name}: ${(error as Error).message}`);
      await sql`rollback to savepoint one_index`.execute(tx);
    }
  }
  return { indexes: indexes.length, problems, notes: [] };
};

/** The revision in a row's text, or what is wrong with it. */
const readWhole = (json: string): Revision | string => {
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch {
    return 'its text is damaged';
  }
  const read = parseRevision(value);
  return read.ok ? read.revision : read.problem.why;
};

const fits = (row: Tables['revisions'], revision: Revision): boolean =>
  revision.id === row.id &&
  revision.stamp === row.stamp &&
  revision.hash === row.hash &&
  revision.kind === row.kind &&
  revision.author === row.author &&
  (revision.erased === true) === (row.erased === 1);

const checkFeeds = async (tx: Transaction<Tables>) => {
  const problems: string[] = [];
  let revisions = 0;
  let at = null as { readonly group: string; readonly seq: number; readonly chain: string } | null;
  const heads = new Map<string, { last_seq: number; last_chain: string }>();
  for (const row of await tx.selectFrom('groups').selectAll().execute())
    heads.set(row.group_id, row);
  const endOf = (group: string, seq: number, chain: string) => {
    const head = heads.get(group);
    if (head?.last_seq !== seq || head.last_chain !== chain)
      problems.push(`group ${group}: the feed ends at ${seq}, the group says ${head?.last_seq}`);
    heads.delete(group);
  };
  for await (const value of rowsOf(tx, 'revisions')) {
    const row = value as unknown as Tables['revisions'];
    revisions++;
    if (at?.group !== row.group_id) {
      if (at) endOf(at.group, at.seq, at.chain);
      at = { group: row.group_id, seq: 0, chain: FIRST_CHAIN };
    }
    const where = `group ${row.group_id}, revision ${row.seq}`;
    if (row.seq !== at.seq + 1) problems.push(`${where}: the one before it is missing`);
    if (row.chain !== nextChain(at.chain, row.hash as never))
      problems.push(`${where}: the chain does not fit`);
    at = { group: row.group_id, seq: row.seq, chain: row.chain };
    if (row.json === null) continue;
    const said = readWhole(row.json);
    if (typeof said === 'string') problems.push(`${where}: ${said}`);
    else if (!fits(row, said))
      problems.push(`${where}: its row says something else than the revision`);
  }
  if (at) endOf(at.group, at.seq, at.chain);
  for (const [group, head] of heads)
    if (head.last_seq !== 0) problems.push(`group ${group}: none of ${head.last_seq} revisions`);
  return { revisions, problems };
};

const checkAttachments = async (tx: Transaction<Tables>) => {
  const problems: string[] = [];
  let attachments = 0;
  let waiting = 0;
  for await (const value of rowsOf(tx, 'attachments')) {
    const row = value as unknown as Tables['attachments'];
    if (row.complete !== 1) {
      waiting++;
      continue;
    }
    attachments++;
    if ((await sha256OfKept(tx, row.group_id, row.sha256)) !== row.sha256)
      problems.push(`attachment ${row.sha256}: its bytes are not what its name says`);
  }
  // Bytes without their row: nobody can read them, and nothing would drop them.
  const lost = await tx
    .selectFrom('chunks')
    .leftJoin('attachments', (join) =>
      join
        .onRef('attachments.group_id', '=', 'chunks.group_id')
        .onRef('attachments.sha256', '=', 'chunks.sha256'),
    )
    .where('attachments.sha256', 'is', null)
    .select('chunks.sha256')
    .distinct()
    .execute();
  problems.push(...lost.map(({ sha256 }) => `attachment ${sha256}: bytes without their entry`));
  return { attachments, waiting, problems };
};

/** Reads everything once, as it was at one moment, and says what is not whole. */
export const checkHub = ({ db, dialect }: OpenDatabase): Promise<CheckReport> =>
  db
    .transaction()
    .setIsolationLevel('repeatable read')
    .execute(async (tx) => {
      const indexes = await checkIndexes(tx, dialect);
      const feeds = await checkFeeds(tx);
      const files = await checkAttachments(tx);
      return {
        revisions: feeds.revisions,
        attachments: files.attachments,
        waiting: files.waiting,
        indexes: indexes.indexes,
        problems: [...indexes.problems, ...feeds.problems, ...files.problems],
        notes: indexes.notes,
      };
    });

/** How does a group's feed grow, and what of it does a member receive? */
import { sql, type Transaction } from 'kysely';
import {
  FIRST_CHAIN,
  isKind,
  nextChain,
  parseRevision,
  readBody,
  SCHEMA_VERSION,
  type Cursor,
  type PushAnswer,
  type RecordId,
  type Refusal,
  type Revision,
  type Scope,
} from '../../../core/records/index.ts';
import { audienceOfRevision, EVERYONE, mayWrite, type Caller, type HeldRecord } from '../policy.ts';
import type { Tables } from './schema.ts';
import type { HubDatabase } from './sqlite.ts';

type Verdict = PushAnswer['verdicts'][number];

export interface FeedPage {
  /** Revisions as JSON text, ready to be put into an answer. */
  readonly revisions: readonly string[];
  readonly receipts: readonly { id: string; stamp: string; hash: string }[];
  readonly next: Cursor | null;
  readonly more: boolean;
}

/** A page ends at this many characters of JSON even where more rows are allowed. */
const PAGE_CHARACTERS = 2_000_000;

const refused = (why: Refusal, field?: string): Verdict => ({
  verdict: 'refused',
  why,
  ...(field !== undefined && { field }),
});

const heldRecord = async (
  tx: Transaction<Tables>,
  group: string,
  id: string,
): Promise<(HeldRecord & { erased: number }) | null> => {
  const row = await tx
    .selectFrom('revisions')
    .select(['author', 'kind', 'audience', 'erased'])
    .where('group_id', '=', group)
    .where('id', '=', id)
    .orderBy('erased', 'desc')
    .orderBy('stamp', 'desc')
    .orderBy('hash', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row ?? null;
};

/**
 * Adds revisions to a group's feed in one transaction and gives a verdict on each. It has committed
 * when it resolves: what it calls stored is on the disk.
 */
export const pushRevisions = (
  db: HubDatabase,
  group: string,
  caller: Caller,
  values: readonly unknown[],
): Promise<Verdict[]> =>
  db.transaction().execute(async (tx) => {
    const row = await tx
      .selectFrom('groups')
      .select(['last_seq', 'last_chain'])
      .where('group_id', '=', group)
      .executeTakeFirstOrThrow();
    let cursor: Cursor = { seq: Number(row.last_seq), chain: row.last_chain };
    const verdicts: Verdict[] = [];
    for (const value of values) {
      const { verdict, stored } = await judge(tx, group, caller, value);
      verdicts.push(verdict);
      if (stored) cursor = await append(tx, group, cursor, stored);
    }
    await tx
      .updateTable('groups')
      .set({ last_seq: cursor.seq, last_chain: cursor.chain })
      .where('group_id', '=', group)
      .execute();
    return verdicts;
  });

interface Accepted {
  readonly revision: Revision;
  readonly audience: string;
}

const judge = async (
  tx: Transaction<Tables>,
  group: string,
  caller: Caller,
  value: unknown,
): Promise<{ verdict: Verdict; stored?: Accepted }> => {
  const parsed = parseRevision(value);
  if (!parsed.ok) {
    const { problem } = parsed;
    return {
      verdict: refused(problem.why, problem.why === 'not-a-revision' ? problem.field : undefined),
    };
  }
  const { revision } = parsed;
  const { id, stamp, hash, kind, body, sv } = revision;
  const known = await tx
    .selectFrom('revisions')
    .select('seq')
    .where('group_id', '=', group)
    .where('id', '=', id)
    .where('stamp', '=', stamp)
    .where('hash', '=', hash)
    .executeTakeFirst();
  if (known) return { verdict: { verdict: 'known', seq: Number(known.seq) } };
  const held = await heldRecord(tx, group, id);
  if (!mayWrite(caller, revision, held)) return { verdict: refused('not-allowed') };
  if (held?.erased && !revision.erased) return { verdict: refused('erased') };
  // What this hub knows it checks; newer and unknown bodies are kept for those who can read them.
  if (body !== null && isKind(kind) && sv <= SCHEMA_VERSION) {
    const read = readBody(kind, body);
    if (!read.ok) return { verdict: refused('unreadable', `${kind}.${read.problems[0]?.field}`) };
  }
  return {
    verdict: { verdict: 'stored' },
    stored: { revision, audience: audienceOfRevision(revision, held) },
  };
};

const append = async (
  tx: Transaction<Tables>,
  group: string,
  after: Cursor,
  { revision, audience }: Accepted,
): Promise<Cursor> => {
  const cursor = { seq: after.seq + 1, chain: nextChain(after.chain, revision.hash) };
  const { id, kind, author, stamp, hash, body, erased } = revision;
  const named = kind === 'attachment' && body !== null;
  await tx
    .insertInto('revisions')
    .values({
      group_id: group,
      seq: cursor.seq,
      id,
      kind,
      author,
      audience,
      stamp,
      hash,
      erased: erased ? 1 : 0,
      attachment: named ? String(body['sha256']) : null,
      about: named ? String(body['record']) : null,
      json: JSON.stringify(revision),
      chain: cursor.chain,
    })
    .execute();
  if (erased) await takeBack(tx, group, id);
  return cursor;
};

/** Drops the bodies of a record that was taken back, and the attachments that nothing else shows. */
const takeBack = async (tx: Transaction<Tables>, group: string, id: RecordId): Promise<void> => {
  const own = await tx
    .selectFrom('revisions')
    .select('attachment')
    .distinct()
    .where('group_id', '=', group)
    .where('attachment', 'is not', null)
    .where((eb) => eb.or([eb('id', '=', id), eb('about', '=', id)]))
    .where('json', 'is not', null)
    .execute();
  await tx
    .updateTable('revisions')
    .set({ json: null })
    .where('group_id', '=', group)
    .where('erased', '=', 0)
    .where((eb) => eb.or([eb('id', '=', id), eb('about', '=', id)]))
    .execute();
  for (const { attachment } of own) {
    const shown = await tx
      .selectFrom('revisions')
      .select('seq')
      .where('group_id', '=', group)
      .where('attachment', '=', attachment)
      .where('json', 'is not', null)
      .executeTakeFirst();
    if (!shown)
      await tx
        .deleteFrom('attachments')
        .where('group_id', '=', group)
        .where('sha256', '=', attachment as string)
        .execute();
  }
};

/**
 * A page of the feed after `since`. Revisions of the asking device come as receipts, or whole where it
 * asks for that (it may be a copy of another device). Null where the feed at that place is another one: the hub was
 * restored from a backup, or the cursor is not of this hub.
 */
export const pullRevisions = async (
  db: HubDatabase,
  group: string,
  { member }: Caller,
  device: string,
  since: Cursor | null,
  scope: Scope,
  limit: number,
  ownWhole: boolean,
): Promise<FeedPage | null> =>
  db.transaction().execute(async (tx) => {
    const from = since?.seq ?? 0;
    if (since && (await chainAt(tx, group, from)) !== since.chain) return null;
    const columns = ['seq', 'id', 'stamp', 'hash', 'json', 'chain'] as const;
    const after = () =>
      tx
        .selectFrom('revisions')
        .select(columns)
        .where('group_id', '=', group)
        .where('seq', '>', from)
        .orderBy('seq')
        .limit(limit + 1);
    // Three indexed selects: one OR would read the whole feed.
    const parts =
      scope === 'all'
        ? [await after().execute()]
        : [
            await after().where('author', '=', member).execute(),
            await after().where('audience', '=', member).execute(),
            await after().where('audience', '=', EVERYONE).execute(),
          ];
    const bySeq = new Map(parts.flat().map((row) => [Number(row.seq), row]));
    const rows = [...bySeq]
      .sort(([a], [b]) => a - b)
      .slice(0, limit + 1)
      .map(([, row]) => row);
    const revisions: string[] = [];
    const receipts: { id: string; stamp: string; hash: string }[] = [];
    let characters = 0;
    let taken = 0;
    for (const { id, stamp, hash, json } of rows.slice(0, limit)) {
      taken++;
      if (stamp.endsWith(device) && !ownWhole) receipts.push({ id, stamp, hash });
      else if (json !== null) {
        revisions.push(json);
        characters += json.length;
        if (characters > PAGE_CHARACTERS) break;
      }
    }
    const more = taken < rows.length;
    // Without more rows for this member the whole feed was scanned, up to what it is now.
    const last = rows[taken - 1];
    const head = await tx
      .selectFrom('groups')
      .select(['last_seq', 'last_chain'])
      .where('group_id', '=', group)
      .executeTakeFirstOrThrow();
    const next: Cursor =
      more && last
        ? { seq: Number(last.seq), chain: last.chain }
        : { seq: Number(head.last_seq), chain: head.last_chain };
    return { revisions, receipts, more, next: next.seq === 0 ? null : next };
  });

const chainAt = async (
  tx: Transaction<Tables>,
  group: string,
  seq: number,
): Promise<string | null> => {
  if (seq === 0) return FIRST_CHAIN;
  const row = await tx
    .selectFrom('revisions')
    .select('chain')
    .where('group_id', '=', group)
    .where('seq', '=', seq)
    .executeTakeFirst();
  return row?.chain ?? null;
};

/** Whether the database answers at all. */
export const isAlive = async (db: HubDatabase): Promise<boolean> => {
  await sql`select 1`.execute(db);
  return true;
};

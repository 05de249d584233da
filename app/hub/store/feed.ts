/** How does a group's feed grow, and what of it does a member receive? */
import { sql, type Transaction } from 'kysely';
import {
  audienceOfRevision,
  EVERYONE,
  FIRST_CHAIN,
  isKind,
  mayWrite,
  nextChain,
  parseRevisionJson,
  recordNamedIn,
  recordShownIn,
  SCHEMA_VERSION,
  SHA256_PATTERN,
  SPECIALISTS,
  type Caller,
  type Cursor,
  type HeldRecord,
  type PushAnswer,
  type Refusal,
  type Revision,
  type Scope,
} from '../../../core/records/index.ts';
import { wrongField } from '../bodies.ts';
import { dropAttachment } from './attachments.ts';
import type { HubDatabase } from './database.ts';
import { dialectOf } from './dialect.ts';
import { NO_QUOTA, useQuota, type Quota } from './quota.ts';
import { insertRevisions } from './insert-revisions.ts';
import type { Tables } from './schema.ts';
import { sha256 } from './sha256.ts';
import { dropWaking, noteWakeUps } from './waking.ts';

type Verdict = PushAnswer['verdicts'][number];

export interface FeedPage {
  /** Revisions as JSON text, ready to be put into an answer. */
  readonly revisions: readonly string[];
  readonly receipts: readonly { id: string; stamp: string; hash: string }[];
  readonly next: Cursor | null;
  readonly more: boolean;
}

/** A page ends at this many bytes of JSON even where more rows are allowed. */
const PAGE_BYTES = 2_000_000;

const refused = (why: Refusal, field?: string): Verdict => ({
  verdict: 'refused',
  why,
  ...(field !== undefined && { field }),
});

/** What the hub holds of a record: its head decides who may write it, and whether it was taken back. */
interface Held extends HeldRecord {
  readonly stamp: string;
  readonly hash: string;
  readonly erased: boolean;
}

const heldAs = ({ author, kind, stamp, hash, erased }: Revision, audience: string): Held => ({
  author,
  kind,
  audience,
  stamp,
  hash,
  erased: erased === true,
});

/** Which of two revisions of a record is its head: one that takes it back, else the later. */
const headOf = (a: Held | undefined, b: Held): Held => {
  if (!a) return b;
  if (a.erased !== b.erased) return a.erased ? a : b;
  if (a.stamp !== b.stamp) return a.stamp > b.stamp ? a : b;
  return a.hash > b.hash ? a : b;
};

/** The records of a batch as the group holds them. */
interface Group {
  readonly heads: Map<string, Held>;
  /** By what number it knows a revision; the hash alone names one, because it covers the id and the stamp. */
  readonly known: Map<string, number>;
}

const heldOf = async (
  tx: Transaction<Tables>,
  group: string,
  ids: readonly string[],
): Promise<Group> => {
  const held: Group = { heads: new Map(), known: new Map() };
  if (ids.length === 0) return held;
  const rows = await tx
    .selectFrom('revisions')
    .select(['id', 'stamp', 'hash', 'seq', 'author', 'kind', 'audience', 'erased'])
    .where('group_id', '=', group)
    // One value for all of them, so that a batch of any size is the same statement.
    .where(
      dialectOf(tx) === 'sqlite'
        ? sql<boolean>`id in (select value from json_each(${JSON.stringify(ids)}))`
        : sql<boolean>`id = any(${ids})`,
    )
    .execute();
  for (const { erased, ...row } of rows) {
    held.known.set(row.hash, row.seq);
    held.heads.set(row.id, headOf(held.heads.get(row.id), { ...row, erased: erased === 1 }));
  }
  return held;
};

/**
 * Takes the group's feed for this transaction alone, and answers where it stands. The first statement of
 * every transaction that writes to a feed: two hubs on one database wait for each other here.
 */
const takeFeed = async (tx: Transaction<Tables>, group: string): Promise<Cursor> => {
  const row = await tx
    .updateTable('groups')
    .set((eb) => ({ last_seq: eb.ref('last_seq') }))
    .where('group_id', '=', group)
    .returning(['last_seq', 'last_chain'])
    .executeTakeFirstOrThrow();
  return { seq: row.last_seq, chain: row.last_chain };
};

interface ReadRevision {
  readonly revision: Revision;
  /** Its canonical JSON: what is kept, and goes out again. */
  readonly json: string;
}

/** A value as a revision, checked as far as this hub can: newer and unknown bodies are kept as they are. */
const readRevision = (value: unknown): ReadRevision | { verdict: Verdict } => {
  const parsed = parseRevisionJson(value, sha256);
  if (!parsed.ok) {
    const { problem } = parsed;
    return {
      verdict: refused(problem.why, problem.why === 'not-a-revision' ? problem.field : undefined),
    };
  }
  const { kind, body, sv } = parsed.revision;
  if (body !== null && isKind(kind) && sv <= SCHEMA_VERSION) {
    const field = wrongField(kind, body);
    if (field !== null) return { verdict: refused('unreadable', `${kind}.${field}`) };
  }
  return { revision: parsed.revision, json: parsed.json };
};

export type PushOutcome =
  | { readonly what: 'done'; readonly verdicts: Verdict[] }
  /** The member has sent as much today as a member may; nothing of the batch was taken. */
  | { readonly what: 'over-quota' };

/**
 * Adds revisions to a group's feed in one transaction and gives a verdict on each. It has committed
 * when it resolves: what it calls stored is on the disk, and with it whom it is to wake.
 * @param nowMs milliseconds since 1970; null: nobody is woken
 */
export const pushRevisions = async (
  db: HubDatabase,
  group: string,
  caller: Caller,
  values: readonly unknown[],
  quota: Quota = NO_QUOTA,
  nowMs: number | null = null,
): Promise<PushOutcome> => {
  const read = values.map(readRevision);
  const ids = new Set<string>();
  for (const one of read) {
    if ('verdict' in one) continue;
    const about = recordNamedIn(one.revision);
    ids.add(one.revision.id);
    if (about !== null) ids.add(about);
  }
  const outcome = await db.transaction().execute(async (tx): Promise<PushOutcome> => {
    let cursor = await takeFeed(tx, group);
    const held = await heldOf(tx, group, [...ids]);
    const rows: RevisionRow[] = [];
    const verdicts = read.map((one): Verdict => {
      if ('verdict' in one) return one.verdict;
      const { revision, json } = one;
      const verdict = judge(held, caller, revision);
      if (verdict.verdict !== 'stored') return verdict;
      const before = held.heads.get(revision.id);
      const audience = audienceOfRevision(revision, before ?? null);
      cursor = { seq: cursor.seq + 1, chain: nextChain(cursor.chain, revision.hash, sha256) };
      rows.push(rowOf(group, cursor, revision, json, audience));
      held.known.set(revision.hash, cursor.seq);
      held.heads.set(revision.id, headOf(before, heldAs(revision, audience)));
      return verdict;
    });
    if (rows.length === 0) return { what: 'done', verdicts };
    if (!(await useQuota(tx, group, caller, { revisions: rows.length }, quota)))
      return { what: 'over-quota' };
    await insertRevisions(tx, rows);
    await tx
      .updateTable('groups')
      .set({ last_seq: cursor.seq, last_chain: cursor.chain })
      .where('group_id', '=', group)
      .execute();
    for (const { id, kind, erased } of rows) {
      if (erased !== 1) continue;
      await takeBack(tx, group, id);
      if (kind === 'tester') await dropWaking(tx, group, id);
    }
    if (nowMs !== null) await noteWakeUps(tx, group, rows, nowMs);
    return { what: 'done', verdicts };
  });
  if (read.some((one) => 'revision' in one && one.revision.erased)) await emptyLog(db);
  return outcome;
};

/** What was taken back stands in SQLite's write-ahead log until that is written over: it is emptied at once. */
const emptyLog = async (db: HubDatabase): Promise<void> => {
  if (dialectOf(db) === 'sqlite') await sql`pragma wal_checkpoint(truncate)`.execute(db);
};

const judge = (held: Group, caller: Caller, revision: Revision): Verdict => {
  const seq = held.known.get(revision.hash);
  if (seq !== undefined) return { verdict: 'known', seq };
  const head = held.heads.get(revision.id) ?? null;
  const named = recordNamedIn(revision);
  const about = named === null ? null : (held.heads.get(named) ?? null);
  if (!mayWrite(caller, revision, head, about)) return refused('not-allowed');
  if (head?.erased && !revision.erased) return refused('erased');
  // Nor a photo of a record that was taken back, whichever device still had it to send.
  if (about?.erased && recordShownIn(revision) !== null) return refused('erased');
  return { verdict: 'stored' };
};

type RevisionRow = Tables['revisions'];

/** What a body of a newer version names, where it still names it as this one does: the column is an index. */
const textOf = (value: unknown, pattern: RegExp): string | null =>
  typeof value === 'string' && pattern.test(value) ? value : null;

const rowOf = (
  group: string,
  { seq, chain }: Cursor,
  revision: Revision,
  json: string,
  audience: string,
): RevisionRow => {
  const { id, kind, author, stamp, hash, body, erased } = revision;
  const named = kind === 'attachment' && body !== null;
  return {
    group_id: group,
    seq,
    id,
    kind,
    author,
    audience,
    stamp,
    hash,
    erased: erased ? 1 : 0,
    attachment: named ? textOf(body['sha256'], SHA256_PATTERN) : null,
    about: recordShownIn(revision),
    json,
    chain,
  };
};

/** Drops the bodies of a record that was taken back, the quotes of it, and the attachments that nothing else shows. */
const takeBack = async (tx: Transaction<Tables>, group: string, id: string): Promise<void> => {
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
    if (!shown) await dropAttachment(tx, group, attachment as string);
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
  { member, role }: Caller,
  device: string,
  since: Cursor | null,
  scope: Scope,
  limit: number,
  ownWhole: boolean,
): Promise<FeedPage | null> =>
  // One picture of the feed for all that is read here, whatever another hub adds meanwhile.
  db
    .transaction()
    .setIsolationLevel('repeatable read')
    .execute(async (tx) => {
      const from = since?.seq ?? 0;
      if (since && (await chainAt(tx, group, from)) !== since.chain) return null;
      // The sizes first: a page ends by them, and what is beyond it is not read.
      const size = sql<number | null>`octet_length(json)`.as('size');
      const after = () =>
        tx
          .selectFrom('revisions')
          .select(['seq', 'id', 'stamp', 'hash', 'chain', size])
          .where('group_id', '=', group)
          .where('seq', '>', from)
          .orderBy('seq')
          .limit(limit + 1);
      // Three indexed selects: one OR would read the whole feed.
      const parts =
        scope === 'all'
          ? [await after().execute()]
          : role === 'specialist'
            ? [
                await after().where('audience', '=', SPECIALISTS).execute(),
                await after()
                  .where('audience', '=', EVERYONE)
                  .where('kind', '=', 'project')
                  .execute(),
                // Their own sketches: a receipt is what was sent seen again.
                await after().where('author', '=', member).execute(),
                // Whoever was sent a quote hears that its source was taken back.
                await after()
                  .where('erased', '=', 1)
                  .where('id', 'in', (eb) =>
                    eb
                      .selectFrom('revisions as quote')
                      .select('quote.about')
                      .where('quote.group_id', '=', group)
                      .where('quote.audience', '=', SPECIALISTS)
                      .where('quote.kind', '=', 'quote')
                      .where('quote.about', 'is not', null),
                  )
                  .execute(),
              ]
            : [
                await after().where('author', '=', member).execute(),
                await after().where('audience', '=', member).execute(),
                await after().where('audience', '=', EVERYONE).execute(),
              ];
      const bySeq = new Map(parts.flat().map((row) => [row.seq, row]));
      const rows = [...bySeq]
        .sort(([a], [b]) => a - b)
        .slice(0, limit + 1)
        .map(([, row]) => row);
      const whole: number[] = [];
      const receipts: { id: string; stamp: string; hash: string }[] = [];
      let bytes = 0;
      let taken = 0;
      for (const { seq, id, stamp, hash, size: length } of rows.slice(0, limit)) {
        taken++;
        if (stamp.endsWith(device) && !ownWhole) receipts.push({ id, stamp, hash });
        else if (length !== null) {
          whole.push(seq);
          bytes += length;
          if (bytes > PAGE_BYTES) break;
        }
      }
      const revisions = await jsonAt(tx, group, whole);
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
          ? { seq: last.seq, chain: last.chain }
          : { seq: head.last_seq, chain: head.last_chain };
      return { revisions, receipts, more, next: next.seq === 0 ? null : next };
    });

/** The revisions at these numbers as JSON text, in their order. */
const jsonAt = async (
  tx: Transaction<Tables>,
  group: string,
  seqs: readonly number[],
): Promise<string[]> => {
  if (seqs.length === 0) return [];
  const rows = await tx
    .selectFrom('revisions')
    .select('json')
    .where('group_id', '=', group)
    .where('seq', 'in', seqs)
    .where('json', 'is not', null)
    .orderBy('seq')
    .execute();
  return rows.map(({ json }) => json as string);
};

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

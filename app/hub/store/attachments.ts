/** Photos, tracks and reports, named by the SHA-256 of their bytes, received in chunks that may stop and go on. */
import { createHash } from 'node:crypto';
import type { Transaction } from 'kysely';
import {
  EVERYONE,
  MAX_ATTACHMENT_BYTES,
  SPECIALISTS,
  type Caller,
  type RecordId,
  type Sha256,
} from '../../../core/records/index.ts';
import type { HubDatabase } from './database.ts';
import { dialectOf } from './dialect.ts';
import { NO_QUOTA, useQuota, type Quota } from './quota.ts';
import type { Tables } from './schema.ts';

export type ChunkOutcome =
  | { readonly what: 'more'; readonly received: number }
  | { readonly what: 'complete' }
  /** The chunk does not begin where the last one ended. */
  | { readonly what: 'wrong-offset'; readonly received: number }
  /** `not-named`: no live record of the caller shows it. */
  | { readonly what: 'too-large' | 'hash-differs' | 'over-quota' | 'not-named' };

/** Bytes received so far, or that all are there. */
export const attachmentState = async (
  db: HubDatabase,
  group: RecordId,
  sha256: Sha256,
): Promise<{ complete: boolean; received: number }> => {
  const row = await db
    .selectFrom('attachments')
    .select(['complete', 'received'])
    .where('group_id', '=', group)
    .where('sha256', '=', sha256)
    .executeTakeFirst();
  return { complete: row?.complete === 1, received: row?.received ?? 0 };
};

/** The chunks in their order. */
const chunksOf = async (
  db: HubDatabase | Transaction<Tables>,
  group: string,
  sha256: string,
): Promise<Uint8Array[]> => {
  const rows = await db
    .selectFrom('chunks')
    .select('bytes')
    .where('group_id', '=', group)
    .where('sha256', '=', sha256)
    .orderBy('start')
    .execute();
  return rows.map(({ bytes }) => bytes);
};

/** SHA-256 in hex of what is kept of an attachment. */
export const sha256OfKept = async (
  db: HubDatabase | Transaction<Tables>,
  group: string,
  sha256: string,
): Promise<string> => {
  const hash = createHash('sha256');
  for (const bytes of await chunksOf(db, group, sha256)) hash.update(bytes);
  return hash.digest('hex');
};

/** Drops an attachment with its bytes. */
export const dropAttachment = async (
  tx: Transaction<Tables>,
  group: string,
  sha256: string,
): Promise<void> => {
  // The row first: a chunk that is being written holds it, and its bytes are only then seen.
  for (const table of ['attachments', 'chunks'] as const)
    await tx.deleteFrom(table).where('group_id', '=', group).where('sha256', '=', sha256).execute();
};

/**
 * Whether a record that the caller wrote, or any where a lead carries them, names the attachment. On
 * PostgreSQL a take-back of that record waits until the chunk is written, and then drops it.
 */
const isNamed = async (
  tx: Transaction<Tables>,
  group: RecordId,
  sha256: Sha256,
  { member, role }: Caller,
): Promise<boolean> => {
  const named = await tx
    .selectFrom('revisions')
    .select('seq')
    .where('group_id', '=', group)
    .where('attachment', '=', sha256)
    .where('json', 'is not', null)
    .$if(role !== 'lead', (query) => query.where('author', '=', member))
    .$if(dialectOf(tx) === 'postgres', (query) => query.forShare())
    .limit(1)
    .executeTakeFirst();
  return named !== undefined;
};

/** Takes one chunk. At the last one the whole is hashed, and dropped where it is not what its name says. */
export const takeChunk = (
  db: HubDatabase,
  group: RecordId,
  caller: Caller,
  sha256: Sha256,
  chunk: { offset: number; length: number; mediaType: string; bytes: Uint8Array },
  quota: Quota = NO_QUOTA,
): Promise<ChunkOutcome> =>
  db.transaction().execute(async (tx) => {
    if (chunk.length > MAX_ATTACHMENT_BYTES) return { what: 'too-large' };
    // Rows are taken in the order in which a push that takes records back takes them (DEVELOPERS.md): the
    // member's usage, what names the attachment, the attachment. Otherwise the two wait in a circle.
    await useQuota(tx, group, caller, {}, quota);
    // What no record shows any more, or never did, is not kept: it was taken back before it came.
    if (!(await isNamed(tx, group, sha256, caller))) return { what: 'not-named' };
    // Held from here on: of two devices with the same photo one goes first.
    const row = await tx
      .insertInto('attachments')
      .values({
        group_id: group,
        sha256,
        media_type: chunk.mediaType,
        length: chunk.length,
        received: 0,
        complete: 0,
      })
      .onConflict((conflict) =>
        conflict
          .columns(['group_id', 'sha256'])
          .doUpdateSet((eb) => ({ received: eb.ref('attachments.received') })),
      )
      .returning(['received', 'complete', 'length'])
      .executeTakeFirstOrThrow();
    if (row.complete === 1) return { what: 'complete' };
    if (chunk.offset !== row.received) return { what: 'wrong-offset', received: row.received };
    // Begun with another length, by whoever it was: it begins anew.
    if (chunk.length !== row.length) {
      await dropAttachment(tx, group, sha256);
      return { what: 'wrong-offset', received: 0 };
    }
    const received = row.received + chunk.bytes.length;
    if (received > row.length) return { what: 'too-large' };
    if (!(await useQuota(tx, group, caller, { attachmentBytes: chunk.bytes.length }, quota))) {
      if (row.received === 0) await dropAttachment(tx, group, sha256);
      return { what: 'over-quota' };
    }
    await tx
      .insertInto('chunks')
      .values({ group_id: group, sha256, start: chunk.offset, bytes: Buffer.from(chunk.bytes) })
      .execute();
    const complete = received === row.length;
    if (complete && (await sha256OfKept(tx, group, sha256)) !== sha256) {
      await dropAttachment(tx, group, sha256);
      return { what: 'hash-differs' };
    }
    await tx
      .updateTable('attachments')
      .set({ received, complete: complete ? 1 : 0 })
      .where('group_id', '=', group)
      .where('sha256', '=', sha256)
      .execute();
    return complete ? { what: 'complete' } : { what: 'more', received };
  });

/** Whether the caller may see a record that names the attachment. */
const mayRead = async (
  db: HubDatabase,
  group: RecordId,
  sha256: Sha256,
  { member, role }: Caller,
): Promise<boolean> => {
  if (role === 'lead') return true;
  const named = db
    .selectFrom('revisions')
    .select('revisions.seq')
    .where('revisions.group_id', '=', group)
    .where('revisions.attachment', '=', sha256)
    .where('revisions.json', 'is not', null);
  const shown =
    role === 'specialist'
      ? // An attachment goes to specialists with the finding or report that shows it.
        named
          .innerJoin('revisions as shown', (join) =>
            join
              .onRef('shown.group_id', '=', 'revisions.group_id')
              .onRef('shown.id', '=', 'revisions.about'),
          )
          .where('shown.audience', '=', SPECIALISTS)
          .where('shown.json', 'is not', null)
      : named.where((eb) =>
          eb.or([eb('author', '=', member), eb('audience', 'in', [member, EVERYONE])]),
        );
  return (await shown.limit(1).executeTakeFirst()) !== undefined;
};

/** The bytes, where they are all there and the caller may see a record that names them. */
export const readAttachment = async (
  db: HubDatabase,
  group: RecordId,
  sha256: Sha256,
  caller: Caller,
): Promise<{ bytes: Uint8Array; mediaType: string } | null> => {
  if (!(await mayRead(db, group, sha256, caller))) return null;
  const row = await db
    .selectFrom('attachments')
    .select('media_type')
    .where('group_id', '=', group)
    .where('sha256', '=', sha256)
    .where('complete', '=', 1)
    .executeTakeFirst();
  if (!row) return null;
  return { bytes: Buffer.concat(await chunksOf(db, group, sha256)), mediaType: row.media_type };
};

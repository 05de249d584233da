/** Photos and tracks, named by the SHA-256 of their bytes, received in chunks that may stop and go on. */
import {
  MAX_ATTACHMENT_BYTES,
  sha256OfBytes,
  type RecordId,
  type Sha256,
} from '../../../core/records/index.ts';
import { EVERYONE, type Caller } from '../policy.ts';
import type { HubDatabase } from './sqlite.ts';

export type ChunkOutcome =
  | { readonly what: 'more'; readonly received: number }
  | { readonly what: 'complete' }
  /** The chunk does not begin where the last one ended. */
  | { readonly what: 'wrong-offset'; readonly received: number }
  | { readonly what: 'too-large' | 'hash-differs' };

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
  return { complete: row?.complete === 1, received: Number(row?.received ?? 0) };
};

/** Takes one chunk. At the last one the whole is hashed, and dropped where it is not what its name says. */
export const takeChunk = (
  db: HubDatabase,
  group: RecordId,
  sha256: Sha256,
  chunk: { offset: number; length: number; mediaType: string; bytes: Uint8Array },
): Promise<ChunkOutcome> =>
  db.transaction().execute(async (tx) => {
    const row = await tx
      .selectFrom('attachments')
      .selectAll()
      .where('group_id', '=', group)
      .where('sha256', '=', sha256)
      .executeTakeFirst();
    if (row?.complete === 1) return { what: 'complete' };
    const before = row ? Buffer.from(row.bytes) : Buffer.alloc(0);
    if (chunk.offset !== before.length) return { what: 'wrong-offset', received: before.length };
    const bytes = Buffer.concat([before, chunk.bytes]);
    if (chunk.length > MAX_ATTACHMENT_BYTES || bytes.length > chunk.length)
      return { what: 'too-large' };
    const complete = bytes.length === chunk.length;
    if (complete && sha256OfBytes(bytes) !== sha256) {
      await tx
        .deleteFrom('attachments')
        .where('group_id', '=', group)
        .where('sha256', '=', sha256)
        .execute();
      return { what: 'hash-differs' };
    }
    const values = {
      media_type: chunk.mediaType,
      length: chunk.length,
      received: bytes.length,
      complete: complete ? 1 : 0,
      bytes,
    };
    await tx
      .insertInto('attachments')
      .values({ group_id: group, sha256, ...values })
      .onConflict((conflict) => conflict.columns(['group_id', 'sha256']).doUpdateSet(values))
      .execute();
    return complete ? { what: 'complete' } : { what: 'more', received: bytes.length };
  });

/** The bytes, where they are all there and the caller may see a record that names them. */
export const readAttachment = async (
  db: HubDatabase,
  group: RecordId,
  sha256: Sha256,
  { member, role }: Caller,
): Promise<{ bytes: Uint8Array; mediaType: string } | null> => {
  if (role !== 'lead') {
    const shown = await db
      .selectFrom('revisions')
      .select('seq')
      .where('group_id', '=', group)
      .where('attachment', '=', sha256)
      .where((eb) => eb.or([eb('author', '=', member), eb('audience', 'in', [member, EVERYONE])]))
      .executeTakeFirst();
    if (!shown) return null;
  }
  const row = await db
    .selectFrom('attachments')
    .select(['bytes', 'media_type'])
    .where('group_id', '=', group)
    .where('sha256', '=', sha256)
    .where('complete', '=', 1)
    .executeTakeFirst();
  return row ? { bytes: row.bytes, mediaType: row.media_type } : null;
};

/** Where are the bytes of photos and tracks, and which of them has the hub not got yet? */
import type { Revision, Sha256 } from '../../core/records/index.ts';
import type { StoreContext } from './context.ts';
import type { HubClient } from './hub-client.ts';
import { done, saveProblemOf, type Outcome, type SaveProblem } from './outcome.ts';

export interface AttachmentStore {
  /** Keeps a photo or track here. It is sent once a record that shows it is saved. */
  putAttachment(bytes: Uint8Array, mediaType: string): Promise<Outcome<Sha256, SaveProblem>>;
  /** From this device, else from the hub (and kept); null where neither has it now. */
  attachment(sha256: Sha256): Promise<{ bytes: Uint8Array; mediaType: string } | null>;
  /** Frees the room of one that no saved record shows. */
  dropAttachment(sha256: Sha256): Promise<void>;
  /** No longer waits for a damaged one to be added again; what of it is here stays. */
  giveUpDamaged(sha256: Sha256): Promise<void>;
}

/** The first page shows photos, and neither adds nor fetches them. */
const hashing = () => import('../../core/records/hash.ts');

/** Whether one of these attachment records, as they are now, names the bytes. */
const isNamed = (sha256: Sha256, records: readonly Revision[]): boolean =>
  records.some(({ body }) => body?.['sha256'] === sha256);

export const attachmentStore = (
  { withDatabase, changes }: StoreContext,
  hub: () => Promise<HubClient | null>,
): AttachmentStore => {
  const keep = (sha256: Sha256, mediaType: string, bytes: ArrayBuffer, from: 'here' | 'hub') =>
    withDatabase(async (db) => {
      const tx = db.transaction(['attachments', 'attachmentOutbox', 'heads'], 'readwrite', {
        durability: 'strict',
      });
      // Bytes, not a Blob: Safari has lost Blobs kept in IndexedDB (workbox issue 1908).
      await tx.objectStore('attachments').put({ sha256, mediaType, bytes });
      const outbox = tx.objectStore('attachmentOutbox');
      // One that was damaged is whole again; one that a record shows already may have been given up.
      const heads = tx.objectStore('heads').index('kind');
      if (
        (await outbox.getKey(sha256)) !== undefined ||
        (from === 'here' && isNamed(sha256, await heads.getAll('attachment')))
      )
        await outbox.put({ sha256 });
      await tx.done;
    });

  return {
    async putAttachment(bytes, mediaType) {
      const { sha256OfBytes } = await hashing();
      const sha256 = sha256OfBytes(bytes);
      try {
        await keep(sha256, mediaType, bytes.slice().buffer, 'here');
      } catch (error) {
        return { ok: false, ...saveProblemOf(error) };
      }
      changes.tell({ kinds: new Set(['attachment']) });
      return done(sha256);
    },
    async attachment(sha256) {
      const held = await withDatabase((db) => db.get('attachments', sha256));
      if (held) return { bytes: new Uint8Array(held.bytes), mediaType: held.mediaType };
      const answer = await (await hub())?.attachment(sha256);
      if (!answer?.ok) return null;
      const { bytes, mediaType } = answer.value;
      const { sha256OfBytes } = await hashing();
      if (sha256OfBytes(new Uint8Array(bytes)) !== sha256) return null;
      await keep(sha256, mediaType, bytes, 'hub').catch(() => undefined);
      return { bytes: new Uint8Array(bytes), mediaType };
    },
    dropAttachment: (sha256) =>
      withDatabase(async (db) => {
        const tx = db.transaction(['attachments', 'heads'], 'readwrite');
        const named = await tx.objectStore('heads').index('kind').getAll('attachment');
        if (!isNamed(sha256, named)) await tx.objectStore('attachments').delete(sha256);
        await tx.done;
      }),
    async giveUpDamaged(sha256) {
      await withDatabase((db) => db.delete('attachmentOutbox', sha256));
      changes.tell({ kinds: new Set() });
    },
  };
};

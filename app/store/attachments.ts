/** Where are the bytes of photos and tracks, and which of them has the hub not got yet? */
import { sha256OfBytes, type Sha256 } from '../../core/records/index.ts';
import type { StoreContext } from './context.ts';
import type { HubClient } from './hub-client.ts';
import { done, saveProblemOf, type Outcome, type SaveProblem } from './outcome.ts';

export interface AttachmentStore {
  putAttachment(bytes: Uint8Array, mediaType: string): Promise<Outcome<Sha256, SaveProblem>>;
  /** From this device, else from the hub (and kept); null where neither has it now. */
  attachment(sha256: Sha256): Promise<{ bytes: Uint8Array; mediaType: string } | null>;
}

export const attachmentStore = (
  { withDatabase, changes }: StoreContext,
  hub: () => Promise<HubClient | null>,
): AttachmentStore => {
  const keep = (sha256: Sha256, mediaType: string, bytes: ArrayBuffer, send: boolean) =>
    withDatabase(async (db) => {
      const tx = db.transaction(['attachments', 'attachmentOutbox'], 'readwrite', {
        durability: 'strict',
      });
      // Bytes, not a Blob: Safari has lost Blobs kept in IndexedDB (workbox issue 1908).
      await tx.objectStore('attachments').put({ sha256, mediaType, bytes });
      if (send) await tx.objectStore('attachmentOutbox').put({ sha256 });
      await tx.done;
    });

  return {
    async putAttachment(bytes, mediaType) {
      const sha256 = sha256OfBytes(bytes);
      try {
        await keep(sha256, mediaType, bytes.slice().buffer, true);
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
      if (sha256OfBytes(new Uint8Array(bytes)) !== sha256) return null;
      await keep(sha256, mediaType, bytes, false).catch(() => undefined);
      return { bytes: new Uint8Array(bytes), mediaType };
    },
  };
};

/** Sends what the hub has not got, one at a time; stops at the first that fails and goes on next time. */
export const sendAttachments = async (
  { withDatabase }: StoreContext,
  hub: HubClient,
): Promise<void> => {
  for (const { sha256 } of await withDatabase((db) => db.getAll('attachmentOutbox'))) {
    const held = await withDatabase((db) => db.get('attachments', sha256));
    if (held) {
      const sent = await hub.sendAttachment(sha256, held.bytes, held.mediaType);
      if (!sent.ok) return;
    }
    await withDatabase((db) => db.delete('attachmentOutbox', sha256));
  }
};

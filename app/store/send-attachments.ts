/** How do the bytes of photos and tracks get to the hub? */
import { sha256OfBytes, type ErrorCode, type Sha256 } from '../../core/records/index.ts';
import type { StoreContext } from './context.ts';
import type { HubClient } from './hub-client.ts';

/** The hub takes none now, whatever it is: a day's quota is used up, or its disk is full. */
const LATER: ReadonlySet<ErrorCode> = new Set(['too-many-requests', 'storage-full', 'internal']);

/**
 * Sends what the hub has not got, one at a time, each from where it stopped last time.
 * @returns false where the network went away before all were sent
 */
export const sendAttachments = async (
  { withDatabase, changes }: StoreContext,
  hub: HubClient,
): Promise<boolean> => {
  const setAside = async (sha256: Sha256) => {
    await withDatabase((db) => db.put('attachmentOutbox', { sha256, damaged: true }));
    changes.tell({ kinds: new Set() });
  };
  const shown = new Set(
    (await withDatabase((db) => db.getAllFromIndex('heads', 'kind', 'attachment'))).map(
      ({ body }) => body?.['sha256'],
    ),
  );
  for (const { sha256, damaged } of await withDatabase((db) => db.getAll('attachmentOutbox'))) {
    // What no record shows any more stays here, or goes with it: the hub would not take it.
    if (!shown.has(sha256)) {
      await withDatabase((db) => db.delete('attachmentOutbox', sha256));
      continue;
    }
    if (damaged) continue;
    const held = await withDatabase((db) => db.get('attachments', sha256));
    if (held) {
      const sent = await hub.sendAttachment(sha256, held.bytes, held.mediaType);
      // One that the hub would not take must not keep the others from going; a hub that is full must.
      if (!sent.ok && sent.why === 'hub-error' && !LATER.has(sent.code)) {
        // Damaged here, it would be refused for ever; whatever else it was may pass.
        if (sha256OfBytes(new Uint8Array(held.bytes)) !== sha256) await setAside(sha256);
        continue;
      }
      if (!sent.ok) return false;
    }
    await withDatabase((db) => db.delete('attachmentOutbox', sha256));
    changes.tell({ kinds: new Set(['attachment']) });
  }
  return true;
};

/** What does a device send while no page of it is open? One round of sync, without the rest of the store. */
import { membership } from './membership.ts';
import { openContext } from './open-context.ts';
import { syncing, type SyncOutcome } from './sync.ts';

/**
 * Sends what waits on this device. Photos and tracks go only where the person lets them over any network:
 * without a page nobody can say which one this is.
 */
export const sendWaiting = async (): Promise<SyncOutcome> => {
  const context = openContext({ maySendAttachments: () => false });
  try {
    const settings = (await context.withDatabase((db) => db.get('settings', 'settings'))) as
      { photos?: unknown } | undefined;
    return await syncing(context, membership(context)).sync({
      attachmentsNow: settings?.photos !== 'unmetered',
    });
  } finally {
    context.changes.close();
    await context.close();
  }
};

/** The device's store as the screens see it: one object over the rooms of this folder. */
import type { Revision, Sha256 } from '../../core/records/index.ts';
import type { AttachmentStore } from './attachments.ts';
import type { Changes } from './changes.ts';
import type { RefusedRevision } from './database.ts';
import type { FileStore } from './files.ts';
import { hubLater } from './hub-later.ts';
import { keyedStore, type KeyedStore } from './keyed.ts';
import type { Membership } from './membership.ts';
import { DEFAULT_NAME, openContext, type StoreOptions } from './open-context.ts';
import { recordStore, type RecordStore } from './records.ts';
import type { Syncing } from './sync.ts';

/** A photo or track whose bytes on this device are not what they were, so that it cannot be sent. */
export interface DamagedAttachment {
  readonly sha256: Sha256;
  /** The record that shows it as it is now; null where that is not here. */
  readonly shownBy: Revision | null;
}

/** What the hub has not got, or would not take. */
export interface Unsent {
  readonly revisions: number;
  /** Those that wait, without the damaged ones. */
  readonly attachments: number;
  readonly damaged: readonly DamagedAttachment[];
  /** When the oldest of them was saved, milliseconds since 1970; null where there is none. */
  readonly oldestMs: number | null;
  readonly refused: readonly RefusedRevision[];
}

export interface Store
  extends
    RecordStore,
    KeyedStore,
    AttachmentStore,
    FileStore,
    Syncing,
    Membership,
    Pick<Changes, 'subscribe'> {
  unsent(): Promise<Unsent>;
  /** Whether this browser once held a member's store that is gone now: it was cleared. */
  wasEvicted(): Promise<boolean>;
  close(): Promise<void>;
}

/** A mark outside of the database: browsers that evict one may leave the other. */
const mark = (name: string): void => {
  if (typeof document !== 'undefined')
    document.cookie = `${name}-member=1; max-age=31536000; path=/; samesite=strict`;
};

const isMarked = (name: string): boolean =>
  typeof document !== 'undefined' && document.cookie.includes(`${name}-member=1`);

/** Opens the store of this device. */
export const openStore = (options: StoreOptions = {}): Store => {
  const name = options.name ?? DEFAULT_NAME;
  const context = openContext(options);
  const { changes } = context;
  const member = hubLater(context);
  changes.subscribe((change) => {
    if ('kinds' in change && change.kinds.has('session')) mark(name);
  });
  // What the first screen does without comes when it is asked for: photos and tracks, packing and reading of files.
  const attachments = async () =>
    (await import('./attachments.ts')).attachmentStore(context, member.hub);
  const files = async () =>
    (await import('./files.ts')).fileStore(context, (await attachments()).attachment);
  return {
    ...recordStore(context),
    ...keyedStore(context),
    putAttachment: async (...words) => (await attachments()).putAttachment(...words),
    attachment: async (sha256) => (await attachments()).attachment(sha256),
    dropAttachment: async (sha256) => (await attachments()).dropAttachment(sha256),
    giveUpDamaged: async (sha256) => (await attachments()).giveUpDamaged(sha256),
    exportFile: async (what) => (await files()).exportFile(what),
    previewFile: async (file) => (await files()).previewFile(file),
    importFile: async (file, chosen) => (await files()).importFile(file, chosen),
    ...member,
    subscribe: changes.subscribe,
    unsent: () =>
      context.withDatabase(async (db) => {
        const tx = db.transaction(['outbox', 'attachmentOutbox', 'refused', 'heads']);
        const [outbox, attachments, refused] = await Promise.all([
          tx.objectStore('outbox').getAll(),
          tx.objectStore('attachmentOutbox').getAll(),
          tx.objectStore('refused').getAll(),
        ]);
        const damaged = attachments.filter((one) => one.damaged);
        const heads = tx.objectStore('heads');
        const naming = damaged.length > 0 ? await heads.index('kind').getAll('attachment') : [];
        const shownBy = async (sha256: Sha256) => {
          const record = naming.find(({ body }) => body?.['sha256'] === sha256)?.body?.['record'];
          return typeof record === 'string' ? ((await heads.get(record)) ?? null) : null;
        };
        const stamps = outbox.map(({ stamp }) => Number.parseInt(stamp.slice(0, 12), 16));
        return {
          revisions: outbox.length,
          attachments: attachments.length - damaged.length,
          damaged: await Promise.all(
            damaged.map(async ({ sha256 }) => ({ sha256, shownBy: await shownBy(sha256) })),
          ),
          oldestMs: stamps.length === 0 ? null : Math.min(...stamps),
          refused,
        };
      }),
    wasEvicted: async () => (await member.session()) === null && isMarked(name),
    async close() {
      changes.close();
      await context.close();
    },
  };
};

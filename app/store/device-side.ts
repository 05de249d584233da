/** The device's part in a round of sync, on its own tables. */
import {
  clockAfterReceiving,
  type Clock,
  type Revision,
  type Sha256,
} from '../../core/records/index.ts';
import type { StoreContext } from './context.ts';
import { newDevice } from './new-ids.ts';
import { dropQuotesOfGone } from './quotes-gone.ts';
import { clockIn, keyOf, putRevisions, RECORD_TABLES, type Writing } from './revisions.ts';
import type { Session } from './session.ts';
import { cursorIn } from './cursor.ts';
import type { DeviceSide } from './sync-round.ts';

/** A hub and a device whose clocks differ by less agree well enough. */
const CLOCK_TOLERANCE_MS = 120_000;

export const deviceSide = (context: StoreContext, session: Session): DeviceSide => {
  const { withDatabase, now, changes } = context;
  return {
    cursor: () => cursorIn(context),

    async takePage({ revisions, receipts, next, hubNow }) {
      const touched = await takeRevisions(context, revisions, async (tx) => {
        const outbox = tx.objectStore('outbox');
        // A device that takes in a whole group has nothing to send, and need not ask for each.
        if ((await outbox.count()) > 0)
          await Promise.all([...receipts, ...revisions].map((one) => outbox.delete(keyOf(one))));
        const meta = tx.objectStore('meta');
        if (next === null) await meta.delete('cursor');
        else await meta.put(next, 'cursor');
        const offset = hubNow - now();
        await meta.put(Math.abs(offset) > CLOCK_TOLERANCE_MS ? offset : 0, 'clockOffset');
      });
      if (touched.size > 0 || receipts.length > 0) changes.tell({ kinds: touched });
    },

    startOver: () =>
      withDatabase(async (db) => {
        const tx = db.transaction(RECORD_TABLES, 'readwrite', { durability: 'strict' });
        const held = [
          ...(await tx.objectStore('heads').getAll()),
          ...(await tx.objectStore('superseded').getAll()),
        ];
        for (const revision of held)
          if (session.role === 'lead' || revision.author === session.member)
            await tx.objectStore('outbox').put(revision);
        // The hub says of each which part of it is there, so what it still has is not sent again.
        for (const { kind, body } of held) {
          const sha256 =
            kind === 'attachment' ? (body?.['sha256'] as Sha256 | undefined) : undefined;
          if (sha256 && (await tx.objectStore('attachments').getKey(sha256)))
            await tx.objectStore('attachmentOutbox').put({ sha256 });
        }
        await tx.objectStore('meta').delete('cursor');
        await tx.done;
      }),

    unsent: (after, limit) =>
      withDatabase((db) =>
        db.getAll('outbox', after ? IDBKeyRange.lowerBound(keyOf(after), true) : null, limit),
      ),

    lacksAny: (receipts) =>
      withDatabase(async (db) => {
        for (const { id, stamp, hash } of receipts) {
          const head = await db.get('heads', id);
          if (head?.hash === hash || head?.erased) continue;
          if (!(await db.getKey('superseded', [id, stamp, hash]))) return true;
        }
        return false;
      }),

    async settle(revisions) {
      await withDatabase(async (db) => {
        const tx = db.transaction('outbox', 'readwrite');
        for (const revision of revisions) await tx.store.delete(keyOf(revision));
        await tx.done;
      });
      changes.tell({ kinds: new Set() });
    },

    async setAside(refused) {
      await withDatabase(async (db) => {
        const tx = db.transaction(['outbox', 'refused'], 'readwrite', { durability: 'strict' });
        for (const { revision, verdict } of refused) {
          const { id, stamp, hash } = revision;
          const why = verdict.why ?? 'unknown';
          const field = verdict.field ?? null;
          // A quote of what was taken back is kept nowhere: the next page drops it.
          if (revision.kind !== 'quote' || why !== 'erased')
            await tx.objectStore('refused').put({ id, stamp, hash, revision, why, field });
          await tx.objectStore('outbox').delete(keyOf(revision));
        }
        await tx.done;
      });
      changes.tell({ kinds: new Set() });
    },
  };
};

/**
 * Takes revisions from elsewhere in one transaction, with whatever else belongs into it.
 * @returns the kinds of the records that changed
 */
export const takeRevisions = (
  context: StoreContext,
  revisions: readonly Revision[],
  also: (tx: Writing, fresh: readonly Revision[]) => Promise<void>,
): Promise<ReadonlySet<string>> =>
  context.withDatabase(async (db) => {
    const concerns = revisions.some(({ kind, erased }) => erased || kind === 'quote');
    const tx = db.transaction(RECORD_TABLES, 'readwrite') as unknown as Writing;
    const nowMs = context.now();
    let clock: Clock = await clockIn(tx, () => newDevice(context));
    const fresh = await putRevisions(tx, revisions);
    if (concerns) await dropQuotesOfGone(tx, revisions);
    for (const { stamp } of revisions) clock = clockAfterReceiving(clock, nowMs, stamp);
    await tx.objectStore('meta').put(clock, 'clock');
    await also(tx, fresh);
    await tx.done;
    const kinds = new Set(fresh.map(({ kind }) => kind));
    // What was taken back took the quotes of it along.
    return fresh.some(({ erased }) => erased) ? kinds.add('quote') : kinds;
  });

/** How does a revision get into the device's tables? All inside a transaction. */
import { unwrap, type IDBPTransaction, type StoreNames } from 'idb';
import {
  addToHistory,
  newClock,
  type Clock,
  type DeviceId,
  type History,
  type RecordId,
  type Revision,
} from '../../core/records/index.ts';
import type { Tables } from './database.ts';
import { historyOf, rangeOf, type Reading } from './histories.ts';

/** The tables that every change of records touches together. */
export const RECORD_TABLES = [
  'heads',
  'superseded',
  'outbox',
  'meta',
  'attachments',
  'attachmentOutbox',
] as const;

export type Writing = IDBPTransaction<Tables, StoreNames<Tables>[], 'readwrite'>;

export const keyOf = ({ id, stamp, hash }: Pick<Revision, 'id' | 'stamp' | 'hash'>) =>
  [id, stamp, hash] as [string, string, string];

/** What a record that was taken back showed leaves the device with it, unless another record shows it too. */
const dropBytes = async (tx: Writing, { head, older }: History): Promise<void> => {
  const named = new Set(
    [head, ...older].flatMap(({ kind, body }) =>
      kind === 'attachment' && typeof body?.['sha256'] === 'string' ? [body['sha256']] : [],
    ),
  );
  if (named.size === 0) return;
  for (const { body } of await tx.objectStore('heads').index('kind').getAll('attachment'))
    named.delete(String(body?.['sha256']));
  for (const sha256 of named) {
    await tx.objectStore('attachments').delete(sha256);
    await tx.objectStore('attachmentOutbox').delete(sha256);
  }
};

/** Writes the difference between two states of one record's history. */
export const putHistory = async (
  tx: Writing,
  before: History | undefined,
  after: History,
): Promise<void> => {
  if (before === after) return;
  const { head } = after;
  // Nobody waits for this one alone: a page brings a thousand. Where it fails the transaction does.
  if (before?.head !== head) unwrap(tx.objectStore('heads')).put(head);
  if (head.erased) {
    await tx.objectStore('superseded').delete(rangeOf(head.id));
    await tx.objectStore('outbox').delete(rangeOf(head.id));
    if (before) await dropBytes(tx, before);
    return;
  }
  const known = new Set(before?.older.map(({ hash }) => hash));
  for (const older of after.older)
    if (!known.has(older.hash)) await tx.objectStore('superseded').put(older);
};

/** Keys asked for at once at most, where which of some records are held is asked with one question. */
const MOST_KEYS = 5000;

/**
 * The records of these that may be held. Ids sort by time, so a page of new records lies close together: one
 * question for the keys between the first and the last of them stands for one a record.
 */
const heldAmong = async (tx: Reading, ids: readonly RecordId[]): Promise<readonly RecordId[]> => {
  const sorted = [...ids].sort();
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (first === undefined || last === undefined) return [];
  const range = IDBKeyRange.bound(first, last);
  const keys = await tx.objectStore('heads').getAllKeys(range, MOST_KEYS);
  if (keys.length === MOST_KEYS) return ids;
  const there = new Set(keys);
  return ids.filter((id) => there.has(id));
};

/**
 * Adds revisions; answers those that were new. What is held of all their records is asked for at once, and
 * written once a record: one by one, a whole group takes several times as long.
 */
export const putRevisions = async (
  tx: Writing,
  revisions: readonly Revision[],
): Promise<readonly Revision[]> => {
  const ids = [...new Set(revisions.map(({ id }) => id))];
  const held = await heldAmong(tx, ids);
  const histories = await Promise.all(held.map((id) => historyOf(tx, id)));
  const before = new Map(held.map((id, at) => [id, histories[at]]));
  const after = new Map(before);
  const fresh: Revision[] = [];
  for (const revision of revisions) {
    const known = after.get(revision.id);
    const next = addToHistory(known, revision);
    if (next !== known) fresh.push(revision);
    after.set(revision.id, next);
  }
  await Promise.all(
    ids.map(async (id) => {
      const history = after.get(id);
      if (history) await putHistory(tx, before.get(id), history);
    }),
  );
  return fresh;
};

/** The device's clock; a device without one is new and gets its name here. */
export const clockIn = async (tx: Reading, newDevice: () => DeviceId): Promise<Clock> =>
  ((await tx.objectStore('meta').get('clock')) as Clock | undefined) ?? newClock(newDevice());

/**
 * The member's own records as a file, read from the database without the app. It is a plain bundle
 * (`core/records/bundle.ts`), without photos and tracks.
 */
import type { Revision } from '../../core/records/index.ts';
import type { Session } from '../store/index.ts';

const answered = <T>(asked: IDBRequest<T>): Promise<T> =>
  new Promise((done, fail) => {
    asked.onsuccess = () => done(asked.result);
    asked.onerror = () => fail(asked.error ?? new Error('not read'));
  });

/** Opens the app's database; rejects where there is none yet, which must not be made here. */
export const openDatabase = (): Promise<IDBDatabase> => {
  const opening = indexedDB.open('pairlog');
  opening.onupgradeneeded = () => opening.transaction?.abort();
  return answered(opening);
};

const table = (db: IDBDatabase, name: string): IDBObjectStore =>
  db.transaction(name).objectStore(name);

const revisionsIn = (db: IDBDatabase, name: string): Promise<Revision[]> =>
  answered(table(db, name).getAll() as IDBRequest<Revision[]>);

export const session = (db: IDBDatabase): Promise<Session | undefined> =>
  answered(table(db, 'meta').get('session'));

/** The language that was chosen in the settings, if one was. */
export const savedLanguage = async (db: IDBDatabase): Promise<unknown> =>
  ((await answered(table(db, 'settings').get('settings'))) as { language?: unknown } | undefined)
    ?.language;

const digestOf = async (text: string): Promise<string> => {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
};

/** Every revision that the member wrote, as a bundle; rejects where it cannot be read or there is no member. */
export const ownLog = async (db: IDBDatabase): Promise<{ name: string; bytes: Uint8Array }> => {
  const { member, group, groupName } = (await session(db)) as Session;
  const revisions = [...(await revisionsIn(db, 'superseded')), ...(await revisionsIn(db, 'heads'))];
  db.close();
  const madeAt = new Date().toISOString();
  const header = { format: 'pairlog-bundle', v: 1, madeAt, group, groupName, by: member };
  const own = revisions.filter(({ author }) => author === member);
  const text = [header, ...own].map((line) => `${JSON.stringify(line)}\n`).join('');
  // Without a secure page there is no digest: the file is read all the same, and said to have lost its end.
  const end = crypto.subtle
    ? `${JSON.stringify({ end: true, count: own.length, digest: await digestOf(text) })}\n`
    : '';
  return {
    name: `pairlog-${madeAt.slice(0, 10)}.pairlog`,
    bytes: new TextEncoder().encode(text + end),
  };
};

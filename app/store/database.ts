/**
 * The device's database, and how to get at it although browsers lose connections.
 *
 * Safari drops the connection of a page that slept (WebKit bugs 197050 and 277615), and another tab may
 * ask for an upgrade at any time; so every use goes through `withDatabase`, which opens anew and tries
 * again up to three times, and rejects at last, so that nobody believes in a write that never was.
 *
 * A browser may put a page aside instead of ending it, to show it again at "back". WebKit does so in the midst
 * of a transaction, which then waits with the page and lets no other page write, nor in the end read (seen in
 * WebKitGTK; the open question of w3c/IndexedDB issue 381). So a page that is put aside breaks off what it is at,
 * and does it anew when it is shown again.
 */
import { openDB, unwrap, type DBSchema, type IDBPDatabase } from 'idb';
import type { Clock, Refusal, Revision, Sha256 } from '../../core/records/index.ts';
import { isLostConnection } from './outcome.ts';
import type { Session } from './session.ts';

export interface RefusedRevision {
  readonly id: string;
  readonly stamp: string;
  readonly hash: string;
  readonly revision: Revision;
  readonly why: Refusal | 'unknown';
  readonly field: string | null;
}

/** Parts of the meta store, each under its own name. */
export interface Meta {
  clock: Clock;
  cursor: string;
  session: Session;
  token: string;
  /** A return that may have reached the hub although its answer never came. */
  returning: string;
  /** When the token was made, by this device's clock. */
  tokenMs: number;
  /** A token that shall take the place of the other, and that the hub may know already. */
  nextToken: string;
  /** What the hub said of itself when it was last asked. */
  hubSaid: { readonly readsGzip: boolean };
  /** A join that may have reached the hub although its answer never came. */
  joining: { readonly code: string; readonly token: string };
  /** Hub's clock minus this device's, milliseconds. */
  clockOffset: number;
}

export interface Tables extends DBSchema {
  /** The current revision of each record, raw. */
  heads: { key: string; value: Revision; indexes: { kind: string } };
  superseded: { key: [string, string, string]; value: Revision };
  /** What the hub has not been seen to hold. */
  outbox: { key: [string, string, string]; value: Revision };
  refused: { key: [string, string, string]; value: RefusedRevision };
  attachments: {
    key: string;
    value: { sha256: Sha256; mediaType: string; bytes: ArrayBuffer };
  };
  /** `damaged`: its bytes here are not what its name says, so it is not sent, and shown. */
  attachmentOutbox: { key: string; value: { sha256: Sha256; damaged?: true } };
  drafts: { key: string; value: unknown };
  settings: { key: string; value: unknown };
  meta: { key: keyof Meta; value: Meta[keyof Meta] };
}

export type Database = IDBPDatabase<Tables>;

const VERSION = 1;
const OPEN_TIMEOUT_MS = 3000;
const TRIES = 3;

const open = (name: string, onLost: () => void): Promise<Database> =>
  openDB<Tables>(name, VERSION, {
    upgrade(db, oldVersion) {
      if (oldVersion < 1) {
        db.createObjectStore('heads', { keyPath: 'id' }).createIndex('kind', 'kind');
        db.createObjectStore('superseded', { keyPath: ['id', 'stamp', 'hash'] });
        db.createObjectStore('outbox', { keyPath: ['id', 'stamp', 'hash'] });
        db.createObjectStore('refused', { keyPath: ['id', 'stamp', 'hash'] });
        db.createObjectStore('attachments', { keyPath: 'sha256' });
        db.createObjectStore('attachmentOutbox', { keyPath: 'sha256' });
        db.createObjectStore('drafts');
        db.createObjectStore('settings');
        db.createObjectStore('meta');
      }
    },
    blocking(_current, _blocked, event) {
      (event.target as IDBDatabase).close();
      onLost();
    },
    terminated: onLost,
  });

/** The first `open()` after a start has been seen to hang for ever (WebKit bug 226547): ask once more. */
const openInTime = async (name: string, onLost: () => void): Promise<Database> => {
  const first = open(name, onLost);
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<'late'>((answer) => {
    timer = setTimeout(() => answer('late'), OPEN_TIMEOUT_MS);
  });
  const answer = await Promise.race([first, late]);
  clearTimeout(timer);
  return answer === 'late' ? Promise.race([first, open(name, onLost)]) : answer;
};

export interface Connection {
  /** Runs `use` on an open database; `use` must be safe to run again from the start. */
  withDatabase<T>(use: (db: Database) => Promise<T>): Promise<T>;
  close(): Promise<void>;
}

/** Keeps `running` to the transactions of a connection that have not ended. */
const follow = (db: Database, running: Set<IDBTransaction>): Database => {
  const raw = unwrap(db);
  const begin = raw.transaction.bind(raw);
  raw.transaction = (...words) => {
    const tx = begin(...words);
    const end = () => running.delete(tx);
    running.add(tx);
    tx.addEventListener('complete', end);
    tx.addEventListener('abort', end);
    return tx;
  };
  return db;
};

/** Ends a transaction as if it had never been, unless it is committing already. */
const breakOff = (tx: IDBTransaction): void => {
  try {
    tx.abort();
  } catch (error) {
    if (!isLostConnection(error)) throw error;
  }
};

export const connect = (name: string): Connection => {
  const running = new Set<IDBTransaction>();
  let current: Promise<Database> | null = null;
  /** Resolves when the page that was put aside is shown again; null while it was not. */
  let shown: Promise<void> | null = null;
  let show: () => void = () => undefined;
  let timesAside = 0;
  const forget = () => {
    current = null;
  };
  const putAside = ({ persisted }: PageTransitionEvent) => {
    if (!persisted || shown) return;
    timesAside++;
    shown = new Promise((resolve) => (show = resolve));
    void current?.then(
      (db) => db.close(),
      () => undefined,
    );
    forget();
    running.forEach(breakOff);
  };
  const showAgain = () => {
    shown = null;
    show();
  };
  // Workers and the terminal have no page that could be put aside.
  const page = typeof window === 'undefined' ? null : window;
  page?.addEventListener('pagehide', putAside);
  page?.addEventListener('pageshow', showAgain);
  return {
    async withDatabase(use) {
      for (let attempt = 1; ; attempt++) {
        if (shown) await shown;
        const asideBefore = timesAside;
        try {
          if (!current) {
            current = openInTime(name, forget).then((db) => follow(db, running));
            // What was refused once may be granted the next time.
            current.catch(forget);
          }
          return await use(await current);
        } catch (error) {
          if (timesAside > asideBefore) continue;
          if (attempt >= TRIES || !isLostConnection(error)) throw error;
          forget();
        }
      }
    },
    async close() {
      page?.removeEventListener('pagehide', putAside);
      page?.removeEventListener('pageshow', showAgain);
      const db = await current;
      forget();
      db?.close();
    },
  };
};

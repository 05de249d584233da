/** What the screens know: the store, who this device is, and records that follow the log as it changes. */
import { signal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { kinds, type Kind, type RecordOf } from '../../core/records/index.ts';
import {
  openStore,
  type Session,
  type Store,
  type SyncStatus,
  type Unsent,
} from '../store/index.ts';
import { askForBackgroundSync } from './background-sync.ts';
import { showFailedRead } from './fault.ts';
import { isUnmetered } from './network.ts';
import { settings } from './settings.ts';

export const store: Store = openStore({
  maySendAttachments: () => settings.value.photos === 'any' || isUnmetered(),
});

export const session = signal<Session | null>(null);
export const unsent = signal<Unsent | null>(null);
export const syncStatus = signal<SyncStatus>({ state: 'idle' });
/** Grows with every change of the log, by kind; screens that read records look at it. */
const changed = signal<ReadonlyMap<string, number>>(new Map());

const readSession = async () => {
  session.value = await store.session();
};
const readUnsent = () =>
  store.unsent().then(
    (now) => {
      unsent.value = now;
    },
    (error: unknown) => {
      if (!unsent.value) showFailedRead(error);
    },
  );

/** Screens that read records of these kinds read them anew. */
const note = (these: Iterable<string>) => {
  const next = new Map(changed.value);
  for (const kind of these) next.set(kind, (next.get(kind) ?? 0) + 1);
  changed.value = next;
};

/** Follows the store from now on; resolves when the session is known. */
export const followStore = async (): Promise<void> => {
  // Nobody told this page what changed while the browser had put it aside.
  window.addEventListener('pageshow', ({ persisted }) => {
    if (!persisted) return;
    void readSession();
    void readUnsent();
    note(kinds);
  });
  store.subscribe((change) => {
    if ('sync' in change) {
      syncStatus.value = change.sync;
      if (change.sync.state === 'offline') void askForBackgroundSync();
      if (change.sync.state === 'revoked') void readSession();
      return;
    }
    if (change.session) session.value = change.session;
    if (!navigator.onLine) void askForBackgroundSync();
    void readUnsent();
    note(change.kinds);
  });
  await readSession();
  void readUnsent();
};

/**
 * The answer of a question to the store, asked anew whenever one of `kinds` changes; null until it is there. Where
 * the first read fails the fault screen takes over.
 */
export const useStored = <T>(
  ask: (from: Store) => Promise<T>,
  kinds: readonly string[],
  depends: readonly unknown[] = [],
): T | null => {
  const [answer, setAnswer] = useState<{ value: T } | null>(null);
  const version = kinds.map((kind) => changed.value.get(kind) ?? 0).join();
  useEffect(() => {
    let current = true;
    ask(store).then(
      (value) => {
        if (current) setAnswer({ value });
      },
      (error: unknown) => {
        // An answer that stands already is better than none.
        if (current && !answer) showFailedRead(error);
      },
    );
    return () => {
      current = false;
    };
    // `ask` is a new function at each drawing; what it depends on is named by the caller.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [version, ...depends]);
  return answer?.value ?? null;
};

/** The current records of one kind; null until they are read. */
export const useRecords = <K extends Kind>(kind: K): readonly RecordOf<K>[] | null =>
  useStored((from) => from.list(kind), [kind], [kind]);

/** What just changed in the log, in this tab or another one of the same device? */
import type { Session } from './session.ts';

export type SyncStatus =
  | {
      readonly state:
        'idle' | 'running' | 'offline' | 'not-a-hub' | 'revoked' | 'hub-trouble' | 'device-trouble';
    }
  | { readonly state: 'done'; readonly atMs: number };

export type Change =
  | {
      readonly kinds: ReadonlySet<string>;
      /** Whose the device is from now on, if that changed: no screen need ask for it. */
      readonly session?: Session;
    }
  | { readonly sync: SyncStatus };

/** Every writer of the session announces it this way once it is stored, and the kinds that came with it. */
export const sessionChange = (session: Session, kinds: Iterable<string> = []): Change => ({
  kinds: new Set([...kinds, 'session']),
  session,
});

export interface Changes {
  tell(change: Change): void;
  subscribe(listener: (change: Change) => void): () => void;
  close(): void;
}

/** Listeners of this tab, and the other tabs by BroadcastChannel where there is one. */
export const listenForChanges = (name: string): Changes => {
  const listeners = new Set<(change: Change) => void>();
  const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(name);
  const tellHere = (change: Change) => {
    for (const listener of listeners) listener(change);
  };
  channel?.addEventListener('message', ({ data }) => tellHere(data as Change));
  return {
    tell(change) {
      tellHere(change);
      channel?.postMessage(change);
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close: () => channel?.close(),
  };
};

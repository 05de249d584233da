/**
 * What does the browser send when the network is back and the app is closed? The same round of sync that the
 * page runs, on the same store; a lock keeps the two apart. Only some browsers ask for it (the Background
 * Synchronization draft of the WICG); elsewhere it is sent when the app is opened.
 */
import { sendWaiting } from '../app/store/send-waiting.ts';

/** The page asks for it under this name (`app/parts/background-sync.ts`). */
const TAG = 'outbox';

interface SyncEvent extends ExtendableEvent {
  readonly tag: string;
}

/** Throws where it could not be sent, so that the browser tries again later. */
const send = async (): Promise<void> => {
  const { what } = await sendWaiting();
  if (what === 'offline' || what === 'hub-trouble') throw new Error(`not sent: ${what}`);
};

export const listenForSync = (worker: ServiceWorkerGlobalScope): void => {
  worker.addEventListener('sync', (event) => {
    const { tag, waitUntil } = event as SyncEvent;
    if (tag === TAG) waitUntil.call(event, send());
  });
};

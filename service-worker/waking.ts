/**
 * What does the phone show while the app is closed? For each push message a notification (browsers ask for one, and
 * end the address of who shows none), in the device's language and always in the same words; then the log is fetched,
 * so that the notice is there when the app is opened. And, where the browser looks now and then by itself, a mark on the
 * icon if a run was due.
 */
import { NOTICE_TAG, showBadge, unreadNotices } from '../app/phone/notices/badge.ts';
import { PERIODIC_TAG, remindNow } from '../app/phone/notices/reminders.ts';
import { keepNoticesOn } from '../app/phone/notices/subscription.ts';
import { keyedStore } from '../app/store/keyed.ts';
import { membership } from '../app/store/membership.ts';
import { openContext } from '../app/store/open-context.ts';
import { recordReader } from '../app/store/records.ts';
import { sendWaiting } from '../app/store/send-waiting.ts';
import { notices as english } from '../app/words/languages/en/notices.ts';
import type { NoticeWords } from '../app/words/types.ts';

interface TaggedEvent extends ExtendableEvent {
  readonly tag: string;
}

/** `renotify` tells the person again of a later notice; not every list of the platform's types has it. */
type Shown = NotificationOptions & { readonly renotify: boolean };

const words = new Map(
  Object.entries(
    import.meta.glob<NoticeWords>('../app/words/languages/*/notices.ts', {
      import: 'notices',
      eager: true,
    }),
  ).map(([path, file]) => [/([^/]+)\/notices\.ts$/.exec(path)?.[1] ?? '', file]),
);

/** Works on the device's store, and closes it. */
const withStore = async <T>(
  work: (store: ReturnType<typeof storeOf>) => Promise<T>,
): Promise<T> => {
  const context = openContext({});
  try {
    return await work(storeOf(context));
  } finally {
    context.changes.close();
    await context.close();
  }
};
const storeOf = (context: ReturnType<typeof openContext>) => ({
  ...recordReader(context),
  ...keyedStore(context),
  ...membership(context),
});

/** The language of the device's settings, else of the browser; a store that does not open keeps nobody waiting. */
const language = async (): Promise<string> => {
  const kept = withStore((store) => store.setting('settings')).catch(() => undefined);
  const late = new Promise<undefined>((done) => setTimeout(done, LANGUAGE_MS));
  const settings = (await Promise.race([kept, late])) as { language?: string } | undefined;
  return settings?.language ?? navigator.language.slice(0, 2);
};
const LANGUAGE_MS = 2000;

const show = async ({ registration }: ServiceWorkerGlobalScope): Promise<void> => {
  const lang = await language();
  const { title, body } = (words.get(lang) ?? english).shown;
  const options: Shown = {
    ...{ body, lang, tag: NOTICE_TAG, renotify: true },
    ...{ icon: '/icons/icon-192.png', badge: '/icons/icon-192.png' },
  };
  await registration.showNotification(title, options);
};

/** Fetches what the message was about, and counts it on the icon; of what could not be fetched there is one at least. */
const fetchNotice = async (): Promise<void> => {
  const { what } = await sendWaiting();
  await withStore(async (store) => {
    const session = await store.session();
    const unread = session ? await unreadNotices(store, session.member, Date.now()) : 0;
    await showBadge(what === 'done' ? unread : Math.max(1, unread));
  });
};

/** Today, in the window that is open, else in a new one. */
const openToday = async ({ clients }: ServiceWorkerGlobalScope): Promise<void> => {
  const [open] = await clients.matchAll({ type: 'window', includeUncontrolled: true });
  if (!open) {
    await clients.openWindow('/');
    return;
  }
  // A page that this worker does not control yet cannot be sent anywhere.
  const moved = await open.navigate('/').catch(() => null);
  await (moved ?? open).focus();
};

const remind = (): Promise<void> =>
  withStore(async (store) => {
    const session = await store.session();
    if (session?.role !== 'tester') return;
    const nowMs = Date.now();
    const unread = await unreadNotices(store, session.member, nowMs);
    const reminder = await remindNow(store, session.member, nowMs);
    if (reminder) await showBadge(unread + 1);
  });

export const listenForWaking = (worker: ServiceWorkerGlobalScope): void => {
  worker.addEventListener('push', (event) => {
    // What it says is not read: it says the same each time.
    event.waitUntil(
      Promise.all([show(worker), fetchNotice().catch((error: unknown) => console.error(error))]),
    );
  });
  worker.addEventListener('notificationclick', (event) => {
    event.notification.close();
    event.waitUntil(openToday(worker));
  });
  // The browser has, or wants, another address.
  worker.addEventListener('pushsubscriptionchange', (event) => {
    event.waitUntil(withStore(keepNoticesOn));
  });
  worker.addEventListener('periodicsync', (event) => {
    const { tag, waitUntil } = event as TaggedEvent;
    if (tag === PERIODIC_TAG) waitUntil.call(event, remind());
  });
};

/** Keeps the icon's number true while a page is open, and the hub told of where this phone is reached. */
import type { Store } from '../../store/index.ts';
import { closeShown, KINDS_OF_NOTICES, showBadge, unreadNotices } from './badge.ts';
import { keepNoticesOn } from './subscription.ts';

const show = async (store: Store): Promise<void> => {
  const session = await store.session();
  if (session?.role !== 'tester') return;
  const unread = await unreadNotices(store, session.member, Date.now());
  await showBadge(unread);
  const registration = await navigator.serviceWorker?.getRegistration();
  if (unread === 0 && registration) await closeShown(registration);
};

let isKept = false;

/** @returns how to stop it */
export const followNotices = (store: Store): (() => void) => {
  const now = () => void show(store).catch((error: unknown) => console.error(error));
  now();
  // Once a start is enough: the browser says by itself when it changes the address.
  if (!isKept) void keepNoticesOn(store).catch((error: unknown) => console.error(error));
  isKept = true;
  return store.subscribe((change) => {
    if ('kinds' in change && KINDS_OF_NOTICES.some((kind) => change.kinds.has(kind))) now();
  });
};

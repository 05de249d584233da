/**
 * The app without a network: its files are kept at install, and every page opens from them.
 * The hub's answers (/v1/) are never touched: what is logged lives in IndexedDB, not in a cache.
 */
import { clientsClaim } from 'workbox-core';
import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  precacheAndRoute,
} from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import { keepSharedFiles } from './shared-files.ts';

declare const self: ServiceWorkerGlobalScope & {
  readonly __PRECACHE: { url: string; revision: string | null }[];
};

precacheAndRoute(self.__PRECACHE);
cleanupOutdatedCaches();
registerRoute(
  new NavigationRoute(createHandlerBoundToURL('/index.html'), { denylist: [/^\/v1\//] }),
);

registerRoute(
  ({ url }) => url.pathname === '/share',
  ({ request }) => keepSharedFiles(request),
  'POST',
);

// A new version waits until the person agrees to it: a half-filled form is never reloaded away.
self.addEventListener('message', (event) => {
  if ((event.data as { type?: unknown } | null)?.type === 'SKIP_WAITING') void self.skipWaiting();
});

clientsClaim();

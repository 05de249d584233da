/**
 * The app without a network: its files are kept at install, and every page opens from them.
 * The hub's answers (/v1/) are never touched: what is logged lives in IndexedDB, not in a cache.
 */
import { clientsClaim } from 'workbox-core';
import type { WorkboxPlugin } from 'workbox-core/types.js';
import { ExpirationPlugin } from 'workbox-expiration';
import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  precacheAndRoute,
} from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import { CacheFirst } from 'workbox-strategies';
import { listenForSync } from './background-sync.ts';
import { keepSharedFiles } from './shared-files.ts';
import { listenForWaking } from './waking.ts';

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

// The plugin's own types are looser than the ones it is asked for.
const bounded = new ExpirationPlugin({
  maxEntries: 600,
  maxAgeSeconds: 30 * 86_400,
}) as WorkboxPlugin;

// Map tiles, where the group has chosen some: the policy of the page lets no other picture in from outside.
registerRoute(
  ({ request, url }) => request.destination === 'image' && url.origin !== self.location.origin,
  new CacheFirst({
    cacheName: 'tiles',
    plugins: [bounded],
  }),
);

listenForSync(self);
listenForWaking(self);

// A new version waits until the person agrees to it: a half-filled form is never reloaded away.
self.addEventListener('message', (event) => {
  if ((event.data as { type?: unknown } | null)?.type === 'SKIP_WAITING') void self.skipWaiting();
});

clientsClaim();

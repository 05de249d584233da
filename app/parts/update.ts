/** Keeps the app usable offline and up to date: a new version waits until the person agrees to it. */
import { showToast } from './controls/toast.tsx';
import { t } from '../words/index.ts';

const CHECK_EVERY_MS = 30_000;

/** Registers the service worker once the page stands, and asks before a new version takes over. */
export const keepAppFresh = (): void => {
  if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
  const begin = async () => {
    const { Workbox } = await import('workbox-window');
    const workbox = new Workbox('/service-worker.js', { updateViaCache: 'none' });
    workbox.addEventListener('waiting', () => {
      showToast({
        text: t().update.ready,
        stays: true,
        action: {
          label: t().update.now,
          // Drafts are in the store as typed, so a reload that the person asked for loses nothing.
          run: () => {
            workbox.addEventListener('controlling', () => location.reload());
            workbox.messageSkipWaiting();
          },
        },
      });
    });
    await workbox.register();
    // Installed apps on iOS do not look for a new version for days (vite-plugin-pwa issue 524).
    let looked = Date.now();
    const look = () => {
      if (document.visibilityState !== 'visible' || Date.now() - looked < CHECK_EVERY_MS) return;
      looked = Date.now();
      void workbox.update().catch(() => undefined);
    };
    document.addEventListener('visibilitychange', look);
    window.addEventListener('pageshow', look);
  };
  // The app works without: the next start tries again. Nothing of it is a fault of what is on the screen.
  const tryIt = () => void begin().catch((error: unknown) => console.error(error));
  if (document.readyState === 'complete') tryIt();
  else window.addEventListener('load', tryIt, { once: true });
};

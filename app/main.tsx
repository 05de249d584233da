/**
 * The app begins: language, store, screens; then, when the page stands, the service worker and the sync. What keeps
 * it from beginning is said by the fault screen.
 */
import { render } from 'preact';
import { App, fetchScreenAhead } from './app.tsx';
import './parts/elements.css';
import './parts/sheets.css';
import './parts/buttons.css';
import './parts/fields.css';
import './parts/notices.css';
import { showFault, type FaultKind } from './parts/fault.ts';
import { loadSettings } from './parts/settings.ts';
import { followStore, session, store } from './parts/state.ts';

/** By then the first screen says what it is there for, on most phones. */
const FIRST_SCREEN_MS = 600;
const AFTER_FIRST_SCREEN_MS = 2500;

// It comes once and early; the screen that offers to install comes later.
addEventListener('beforeinstallprompt', (event) => {
  event.preventDefault();
  window.pairlogInstall = event as NonNullable<typeof window.pairlogInstall>;
});
fetchScreenAhead(location.pathname);
const fault = (kind: FaultKind) => (error: unknown) => {
  showFault(kind, error);
  throw error;
};
const opened = Promise.all([
  // Settings that cannot be read have a default; words that were not fetched have none.
  loadSettings(store).catch(fault('code')),
  followStore().catch(fault('store')),
]);
// The first formatter of a page is slow to make, and the database is not open yet. In a task of its own: all of
// this file's start is one already.
setTimeout(() => new Intl.NumberFormat('en').format(1.5));
await opened;
render(<App />, document.getElementById('app') as HTMLElement);
window.pairlogFault?.stands();
const shown = new Promise((done) => setTimeout(done, FIRST_SCREEN_MS));
const later = shown.then(() => import('./parts/later.ts'));
later.then(
  ({ followLaunches, keepAppFresh }) => {
    followLaunches();
    // Fetching all files for use offline would compete with the first screen's own.
    setTimeout(keepAppFresh, AFTER_FIRST_SCREEN_MS);
  },
  // The app works without: it asks again at the next start.
  (error: unknown) => console.error(error),
);

let stop: (() => void) | null = null;
await shown;
session.subscribe((now) => {
  if (now?.hub && !now.revoked) stop ??= store.startSyncing();
  else {
    stop?.();
    stop = null;
  }
});

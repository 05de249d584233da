/** The app begins: language, store, screens; then, when the page stands, the service worker and the sync. */
import { render } from 'preact';
import { App, fetchScreenAhead } from './app.tsx';
import './parts/base.css';
import { followLaunches } from './parts/shared-files.ts';
import { loadSettings } from './parts/settings.ts';
import { followStore, session, store } from './parts/state.ts';
import { keepAppFresh } from './parts/update.ts';

const AFTER_FIRST_SCREEN_MS = 2500;

fetchScreenAhead(location.pathname);
const opened = Promise.all([loadSettings(store), followStore()]);
// The first formatter of a page is slow to make, and the database is not open yet.
new Intl.NumberFormat('en').format(1.5);
await opened;
followLaunches();
render(<App />, document.getElementById('app') as HTMLElement);
// Fetching all files for use offline would compete with the first screen's own.
setTimeout(keepAppFresh, AFTER_FIRST_SCREEN_MS);

let stop: (() => void) | null = null;
session.subscribe((now) => {
  if (now?.hub && !now.revoked) stop ??= store.startSyncing();
  else {
    stop?.();
    stop = null;
  }
});

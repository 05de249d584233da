/** The app begins: language, store, screens; then, when the page stands, the service worker and the sync. */
import { render } from 'preact';
import { App, fetchScreenAhead } from './app.tsx';
import './parts/base.css';
import { loadSettings } from './parts/settings.ts';
import { followStore, session, store } from './parts/state.ts';
import { keepAppFresh } from './parts/update.ts';

const AFTER_FIRST_SCREEN_MS = 2500;

fetchScreenAhead(location.pathname);
await Promise.all([loadSettings(store), followStore()]);
const place = document.getElementById('app') as HTMLElement;
// What stood there until now was the page's name only.
place.replaceChildren();
render(<App />, place);
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

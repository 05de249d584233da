/** The app begins: language, store, screens; then, when the page stands, the service worker and the sync. */
import { render } from 'preact';
import { App } from './app.tsx';
import './parts/base.css';
import { loadSettings } from './parts/settings.ts';
import { followStore, session, store } from './parts/state.ts';
import { keepAppFresh } from './parts/update.ts';

await Promise.all([loadSettings(store), followStore()]);
render(<App />, document.getElementById('app') as HTMLElement);
keepAppFresh();

let stop: (() => void) | null = null;
session.subscribe((now) => {
  if (now?.hub && !now.revoked) stop ??= store.startSyncing();
  else {
    stop?.();
    stop = null;
  }
});

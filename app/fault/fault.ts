/**
 * The one fault screen: it stands in index.html, in every language, and this small script beside it, so that it
 * can be shown when no other part of the app can be fetched or the database does not open.
 *
 * It is built by itself (`fault-plugin.ts`) for older browsers than the rest, and knows nothing of the app.
 */
import { sendFile } from '../parts/send-file.ts';
import type { Fault, FaultKind } from '../parts/fault.ts';
import { openDatabase, ownLog, session, savedLanguage } from './own-log.ts';

/** A start that takes longer has stuck. Judgement: the first page takes 12 s on the slowest mobile network. */
const START_MS = 25_000;

const place = () => document.getElementById('fault') as HTMLElement;
const all = (selector: string) => Array.from(place().querySelectorAll<HTMLElement>(selector));

let stands = false;
let shown: FaultKind | null = null;

const spoken = (saved: unknown): string => {
  const offered = all('[lang]').map(({ lang }) => lang);
  const wanted = [saved, ...navigator.languages].map((tag) => String(tag).slice(0, 2));
  for (const one of wanted) {
    const found = offered.find((language) => language.startsWith(one));
    if (found) return found;
  }
  return offered[0] as string;
};

const speak = (saved?: unknown): void => {
  const language = spoken(saved);
  for (const section of all('[lang]')) section.hidden = section.lang !== language;
};

/** Shows what can be done about it only where it can be done. */
const offerLog = async (): Promise<void> => {
  const db = await openDatabase();
  speak(await savedLanguage(db));
  const member = await session(db);
  for (const part of all('[data-send]')) part.hidden = !member;
  db.close();
};

const cover = (covered: boolean): void => {
  (document.getElementById('app') as HTMLElement).hidden = covered;
  place().hidden = !covered;
};

const show = (kind: FaultKind, detail = ''): void => {
  if (shown) return;
  shown = kind;
  for (const part of all('[data-for]')) part.hidden = !part.dataset['for']?.includes(kind);
  for (const line of all('time'))
    line.textContent = [
      detail && `(${detail})`,
      new Date().toLocaleString(line.closest<HTMLElement>('[lang]')?.lang, {
        dateStyle: 'medium',
        timeStyle: 'short',
      }),
    ]
      .filter(Boolean)
      .join(' ');
  speak();
  cover(true);
  for (const title of all('h1')) title.focus();
  offerLog().catch(() => undefined);
};

/** Whoever reloads wants what is newest: a version that waits takes over. */
const reload = async (): Promise<void> => {
  const registration = await navigator.serviceWorker?.getRegistration();
  await registration?.update();
  const next = registration?.waiting ?? registration?.installing;
  if (!next) return;
  next.postMessage({ type: 'SKIP_WAITING' });
  await new Promise((done) => {
    navigator.serviceWorker.addEventListener('controllerchange', done);
    setTimeout(done, 4000);
  });
};

document.addEventListener('click', ({ target }) => {
  const press = (target as Element).closest('#fault button');
  if (!press) return;
  if (press.hasAttribute('data-send'))
    openDatabase()
      .then(ownLog)
      .then(({ name, bytes }) => sendFile(name, bytes))
      .catch(() => undefined);
  else {
    const again = () => location.reload();
    reload().then(again, again);
  }
});

// Before the app stands, whatever fails is a fault of the whole; afterwards only what nobody took care of.
addEventListener(
  'error',
  ({ target, message }: ErrorEvent) => {
    if (stands) return;
    if (target instanceof HTMLScriptElement) whenParsed(() => show('code'));
    else if (target === window) whenParsed(() => show('broken', message));
  },
  true,
);
const whenParsed = (then: () => void): void => {
  if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', then);
  else then();
};

const notFetched = new WeakSet<object>();
addEventListener('vite:preloadError', (event) => {
  notFetched.add((event as Event & { payload: object }).payload);
});
addEventListener('unhandledrejection', ({ reason }: { readonly reason: unknown }) => {
  if (typeof reason === 'object' && reason && notFetched.has(reason)) show('code');
});

const late = setTimeout(() => show('broken'), START_MS);

window.pairlogFault = {
  show,
  stands() {
    stands = true;
    clearTimeout(late);
    // Whatever was said before was no reason not to begin: slowness, or an error of the browser's own additions.
    shown = null;
    cover(false);
  },
} satisfies Fault;

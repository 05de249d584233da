/** A page that the browser puts aside for its "back" button, in WebKit, which does so in the midst of a transaction. */
import { test } from '@playwright/test';
import { startHubProcess, type HubProcess } from './hub-process.ts';
import { programs } from './programs.ts';
import { startScreen, WebKitPage } from './webkit-page.ts';

let hub: HubProcess;
let screen: ReturnType<typeof startScreen>;
let lead: WebKitPage | null = null;

test.skip(programs.webkit === undefined, 'this machine has no WebKit that can be driven');

test.beforeAll(async () => {
  hub = await startHubProcess('--group', 'Aside');
  screen = startScreen();
});
test.afterAll(async () => {
  await lead?.close();
  screen.kill();
  await hub.stop();
});

test('a page left in the midst of a write keeps the database from nobody, and goes on when it is back', async () => {
  lead = await WebKitPage.open(programs.webkit as string, 4465);
  await lead.goto(`${hub.url}/join#${hub.codes.lead}`);
  await lead.button('Join');
  await lead.shows('Write the brief');
  await lead.goto(`${hub.url}/desk/group`);
  await lead.shows('Sync now');
  // The next write of a sync does not end before the page is left.
  await lead.run(`
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = function (...words) {
      IDBObjectStore.prototype.put = put;
      const again = () => { this.count().onsuccess = again; };
      again();
      window.isWriting = true;
      return put.apply(this, words);
    };
    addEventListener('pageshow', ({ persisted }) => { window.isBack = persisted; });
  `);
  const place = await lead.run<number>('return history.length');
  await lead.button('Sync now');
  await lead.comesTrue('window.isWriting');

  await lead.goto(`${hub.url}/desk`);
  await lead.link('Write the brief');
  await lead.fill('Name of the project', 'Second trainer');
  await lead.fill('Distance a pair must carry, km', '300');
  await lead.button('Save');
  await lead.shows('No round yet. Add the first one.');

  await lead.run(`history.go(${place} - history.length)`);
  await lead.comesTrue('window.isBack');
  await lead.shows('Up to date.');
  // What was saved meanwhile by the other page is known here too.
  await lead.link('All shoes');
  await lead.shows('Second trainer');
});

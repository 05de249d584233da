/** The whole journey in a WebKit engine: set up, join, log offline, open the app without a hub, sync, review. */
import { test } from '@playwright/test';
import { startHubProcess, type HubProcess } from './hub-process.ts';
import { programs } from './programs.ts';
import { startScreen, WebKitPage } from './webkit-page.ts';

let hub: HubProcess;
let screen: ReturnType<typeof startScreen>;
const pages: WebKitPage[] = [];

test.skip(programs.webkit === undefined, 'this machine has no WebKit that can be driven');

test.beforeAll(async () => {
  hub = await startHubProcess('--group', 'Journey');
  screen = startScreen();
});
test.afterAll(async () => {
  for (const page of pages) await page.close();
  screen.kill();
  await hub.stop();
});

const open = async (): Promise<WebKitPage> => {
  const page = await WebKitPage.open(programs.webkit as string, 4455 + pages.length);
  pages.push(page);
  return page;
};

const join = async (page: WebKitPage, code: string) => {
  await page.goto(`${hub.url}/join#${code}`);
  await page.button('Join');
};

const logRun = async (page: WebKitPage, km: string, time: string, slipped?: string) => {
  await page.link('Log a run');
  await page.fill('Distance, km', km);
  await page.fill('Time', time);
  await page.choose('road');
  await page.keys('slider', 'Overall comfort', '\uE011', ...Array<string>(6).fill('\uE00E'));
  if (slipped === undefined) await page.choose('Nothing bothered me');
  else {
    await page.choose('Something did');
    await page.select('Zones as a list', 'left, heel cup');
    await page.choose('Heel slip');
    await page.choose(slipped);
  }
  await page.button('Save');
  await page.shows('Saved on this phone');
};

test('from the first code to the lead’s review, offline in between, in WebKit', async () => {
  test.setTimeout(1_200_000);
  const lead = await open();
  await join(lead, hub.codes.lead);
  await lead.link('Write the brief');
  await lead.fill('Name of the project', 'Journey trainer');
  await lead.fill('Distance a pair must carry, km', '500');
  await lead.button('Save');
  await lead.fill('Name', 'R1');
  await lead.button('Save');
  await lead.fill('Pairs, a line each', '417 42 12');
  await lead.button('Save');
  await lead.fill('Testers, a line each', 'T01');
  await lead.button('Save');
  await lead.shows('No plan yet for 1 pair and 1 tester.');
  await lead.link('Testers');
  await lead.button('Invite T01');
  await lead.shows('as tester T01');
  const code = await lead.textOf('.code');
  await lead.link('Pairs');
  await lead.button('Hand out');
  await lead.select('Pair', '417, R1, EU 42');
  await lead.select('Hand out to', 'T01');
  await lead.button('Save');
  await lead.shows('Pair 417 handed out to T01');
  await lead.goto(`${hub.url}/desk/group`);
  await lead.button('Sync now');
  await lead.shows('Up to date.');

  const tester = await open();
  await join(tester, code);
  await tester.shows('417');
  await tester.comesTrue('navigator.serviceWorker.controller !== null');

  await hub.pause();
  await logRun(tester, '10.5', '5230', '4');
  // The app is left and opened anew with nobody to serve it.
  await tester.goto('about:blank');
  await tester.goto(hub.url);
  await tester.shows('10.5');
  await logRun(tester, '6.25', '31:15');
  await tester.shows('2 entries are only on this phone');

  await hub.resume();
  await tester.goto(`${hub.url}/unsent`);
  await tester.button('Send now');
  await tester.shows('Everything is with your group.');

  // By hand: 12 + 10.5 + 6.25 = 28.75 km.
  await lead.button('Sync now');
  await lead.shows('Up to date.');
  await lead.goto(`${hub.url}/desk`);
  await lead.link('Journey trainer');
  await lead.shows('1 pair, 1 tester, 2 runs, 16.8 km so far.');
  await lead.shows('28.8 km');
  await lead.link('Shoe');
  await lead.shows('2 runs of 1 tester asked.');
});

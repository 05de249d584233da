/**
 * A group without a hub: a lead alone starts it, hands out by file, and gets runs back by file; files come late,
 * twice and in any order. What serves the app is switched off as soon as both browsers have it.
 */
import { readFile } from 'node:fs/promises';
import { expect, test, type Page } from '@playwright/test';
import { startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--group', 'Not this one');
});
test.afterEach(() => hub.stop());

const savedFile = async (page: Page, button: string): Promise<Buffer> => {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).click();
  return readFile(await (await download).path());
};

/** Opens a file from the screen that offers it; nothing is loaded anew. */
const takeIn = async (page: Page, file: Buffer, contains: string, home = '/desk') => {
  await page.getByLabel('Choose a file').setInputFiles({
    name: 'sent.pairlog',
    mimeType: 'application/octet-stream',
    buffer: file,
  });
  await expect(page.getByText(contains).first()).toBeVisible();
  const take = page.getByRole('button', { name: 'Take it in' });
  // Of a file that is here already there is nothing to take.
  if ((await take.count()) > 0) await take.click();
  else await page.goto(hub.url + home);
};

const logRun = async (page: Page, km: string, time: string) => {
  await page.getByRole('link', { name: 'Log a run' }).click();
  await page.getByLabel('Distance, km').fill(km);
  await page.getByLabel('Time', { exact: true }).fill(time);
  await page.getByText('Nothing bothered me').click();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Saved on this phone')).toBeVisible();
};

const fileOf = async (page: Page): Promise<Buffer> => {
  await page.getByRole('link', { name: 'only on this phone' }).click();
  const file = await savedFile(page, 'Send as a file');
  await page.getByRole('link', { name: 'Back' }).click();
  return file;
};

const addPair = async (lead: Page, code: string) => {
  await lead.getByRole('button', { name: 'Add a pair' }).click();
  await lead.getByLabel('Code on the tongue label').fill(code);
  await lead.getByRole('button', { name: 'Save' }).click();
  await expect(lead.getByText(code)).toBeVisible();
};

const handOutTo = async (lead: Page, pair: string, tester: string) => {
  await lead.getByRole('link', { name: 'Pairs', exact: true }).click();
  await lead.getByRole('button', { name: 'Hand out', exact: true }).click();
  await lead.getByLabel('Pair', { exact: true }).selectOption({ label: `${pair}, R1, EU 42` });
  await lead.getByLabel('Hand out to').selectOption({ label: tester });
  await lead.getByRole('button', { name: 'Save' }).click();
  await expect(lead.getByText(`Pair ${pair} handed out to ${tester}`)).toBeVisible();
};

test('a group works by files alone, from the first hand-out to the lead’s figures', async ({
  browser,
}) => {
  test.setTimeout(1_200_000);
  const fresh = async () => {
    const page = await (await browser.newContext()).newPage();
    await page.goto(hub.url);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    return page;
  };
  const [lead, phone] = [await fresh(), await fresh()];
  await hub.pause();

  await test.step('a lead starts a group, hands out a pair and sends the hand-out', async () => {
    await lead.getByText('I lead a wear test').click();
    await lead.getByLabel('Name of your group').fill('By post');
    await lead.getByRole('button', { name: 'Start a group on this device' }).click();
    await lead.getByRole('link', { name: 'Write the brief' }).click();
    await lead.getByLabel('Name of the project').fill('Post trainer');
    await lead.getByLabel('Distance a pair must carry, km').fill('500');
    await lead.getByRole('button', { name: 'Save' }).click();
    await lead.getByLabel('Name', { exact: true }).fill('R1');
    await lead.getByRole('button', { name: 'Save' }).click();
    await lead.getByLabel('Pairs, a line each').fill('417 42');
    await lead.getByRole('button', { name: 'Save' }).click();
    await lead.getByLabel('Testers, a line each').fill('T01');
    await lead.getByRole('button', { name: 'Save' }).click();
    await expect(lead.getByText('No plan yet for 1 pair and 1 tester.')).toBeVisible();
    await handOutTo(lead, '417', 'T01');
    await lead.getByRole('link', { name: 'Testers', exact: true }).click();
  });
  const handOut = await savedFile(lead, 'Hand-out file T01');

  await test.step('a fresh phone takes it in and shows the pair, without being loaded anew', async () => {
    await phone.getByRole('link', { name: 'Open a hand-out file' }).click();
    await phone.evaluate(() => (document.body.dataset['same'] = 'page'));
    await takeIn(phone, handOut, 'By post');
    await expect(phone.getByRole('heading', { name: '417' })).toBeVisible();
    await expect(phone.getByText('Which test are you in?')).toBeHidden();
    expect(await phone.evaluate(() => document.body.dataset['same'])).toBe('page');
  });

  await logRun(phone, '10.5', '52:30');
  const early = await fileOf(phone);
  await logRun(phone, '6', '31:00');
  const late = await fileOf(phone);

  await test.step('the lead takes the late file first, then the early one, then both again', async () => {
    for (const [file, contains] of [
      [late, '2 new entries, 0 already here'],
      [early, 'Everything in this file is already here.'],
      [late, 'Everything in this file is already here.'],
    ] as const) {
      await lead.goto(`${hub.url}/desk/group`);
      await lead.getByRole('link', { name: 'Open a file' }).click();
      await takeIn(lead, file, contains);
      await expect(lead.getByRole('link', { name: 'Post trainer' })).toBeVisible();
    }
    await lead.getByRole('link', { name: 'Post trainer' }).click();
    await expect(lead.getByText(/ 1 pair, 1 tester, 2 runs, 16\.5 km so far\./)).toBeVisible();
  });

  await test.step('a second hand-out file brings what is new and no more', async () => {
    await lead.getByRole('link', { name: 'Rounds, blueprints and pairs' }).click();
    await addPair(lead, '832');
    await handOutTo(lead, '832', 'T01');
    await lead.getByRole('link', { name: 'Testers', exact: true }).click();
    const second = await savedFile(lead, 'Hand-out file T01');
    for (const file of [second, second, handOut]) {
      await phone.goto(`${hub.url}/file`);
      await takeIn(phone, file, 'already here', '/');
      await expect(phone.getByRole('heading', { name: '832' })).toBeVisible();
    }
    await expect(phone.getByRole('heading', { name: '417' })).toBeVisible();
    await phone.getByRole('link', { name: 'My runs' }).click();
    await expect(phone.getByText('10.5 km')).toBeVisible();
  });
});

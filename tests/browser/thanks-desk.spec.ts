/**
 * Testers hear what came of their reports: a round carries a finding, the lead thanks who reported it and may know, the
 * tester reads it on the phone in Chinese; who wears the shoe blind is held back; the test ends with a summary of one's own.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { devices, expect, test, type Browser, type Page } from '@playwright/test';
import { axeFaults } from './axe.ts';
import { recordsHeld } from './device.ts';
import { startHubProcess, type HubProcess } from './hub-process.ts';
import { BEN_ID, FINDING, writeThanksLog } from './thanks-log.ts';

let hub: HubProcess;
let folder: string;
test.beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'pairlog-thanks-'));
  const file = join(folder, 'thanks.pairlog');
  await writeThanksLog(file, Date.now());
  hub = await startHubProcess('--demo', file);
});
test.afterEach(async () => {
  await hub.stop();
  await rm(folder, { recursive: true, force: true });
});

const openLead = async (page: Page) => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: 'Test', exact: true }).click();
  await page.locator('.todo').waitFor();
  return new URL(page.url()).pathname;
};

/** T01's phone, which speaks Chinese. */
const openPhone = async (browser: Browser): Promise<Page> => {
  const context = await browser.newContext({ ...devices['Pixel 7'], locale: 'zh-CN' });
  const page = await context.newPage();
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  await page.getByRole('button', { name: '加入' }).click();
  await page.locator('.pair-shoe').waitFor();
  return page;
};

const told = (page: Page) => page.getByRole('region', { name: 'Tell the testers' });

test('a round carries a finding, its testers are thanked, and one of them reads it', async ({
  page,
  browser,
}) => {
  const project = await openLead(page);
  const finding = `${hub.url}${project}/changes/findings/${FINDING}`;
  await page.goto(finding);
  // Nothing came of it yet, so there is nothing to tell.
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The collar rubs');
  await expect(told(page)).toHaveCount(0);
  await page.getByRole('button', { name: 'Edit this finding' }).click();
  const edit = page.getByRole('region', { name: 'Edit this finding' });
  await edit.getByLabel('Round that makes the change').selectOption({ label: 'Round 2' });
  await edit.getByRole('button', { name: 'Save' }).click();

  // Ada may hear it. Ben wears the next sample blind, so he may not, and she is not told the change by herself.
  await expect(told(page)).toContainText('1 tester reported this and can hear what came of it.');
  await expect(told(page)).toContainText('You reported this on 4 runs: rubbing, ankle bones.');
  await expect(told(page).getByText(/^Wearing a pair blind, no end noted:/)).toContainText('T02');
  const letter = told(page).getByRole('figure');
  await expect(letter).toContainText('You felt it. The next sample is changed.');
  await expect(letter).not.toContainText('ollar');
  const own = told(page).getByLabel(/A few words of your own/);
  await own.fill('As T02 said of the collar');
  await expect(told(page).getByText('“collar” tells what was changed.')).toBeVisible();
  await told(page).getByRole('button', { name: 'Thank 1 tester' }).click();
  await expect(told(page).getByText(/^Take out “T02”/)).toBeVisible();
  await own.fill('Good catch.');
  await expect(told(page).getByText(/^Take out/)).toHaveCount(0);
  await expect(letter).toContainText('Good catch.');
  expect(await axeFaults(page)).toEqual([]);

  await page.goto(`${hub.url}${project}`);
  await page.getByRole('link', { name: /^Thank 1 tester/ }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The collar rubs');
  await told(page)
    .getByLabel(/A few words of your own/)
    .fill('Good catch.');
  await told(page).getByRole('button', { name: 'Thank 1 tester' }).click();
  await expect(told(page)).toContainText('Nobody can be told yet.');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(told(page)).toContainText('1 tester reported this');
  expect((await recordsHeld(page, 'thanks')).filter((body) => body !== null)).toEqual([]);
  await told(page)
    .getByLabel(/A few words of your own/)
    .fill('Good catch.');
  await told(page).getByRole('button', { name: 'Thank 1 tester' }).click();
  await expect(told(page).getByText('Thanked: 1 tester')).toBeVisible();
  await page.goto(`${hub.url}${project}`);
  await page.locator('.todo').waitFor();
  await expect(page.getByRole('link', { name: /^Thank/ })).toHaveCount(0);

  const phone = await openPhone(browser);
  const card = phone.getByRole('region', { name: '你反映的问题，下一批样鞋已改。' });
  await expect(card).toContainText('你在 4 次跑步中反映：脚踝磨脚。');
  // It lies below what logging needs.
  const below = (await card.boundingBox())?.y ?? 0;
  expect(below).toBeGreaterThan((await phone.locator('.pair-card').boundingBox())?.y ?? Infinity);
  expect(await axeFaults(phone)).toEqual([]);
  await card.getByRole('link', { name: '看一看' }).click();
  await expect(phone.getByText('Good catch.')).toBeVisible();
  await expect(phone.getByText('谢谢你的反映。')).toBeVisible();
  await expect(phone.getByText(/领口/)).toHaveCount(0);
  await expect(phone.getByRole('group', { name: /右脚/ })).toBeVisible();
  expect(await axeFaults(phone)).toEqual([]);
  await phone.getByRole('link', { name: '返回' }).click();
  await phone.locator('.pair-shoe').waitFor();
  await phone.reload();
  await phone.locator('.pair-shoe').waitFor();
  await expect(phone.getByText('没有网络也能打开', { exact: false })).toBeVisible();
  await expect(card).toHaveCount(0);

  // It lies with the run that told it, and nowhere else.
  await phone.goto(`${hub.url}/runs`);
  await phone.getByRole('link', { name: '查看' }).last().click();
  await expect(phone.getByRole('region', { name: '你反映的问题有什么结果' })).toContainText(
    '脚踝磨脚',
  );
  const held = await recordsHeld<{ tester: string } | null>(phone, 'thanks');
  const standing = held.flatMap((one) => (one ? [one.tester] : []));
  expect(standing).toHaveLength(1);
  expect(standing).not.toContain(BEN_ID);
});

test('how it ended takes the place of the first word, and the end of the test sums up', async ({
  page,
  browser,
}) => {
  const project = await openLead(page);
  await page.goto(`${hub.url}${project}/changes/findings/${FINDING}`);
  await page.getByRole('button', { name: 'Edit this finding' }).click();
  const edit = page.getByRole('region', { name: 'Edit this finding' });
  await edit.getByLabel('Round that makes the change').selectOption({ label: 'Round 2' });
  await edit.getByRole('button', { name: 'Save' }).click();
  await told(page).getByRole('button', { name: 'Thank 1 tester' }).click();
  await expect(told(page)).toContainText('Thanked: 1 tester');

  await page.getByRole('button', { name: 'Write down the outcome' }).click();
  const outcome = page.getByRole('region', { name: 'Write down the outcome' });
  await outcome.getByLabel('What the change did').selectOption('mended');
  await outcome.getByLabel('What shows it, a line each').fill('Nobody felt it any more.');
  await outcome.getByRole('button', { name: 'Save' }).click();
  await told(page).getByLabel('Say what was changed: Collar line: 2 mm lower').check();
  await expect(told(page).getByRole('figure')).toContainText(
    'The change: Collar line: 2 mm lower.',
  );
  await told(page).getByRole('button', { name: 'Thank 1 tester' }).click();
  await expect(told(page)).toContainText('Nobody can be told yet.');
  // The pair comes back.
  await page.goto(`${hub.url}${project}/pairs`);
  await page.getByRole('link', { name: '111' }).first().click();
  await page.getByRole('button', { name: /^Take back pair 111/ }).click();
  await expect(page.getByRole('button', { name: /^Take back pair 111/ })).toHaveCount(0);
  await page.goto(`${hub.url}/desk/group`);
  await page.getByRole('button', { name: 'Sync now' }).click();
  await expect(page.getByText('Up to date.')).toBeVisible();

  const context = await browser.newContext({ ...devices['Pixel 7'], locale: 'en-GB' });
  const phone = await context.newPage();
  await phone.goto(`${hub.url}/join#${hub.codes.tester}`);
  await phone.getByRole('button', { name: 'Join' }).click();
  // One card at a time, and only how it ended.
  const card = phone.getByRole('region', { name: 'You felt it. It is mended.' });
  const over = phone.getByRole('region', { name: 'The test is over. Thank you.' });
  await expect(card).toBeVisible();
  await expect(over).toHaveCount(0);
  await card.getByRole('button', { name: 'Close' }).click();
  await expect(card).toHaveCount(0);
  await expect(over).toContainText('Test: you ran 50 km on 5 runs, in 2 pairs.');
  await over.getByRole('link', { name: 'See what you found' }).click();
  await expect(phone.getByRole('img', { name: /40\.0 km of 400 km/ })).toBeVisible();
  await expect(phone.getByRole('region', { name: 'What you found' })).toContainText(
    'on 4 runs · mended',
  );
  expect(await axeFaults(phone)).toEqual([]);
  await phone.getByRole('link', { name: 'Rubbing, ankle bones' }).click();
  await expect(phone.getByText('The change: Collar line: 2 mm lower.')).toBeVisible();
  await phone.goto(hub.url);
  await phone.getByRole('link', { name: /runs/i }).waitFor();
  await expect(over).toHaveCount(0);
  // It stays within reach.
  await phone.goto(`${hub.url}/runs`);
  await expect(phone.getByRole('link', { name: 'Test: what you found' })).toBeVisible();
});

test('nothing is offered where the brief says that testers are not told', async ({ page }) => {
  const project = await openLead(page);
  await page.goto(`${hub.url}${project}/brief`);
  await page.getByRole('button', { name: 'Edit the brief' }).click();
  await page.getByLabel('Tell testers what came of their reports').uncheck();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('testers are not told', { exact: true })).toBeVisible();
  await page.goto(`${hub.url}${project}/changes/findings/${FINDING}`);
  await page.getByRole('button', { name: 'Edit this finding' }).click();
  const edit = page.getByRole('region', { name: 'Edit this finding' });
  await edit.getByLabel('Round that makes the change').selectOption({ label: 'Round 2' });
  await edit.getByRole('button', { name: 'Save' }).click();
  await expect(told(page)).toContainText('the brief says so');
  await expect(told(page).getByRole('button')).toHaveCount(0);
  await page.goto(`${hub.url}${project}`);
  await page.locator('.todo').waitFor();
  await expect(page.getByRole('link', { name: /^Thank/ })).toHaveCount(0);
});

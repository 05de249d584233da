/**
 * Four people on four profiles, each without a network in between: a tester logs an odd run, the lead asks, the tester
 * answers in two taps; a finding goes to a specialist, who proposes 2 mm less by a day; the lead accepts and the next
 * round carries it; the tester reads the thank-you, and who wears the shoe blind reads none. Then the same by files, without
 * a hub.
 */
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { devices, expect, test, type Browser, type Page } from '@playwright/test';
import type { Round, Thanks } from '../../core/records/index.ts';
import { recordsHeld } from './device.ts';
import { Hand } from './hand.ts';
import { startHubProcess, type HubProcess } from './hub-process.ts';
import { FINDING, writeThanksLog } from './thanks-log.ts';
import { syncTester } from './two-people.ts';

let hub: HubProcess;
let folder: string;
let log: string;
test.beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'pairlog-four-'));
  log = join(folder, 'four.pairlog');
  await writeThanksLog(log, Date.now(), false);
  hub = await startHubProcess('--demo', log);
});
test.afterEach(async () => {
  await hub.stop();
  await rm(folder, { recursive: true, force: true });
});

/** Somebody on a profile of their own, in by a code; the app works without a network from then on. */
const comeIn = async (browser: Browser, code: string | null, on: object): Promise<Page> => {
  const context = await browser.newContext({ ...on, locale: 'en-GB' });
  const page = await context.newPage();
  await page.goto(`${hub.url}/join#${code}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  return page;
};
const PHONE = devices['Pixel 7'];
const offline = (page: Page) => page.context().setOffline(true);
const online = (page: Page) => page.context().setOffline(false);

const dayFromNow = (days: number): string => {
  const at = new Date(Date.now() + days * 86_400_000);
  const two = (part: number) => String(part).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
};

/** Everything goes to the hub and comes from it. */
const syncLead = async (lead: Page) => {
  await lead.goto(`${hub.url}/desk/group`);
  await lead.getByRole('button', { name: 'Sync now' }).click();
  await expect(lead.getByText('Up to date.')).toBeVisible();
};

const inviteCode = async (lead: Page, button: string): Promise<string | null> => {
  await lead.getByRole('button', { name: button }).click();
  return lead.locator('.code').textContent();
};

/** 32 km in forty minutes: nobody runs that. */
const logOddRun = async (phone: Page) => {
  await phone.getByRole('link', { name: /^Log a run in/ }).click();
  await phone.getByLabel('Distance, km').fill('32');
  await phone.getByLabel('Time', { exact: true }).fill('40:00');
  await phone.getByText('road', { exact: true }).click();
  await phone.getByRole('button', { name: 'Save' }).click();
  await phone.getByRole('button', { name: 'Yes, save it' }).click();
  await phone.getByText('Saved on this phone').waitFor();
};

/** From the odd run, by the question that stands ready. */
const askAboutRun = async (lead: Page) => {
  await lead.getByRole('button', { name: /^Ask T01: Was it really 1:15/ }).click();
  await expect(
    lead.getByRole('region', { name: 'Waiting for an answer' }).getByText(/^Was it really/),
  ).toBeVisible();
};

const answerInTwoTaps = async (phone: Page) => {
  const question = phone.getByRole('region', { name: 'A question from your lead' });
  await expect(question).toContainText(/Was it really 1:15/);
  const hand = new Hand(phone);
  await hand.tap(question.getByRole('button', { name: 'No, I mistyped' }));
  await expect(phone.getByRole('region', { name: 'Your answer' })).toContainText('No, I mistyped');
  expect(hand.taps).toBeLessThanOrEqual(2);
};

const readAnswer = async (lead: Page, project: string) => {
  await lead.goto(project);
  await lead.getByRole('link', { name: '1 answer to read' }).click();
  await expect(lead.getByRole('region', { name: '1 answer to read' })).toContainText(
    'No, I mistyped',
  );
};

/** 2 mm less by a day. */
const propose = async (specialist: Page) => {
  await specialist.getByRole('button', { name: 'Answer', exact: true }).click();
  const form = specialist.getByRole('form', { name: 'Your answer' });
  await form.getByText('Another way', { exact: true }).click();
  await form.getByLabel('What moves or grows').selectOption({ label: 'Collar line' });
  await form.getByLabel('Which way').selectOption({ label: 'lower' });
  await form.getByLabel('By how much').fill('2');
  await form.getByLabel('Next sample ready on').fill(dayFromNow(7));
  await form.getByRole('button', { name: 'Send the answer' }).click();
  await expect(specialist.getByText('Not sent yet: kept on this device.')).toBeVisible();
};
const openFinding = async (specialist: Page) => {
  await specialist.getByRole('link', { name: /: The collar rubs$/ }).click();
  await specialist.getByRole('heading', { level: 1, name: 'The collar rubs' }).waitFor();
};

/** The lead accepts, and the next round carries it. */
const acceptAndCarry = async (lead: Page) => {
  const talk = lead.getByRole('region', { name: 'Asked, answered, changed, tested' });
  await expect(talk.getByText(/^Another way: Collar line: 2 mm lower/)).toBeVisible();
  await talk.getByRole('button', { name: 'Accept this answer' }).click();
  await talk.getByRole('button', { name: 'Put this change into a round' }).click();
  const carried = talk.getByRole('region', { name: 'Put this change into a round' });
  await carried.getByRole('button', { name: 'Put it into the round' }).click();
  await expect(talk.getByRole('link', { name: 'Round 2 carries it' })).toBeVisible();
  const changes = (await recordsHeld<Round>(lead, 'round')).flatMap((round) => round.changes);
  expect(changes.filter(({ proposal }) => proposal !== undefined)).toMatchObject([
    { finding: FINDING, structured: { line: 'collar', direction: 'lower', by: { amount: 2 } } },
  ]);
};

const thank = async (lead: Page) => {
  const told = lead.getByRole('region', { name: 'Tell the testers' });
  await told.getByRole('button', { name: 'Thank 1 tester' }).click();
  await expect(told.getByText('Thanked: 1 tester')).toBeVisible();
};

const readThanks = async (phone: Page) => {
  const card = phone.getByRole('region', { name: 'You felt it. The next sample is changed.' });
  await expect(card).toContainText('rubbing, ankle bones');
  expect(await recordsHeld<Thanks>(phone, 'thanks')).toHaveLength(1);
};

test('from an odd run to a thank-you, each of four people without a network in between', async ({
  browser,
}) => {
  const lead = await comeIn(browser, hub.codes.lead, {});
  await lead.getByRole('link', { name: 'Test', exact: true }).click();
  await lead.locator('.todo').waitFor();
  const project = hub.url + new URL(lead.url()).pathname;
  const phone = await comeIn(browser, hub.codes.tester, PHONE);
  await lead.goto(`${project}/testers`);
  const blind = await comeIn(browser, await inviteCode(lead, 'Another phone T02'), PHONE);
  await blind.locator('.pair-shoe').waitFor();
  await offline(blind);

  await phone.locator('.pair-shoe').waitFor();
  await offline(phone);
  await logOddRun(phone);
  await online(phone);
  await syncTester(phone, hub);

  await syncLead(lead);
  await lead.goto(`${project}/ask`);
  await offline(lead);
  await askAboutRun(lead);
  await online(lead);
  await syncLead(lead);

  await syncTester(phone, hub);
  await offline(phone);
  await phone.reload();
  await answerInTwoTaps(phone);
  await online(phone);
  await syncTester(phone, hub);
  await syncLead(lead);
  await readAnswer(lead, project);

  const finding = `${project}/changes/findings/${FINDING}`;
  await lead.goto(finding);
  await expect(lead.getByText(/^Trade: answer the finding/)).toBeVisible();
  await syncLead(lead);
  const specialist = await comeIn(browser, await inviteCode(lead, 'Invite a specialist'), {
    viewport: { width: 390, height: 844 },
  });
  await openFinding(specialist);
  await offline(specialist);
  await propose(specialist);
  await online(specialist);
  await expect(specialist.getByText('Not sent yet: kept on this device.')).toHaveCount(0);

  await syncLead(lead);
  await lead.goto(finding);
  await acceptAndCarry(lead);
  await thank(lead);
  await syncLead(lead);
  await syncTester(phone, hub);
  await readThanks(phone);
  await online(blind);
  await syncTester(blind, hub);
  await blind.locator('.pair-shoe').waitFor();
  await expect(blind.getByText('You felt it.', { exact: false })).toHaveCount(0);
  expect(await recordsHeld<Thanks>(blind, 'thanks')).toEqual([]);
});

/** The file that a press saves. */
const savedBy = async (page: Page, button: string): Promise<Buffer> => {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).click();
  return readFile(await (await download).path());
};

/** Opens a file, agrees to whatever is asked about, and takes it in. */
const takeIn = async (page: Page, file: Buffer) => {
  await page.goto(`${hub.url}/file`);
  await page.getByLabel('Choose a file').setInputFiles({
    ...{ name: 'sent.pairlog', mimeType: 'application/octet-stream', buffer: file },
  });
  const sheet = page.locator('section.sheet');
  await sheet.waitFor();
  for (const one of await sheet.getByRole('checkbox').all()) await one.check();
  await page.getByRole('button', { name: 'Take it in' }).click();
  await expect(page).not.toHaveURL(/\/file$/);
};

test('the same by files, without a hub', async ({ browser }) => {
  const fresh = async (on: object): Promise<Page> => {
    const page = await (await browser.newContext({ ...on, locale: 'en-GB' })).newPage();
    await page.goto(hub.url);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    return page;
  };
  const lead = await fresh({});
  const [phone, blind] = [await fresh(PHONE), await fresh(PHONE)];
  const specialist = await fresh({ viewport: { width: 390, height: 844 } });
  await hub.pause();

  await takeIn(lead, await readFile(log));
  await lead.getByRole('link', { name: 'Test', exact: true }).click();
  await lead.locator('.todo').waitFor();
  const project = hub.url + new URL(lead.url()).pathname;
  const handOutTo = async (page: Page, tester: string) => {
    await lead.goto(`${project}/testers`);
    await takeIn(page, await savedBy(lead, `Hand-out file ${tester}`));
  };
  const fromPhone = async () => {
    await phone.goto(`${hub.url}/unsent`);
    await takeIn(lead, await savedBy(phone, 'Send as a file'));
    await phone.goto(hub.url);
  };
  await handOutTo(phone, 'T01');
  await handOutTo(blind, 'T02');

  await logOddRun(phone);
  await fromPhone();
  await lead.goto(`${project}/ask`);
  await askAboutRun(lead);
  await handOutTo(phone, 'T01');
  await answerInTwoTaps(phone);
  await fromPhone();
  await readAnswer(lead, project);

  await lead.goto(`${hub.url}/desk/group`);
  await takeIn(specialist, await savedBy(lead, 'File for a specialist'));
  await openFinding(specialist);
  await propose(specialist);
  await specialist.goto(hub.url);
  await takeIn(lead, await savedBy(specialist, 'Send my answers as a file'));

  await lead.goto(`${project}/changes/findings/${FINDING}`);
  await acceptAndCarry(lead);
  await thank(lead);
  await handOutTo(phone, 'T01');
  await readThanks(phone);
  // Nothing came up that is for whoever wears the pair blind.
  await lead.goto(`${project}/testers`);
  const last = await savedBy(lead, 'Hand-out file T02');
  await blind.goto(`${hub.url}/file`);
  await blind.getByLabel('Choose a file').setInputFiles({
    ...{ name: 'sent.pairlog', mimeType: 'application/octet-stream', buffer: last },
  });
  await expect(blind.getByText('Everything in this file is already here.')).toBeVisible();
  await blind.goto(hub.url);
  await blind.locator('.pair-shoe').waitFor();
  await expect(blind.getByText('You felt it.', { exact: false })).toHaveCount(0);
  expect(await recordsHeld<Thanks>(blind, 'thanks')).toEqual([]);
});

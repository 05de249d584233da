/**
 * Four people on four profiles, each without a network in between: a tester logs an odd run, the lead asks, the tester
 * answers in two taps; a finding goes to a specialist, who proposes 2 mm less by a day; the lead accepts and the next
 * round carries it; the tester reads the thank-you, and who wears the shoe blind reads none.
 */
import { mkdtemp, rm } from 'node:fs/promises';
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
test.beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'pairlog-four-'));
  const file = join(folder, 'four.pairlog');
  await writeThanksLog(file, Date.now(), false);
  hub = await startHubProcess('--demo', file);
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

  // The tester logs, without a network.
  await phone.locator('.pair-shoe').waitFor();
  await offline(phone);
  await logOddRun(phone);
  await online(phone);
  await syncTester(phone, hub);

  // The lead asks from the odd run, without a network too.
  await syncLead(lead);
  await lead.goto(`${project}/ask`);
  await offline(lead);
  await lead.getByRole('button', { name: /^Ask T01: Was it really 1:15/ }).click();
  await expect(
    lead.getByRole('region', { name: 'Waiting for an answer' }).getByText(/^Was it really/),
  ).toBeVisible();
  await online(lead);
  await syncLead(lead);

  // The tester answers in two taps at most.
  await syncTester(phone, hub);
  await offline(phone);
  await phone.reload();
  const question = phone.getByRole('region', { name: 'A question from your lead' });
  await expect(question).toContainText(/Was it really 1:15/);
  const hand = new Hand(phone);
  await hand.tap(question.getByRole('button', { name: 'No, I mistyped' }));
  await expect(phone.getByRole('region', { name: 'Your answer' })).toContainText('No, I mistyped');
  expect(hand.taps).toBeLessThanOrEqual(2);
  await online(phone);
  await syncTester(phone, hub);
  await syncLead(lead);
  await lead.goto(project);
  await lead.getByRole('link', { name: '1 answer to read' }).click();
  await expect(lead.getByRole('region', { name: '1 answer to read' })).toContainText(
    'No, I mistyped',
  );

  // The finding goes to a specialist, who proposes 2 mm less by a day, without a network.
  const finding = `${project}/changes/findings/${FINDING}`;
  await lead.goto(finding);
  const talk = lead.getByRole('region', { name: 'Asked, answered, changed, tested' });
  await expect(talk.getByText(/^Trade: answer the finding/)).toBeVisible();
  await syncLead(lead);
  const specialist = await comeIn(browser, await inviteCode(lead, 'Invite a specialist'), {
    viewport: { width: 390, height: 844 },
  });
  await specialist.getByRole('link', { name: /: The collar rubs$/ }).click();
  await specialist.getByRole('heading', { level: 1, name: 'The collar rubs' }).waitFor();
  await offline(specialist);
  await specialist.getByRole('button', { name: 'Answer' }).click();
  const form = specialist.getByRole('form', { name: 'Your answer' });
  await form.getByText('Another way', { exact: true }).click();
  await form.getByLabel('What moves or grows').selectOption({ label: 'Collar line' });
  await form.getByLabel('Which way').selectOption({ label: 'lower' });
  await form.getByLabel('By how much').fill('2');
  await form.getByLabel('Next sample ready on').fill(dayFromNow(7));
  await form.getByRole('button', { name: 'Send the answer' }).click();
  await expect(specialist.getByText('Not sent yet: kept on this device.')).toBeVisible();
  await online(specialist);
  await expect(specialist.getByText('Not sent yet: kept on this device.')).toHaveCount(0);

  // The lead accepts, and the next round carries it.
  await syncLead(lead);
  await lead.goto(finding);
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

  // Whoever felt it and may know hears it; whoever wears the pair blind does not.
  const told = lead.getByRole('region', { name: 'Tell the testers' });
  await told.getByRole('button', { name: 'Thank 1 tester' }).click();
  await expect(told.getByText('Thanked: 1 tester')).toBeVisible();
  await syncLead(lead);
  await syncTester(phone, hub);
  const card = phone.getByRole('region', { name: 'You felt it. The next sample is changed.' });
  await expect(card).toContainText('rubbing, ankle bones');
  expect(await recordsHeld<Thanks>(phone, 'thanks')).toHaveLength(1);
  await online(blind);
  await syncTester(blind, hub);
  await blind.locator('.pair-shoe').waitFor();
  await expect(blind.getByText('You felt it.', { exact: false })).toHaveCount(0);
  expect(await recordsHeld<Thanks>(blind, 'thanks')).toEqual([]);
});

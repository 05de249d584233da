/** What must never be lost: drafts across a killed tab and an update, and a log whose phone is signed out. */
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test, type Page } from '@playwright/test';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

const dist = fileURLToPath(new URL('../../dist', import.meta.url));
let hub: HubProcess;
let copy: string;

test.beforeEach(async () => {
  copy = join(await mkdtemp(join(tmpdir(), 'pairlog-dist-')), 'dist');
  await cp(dist, copy, { recursive: true });
  hub = await startHubProcess('--demo', DEMO, '--dist', copy);
});
test.afterEach(() => hub.stop());

const joinAsTester = async (page: Page) => {
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.locator('.figure').waitFor();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
};

test('a draft survives a tab that is closed in the middle', async ({ page, context }) => {
  await joinAsTester(page);
  await context.setOffline(true);
  await page.getByRole('link', { name: 'Log a run' }).click();
  await page.getByLabel('Distance, km').fill('7.3');
  await page.getByText('Nothing bothered me').click();
  // The last thing typed is on its way to the store; then the tab goes without a goodbye.
  await page.waitForTimeout(200);
  await page.close();
  const again = await context.newPage();
  await again.goto(hub.url);
  await expect(again.getByText('A run is half filled in.')).toBeVisible();
  await again.getByRole('link', { name: 'Go on' }).click();
  await expect(again.getByLabel('Distance, km')).toHaveValue('7.3');
  await expect(again.getByRole('radio', { name: 'Nothing bothered me' })).toBeChecked();
});

test('an update waits until it is agreed to, and keeps the half-filled form', async ({ page }) => {
  await joinAsTester(page);
  await page.getByRole('link', { name: 'Log a run' }).click();
  await page.getByLabel('Distance, km').fill('9.1');
  const worker = join(copy, 'service-worker.js');
  await writeFile(worker, `${await readFile(worker, 'utf8')}\n// a newer version\n`);
  // A build would have packed it anew.
  for (const ending of ['.gz', '.br']) await rm(worker + ending, { force: true });
  await hub.restart();
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  await expect(page.getByText('A newer version is ready.')).toBeVisible();
  await expect(page.getByLabel('Distance, km')).toHaveValue('9.1');
  const reloaded = page.waitForEvent('load');
  await page.getByRole('button', { name: 'Use it' }).click();
  await reloaded;
  await expect(page.getByLabel('Distance, km')).toHaveValue('9.1');
});

test('an odd distance is asked about in place, and saved when it is right', async ({ page }) => {
  await joinAsTester(page);
  await page.getByRole('link', { name: 'Log a run' }).click();
  const distance = page.getByLabel('Distance, km');
  await distance.fill('500');
  await page.getByLabel('Time', { exact: true }).fill('30:00');
  await page.getByRole('button', { name: 'Save' }).click();
  const question = page.getByRole('group', { name: '500 km in 30:00: is that right?' });
  await expect(question).toBeFocused();
  await question.getByRole('button', { name: 'Change it' }).click();
  await expect(question).toBeHidden();
  await expect(distance).toBeFocused();
  await distance.press('Enter');
  await expect(question).toBeFocused();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Saved on this phone')).toBeVisible();
});

test('a day before the pair was handed out is asked about, and saved when it is right', async ({
  page,
}) => {
  await joinAsTester(page);
  await page.getByRole('link', { name: 'Log a run' }).click();
  await page.getByLabel('Distance, km').fill('5');
  const day = page.getByLabel('Day of the run');
  await day.selectOption({ label: 'Another day' });
  await page.getByLabel('Started').fill('2025-01-05T07:00');
  await page.getByRole('button', { name: 'Save' }).click();
  const question = page.getByRole('group', {
    name: 'By the log, pair 637 was not with you then: 5 Jan 2025, 07:00. Is the day right?',
  });
  await expect(question).toBeFocused();
  await question.getByRole('button', { name: 'Change it' }).click();
  await expect(day).toBeFocused();
  await page.getByRole('button', { name: 'Save' }).click();
  await question.getByRole('button', { name: 'Yes, save it' }).click();
  await expect(page.getByText('Saved on this phone')).toBeVisible();
});

test('an erased run can be brought back, and a change keeps what was before', async ({ page }) => {
  await joinAsTester(page);
  await page.getByRole('link', { name: 'My runs' }).click();
  const first = page.getByRole('listitem').first();
  const text = await first.locator('strong').textContent();
  await first.getByRole('button', { name: 'Erase' }).click();
  await expect(page.getByText('Run erased')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('Run is back')).toBeVisible();
  await expect(first.locator('strong')).toHaveText(text as string);
  await first.getByRole('link', { name: 'Change' }).click();
  await page.getByLabel('Distance, km').fill('5.5');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('heading', { name: /^5\.5 km in/ })).toBeVisible();
  await page.getByRole('link', { name: 'Earlier versions' }).click();
  await expect(page.getByText(text as string).first()).toBeVisible();
});

test('what was saved without a network is sent once there is one, with the app closed', async ({
  page,
  context,
  request,
}) => {
  await joinAsTester(page);
  await hub.pause();
  await page.getByRole('link', { name: 'Log a run' }).click();
  await page.getByLabel('Distance, km').fill('12.34');
  await page.getByText('Nothing bothered me').click();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('only on this phone')).toBeVisible();
  const waits = () =>
    page.evaluate(async () => {
      const registration = (await navigator.serviceWorker.ready) as ServiceWorkerRegistration & {
        sync: { getTags(): Promise<string[]> };
      };
      return registration.sync.getTags();
    });
  await expect.poll(waits, { timeout: 15_000 }).toContain('outbox');
  const blank = await context.newPage();
  const browser = await context.newCDPSession(blank);
  const registered = new Promise<string>((done) => {
    browser.on('ServiceWorker.workerRegistrationUpdated', ({ registrations }) => {
      const own = registrations.find(({ scopeURL }) => scopeURL.startsWith(hub.url));
      if (own) done(own.registrationId);
    });
  });
  await browser.send('ServiceWorker.enable');
  const registrationId = await registered;
  await page.close();
  await hub.resume();
  // The browser would ask by itself when its network comes back; here the hub came back.
  await browser.send('ServiceWorker.dispatchSyncEvent', {
    origin: hub.url,
    registrationId,
    tag: 'outbox',
    lastChance: false,
  });
  const token = 'b'.repeat(43);
  await request.post(`${hub.url}/v1/join`, {
    data: { code: hub.codes.lead, token, device: 'b'.repeat(16) },
    headers: { origin: hub.url },
  });
  const arrived = async () => {
    const answer = await request.get(`${hub.url}/v1/pull`, {
      headers: { authorization: `Bearer ${token}` },
      params: { scope: 'all' },
    });
    const pages = JSON.stringify(await answer.json());
    return pages.includes('"distanceM":12340');
  };
  await expect.poll(arrived, { timeout: 20_000 }).toBe(true);
});

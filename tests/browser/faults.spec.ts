/**
 * Nothing that the app called saved is ever lost: the browser's process is killed at random moments, the
 * disk is full, the browser clears its storage, the clock is set back. On the real app, hub and browser.
 */
import { spawnSync } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  chromium,
  devices,
  expect,
  test,
  type BrowserContext,
  type Locator,
  type Page,
} from '@playwright/test';
import { seeded } from '../seeded.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { launchOptions } from './programs.ts';

/** `PAIRLOG_KILLS=50` for the long run. */
const KILLS = Number(process.env['PAIRLOG_KILLS'] ?? 20);

// A browser that is killed cannot hand over its trace.
test.use({ trace: 'off' });

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const joinAsTester = async (page: Page) => {
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.locator('.figure').waitFor();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
};

const openProfile = (folder: string): Promise<BrowserContext> =>
  chromium.launchPersistentContext(folder, {
    ...launchOptions,
    ...devices['Pixel 7'],
    viewport: { width: 360, height: 760 },
    locale: 'en-GB',
  });

/** Kills every process of the browser on this profile, the way a phone out of memory does: without a word. */
const killBrowser = (folder: string): void => {
  spawnSync('pkill', ['-9', '-f', `user-data-dir=${folder}`]);
};

/** What the device's database holds, read by the page itself. */
const stored = (page: Page, table: 'heads' | 'drafts'): Promise<unknown[]> =>
  page.evaluate(
    (name) =>
      new Promise((done, fail) => {
        const opening = indexedDB.open('pairlog');
        opening.onerror = () => fail(new Error('the database does not open'));
        opening.onsuccess = () => {
          const asking = opening.result.transaction(name).objectStore(name).getAll();
          asking.onsuccess = () => {
            opening.result.close();
            done(asking.result as unknown[]);
          };
        };
      }),
    table,
  );

/** Writes until the browser refuses. */
const fillStorage = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((done, fail) => {
      const opening = indexedDB.open('filler');
      opening.onupgradeneeded = () =>
        opening.result.createObjectStore('pieces', { autoIncrement: true });
      opening.onerror = () => fail(new Error('the filler does not open'));
      opening.onsuccess = () => done(opening.result);
    });
    const write = (bytes: number) =>
      new Promise<boolean>((done) => {
        const piece = new Uint8Array(bytes);
        for (let at = 0; at < bytes; at += 65_536)
          crypto.getRandomValues(piece.subarray(at, Math.min(bytes, at + 65_536)));
        const tx = db.transaction('pieces', 'readwrite');
        tx.objectStore('pieces').add(piece);
        tx.oncomplete = () => done(true);
        tx.onabort = () => done(false);
      });
    for (const size of [1_000_000, 50_000]) while (await write(size));
    // The browser looks at the disk now and then only: full is what refuses three times in a row.
    for (let refused = 0; refused < 3;) {
      if (await write(1000)) refused = 0;
      else {
        refused++;
        await new Promise((done) => setTimeout(done, 250));
      }
    }
    db.close();
  });

interface Head {
  readonly kind: string;
  readonly body: { readonly distanceM?: number } | null;
}

test(`${KILLS} kills at random moments lose no saved run and no draft`, async () => {
  test.setTimeout(1_200_000);
  const folder = await mkdtemp(join(tmpdir(), 'pairlog-kill-'));
  const random = seeded(20261125);
  let context = await openProfile(folder);
  let page = context.pages()[0] as Page;
  await joinAsTester(page);
  const log = (await page.getByRole('link', { name: 'Log a run' }).getAttribute('href')) as string;

  /** Distances in metres that the app called saved. */
  const called: number[] = [];
  /** What was typed last, and the last of it that was seen in the store as a draft, until it is saved. */
  let typed = '';
  let kept = '';
  let metres = 1000;
  /** Logs one run after the other until the browser is gone. */
  const logOn = async (at: Page) => {
    for (;;) {
      metres += 10;
      await at.goto(hub.url + log);
      typed = (metres / 1000).toFixed(2);
      await at.getByLabel('Distance, km').fill(typed);
      const drafts = (await stored(at, 'drafts')) as { distance: string }[];
      if (drafts.some(({ distance }) => distance === typed)) kept = typed;
      await at.getByText('Nothing bothered me').click();
      await at.getByRole('button', { name: 'Save' }).click();
      await at.getByText('Saved on this phone').waitFor();
      called.push(metres);
      typed = '';
      kept = '';
    }
  };

  let drafts = 0;
  for (let kill = 0; kill < KILLS; kill++) {
    const logging = logOn(page).catch(() => undefined);
    await new Promise((done) => setTimeout(done, 150 + random() * 1500));
    const gone = new Promise((done) => context.on('close', done));
    killBrowser(folder);
    await Promise.all([logging, gone]);
    context = await openProfile(folder);
    page = context.pages()[0] as Page;
    await page.goto(hub.url + log);
    const distance = page.getByLabel('Distance, km');
    await distance.waitFor();
    const heads = (await stored(page, 'heads')) as Head[];
    const runs = heads.filter(({ kind }) => kind === 'run').map(({ body }) => body?.distanceM);
    for (const saved of called) expect(runs, `kill ${kill}: ${saved} m`).toContain(saved);
    const own = runs.filter((one) => one !== undefined && one > 1000 && one <= metres);
    expect(new Set(own).size, `kill ${kill}: no run twice`).toBe(own.length);
    // The form shows the last draft that reached the store, or a newer one that was on its way.
    const shown = await distance.inputValue();
    const isSaved = runs.includes(Math.round(Number(typed) * 1000));
    if (kept !== '' && !isSaved) {
      drafts++;
      expect([kept, typed], `kill ${kill}: the draft`).toContain(shown);
    } else expect(['', typed], `kill ${kill}: the form`).toContain(shown);
    typed = kept = shown;
  }
  console.log(
    `${KILLS} kills: ${called.length} runs called saved, ${drafts} drafts kept, none lost`,
  );
  // Enough of both, so that the test says something on a slow machine too.
  expect(called.length).toBeGreaterThan(KILLS / 5);
  expect(drafts).toBeGreaterThan(0);
  await context.close();
  await rm(folder, { recursive: true, force: true });
});

test('a full disk is said clearly, keeps the draft, and the run is saved once there is room', async ({
  page,
  context,
}) => {
  await joinAsTester(page);
  const session = await context.newCDPSession(page);
  const origin = new URL(hub.url).origin;
  await page.getByRole('link', { name: 'Log a run' }).click();
  await page.getByLabel('Distance, km').fill('8.8');
  await page.getByText('Nothing bothered me').click();
  await page.waitForTimeout(200);
  // A small disk, filled to the last kilobyte by something else on the same origin.
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 5_000_000 });
  await fillStorage(page);
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('alert')).toContainText('This phone has no room left');
  await expect(page.getByLabel('Distance, km')).toHaveValue('8.8');
  await page.evaluate(() => indexedDB.deleteDatabase('filler'));
  await session.send('Storage.overrideQuotaForOrigin', { origin });
  await page.reload();
  await expect(page.getByLabel('Distance, km')).toHaveValue('8.8');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Saved on this phone')).toBeVisible();
});

test('a phone that the browser cleared says so and takes everything back from the hub', async ({
  page,
  context,
}) => {
  await joinAsTester(page);
  await page.getByRole('link', { name: 'Log a run' }).click();
  await page.getByLabel('Distance, km').fill('9.9');
  await page.getByText('Nothing bothered me').click();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Saved on this phone')).toBeVisible();
  await page.goto(`${hub.url}/unsent`);
  await page.getByRole('button', { name: 'Send now' }).click();
  await expect(page.getByText('Everything is with your group.')).toBeVisible();
  await page.goto(`${hub.url}/runs`);
  await page.getByRole('link', { name: 'Change' }).first().waitFor();
  const before = await page.getByRole('link', { name: 'Change' }).count();
  const session = await context.newCDPSession(page);
  const origin = new URL(hub.url).origin;
  // What an eviction takes: all that scripts wrote. A cookie out of their reach stays.
  await session.send('Storage.clearDataForOrigin', {
    origin,
    storageTypes: 'indexeddb,cache_storage,service_workers,local_storage',
  });
  await page.goto(hub.url);
  await expect(page.getByText('The browser had cleared this phone.')).toBeVisible();
  await page.goto(`${hub.url}/runs`);
  await expect(page.getByRole('link', { name: 'Change' })).toHaveCount(before);
  await expect(page.getByText('9.9 km')).toBeVisible();
});

test('a clock set back by a day costs no run and no edit', async ({ page }) => {
  await joinAsTester(page);
  const save = async (saved: Locator) => {
    await page.getByRole('button', { name: 'Save' }).click();
    // Once a sync has seen the hub's clock, the phone asks which of the two is right.
    const right = page.getByRole('button', { name: 'Yes, save it' });
    await expect(saved.or(right).first()).toBeVisible();
    if (await right.isVisible()) await right.click();
    await expect(saved).toBeVisible();
  };
  const logRun = async (distance: string) => {
    await page.goto(hub.url);
    await page.getByRole('link', { name: 'Log a run' }).click();
    await page.getByLabel('Distance, km').fill(distance);
    await page.getByText('Nothing bothered me').click();
    await save(page.getByText('Saved on this phone'));
  };
  await logRun('7.77');
  await page.clock.setSystemTime(Date.now() - 86_400_000);
  await page.goto(`${hub.url}/runs`);
  await page
    .getByRole('listitem')
    .filter({ hasText: '7.8 km' })
    .getByRole('link', { name: 'Change' })
    .click();
  await page.getByLabel('Distance, km').fill('6.66');
  await save(page.getByText('6.7 km'));
  await logRun('5.55');
  await page.goto(`${hub.url}/unsent`);
  await page.getByRole('button', { name: 'Send now' }).click();
  await expect(page.getByText('Everything is with your group.')).toBeVisible();
  // Whoever else has the log sees the edit and the second run, and not the first figure.
  const heads = (await stored(page, 'heads')) as Head[];
  const distances = heads.filter(({ kind }) => kind === 'run').map(({ body }) => body?.distanceM);
  expect(distances).toContain(6660);
  expect(distances).toContain(5550);
  expect(distances).not.toContain(7770);
});

/**
 * No white page and no waiting for ever: where the browser refuses its database, a part of the app cannot be fetched
 * or a read fails, one screen says so and what to do. The refusals are real ones, of the browser and of the hub.
 */
import { cp, mkdir, mkdtemp, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium, devices, expect, test, type Page } from '@playwright/test';
import { readBundle, unpackBundle } from '../../core/records/index.ts';
import { axeFaults } from './axe.ts';
import { chooseLanguage } from './device.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { launchOptions } from './programs.ts';

const dist = fileURLToPath(new URL('../../dist', import.meta.url));
const phone = { ...devices['Pixel 7'], viewport: { width: 360, height: 760 } };
let hub: HubProcess;
let copy: string;

test.beforeEach(async () => {
  copy = join(await mkdtemp(join(tmpdir(), 'pairlog-dist-')), 'dist');
  await cp(dist, copy, { recursive: true });
  hub = await startHubProcess('--demo', DEMO, '--dist', copy);
});
test.afterEach(() => hub.stop());

// A service worker would have every file from the start; here it is the one that is missing.
test.use({ serviceWorkers: 'block' });

const joinAs = async (page: Page, code: string | null): Promise<void> => {
  await page.goto(`${hub.url}/join#${code}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.waitForURL(({ pathname }) => pathname !== '/join');
  await page.locator('main h1').waitFor();
  // A tester's pairs have come.
  if (code === hub.codes.tester) await page.locator('.figure').waitFor();
};

/** Takes the files of `dist/assets` that match away from the hub, as an update does with those of the old version. */
const takeAway = async (files: RegExp): Promise<() => Promise<void>> => {
  const aside = join(copy, '..', 'aside');
  await mkdir(aside);
  const gone = (await readdir(join(copy, 'assets'))).filter((file) => files.test(file));
  expect(gone.length).toBeGreaterThan(0);
  for (const file of gone) await rename(join(copy, 'assets', file), join(aside, file));
  await hub.restart();
  return async () => {
    for (const file of gone) await rename(join(aside, file), join(copy, 'assets', file));
    await hub.restart();
  };
};

/** Another version of the app has raised the database's: from then on this one is refused every read. */
const takeDatabaseAway = async (page: Page): Promise<void> => {
  const other = await page.context().newPage();
  await other.goto(`${hub.url}/manifest.webmanifest`);
  await other.evaluate(
    () =>
      new Promise<void>((done, fail) => {
        const opening = indexedDB.open('pairlog', 1000);
        opening.onerror = () => fail(new Error('the version is not raised'));
        opening.onsuccess = () => {
          opening.result.close();
          done();
        };
      }),
  );
  await other.close();
};

const title = (page: Page) => page.locator('#fault h1:visible');

test('a browser that refuses its database is said so, in its language', async () => {
  for (const [locale, says, step, sign] of [
    ['en-GB', 'Pairlog cannot save on this device', /Leave private browsing/, /storage refused/],
    ['zh-CN', 'Pairlog 无法保存数据', /退出无痕浏览/, /存储被拒绝/],
  ] as const) {
    const folder = await mkdtemp(join(tmpdir(), 'pairlog-refused-'));
    await mkdir(join(folder, 'Default'));
    // 2: sites may keep nothing, neither cookies nor databases.
    await writeFile(
      join(folder, 'Default', 'Preferences'),
      JSON.stringify({ profile: { default_content_setting_values: { cookies: 2 } } }),
    );
    const context = await chromium.launchPersistentContext(folder, {
      ...launchOptions,
      ...phone,
      locale,
    });
    const page = context.pages()[0] as Page;
    await page.goto(hub.url);
    await expect(title(page)).toHaveText(says);
    await expect(title(page)).toBeFocused();
    await expect(page.locator('#fault li:visible')).toHaveCount(3);
    await expect(page.getByText(step)).toBeVisible();
    await expect(page.getByText(sign)).toBeVisible();
    await expect(page.getByRole('button')).toHaveCount(1);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await axeFaults(page)).toEqual([]);
    }
    await page.setViewportSize({ width: 320, height: 640 });
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
    ).toBeLessThanOrEqual(0);
    const again = page.waitForEvent('load');
    await page.getByRole('button').click();
    await again;
    await expect(title(page)).toHaveText(says);
    await context.close();
    await rm(folder, { recursive: true, force: true });
  }
});

test('an app whose first script is not there says so, and begins once it is', async ({ page }) => {
  const giveBack = await takeAway(/^first-page.*\.js$/);
  await page.goto(hub.url);
  await expect(title(page)).toHaveText('A part of Pairlog did not arrive');
  await expect(page.getByRole('button', { name: 'Send my log as a file' })).toBeHidden();
  await giveBack();
  await page.getByRole('button', { name: 'Reload' }).click();
  await expect(page.getByRole('heading', { name: 'Which test are you in?' })).toBeVisible();
});

test('a screen whose file is gone after an update says so; the own log goes out as a file', async ({
  page,
}) => {
  await joinAs(page, hub.codes.tester);
  // Written down here only: the hub cannot have it.
  await page.getByRole('link', { name: 'Log a run' }).click();
  await page.getByLabel('Distance, km').fill('12.34');
  await page.getByText('Nothing bothered me').click();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Saved on this phone')).toBeVisible();
  await page.waitForLoadState('networkidle');
  const giveBack = await takeAway(/^settings-screen-.*\.js$/);
  await page.getByRole('link', { name: 'Settings' }).click();
  await expect(title(page)).toHaveText('A part of Pairlog did not arrive');
  await expect(page.locator('#app')).toBeHidden();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Send my log as a file' }).click();
  const file = await download;
  expect(file.suggestedFilename()).toMatch(/^pairlog-\d{4}-\d\d-\d\d\.pairlog$/);
  const unpacked = unpackBundle(await readFile(await file.path()));
  if (!unpacked.ok) throw new Error(unpacked.why);
  const bundle = readBundle(unpacked.text);
  expect(bundle.problems).toEqual([]);
  const distances = bundle.revisions.map(({ revision }) => revision.body?.['distanceM']);
  expect(distances).toContain(12_340);
  expect(new Set(bundle.revisions.map(({ revision }) => revision.author)).size).toBe(1);
  await giveBack();
  await page.getByRole('button', { name: 'Reload' }).click();
  await expect(page.getByRole('heading', { name: 'Settings' })).toBeVisible();
});

test('a part of the log screen that is not there leaves the run to be saved', async ({ page }) => {
  await joinAs(page, hub.codes.tester);
  await page.getByRole('link', { name: 'Log a run' }).waitFor();
  await page.waitForLoadState('networkidle');
  await takeAway(/^(track-part|complaint-editor)-.*\.js$/);
  await page.getByRole('link', { name: 'Log a run' }).click();
  await page.getByLabel('Distance, km').fill('6.54');
  await page.getByText('Something did').click();
  await expect(page.getByText('A part of this screen did not arrive.').first()).toBeVisible();
  await page.getByText('Nothing bothered me').click();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Saved on this phone')).toBeVisible();
});

test('a language that was chosen is the fault’s too', async ({ page }) => {
  await joinAs(page, hub.codes.tester);
  await page.goto(`${hub.url}/settings`);
  await chooseLanguage(page, '简体中文');
  await takeAway(/^first-page.*\.js$/);
  // The file stays in the browser's cache for a year, until the browser needs the room.
  await (await page.context().newCDPSession(page)).send('Network.clearBrowserCache');
  await page.reload();
  await expect(title(page)).toHaveText('Pairlog 没有完整载入');
  await expect(page.getByRole('button', { name: '把我的记录作为文件发送' })).toBeVisible();
});

test('a read that fails never waits for ever, on the phone, at the desk and with the reader', async ({
  page,
  browser,
}) => {
  test.setTimeout(1_200_000);
  await joinAs(page, hub.codes.tester);
  const log = await page.getByRole('link', { name: 'Log a run' }).getAttribute('href');
  await takeDatabaseAway(page);
  // A link within the app: the page that stands goes on to a screen that reads.
  await page.getByRole('link', { name: 'My runs' }).click();
  await expect(title(page)).toHaveText('Pairlog cannot save on this device');
  await expect(page.getByText(/One moment/)).toBeHidden();
  await expect(page.getByRole('button', { name: 'Send my log as a file' })).toBeVisible();
  for (const path of ['/', log, '/runs', '/unsent', '/settings', '/file']) {
    await page.goto(`${hub.url}${path}`);
    await expect(title(page), path ?? '').toHaveText('Pairlog cannot save on this device');
  }
  const context = await browser.newContext({ locale: 'en-GB', serviceWorkers: 'block' });
  const lead = await context.newPage();
  await joinAs(lead, hub.codes.lead);
  await lead.goto(`${hub.url}/desk/group`);
  await lead.getByRole('button', { name: 'Sync now' }).waitFor();
  await takeDatabaseAway(lead);
  // The desk stands and its worker is refused: what it shows stays; what it has not read is a fault.
  await lead.goto(`${hub.url}/desk`);
  await expect(title(lead)).toHaveText('Pairlog cannot save on this device');
  await context.close();
});

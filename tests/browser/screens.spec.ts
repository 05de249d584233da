/** Every screen, in both languages, light and dark: no violation that axe can find, and nothing wider than the phone. */
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeAll(async () => {
  hub = await startHubProcess('--demo', 'demo-data/wear-test.pairlog');
});
test.afterAll(() => hub.stop());

const scan = async (page: Page, name: string) => {
  await expect(page.getByText(/^(One moment|请稍候)/)).toHaveCount(0);
  // axe brings a copy of Playwright's types of its own; the page is the same.
  const { violations } = await new AxeBuilder({ page: page as never }).analyze();
  const found = violations.map(({ id, nodes }) => `${id}: ${nodes.map((n) => n.html).join(' | ')}`);
  expect(found, name).toEqual([]);
  const tooWide = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(tooWide, `${name} scrolls sideways`).toBeLessThanOrEqual(0);
};

/** Walks the screens at these addresses; `ready` does whatever opens a state of the last one. */
const walk = async (
  page: Page,
  paths: readonly string[],
  open: (page: Page, path: string) => Promise<void>,
) => {
  for (const language of ['English', '简体中文']) {
    await page.goto(`${hub.url}/settings`);
    await page.getByText(language, { exact: true }).click();
    await expect(page.getByRole('radio', { name: language })).toBeChecked();
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      for (const path of paths) {
        await page.goto(hub.url + path);
        await page.locator('main h1').waitFor();
        await open(page, path);
        await scan(page, `${path} ${language} ${colorScheme}`);
      }
    }
  }
};

test('the welcome screen', async ({ page }) => {
  await page.goto(hub.url);
  await page.locator('main h1').waitFor();
  await scan(page, 'welcome');
});

test('the tester’s screens', async ({ page }) => {
  test.setTimeout(240_000);
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.locator('.figure').waitFor();
  const log = (await page.getByRole('link', { name: /Log a run/ }).getAttribute('href')) as string;
  await page.goto(`${hub.url}/runs`);
  const run = (await page
    .getByRole('link', { name: 'Change' })
    .first()
    .getAttribute('href')) as string;
  await walk(
    page,
    [
      '/',
      log,
      '/runs',
      run,
      `${run}/history`,
      '/unsent',
      '/settings',
      log.replace('log', 'damage'),
      '/file',
      '/nowhere',
    ],
    async (at, path) => {
      if (path !== log) return;
      // The fullest state of the form: map, complaint, pain with its notice, everything unfolded.
      const radios = at.locator('main form');
      await radios.locator('input[value=something]').check({ force: true });
      await at.locator('.foot-map').waitFor();
      await at.locator('select').selectOption({ index: 3 });
      await at
        .locator('fieldset.field:has(.choices-ten)')
        .last()
        .locator('input[value="4"]')
        .check({ force: true });
      await at.locator('summary').click();
      await expect(at.locator('.notice-danger')).toBeVisible();
    },
  );
});

test('the lead’s screens', async ({ page }) => {
  test.setTimeout(300_000);
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await page.locator('.bars').waitFor();
  const project = new URL(page.url()).pathname;
  const tabs = ['pairs', 'complaints', 'bench', 'rounds', 'testers'];
  await walk(
    page,
    ['/', '/desk', '/desk/new', '/desk/group', ...tabs.map((tab) => `${project}/${tab}`)],
    async (at, path) => {
      if (path.startsWith(project)) await at.locator('.tabs').waitFor();
      if (path.endsWith('complaints')) {
        await at.locator('.foot-map [data-zone=U10]').first().focus();
        await at.keyboard.press('Enter');
      }
      // Unfold every form, so that it is looked at too.
      if (path.endsWith('bench') || path.endsWith('rounds') || path.endsWith('pairs'))
        await at
          .locator('main > button, main > .two-columns button:not(.button-quiet)')
          .last()
          .click();
      if (path.endsWith('bench')) await at.locator('summary').click();
    },
  );
});

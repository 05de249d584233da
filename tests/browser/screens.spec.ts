/**
 * Every screen of the phone, in both languages, light and dark: no violation that axe can find, and nothing wider than
 * the phone. The desk’s are looked at with its places.
 */
import { fileURLToPath } from 'node:url';
import { expect, test, type Page } from '@playwright/test';
import { writeGpx } from '../../core/track/index.ts';
import { fixAt, START_MS, trackOf } from '../core/track/tracks.ts';
import { axeFaults, COLOURS } from './axe.ts';
import { chooseLanguage } from './device.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { joinAsTester, openLead } from './two-people.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const gpx = writeGpx(
  trackOf(Array.from({ length: 200 }, (_, at) => fixAt(5 * at, 10 * at, START_MS + 3000 * at))),
);
const picture = fileURLToPath(new URL('../../demo-data/pictures/phone.png', import.meta.url));

/** A lead gives the tester one more pair, so that there is something to rank. */
const handOutSecondPair = async (page: Page) => {
  const context = await page.context().browser()?.newContext({ locale: 'en-GB' });
  const lead = await context?.newPage();
  if (!context || !lead) throw new Error('no second browser context');
  await lead.goto(`${hub.url}/join#${hub.codes.lead}`);
  await lead.getByRole('button', { name: 'Join' }).click();
  await lead.getByRole('link', { name: /Demo trainer/ }).click();
  await lead.getByRole('link', { name: 'Pairs', exact: true }).click();
  await lead.getByRole('button', { name: 'Hand out', exact: true }).click();
  for (const [label, code] of [
    ['Pair', '146'],
    ['Hand out to', 'T01'],
  ] as const) {
    const field = lead.getByLabel(label, { exact: true });
    // The option goes on with what tells it from the others: size, foot length.
    const option = field.locator('option').filter({ hasText: new RegExp(`^${code}\\b`) });
    await field.selectOption(await option.getAttribute('value'));
  }
  await lead.getByRole('button', { name: 'Save' }).click();
  await expect(lead.getByText('Pair 146 handed out to T01')).toBeVisible();
  await lead.goto(`${hub.url}/desk/group`);
  await lead.getByRole('button', { name: 'Sync now' }).click();
  await expect(lead.getByText('Up to date.')).toBeVisible();
  await context.close();
};

const logTwice = async (page: Page) => {
  for (const distance of ['6', '7']) {
    await page.getByRole('link', { name: 'Log a run in 146' }).click();
    await page.getByLabel('Distance, km').fill(distance);
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('Saved on this phone').waitFor();
  }
};

const scan = async (page: Page, name: string, rules?: readonly string[]) => {
  await expect(page.getByText(/^(One moment|请稍候)/)).toHaveCount(0);
  expect(await axeFaults(page, rules), name).toEqual([]);
  const tooWide = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(tooWide, `${name} scrolls sideways`).toBeLessThanOrEqual(0);
};

const LANGUAGES = ['English', '简体中文'] as const;

/** Walks the screens at these addresses; `ready` does whatever opens a state of the last one. */
const walk = async (
  page: Page,
  paths: readonly string[],
  open: (page: Page, path: string) => Promise<void>,
) => {
  for (const language of LANGUAGES) {
    await page.goto(`${hub.url}/settings`);
    await chooseLanguage(page, language);
    for (const path of paths) {
      await page.goto(hub.url + path);
      await page.locator('main h1').first().waitFor();
      await open(page, path);
      // Without motion a colour is there at once.
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
        const rules = colorScheme === 'dark' ? COLOURS : undefined;
        await scan(page, `${path} ${language} ${colorScheme}`, rules);
      }
    }
  }
};

test('the welcome screen', async ({ page }) => {
  await page.goto(hub.url);
  await page.locator('main h1').first().waitFor();
  await scan(page, 'welcome');
});

test('the tester’s screens', async ({ page }) => {
  test.setTimeout(1_200_000);
  await handOutSecondPair(page);
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.locator('.figure').first().waitFor();
  await logTwice(page);
  const log = (await page
    .getByRole('link', { name: 'Log a run in 637' })
    .getAttribute('href')) as string;
  await page.goto(`${hub.url}/runs`);
  const run = (await page
    .getByRole('link', { name: 'Change' })
    .first()
    .getAttribute('href')) as string;
  const project = await page.evaluate(
    () =>
      new Promise<string>((done) => {
        const opening = indexedDB.open('pairlog');
        opening.onsuccess = () => {
          const asking = opening.result.transaction('heads').objectStore('heads').getAll();
          asking.onsuccess = () => {
            const heads = asking.result as { id: string; kind: string }[];
            done(heads.find(({ kind }) => kind === 'project')?.id ?? '');
          };
        };
      }),
  );
  const rank = `/rank/${project}`;
  await walk(
    page,
    [
      '/',
      log,
      '/runs',
      run,
      `${run}/history`,
      run.replace('runs', 'run'),
      log.replace('log', 'pairs'),
      '/install',
      '/unsent',
      '/settings',
      log.replace('log', 'damage'),
      rank,
      '/file',
      '/nowhere',
    ],
    async (at, path) => {
      if (path === rank) {
        for (const _ of [1, 2]) await at.locator('main .stack .button-big').first().click();
        await expect(at.locator('main ol li')).toHaveCount(2);
      }
      if (path !== log) return;
      // The fullest state of the form: another day, map, complaint, pain with its notice, everything unfolded.
      await at.locator('form select').first().selectOption({ index: 2 });
      const radios = at.locator('main form');
      await at.locator('.track-place .field').first().waitFor();
      await radios.locator('label.choice:has(input[value=something])').click();
      await at.locator('.foot-map').waitFor();
      await at.locator('.sheet select').first().selectOption({ index: 3 });
      await at
        .locator('fieldset.field:has(.choices-ten)')
        .last()
        .locator('input[value="4"]')
        .check({ force: true });
      await at
        .locator('.sheet')
        .filter({ has: at.locator('.foot-map') })
        .locator('input[type=file]')
        .setInputFiles(picture);
      // The draft keeps the track, so only the first visit gives it.
      const track = at.locator('.track-place');
      if (await track.locator('input[type=file]').count())
        await track
          .locator('input[type=file]')
          .setInputFiles({ name: 'a.gpx', mimeType: 'text/xml', buffer: Buffer.from(gpx) });
      await track.locator('details summary').click();
      await track.locator('section > button').last().click();
      await at.locator('.way-map').waitFor();
      await at.locator('.photo img').first().waitFor();
      await at.locator('form > details > summary').click();
      await expect(at.locator('.caution-bar')).toBeVisible();
    },
  );
});

test('what a tester sees of a pair that must not be worn, and how its lead answers', async ({
  page,
  browser,
}) => {
  test.setTimeout(1_200_000);
  await joinAsTester(page, hub);
  await page.getByRole('link', { name: 'Log a run' }).click();
  await page.getByLabel('Distance, km').fill('6');
  await page.locator('.choices-ten').last().getByText('5', { exact: true }).click();
  await page.getByRole('button', { name: 'I have read this' }).click();
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByRole('link', { name: 'Report damage' }).click();
  await page.getByText('sole peels off').click();
  await page.getByRole('button', { name: 'Save' }).click();
  const open = page.getByRole('link', { name: 'See or correct the report' });
  const report = (await open.getAttribute('href')) as string;
  await walk(page, ['/', report], async (at, path) => {
    if (path === '/') await expect(at.locator('.sheet-off .notice-danger')).toHaveCount(2);
    else await at.locator('.button-danger').waitFor();
  });
  await page.goto(`${hub.url}/unsent`);
  await page.locator('.button-main').click();
  await expect(page.locator('[role=status]').first()).toHaveText(/^(Up to date\.|已是最新。)$/);

  const lead = await openLead(browser, hub);
  await lead.getByRole('link', { name: 'Testers', exact: true }).click();
  const tester = lead.getByRole('rowheader', { name: 'T01' }).getByRole('link');
  await walk(lead, [(await tester.getAttribute('href')) ?? ''], async (at) => {
    await at.locator('main .told li button').first().click();
    await at.locator('main .told form').waitFor();
  });
  await lead.context().close();
});

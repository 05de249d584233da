/**
 * How many taps and how many seconds does a log take? Counted on the real screens with a finger, at
 * 360 px. `npm run taps` prints the table.
 */
import { fileURLToPath } from 'node:url';
import { expect, test, type Page } from '@playwright/test';
import { Hand } from './hand.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { openLead, syncLead, syncTester } from './two-people.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const picture = fileURLToPath(new URL('../../demo-data/pictures/phone.png', import.meta.url));

/** A tester who has logged before: the pair, the usual surface and the units are known. */
const practisedTester = async (page: Page) => {
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: 'Log a run' }).click();
  await page.getByLabel('Distance, km').fill('5');
  await page.getByText('road', { exact: true }).click();
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByText('Saved on this phone').waitFor();
  await page.reload();
  await page.locator('.figure').waitFor();
};

const answerQuickPart = async (page: Page, hand: Hand) => {
  hand.think();
  await hand.tap(page.getByRole('link', { name: 'Log a run' }));
  const distance = page.getByLabel('Distance, km');
  await expect(distance).toBeFocused();
  hand.think();
  await hand.type('10.5');
  await hand.tap(page.getByLabel('Time', { exact: true }));
  hand.think();
  await hand.type('5230');
  await expect(page.getByRole('checkbox', { name: 'road' })).toBeChecked();
  hand.think();
  await hand.tap(page.getByRole('slider', { name: 'Overall comfort' }));
  hand.think();
};

const describe = async (page: Page, hand: Hand, zone: string, kind: string, severity: string) => {
  hand.think();
  await hand.tap(page.locator('.foot-map').getByRole('button', { name: zone }));
  hand.think();
  await hand.tap(page.getByText(kind, { exact: true }));
  hand.think();
  await hand.tap(
    page.getByRole('group', { name: 'How much' }).getByText(severity, { exact: true }),
  );
};

const report = (name: string, hand: Hand, most: string) =>
  console.log(
    `${name}: ${hand.taps} taps, ${hand.swipes} swipes, ${hand.seconds.toFixed(1)} s (${most})`,
  );

const saved = (page: Page) => expect(page.getByText('Saved on this phone')).toBeVisible();

test('the quick way takes at most 14 taps and 20 s', async ({ page }) => {
  await practisedTester(page);
  const hand = new Hand(page);
  await answerQuickPart(page, hand);
  await hand.tap(page.getByText('Nothing bothered me'));
  await hand.tap(page.getByRole('button', { name: 'Save' }));
  await saved(page);
  report('Quick way', hand, 'at most 14 taps, 20 s');
  expect(hand.taps).toBeLessThanOrEqual(14);
  expect(hand.seconds).toBeLessThanOrEqual(20);
});

test('two complaints with a photo take at most 45 s', async ({ page }) => {
  await practisedTester(page);
  const hand = new Hand(page);
  await answerQuickPart(page, hand);
  await hand.tap(page.getByText('Something did'));
  await describe(page, hand, 'left, heel cup', 'Heel slip', '4');
  const chooser = page.waitForEvent('filechooser');
  hand.think();
  await hand.tap(page.locator('.sheet').getByText('Photo', { exact: true }));
  // The phone's own camera: it opens (1 s, judgement), then shutter and "use it".
  hand.wait(1);
  hand.tapElsewhere();
  hand.tapElsewhere();
  await (await chooser).setFiles(picture);
  await page.locator('.photo img').waitFor();
  await hand.tap(page.getByRole('button', { name: 'Done' }));
  await describe(page, hand, 'right, lateral toe box', 'Pressure', '6');
  await hand.tap(page.getByRole('button', { name: 'Save' }));
  await saved(page);
  report('Two complaints and a photo', hand, 'at most 45 s');
  expect(hand.seconds).toBeLessThanOrEqual(45);
});

test('a lead’s question is answered with at most 2 taps', async ({ page, browser }) => {
  await practisedTester(page);
  const lead = await openLead(browser, hub);
  await lead.goto(`${lead.url()}/ask`);
  await lead.getByRole('button', { name: /^Ask T01: Was it the shoe or the sock/ }).click();
  await expect(lead.getByText('Asked T01', { exact: true })).toBeVisible();
  await syncLead(lead, hub);
  await lead.context().close();
  await syncTester(page, hub);
  const hand = new Hand(page);
  hand.think();
  await hand.tap(page.getByRole('button', { name: 'The sock' }));
  await expect(page.getByRole('region', { name: 'Your answer' })).toContainText('The sock');
  report('Answer a question', hand, 'at most 2 taps');
  expect(hand.taps).toBeLessThanOrEqual(2);
});

test('a run of yesterday is said in plain sight, and the first questions stay on the first screen', async ({
  page,
}) => {
  await practisedTester(page);
  await page.getByRole('link', { name: 'Log a run' }).click();
  const day = page.getByLabel('Day of the run');
  await expect(day.locator('option:checked')).toHaveText('Today');
  for (const seen of [
    page.getByLabel('Distance, km'),
    page.getByLabel('Time', { exact: true }),
    day,
    page.getByText('road', { exact: true }),
    page.getByRole('slider', { name: 'Overall comfort' }),
  ])
    await expect(seen).toBeInViewport({ ratio: 1 });
  await page.getByLabel('Distance, km').fill('7');
  await day.selectOption('Yesterday');
  const yesterday = await day.inputValue();
  // The hour is left open: the present one would be made up.
  await expect(page.getByLabel('Started, if you know')).toHaveValue('');
  await day.selectOption('Another day');
  await expect(page.getByLabel('Started')).toBeFocused();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('When did it start?')).toBeVisible();
  await page.getByLabel('Started').fill(`${yesterday}T18:30`);
  await expect(day.locator('option:checked')).toHaveText('Yesterday');
  await page.getByRole('button', { name: 'Save' }).click();
  await saved(page);
  await page.goto(`${hub.url}/runs`);
  const run = page.getByRole('listitem').filter({ hasText: '7.0 km' });
  await expect(run).toContainText(/18:30/);

  await page.goto(hub.url);
  await page.getByRole('link', { name: 'Log a run' }).click();
  await page.getByLabel('Distance, km').fill('9');
  await day.selectOption('Yesterday');
  await page.getByRole('button', { name: 'Save' }).click();
  await saved(page);
  await page.goto(`${hub.url}/runs`);
  const open = page.getByRole('listitem').filter({ hasText: '9.0 km' });
  await expect(open).toContainText(/20\d\d/);
  await expect(open).not.toContainText(/\d:\d\d/);
});

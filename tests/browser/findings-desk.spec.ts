/** A finding from wear, its history and its outcome on the board; the report of a round leaves as a file that stands alone. */
import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { goTo } from './every-place.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { chooseBoth } from './two-choices.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const openProject = async (page: Page) => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await page.locator('.frame-tabs').waitFor();
  return hub.url + new URL(page.url()).pathname;
};

test('a finding is made from wear, changed, looked at again, and its history says all of it', async ({
  page,
}) => {
  const project = await openProject(page);
  await page.goto(`${project}/findings`);
  await page.getByRole('link', { name: 'New finding' }).click();
  const form = page.getByRole('region', { name: 'New finding' });
  await form.getByLabel('Round', { exact: true }).selectOption({ label: 'Round 1' });
  await form.getByLabel('Measure and site').selectOption({ label: 'Tread depth, lateral heel' });
  await form.getByText('This is frozen with it:').click();
  await expect(form.getByText(/^Tread depth, lateral heel: falls with distance/)).toBeVisible();
  await form.getByLabel('Title', { exact: true }).fill('The heel wears through');
  await form.getByLabel('in mm, if it has a size').fill('0.5');
  await form.getByRole('button', { name: 'Save' }).click();

  // What was saved is said, and leads to the sheet of its trade.
  await expect(
    page.getByText('Saved: “The heel wears through”. It is on the sheet for tooling.'),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Open the sheet for tooling' }).click();
  await expect(page.locator('.report-paper')).toContainText('The heel wears through');
  await expect(page).toHaveURL(/report\?round=.+&trade=tooling$/);
  await page.goBack();

  // It is opened as it was written.
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The heel wears through');
  await expect(page.getByText('outsole, tooling')).toBeVisible();
  await expect(page.getByText('No round makes this change yet.')).toBeVisible();
  await page.getByText(/^How sure, as of .*\?$/).click();
  await expect(page.getByText(/^Tread depth, lateral heel: falls with distance/)).toBeVisible();

  await page.getByRole('button', { name: 'Edit this finding' }).click();
  const edit = page.getByRole('region', { name: 'Edit this finding' });
  await edit.getByLabel('State').selectOption('asked-for');
  await edit.getByLabel('Round that makes the change').selectOption({ label: 'Round 2' });
  await edit.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Round 2 makes this change. Did it work?')).toBeVisible();

  await page.getByRole('button', { name: 'Write down the outcome' }).click();
  const outcome = page.getByRole('region', { name: 'Write down the outcome' });
  await outcome.getByRole('button', { name: 'Save' }).click();
  await expect(outcome.getByText('Write what shows it.')).toBeVisible();
  await outcome.getByLabel('What the change did').selectOption('no-different');
  await outcome.getByLabel('What shows it, a line each').fill('As deep as before.\n\nNo slower.');
  await outcome.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText(/^Round 2 makes this change: no different, as of /)).toBeVisible();
  await page.getByText(/^What shows it, as of /).click();
  await expect(page.getByText('No slower.')).toBeVisible();

  await page.getByText('Earlier versions', { exact: true }).click();
  const history = page.getByRole('region', { name: /^History/ });
  await expect(history.getByText('State: open → asked for')).toBeVisible();
  await expect(history.getByText('Outcome: nothing → no different')).toBeVisible();
  await expect(history.getByText('Written down.')).toBeVisible();

  await page.getByRole('link', { name: 'Changes', exact: true }).last().click();
  const row = page.getByRole('row').filter({ hasText: 'The heel wears through' });
  await expect(row.getByText('no different')).toBeVisible();
  await page.getByLabel('Trade', { exact: true }).selectOption({ label: 'foam' });
  await expect(row).toHaveCount(0);
});

test('the report of a round leaves as a file that needs no network, in two languages', async ({
  page,
  browser,
}) => {
  const project = await openProject(page);
  await page.goto(`${project}/report`);
  await page.getByLabel('Round').selectOption({ label: 'Round 1' });
  await page.getByLabel('Language').selectOption({ label: 'English + 简体中文' });
  const sheet = page.getByRole('article');
  await expect(sheet.getByRole('heading', { name: /Verdict.*结论/ })).toBeVisible();
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as one file (HTML)' }).click();
  const file = await (await saved).path();

  const apart = await browser.newContext({ offline: true });
  const reader = await apart.newPage();
  const asked: string[] = [];
  reader.on('request', (request) => asked.push(request.url()));
  const troubles: string[] = [];
  reader.on('console', (message) => troubles.push(message.text()));
  await reader.setContent(readFileSync(file, 'utf8'));
  await expect(reader.getByRole('heading', { name: /Change the heel cup/ }).first()).toBeVisible();
  await expect(reader.getByText('Heel slips in the heel cup').first()).toBeVisible();
  // Its own policy lets its own styles and drawings through, and nothing else was asked for.
  const ground = await reader
    .locator('.foot-map-zone[data-level="4"] .foot-map-area')
    .first()
    .evaluate((area) => getComputedStyle(area).fill);
  expect(ground).toBe('rgb(150, 47, 16)');
  expect(asked).toEqual([]);
  expect(troubles).toEqual([]);
  await apart.close();

  for (const [button, name] of [
    ['Save everything as tables', /\.zip$/],
    ['Figures as JSON', /\.json$/],
  ] as const) {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: button }).click();
    expect((await download).suggestedFilename()).toMatch(name);
  }
  await page.getByText('No specialist in this group yet.').waitFor();
  await page.getByRole('button', { name: 'Send to the specialists' }).click();
  await expect(page.getByText(/^It is kept for the specialists/)).toBeVisible();
  await page.getByText(/^Sent so far \(1\)$/).click();
  await expect(page.getByText(/Round 1: report of the round/).last()).toBeVisible();
});

test('what is wanted in both languages and by when stands in the report of either, and of both', async ({
  page,
}) => {
  const project = await openProject(page);
  await page.goto(`${project}/findings`);
  await page.getByRole('link', { name: 'New finding' }).click();
  const form = page.getByRole('region', { name: 'New finding' });
  await form.getByLabel('Round', { exact: true }).selectOption({ label: 'Round 1' });
  await form.getByLabel('Measure and site').selectOption({ label: 'Tread depth, lateral heel' });
  await form.getByLabel('Title', { exact: true }).fill('The heel wears through');
  await form.getByLabel(/^Wanted change(?! in)/).fill('Deeper tread at the outer heel');
  await form.getByLabel('in mm, if it has a size').fill('0.5');
  await form.getByLabel('Wanted by').fill('2026-12-04');
  await form.getByLabel('Title in Chinese').fill('后跟磨穿');
  await form.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The heel wears through');

  // One of the two fields is left for later: it is marked as what it is.
  await page.goto(`${project}/report?trade=tooling`);
  await page.getByLabel('Round', { exact: true }).selectOption({ label: 'Round 1' });
  await page.getByLabel('Language').selectOption({ label: 'English + 简体中文' });
  const sheet = page.getByRole('article');
  const wish = sheet.getByRole('row').filter({ hasText: 'Deeper tread at the outer heel' });
  await expect(wish).toContainText('0.5\u00a0mm');
  await expect(wish).toContainText(/4 Dec 2026|Dec 4, 2026/);
  await expect(wish).toContainText('2026年12月4日');
  await expect(wish).toContainText('（英语原文）');
  const title = sheet.getByRole('heading', { name: /The heel wears through/ });
  await expect(title).toContainText('后跟磨穿');
  await expect(title).not.toContainText('原文');

  await page.goto(`${project}/findings`);
  await page.getByRole('link', { name: 'The heel wears through' }).click();
  await page.getByRole('button', { name: 'Edit this finding' }).click();
  const edit = page.getByRole('region', { name: 'Edit this finding' });
  await expect(edit.getByLabel('Title in Chinese')).toHaveValue('后跟磨穿');
  await edit.getByLabel('Wanted change in Chinese').fill('后跟外侧花纹加深');
  await edit.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('button', { name: 'Edit this finding' })).toBeVisible();

  await goTo(page, `${project}/report`);
  // Two choices, the second before the screen is drawn with the first: both count.
  await chooseBoth(
    page,
    [page.getByLabel('Round', { exact: true }), 'Round 1'],
    [page.getByLabel('Language'), '简体中文'],
  );
  const row = sheet.getByRole('row').filter({ hasText: '后跟外侧花纹加深' }).first();
  await expect(row).not.toContainText('Deeper tread');
  await expect(row).not.toContainText('原文');
});

/** The desk over the demo: what recurs becomes a finding, maps leave as pictures, checks typed on a phone count. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { devices, expect, test, type Page } from '@playwright/test';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { programs } from './programs.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const join_ = async (page: Page, code: string) => {
  await page.goto(`${hub.url}/join#${code}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await page.locator('.frame-tabs').waitFor();
  return new URL(page.url()).pathname;
};

/** The words of the page as it would be printed on A4. */
const printed = async (page: Page): Promise<string> => {
  const folder = mkdtempSync(join(tmpdir(), 'pairlog-print-'));
  try {
    const file = join(folder, 'page.pdf');
    writeFileSync(file, await page.pdf({ format: 'A4' }));
    return execFileSync(programs.pdftotext as string, ['-layout', file, '-'], { encoding: 'utf8' });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

test('what recurs is said with its evidence, becomes a finding, and leaves as picture and print', async ({
  page,
}) => {
  const project = await join_(page, hub.codes.lead);
  await page.goto(`${hub.url}${project}/complaints`);
  const round = page.getByRole('region', { name: 'Round 2' });
  await expect(
    round.getByRole('link', { name: 'right upper, lateral toe box: 6 of 8 testers' }),
  ).toBeVisible();
  // Counted in the demo: four of eight had pressure at the lateral toe box of the right foot at least twice.
  await page.getByRole('combobox', { name: /^Reported/ }).selectOption({ label: 'twice or more' });
  const zone = round.getByRole('link', { name: 'right upper, lateral toe box: 4 of 8 testers' });
  await expect(zone).toBeVisible();
  await page.getByText('Save the maps', { exact: true }).click();
  for (const form of ['SVG', 'PNG']) {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: `Save the map as ${form}` }).click();
    const bytes = readFileSync(await (await download).path());
    if (form === 'PNG') expect(bytes.subarray(1, 4).toString()).toBe('PNG');
    else {
      expect(bytes.toString()).toContain('Round 2: 183 runs, 8 testers asked');
      expect(bytes.toString()).not.toMatch(/var\(--|class=|color-mix/);
    }
  }
  const whole = await printed(page);
  expect(whole).toContain('Lateral toe box, pressure');
  expect(whole).not.toContain('Save the map');

  await zone.click();
  await expect(page.getByText('All 52 reports')).toBeVisible();
  const proof = page.locator('.zone-main > .how-sure');
  await proof.locator('> summary').click();
  await expect(proof.getByText('clear: recurs across testers', { exact: true })).toBeVisible();
  await expect(proof.getByText(/^4 of 8 testers reported it at least twice/)).toBeVisible();
  await expect(proof.getByText(/It came in 50 of 183 asked runs/)).toBeVisible();
  await expect(proof.getByText(/more often with more layers of material there/)).toBeVisible();

  await page.getByRole('button', { name: 'Make it a finding' }).click();
  await page.getByLabel('Wanted change').fill('Cut the film back');
  await page.getByLabel('in mm, if it has a size').fill('6');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(
    page.locator('.zone-aside').getByRole('link', { name: 'lateral toe box: Pressure' }),
  ).toBeVisible();
  expect(await printed(page)).toContain('What they said');

  await page.goto(`${hub.url}${project}/shoe/zones/left/P4?kind=hot-spot`);
  await proof.locator('> summary').click();
  await expect(proof.getByText(/^Proven for T11, /)).toBeVisible();
});

test('checks typed on a phone without a network end as a curve and a verdict at the desk', async ({
  page,
  browser,
}) => {
  test.setTimeout(1_200_000);
  const project = await join_(page, hub.codes.lead);
  const stack = page.getByRole('link', { name: /^Stack height, centre of the heel, Round 3: / });
  await page.goto(`${hub.url}${project}/verdict`);
  await expect(stack).toHaveText('measured to 172 km, too early to tell');
  await page.goto(`${hub.url}/desk/group`);
  await page.getByRole('button', { name: 'Invite another lead' }).click();
  const code = (await page.locator('.code').textContent()) ?? '';

  const context = await browser.newContext({
    ...devices['Pixel 7'],
    viewport: { width: 360, height: 760 },
    locale: 'en-GB',
  });
  const phone = await context.newPage();
  await join_(phone, code.replaceAll(/\W/g, ''));
  await phone.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await hub.pause();
  await phone.goto(`${hub.url}${project}/wear/checks/new`);
  await phone.getByLabel('Pair', { exact: true }).selectOption({ label: '637' });
  await phone.getByLabel('Hours since the last run').fill('6');
  await expect(phone.getByText(/^rested 6 h; up to/)).toBeVisible();
  await phone.getByLabel('Hours since the last run').fill('30');
  await phone.getByLabel('Value, mm').fill('34.9');
  await phone.getByRole('button', { name: 'One more reading' }).click();
  await phone.locator('.reading').nth(1).locator('label.choice:has(input[value=right])').click();
  await phone.getByLabel('Value, mm').nth(1).fill('34.8');
  await phone.getByLabel('Distance on the pair if it is known, km').fill('400');
  await phone.getByRole('button', { name: 'Save' }).click();
  await expect(
    phone.getByRole('heading', { name: 'Pair 637 at 400 km: 2 readings.' }),
  ).toBeVisible();

  // A table from the shop, with one line that cannot be read.
  await phone.getByRole('link', { name: 'Checks', exact: true }).click();
  await phone.getByRole('button', { name: 'Read checks from a table (CSV)' }).click();
  await phone.getByLabel('Choose the table').setInputFiles({
    name: 'shop.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(
      [
        'pair,measured_at,distance_km,temperature_c,measure,site,foot,value,unit',
        '360,2026-11-20T09:00Z,390,23,stack-height,heel-centre,left,34.7,mm',
        '360,2026-11-20T09:00Z,390,23,stack-height,heel-centre,right,34.8,mm',
        '999,2026-11-20T09:00Z,390,23,stack-height,heel-centre,right,34.8,mm',
      ].join('\n'),
    ),
  });
  await expect(phone.getByText('Line 4, pair “999”: no pair has this code')).toBeVisible();
  await phone.getByRole('button', { name: 'Take them in' }).click();
  const taken = phone.getByRole('row').filter({ hasText: '34.7 / 34.8 mm' });
  await expect(taken).toContainText('390 km');

  await hub.resume();
  await phone.goto(`${hub.url}/desk/group`);
  await phone.getByRole('button', { name: 'Sync now' }).click();
  await expect(phone.getByText('Up to date.')).toBeVisible();
  await context.close();

  await page.getByRole('button', { name: 'Sync now' }).click();
  await expect(page.getByText('Up to date.')).toBeVisible();
  await page.goto(`${hub.url}${project}/verdict`);
  // 400 km measured: twice as far covers the 600 km of the brief.
  await expect(stack).toHaveText(/^about \d+ in 10 would last 600 km$/);
  await page.getByText('How sure?').click();
  await expect(
    page
      .getByText(/^Stack height, centre of the heel at 600\.0 km: .* with a probability of \d+/)
      .first(),
  ).toBeVisible();
  const text = await printed(page);
  expect(text).toContain('The brief asks for 600 km a pair.');
  expect(text).toMatch(/about \d+ in 10/);
});

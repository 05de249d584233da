/** A gauge study typed at the desk decides arrivals, a new round gets its tolerances, and pairs out of tolerance step aside. */
import { expect, test, type Page } from '@playwright/test';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const join = async (page: Page) => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await page.locator('.frame-tabs').waitFor();
  return `${hub.url}${new URL(page.url()).pathname}`;
};

test('a coarse gauge leaves arrivals undecided, and a pair that is proved out can be left out', async ({
  page,
}) => {
  const project = await join(page);
  const arrival = async (said: RegExp) => {
    await page.goto(`${project}/shoe/arrival`);
    const figures = page.getByText(said);
    // What is folded is drawn once it is opened.
    await page.locator('main').getByText('How sure?', { exact: true }).last().click();
    await expect(figures).toBeVisible();
  };
  await arrival(/2 dimensions proved out of tolerance; /);
  await page.goto(`${project}/wear/gauges`);
  await page.getByRole('button', { name: 'Add a gauge study' }).click();
  await page.getByLabel('Gauge', { exact: true }).fill('Calliper C2');
  await page
    .getByLabel('Site (optional; empty: every site of the measure)')
    .fill('collar-height-lateral');
  await page.getByLabel('Width of the tolerance to decide, mm').fill('4');
  const lines = ['A', 'B'].flatMap((operator) =>
    [60, 61, 62, 63].flatMap((value, part) =>
      [-1, 1].map((error) => `S${part},${operator},${value + error}`),
    ),
  );
  await page
    .getByLabel(/^Or paste a table/)
    .fill(['part,operator,value', ...lines, 'S9,,1'].join('\n'));
  await expect(page.getByText('Line 18, operator: this is missing.')).toBeVisible();
  await expect(page.getByText('16 readings of 4 parts by 2 operators.')).toBeVisible();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(
    page.getByText(/^The gauge is not good enough: \d+\s% of the tolerance/),
  ).toBeVisible();
  await expect(
    page.getByRole('heading', { name: 'Calliper C2 is not good enough.' }),
  ).toBeVisible();
  await arrival(/2 dimensions proved out of tolerance, \d+ undecided; /);

  await page.getByRole('link', { name: 'Sheet', exact: true }).click();
  await expect(page.getByText(/ 24 pairs, 12 testers, /)).toBeVisible();
  await page.getByLabel('Only pairs in tolerance').selectOption('in');
  await expect(page.getByText(/^Read without the 1 pair out of tolerance: 229\./)).toBeVisible();
  await expect(page.getByText(/ 23 pairs, 11 testers, /)).toBeVisible();
  await page.getByRole('link', { name: 'Pairs', exact: true }).click();
  await expect(page.getByText('Left out, because out of tolerance: 229')).toBeVisible();
  await page.getByRole('link', { name: 'Shoe', exact: true }).click();
  const round = page.getByRole('region', { name: 'Round 2' });
  await expect(round.getByText(/1[0-7]\d runs, 7 testers asked/)).toBeVisible();
  await page.getByLabel('Only pairs in tolerance').selectOption('all');
  await expect(round.getByText('183 runs, 8 testers asked')).toBeVisible();
});

test('a round gets its usual dimensions, its last and its layers, and keeps them', async ({
  page,
}) => {
  const project = await join(page);
  await page.goto(`${project}/rounds`);
  await page.getByRole('button', { name: 'Add a round' }).click();
  await page.getByLabel('Name', { exact: true }).fill('Round 4');
  await page.getByLabel('Add a usual dimension').selectOption({ label: 'Mass: one shoe (± 5 %)' });
  await page.getByLabel('Nominal, g').fill('250');
  const paste = page.getByLabel('Or paste dimensions from a spreadsheet');
  await paste.fill('tread-depth\tforefoot\t3\t0.2\t0.3\tmm\nstack-height\theel-centre\t360\t1\t1');
  await expect(page.getByText(/^Line 2, nominal: /)).toBeVisible();
  await page.getByRole('button', { name: 'Add 1 dimension' }).click();
  await expect(page.getByLabel('Nominal, mm')).toHaveValue('3');
  await expect(paste).toHaveValue('');
  await page.getByLabel('Name of the last').fill('L09');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  const size = page.getByLabel('Measured at size, mm of foot length');
  await expect(size).toHaveAttribute('aria-invalid', 'true');
  await size.fill('270');
  await expect(size).not.toHaveAttribute('aria-invalid');
  await page.getByLabel('Length of the last, mm').fill('280');
  await page.getByLabel('U1 toe tip').fill('3');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  const round = page.getByRole('region', { name: 'Round 4' });
  await expect(
    round.getByText(/^2 dimensions in the blueprint · EVA foam · last L09/),
  ).toBeVisible();
  await round.getByRole('link', { name: 'Round 4' }).click();
  await expect(
    page.getByText('Last L09 at 270 mm: length 280 mm (EU 42, UK 8.1 by last length)'),
  ).toBeVisible();
  await round.getByRole('button', { name: 'Edit this round' }).click();
  await expect(round.getByLabel('Lower, g')).toHaveValue('-12.5');
  await expect(round.getByLabel('U1 toe tip')).toHaveValue('3');
});

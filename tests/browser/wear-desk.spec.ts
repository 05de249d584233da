/** The lead puts a bench check right, with a reason and an undo; every figure follows, and the verdict leads to what is behind it. */
import { expect, test, type Page } from '@playwright/test';
import { recordsHeld } from './device.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const openDesk = async (page: Page) => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  const project = page.getByRole('link', { name: /Demo trainer/ });
  return hub.url + ((await project.getAttribute('href')) as string);
};

/** The latest check of a pair, opened from the list. */
const openCheck = async (page: Page, project: string, pair: string) => {
  await page.goto(`${project}/wear/checks`);
  await page.getByLabel('Pair', { exact: true }).selectOption({ label: pair });
  await page.locator('.checks-table tbody th a').first().click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(`Pair ${pair} at `);
  return page.url();
};

const row = (page: Page, name: string) =>
  page.getByRole('row').filter({ has: page.getByRole('rowheader', { name, exact: true }) });
const undo = (page: Page) => page.getByRole('status').getByRole('button', { name: 'Undo' }).click();

const HEEL = 'Stack height, centre of the heel, left';

test('a check is corrected with a reason, and the correction taken back, in the message and on the page', async ({
  page,
}) => {
  const project = await openDesk(page);
  await openCheck(page, project, '637');
  const value = row(page, HEEL).getByRole('cell').first();
  const before = (await value.textContent()) as string;
  const correct = async (to: string, why: string) => {
    await page.getByRole('button', { name: 'Correct this check' }).click();
    const form = page.getByRole('region', { name: 'Correct this check' });
    const field = form.getByLabel('Value, mm').first();
    await expect(field).toHaveValue(before.replace(' mm', ''));
    await field.fill(to);
    await form.getByRole('button', { name: 'Save the correction' }).click();
    await expect(form.getByText('Say why in a few words.')).toBeVisible();
    await form.getByLabel('Why?').fill(why);
    await form.getByRole('button', { name: 'Save the correction' }).click();
  };
  await correct('35.1', 'Read off the wrong scale.');
  await expect(value).toHaveText('35.1 mm');
  await expect(
    page.getByText(/^Corrected by you on .*: Read off the wrong scale\.$/),
  ).toBeVisible();
  const corrected = await recordsHeld<{ correctedBy?: { why: string } }>(page, 'bench-check');
  expect(
    corrected.filter(({ correctedBy }) => correctedBy).map((one) => one.correctedBy?.why),
  ).toEqual(['Read off the wrong scale.']);
  await undo(page);
  await expect(value).toHaveText(before);
  await expect(page.getByText(/^Corrected by/)).toHaveCount(0);

  await correct('35.2', 'Once more.');
  await page.reload();
  await expect(value).toHaveText('35.2 mm');
  await page.getByRole('button', { name: 'Take the correction back' }).click();
  await expect(value).toHaveText(before);
  expect(
    (await recordsHeld<{ correctedBy?: object }>(page, 'bench-check')).some(
      ({ correctedBy }) => correctedBy,
    ),
  ).toBe(false);
});

test('a reading that is set aside stays in sight and in no figure, and comes back', async ({
  page,
}) => {
  const project = await openDesk(page);
  const check = await openCheck(page, project, '637');
  const wear = `${project}/wear/of/stack-height%20mm/heel-centre`;
  /** What the table of the curve has of the check. */
  const inFigure = async () => {
    await page.goto(wear);
    const card = page.getByRole('region', { name: /^Stack height, centre of the heel/ });
    await card.getByText('As a table').click();
    const link = card.locator(`td a[href="${new URL(check).pathname}"]`);
    await expect(card.getByRole('row').nth(2)).toBeVisible();
    return (await link.count()) > 0 ? ((await link.textContent()) as string) : null;
  };
  const before = await inFigure();
  expect(before).toMatch(/^\d\d\.\d+ mm$/);

  await page.goto(check);
  const heel = row(page, HEEL);
  await heel.getByRole('button', { name: /^Set aside/ }).click();
  await page.getByLabel('Why?').fill('');
  await page.getByRole('button', { name: 'Set aside', exact: true }).click();
  await expect(page.getByText('Say why in a few words.')).toBeVisible();
  await page.getByLabel('Why?').fill('The foot of the gauge slipped.');
  await page.getByRole('button', { name: 'Set aside', exact: true }).click();
  await expect(heel.locator('s')).toBeVisible();
  await expect(page.getByText('set aside: The foot of the gauge slipped.')).toBeVisible();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('is set aside.');
  expect(await inFigure()).not.toBe(before);

  await page.goto(check);
  await heel.getByRole('button', { name: /^Count it again/ }).click();
  await expect(heel.locator('s')).toHaveCount(0);
  await undo(page);
  await expect(heel.locator('s')).toBeVisible();
  // A note that is corrected must not bring the reading back.
  await page.getByRole('button', { name: 'Correct this check' }).click();
  await page.getByLabel('By whom').fill('Shop B');
  await page.getByLabel('Why?').fill('Another shop measured it.');
  await page.getByRole('button', { name: 'Save the correction' }).click();
  await expect(page.getByText('by Shop B')).toBeVisible();
  await expect(heel.locator('s')).toBeVisible();
  await heel.getByRole('button', { name: /^Count it again/ }).click();
  await expect(heel.locator('s')).toHaveCount(0);
  expect(await inFigure()).toBe(before);
});

test('a check is erased, brought back by the message, and later from its page', async ({
  page,
}) => {
  const project = await openDesk(page);
  const check = await openCheck(page, project, '637');
  const title = (await page.getByRole('heading', { level: 1 }).textContent()) as string;
  await page.getByRole('button', { name: 'Erase this check' }).click();
  await expect(page.getByRole('heading', { name: 'This check was erased.' })).toBeVisible();
  await undo(page);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);

  await page.getByRole('button', { name: 'Erase this check' }).click();
  await expect(page.getByRole('heading', { name: 'This check was erased.' })).toBeVisible();
  await page.goto(`${project}/wear/checks`);
  await expect(page.getByRole('heading', { name: /^42 checks of / })).toBeVisible();
  await page.goto(check);
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);
});

for (const width of [1280, 390])
  test(`the verdict's cells lead to what is behind them, and back, at ${width} px`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 800 });
    const project = await openDesk(page);
    await page.goto(`${project}/verdict`);
    await expect(
      page.getByRole('heading', { name: 'Not decided: 6 of 7 limits are open in Round 3.' }),
    ).toBeVisible();
    const tread = page.getByRole('link', { name: /^Tread depth, lateral heel, Round 1: open; / });
    await expect(tread).toHaveText('likely reached at about 490 km');
    await tread.click();
    const card = page.getByRole('region', { name: 'Tread depth, lateral heel, at least 1 mm' });
    await expect(card).toBeVisible();
    await expect(page.locator('.wear-card')).toHaveCount(1);
    await expect(card.locator('.wear-lines li')).toHaveCount(1);
    // From the figure to the record: the farthest point that is drawn, which nothing lies over.
    await card
      .locator('svg a')
      .filter({ has: page.locator('title', { hasText: 'at 312 km' }) })
      .click();
    await expect(page).toHaveURL(/\/wear\/checks\//);
    await expect(
      page.getByRole('rowheader', { name: /^Tread depth, lateral heel/ }).first(),
    ).toBeVisible();
    await page.goBack();
    await page.goBack();
    await page.getByRole('link', { name: /^No pair is withdrawn, Round 2: fails/ }).click();
    await expect(page).toHaveURL(/\/pairs\//);
  });

test('the verdict is printed on one landscape page', async ({ page }) => {
  const project = await openDesk(page);
  await page.goto(`${project}/verdict`);
  await page.locator('.verdict-grid').waitFor();
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
  const [, width, height] = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/.exec(pdf) ?? [];
  expect(Number(width)).toBeGreaterThan(Number(height));
});

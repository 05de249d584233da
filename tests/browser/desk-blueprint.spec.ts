/** A gauge study typed at the desk decides arrivals, a new round gets its tolerances, and pairs out of tolerance step aside. */
import { expect, test, type Page } from '@playwright/test';
import { joinLead } from './every-place.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const join = async (page: Page) => hub.url + (await joinLead(page, hub));

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

/** A block of cells on the clipboard, pasted where the focus is. */
const pasteBlock = (page: Page, lines: readonly string[]) =>
  page.evaluate((text) => {
    const data = new DataTransfer();
    data.setData('text/plain', text);
    document.activeElement?.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
    );
  }, lines.join('\n'));

for (const width of [1280, 390])
  test(`dimensions are typed and pasted as in a spreadsheet, each mistake at its cell, at ${width} px`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 800 });
    const project = await join(page);
    await page.goto(`${project}/rounds`);
    await page.getByRole('button', { name: 'Add a round' }).click();
    const cell = (column: string, row: number) =>
      page.getByLabel(`${column}, row ${row}`, { exact: true });
    await cell('Measure', 1).focus();
    await pasteBlock(page, [
      'stack-height\theel-centre\t360\t1\t1.5\tmm',
      'Mass\tone shoe\t250\t±5%',
      'dimension\tback-height\t70\t2\tx\tmm\tleft',
      'height\theel-centre\t36\t1\t1\tmm',
    ]);
    await expect(page.getByText('Pasted.')).toBeVisible();
    await expect(cell('Nominal, mm', 1)).toHaveValue('360');
    await expect(cell('Site', 2)).toHaveValue('one shoe');
    // Each wrong cell says so at once, all of them, but for the one that is typed in.
    await expect(page.getByText('Must be from 1 to 100 mm.')).toBeVisible();
    await expect(page.getByText('“height” is not known here: choose one.')).toBeVisible();
    await expect(cell('Tolerance +, mm', 3)).toHaveAttribute('aria-invalid', 'true');
    await cell('Nominal, mm', 1).focus();
    await expect(page.getByText('Must be from 1 to 100 mm.')).toHaveCount(0);
    await page.keyboard.press('ArrowRight');
    await expect(page.getByText('Must be from 1 to 100 mm.')).toBeVisible();
    await page.keyboard.press('Shift+Tab');
    await expect(cell('Nominal, mm', 1)).toBeFocused();

    // Keys lead from cell to cell; what is typed takes the place of what stands there.
    await page.keyboard.type('36');
    await page.keyboard.press('Enter');
    await expect(cell('Nominal, g', 2)).toBeFocused();
    await expect(page.getByText('Must be from 1 to 100 mm.')).toHaveCount(0);
    await page.keyboard.press('Tab');
    await expect(cell('Tolerance −, g', 2)).toBeFocused();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowRight');
    await expect(cell('Tolerance +, mm', 3)).toBeFocused();
    await page.keyboard.type('2');
    await page.keyboard.press('Shift+Tab');
    await expect(cell('Tolerance −, mm', 3)).toBeFocused();
    await cell('Left to right, at most, mm', 3).focus();
    await page.keyboard.press('Tab');
    await expect(page.getByRole('button', { name: 'Remove row 3' })).toBeFocused();
    await page.keyboard.press('Tab');
    await expect(cell('Measure', 4)).toBeFocused();

    // A row is removed and brought back; the same place twice is told when it is saved, and what is missing too.
    await page.getByRole('button', { name: 'Remove row 2' }).click();
    await expect(cell('Site', 2)).toHaveValue('back height');
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect(cell('Site', 2)).toHaveValue('one shoe');
    await cell('Measure', 4).selectOption({ label: 'Stack height' });
    await cell('Nominal, mm', 3).fill('');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(page.getByText('Row 1 is the same dimension.')).toBeVisible();
    await expect(page.getByText('This is missing.')).toHaveCount(1);
    await expect(cell('Nominal, mm', 3)).toBeFocused();
    await page.keyboard.type('70');
    // Two cells of one column, from the row on.
    await cell('Site', 3).focus();
    await pasteBlock(page, ['back-height', 'Centre of the forefoot']);
    await expect(cell('Site', 4)).toHaveValue('centre of the forefoot');
    await expect(page.locator('.cells [aria-invalid]')).toHaveCount(0);
    await expect(page.getByText('Row 1 is the same dimension.')).toHaveCount(0);
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
    ).toBeLessThanOrEqual(0);

    // Enter in the last row begins one more, which is no dimension until something stands in it.
    await cell('Tolerance +, mm', 4).focus();
    await page.keyboard.press('Enter');
    await expect(cell('Tolerance +', 5)).toBeFocused();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    const round = page.getByRole('region', { name: 'Round 4' });
    await expect(round.getByText(/^4 dimensions in the blueprint/)).toBeVisible();
    await round.getByRole('link', { name: 'Round 4' }).click();
    await expect(
      page.getByRole('row', { name: /Mass, one shoe 250 g −12\.5 … \+12\.5/ }),
    ).toBeVisible();
  });

test('a round gets its usual dimensions, its sole, its last and its layers, and the next one has them', async ({
  page,
}) => {
  const project = await join(page);
  await page.goto(`${project}/rounds`);
  await page.getByRole('button', { name: 'Add a round' }).click();
  await page.getByLabel('Name', { exact: true }).fill('Round 4');
  await expect(page.getByText('Foam and rubber are those of Round 3')).toBeVisible();
  await page.getByLabel('Name of the foam').fill('E-24 soft');
  await page.getByLabel('Hardness of the foam, Asker C').fill('450');
  await page.getByLabel('Name of the outsole rubber').fill('R7');
  await page.getByLabel('Add a usual dimension').selectOption({ label: 'Mass: one shoe (± 5 %)' });
  await expect(page.getByLabel('Nominal, g, row 1')).toBeFocused();
  await page.keyboard.type('250');
  await page.getByLabel('Name of the last').fill('L09');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  const hardness = page.getByLabel('Hardness of the foam, Asker C');
  await expect(hardness).toBeFocused();
  await expect(page.getByText('Must be from 0 to 100.')).toBeVisible();
  await hardness.fill('45');
  await expect(page.getByText('Must be from 0 to 100.')).toHaveCount(0);
  const size = page.getByLabel('Measured at size, mm of foot length');
  await expect(size).toHaveAttribute('aria-invalid', 'true');
  await size.fill('270');
  await expect(size).not.toHaveAttribute('aria-invalid');
  await page.getByLabel('Length of the last, mm').fill('280');
  await page.getByLabel('U1 toe tip').fill('3');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  const round = page.getByRole('region', { name: 'Round 4' });
  await expect(
    round.getByText(/^1 dimension in the blueprint · EVA foam · last L09/),
  ).toBeVisible();
  await round.getByRole('link', { name: 'Round 4' }).click();
  await expect(
    page.getByText('Last L09 at 270 mm: length 280 mm (EU 42, UK 8.1 by last length)'),
  ).toBeVisible();
  await expect(page.getByText('Midsole: EVA, E-24 soft, 45 Asker C')).toBeVisible();
  await expect(page.getByText('Outsole: R7')).toBeVisible();
  await round.getByRole('button', { name: 'Edit this round' }).click();
  await expect(round.getByLabel('Tolerance −, g, row 1')).toHaveValue('12.5');
  await expect(round.getByLabel('U1 toe tip')).toHaveValue('3');
  await round.getByRole('button', { name: 'Cancel' }).click();

  // The next round begins with the same foam and rubber; the foam developer's sheet names them.
  await page.goto(`${project}/rounds`);
  await page.getByRole('button', { name: 'Add a round' }).click();
  await expect(page.getByLabel('Name of the foam')).toHaveValue('E-24 soft');
  await expect(page.getByLabel('Hardness of the foam, Asker C')).toHaveValue('45');
  await expect(page.getByLabel('Name of the outsole rubber')).toHaveValue('R7');
  await page.goto(`${project}/report?trade=foam`);
  await page.getByLabel('Round', { exact: true }).selectOption({ label: 'Round 4' });
  await expect(page.getByText('Midsole: EVA, E-24 soft, 45 Asker C').first()).toBeVisible();
});

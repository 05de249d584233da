/** Checks of many pairs at once: typed or pasted into one table, or read from a table whose columns are said beside it. */
import { expect, test, type Page } from '@playwright/test';
import { axeFaults } from './axe.ts';
import { chooseLanguage, recordsHeld } from './device.ts';
import { joinLead, openPlace } from './every-place.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

interface Check {
  readonly operator?: string;
  readonly readings: readonly {
    readonly measure: string;
    readonly value: number;
    readonly foot: string;
  }[];
}

/** Puts text on the clipboard's event, as a spreadsheet does. */
const pasteInto = (page: Page, label: RegExp, text: string) =>
  page
    .getByLabel(label)
    .first()
    .evaluate((input, plain) => {
      const data = new DataTransfer();
      data.setData('text/plain', plain);
      input.dispatchEvent(
        new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
      );
    }, text);

test('a table of places and pairs is pasted, put right at its cell, and saved as a check a pair', async ({
  page,
}) => {
  test.setTimeout(120_000);
  const project = await joinLead(page, hub);
  await openPlace(page, `${hub.url}${project}/wear/checks`);
  await page.getByRole('link', { name: 'Type a table of checks' }).click();
  const table = page.getByRole('table', { name: 'Readings of Round 3' });
  await expect(table.getByRole('columnheader', { name: '637' })).toBeVisible();
  const save = page.getByRole('button', { name: /^Save/ });
  await save.click();
  await expect(page.getByText('Type at least one reading.')).toBeVisible();
  const [left, right] = ['left', 'right'].map(
    (foot) => new RegExp(`^Stack height, centre of the heel, ${foot}, pair 637$`),
  ) as [RegExp, RegExp];
  await page.getByLabel('By whom (optional)').fill('Bench Q');
  await pasteInto(page, left, '34,9\t350\n34.8\t35');
  await expect(page.getByLabel(right)).toHaveValue('34.8');
  await save.click();
  await expect(page.getByText('Must be from 1 to 100 mm.')).toBeVisible();
  const wrong = table.locator('[aria-invalid]');
  await expect(wrong).toHaveValue('350');
  await wrong.fill('35');
  await expect(table.locator('[aria-invalid]')).toHaveCount(0);
  await page.getByLabel(left).press('Enter');
  await expect(page.getByLabel(right)).toBeFocused();
  expect(await axeFaults(page)).toEqual([]);
  // What is typed is kept until it is saved.
  await page.reload();
  await expect(page.getByLabel(right)).toHaveValue('34.8');
  await page.getByRole('button', { name: 'Save 2 checks' }).click();
  await expect(page.getByText('2 checks taken in')).toBeVisible();
  const saved = (await recordsHeld<Check>(page, 'bench-check')).filter(
    ({ operator }) => operator === 'Bench Q',
  );
  expect(
    saved.map(({ readings }) => readings.map(({ foot, value }) => `${foot} ${value}`)),
  ).toEqual(expect.arrayContaining([['left 34.9', 'right 34.8']]));
  expect(saved).toHaveLength(2);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('2 checks taken out again')).toBeVisible();
});

test('a value that looks wrong is asked about before it is saved', async ({ page }) => {
  const project = await joinLead(page, hub);
  await openPlace(page, `${hub.url}${project}/wear/checks/table`);
  await page.getByLabel(/^Stack height, centre of the heel, left, pair 637$/).fill('3.49');
  await page.getByRole('button', { name: 'Save 1 check' }).click();
  await expect(page.getByText(/^Pair 637: You typed 3\.49 mm/)).toContainText('Is it 34.9 mm?');
  await page.getByLabel(/^Stack height, centre of the heel, left, pair 637$/).fill('34.9');
  await expect(page.getByText(/^Pair 637: You typed/)).toHaveCount(0);
  await page.getByRole('button', { name: 'Save 1 check' }).click();
  await expect(page.getByText('1 check taken in')).toBeVisible();
});

test('the reader says its columns, gives a table with the pairs, and takes what is pasted', async ({
  page,
}) => {
  const project = await joinLead(page, hub);
  await openPlace(page, `${hub.url}${project}/wear/checks`);
  await page.getByRole('button', { name: 'Read checks from a table (CSV)' }).click();
  const form = page.getByRole('region', { name: 'Read checks from a table (CSV)' });
  await expect(form).toContainText('pair, measured_at, measure, site, foot, value, unit');
  const coming = page.waitForEvent('download');
  await form.getByRole('button', { name: 'with the pairs of Round 3' }).click();
  expect((await coming).suggestedFilename()).toBe('bench-checks Round 3.csv');
  await form
    .getByLabel('Paste the table here, its head included')
    .fill(
      [
        'pair;measured_at;measure;site;foot;value;unit',
        '637;2026-11-21;Stack height;centre of the heel;left;34,9;mm',
      ].join('\n'),
    );
  await expect(form.getByText('1 check with 1 reading', { exact: true })).toBeVisible();
  await form.getByRole('button', { name: 'Take them in' }).click();
  await expect(page.getByText('1 check taken in')).toBeVisible();
});

test('the table fits a phone, in Chinese too', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 760 });
  const project = await joinLead(page, hub);
  await page.goto(`${hub.url}/settings`);
  await chooseLanguage(page, '简体中文');
  await openPlace(page, `${hub.url}${project}/wear/checks/table`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('录入读数，或粘贴进来。');
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
  ).toBeLessThanOrEqual(0);
  expect(await axeFaults(page)).toEqual([]);
});

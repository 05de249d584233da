/** A lead's old spreadsheet is pasted at the desk: its mistakes at their cells, one mended, the rest in, and out again. */
import { expect, test, type Page } from '@playwright/test';
import { oldSpreadsheet } from '../old-spreadsheet.ts';
import { joinLead, openPlace } from './every-place.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

/** Puts the text where a paste puts it, all at once. */
const paste = async (page: Page, text: string) => {
  await page.getByLabel('Paste the table here, its head included').fill(text);
};

const asTabs = (csv: string): string => csv.replaceAll(';', '\t');

const comesIn = async (page: Page, text: string, what: string) => {
  await paste(page, text);
  await page.getByRole('button', { name: `Bring in ${what}` }).click();
  await expect(page.getByText(`${what} brought in.`)).toBeVisible();
};

test('an old spreadsheet comes in, each mistake told at its cell, and goes out again', async ({
  page,
}) => {
  const { tables, planted } = oldSpreadsheet();
  const project = await joinLead(page, hub);
  await page.getByRole('link', { name: 'Bring in a table' }).click();
  await expect(page).toHaveURL(new RegExp(`${project}/tables$`));
  await comesIn(page, tables.testers, '12 testers');

  // One pair has a size that no foot has: it is mended in the preview.
  await paste(page, tables.pairs);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    '19 pairs can come in. 1 row needs you.',
  );
  const size = page.getByLabel('Size, row 8');
  await expect(size).toHaveValue('2700');
  await expect(size).toHaveAccessibleDescription('Must be from 17 to 56.');
  await expect(size).toHaveAttribute('aria-invalid', 'true');
  await size.fill('42,5');
  // The table is drawn anew amid the word, and the word stays.
  for (const at of [1, 0])
    await page.getByLabel('Distances').evaluate((distances: HTMLSelectElement, index) => {
      distances.selectedIndex = index;
      distances.dispatchEvent(new Event('change', { bubbles: true }));
    }, at);
  await expect(size).toHaveAttribute('aria-invalid', 'true');
  await expect(size).toHaveValue('42,5');
  await size.press('Enter');
  await size.blur();
  await page.getByRole('button', { name: 'Bring in 20 pairs' }).click();
  await expect(page.getByText('20 pairs brought in.')).toBeVisible();
  await comesIn(page, tables['hand-outs'], '20 hand-outs');

  await paste(page, asTabs(tables.runs));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    '291 runs can come in. 9 rows need you.',
  );
  const columns: Readonly<Record<string, string>> = {
    date: 'Day of the run',
    pair: 'Pair',
    tester: 'Tester',
    distance: 'Distance',
    time: 'Time',
  };
  const wrong = planted.filter(({ table }) => table === 'runs');
  for (const { line, column, typed } of wrong) {
    const cell = page.getByLabel(`${columns[column]}, row ${line}`, { exact: true });
    await expect(cell, `row ${line}`).toHaveValue(typed);
    await expect(cell, `row ${line}`).toHaveAccessibleDescription(/\S/);
  }
  await expect(page.locator('.table-preview input')).toHaveCount(wrong.length);
  await expect(page.getByLabel('Pair, row 224')).toHaveAccessibleDescription(
    /^A02 had this pair then\./,
  );

  const distance = page.getByLabel('Distance, row 61');
  await distance.fill(wrong.find(({ line }) => line === 61)?.right ?? '');
  await distance.blur();
  await expect(distance).toHaveAccessibleDescription('');
  // What looks odd comes in when the lead says that it is right, and is not asked about again.
  await page.getByRole('button', { name: 'It is right: row 224' }).click();
  await page.getByRole('button', { name: 'Bring in 293 runs' }).click();
  await expect(page.getByText('293 runs brought in.')).toBeVisible();

  await page.getByRole('link', { name: 'See the runs' }).click();
  await page.getByLabel('Tester', { exact: true }).selectOption('A02');
  await expect(page.getByText(/^25 of \d+ runs$/)).toBeVisible();
  await page.locator('main a[href*="/runs/"]').first().click();
  await expect(page.getByText(/^Brought in from a table by the lead on /i)).toBeVisible();

  // The same table once more adds nothing.
  await openPlace(page, `${hub.url}${project}`);
  await page.getByRole('link', { name: 'Bring in a table' }).click();
  await paste(page, tables.runs);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^0 runs can come in\./);
  await page.getByRole('button', { name: 'Take another table' }).click();
});

test('what came in is taken out again in one press, after a look at it', async ({ page }) => {
  const { tables } = oldSpreadsheet();
  const project = await joinLead(page, hub);
  await page.getByRole('link', { name: 'Testers', exact: true }).click();
  await page.getByRole('link', { name: 'Bring in a table' }).click();
  await expect(page).toHaveURL(new RegExp(`${project}/tables$`));
  await comesIn(page, asTabs(tables.testers), '12 testers');
  await page.getByRole('link', { name: 'See the testers' }).click();
  await page.getByRole('searchbox').fill('A07');
  await expect(page.getByRole('rowheader', { name: /A07/ })).toBeVisible();
  await page.getByRole('link', { name: 'Bring in a table' }).click();
  await page.getByRole('button', { name: 'Undo: take them out again' }).click();
  await expect(page.getByText('Taken out again')).toBeVisible();
  await page.getByRole('link', { name: 'Testers', exact: true }).click();
  await page.getByRole('searchbox').fill('A07');
  await expect(page.getByRole('rowheader', { name: /A07/ })).toHaveCount(0);
});

test('a table that is unclear is asked about, and nothing is saved before', async ({ page }) => {
  await joinLead(page, hub);
  await page.getByRole('link', { name: 'Bring in a table' }).click();
  await paste(page, 'Who\tPair\tDate\tDistance\nT01\t637\t03/04/2026\t10\n');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Say what this table holds.');
  await page.getByLabel('The table holds').selectOption('runs');
  await expect(page.getByRole('alert')).toHaveText('Choose a column for: Tester.');
  await page.getByLabel('Who', { exact: true }).selectOption('Tester');
  await expect(page.getByLabel('Dates')).toHaveAccessibleDescription(
    'Choose one: the table does not show it.',
  );
  await expect(page.getByRole('button', { name: /^Bring in/ })).toHaveCount(0);
  await page.getByLabel('Dates').selectOption('day / month / year');
  await expect(page.locator('.table-preview')).toBeVisible();
  await page.getByRole('button', { name: 'Take another table' }).click();
  await paste(
    page,
    'pair,measured_at,measure,site,foot,value,unit\n637,2026-05-04,mass,whole,left,250,g',
  );
  await page.getByRole('link', { name: 'Read bench checks from a file' }).click();
  await expect(page).toHaveURL(/wear\/checks$/);
});

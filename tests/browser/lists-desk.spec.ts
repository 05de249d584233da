/** A box of pairs and a panel of testers go in as lists, and a hand-out that was noted late is put right. */
import { expect, test } from '@playwright/test';
import { startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', 'demo-data/wear-test.pairlog');
});
test.afterEach(() => hub.stop());

test('many pairs and testers go in at once, and nothing is lost where a line is wrong', async ({
  page,
}) => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await page.getByRole('link', { name: 'Rounds', exact: true }).click();
  const round = page.getByRole('region', { name: 'Round 3' });
  await expect(round.getByText(/^8 pairs: 360 \(EU 42\), /)).toBeVisible();
  await round.getByRole('button', { name: 'Add several pairs' }).click();
  await round.getByRole('textbox', { name: 'Size, EU' }).fill('42');
  await round.getByLabel('How many').fill('12');
  await round.getByRole('button', { name: 'Draw codes' }).click();
  await expect(round.getByText('12 pairs will be added.')).toBeVisible();
  const list = round.getByLabel('Pairs, a line each');
  const drawn = await list.inputValue();
  // Of the demo's pairs 637 is one.
  await list.fill(`${drawn}\nBOX-1\t43,5\t12\n637 42\nBOX-1 44\nBOX-2 4x`);
  await expect(round.getByText('BOX-1, EU 43.5, 12.0 km before the test')).toBeVisible();
  await round.getByRole('button', { name: 'Save' }).click();
  await expect(round.getByRole('alert')).toHaveText('3 lines must be put right first.');
  for (const why of [
    'Line 14, “637 42”: This code is another pair’s in this project.',
    'Line 15, “BOX-1 44”: The same code stands in line 13.',
    'Line 16, “BOX-2 4x”: That is no EU size.',
  ])
    await expect(round.getByText(why)).toBeVisible();
  await expect(page.getByText('24 pairs, ')).toBeVisible();
  await list.fill(`${drawn}\nBOX-1\t43,5\t12`);
  await round.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('13 pairs added')).toBeVisible();
  await expect(page.getByText('37 pairs, ')).toBeVisible();
  await expect(round.getByText(/^21 pairs: .*BOX-1 \(EU 43\.5\)/)).toBeVisible();

  await page.getByRole('link', { name: 'Testers', exact: true }).click();
  await page.getByRole('button', { name: 'Add several testers' }).click();
  await page.getByLabel('Testers, a line each').fill('T31 Ada Kim 265/267\nt32\nT01');
  await expect(page.getByText('T31, Ada Kim, foot 265 / 267 mm')).toBeVisible();
  await expect(page.getByText('Line 3, “T01”: This code is another tester’s.')).toBeVisible();
  await page.getByLabel('Testers, a line each').fill('T31 Ada Kim 265/267\nt32');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('2 testers added')).toBeVisible();
  for (const tester of ['T31 Ada Kim', 'T32'])
    await expect(page.getByRole('rowheader', { name: tester })).toBeVisible();
});

test('a hand-out that was noted late is put right, but not into the future', async ({ page }) => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await page.getByRole('link', { name: 'Pairs', exact: true }).click();
  const row = page.getByRole('listitem').filter({ hasText: '637 → T01' });
  await row.getByRole('button', { name: /Change since when/ }).click();
  const since = row.getByLabel('Since', { exact: true });
  await since.fill('2999-01-01T08:00');
  await row.getByRole('button', { name: 'Save' }).click();
  await expect(row.getByText('Since: This is in the future.')).toBeVisible();
  await since.fill('2026-05-04T08:00');
  await row.getByRole('button', { name: 'Save' }).click();
  await expect(row.getByRole('button', { name: /since 4 May 2026/ })).toBeVisible();
});

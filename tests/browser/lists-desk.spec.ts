/** A box of pairs and a panel of testers go in as lists, and out as one; a hand-out noted late is put right. */
import { expect, test } from '@playwright/test';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

test('many pairs and testers go in at once, and nothing is lost where a line is wrong', async ({
  page,
}) => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await page.getByRole('link', { name: 'Rounds, blueprints and pairs' }).click();
  const round = page.getByRole('region', { name: 'Round 3' });
  const pairs = round.locator('p').filter({ hasText: /\d+ pairs:/ });
  await expect(pairs).toHaveText(/^8 pairs: 360 EU 41.5\b/);
  await round.getByRole('button', { name: 'Add several pairs' }).click();
  await round.getByRole('textbox', { name: 'Sizes, EU' }).fill('41-42');
  await round.getByLabel('Pairs of each size').fill('6');
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
    'Line 16, “BOX-2 4x”: EU sizes go from 17 to 56. For example 42 or 42.5.',
  ])
    await expect(round.getByText(why)).toBeVisible();
  await list.fill(`${drawn}\nBOX-1\t43,5\t12`);
  await list.evaluate((area: HTMLTextAreaElement) => {
    const texts = new MutationObserver(() => {
      document.body.dataset['closedWhileSaving'] = String(area.readOnly);
      texts.disconnect();
    });
    texts.observe(area, { attributes: true, attributeFilter: ['readonly', 'rows'] });
  });
  await round.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('13 pairs added')).toBeVisible();
  await expect(page.locator('body')).toHaveAttribute('data-closed-while-saving', 'true');
  await expect(pairs).toHaveText(/^21 pairs: .* 9 more/);
  await page.goto(page.url().replace(/rounds$/, 'pairs'));
  await page.getByRole('searchbox').fill('BOX-1');
  await expect(page.getByRole('row').filter({ hasText: 'BOX-1' })).toContainText('43.5');

  await page.getByRole('link', { name: 'Testers', exact: true }).click();
  await page.getByRole('button', { name: 'Add several testers' }).click();
  await page.getByLabel('Testers, a line each').fill('T31 Ada Kim 265/267\nt32\nT01');
  await expect(page.getByText('T31, Ada Kim, foot 265 / 267 mm')).toBeVisible();
  await expect(page.getByText('Line 3, “T01”: This code is another tester’s.')).toBeVisible();
  await page.getByLabel('Testers, a line each').fill('T31 Ada Kim 265/267\nt32');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('2 testers added')).toBeVisible();
  for (const tester of ['T31 Ada Kim', 'T32']) {
    await page.getByRole('searchbox').fill(tester.slice(0, 3));
    await expect(page.getByRole('rowheader', { name: tester })).toBeVisible();
  }
});

test('several pairs are handed out at once, and what cannot be stays in the list', async ({
  page,
}) => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await expect(page.getByText(/ 24 pairs, 12 testers, /)).toBeVisible();
  await page.getByRole('link', { name: 'Rounds, blueprints and pairs' }).click();
  const round = page.getByRole('region', { name: 'Round 3' });
  await round.getByRole('button', { name: 'Add several pairs' }).click();
  await round.getByLabel('Pairs, a line each').fill('BOX-1 42\nBOX-2 42');
  await round.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('2 pairs added')).toBeVisible();

  await page.getByRole('link', { name: 'Pairs', exact: true }).click();
  await page.getByRole('button', { name: 'Hand out several pairs' }).click();
  const form = page.getByRole('region', { name: 'Hand out several pairs' });
  const save = form.getByRole('button', { name: 'Save' });
  await save.click();
  await expect(form.getByRole('alert')).toHaveText('Choose a tester for at least one pair.');
  // The latest round stands first, and those whom the size fits.
  await expect(form.getByRole('listitem').first()).toContainText('BOX-1, Round 3, EU 42');
  const fits = form.getByLabel('BOX-1').locator('optgroup').first();
  await expect(fits).toHaveAttribute('label', 'The size fits');
  const [first, second] = await fits.locator('option').allTextContents();
  await form.getByLabel('BOX-1').selectOption({ label: first as string });
  await form.getByLabel('241, Round 2').selectOption({ label: second as string });
  await expect(form.getByText('2 pairs will be handed out.')).toBeVisible();
  const since = form.getByLabel('Since', { exact: true });
  await since.fill('2999-01-01T08:00');
  await save.click();
  await expect(form.getByRole('alert')).toHaveText('Since: This is in the future.');
  // 241 was with somebody else then, BOX-1 with nobody.
  await since.fill('2026-05-04T08:00');
  await save.click();
  await expect(form.getByRole('alert')).toHaveText('1 pair handed out, 1 not: the list says why.');
  await expect(form.getByLabel('BOX-1')).toBeHidden();
  await expect(form.getByLabel('241, Round 2')).toHaveAccessibleDescription(
    /^Since: The pair came back from somebody else on /,
  );
  await since.fill(
    await page.evaluate(() => {
      const now = new Date();
      return new Date(now.getTime() - 60_000 * now.getTimezoneOffset()).toISOString().slice(0, 16);
    }),
  );
  await save.click();
  await expect(page.getByText('1 pair handed out', { exact: true })).toBeVisible();
  await expect(form).toBeHidden();
  for (const pair of ['BOX-1', '241']) {
    await page.getByRole('searchbox').fill(pair);
    await expect(page.getByRole('checkbox', { name: `Select pair ${pair}` })).toBeVisible();
  }
});

test('a form says which fields may stay empty, and to a reader which must not', async ({
  page,
}) => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: 'New shoe' }).click();
  for (const needed of ['Name of the project', 'Distance a pair must carry, km'])
    await expect(page.getByLabel(needed, { exact: true })).toHaveAttribute('required');
  await expect(
    page.getByRole('heading', { name: 'Feet that the shoe is for (optional)' }),
  ).toBeVisible();
  await page.getByRole('button', { name: 'One more limit' }).click();
  const site = page.getByLabel('Site (optional; empty: every site)');
  await expect(site).not.toHaveAttribute('required');
});

test('a hand-out that was noted late is put right, but not into the future', async ({ page }) => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await page.getByRole('link', { name: 'Pairs', exact: true }).click();
  await page.getByRole('searchbox').fill('637');
  await page.getByRole('rowheader', { name: '637' }).getByRole('link').click();
  const list = page.getByRole('region', { name: 'Hand-outs' });
  await list.getByRole('button', { name: 'Edit the dates: pair 637, T01' }).click();
  const since = list.getByLabel('Handed out on');
  await since.fill('2999-01-01T08:00');
  await list.getByRole('button', { name: 'Save' }).click();
  await expect(since).toHaveAccessibleDescription('This is in the future.');
  await since.fill('2026-05-04T08:00');
  await list.getByRole('button', { name: 'Save' }).click();
  await expect(list.getByText('since 4 May 2026')).toBeVisible();
});

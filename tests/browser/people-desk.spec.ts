/** Pairs and testers at the desk: lists that sort, pages behind them, hand-outs that are put right and put back. */
import { expect, test, type Page } from '@playwright/test';
import { axeFaults } from './axe.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const openDesk = async (page: Page, place: 'Pairs' | 'Testers') => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await page.getByRole('link', { name: place, exact: true }).click();
  await expect(page.getByRole('table', { name: place })).toBeVisible();
};

const openPair = async (page: Page, code: string) => {
  await page.getByRole('searchbox', { name: 'Pair or tester' }).fill(code);
  // Only once the list has narrowed: before, the row moves from under the press.
  await expect(page.getByRole('table', { name: 'Pairs' }).getByRole('rowheader')).toHaveCount(1);
  await page.getByRole('rowheader', { name: code }).getByRole('link').click();
  await expect(page.getByRole('region', { name: 'Hand-outs' })).toBeVisible();
};

const localMinute = (page: Page, hoursAgo: number) =>
  page.evaluate((hours) => {
    const now = new Date(Date.now() - hours * 3_600_000);
    return new Date(now.getTime() - 60_000 * now.getTimezoneOffset()).toISOString().slice(0, 16);
  }, hoursAgo);

test('the dates of a hand-out are edited, and the edit is undone', async ({ page }) => {
  await openDesk(page, 'Pairs');
  await openPair(page, '637');
  const list = page.getByRole('region', { name: 'Hand-outs' });
  const before = await list.getByRole('listitem').first().innerText();
  await list.getByRole('button', { name: 'Edit the dates: pair 637, T01' }).first().click();
  const from = list.getByLabel('Handed out on');
  await from.fill('2999-01-01T08:00');
  await list.getByRole('button', { name: 'Save' }).click();
  await expect(from).toHaveAccessibleDescription('This is in the future.');
  await expect(from).toBeFocused();
  await from.fill('2026-05-04T08:00');
  await list.getByRole('button', { name: 'Save' }).click();
  await expect(list.getByText('since 4 May 2026')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(list.getByText('since 4 May 2026')).toHaveCount(0);
  expect(await list.getByRole('listitem').first().innerText()).toBe(before);
});

test('several pairs are taken back at a date, and that is undone', async ({ page }) => {
  await openDesk(page, 'Pairs');
  const state = page.getByRole('combobox', { name: 'State', exact: true });
  await state.selectOption('With a tester');
  const rows = page.getByRole('table', { name: 'Pairs' }).getByRole('row');
  const all = await rows.count();
  for (const code of ['637', '926', '928'])
    await page.getByRole('checkbox', { name: `Select pair ${code}` }).check();
  await page.getByRole('button', { name: 'Take back 3 pairs' }).click();
  const form = page.getByRole('region', { name: 'Take back 3 pairs' });
  const back = form.getByLabel('Back since');
  await back.fill('2026-01-01T08:00');
  await form.getByRole('button', { name: 'Take back 3 pairs' }).click();
  await expect(form.getByText(/Handed out only after that time: /)).toBeVisible();
  await back.fill(await localMinute(page, 24));
  await form.getByRole('button', { name: 'Take back 3 pairs' }).click();
  await expect(page.getByText('3 pairs taken back')).toBeVisible();
  await expect(form).toHaveCount(0);
  await expect(rows).toHaveCount(all - 3);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(rows).toHaveCount(all);
});

test('a mark of a pair’s life leads to its run in one press, and back', async ({ page }) => {
  await openDesk(page, 'Pairs');
  await openPair(page, '707');
  const address = page.url();
  const headline = await page.getByRole('heading', { level: 1 }).innerText();
  await page.locator('.life-felt').last().click();
  await expect(page).toHaveURL(/\/runs\/[0-9a-f-]{36}$/);
  await page.goBack();
  await expect(page).toHaveURL(address);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(headline);
  // The same runs stand in a table for whoever does not see the drawing.
  await page.getByText('As a table').first().click();
  const table = page.getByRole('region', { name: /^Pair 707 over / });
  expect(await table.getByRole('row').count()).toBeGreaterThan(10);
  await table.getByRole('rowheader').first().getByRole('link').click();
  await expect(page).toHaveURL(/\/runs\//);
});

test('a list is sorted by keyboard alone, and says how', async ({ page }) => {
  await openDesk(page, 'Pairs');
  const head = page.getByRole('columnheader', { name: 'Distance' });
  await expect(head).toHaveAttribute('aria-sort', 'none');
  await head.getByRole('button').focus();
  await page.keyboard.press('Enter');
  await expect(head).toHaveAttribute('aria-sort', 'descending');
  const figures = page.locator('.distance-bar-figure');
  const shown = async () => (await figures.allInnerTexts()).map((text) => parseFloat(text));
  const farthest = await shown();
  expect(farthest).toEqual([...farthest].sort((a, b) => b - a));
  await page.keyboard.press('Space');
  await expect(head).toHaveAttribute('aria-sort', 'ascending');
  const nearest = await shown();
  expect(nearest).toEqual([...nearest].sort((a, b) => a - b));
  expect(nearest[0]).toBeLessThan(farthest[0] as number);
});

test('a pair’s own data is put right, and its use stopped and allowed again', async ({ page }) => {
  await openDesk(page, 'Pairs');
  await openPair(page, '637');
  await page.getByRole('button', { name: 'Correct this pair' }).click();
  const form = page.getByRole('region', { name: 'Correct this pair' });
  await form.getByLabel('Code on the tongue label').fill('926');
  await form.getByRole('button', { name: 'Save' }).click();
  await expect(form.getByText('This code is another pair’s in this project.')).toBeVisible();
  await form.getByLabel('Code on the tongue label').fill('638');
  await form.getByRole('button', { name: 'Save' }).click();
  await expect(page.locator('.crumbs')).toContainText('638');

  await page.getByRole('button', { name: 'Stop its use' }).click();
  await page.getByLabel('Why must nobody wear it?').fill('Bond failed');
  await page.getByRole('button', { name: 'Stop the use of 1 pair' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Nobody may run in pair 638.');
  await page.getByRole('button', { name: 'End the notice' }).click();
  await expect(page.getByRole('heading', { level: 1 })).not.toHaveText(/Nobody may run/);
});

test('a tester’s page says what is theirs alone, and takes their pairs back', async ({ page }) => {
  await openDesk(page, 'Testers');
  await page.getByRole('rowheader', { name: 'T11' }).getByRole('link').click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    /^T11: hot spot at the central ball in 28 of 30 runs, others 3 of 153\.$/,
  );
  // Seen and heard: the stamp's word, and what it says where it stands alone.
  await expect(page.locator('.place-head .stamp > span')).toHaveText([
    'one tester',
    'recurs for one tester',
  ]);
  await page.getByRole('button', { name: 'Take the pair back' }).click();
  await page.getByRole('button', { name: 'Take back 1 pair' }).click();
  await expect(page.getByText('1 pair taken back')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Take the pair back' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('button', { name: 'Take the pair back' })).toBeVisible();
});

for (const width of [1280, 390])
  test(`every screen of both places fits and has no fault that axe finds: ${width} px`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 800 });
    await openDesk(page, 'Pairs');
    const pairs = page.url();
    const links = async (name: string) =>
      page.getByRole('rowheader', { name }).getByRole('link').getAttribute('href');
    const pair = await links('963');
    await page.getByRole('link', { name: 'damaged' }).click();
    const damage = page.url();
    await page.goto(pairs.replace(/pairs$/, 'testers'));
    const tester = await links('T11');
    for (const path of [pairs, `${hub.url}${pair}`, damage, page.url(), `${hub.url}${tester}`]) {
      await page.goto(path);
      await expect(page.locator('.place-head h1')).toBeVisible();
      const box = await page.locator('.place-head h1').boundingBox();
      expect((box?.y ?? 999) + (box?.height ?? 999)).toBeLessThan(400);
      const { sideways, high } = await page.evaluate(() => ({
        sideways: document.documentElement.scrollWidth - innerWidth,
        high: document.documentElement.scrollHeight,
      }));
      expect(sideways).toBeLessThanOrEqual(0);
      if (width === 1280) expect(high).toBeLessThanOrEqual(1200);
      expect(await axeFaults(page)).toEqual([]);
    }
  });

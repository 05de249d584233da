/**
 * Lists of the desk: a box of pairs and a panel of testers go in as lists, a hand-out noted late is put right; columns are
 * hidden, rows selected by key and acted on, ten thousand scrolled through, and everything is found from every place.
 */
import { expect, test, type Page } from '@playwright/test';
import { largeGroup } from '../bench/large-group.ts';
import { joinLead, openPlace } from './every-place.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { writeHeads } from './write-heads.ts';

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
  await expect(since).toHaveAccessibleDescription(/This is in the future\.$/);
  await expect(since).toBeFocused();
  // 241 was with somebody else then, BOX-1 with nobody.
  await since.fill('2026-05-04T08:00');
  await save.click();
  await expect(form.getByRole('alert')).toHaveText('1 pair handed out, 1 not: the list says why.');
  await expect(form.getByLabel('BOX-1')).toBeHidden();
  await expect(form.getByLabel('241, Round 2')).toHaveAccessibleDescription(
    /^The pair came back from somebody else on /,
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
  const site = page.getByLabel('Site', { exact: true });
  await expect(site).not.toHaveAttribute('required');
  await site.selectOption('another site…');
  await expect(page.getByLabel('Name of the site')).toHaveAttribute('required');
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

const rowsOf = (page: Page, list: string) => page.locator(`.${list}-table tbody tr[data-at]`);

test('a column that is hidden stays hidden on this device, in this list alone', async ({
  page,
}) => {
  const project = await joinLead(page, hub);
  await openPlace(page, `${hub.url}${project}/pairs`);
  const head = page.getByRole('columnheader', { name: 'Last run' });
  await expect(head).toBeVisible();
  await page.getByText('Columns', { exact: true }).click();
  // The name of a row cannot be hidden.
  await expect(page.getByRole('checkbox', { name: 'Pair', exact: true })).toHaveCount(0);
  await page.getByRole('checkbox', { name: 'Last run' }).uncheck();
  await expect(head).toHaveCount(0);
  await expect(rowsOf(page, 'pairs').first().locator('.cell-lastRun')).toHaveCount(0);
  await page.reload();
  await expect(rowsOf(page, 'pairs').first()).toBeVisible();
  await expect(head).toHaveCount(0);
  await openPlace(page, `${hub.url}${project}/testers`);
  await expect(head).toBeVisible();
  await openPlace(page, `${hub.url}${project}/pairs`);
  await page.getByText('Columns (1 hidden)').click();
  await page.getByRole('checkbox', { name: 'Last run' }).check();
  await expect(head).toBeVisible();
});

test('the head of a list stays in sight while its rows scroll', async ({ page }) => {
  const project = await joinLead(page, hub);
  await openPlace(page, `${hub.url}${project}/runs`);
  await expect(page.locator('.runs-table')).toHaveAttribute('aria-rowcount', '519');
  const first = rowsOf(page, 'runs').filter({ has: page.locator('[aria-rowindex="2"]') });
  const box = page.locator('.list-box');
  await box.hover();
  await page.mouse.wheel(0, 4000);
  await expect(first).toHaveCount(0);
  const isSeen = () =>
    page.evaluate(() => {
      const head = [...document.querySelectorAll('.runs-table thead th button')];
      return head.every((button) => {
        const { left, top, width, height } = button.getBoundingClientRect();
        return button.contains(document.elementFromPoint(left + width / 2, top + height / 2));
      });
    });
  expect(await isSeen()).toBe(true);
});

test('runs are selected by keys alone, set aside together, and that is undone', async ({
  page,
}) => {
  const project = await joinLead(page, hub);
  await openPlace(page, `${hub.url}${project}/runs`);
  await expect(page.locator('.runs-table')).toHaveAttribute('aria-rowcount', '519');
  const rows = rowsOf(page, 'runs');
  const box = (at: number) => rows.nth(at).getByRole('checkbox');
  await rows.nth(1).getByRole('rowheader').getByRole('link').focus();
  await page.keyboard.press('Space');
  await expect(box(1)).toBeChecked();
  await page.keyboard.press('Shift+ArrowDown');
  await page.keyboard.press('Shift+ArrowDown');
  await page.keyboard.press('Shift+ArrowDown');
  await page.keyboard.press('Shift+ArrowUp');
  await expect(page.getByText('3 selected · 518 runs')).toBeVisible();
  await expect(rows.nth(3).getByRole('rowheader').getByRole('link')).toBeFocused();
  // Two keys at once, sooner than the list is drawn anew: each counts.
  const twice = (key: string) =>
    page.evaluate((pressed) => {
      const at = document.activeElement;
      for (let times = 0; times < 2; times++)
        at?.dispatchEvent(new KeyboardEvent('keydown', { key: pressed, bubbles: true }));
    }, key);
  await twice('ArrowDown');
  await expect(rows.nth(5).getByRole('rowheader').getByRole('link')).toBeFocused();
  await twice('ArrowUp');
  await expect(rows.nth(3).getByRole('rowheader').getByRole('link')).toBeFocused();
  await page.getByRole('button', { name: 'Set 3 runs aside' }).press('Enter');
  const form = page.getByRole('region', { name: 'Set 3 runs aside' });
  await form.getByRole('button', { name: 'Set 3 runs aside' }).press('Enter');
  await expect(form.getByText('Say why.')).toBeVisible();
  await form.getByLabel('Why is it set aside?').fill('In other shoes');
  await form.getByLabel('Why is it set aside?').press('Enter');
  await expect(page.getByText('3 runs set aside')).toBeVisible();
  await expect(page.getByText(/; 515 count: /)).toBeVisible();
  for (const at of [1, 2, 3]) await expect(rows.nth(at)).toContainText('set aside');
  await expect(rows.nth(4)).not.toContainText('set aside');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText(/^518 runs by 12 testers, /)).toBeVisible();

  // From the last row pressed to another, with the mouse; all, and none.
  await box(4).click();
  await box(7).click({ modifiers: ['Shift'] });
  await expect(page.getByText('4 selected · 518 runs')).toBeVisible();
  await rows.nth(2).getByRole('rowheader').getByRole('link').focus();
  await page.keyboard.press('Control+a');
  await expect(page.getByText('518 selected · 518 runs')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: /^Set .* aside$/ })).toHaveCount(0);
});

test('pairs, testers, findings and checks are acted on together', async ({ page }) => {
  const project = await joinLead(page, hub);
  await openPlace(page, `${hub.url}${project}/pairs`);
  for (const code of ['637', '926'])
    await page.getByRole('checkbox', { name: `Select pair ${code}` }).check();
  // What is selected stays so while the list is narrowed to something else.
  await page.getByRole('searchbox').fill('100');
  await expect(rowsOf(page, 'pairs')).toHaveCount(1);
  await page.getByRole('checkbox', { name: 'Select pair 100' }).check();
  await page.getByRole('searchbox').fill('');
  await expect(page.getByRole('button', { name: 'Take back 2 pairs' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Hand out 1 pair' })).toBeVisible();
  await page.getByRole('button', { name: 'Stop the use of 3 pairs' }).click();
  const stop = page.getByRole('region', { name: 'Stop the use of 3 pairs' });
  await stop.getByRole('textbox').fill('The bond fails');
  await stop.getByRole('button', { name: 'Stop the use of 3 pairs' }).click();
  await expect(page.getByText('3 pairs out of use')).toBeVisible();
  await expect(page.getByText('do not run', { exact: true })).toHaveCount(4);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('do not run', { exact: true })).toHaveCount(1);

  await openPlace(page, `${hub.url}${project}/testers`);
  await page.getByRole('checkbox', { name: 'Select tester T03' }).check();
  await page.getByRole('checkbox', { name: 'Select tester T04' }).check();
  await expect(page.getByRole('button', { name: 'Take back their 2 pairs' })).toBeVisible();
  await page.getByRole('button', { name: 'Print 2 invites' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Invites for the 2 testers you selected.',
  );

  await openPlace(page, `${hub.url}${project}/changes`);
  const findings = rowsOf(page, 'findings');
  const soft = findings.filter({ hasText: 'The heel loses energy too soon' });
  const hold = findings.filter({ hasText: 'does not hold as well' });
  await soft.getByRole('checkbox').check();
  await hold.getByRole('checkbox').check();
  await page.getByRole('button', { name: 'Assign 2 findings to a round' }).click();
  const assign = page.getByRole('region', { name: 'Assign 2 findings to a round' });
  await assign.getByLabel('Which round carries the change?').selectOption('Round 2');
  await assign.getByRole('button', { name: 'Assign 2 findings to a round' }).click();
  await expect(page.getByText('2 findings assigned to Round 2')).toBeVisible();
  await expect(soft.locator('.cell-carried')).toHaveText('Round 2');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(soft.locator('.cell-carried')).toHaveText('no round yet');
  await soft.getByRole('checkbox').check();
  await page.getByRole('button', { name: 'Close 1 finding' }).click();
  await expect(soft.locator('.cell-state')).toHaveText('closed');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(soft.locator('.cell-state')).toHaveText('open');

  await openPlace(page, `${hub.url}${project}/wear/checks`);
  const check = rowsOf(page, 'checks').first();
  await check.getByRole('checkbox').check();
  await page.getByRole('button', { name: /^Set 1 check aside \(14 readings\)$/ }).click();
  const aside = page.getByRole('region', { name: /^Set 1 check aside/ });
  await aside.getByRole('textbox').fill('Gauge was not zeroed');
  await aside.getByRole('button', { name: /^Set 1 check aside/ }).click();
  await expect(page.getByText('698 readings; 14 set aside, in no figure.')).toBeVisible();
  await check.getByRole('checkbox').check();
  await page.getByRole('button', { name: 'Count 14 readings' }).click();
  await expect(page.getByText('698 readings, all counted.')).toBeVisible();
});

test('on a phone a card says all that the table does, and several are selected there too', async ({
  page,
}) => {
  const project = await joinLead(page, hub);
  await page.setViewportSize({ width: 390, height: 800 });
  await openPlace(page, `${hub.url}${project}/testers`);
  const card = rowsOf(page, 'testers').filter({ hasText: 'T09' });
  await expect(card).toContainText('10 Nov 2026');
  await expect(card).toContainText('20 days');
  for (const cell of await card.locator('th, td').all())
    if ((await cell.textContent()) !== '') await expect(cell).toBeVisible();
  await expect(card.locator('.cell-lastRun')).toHaveAttribute('data-title', 'Last run');
  await openPlace(page, `${hub.url}${project}/runs`);
  await page.getByRole('button', { name: 'Show all 518' }).click();
  await rowsOf(page, 'runs').nth(1).getByRole('checkbox').check();
  await page.mouse.wheel(0, 20_000);
  // Far down the page the number and what can be done with it are still there.
  await expect.poll(() => page.evaluate(() => window.scrollY)).toBeGreaterThan(5000);
  await expect(page.getByRole('button', { name: 'Set 1 run aside' })).toBeInViewport();
  expect(await rowsOf(page, 'runs').count()).toBeLessThan(80);
});

for (const width of [1280, 390])
  test(`everything is found from every place: ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    const project = await joinLead(page, hub);
    await openPlace(page, `${hub.url}${project}/verdict`);
    const dialog = page.getByRole('dialog', { name: 'Search' });
    const field = dialog.getByRole('combobox');
    const group = (name: string) => dialog.getByRole('group', { name, exact: true });
    const chosen = dialog.locator('[role=option][aria-selected=true]');
    if (width === 390) await page.getByRole('button', { name: 'Search' }).click();
    else await page.keyboard.press('/');
    await expect(field).toBeFocused();
    // A remark by a word of the other language, opened by keys.
    await field.fill('鞋舌');
    const said = group('What testers say').getByRole('option');
    await expect(said.first()).toContainText('tongue');
    await expect(chosen).toHaveText((await said.first().textContent()) as string);
    await page.keyboard.press('ArrowDown');
    const second = (await said.nth(1).locator('q').textContent()) as string;
    await expect(chosen).toContainText(second);
    await page.keyboard.press('Enter');
    await expect(page).toHaveURL(/\/runs\/[0-9a-f-]{36}$/);
    await expect(page.getByText(second).first()).toBeVisible();
    await expect(dialog).toHaveCount(0);

    await page.keyboard.press('Control+k');
    await field.fill('637');
    await expect(group('Pairs').getByRole('option')).toHaveText(['Pair 637Round 3']);
    await expect(group('Checks').getByRole('option')).toHaveCount(3);
    await field.fill('t09');
    await expect(group('Testers').getByRole('option')).toHaveText('T09');
    await field.fill('10 Nov');
    await expect(group('Runs').getByRole('option').first()).toContainText('10 Nov 2026');
    await field.fill('little toe');
    await expect(group('Findings').getByRole('option')).toContainText('The film presses');
    await field.fill('hand-out plan');
    await group('Places').getByRole('option').click();
    await expect(page).toHaveURL(/\/plan$/);

    await page.keyboard.press('/');
    await field.fill('nowhere to be found');
    await expect(dialog.getByRole('status')).toHaveText('Nothing found for “nowhere to be found”.');
    await page.keyboard.press('Escape');
    await expect(dialog).toHaveCount(0);
    // What is typed into a field is no call for the search.
    await openPlace(page, `${hub.url}${project}/pairs`);
    await page.getByRole('searchbox').pressSequentially('/6');
    await expect(dialog).toHaveCount(0);
    await expect(page.getByRole('searchbox')).toHaveValue('/6');
  });

test('ten thousand runs scroll: few rows are drawn, and always the right ones', async ({
  page,
}) => {
  test.setTimeout(240_000);
  const group = largeGroup(40, 10_000);
  const start = ({ body }: (typeof group.revisions)[number]) =>
    Date.parse((body as { startedAt: string }).startedAt);
  const runs = group.revisions
    .filter(({ kind }) => kind === 'run')
    .sort((a, b) => start(b) - start(a) || (a.id < b.id ? -1 : 1))
    .map(({ id }) => id);
  await joinLead(page, hub);
  await writeHeads(page, group.revisions);
  await page.goto(`${hub.url}/desk/${group.project}/runs`);
  await expect(page.locator('.runs-table')).toHaveAttribute('aria-rowcount', '10001', {
    timeout: 120_000,
  });
  /** What is drawn, and whether a row stands wherever one looks into the box. */
  const look = () =>
    page.evaluate(() => {
      const box = document.querySelector('.list-box') as HTMLElement;
      const { left, top, bottom } = box.getBoundingClientRect();
      const head = (box.querySelector('thead') as HTMLElement).offsetHeight;
      const rows = [...box.querySelectorAll<HTMLElement>('tr[data-at]')];
      let isCovered = true;
      for (let y = top + head + 4; y < Math.min(bottom, innerHeight) - 4; y += 12)
        isCovered &&= Boolean(document.elementFromPoint(left + 80, y)?.closest('tr[data-at]'));
      return {
        isCovered,
        top: box.scrollTop,
        rows: rows.map((row) => ({
          at: Number(row.dataset['at']),
          run: row.querySelector('th a')?.getAttribute('href')?.split('/').at(-1),
        })),
      };
    });
  await page.locator('.list-box').hover();
  for (let turn = 0; turn < 30; turn++) {
    const { top } = await look();
    await page.mouse.wheel(0, 300 * (turn % 10) * (turn % 4 === 3 ? -1 : 3) + 200);
    if (turn % 10 !== 0) await expect.poll(async () => (await look()).top).not.toBe(top);
    await expect.poll(async () => (await look()).isCovered).toBe(true);
    const { rows } = await look();
    expect(rows.length).toBeGreaterThan(5);
    expect(rows.length).toBeLessThan(80);
    for (const { at, run } of rows) expect(run, `row ${at}`).toBe(runs[at]);
  }
  // By key to the very end; the row that has the focus stays drawn wherever one scrolls.
  await rowsOf(page, 'runs').nth(15).getByRole('rowheader').getByRole('link').focus();
  await page.keyboard.press('End');
  const last = page.locator('tr[data-at="9999"]').getByRole('rowheader').getByRole('link');
  await expect(last).toBeFocused();
  await expect(last).toBeInViewport();
  expect((await last.getAttribute('href'))?.split('/').at(-1)).toBe(runs[9999]);
  await page.locator('.list-box').evaluate((box) => box.scrollTo(0, 0));
  await expect(page.locator('tr[data-at="0"]')).toBeInViewport();
  await expect(last).toBeFocused();
  expect((await look()).rows.length).toBeLessThan(80);
});

test('Ctrl+F looks through a long list by its own search', async ({ page }) => {
  const project = await joinLead(page, hub);
  await openPlace(page, `${hub.url}${project}/runs`);
  await expect(page.locator('.runs-table')).toHaveAttribute('aria-rowcount', '519');
  await page.keyboard.press('Control+f');
  await expect(page.getByRole('searchbox')).toBeFocused();
  await page.keyboard.type('never where i left it');
  await expect(page.getByText(/^\d+ of 518 runs$/)).toBeVisible();
  await expect(rowsOf(page, 'runs').first()).toContainText('never where I left it');
});

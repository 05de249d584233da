/** The desk's forms: all mistakes at once at their fields, nothing lost on the way, gauges remembered, the shop's table out and in. */
import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { chooseLanguage, draftsHeld, recordsHeld } from './device.ts';
import { joinLead } from './every-place.ts';
import { startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', 'demo-data/wear-test.pairlog');
});
test.afterEach(() => hub.stop());

const open = async (page: Page) => hub.url + (await joinLead(page, hub));
const save = (page: Page) => page.getByRole('button', { name: 'Save', exact: true }).click();
const wrong = (page: Page) => page.locator('form [aria-invalid]');

test('pair, tester, hand-out and gauge study say all that is wrong at once, at the field, until it is mended', async ({
  page,
}) => {
  const project = await open(page);

  await page.goto(`${project}/rounds`);
  const round = page.getByRole('region', { name: 'Round 3' });
  await round.getByRole('button', { name: 'Add a pair', exact: true }).click();
  await page.getByLabel('Size, EU').fill('420');
  await page.getByLabel('Kilometres before the test').fill('1,200');
  await save(page);
  await expect(wrong(page)).toHaveCount(3);
  await expect(page.getByLabel('Code on the tongue label')).toBeFocused();
  await page.getByLabel('Code on the tongue label').fill('901');
  await expect(wrong(page)).toHaveCount(2);
  await page.getByLabel('Size, EU').fill('42');
  await page.getByLabel('Kilometres before the test').fill('1.2');
  await expect(wrong(page)).toHaveCount(0);
  await save(page);
  await expect(round.getByRole('link', { name: '901', exact: true })).toBeVisible();

  await page.goto(`${project}/testers`);
  await page.getByRole('button', { name: 'Add a tester', exact: true }).click();
  await page.getByLabel('Code', { exact: true }).fill('T01');
  await page.getByLabel('Foot length, mm').fill('26.5');
  await page.getByLabel('Body mass, kg').fill('7');
  await page.getByLabel('Height, cm').fill('1.8');
  await save(page);
  await expect(wrong(page)).toHaveCount(4);
  await expect(page.getByLabel('Code', { exact: true })).toBeFocused();
  await page.getByLabel('Height, cm').fill('180');
  await page.getByLabel('Body mass, kg').fill('70');
  await page.getByLabel('Foot length, mm').fill('265');
  await expect(wrong(page)).toHaveCount(1);
  await expect(page.getByText('This code is another tester’s.')).toBeVisible();
  await page.getByLabel('Code', { exact: true }).fill('T90');
  await save(page);
  await page.getByLabel('Tester or pair').fill('T90');
  await expect(page.getByRole('link', { name: 'T90', exact: true }).first()).toBeVisible();

  await page.goto(`${project}/pairs`);
  await page.getByRole('button', { name: 'Hand out', exact: true }).click();
  await page.getByLabel('Since', { exact: false }).first().fill('2999-01-01T10:00');
  await save(page);
  await expect(wrong(page)).toHaveCount(3);
  await page.getByLabel('Pair', { exact: true }).selectOption({ index: 1 });
  await page.getByLabel('Hand out to').selectOption({ index: 1 });
  await expect(wrong(page)).toHaveCount(1);

  await page.goto(`${project}/wear/gauges`);
  await page.getByRole('button', { name: 'Add a gauge study' }).click();
  await page.getByLabel('Width of the tolerance to decide, mm').fill('wide');
  await save(page);
  await expect(wrong(page)).toHaveCount(3);
  await page.getByLabel('Gauge', { exact: true }).fill('Calliper C9');
  await page.getByLabel('Width of the tolerance to decide, mm').fill('4');
  const first = page.getByLabel('Operator 1, trial 1, Part 1', { exact: true });
  await first.focus();
  await page.evaluate(() => {
    const data = new DataTransfer();
    data.setData('text/plain', '58.1\t58,2\tx\n7000\t58.0');
    document.activeElement?.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
    );
  });
  await expect(first).toHaveValue('58.1');
  await expect(wrong(page)).toHaveCount(2);
  await page.getByLabel('Operator 1, trial 1, Part 3', { exact: true }).fill('');
  await page.getByLabel('Operator 1, trial 2, Part 1', { exact: true }).fill('58.2');
  await expect(wrong(page)).toHaveCount(0);
  await page.getByLabel('Operator 1, trial 1, Part 2', { exact: true }).focus();
  await page.keyboard.press('ArrowDown');
  await expect(page.getByLabel('Operator 1, trial 2, Part 2', { exact: true })).toBeFocused();
  await save(page);
  await expect(page.getByText(/^Calliper C9: /)).toBeVisible();
});

test('what was typed is there again after leaving by accident, until it is saved or begun afresh', async ({
  page,
}) => {
  const project = await open(page);
  await page.goto(`${project}/rounds`);
  const add = () => page.getByRole('button', { name: 'Add a round', exact: true }).click();
  const foam = page.getByLabel('Name of the foam');
  const before = page.getByText('You typed this earlier and did not save it.');
  await add();
  await foam.fill('E-24 soft');
  await page.getByLabel('Site, row 1').fill('back height');
  await expect.poll(async () => JSON.stringify(await draftsHeld(page))).toMatch(/"site":"[^"]/);
  // A link that was pressed by accident, then the tab that was closed.
  await page.getByRole('link', { name: 'Pairs', exact: true }).click();
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.goto(`${project}/rounds`);
  await add();
  await expect(before).toBeVisible();
  await expect(foam).toHaveValue('E-24 soft');
  await expect(page.getByLabel('Site, row 1')).toHaveValue('back height');
  await page.getByRole('button', { name: 'Start afresh' }).click();
  await expect(foam).toHaveValue('');
  await expect(before).toHaveCount(0);
  await page.getByRole('status').getByRole('button', { name: 'Undo' }).click();
  await expect(foam).toHaveValue('E-24 soft');
  await page.getByRole('button', { name: 'Remove row 1' }).click();
  await save(page);
  await page.getByRole('region', { name: 'Round 4' }).waitFor();
  await add();
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Round 5');
  await expect(before).toHaveCount(0);

  await page.goto(`${project}/wear/checks/new`);
  await page.getByLabel('Pair', { exact: true }).selectOption({ label: '637' });
  await page.getByLabel('Value, mm').fill('34.9');
  await expect.poll(async () => JSON.stringify(await draftsHeld(page))).toContain('"34.9"');
  await page.reload();
  await expect(before).toBeVisible();
  await expect(page.getByLabel('Value, mm')).toHaveValue('34.9');
});

test('each kind of reading keeps its gauge, the brief’s limits are offered, and arrival leaves the list once it is measured', async ({
  page,
}) => {
  const project = await open(page);
  await page.goto(`${project}/rounds`);
  const round = page.getByRole('region', { name: 'Round 3' });
  for (const code of ['901', '902']) {
    await round.getByRole('button', { name: 'Add a pair', exact: true }).click();
    await page.getByLabel('Code on the tongue label').fill(code);
    await save(page);
    await expect(round.getByRole('link', { name: code, exact: true })).toBeVisible();
  }
  const todo = page
    .locator('.todo')
    .getByText(/^Measure \d pairs? of Round 3 against the blueprint/);
  await page.goto(project);
  await expect(todo).toHaveText(/^Measure 2 pairs/);

  const check = async (code: string) => {
    await page.goto(`${project}/wear/checks/new`);
    await page.getByLabel('Pair', { exact: true }).selectOption({ label: code });
    await page.getByLabel('Arrival (before the first run)').check();
  };
  await check('901');
  await page.getByRole('button', { name: 'Add what blueprint and brief ask for' }).click();
  const rows = page.locator('fieldset.reading');
  // Six dimensions of the drawing and what the brief limits besides, left and right.
  expect(await rows.count()).toBeGreaterThan(12);
  await expect(page.getByLabel('Gauge: Tread depth')).toBeVisible();
  const value = (measure: string) =>
    rows
      .filter({ has: page.locator(`select option:checked:text-is("${measure}")`) })
      .getByLabel(/^Value, /);
  await value('Stack height').first().fill('36');
  await value('Tread depth').first().fill('3');
  await page.getByLabel('Gauge: Stack height').fill('Height gauge, long');
  await page.getByLabel('Gauge: Tread depth').fill('Depth gauge D2');
  await save(page);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Pair 901, new: 2 readings.');

  await check('902');
  await page.getByRole('button', { name: 'Add what blueprint and brief ask for' }).click();
  await expect(page.getByLabel('Gauge: Stack height')).toHaveValue('Height gauge, long');
  await expect(page.getByLabel('Gauge: Tread depth')).toHaveValue('Depth gauge D2');
  await value('Stack height').first().fill('36.1');
  await save(page);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Pair 902, new: 1 reading.');
  const [saved] = (
    await recordsHeld<{ readings: { value: number; gauge?: string }[] }>(page, 'bench-check')
  ).filter(({ readings }) => readings.some((one) => one.value === 36.1));
  expect(saved?.readings.map(({ gauge }) => gauge)).toEqual(['Height gauge, long']);
  await page.goto(project);
  await page.locator('.todo').waitFor();
  await expect(todo).toHaveCount(0);

  // The table for the shop has them too.
  await page.goto(`${project}/wear/checks`);
  await page.getByRole('button', { name: 'Tables for the shop' }).click();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the table of Round 3' }).click();
  const lines = readFileSync(await (await coming).path(), 'utf8')
    .trim()
    .split('\r\n');
  const heads = (lines[0] ?? '').split(',');
  expect(heads).toContain('gauge');
  const of = (measure: string) => lines.filter((line) => line.includes(`,${measure},`));
  expect(of('stack-height').every((line) => line.includes('"Height gauge, long"'))).toBe(true);
  expect(of('tread-depth').every((line) => line.includes('Depth gauge D2'))).toBe(true);
});

test('the table for the shop comes filled, is filled in, read back with each mistake at its cell, and taken in', async ({
  page,
}) => {
  const project = await open(page);
  await page.goto(`${project}/wear/checks`);
  await page.getByRole('button', { name: 'Tables for the shop' }).click();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the table of Round 3' }).click();
  const download = await coming;
  expect(download.suggestedFilename()).toBe('bench-checks Round 3.csv');
  const [head = '', ...lines] = readFileSync(await download.path(), 'utf8')
    .trim()
    .split('\r\n');
  const at = (column: string) => head.split(',').indexOf(column);
  const cell = (line: string, column: string) => line.split(',')[at(column)];
  // Every pair, every place, both feet: eight pairs, and no line twice.
  const codes = new Set(lines.map((line) => cell(line, 'pair')));
  expect([...codes]).toEqual(expect.arrayContaining(['637', '926', '360']));
  expect(codes.size).toBe(8);
  expect(lines.length % 16).toBe(0);
  expect(new Set(lines).size).toBe(lines.length);
  expect(lines.every((line) => cell(line, 'value') === '')).toBe(true);

  const own = lines.filter(
    (line) => cell(line, 'pair') === '637' && cell(line, 'measure') === 'stack-height',
  );
  expect(own.length).toBeGreaterThanOrEqual(2);
  const typed = (values: readonly string[]) =>
    [
      head,
      ...lines.map((line) => {
        const place = own.indexOf(line);
        if (place < 0 || place > 1) return line;
        const cells = line.split(',');
        cells[at('value')] = values[place] ?? '';
        // The day once a pair, as a spreadsheet rewrites it.
        if (place === 0) cells[at('measured_at')] = '2026/11/21';
        cells[at('distance_km')] = '395';
        return cells.join(',');
      }),
    ].join('\r\n');
  await page.getByRole('button', { name: 'Read checks from a table (CSV)' }).click();
  const load = (text: string) =>
    page.getByLabel('Choose the table').setInputFiles({
      name: 'shop.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(text),
    });
  const line = (text: string) => lines.indexOf(own[text === 'left' ? 0 : 1] ?? '') + 2;
  await load(typed(['34x', '340']));
  await expect(page.getByText(`Line ${line('left')}, value “34x”: not a number`)).toBeVisible();
  await expect(
    page.getByText(`Line ${line('right')}, value “340”: Must be from 1 to 100 mm.`),
  ).toBeVisible();
  await expect(
    page.getByText(`${lines.length - 2} lines have no value and are left out.`),
  ).toBeVisible();
  await expect(page.getByRole('button', { name: 'Take them in' })).toHaveCount(0);
  await load(typed(['34.7', '34.8']));
  await expect(page.getByText(/^Line \d+, /)).toHaveCount(0);
  await expect(page.getByText('1 check with 2 readings')).toBeVisible();
  await page.getByRole('button', { name: 'Take them in' }).click();
  const taken = page.getByRole('row').filter({ hasText: '34.7 / 34.8 mm' });
  await expect(taken).toContainText('395 km');
  await expect(taken).toContainText('21 Nov');
});

for (const [language, title] of [
  ['English', 'pairs'],
  ['简体中文', '样鞋'],
] as const)
  test(`the table for the shop is printed on one landscape sheet for eight pairs: ${language}`, async ({
    page,
  }) => {
    const project = await open(page);
    await page.goto(`${hub.url}/settings`);
    await chooseLanguage(page, language);
    await page.goto(`${project}/wear/checks`);
    await page
      .getByRole('button', {
        name: language === 'English' ? 'Tables for the shop' : '给车间的表格',
      })
      .click();
    await page
      .getByRole('link', {
        name: language === 'English' ? 'Print the table of Round 3' : '打印Round 3的表格',
      })
      .click();
    const sheet = page.locator('.shop-sheet');
    await expect(sheet.getByRole('heading')).toContainText(title);
    await expect(sheet.getByRole('columnheader', { name: /^637/ })).toBeVisible();
    const pdf = (await page.pdf({ format: 'A4', preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    const [, width, height] = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/.exec(pdf) ?? [];
    // A4 in points, within what rounds it to pixels.
    expect(Math.abs(Number(width) - 842)).toBeLessThan(2);
    expect(Math.abs(Number(height) - 595)).toBeLessThan(2);
  });

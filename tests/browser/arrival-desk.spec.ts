/**
 * Did the change arrive? Asked of a change in figures, shown with what was measured, withheld where it is not in the shoe;
 * a finding's change put into the next round; and damage that waits for a finding.
 */
import { expect, test, type Locator, type Page } from '@playwright/test';
import type { Finding, Round } from '../../core/records/index.ts';
import { axeFaults } from './axe.ts';
import { recordsHeld } from './device.ts';
import { joinLead } from './every-place.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const join = async (page: Page) => hub.url + (await joinLead(page, hub));

/** Says a collar that is 3 mm higher on the lateral side, in a form that asks for a change in figures. */
const sayCollar = async (form: Locator) => {
  await form.getByText('Say the change in figures').click();
  await form.getByLabel('What moves or grows').selectOption({ label: 'Collar line' });
  await form.getByLabel('By how much').fill('3');
  await form.getByLabel('Side', { exact: true }).selectOption({ label: 'lateral side' });
};

test('a change says how much of it arrived, and one that is not in the shoe is not judged', async ({
  page,
}) => {
  const project = await join(page);
  await page.goto(`${project}/changes`);
  await page.getByLabel('Later round').selectOption({ label: 'Round 2' });
  const arrived = page.getByRole('region', { name: 'Did it arrive?' });
  await expect(arrived.getByText(/^Arrived: 0\.7 of 3\smm: partly$/)).toBeVisible();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Heel slip is better; pressure is not settled.',
  );
  // Round 3 was to mend the pressure; its collar is as high as before.
  await page.getByLabel('Later round').selectOption({ label: 'Round 3' });
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Pressure is better. Nothing else is clearly worse.',
  );
  await arrived.getByRole('link', { name: 'Say the change in figures' }).click();
  await page.getByRole('button', { name: 'Edit this round' }).click();
  const row = page.getByRole('group', { name: 'What changed 1' });
  await sayCollar(row);
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(row.getByText('Choose which way it moves.')).toBeVisible();
  await row.getByLabel('Which way').selectOption({ label: 'higher' });
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(row).toHaveCount(0);
  const round = (await recordsHeld<Round>(page, 'round')).find(({ name }) => name === 'Round 3');
  expect(round?.changes[0]).toMatchObject({
    what: 'Mudguard film cut back 6 mm from the little toe',
    structured: {
      part: 'upper-material',
      line: 'collar',
      side: 'lateral',
      direction: 'higher',
      by: { amount: 3, unit: 'mm' },
    },
  });
  await page.goto(`${project}/changes`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Pressure is better, but the change was not in the shoe.',
  );
  await expect(arrived.getByText(/^Arrived: −?0(\.\d)? of 3\smm: not in the shoe$/)).toBeVisible();
  await page.getByText('How sure?').click();
  await expect(
    page.getByText('It is better, but the change was not in the shoe.').first(),
  ).toBeVisible();
  expect(await axeFaults(page)).toEqual([]);
});

test('a finding asks in figures, the next round carries it, and new pairs are to be measured', async ({
  page,
}) => {
  const project = await join(page);
  await page.goto(`${project}/changes`);
  await page
    .getByRole('table', { name: 'Findings' })
    .getByRole('link', { name: 'The film presses on the right little toe' })
    .click();
  await page.getByRole('button', { name: 'Edit this finding' }).click();
  const form = page.getByRole('region', { name: 'Edit this finding' });
  await sayCollar(form);
  await form.getByLabel('Which way').selectOption({ label: 'higher' });
  await form.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText(/Collar line: 3\s*mm higher, lateral side/).first()).toBeVisible();
  await page.getByRole('button', { name: 'Put this change into a round' }).click();
  await page.getByRole('button', { name: 'Put it into the round' }).click();
  await expect(page.getByText('In the changes of Round 3.')).toBeVisible();
  const finding = (await recordsHeld<Finding>(page, 'finding')).find(({ title }) =>
    title.startsWith('The film presses'),
  );
  const round = (await recordsHeld<Round>(page, 'round')).find(({ name }) => name === 'Round 3');
  expect(round?.changes.at(-1)).toMatchObject({ structured: finding?.change });
  expect(finding?.change).toMatchObject({ line: 'collar', by: { amount: 3, unit: 'mm' } });
  // A round with the same change, said in figures alone, and one new pair: the sheet asks to measure it.
  await page.goto(`${project}/rounds`);
  await page.getByRole('button', { name: 'As Round 3, but …' }).click();
  const next = page.getByRole('region', { name: 'As Round 3, but …' });
  await next.getByRole('button', { name: 'One more change' }).click();
  const row = next.getByRole('group', { name: 'What changed 1' });
  await sayCollar(row);
  await row.getByLabel('Which way').selectOption({ label: 'higher' });
  await row.getByLabel('Meant to keep the limit of').selectOption({ index: 1 });
  await next.getByRole('button', { name: 'Save' }).click();
  const card = page.getByRole('region', { name: 'Round 4' });
  await expect(card).toContainText(/Collar line: 3\s*mm higher, lateral side/);
  await card.getByRole('button', { name: 'Add a pair', exact: true }).click();
  await card.getByLabel('Code on the tongue label').fill('777');
  await card.getByLabel('Size, EU').fill('42.5');
  await card.getByRole('button', { name: 'Save' }).click();
  await expect(card.getByRole('link', { name: '777' })).toBeVisible();
  const made = (await recordsHeld<Round>(page, 'round')).find(({ name }) => name === 'Round 4');
  expect(made?.changes[0]?.structured?.limit).toHaveProperty('measure');
  await page.goto(project);
  await expect(
    page.getByRole('link', {
      name: /Did it arrive\? Measure “Collar line: 3\s*mm higher, lateral side” on 1 pair/,
    }),
  ).toBeVisible();
});

test('damage waits for a finding: one press writes it, undo brings it back', async ({ page }) => {
  const project = await join(page);
  const todo = page.locator('.todo').getByRole('listitem').first();
  await expect(todo).toContainText('Answer pair 963 with a finding: it came apart');
  await todo.getByRole('link').first().click();
  const box = page.getByRole('region', { name: 'To be answered: it came apart' });
  await expect(box).toContainText('Pair 963: sole peels off at 170 km of 600 km');
  await expect(box).toContainText('Nobody should run in a pair that comes apart.');
  expect(await axeFaults(page)).toEqual([]);
  await box.getByRole('button', { name: 'Write the finding' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Sole peels off: pair 963 at 170 km',
  );
  await expect(page.getByText('from damage')).toBeVisible();
  await expect(page.getByRole('link', { name: 'The report' })).toBeVisible();
  await page.goto(project);
  await expect(page.locator('.todo')).not.toContainText('with a finding');
  await page.goto(`${project}/changes`);
  await page.getByRole('link', { name: 'Sole peels off: pair 963 at 170 km' }).click();
  await page.getByRole('button', { name: 'Erase this finding' }).click();
  // It is erased once the list is shown again.
  await expect(page).toHaveURL(/\/changes$/);
  await expect(box).toBeVisible();
});

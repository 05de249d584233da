/**
 * Changes, findings, rounds and the brief: from a step of the sheet to the finding whose outcome waits, a round as the
 * last one, and a shoe that is put away and comes back. By the keyboard where a person would use it.
 */
import { expect, test, type Page } from '@playwright/test';
import { joinLead } from './every-place.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { chooseBoth } from './two-choices.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const join = async (page: Page) => hub.url + (await joinLead(page, hub));

const press = async (page: Page, role: 'link' | 'button', name: string | RegExp) => {
  await page.getByRole(role, { name }).first().focus();
  await page.keyboard.press('Enter');
};

test('from the step on the sheet to the finding, and its outcome is written down, by keyboard', async ({
  page,
}) => {
  await join(page);
  await press(page, 'link', /1 finding to close: did the change work\?/);
  // The step opens the one finding that it is about.
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Heel slips in the heel cup');
  await expect(page.getByText('Round 2 makes this change. Did it work?')).toBeVisible();
  await expect(page.getByText(/57 of 172 runs before, 3 of 183 now/)).toBeVisible();
  await press(page, 'button', 'Write down the outcome');
  const form = page.getByRole('region', { name: 'Write down the outcome' });
  await expect(form.getByLabel('What the change did')).toHaveValue('better');
  await form.getByLabel('What shows it, a line each').fill('');
  await press(page, 'button', 'Save');
  await expect(form.getByText('Write what shows it.')).toBeVisible();
  await form.getByLabel('What shows it, a line each').fill('Three of 183 runs.');
  await press(page, 'button', 'Save');
  await expect(page.getByText(/^Round 2 makes this change: better, as of /)).toBeVisible();
  await press(page, 'link', 'Changes');
  const line = page.getByRole('row').filter({ hasText: 'Heel slips in the heel cup' });
  await expect(line.getByText('better', { exact: true })).toBeVisible();
  await expect(line.getByRole('link', { name: 'Write down the outcome' })).toHaveCount(0);
});

test('each line of the slopes and each run behind a finding leads to its record', async ({
  page,
}) => {
  const project = await join(page);
  await page.goto(`${project}/changes`);
  await page.getByLabel('Later round').selectOption({ label: 'Round 2' });
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Heel slip is better; pressure is not settled.',
  );
  const slopes = page.getByRole('figure', { name: /share of runs with it in Round 1/ });
  await expect(slopes.getByRole('listitem').filter({ hasText: 'heel slip' })).toContainText(
    '▼ better',
  );
  await expect(slopes.getByRole('link', { name: /heel slip/ })).toHaveAttribute(
    'href',
    /\/shoe\/zones\/left\/U10$/,
  );
  await page.getByRole('link', { name: 'The film presses on the right little toe' }).click();
  await expect(page.getByText(/6 of 8 testers, 50 of 183 runs/)).toBeVisible();
  const run = page.locator('.runs-behind a').first();
  const href = (await run.getAttribute('href')) as string;
  expect(href).toMatch(/\/runs\/[0-9a-f-]{36}$/);
  await run.click();
  await expect(page).toHaveURL(hub.url + href);
});

test('of two rounds that are chosen at once both count', async ({ page }) => {
  const project = await join(page);
  await page.goto(`${project}/changes`);
  const [later, earlier] = ['Later round', 'Earlier round'].map((name) => page.getByLabel(name));
  if (!later || !earlier) throw new Error('no lists');
  await expect(later.locator(':checked')).toHaveText('Round 3');
  await chooseBoth(page, [later, 'Round 2'], [earlier, 'Round 1']);
  await expect(earlier.locator(':checked')).toHaveText('Round 1');
  await expect(later.locator(':checked')).toHaveText('Round 2');
});

test('a finding is edited, erased and brought back', async ({ page }) => {
  const project = await join(page);
  await page.goto(`${project}/changes`);
  await page.getByRole('link', { name: 'The heel loses energy too soon' }).click();
  await page.getByRole('button', { name: 'Edit this finding' }).click();
  const form = page.getByRole('region', { name: 'Edit this finding' });
  await form.getByLabel('Title', { exact: true }).fill(' ');
  await form.getByLabel('in mm, if it has a size').fill('far');
  await form.getByRole('button', { name: 'Save' }).click();
  await expect(form.getByText('Title is missing.')).toBeVisible();
  await form.getByLabel('Title', { exact: true }).fill('The heel tires');
  await form.getByRole('button', { name: 'Save' }).click();
  await expect(form.getByText('Must be from -200 to 200 mm.')).toBeVisible();
  await form.getByLabel('in mm, if it has a size').fill('');
  await form.getByLabel('Round that makes the change').selectOption({ label: 'Round 3' });
  await form.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The heel tires');
  await expect(page.getByText('Round 3 makes this change. Did it work?')).toBeVisible();
  await page.getByRole('button', { name: 'Erase this finding' }).click();
  await expect(page.getByRole('link', { name: 'The heel tires' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('row').filter({ hasText: 'The heel tires' })).toBeVisible();
});

test('a round begins as the last one, but with what is different', async ({ page }) => {
  const project = await join(page);
  await page.goto(`${project}/rounds`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Round 3 changes the upper material and midsole foam.',
  );
  await press(page, 'button', 'As Round 3, but …');
  const form = page.getByRole('region', { name: 'As Round 3, but …' });
  await expect(form.getByLabel('Name', { exact: true })).toHaveValue('Round 4');
  await expect(form.getByLabel('Kind of midsole foam')).toHaveValue('eva');
  await form.getByRole('button', { name: 'One more change' }).click();
  await form.getByLabel('What is different').fill('Collar padded by 2 mm more');
  await form.getByRole('button', { name: 'Save' }).click();
  const round = page.getByRole('region', { name: 'Round 4' });
  await expect(round.getByText('upper pattern: Collar padded by 2 mm more')).toBeVisible();
  await expect(
    round.getByText(/^6 dimensions in the blueprint · EVA foam · last L08/),
  ).toBeVisible();
  await expect(round.getByText('Mudguard film')).toHaveCount(0);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Round 4 has no pairs yet.');
  await round.getByRole('link', { name: 'Round 4' }).click();
  await expect(page.getByRole('row', { name: /width of the heel cup/i })).toBeVisible();
});

test('a shoe is archived, found under all shoes, and brought back; the message undoes it', async ({
  page,
}) => {
  const project = await join(page);
  await page.goto(`${project}/brief`);
  await expect(
    page.getByText(/testers who still have a pair of it can go on logging runs/),
  ).toBeVisible();
  await press(page, 'button', 'Archive this shoe');
  await expect(page.getByText(/^archived on /)).toBeVisible();
  await press(page, 'button', 'Undo');
  await expect(page.getByText(/^archived on /)).toHaveCount(0);

  await press(page, 'button', 'Archive this shoe');
  await expect(page.getByText(/^archived on /)).toBeVisible();
  await page.goto(`${hub.url}/desk`);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(page.getByRole('heading', { name: /Demo trainer/ })).toHaveCount(0);
  await page.getByText('Archived (1)').click();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await page.locator('.todo').waitFor();
  await page.goto(`${hub.url}/desk`);
  await page.getByText('Archived (1)').click();
  await press(page, 'button', /^Bring Demo trainer .* back$/);
  await expect(page.getByRole('heading', { name: /Demo trainer/ })).toBeVisible();
});

/** Too much or too little at the desk: in words, by sides, with what it costs and how sure, and as the ground of a verdict. */
import { expect, test } from '@playwright/test';
import { joinLead } from './every-place.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

test('comfort shows too little, right and too much, and How sure? what it costs and how close it came', async ({
  page,
}) => {
  const project = hub.url + (await joinLead(page, hub));
  await page.goto(`${project}/shoe/comfort`);
  const picture = page.getByRole('region', { name: 'Too much or too little?' });
  const heel = picture.locator('.sides:not(.sides-head)').first();
  for (const says of [
    'Heel cushioning, Round 2: too soft 8, just right 0, too firm 0',
    'Heel cushioning, Round 3: too soft 4, just right 4, too firm 0',
  ])
    await expect(heel.getByRole('img', { name: says })).toBeVisible();
  await expect(heel).toContainText('−10 points (−22 … +2)');
  await expect(heel).toContainText('closer');

  await page.getByText('How sure?', { exact: true }).click();
  const figures = page.getByRole('region', { name: 'Too much or too little: Round 3' });
  const row = figures.getByRole('row', { name: /^Heel cushioning/ });
  await expect(row).toContainText('too soft, clear');
  // The share of half of eight testers with Wilson's interval, and the cost of four against four.
  await expect(row).toContainText(/50\s%\s\(22\s% … 78\s%\)/);
  await expect(row).toContainText('too soft: −10 (−22 … +2), 4 against 4');
  const moves = page.getByRole('region', { name: 'Round 3 against Round 2: closer to just right' });
  await expect(moves.getByRole('row', { name: /^Heel cushioning/ })).toContainText('better');
});

test('the verdict, round against round, a tester and the felt curve read it, each apart from the scores', async ({
  page,
}) => {
  const project = hub.url + (await joinLead(page, hub));
  await page.goto(`${project}/verdict`);
  const beside = page.getByRole('region', { name: /^Beside the limits/ });
  await expect(beside.getByRole('listitem').first()).toContainText(
    'Heel cushioning is too soft for 4 of 8 testers.',
  );
  await expect(beside.getByRole('listitem').first()).toContainText(
    'Overall comfort −10 (−22 … +2) against those for whom it is right. Since last round: closer.',
  );

  await page.goto(`${project}/changes`);
  await expect(page.getByText('just right for 3 of 4, before 0 of 4')).toBeVisible();

  await page.goto(`${project}/testers`);
  await page.getByRole('link', { name: /T01/ }).first().click();
  const against = page.getByRole('region', { name: 'Against the others' });
  const line = against.locator('.against-two-sided', { hasText: 'Heel cushioning' });
  await expect(line.locator('.against-figure')).toHaveText(/just right|too soft|too firm/);
  await expect(line.locator('.against-other')).toHaveCount(7);
  // The same question on the line of before stands by itself.
  await expect(
    against.locator('.against:not(.against-two-sided)', { hasText: 'Heel cushioning' }),
  ).toHaveCount(1);

  await page.goto(`${project}/wear`);
  await page.getByText('How sure?', { exact: true }).first().click();
  await expect(
    page.getByText(/^Heel cushioning, from −100 \(too soft\) to 100 \(too firm\): [−+]?\d/),
  ).toBeVisible();
  await expect(page.getByText(/^Heel cushioning: [−+]?[\d.]+ of 100 per 100 km/)).toBeVisible();
});

test('a run says it in words', async ({ page }) => {
  const project = hub.url + (await joinLead(page, hub));
  await page.goto(`${project}/runs`);
  await page.locator('main a[href*="/runs/"]').first().click();
  const said = page.locator('.run-terms dt', { hasText: /^Too much or too little/ });
  await expect(said.locator('xpath=following-sibling::dd[1]')).toContainText(
    /Heel cushioning: (just right|a little too soft|too soft|far too soft)/,
  );
});

test('a finding on something too soft is proposed as better by the round that carries it', async ({
  page,
}) => {
  const project = hub.url + (await joinLead(page, hub));
  await page.goto(`${project}/findings`);
  await page.getByRole('link', { name: 'New finding' }).click();
  const form = page.getByRole('region', { name: 'New finding' });
  await form.getByLabel('What shows it', { exact: true }).selectOption({ label: 'from comfort' });
  await form.getByLabel('Round', { exact: true }).selectOption({ label: 'Round 2' });
  await form
    .getByLabel('Attribute', { exact: true })
    .selectOption({ label: 'Heel cushioning: too soft, clear' });
  await form.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Heel cushioning: too soft, clear',
  );
  await page.getByRole('button', { name: 'Edit this finding' }).click();
  const edit = page.getByRole('region', { name: 'Edit this finding' });
  await edit.getByLabel('Round that makes the change').selectOption({ label: 'Round 3' });
  await edit.getByRole('button', { name: 'Save' }).click();
  await expect(
    page.getByText('The log says: just right for 0 of 4 testers before, 3 of 4 now.'),
  ).toContainText('better');
  await page.getByRole('button', { name: 'Write down the outcome' }).click();
  const outcome = page.getByRole('region', { name: 'Write down the outcome' });
  await expect(outcome.getByLabel('What shows it, a line each')).toHaveValue(
    /Heel cushioning: proved to be closer to just right/,
  );
});

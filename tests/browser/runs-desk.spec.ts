/** Runs at the desk: found, opened, put right on a tester's behalf, set aside, and each of these taken back. */
import { expect, test, type Locator, type Page } from '@playwright/test';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { joinAsTester, openLead, syncLead, syncTester } from './two-people.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const projectOf = (lead: Page) => new URL(lead.url()).pathname;

/** The list of runs. */
const openRuns = async (lead: Page) => {
  await lead.locator('.frame-tabs').getByRole('link', { name: 'Runs', exact: true }).click();
  await lead.locator('.runs-table').waitFor();
};

const rows = (lead: Page) => lead.locator('.runs-table tbody tr[data-at]');

/** The latest run of a tester; answers its address. */
const openLatestOf = async (lead: Page, tester: string): Promise<string> => {
  await openRuns(lead);
  await lead.getByLabel('Tester', { exact: true }).selectOption({ label: tester });
  await expect(lead.getByText(/^\d+ of 518 runs$/)).toBeVisible();
  await rows(lead).first().getByRole('rowheader').getByRole('link').click();
  await lead.locator('.run-terms').waitFor();
  return lead.url();
};

const term = (lead: Page, name: string) =>
  lead.locator('.run-terms dt', { hasText: new RegExp(`^${name}$`) }).locator('+ dd');

test('a lead corrects a run, its tester reads that and why, and the earlier version comes back', async ({
  page,
  browser,
}) => {
  await joinAsTester(page, hub);
  const lead = await openLead(browser, hub);
  const run = await openLatestOf(lead, 'T01');
  const before = (await term(lead, 'Distance').textContent()) as string;
  await lead.getByRole('button', { name: 'Correct this run' }).click();
  const form = lead.getByRole('region', { name: 'Correct this run for T01' });
  await form.getByLabel('Distance, km').fill('far');
  await form.getByRole('button', { name: 'Save the correction' }).click();
  // Everything that is missing or wrong is said at once, at its field.
  await expect(form.getByText('Type a distance such as 10.5.')).toBeVisible();
  await expect(form.getByText('Say why: the tester reads it.')).toBeVisible();
  await expect(form.getByLabel('Distance, km')).toBeFocused();
  await form.getByLabel('Distance, km').fill('12.34');
  await form.getByLabel('Why is it corrected?').fill('The watch stopped early');
  await form.getByRole('button', { name: 'Save the correction' }).click();
  await expect(lead.getByText('Run corrected')).toBeVisible();
  await expect(term(lead, 'Distance')).toHaveText('12.3 km');
  const mark = /^Corrected by the lead on .*: The watch stopped early$/;
  await expect(lead.locator('.run-standing').getByText(mark)).toBeVisible();
  await expect(lead.locator('.run-history')).toContainText(`${before} → 12.3 km`);

  await syncLead(lead, hub);
  await syncTester(page, hub);
  await page.goto(`${hub.url}/runs`);
  const told = page.getByText(/^Corrected by your lead on .*: The watch stopped early$/);
  await expect(told).toBeVisible();
  const id = run.split('/').at(-1) as string;
  await page.goto(`${hub.url}/runs/${id}`);
  await expect(told).toBeVisible();

  await lead.goto(run);
  await lead.getByRole('button', { name: 'Undo the correction' }).click();
  await expect(lead.getByText('The earlier version is back')).toBeVisible();
  await expect(term(lead, 'Distance')).toHaveText(before);
  await expect(lead.getByText('Undo the correction')).toHaveCount(0);
  await syncLead(lead, hub);
  await syncTester(page, hub);
  await page.goto(`${hub.url}/runs`);
  await expect(page.getByText(before).first()).toBeVisible();
  await expect(told).toHaveCount(0);
  await lead.context().close();
});

test('the mark of a correction goes once the tester saves the run anew', async ({
  page,
  browser,
}) => {
  await joinAsTester(page, hub);
  const lead = await openLead(browser, hub);
  const run = await openLatestOf(lead, 'T01');
  await lead.getByRole('button', { name: 'Correct this run' }).click();
  await lead.getByLabel('Distance, km').fill('12.34');
  await lead.getByLabel('Why is it corrected?').fill('The watch stopped early');
  await lead.getByRole('button', { name: 'Save the correction' }).click();
  await expect(lead.getByText('Run corrected')).toBeVisible();
  await syncLead(lead, hub);
  await syncTester(page, hub);
  await page.goto(`${hub.url}/runs/${run.split('/').at(-1)}`);
  await page.getByLabel(/^Distance/).fill('11.5');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Corrected by your lead')).toHaveCount(0);
  await syncTester(page, hub);
  await syncLead(lead, hub);
  await lead.goto(run);
  await expect(term(lead, 'Distance')).toHaveText('11.5 km');
  await expect(lead.getByText('Undo the correction')).toHaveCount(0);
  await lead.context().close();
});

test('a run that is set aside counts nowhere, is marked, and counts again', async ({ browser }) => {
  const lead = await openLead(browser, hub);
  const run = await openLatestOf(lead, 'T01');
  // The run before it in the pair, so that this one comes after what is set aside.
  await lead.getByRole('link', { name: /^before: / }).click();
  await expect(lead).not.toHaveURL(run);
  const earlier = lead.url();
  const km = Number((await term(lead, 'Distance').textContent())?.replace(' km', ''));
  const pairKm = async () => {
    await lead.goto(run);
    return Number(
      /([\d.,]+) km on it before/.exec((await term(lead, 'Pair').textContent()) ?? '')?.[1],
    );
  };
  const all = await pairKm();

  await lead.goto(earlier);
  await lead.getByRole('button', { name: 'Set this run aside' }).click();
  await lead.getByRole('button', { name: 'Set this run aside' }).click();
  await expect(lead.getByText('Say why.')).toBeVisible();
  await lead.getByLabel('Why is it set aside?').fill('In other shoes');
  await lead.getByRole('button', { name: 'Set this run aside' }).click();
  await expect(lead.getByText(/^Set aside on .*; in no figure: In other shoes$/)).toBeVisible();
  await expect(lead.locator('.place-head .stamp')).toHaveText('set aside');
  expect(Math.abs(all - km - (await pairKm()))).toBeLessThan(1.1);
  await openRuns(lead);
  await expect(lead.getByText(/; 517 count: /)).toBeVisible();
  await lead.getByLabel('Show').selectOption({ label: 'odd, corrected or not counted' });
  await expect(rows(lead)).toHaveCount(1);
  await expect(rows(lead)).toContainText('set aside');

  await lead.goto(earlier);
  await lead.getByRole('button', { name: 'Take the decision back' }).click();
  await expect(lead.locator('.place-head .stamp')).toHaveCount(0);
  expect(await pairKm()).toBe(all);
  await lead.context().close();
});

test('the list is sorted and searched', async ({ browser }) => {
  const lead = await openLead(browser, hub);
  await openRuns(lead);
  await expect(lead.locator('.runs-table')).toHaveAttribute('aria-rowcount', '519');
  await lead.getByRole('button', { name: 'Comfort', exact: true }).click();
  const comfort = lead.locator('.runs-table th[aria-sort="descending"]');
  await expect(comfort).toContainText('Comfort');
  const scores = async () =>
    (await rows(lead).locator('td.cell-comfort').allTextContents()).map(Number);
  await expect.poll(async () => (await scores())[0]).toBeGreaterThan(80);
  expect(await scores()).toEqual((await scores()).toSorted((a, b) => b - a));
  await lead.getByRole('searchbox').fill('nobody wrote this');
  await expect(lead.getByText('No run is like that.')).toBeVisible();
  await lead.context().close();
});

/** Presses Tab until the element has the focus. */
const tabTo = async (page: Page, target: Locator) => {
  for (let press = 0; press < 80; press++) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('Tab does not come there');
};

test('by keys alone from the sheet to a run, and back', async ({ browser }) => {
  const lead = await openLead(browser, hub);
  const sheet = projectOf(lead);
  await tabTo(lead, lead.getByRole('link', { name: 'Runs', exact: true }));
  await lead.keyboard.press('Enter');
  await lead.locator('.runs-table').waitFor();
  await tabTo(lead, rows(lead).first().getByRole('rowheader').getByRole('link'));
  await lead.keyboard.press('Enter');
  await lead.locator('.run-terms').waitFor();
  await tabTo(lead, lead.getByRole('button', { name: 'Correct this run' }));
  await lead.keyboard.press('Enter');
  await tabTo(lead, lead.getByLabel('Distance, km'));
  await lead.goBack();
  await lead.locator('.runs-table').waitFor();
  await lead.goBack();
  await lead.locator('.todo').waitFor();
  expect(projectOf(lead)).toBe(sheet);
  await lead.context().close();
});

test('on a phone’s width nothing of the runs goes sideways', async ({ browser }) => {
  const lead = await openLead(browser, hub);
  await lead.setViewportSize({ width: 390, height: 844 });
  const sideways = () =>
    lead.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
  await openRuns(lead);
  expect(await sideways()).toBeLessThanOrEqual(0);
  await openLatestOf(lead, 'T11');
  expect(await sideways()).toBeLessThanOrEqual(0);
  await lead.getByRole('button', { name: 'Correct this run' }).click();
  await lead.getByLabel('Distance, km').waitFor();
  expect(await sideways()).toBeLessThanOrEqual(0);
  await lead.context().close();
});

/**
 * From an empty hub through all six steps to the first run, which a tester logs on a phone of their own; left in the
 * middle and found again; at a desk and on a phone, in both languages; and a shoe that begins as another.
 */
import { devices, expect, test, type Page } from '@playwright/test';
import { axeFaults } from './axe.ts';
import { chooseLanguage } from './device.ts';
import { joinLead } from './every-place.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.afterEach(() => hub.stop());

const PANEL = ['Ada 250/252', 'Bo 257', 'Cleo 264', 'Dan 270', 'Eve 277', 'Finn 284/285'];

const join = async (page: Page, code: string | null) => {
  await page.goto(`${hub.url}/join#${code}`);
  await page.getByRole('button', { name: 'Join' }).click();
};

const answer = (page: Page) => page.locator('.place-head h1');
const strip = (page: Page) => page.getByRole('region', { name: 'Six steps to the first run' });
const cards = (page: Page) => page.getByRole('list', { name: 'Six steps to the first run' });
/** The step that the cards or the line mark. */
const marked = (page: Page) => page.locator('[aria-current="step"]').first();
const save = (page: Page) => page.getByRole('button', { name: 'Save', exact: true }).click();

const fits = async (page: Page) => {
  const sideways = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(sideways, page.url()).toBeLessThanOrEqual(0);
  expect(await axeFaults(page)).toEqual([]);
};

const writeBrief = async (page: Page, name: string) => {
  await page.getByRole('link', { name: 'Write the brief' }).click();
  await page.getByLabel('Name of the project').fill(name);
  await page.getByLabel('Distance a pair must carry, km').fill('600');
  await save(page);
};

const addSixPairs = async (page: Page) => {
  await page.getByLabel('Sizes, EU').fill('40-45');
  // Enter draws the codes, and saves nothing yet.
  await page.getByLabel('Sizes, EU').press('Enter');
  await expect(page.getByText('6 pairs will be added.')).toBeVisible();
  await save(page);
};

const addSixTesters = async (page: Page) => {
  await page.getByLabel('Testers, a line each').fill(PANEL.join('\n'));
  // A code for each name as it is typed, and the size that the foot asks for.
  await expect(page.getByText('T06, Finn, foot 284 / 285 mm, EU 44.5')).toBeVisible();
  await save(page);
};

const makePlan = async (page: Page) => {
  await page.getByRole('button', { name: 'Draw the plan' }).click();
  await page.getByRole('button', { name: 'Save the plan' }).click();
  await expect(answer(page)).toHaveText('6 testers wear Round 1. Agree the plan.');
  // The form that made it is folded again.
  await expect(page.getByRole('button', { name: 'Draw the plan' })).toHaveCount(0);
};

for (const { at, viewport } of [
  { at: 'at a desk', viewport: { width: 1280, height: 800 } },
  { at: 'on a phone', viewport: { width: 390, height: 844 } },
])
  test(`six steps lead to the first run, each where the one before ended, ${at}`, async ({
    page: lead,
    browser,
  }) => {
    test.setTimeout(300_000);
    hub = await startHubProcess('--group', 'First test');
    await lead.setViewportSize(viewport);
    await join(lead, hub.codes.lead);
    await expect(answer(lead)).toHaveText(
      'Six steps to the first run. Stop anywhere; nothing is lost.',
    );
    await expect(cards(lead).getByRole('listitem')).toHaveCount(6);
    await expect(marked(lead)).toContainText('Brief');
    await fits(lead);

    await test.step('the brief leads to the round, and that to the pairs', async () => {
      await writeBrief(lead, 'First trainer');
      await expect(answer(lead)).toHaveText('No round yet. Add the first one.');
      await expect(marked(lead)).toHaveText(/Round/);
      await fits(lead);
      await save(lead);
      await expect(answer(lead)).toHaveText('No pair yet. Add the first ones.');
      await expect(marked(lead)).toHaveText(/Pairs/);
      await fits(lead);
      await addSixPairs(lead);
      await expect(answer(lead)).toHaveText('No tester yet. Add the first ones.');
    });

    await test.step('left in the middle, it is found again by the shoe’s sheet', async () => {
      await lead.goto(`${hub.url}/desk`);
      await lead.getByRole('link', { name: 'First trainer' }).click();
      await expect(answer(lead)).toHaveText('Round 1 has 6 pairs. Nobody has run yet.');
      await expect(marked(lead)).toContainText('Testers');
      await expect(cards(lead).getByRole('listitem').filter({ hasText: ', done' })).toHaveCount(3);
      await fits(lead);
      // Wherever one looks, the next step is one link away.
      await lead.getByRole('link', { name: 'Verdict', exact: true }).click();
      await expect(answer(lead)).toHaveText('Nobody has run yet, so nothing is decided.');
      await strip(lead).getByRole('link', { name: 'Add the testers' }).click();
      await addSixTesters(lead);
    });

    await test.step('the plan is drawn, agreed, and leads to the invites', async () => {
      await expect(answer(lead)).toHaveText('No plan yet for 6 pairs and 6 testers.');
      await fits(lead);
      await makePlan(lead);
      await fits(lead);
      await lead.getByRole('link', { name: 'Pairs', exact: true }).click();
      await expect(answer(lead)).toHaveText('All 6 pairs are in. Nobody has run yet.');
      await strip(lead).getByRole('link', { name: 'Agree the plan' }).click();
      await lead.getByRole('button', { name: 'Agree the plan' }).click();
      await expect(answer(lead)).toHaveText('6 testers have not joined yet.');
      await fits(lead);
    });

    await lead.getByRole('button', { name: 'Make 6 codes' }).click();
    const slip = lead.getByRole('listitem').filter({ hasText: 'T01 Ada' });
    const code = await slip.locator('.code').textContent();
    await expect(lead.getByRole('button', { name: 'Print the invites' })).toBeVisible();
    await lead.locator('.frame-tabs').getByRole('link', { name: 'Testers' }).click();
    await expect(answer(lead)).toHaveText('6 testers have a pair. Nobody has run yet.');

    const phone = await (
      await browser.newContext({ ...devices['Pixel 7'], locale: 'en-GB' })
    ).newPage();
    await test.step('an invited tester logs the first run', async () => {
      await join(phone, code);
      await phone.getByRole('link', { name: 'Log a run' }).click();
      await phone.getByLabel('Distance, km').fill('8.2');
      await phone.getByLabel('Time', { exact: true }).fill('41:00');
      await phone.getByText('Nothing bothered me').click();
      await phone.getByRole('button', { name: 'Save' }).click();
      await expect(phone.getByText('Saved on this phone')).toBeVisible();
      await phone.goto(`${hub.url}/unsent`);
      await phone.getByRole('button', { name: 'Send now' }).click();
      await expect(phone.getByText('Everything is with your group.')).toBeVisible();
    });

    await test.step('with it the guide is over', async () => {
      await lead.goto(`${hub.url}/desk/group`);
      await lead.getByRole('button', { name: 'Sync now' }).click();
      await expect(lead.getByText('Up to date.')).toBeVisible();
      await lead.goto(`${hub.url}/desk`);
      await lead.getByRole('link', { name: 'First trainer' }).click();
      await expect(lead.getByText(/ 6 pairs, 1 tester, 1 run, 8\.2 km so far\./)).toBeVisible();
      await expect(cards(lead)).toHaveCount(0);
      await lead.getByRole('link', { name: 'Testers', exact: true }).click();
      await expect(answer(lead)).toHaveText(
        '1 of 6 testers with a pair has run. Nobody has gone silent.',
      );
      await expect(strip(lead)).toHaveCount(0);
    });
  });

/** The first line of each place of a shoe that has a brief and nothing else, in both languages. */
const FIRST_LINES = [
  ['', 'No round yet. Add the first one.', '还没有轮次，请先添加第一轮。'],
  ['rounds', 'No round yet. Add the first one.', '还没有轮次，请先添加第一轮。'],
  [
    'pairs',
    'No round yet, so no pair. Add the first round.',
    '还没有轮次，也就没有样鞋。请先添加第一轮。',
  ],
  ['testers', 'No tester yet. Add the first ones.', '还没有试穿员，请先添加。'],
  ['plan', 'No pair to plan for yet. Add the pairs first.', '还没有样鞋可安排，请先添加样鞋。'],
  ['plan/slips', 'No plan yet, so no slip to print.', '还没有方案，也就没有标签可打印。'],
  ['plan/invites', 'No tester yet, so nobody to invite.', '还没有试穿员可邀请。'],
  ['wear/checks/new', 'No pair yet, so nothing to measure.', '还没有样鞋可测量。'],
  ['runs', 'Nobody has logged a run yet.', '还没有人记录跑步。'],
  ['words', 'Nobody has written anything yet.', '还没有人写过什么。'],
  [
    'changes',
    'Comparing takes two rounds. There are not two yet.',
    '要有两轮才能比较，目前还不到两轮。',
  ],
] as const;

test('every empty place says so and leads to the next step, in both languages', async ({
  page,
}) => {
  test.setTimeout(180_000);
  hub = await startHubProcess();
  await join(page, hub.codes.lead);
  await writeBrief(page, 'Empty trainer');
  await expect(answer(page)).toHaveText('No round yet. Add the first one.');
  const project = page.url().replace(/\/rounds.*$/, '');
  for (const [place, english] of FIRST_LINES) {
    await page.goto(`${project}/${place}`);
    await expect(answer(page)).toHaveText(english);
    const next = page.getByRole('link', { name: 'Add the first round' });
    await expect(next).toHaveAttribute('href', /\/rounds\/new$/);
  }
  await page.goto(`${hub.url}/settings`);
  await chooseLanguage(page, '简体中文');
  for (const [place, , chinese] of FIRST_LINES) {
    await page.goto(`${project}/${place}`);
    await expect(answer(page)).toHaveText(chinese);
    await expect(page.getByRole('link', { name: '添加第一轮' })).toBeVisible();
  }
  await page.goto(`${project}/brief`);
  await page.getByRole('button', { name: '归档' }).click();
  await expect(page.getByRole('button', { name: '恢复' })).toBeVisible();
  await page.goto(`${hub.url}/desk`);
  await expect(answer(page)).toHaveText('六步走到第一次跑步，随时可停，已填的都在。');
  await expect(page.getByRole('link', { name: '写任务书' })).toBeVisible();
});

test('steps may be done in any order, and an old spreadsheet comes in after the brief', async ({
  page,
}) => {
  hub = await startHubProcess();
  await join(page, hub.codes.lead);
  await page.getByRole('link', { name: 'an old spreadsheet' }).click();
  await page.getByLabel('Name of the project').fill('Old trainer');
  await page.getByLabel('Distance a pair must carry, km').fill('500');
  await save(page);
  await expect(answer(page)).toHaveText('Bring in a table from a spreadsheet.');
  await page.getByLabel('Paste the table here').fill('code\tname\nT01\tAda\nT02\tBo');
  await page.getByRole('button', { name: 'Bring in 2 testers' }).click();
  await expect(page.getByText('2 testers brought in.')).toBeVisible();
  // Testers are there before the round: the round is still the first thing that is missing.
  await strip(page).getByRole('link', { name: 'Add the first round' }).click();
  await save(page);
  await expect(answer(page)).toHaveText('No pair yet. Add the first ones.');
  await page.getByLabel('Sizes, EU').fill('41 forty');
  await page.getByRole('button', { name: 'Draw codes' }).click();
  await expect(page.getByLabel('Sizes, EU')).toHaveAccessibleDescription(/EU sizes go from 17/);
  await page.getByLabel('Sizes, EU').fill('41 42');
  await page.getByRole('button', { name: 'Draw codes' }).click();
  await save(page);
  await expect(answer(page)).toHaveText('No plan yet for 2 pairs and 2 testers.');
});

test('a new shoe begins as another: what is taken over is said before it is saved', async ({
  page,
}) => {
  test.setTimeout(120_000);
  hub = await startHubProcess('--demo', DEMO);
  const old = hub.url + (await joinLead(page, hub));
  await page.goto(`${old}/rounds`);
  const built = /\d+ dimensions in the blueprint .* last \S+/;
  const latest = await page.getByRole('region', { name: 'Round 3' }).getByText(built).textContent();
  await page.goto(`${old}/brief`);
  await expect(answer(page)).toHaveText(/^Each pair must carry /);
  const limits = await page.locator('.brief-words').getByRole('listitem').allTextContents();
  expect(limits.length).toBeGreaterThan(0);
  await page.getByRole('link', { name: 'New shoe as Demo trainer K1 (invented), but …' }).click();
  await expect(answer(page)).toHaveText(
    'A new shoe as Demo trainer K1 (invented). Give it a name.',
  );
  const said = page.locator('.brief-words');
  await expect(said).toContainText(`the brief with ${limits.length} limits`);
  await expect(said).toContainText(/of Round 3, as the first round: .*\d+ dimensions, last /);
  await expect(said).toContainText('pairs, hand-outs, plans, runs, checks, findings and reports');

  await save(page);
  const name = page.getByLabel('Name of the project');
  await expect(name).toHaveAttribute('aria-invalid', 'true');
  await name.fill('Trainer K2');
  await page.getByLabel('Distance a pair must carry, km').fill('700');
  await save(page);
  // Brief and round are done, so the pairs come next.
  await expect(answer(page)).toHaveText('No pair yet. Add the first ones.');
  const project = page.url().replace(/\/pairs.*$/, '');
  expect(project).not.toBe(old);
  await page.goto(`${project}/brief`);
  await expect(answer(page)).toHaveText(
    `Each pair must carry 700 km and keep ${limits.length} limits.`,
  );
  expect(await page.locator('.brief-words').getByRole('listitem').allTextContents()).toEqual(
    limits,
  );
  await page.goto(`${project}/rounds`);
  const first = page.getByRole('region', { name: 'Round 1' });
  await expect(first.getByText(built)).toHaveText(latest as string);
  await expect(first.getByText('Nothing is noted as changed.')).toBeVisible();
  await expect(first.getByText('No pair yet')).toBeVisible();
  await page.goto(`${project}/runs`);
  await expect(answer(page)).toHaveText('Nobody has logged a run yet.');
  // The old shoe is as it was.
  await page.goto(`${old}/brief`);
  await expect(answer(page)).toHaveText(/^Each pair must carry (?!700)\d+ km/);
});

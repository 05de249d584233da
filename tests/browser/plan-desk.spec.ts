/**
 * The hand-out plan: one round handed out on the plan's own days, a tester who stops, slips and invites on paper, and
 * a join that says whose phone joins what as what.
 */
import { expect, test, type Page } from '@playwright/test';
import { encode } from 'uqr';
import { chooseLanguage, recordsHeld } from './device.ts';
import { joinLead, openPlace } from './every-place.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const DAY_MS = 86_400_000;
/** A day from today on, as the date control writes it. */
const dayIn = (days: number): string =>
  new Date(Date.now() + days * DAY_MS).toISOString().slice(0, 10);

interface HandOut {
  readonly pair: string;
  readonly tester: string;
  readonly from: string;
  readonly until?: string;
}

/** Draws and saves a plan of the latest round alone, from a day on. */
const planOneRound = async (page: Page, project: string, from: string) => {
  await openPlace(page, `${hub.url}${project}/plan`);
  await page.getByRole('button', { name: 'Draw a new plan' }).click();
  const form = page.getByRole('region', { name: 'Draw a new plan' });
  await form.getByText('Round 2', { exact: true }).click();
  await form.getByRole('textbox', { name: 'First day' }).fill(from);
  await form.getByRole('button', { name: 'Draw the plan' }).click();
  await form.getByRole('button', { name: 'Save the plan' }).click();
  await expect(form).toHaveCount(0);
};

test('a plan of one round is agreed ahead, and whoever stops changes only what is to come', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  const project = await joinLead(page, hub);
  await planOneRound(page, project, dayIn(5));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    /^\d+ testers wear Round 3\. Agree the plan\.$/,
  );
  // One round is handed out, not compared.
  await page.getByText('How sure?').click();
  await expect(page.getByText('How even it is')).toHaveCount(0);
  await page.getByText('As a table').click();
  await expect(page.getByRole('rowheader', { name: 'T01' })).toBeVisible();
  await expect(
    page
      .getByRole('region', { name: 'Hand-out plan' })
      .getByText(/mm of room: good/)
      .first(),
  ).toBeVisible();

  const before = await recordsHeld<HandOut>(page, 'hand-out');
  await page.getByRole('button', { name: 'Agree the plan' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^\d+ pairs go out on /);
  const isAhead = ({ from }: HandOut) => Date.parse(from) > Date.now();
  const agreed = (await recordsHeld<HandOut>(page, 'hand-out')).filter(isAhead);
  expect(agreed.length).toBeGreaterThan(2);
  for (const { from, until } of agreed) {
    expect(from.slice(0, 13)).toBe(`${dayIn(5)}T03`);
    expect(until).toBeUndefined();
  }
  // Nobody has a pair before its day: what was out is out until then.
  const past = (all: readonly HandOut[]) =>
    all
      .filter((one) => !isAhead(one))
      .map(({ pair, tester, from }) => `${pair} ${tester} ${from}`)
      .sort();
  expect(past(await recordsHeld<HandOut>(page, 'hand-out'))).toEqual(past(before));

  await page.getByRole('button', { name: 'A tester stops' }).click();
  const stop = page.getByRole('region', { name: 'A tester stops' });
  const who = stop.getByLabel('Who stops?');
  const first = await who.locator('option').nth(1).textContent();
  await who.selectOption({ index: 1 });
  await stop.getByLabel('Last day').fill(dayIn(10));
  await stop.getByLabel('Who takes the pairs over?').selectOption('Nobody: leave them in store');
  await expect(stop.getByText(`${first} stops after`)).toBeVisible();
  await stop.getByRole('button', { name: 'Leave in store' }).click();
  await expect(stop).toHaveCount(0);
  const after = await recordsHeld<HandOut>(page, 'hand-out');
  expect(past(after)).toEqual(past(before));
  const ended = after.filter((one) => isAhead(one) && one.until !== undefined);
  expect(ended).toHaveLength(1);
  expect(ended[0]?.until?.slice(0, 13)).toBe(`${dayIn(11)}T03`);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect
    .poll(
      async () =>
        (await recordsHeld<HandOut>(page, 'hand-out')).filter(
          (one) => isAhead(one) && one.until !== undefined,
        ).length,
    )
    .toBe(0);
});

/** On upright paper eight fit a page; no page is empty. */
const printsWhole = async (page: Page, format: 'A4' | 'Letter') => {
  const count = await page.locator('.slip').count();
  // What was emulated would be printed too.
  await page.emulateMedia({ media: null });
  const pdf = (await page.pdf({ format, preferCSSPageSize: true })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(Math.ceil(count / 8));
  const [, width, height] = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/.exec(pdf) ?? [];
  expect(Number(height)).toBeGreaterThan(Number(width));
};

/** Nothing that a card says is cut off on the screen. */
const cutSlips = (page: Page) =>
  page
    .locator('.slip')
    .evaluateAll((slips) =>
      slips
        .filter((slip) => slip.scrollHeight > slip.clientHeight + 1)
        .map((slip) => slip.textContent),
    );

test('slips and invites are printed with squares that hold the right address', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  const project = await joinLead(page, hub);
  await planOneRound(page, project, dayIn(5));
  await page.getByRole('link', { name: /^Print \d+ slips?$/ }).click();
  const slips = page.locator('.slip');
  await expect(slips.first()).toBeVisible();
  // What goes to a tester does not tell the round.
  await expect(page.locator('.slips')).not.toContainText('Round');
  for (const slip of await slips.all()) {
    const code = ((await slip.locator('.slip-code').textContent()) ?? '').replace('Pair ', '');
    const address = `${hub.url}/pair/${code}`;
    await expect(slip.getByRole('img', { name: address })).toBeVisible();
    const { data } = encode(address, { border: 4 });
    const path = data.flatMap((row, y) => row.map((dark, x) => (dark ? `M${x},${y}h1v1h-1z` : '')));
    expect(await slip.locator('path').getAttribute('d')).toBe(path.join(''));
  }
  // Two beside each other within the margins of A4 and of Letter.
  await page.emulateMedia({ media: 'print' });
  const boxes = await Promise.all((await slips.all()).slice(0, 3).map((one) => one.boundingBox()));
  expect(boxes[0]?.y).toBe(boxes[1]?.y);
  expect(boxes[2]?.y).toBeGreaterThan(boxes[0]?.y ?? Infinity);
  const mm = 96 / 25.4;
  expect((boxes[1]?.x ?? 0) + (boxes[1]?.width ?? 0) - (boxes[0]?.x ?? 0)).toBeLessThan(190 * mm);
  for (const format of ['A4', 'Letter'] as const) await printsWhole(page, format);
  await page.emulateMedia({ media: 'screen' });
  expect(await cutSlips(page)).toEqual([]);

  await openPlace(page, `${hub.url}${project}/plan/invites`);
  await page.getByRole('button', { name: /^Make \d+ codes$/ }).click();
  const invites = page.locator('.slip');
  await expect(page.getByRole('button', { name: 'Print the invites' })).toBeVisible();
  const codes = await invites.locator('.code').allTextContents();
  expect(new Set(codes).size).toBe(await invites.count());
  await expect(invites.first()).toContainText(/The phone that scans this joins .+ as tester T01\./);
  await expect(
    invites.first().getByRole('img', { name: `${hub.url}/join#${codes[0]}` }),
  ).toBeVisible();
  await expect(invites.first()).toContainText('Good once, until');
  await printsWhole(page, 'A4');
  expect(await cutSlips(page)).toEqual([]);
  await page.emulateMedia({ media: 'screen' });

  // Left and opened again, the codes still stand there; a new one takes one press.
  await openPlace(page, `${hub.url}${project}/testers`);
  await openPlace(page, `${hub.url}${project}/plan/invites`);
  await expect(invites.first()).toBeVisible();
  expect(await invites.locator('.code').allTextContents()).toEqual(codes);
  await page.getByRole('button', { name: 'New code T02' }).click();
  await expect(invites.nth(1).locator('.code')).not.toHaveText(codes[1] ?? '');
  await expect(invites.first().locator('.code')).toHaveText(codes[0] ?? '');
});

test('who has joined is said to have joined, before any run came', async ({ page, browser }) => {
  const project = await joinLead(page, hub);
  await openPlace(page, `${hub.url}${project}/plan/invites`);
  const who = page.getByRole('region', { name: 'Who is in' });
  const of = (code: string) => who.getByRole('listitem').filter({ hasText: code });
  await expect(of('T01')).toContainText('by file or table, no phone has joined');
  await page.getByRole('button', { name: 'New code T01' }).click();
  await expect(of('T01')).toContainText('invited, the code is good until');
  const code = await page.locator('.slip .code').textContent();
  const phone = await (await browser.newContext()).newPage();
  await phone.goto(`${hub.url}/join#${code}`);
  await phone.getByRole('button', { name: 'Join' }).click();
  await expect(phone.getByRole('link', { name: 'Log a run' }).first()).toBeVisible();
  // The page is not loaded anew: it asks the hub by itself.
  await expect(of('T01')).toContainText('has joined', { timeout: 40_000 });
  await expect(page.locator('.place-sub')).toContainText('1 of 12 has joined');
});

test('the sheet of a hub with its own certificate says what a phone shows and what to press', async ({
  page,
}) => {
  const project = await joinLead(page, hub);
  const address = 'http://192.168.1.5:8788';
  await openPlace(page, `${hub.url}${project}/plan/invites`);
  // Behind a certificate that phones trust nothing is said.
  await page.getByRole('button', { name: 'New code T01' }).click();
  await expect(page.locator('.slip')).toHaveCount(1);
  await expect(page.locator('.trust-first')).toHaveCount(0);
  await page.route('**/v1/hello', async (route) => {
    const answer = await route.fetch();
    await route.fulfill({ json: { ...((await answer.json()) as object), trust: address } });
  });
  await openPlace(page, `${hub.url}${project}/plan/invites`);
  const first = page.getByRole('region', { name: 'First, once per phone: let it trust this hub' });
  await expect(first).toContainText('“Your connection is not private” (Android)');
  await expect(first.getByRole('img', { name: address })).toBeVisible();
  await expect(page.locator('.slip').first()).toContainText(`First, once: open ${address}`);
  await printsWhole(page, 'A4');
});

test('a join says whose phone joins what as what, and a slip opens the log of its pair', async ({
  page,
  browser,
}) => {
  const project = await joinLead(page, hub);
  const own = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const phone = await own.newPage();
  const opens = async (code: string, says: RegExp, sees: RegExp) => {
    // From the second on in the same tab, where only what is behind the # is new.
    await phone.goto(`${hub.url}/join#${code}`);
    await expect(phone.getByText(says)).toBeVisible();
    await expect(phone.getByText(sees)).toBeVisible();
  };
  await openPlace(page, `${hub.url}/desk/group`);
  for (const [button, card, says, sees] of [
    [
      'Invite another lead',
      /joins .+ as a lead/,
      /^This device joins .+ as a lead\.$/,
      /see and change everything/,
    ],
    [
      'Invite a specialist',
      /joins .+ as a specialist/,
      /as a specialist\.$/,
      /read the findings and reports/,
    ],
  ] as const) {
    await page.getByRole('button', { name: button }).click();
    await expect(page.getByText(card)).toBeVisible();
    await opens((await page.locator('.code').textContent()) ?? '', says, sees);
  }
  await openPlace(page, `${hub.url}${project}/plan/invites`);
  await page.getByRole('button', { name: /^Make \d+ codes$/ }).click();
  await expect(page.getByRole('button', { name: 'Print the invites' })).toBeVisible();
  const [code] = await page.locator('.slip .code').allTextContents();
  await opens(code ?? '', /^This phone joins .+ as tester T01\.$/, /other testers do not/);
  await phone.getByRole('button', { name: 'Join' }).click();
  await expect(phone.getByRole('heading', { name: 'Pairs I hold' })).toBeVisible();
  const href = await phone.locator('a[href^="/log/"]').first().getAttribute('href');
  const label = (await phone.locator('main').innerText()).match(/\b\d{3}\b/)?.[0];
  await phone.goto(`${hub.url}/pair/${label}`);
  await expect(phone).toHaveURL(`${hub.url}${href}`);
  await phone.goto(`${hub.url}/pair/000`);
  await expect(phone.getByRole('heading', { name: 'Pair 000 is not with you now' })).toBeVisible();
  await own.close();
});

test('at 390 px the plan is a list by day, in either language', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const project = await joinLead(page, hub);
  for (const [language, when] of [
    ['English', 'What happens when'],
    ['简体中文', '何时做什么'],
  ] as const) {
    await page.goto(`${hub.url}/settings`);
    await chooseLanguage(page, language);
    await openPlace(page, `${hub.url}${project}/plan`);
    const list = page.getByRole('region', { name: when });
    await expect(list.locator('.plan-day-pairs li').first()).toBeVisible();
    await expect(page.locator('.plan-picture')).toBeHidden();
  }
});

/** The place Shoe over the demo: from the sheet to a zone and to the run in two presses, by keyboard alone, and on a phone. */
import { expect, test, type Page } from '@playwright/test';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const joinLead = async (page: Page): Promise<string> => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await page.locator('.todo').waitFor();
  return new URL(page.url()).pathname;
};

/** How far below the top of the page something ends. */
const endOf = async (page: Page, selector: string): Promise<number> => {
  const box = await page.locator(selector).first().boundingBox();
  if (!box) throw new Error(`nothing at ${selector}`);
  return box.y + box.height;
};

for (const [width, height] of [
  [1280, 800],
  [390, 844],
] as const)
  test(`from the sheet to the zone to the run in two presses, and back: ${width} px`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    const project = await joinLead(page);
    const callout = page.locator('.callouts').getByRole('link', { name: /^Ankle bones, rubbing/ });
    await callout.click();
    await expect(page).toHaveURL(new RegExp(`${project}/shoe/zones/left/U8`));
    await expect(page.locator('.place-head h1')).toHaveText(/7 of 8 testers in Round 3/);
    const report = page.locator('.zone-reports tbody tr').first();
    const said = await report.getByRole('link').first().textContent();
    await report.getByRole('link').first().click();
    await expect(page).toHaveURL(new RegExp(`${project}/runs/[0-9a-f-]{36}$`));
    await page.goBack();
    await expect(page.locator('.zone-reports tbody a').first()).toHaveText(said as string);
    await page.goBack();
    await expect(callout).toBeVisible();
  });

test('a press on a drawn zone, and on a dot, leads on without loading the app anew', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  const project = await joinLead(page);
  await page.locator('.frame-tabs').getByRole('link', { name: 'Shoe' }).click();
  await expect(page.locator('.place-head h1')).toHaveText(
    'Watch rubbing at the ankle bones: 5, 6, now 7 of 8 testers.',
  );
  await page.evaluate(() => document.body.setAttribute('data-same', ''));
  const round = page.getByRole('region', { name: 'Round 2' });
  const zone = round.getByRole('link', { name: 'right upper, lateral toe box: 6 of 8 testers' });
  await zone.click();
  await expect(page).toHaveURL(new RegExp(`${project}/shoe/zones/right/U3$`));
  await expect(page.locator('.place-head h1')).toHaveText(
    'Pressure at the lateral toe box: 6 of 8 in Round 2, now nobody.',
  );
  await page.locator('.strip-felt').nth(4).click();
  await expect(page).toHaveURL(new RegExp(`${project}/runs/[0-9a-f-]{36}$`));
  expect(await page.evaluate(() => document.body.hasAttribute('data-same'))).toBe(true);
});

test('the list of complaints is walked by keyboard alone, and the zone says who and why', async ({
  page,
}) => {
  const project = await joinLead(page);
  await page.goto(`${hub.url}${project}/shoe`);
  const list = page.getByRole('region', { name: 'Complaints, the most pressing first' });
  const titles = list.locator('.felt-what a');
  await expect(titles).toHaveText([
    'Ankle bones, rubbing',
    'Lateral heel, bottoming out',
    'Heel cup, heel slip',
    'Lateral toe box, pressure',
    'Central ball, hot spot',
    'Vamp flex line, overheating',
  ]);
  await titles.first().focus();
  // Each line: the complaint, then the run since when.
  for (let press = 0; press < 8; press++) await page.keyboard.press('Tab');
  await expect(titles.nth(4)).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.locator('.place-head h1')).toHaveText(/: 28 of 34 reports come from T11\.$/);
  await expect(page.getByText('Pair 362 makes 28 of 31 reports in Round 2.')).toBeVisible();
  await expect(page.getByText('Starts about 5 km into a run.')).toBeVisible();

  const more = page.getByRole('button', { name: 'All 34 reports' });
  await more.focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.zone-reports tbody tr')).toHaveCount(34);

  await page.locator('.zone-main > .how-sure > summary').focus();
  await page.keyboard.press('Enter');
  await expect(page.getByText(/e-value/).first()).toBeVisible();
});

test('a complaint becomes a finding on the page of its zone', async ({ page }) => {
  const project = await joinLead(page);
  await page.goto(`${hub.url}${project}/shoe/zones/left/U8?kind=rubbing`);
  await page.getByRole('button', { name: 'Make it a finding' }).click();
  await page.getByLabel('Wanted change').fill('Lower the collar on the inside.');
  await page.getByRole('button', { name: 'Save' }).click();
  const findings = page.locator('.zone-aside').getByRole('link', { name: /ankle/i });
  await expect(findings).toHaveAttribute('href', new RegExp(`${project}/changes/findings/`));
});

test('comfort shows every tester, arrival names the pair that is out', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  const project = await joinLead(page);
  await page.goto(`${hub.url}${project}/shoe`);
  const parts = page.getByRole('navigation', { name: 'Of the shoe' });
  await parts.getByRole('link', { name: 'Comfort' }).click();
  await expect(page.locator('.place-head h1')).toHaveText(
    'Heel cushioning is too soft for 4 of 8 testers.',
  );
  // Off first, with the testers to both sides, what it costs and whether it came closer.
  const heel = page.locator('.sides:not(.sides-head)').first();
  await expect(heel).toContainText('Heel cushioning');
  await expect(heel).toContainText('clear');
  await expect(
    heel.getByRole('img', {
      name: 'Heel cushioning, Round 3: too soft 4, just right 4, too firm 0',
    }),
  ).toBeVisible();
  await expect(heel).toContainText('points');
  // What was answered from bad to good before stands by itself.
  await expect(page.getByText(/answered on the earlier line/)).toBeVisible();
  const overall = page.getByRole('img', { name: 'Overall comfort, Round 3: 74 of 100, 8 testers' });
  await expect(overall.locator('.interval-single')).toHaveCount(8);
  await parts.getByRole('link', { name: 'Arrival' }).click();
  await expect(page.locator('.place-head h1')).toHaveText(
    'Pair 229 is out of tolerance: width of the heel cup.',
  );
  await page.locator('.arrival-named').getByRole('link', { name: '229' }).click();
  await expect(page).toHaveURL(new RegExp(`${project}/pairs/[0-9a-f-]{36}$`));
});

test('the answer and its picture stand on the first screen, and a zone prints on one page', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  const project = await joinLead(page);
  await page.goto(`${hub.url}${project}/shoe`);
  await page.locator('.felt-list').waitFor();
  expect(await endOf(page, '.maps-row')).toBeLessThan(500);
  expect(await endOf(page, '.felt-list li:nth-child(5)')).toBeLessThan(800);
  await page.goto(`${hub.url}${project}/shoe/zones/right/U3`);
  await page.locator('.zone-reports').waitFor();
  expect(await endOf(page, '.strips')).toBeLessThan(600);
  // A4 across with margins of 10 mm.
  await page.setViewportSize({ width: 1047, height: 718 });
  await page.emulateMedia({ media: 'print' });
  const printed = await page.evaluate(() => document.documentElement.scrollHeight);
  expect(printed).toBeLessThanOrEqual(718);
});

test('on a phone the test day by day opens on the latest days, and the whole test on today', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 760 });
  await joinLead(page);
  const calendar = page.getByRole('region', { name: 'The test, day by day' });
  const today = async () => {
    const line = await calendar.locator('.day-now').boundingBox();
    const picture = await calendar.locator('.picture').boundingBox();
    return line && picture && line.x >= picture.x && line.x <= picture.x + picture.width;
  };
  await expect(calendar.getByLabel('Span')).toHaveValue('weeks');
  await expect.poll(today).toBe(true);
  await calendar.getByLabel('Span').selectOption('whole');
  await expect.poll(today).toBe(true);
});

/** What is typed into the form of a run: times in any form, the same run twice, a clock that is off, long notes. */
import { expect, test, type Page } from '@playwright/test';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const join = async (page: Page) => {
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: 'Log a run' }).waitFor();
};

const openLog = async (page: Page, km: string, time: string) => {
  await page.getByRole('link', { name: /^(Log a run|Go on with the run)/ }).click();
  await page.getByLabel('Distance, km').fill(km);
  await page.getByLabel('Time', { exact: true }).fill(time);
};

const save = (page: Page) => page.getByRole('button', { name: 'Save' }).click();
const saved = (page: Page) => expect(page.getByText('Saved on this phone')).toBeVisible();

test('what was understood of a time is shown while it is typed, and nothing moves', async ({
  page,
}) => {
  await join(page);
  await openLog(page, '15', '');
  const below = page.getByLabel('Day of the run');
  const before = await below.boundingBox();
  const said = page.getByRole('status').filter({ hasText: 'min' });
  const time = page.getByLabel('Time', { exact: true });
  for (const [typed, understood] of [
    ['7530', '75 min 30 s, 5:02 per km'],
    ['1.15.30', '1 h 15 min 30 s, 5:02 per km'],
    ['1h15', '1 h 15 min 00 s, 5:00 per km'],
    ['７５：３０', '75 min 30 s, 5:02 per km'],
    ['75分30秒', '75 min 30 s, 5:02 per km'],
  ] as const) {
    await time.fill(typed);
    await expect(said).toHaveText(understood);
    expect(await below.boundingBox()).toEqual(before);
  }
  await time.fill('75.3');
  await expect(said).toBeHidden();
  expect(await below.boundingBox()).toEqual(before);
  await save(page);
  await expect(page.getByText('That is no time.')).toBeVisible();
  await time.fill('7530');
  await page.getByText('Nothing bothered me').click();
  await save(page);
  await saved(page);
  await page.getByRole('link', { name: 'My runs' }).click();
  await expect(page.getByText('15.0 km').first()).toBeVisible();
  await expect(page.getByText('5:02/km').first()).toBeVisible();
});

test('a run that is logged again is asked about, and can be dropped', async ({ page }) => {
  await join(page);
  await openLog(page, '7.7', '40:00');
  await save(page);
  await saved(page);
  await openLog(page, '7.7', '40:00');
  await save(page);
  const question = page.getByText(
    /^You already logged 7\.7 km in \S+, started .+ Is this another run\?$/,
  );
  await expect(question).toBeVisible();
  await page.getByRole('button', { name: 'Same run: drop this one' }).click();
  await expect(page.getByRole('link', { name: 'Log a run' })).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByLabel('Distance, km')).toHaveValue('7.7');
  await page.getByLabel('Distance, km').fill('9');
  await save(page);
  await saved(page);
  await openLog(page, '9', '40:00');
  await save(page);
  await expect(page.getByText(/^You already logged 9\.0 km/)).toBeVisible();
  await page.getByRole('button', { name: 'Yes, save it' }).click();
  await saved(page);
});

test('a clock two days fast is asked about once the hub has told, and the date put right', async ({
  page,
}) => {
  const DAY_MS = 86_400_000;
  const trueNow = Date.now();
  await page.clock.install({ time: trueNow + 2 * DAY_MS });
  await page.clock.resume();
  await join(page);
  await page.goto(`${hub.url}/unsent`);
  await page.getByRole('button', { name: 'Send now' }).click();
  await expect(page.getByText('Up to date.')).toBeVisible();
  await page.getByRole('link', { name: 'Back' }).click();
  await openLog(page, '8', '40:00');
  await save(page);
  await expect(page.getByText(/^This phone says it began .+ Is the phone right\?$/)).toBeVisible();
  await page.getByRole('button', { name: 'Change it' }).click();
  const started = page.getByLabel('Started');
  const typed = new Date(await started.inputValue()).getTime();
  expect(Math.abs(typed - (trueNow - 40 * 60_000))).toBeLessThan(10 * 60_000);
  await save(page);
  await saved(page);
});

test('a note that reaches its limit says so, and so does one that was cut', async ({ page }) => {
  await join(page);
  await openLog(page, '6', '30:00');
  await page.getByText('Weather, sock, words, photo').click();
  const note = page.getByLabel('In your words');
  await note.fill('a'.repeat(3899));
  await expect(page.getByText('characters left')).toBeHidden();
  await note.fill('a'.repeat(3990));
  await expect(page.getByText('10 characters left')).toBeVisible();
  await note.focus();
  await note.press('End');
  await page.evaluate(() => {
    const area = document.activeElement as HTMLTextAreaElement;
    const data = new DataTransfer();
    data.setData('text', 'b'.repeat(25));
    area.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true }));
    area.setRangeText('b'.repeat(10), area.value.length, area.value.length, 'end');
    area.dispatchEvent(new InputEvent('input', { bubbles: true }));
  });
  await expect(
    page.getByText(
      'The limit of 4,000 characters is reached: the last 15 of what you pasted did not fit.',
    ),
  ).toBeVisible();
  await note.press('Backspace');
  await expect(page.getByText('1 character left')).toBeVisible();
  await note.pressSequentially('cc');
  await expect(page.getByText('The limit of 4,000 characters is reached.')).toBeVisible();
  expect(await note.inputValue()).toHaveLength(4000);
});

test('sizes stand in the chosen system, and US sizes say whose they are', async ({ page }) => {
  await join(page);
  const size = page.getByText(/^size /).first();
  await expect(size).toHaveText(/^size EU \d/);
  for (const [choice, text] of [
    ['US men’s (M)', /^size US M \d/],
    ['US women’s (W)', /^size US W \d/],
  ] as const) {
    await page.getByRole('link', { name: 'Settings' }).click();
    await page.getByText(choice, { exact: true }).click();
    await page.getByRole('link', { name: 'Back' }).click();
    await expect(size).toHaveText(text);
  }
});

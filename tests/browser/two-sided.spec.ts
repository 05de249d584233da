/**
 * A comfort line with the good point in the middle on the phone: by touch and by keys, cleared, kept, saved and read
 * again in words; what was answered from bad to good before stays readable, on its own line.
 */
import { expect, test, type Locator, type Page } from '@playwright/test';
import { Finger, type Point } from './finger.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { stillness } from './stillness.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

interface HeldRun {
  readonly id: string;
  readonly distanceM: number;
  readonly comfort?: Readonly<Record<string, number>>;
  readonly comfort2?: Readonly<Record<string, number>>;
}

/** The runs that this device holds, and its drafts as one text. */
const held = (
  page: Page,
): Promise<{ readonly runs: readonly HeldRun[]; readonly drafts: string }> =>
  page.evaluate(
    () =>
      new Promise((done) => {
        const opening = indexedDB.open('pairlog');
        opening.onsuccess = () => {
          const tx = opening.result.transaction(['heads', 'drafts']);
          const [heads, drafts] = [
            tx.objectStore('heads').getAll(),
            tx.objectStore('drafts').getAll(),
          ];
          tx.oncomplete = () => {
            opening.result.close();
            const all = heads.result as { id: string; kind: string; body: object | null }[];
            done({
              runs: all
                .filter(({ kind, body }) => kind === 'run' && body !== null)
                .map(({ id, body }) => ({ ...body, id }) as never),
              drafts: JSON.stringify(drafts.result),
            });
          };
        };
      }),
  );

const heelLine = (page: Page): Locator => page.getByRole('slider', { name: 'Heel cushioning' });

/** A tester at the form of their pair, the further comfort questions open. */
const openHeelLine = async (page: Page): Promise<void> => {
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.locator('.pair-shoe').waitFor();
  await page.getByRole('link', { name: /^Log a run in/ }).click();
  await page.getByRole('button', { name: 'More about comfort' }).click();
  await heelLine(page).waitFor();
  // The parts that come later move the form.
  await page.locator('main input[type=file]').first().waitFor({ state: 'attached' });
  await stillness(page);
};

const UNANSWERED = 'not answered; left: too soft, middle: just right, right: too firm';

test('taps and drags set it, the middle holds what comes near, and it is saved beside no score', async ({
  page,
}) => {
  await openHeelLine(page);
  const finger = new Finger(page);
  const said = () => heelLine(page).getAttribute('aria-valuetext');
  const tap = async (share: number): Promise<void> => {
    const { x, y } = (await finger.pointOn(heelLine(page), share)) as Point;
    await page.touchscreen.tap(x, y);
  };
  expect(await said()).toBe(UNANSWERED);

  // Scrolling over it answers nothing.
  const from = (await finger.pointOn(heelLine(page), 0.2)) as Point;
  await finger.move(from, { x: from.x + 30, y: from.y - 200 });
  expect(await said()).toBe(UNANSWERED);

  // The first touch moves nothing on the screen.
  await finger.pointOn(heelLine(page), 0.3);
  await stillness(page);
  const places = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('main .scale, main .label, main h2, main input')].map((one) => {
        const { x, y, width, height } = one.getBoundingClientRect();
        return [x, y, width, height];
      }),
    );
  const still = await places();
  await tap(0.36);
  await expect.poll(said).toBe('a little too soft');
  expect(await places()).toEqual(still);
  await tap(0.2);
  await expect.poll(said).toBe('too soft');
  await tap(0.54);
  await expect.poll(said).toBe('just right');
  await expect(heelLine(page)).toHaveAttribute('aria-valuenow', '0');

  // Sideways from the middle the mark follows the finger, and an answer outlives scrolling.
  const middle = (await finger.pointOn(heelLine(page), 0.5)) as Point;
  const width = (await heelLine(page).boundingBox())?.width as number;
  await finger.move(middle, { x: middle.x + 0.45 * width, y: middle.y - 10 });
  await expect.poll(said).toBe('far too firm');
  const again = (await finger.pointOn(heelLine(page), 0.3)) as Point;
  await finger.move(again, { x: again.x + 40, y: again.y - 200 });
  expect(await said()).toBe('far too firm');

  // It is kept as typed; cleared, it is as before; and it goes with the run.
  await page.getByLabel('Distance, km').fill('8.17');
  await expect
    .poll(async () => (await held(page)).drafts)
    .toContain('"comfort2":{"heel-cushioning":');
  await page.getByRole('button', { name: 'Clear: Heel cushioning' }).click();
  expect(await said()).toBe(UNANSWERED);
  await expect(heelLine(page)).toBeFocused();
  await tap(0.36);
  await page.getByRole('button', { name: /^Save/ }).click();
  await page.getByRole('link', { name: 'Read this run' }).click();

  // The run says it in words, and no score of the line of before.
  await expect(page.getByRole('heading', { name: /^8\.\d+ km in/ })).toBeVisible();
  const answer = page
    .locator('dt', { hasText: 'Heel cushioning' })
    .locator('xpath=following::dd[1]');
  await expect(answer).toHaveText('a little too soft');
  const saved = (await held(page)).runs.filter(({ distanceM }) => distanceM === 8170);
  expect(saved).toHaveLength(1);
  expect(saved[0]?.comfort2).toEqual({ 'heel-cushioning': -28 });
  expect(saved[0]).not.toHaveProperty('comfort');

  // Changed later, it stands where it was put.
  await page.getByRole('link', { name: 'Change this run' }).click();
  await expect.poll(said).toBe('a little too soft');
});

test('keys set it, out of the middle by whole words', async ({ page }) => {
  await openHeelLine(page);
  for (const [key, words] of [
    ['ArrowRight', 'just right'],
    ['ArrowRight', 'a little too firm'],
    ['ArrowLeft', 'just right'],
    ['ArrowLeft', 'a little too soft'],
    ['PageDown', 'a little too soft'],
    ['PageDown', 'too soft'],
    ['Home', 'far too soft'],
    ['End', 'far too firm'],
  ] as const) {
    await heelLine(page).press(key);
    expect(await heelLine(page).getAttribute('aria-valuetext'), key).toBe(words);
  }
});

test('an answer of the line of before stays as it was: readable, on its own line, and not asked twice', async ({
  page,
}) => {
  await openHeelLine(page);
  const old = (await held(page)).runs.find(
    ({ comfort, comfort2 }) => comfort?.['heel-cushioning'] !== undefined && comfort2 === undefined,
  );
  if (!old) throw new Error('the demo has no run that was answered on the line of before');
  const score = old.comfort?.['heel-cushioning'] as number;

  await page.goto(`${hub.url}/run/${old.id}`);
  const answer = page
    .locator('dt', { hasText: 'Heel cushioning' })
    .locator('xpath=following::dd[1]');
  await expect(answer).toHaveText(String(Math.round(score)));
  await expect(answer.getByRole('meter')).toHaveCount(1);

  await page.getByRole('link', { name: 'Change this run' }).click();
  await expect(heelLine(page)).toHaveCount(1);
  await expect(heelLine(page)).toHaveAttribute('aria-valuemin', '0');
  await expect(heelLine(page)).toHaveAttribute('aria-valuenow', String(score));
  await page.getByRole('button', { name: /^Save/ }).click();
  await page.getByRole('link', { name: 'Change this run' }).waitFor();
  const now = (await held(page)).runs.find(({ id }) => id === old.id);
  expect(now?.comfort).toEqual(old.comfort);
  expect(now).not.toHaveProperty('comfort2');
});

/**
 * Pain that calls for the caution: it is seen and read before the run is saved, stays on the card of the pair, and
 * a run in that pair is no main action until the lead has answered or the tester says that it is over.
 */
import { readFile } from 'node:fs/promises';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { chooseLanguage, recordsHeld } from './device.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import {
  answer,
  card,
  expectOff,
  expectOn,
  joinAsTester,
  openLead,
  syncLead,
  syncTester,
} from './two-people.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const words = {
  en: {
    language: 'English',
    title: 'Stop this test for now',
    read: 'I have read this',
    save: 'Save',
    no: 'No',
    distance: /^Distance/,
  },
  zh: {
    language: '简体中文',
    title: '请暂停试穿',
    read: '我已阅读',
    save: '保存',
    no: '否',
    distance: /^距离/,
  },
} as const;

const speak = async (page: Page, language: 'English' | '简体中文') => {
  await page.goto(`${hub.url}/settings`);
  await chooseLanguage(page, language);
};

/** A run with this pain, as far as the answers; nothing is saved. */
const tellPain = async (page: Page, score: string) => {
  const pain = page.locator('.choices-ten').last();
  // By keys: with text twice as large a finger would have to scroll first.
  await pain.getByRole('radio').nth(Number(score)).focus();
  await page.keyboard.press('Space');
};

const openLog = async (page: Page, km = '7') => {
  await page.locator('.foot-bar a').click();
  const distance = page.locator('input.input-figure').first();
  await distance.fill(km);
  await distance.blur();
};

/** What of these is not wholly inside the window, or lies under something else at its corners or middle. */
const hidden = (targets: readonly Locator[]): Promise<string[]> =>
  Promise.all(
    targets.map((target) =>
      target.evaluate((element) => {
        const { left, right, top, bottom } = element.getBoundingClientRect();
        const name = (element.textContent ?? '').slice(0, 24);
        if (left < 0 || top < 0 || right > innerWidth || bottom > innerHeight)
          return `${name}: ${Math.round(top)} to ${Math.round(bottom)} of ${innerHeight}`;
        const points = [
          [left + 2, top + 2],
          [(left + right) / 2, (top + bottom) / 2],
          [right - 2, bottom - 2],
        ] as const;
        const covered = points.filter(([x, y]) => {
          const found = document.elementFromPoint(x, y);
          return !(found && (element.contains(found) || found.contains(element)));
        });
        return covered.length > 0 ? `${name}: covered` : '';
      }),
    ),
  ).then((all) => all.filter(Boolean));

/** The run records that this phone holds, by their pain score. */
const savedPains = async (page: Page): Promise<number[]> =>
  (await recordsHeld<{ pain?: { score: number } } | null>(page, 'run')).flatMap(
    (body) => body?.pain?.score ?? [],
  );

for (const [width, height] of [
  [320, 640],
  [360, 740],
  [390, 844],
  [412, 915],
] as const)
  for (const language of ['en', 'zh'] as const)
    test(`the caution is in view and under no bar before a run is saved: ${width}x${height} ${language}`, async ({
      page,
    }) => {
      const say = words[language];
      await page.setViewportSize({ width, height });
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await joinAsTester(page, hub);
      await speak(page, say.language);
      await page.goto(hub.url);
      await openLog(page);
      await tellPain(page, '2');
      await expect(page.getByRole('button', { name: say.save })).toBeInViewport();
      await tellPain(page, '5');
      const bar = page.locator('.caution-bar');
      const read = page.getByRole('button', { name: say.read });
      await expect(page.getByRole('alert').getByText(say.title)).toBeVisible();
      await expect(page.getByRole('button', { name: say.save })).toHaveCount(0);
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
        const parts = [bar, ...(await bar.locator('h3, p').all()), read];
        await expect.poll(() => hidden(parts)).toEqual([]);
      }
      // The answers that can take it away again stay in reach above it.
      await expect.poll(() => hidden([page.getByText(say.no, { exact: true })])).toEqual([]);
      const sideways = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(sideways).toBeLessThanOrEqual(0);
      expect(await savedPains(page)).not.toContain(5);
      await read.click();
      await expect(bar).toHaveCount(0);
      await expect(page.getByRole('button', { name: say.save })).toBeFocused();
      await page.getByRole('button', { name: say.save }).click();
      await expect.poll(() => savedPains(page)).toContain(5);
    });

for (const language of ['en', 'zh'] as const)
  test(`with text twice as large the caution fills the bar and is read to its end: ${language}`, async ({
    page,
  }) => {
    const say = words[language];
    await page.setViewportSize({ width: 320, height: 640 });
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await joinAsTester(page, hub);
    await speak(page, say.language);
    await page.goto(hub.url);
    await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
    await openLog(page);
    await tellPain(page, '5');
    const bar = page.locator('.caution-bar');
    const read = page.getByRole('button', { name: say.read });
    const paragraphs = await bar.locator('p').all();
    await expect.poll(() => hidden([bar, bar.locator('h3')])).toEqual([]);
    // The button is at the end of what must be read.
    await expect(read).not.toBeInViewport();
    await bar.evaluate((element) => element.scrollTo(0, element.scrollHeight));
    await expect.poll(() => hidden([paragraphs.at(-1) as Locator, read])).toEqual([]);
    const sideways = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(sideways).toBeLessThanOrEqual(0);
    await read.click();
    await expect(page.getByRole('button', { name: say.save })).toBeVisible();
  });

test('nothing is saved until the caution was read, by whatever way; what was typed outlives a reload', async ({
  page,
}) => {
  await joinAsTester(page, hub);
  await openLog(page, '7.7');
  await tellPain(page, '5');
  const read = page.getByRole('button', { name: 'I have read this' });
  await expect(read).toBeVisible();
  // The key that saves elsewhere, and whatever else would submit the form.
  await page.getByLabel('Distance, km').press('Enter');
  await page.evaluate(() => document.querySelector('form')?.requestSubmit());
  await expect(read).toBeVisible();
  expect(await savedPains(page)).not.toContain(5);
  await page.waitForTimeout(200);
  await page.reload();
  await expect(page.getByLabel('Distance, km')).toHaveValue('7.7');
  await expect(read).toBeInViewport({ ratio: 1 });
  await read.click();
  await page.waitForTimeout(200);
  await page.reload();
  await expect(page.getByRole('button', { name: 'Save' })).toBeVisible();
  await expect(read).toHaveCount(0);
  // Answers that call for it anew are read anew.
  await page.getByText('No', { exact: true }).click();
  await expect(page.locator('.notice-danger')).toHaveCount(0);
  await page.getByText('a limp', { exact: true }).click();
  await expect(read).toBeVisible();
  await expect(page.getByRole('button', { name: 'Save' })).toHaveCount(0);
});

const TITLE = words.en.title;

const save = async (page: Page) => {
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByText('Saved on this phone').waitFor();
};

const logPain = async (page: Page) => {
  await openLog(page);
  await tellPain(page, '5');
  await page.getByRole('button', { name: 'I have read this' }).click();
  await save(page);
};

test('the card keeps the caution without a network, until the tester says that it is over', async ({
  page,
}) => {
  await joinAsTester(page, hub);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await hub.pause();
  await logPain(page);
  await expectOff(page, TITLE);
  await expect(card(page).getByText('stop running in this test and see a doctor')).toBeVisible();
  await expect(card(page).getByText('Pain 5 of 10')).toBeVisible();
  await expect(card(page).getByText('Your lead has not answered yet.')).toBeVisible();
  await page.reload();
  await expectOff(page, TITLE);
  await page.getByRole('button', { name: 'It is over' }).click();
  await expectOn(page, TITLE);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expectOff(page, TITLE);
  await page.getByRole('button', { name: 'It is over' }).click();
  await expectOn(page, TITLE);
  // A run that is corrected to worse pain is asked about anew.
  await page.goto(`${hub.url}/runs`);
  await page.getByRole('listitem').first().getByRole('link', { name: 'Change' }).click();
  await tellPain(page, '8');
  await page.getByText('swelling', { exact: true }).click();
  await save(page);
  await page.goto(hub.url);
  await expectOff(page, TITLE);
});

test('the lead answers at the desk, the tester reads it on the card, and the step is done', async ({
  page,
  browser,
}) => {
  await joinAsTester(page, hub);
  await logPain(page);
  await syncTester(page, hub);
  const lead = await openLead(browser, hub);
  await syncLead(lead, hub);
  await lead.getByRole('link', { name: 'Answer T01: pain' }).click();
  await lead.getByRole('button', { name: 'Answer T01' }).click();
  await lead.getByRole('button', { name: 'Save' }).click();
  await expect(lead.getByText('Choose whether they may run in this pair.')).toBeVisible();
  await answer(lead, 'Stay out of this pair', 'See the physio first.');
  await expect(lead.getByText(/^Answered on .*: Stay out of this pair\./)).toBeVisible();
  await lead.getByRole('link', { name: 'Sheet', exact: true }).click();
  await lead.locator('.todo').waitFor();
  await expect(lead.getByRole('link', { name: 'Answer T01: pain' })).toHaveCount(0);
  await syncLead(lead, hub);
  await syncTester(page, hub);
  await expect(card(page).getByText(/^Your lead, .*: stay out of this pair\.$/)).toBeVisible();
  await expect(card(page).getByText('“See the physio first.”')).toBeVisible();
  await expectOff(page, TITLE);

  await lead.getByRole('link', { name: 'Runs', exact: true }).click();
  await lead.getByRole('button', { name: 'Change the answer to T01' }).click();
  await answer(lead, 'Go on in this pair', 'Short and easy.');
  await lead.getByText('Settled: ').click();
  await expect(lead.getByText(/^Answered on .*: Go on in this pair\./)).toBeVisible();
  await syncLead(lead, hub);
  await syncTester(page, hub);
  await expectOn(page, TITLE);
  await expect(card(page).getByText(/you can run in this pair again/)).toBeVisible();
  await expect(card(page).getByText('“Short and easy.”')).toBeVisible();
  await lead.context().close();
});

/** The bytes of the file that the page hands over when `ask` is done. */
const savedFile = async (page: Page, ask: () => Promise<void>): Promise<Buffer> => {
  const download = page.waitForEvent('download');
  await ask();
  return readFile(await (await download).path());
};

const takeIn = async (page: Page, buffer: Buffer) => {
  await page.goto(`${hub.url}/file`);
  const file = { name: 'a.pairlog', mimeType: 'application/octet-stream', buffer };
  await page.getByLabel('Choose a file').setInputFiles(file);
  // A lead who has just joined wrote nothing that this phone knows: it takes the tester's word for the file.
  const take = page.getByRole('button', { name: 'Take it in' });
  const agree = page.getByRole('checkbox', { name: /^Take in/ });
  await expect(take.or(agree).first()).toBeVisible();
  if (await agree.isVisible()) await agree.check();
  await take.click();
  await expect(page.getByText(/taken in/)).toBeVisible();
};

test('pain and its answer go by file as well', async ({ page, browser }) => {
  await joinAsTester(page, hub);
  const lead = await openLead(browser, hub);
  for (const one of [page, lead])
    await one.waitForFunction(() => navigator.serviceWorker.controller !== null);
  // Nobody reaches the hub from here on: files alone carry what is said.
  await hub.pause();
  await logPain(page);
  await page.goto(`${hub.url}/unsent`);
  const told = await savedFile(page, () =>
    page.getByRole('button', { name: 'Send as a file' }).click(),
  );
  await takeIn(lead, told);
  await lead.goto(`${hub.url}/desk`);
  await lead.getByRole('link', { name: /Demo trainer/ }).click();
  await lead.getByRole('link', { name: 'Answer T01: pain' }).click();
  await lead.getByRole('button', { name: 'Answer T01' }).click();
  await answer(lead, 'Go on in this pair', 'Good that you asked.');
  await expect(lead.getByText(/^Answered on .*: Go on in this pair\./)).toBeVisible();
  await lead.getByRole('link', { name: 'Testers', exact: true }).click();
  const row = lead.getByRole('row').filter({ hasText: 'T01' });
  const answered = await savedFile(lead, () =>
    row.getByRole('button', { name: 'Hand-out file T01' }).click(),
  );
  await takeIn(page, answered);
  await page.goto(hub.url);
  await expectOn(page, TITLE);
  await expect(card(page).getByText('“Good that you asked.”')).toBeVisible();
  await lead.context().close();
});

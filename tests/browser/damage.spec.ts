/** A pair that comes apart: it is said on its card until a lead says otherwise or the report is taken back. */
import { expect, test, type Page } from '@playwright/test';
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

const SAID = 'Do not wear this pair';

const report = async (page: Page) => {
  await page.getByRole('link', { name: 'Report damage' }).click();
  await page.getByText('upper torn', { exact: true }).click();
  await page.getByRole('group', { name: 'Which shoe?' }).getByText('left').click();
  await page.getByLabel('In your words').fill('Torn at the toe box.');
  await page.getByRole('button', { name: 'Save' }).click();
};

for (const [width, height] of [
  [320, 640],
  [360, 740],
] as const)
  test(`saving a report is in reach, and what is missing is said until it is mended: ${width} px`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await joinAsTester(page, hub);
    await page.getByRole('link', { name: 'Report damage' }).click();
    const save = page.getByRole('button', { name: 'Save' });
    await expect(save).toBeInViewport({ ratio: 1 });
    await save.click();
    const error = page.getByText('Say what broke.');
    await expect(error).toBeFocused();
    await expect(error).toBeInViewport({ ratio: 1 });
    await page.getByText('plate cracked', { exact: true }).click();
    await expect(error).toHaveCount(0);
    await expect(save).toBeInViewport({ ratio: 1 });
  });

test('damage stays on the card without a network; its report is seen, corrected and taken back', async ({
  page,
}) => {
  await joinAsTester(page, hub);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await hub.pause();
  await report(page);
  await expectOff(page, SAID);
  await expect(card(page).getByText(/^Reported .*: upper torn, left shoe\.$/)).toBeVisible();
  await expect(card(page).getByText('Torn at the toe box.')).toBeVisible();
  await page.reload();
  await expectOff(page, SAID);

  await page.getByRole('link', { name: 'See or correct the report' }).click();
  await expect(page.getByRole('radio', { name: 'upper torn' })).toBeChecked();
  await expect(page.getByRole('radio', { name: 'left' })).toBeChecked();
  await expect(page.getByLabel('In your words')).toHaveValue('Torn at the toe box.');
  await page.getByText('eyelet torn out', { exact: true }).click();
  await page.getByLabel('In your words').fill('');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(card(page).getByText(/^Reported .*: eyelet torn out, left shoe\.$/)).toBeVisible();
  await expect(card(page).getByText('Torn at the toe box.')).toHaveCount(0);
  await expectOff(page, SAID);

  await page.getByRole('link', { name: 'See or correct the report' }).click();
  page.once('dialog', (dialog) => void dialog.dismiss());
  await page.getByRole('button', { name: 'Take the report back' }).click();
  await expect(page.getByRole('button', { name: 'Take the report back' })).toBeVisible();
  page.once('dialog', (dialog) => void dialog.accept());
  await page.getByRole('button', { name: 'Take the report back' }).click();
  await expectOn(page, SAID);
});

test('a lead says that the pair may be worn again', async ({ page, browser }) => {
  await joinAsTester(page, hub);
  await report(page);
  await expectOff(page, SAID);
  await syncTester(page, hub);

  const lead = await openLead(browser, hub);
  await lead.getByRole('link', { name: 'Pairs', exact: true }).click();
  await lead.getByRole('searchbox').fill('637');
  await lead.getByRole('link', { name: 'damaged' }).click();
  await lead.getByRole('button', { name: 'Answer T01' }).click();
  await answer(lead, 'Go on in this pair', 'Mended and glued.');
  await expect(lead.getByRole('heading', { level: 1 })).toHaveText(/it may be worn again\.$/);
  await expect(lead.getByText(/^Answered on .*: Go on in this pair\./)).toBeVisible();
  await syncLead(lead, hub);
  await lead.context().close();

  await syncTester(page, hub);
  await expectOn(page, SAID);
  await expect(card(page).getByText('“Mended and glued.”')).toBeVisible();
});

/** A file is shown before anything of it is taken in, on a tester's phone and on one that is nobody's yet. */
import { expect, test, type Page } from '@playwright/test';
import { axeFaults } from './axe.ts';
import { backup, foreignFile, leadsFile } from './forged-file.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const openFile = async (page: Page, file: ReturnType<typeof backup>) => {
  await page.goto(`${hub.url}/file`);
  await page.getByLabel('Choose a file').setInputFiles(file);
};

/** Nothing that axe can find, nothing wider than the phone, in light and dark, at two widths. */
const look = async (page: Page) => {
  for (const colorScheme of ['light', 'dark'] as const)
    for (const width of [360, 320]) {
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width, height: 760 });
      expect(await axeFaults(page)).toEqual([]);
      const tooWide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(tooWide).toBeLessThanOrEqual(0);
    }
};

test('a tester’s phone shows what its lead’s file erases, and leaves out what is not for it', async ({
  page,
}) => {
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.locator('.figure').waitFor();

  await openFile(page, foreignFile());
  await expect(page.getByRole('alert')).toContainText('“Another group”');
  await expect(page.getByRole('button', { name: 'Take it in' })).toHaveCount(0);

  const file = leadsFile();
  await openFile(page, file);
  await expect(page.getByText('The file says: made by a lead of your group')).toBeVisible();
  await expect(page.getByText('Erases pair 146 for good')).toBeVisible();
  await expect(page.getByText('1 entry is not meant for you and stays out.')).toBeVisible();
  await expect(page.getByRole('checkbox')).toHaveCount(0);
  await look(page);
  await page.getByRole('button', { name: 'Take it in' }).click();
  await expect(page.getByText('2 new entries taken in')).toBeVisible();
  await openFile(page, file);
  await expect(page.getByText('Everything in this file is already here.')).toBeVisible();
});

test('a lead’s backup sets up a new device only if the lead says that it is theirs', async ({
  page,
}) => {
  await openFile(page, backup());
  await expect(page.getByText('A lead’s backup of')).toBeVisible();
  const take = page.getByRole('button', { name: 'Take it in' });
  await expect(take).toHaveCount(0);
  const own = page.getByRole('checkbox', { name: /This is my own backup/ });
  await expect(own).not.toBeChecked();
  await look(page);
  await own.check();
  await take.click();
  await expect(page.getByText(/new entries taken in/)).toBeVisible();
  await page.goto(`${hub.url}/desk`);
  await expect(page.getByRole('link', { name: /Demo trainer/ })).toBeVisible();
});

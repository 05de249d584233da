/** A tester's file that somebody changed on the way, opened by the lead at the desk. */
import { expect, test } from '@playwright/test';
import { changedFile, projectName } from './forged-file.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

test('what the tester may not write is told by author and taken by choice only', async ({
  page,
}) => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  const project = page.getByRole('link', { name: new RegExp(projectName.slice(0, 12)) });
  await expect(project).toContainText(projectName);

  const file = changedFile();
  const open = async () => {
    await page.goto(`${hub.url}/desk/group`);
    await page.getByRole('link', { name: 'Open a file' }).click();
    await page.getByLabel('Choose a file').setInputFiles(file);
  };
  const take = page.getByRole('button', { name: 'Take it in' });
  await open();
  await expect(page.getByText('The file says: made by T01')).toBeVisible();
  const boxes = page.getByRole('checkbox');
  await expect(boxes).toHaveCount(3);
  for (const box of await boxes.all()) await expect(box).not.toBeChecked();
  for (const line of [
    `Renames project “${projectName}” to “Demo trainer, stopped”`,
    'Erases pair 146 for good',
  ])
    await expect(page.getByText(line)).toBeVisible();
  await expect(page.getByText(/Changes run of .*, T02, .* → 1.0 km/)).toBeVisible();
  await take.click();
  await expect(page.getByText('2 new entries taken in')).toBeVisible();
  await expect(project).toContainText(projectName);

  // The same file again: what was left out is still there to be taken, each part by itself.
  await open();
  await expect(page.getByText('Adds run of')).toHaveCount(0);
  await expect(take).toHaveCount(0);
  await page.getByRole('checkbox', { name: /^Take in 1 entry in the name of a lead/ }).check();
  await take.click();
  await expect(page.getByText('1 new entry taken in')).toBeVisible();
  await expect(page.getByRole('link', { name: /Demo trainer, stopped/ })).toBeVisible();
  await open();
  await expect(boxes).toHaveCount(2);
  await expect(page.getByText('Erases pair 146 for good')).toBeVisible();
});

/** A record with a figure that cannot be is told on the desk with its field and range, and put right in place. */
import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import {
  newClock,
  readBundle,
  sealRevision,
  stampAfter,
  stampParts,
  unpackBundle,
  writeBundle,
} from '../../core/records/index.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

/** A file of the demo's group in which the foot of one tester is 26.5 m long. */
const wrongFile = (): Buffer => {
  const unpacked = unpackBundle(readFileSync('demo-data/wear-test.pairlog'));
  if (!unpacked.ok) throw new Error(unpacked.why);
  const { header, revisions } = readBundle(unpacked.text);
  const before = revisions.find(({ revision }) => revision.kind === 'tester')?.revision;
  if (!header?.group || !before) throw new Error('the demo has a group and testers');
  const wrong = sealRevision(
    {
      ...{ id: before.id, kind: 'tester', author: before.author, sv: 1 },
      body: { ...before.body, footLengthMm: { left: 26_500, right: 265 } },
    },
    stampAfter(newClock(stampParts(before.stamp).device), 0, before.stamp).stamp,
    before.stamp,
  );
  return Buffer.from(writeBundle({ madeAt: header.madeAt, group: header.group }, [wrong]));
};

test('a record that cannot be read is named and corrected', async ({ page }) => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await expect(page.getByRole('link', { name: /Demo trainer/ })).toBeVisible();
  await page.goto(`${hub.url}/file`);
  await page.getByLabel('Choose a file').setInputFiles({
    name: 'old.pairlog',
    mimeType: 'application/octet-stream',
    buffer: wrongFile(),
  });
  // Nothing tells this device who made the file: the lead has to agree.
  await page
    .getByRole('checkbox', { name: /^Take in/ })
    .first()
    .check();
  await page.getByRole('button', { name: 'Take it in' }).click();
  await expect(page.getByText(/new entr(y|ies) taken in/)).toBeVisible();
  await page.goto(`${hub.url}/desk`);
  await expect(page.getByRole('heading', { name: 'One record cannot be read' })).toBeVisible();
  await expect(page.getByText('Foot length, left: Must be from 100 to 400 mm.')).toBeVisible();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await page.getByRole('link', { name: 'Testers', exact: true }).click();
  await page.getByRole('button', { name: 'Correct this record' }).click();
  const field = page.getByLabel('Foot length, left, mm');
  await field.fill('26500');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await field.fill('265');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'One record cannot be read' })).toHaveCount(0);
  await expect(page.getByText(/^T01/).first()).toBeVisible();
});

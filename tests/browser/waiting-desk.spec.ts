/** What cannot be right: asked about while it is typed, told before a file is taken in, and decided at the desk. */
import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import {
  newRecordId,
  readBundle,
  sealRevision,
  unpackBundle,
  writeBundle,
  type Revision,
} from '../../core/records/index.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const openDesk = async (page: Page) => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await page.locator('.frame-tabs').waitFor();
  return new URL(page.url()).pathname;
};

/** A run of the demo once more: as long as two days on foot, in the same hands. */
const fileWithOddRun = (): Buffer => {
  const demo = unpackBundle(readFileSync(DEMO));
  if (!demo.ok) throw new Error(demo.why);
  const run = readBundle(demo.text).revisions.find(({ revision }) => revision.kind === 'run')
    ?.revision as Revision;
  const odd = sealRevision(
    {
      id: newRecordId(Date.UTC(2026, 10, 20), new Uint8Array(16).fill(7)),
      kind: 'run',
      author: run.author,
      sv: 1,
      body: { ...run.body, distanceM: 412_000, durationS: 170_000 },
    },
    run.stamp,
    null,
  );
  return Buffer.from(writeBundle({ madeAt: '2026-11-20T00:00:00Z' }, [odd]));
};

test('a run that cannot be right is told before it is taken in, waits, is set aside and counts again', async ({
  page,
}) => {
  const project = await openDesk(page);
  const pairs = async () => {
    await page.goto(`${hub.url}${project}/overview`);
    return page
      .getByText(/\d+ runs, .* km/)
      .first()
      .textContent();
  };
  const before = await pairs();

  await page.goto(`${hub.url}/file`);
  await page
    .getByLabel('Choose a file')
    .setInputFiles({ name: 'odd.pairlog', mimeType: 'text/plain', buffer: fileWithOddRun() });
  await expect(page.getByText('Waits for your decision once it is taken in: 1 run.')).toBeVisible();
  // Nothing tells this device who made the file: the lead has to agree.
  await page
    .getByRole('checkbox', { name: /^Take in/ })
    .first()
    .check();
  await page.getByRole('button', { name: 'Take it in' }).click();
  await expect(page.getByText(/new entr(y|ies) taken in/)).toBeVisible();

  expect(await pairs()).toBe(before);
  await page.getByRole('link', { name: 'Decide whether one entry counts' }).click();
  await expect(
    page.getByRole('heading', { name: 'In no figure until you decide', exact: true }),
  ).toBeVisible();
  const row = page.getByRole('listitem').filter({ hasText: '412.0 km' });
  await expect(row).toContainText('implausible distance');

  await row.getByRole('button', { name: 'Set this run aside' }).click();
  await expect(row.getByLabel(/^Why is it set aside\?/)).toHaveValue('This cannot be right');
  await row.getByLabel(/^Why is it set aside\?/).fill('A typing error');
  await row.getByRole('button', { name: 'Set this run aside' }).click();
  const aside = page.getByRole('listitem').filter({ hasText: 'A typing error' });
  await expect(aside).toContainText('412.0 km');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(
    page.getByRole('heading', { name: 'In no figure until you decide', exact: true }),
  ).toBeVisible();

  await row.getByRole('button', { name: 'Count this run' }).click();
  await expect(page.getByRole('heading', { name: 'Counted after a check' })).toBeVisible();
  expect(await pairs()).not.toBe(before);
  await page.goto(`${hub.url}${project}/waiting`);
  await page.getByRole('button', { name: 'Set this run aside' }).click();
  await expect(page.getByRole('heading', { name: 'Set aside, in no figure' })).toBeVisible();
  expect(await pairs()).toBe(before);
});

test('a reading whose point slipped is asked about, in the form and in a table', async ({
  page,
}) => {
  const project = await openDesk(page);
  await page.goto(`${hub.url}${project}/wear/checks/new`);
  await page.getByLabel('Pair', { exact: true }).selectOption({ label: '637' });
  await page.getByLabel('Value, mm').fill('3.49');
  await page.getByLabel('Distance on the pair if it is known, km').fill('400');
  await page.getByRole('button', { name: 'Save' }).click();
  const question = page.getByRole('group').filter({ hasText: 'You typed 3.49 mm' });
  await expect(question).toContainText('Is it 34.9 mm?');
  await question.getByRole('button', { name: 'Correct it' }).click();
  await page.getByLabel('Value, mm').fill('34.9');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('heading', { name: 'Pair 637 at 400 km: 1 reading.' })).toBeVisible();
  await expect(page.getByRole('cell', { name: '34.9 mm', exact: true })).toBeVisible();

  await page.getByRole('link', { name: 'Checks', exact: true }).click();
  await page.getByRole('button', { name: 'Read checks from a table (CSV)' }).click();
  await page.getByLabel('Choose the table').setInputFiles({
    name: 'shop.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(
      [
        'pair,measured_at,distance_km,measure,site,foot,value,unit',
        '360,2026-11-20T09:00Z,390,stack-height,heel-centre,left,3.47,mm',
        '360,2026-11-20T09:00Z,390,stack-height,heel-centre,right,34.8,mm',
      ].join('\n'),
    ),
  });
  await expect(page.getByText(/^Line 2: You typed 3\.47 mm/)).toContainText('Is it 34.7 mm?');
  await page.getByRole('button', { name: 'Take them in' }).click();
  await expect(page.getByRole('button', { name: 'Take them in' })).toHaveCount(0);

  // What was taken in without a tick waits, and is corrected from the list.
  await page.goto(`${hub.url}${project}/waiting`);
  const row = page.getByRole('listitem').filter({ hasText: '3.47 mm' });
  await row.getByRole('button', { name: 'Correct this reading' }).click();
  await expect(row.getByLabel('Right value, mm')).toHaveValue('34.7');
  await row.getByRole('button', { name: 'Save the correction' }).click();
  await expect(page.getByText('Nothing waits for your decision.')).toBeVisible();
});

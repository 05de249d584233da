/**
 * The whole way with no mocks: a lead starts a project and invites, two testers join on two browsers,
 * log offline, one of them in a browser that was closed and opened again without a network; the lead's
 * review has exactly the sums counted by hand; a log that comes a second time changes nothing.
 */
import { mkdtemp, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  chromium,
  devices,
  expect,
  firefox,
  test,
  type BrowserContext,
  type Page,
} from '@playwright/test';
import { startHubProcess, type HubProcess } from './hub-process.ts';
import { firefoxOptions, launchOptions, programs } from './programs.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--group', 'Journey');
});
test.afterEach(() => hub.stop());

type OpenBrowser = (folder: string) => Promise<BrowserContext>;

const openChromium: OpenBrowser = (folder) =>
  chromium.launchPersistentContext(folder, {
    ...launchOptions,
    ...devices['Pixel 7'],
    viewport: { width: 360, height: 760 },
    locale: 'en-GB',
  });

const openFirefox: OpenBrowser = (folder) =>
  firefox.launchPersistentContext(folder, {
    ...firefoxOptions,
    viewport: { width: 360, height: 760 },
    hasTouch: true,
    locale: 'en-GB',
  });

/**
 * The bytes of the file that the page hands to the browser when `ask` is done. A driver that is told
 * nothing of downloads (Firefox's) gets them from the address that the page made for them.
 */
const savedFile = async (page: Page, ask: () => Promise<void>): Promise<Buffer> => {
  if (page.context().browser()?.browserType().name() !== 'firefox') {
    const download = page.waitForEvent('download');
    await ask();
    return readFile(await (await download).path());
  }
  const bytes = page.evaluate(
    () =>
      new Promise<number[]>((done) => {
        const make = URL.createObjectURL.bind(URL);
        URL.createObjectURL = (file: Blob) => {
          void file.arrayBuffer().then((buffer) => done([...new Uint8Array(buffer)]));
          return make(file);
        };
      }),
  );
  await ask();
  return Buffer.from(await bytes);
};

const controlled = (page: Page) =>
  page.waitForFunction(() => navigator.serviceWorker.controller !== null);

const joinGroup = async (page: Page, code: string) => {
  await page.goto(`${hub.url}/join#${code}`);
  await page.getByRole('button', { name: 'Join' }).click();
};

interface Entry {
  readonly km: string;
  readonly time: string;
  readonly surface: string;
  readonly comfort: boolean;
  readonly complaint?: { readonly zone: string; readonly kind: string; readonly severity: string };
}

const logRun = async (page: Page, entry: Entry) => {
  await page.getByRole('link', { name: 'Log a run' }).click();
  await page.getByLabel('Distance, km').fill(entry.km);
  await page.getByLabel('Time', { exact: true }).fill(entry.time);
  const surface = page.getByRole('checkbox', { name: entry.surface, exact: true });
  if (!(await surface.isChecked())) await page.getByText(entry.surface, { exact: true }).click();
  if (entry.comfort) {
    await page.getByRole('slider', { name: 'Overall comfort' }).focus();
    await page.keyboard.press('Home');
    for (let step = 0; step < 6; step++) await page.keyboard.press('PageUp');
  }
  if (entry.complaint) {
    const { zone, kind, severity } = entry.complaint;
    await page.getByText('Something did').click();
    await page.getByLabel('Zones as a list').selectOption({ label: zone });
    await page.getByText(kind, { exact: true }).click();
    await page
      .getByRole('group', { name: 'How much' })
      .getByText(severity, { exact: true })
      .click();
    await page.getByRole('button', { name: 'Done' }).click();
  } else await page.getByText('Nothing bothered me').click();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Saved on this phone')).toBeVisible();
};

const inviteOf = async (lead: Page, tester: string): Promise<string> => {
  await lead.getByRole('button', { name: `Invite ${tester}` }).click();
  await expect(lead.getByText(`as tester ${tester}.`)).toBeVisible();
  return (await lead.locator('.code').textContent()) as string;
};

const journey = async (open: OpenBrowser) => {
  const openBrowser = async (folder: string) => {
    const context = await open(folder);
    context.setDefaultTimeout(15_000);
    return context;
  };
  const folder = await mkdtemp(join(tmpdir(), 'pairlog-browsers-'));
  const leadBrowser = await openBrowser(join(folder, 'lead'));
  const lead = leadBrowser.pages()[0] as Page;

  await test.step('the lead signs in and sets up a project', async () => {
    await joinGroup(lead, hub.codes.lead);
    await lead.getByRole('link', { name: 'Write the brief' }).click();
    await lead.getByLabel('Name of the project').fill('Journey trainer');
    await lead.getByLabel('Distance a pair must carry, km').fill('500');
    await lead.getByRole('button', { name: 'Save' }).click();
    await lead.getByLabel('Name', { exact: true }).fill('R1');
    await lead.getByRole('button', { name: 'Save' }).click();
    await lead.getByLabel('Pairs, a line each').fill('417 42 12\n832 42');
    await lead.getByRole('button', { name: 'Save' }).click();
    await lead.getByLabel('Testers, a line each').fill('T01\nT02');
    await lead.getByRole('button', { name: 'Save' }).click();
    await expect(lead.getByText('No plan yet for 2 pairs and 2 testers.')).toBeVisible();
    await lead.getByRole('link', { name: 'Pairs', exact: true }).click();
    for (const [pair, tester] of [
      ['417', 'T01'],
      ['832', 'T02'],
    ] as const) {
      await lead.getByRole('button', { name: 'Hand out', exact: true }).click();
      await lead.getByLabel('Pair', { exact: true }).selectOption({ label: `${pair}, R1, EU 42` });
      await lead.getByLabel('Hand out to').selectOption({ label: tester });
      await lead.getByRole('button', { name: 'Save' }).click();
      await expect(lead.getByText(`Pair ${pair} handed out to ${tester}`)).toBeVisible();
    }
  });

  await lead.getByRole('link', { name: 'Testers', exact: true }).click();
  const codes = [await inviteOf(lead, 'T01'), await inviteOf(lead, 'T02')];

  let first = await openBrowser(join(folder, 'first'));
  const second = await openBrowser(join(folder, 'second'));
  let one = first.pages()[0] as Page;
  const two = second.pages()[0] as Page;

  await test.step('two testers join and go offline', async () => {
    for (const [page, code, pair] of [
      [one, codes[0], '417'],
      [two, codes[1], '832'],
    ] as const) {
      await joinGroup(page, code as string);
      await expect(page.getByRole('heading', { name: pair })).toBeVisible();
      await controlled(page);
    }
    await hub.pause();
  });

  await test.step('both log without a network', async () => {
    await logRun(one, {
      km: '10.5',
      time: '5230',
      surface: 'road',
      comfort: true,
      complaint: { zone: 'left, heel cup', kind: 'Heel slip', severity: '4' },
    });
    await logRun(two, { km: '8', time: '40:00', surface: 'road', comfort: true });
  });

  await test.step('one closes the browser, opens the app without a network and logs on', async () => {
    await first.close();
    first = await openBrowser(join(folder, 'first'));
    one = first.pages()[0] as Page;
    await one.goto(hub.url);
    await expect(one.locator('.figure')).toHaveText('10.5');
    await logRun(one, {
      km: '6.25',
      time: '31:15',
      surface: 'road',
      comfort: false,
      complaint: { zone: 'left, heel cup', kind: 'Heel slip', severity: '6' },
    });
    await logRun(two, {
      km: '12.4',
      time: '1:02:00',
      surface: 'road',
      comfort: true,
      complaint: { zone: 'right, heel cup', kind: 'Heel slip', severity: '2' },
    });
    await expect(one.getByText('2 entries are only on this phone')).toBeVisible();
  });

  await test.step('both come online and their logs arrive', async () => {
    await hub.resume();
    for (const page of [one, two]) {
      await page.goto(`${hub.url}/unsent`);
      await page.getByRole('button', { name: 'Send now' }).click();
      await expect(page.getByText('Everything is with your group.')).toBeVisible();
    }
  });

  // By hand: 12 + 10.5 + 6.25 = 28.75 km on 417, 8 + 12.4 = 20.4 km on 832.
  const review = async () => {
    await lead.goto(`${hub.url}/desk/group`);
    await lead.getByRole('button', { name: 'Sync now' }).click();
    await expect(lead.getByText('Up to date.')).toBeVisible();
    await lead.goto(`${hub.url}/desk`);
    await lead.getByRole('link', { name: 'Journey trainer' }).click();
    await expect(lead.getByText(/ 2 pairs, 2 testers, 4 runs, 37\.2 km so far\./)).toBeVisible();
    await lead.getByRole('link', { name: 'Pairs', exact: true }).click();
    const row = (code: string) =>
      lead.getByRole('table', { name: 'Pairs' }).getByRole('row').filter({ hasText: code });
    await expect(row('417')).toContainText('28.8 km');
    await expect(row('417')).toContainText('T01');
    await expect(row('832')).toContainText('20.4 km');
    await lead.getByText('Surfaces, steps and load of each pair').click();
    await expect(
      lead.getByRole('region', { name: 'By surface' }).getByRole('row').filter({ hasText: '417' }),
    ).toContainText('road 16.8 km');
    await lead.getByRole('link', { name: 'Shoe', exact: true }).click();
    await expect(lead.getByLabel('left upper, heel cup: 1 of 2 testers')).toBeVisible();
    const asked = lead.getByText('4 runs of 2 testers were asked about their feet.');
    // What is folded is drawn once it is opened.
    await lead.locator('main').getByText('How sure?', { exact: true }).last().click();
    await expect(asked).toBeVisible();
    const cells = lead.getByRole('row').filter({ hasText: 'Heel slip' }).getByRole('cell');
    // Testers 2 of 2, one of them twice, 3 of 4 runs, left 2 and right 1, severity mean 4 and most 6.
    await expect(cells).toHaveText([
      'Heel slip',
      'likely',
      '2 / 2',
      /^1 /,
      /^3 \/ 4 /,
      '2 / 1',
      '4.0 / 6',
    ]);
  };
  await test.step('the review has the sums counted by hand', review);

  await test.step('a log that comes a second time as a file changes nothing', async () => {
    const again = await savedFile(one, () =>
      one.getByRole('button', { name: 'Send as a file' }).click(),
    );
    await lead.goto(`${hub.url}/file`);
    await lead.getByLabel('Choose a file').setInputFiles({
      name: 'again.pairlog',
      mimeType: 'application/octet-stream',
      buffer: again,
    });
    await expect(lead.getByText('Everything in this file is already here.')).toBeVisible();
    await expect(lead.getByRole('button', { name: 'Take it in' })).toHaveCount(0);
    await review();
  });

  for (const context of [leadBrowser, first, second]) await context.close();
};

const title = 'from the first code to the lead’s review, offline in between';

test(`${title}, in Chromium`, async () => {
  test.setTimeout(1_200_000);
  await journey(openChromium);
});

test(`${title}, in Firefox`, async () => {
  test.skip(programs.firefox === undefined, 'this machine has no Firefox');
  test.setTimeout(1_200_000);
  await journey(openFirefox);
});

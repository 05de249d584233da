/**
 * The lead's way over two rounds: from the blueprint to what a change did, the finding's outcome, the sheet of
 * the trade that acts, on paper and on the specialist's phone, where nothing else arrives.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { photosHeld } from './device.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { colourParts, pagesOf } from './paper.ts';
import { programs } from './programs.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

/** The words of the page as it would be printed, in all and sheet by sheet. */
const printed = async (page: Page, format: 'A4' | 'Letter') => {
  const folder = mkdtempSync(join(tmpdir(), 'pairlog-print-'));
  try {
    const file = join(folder, 'page.pdf');
    writeFileSync(file, await page.pdf({ format }));
    const text = execFileSync(programs.pdftotext as string, ['-layout', file, '-'], {
      encoding: 'utf8',
    });
    return { text, pages: text.split('\f').slice(0, -1) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

test('a change goes from the blueprint to its outcome, and the sheet to who can act', async ({
  page: lead,
  browser,
}) => {
  await lead.goto(`${hub.url}/join#${hub.codes.lead}`);
  await lead.getByRole('button', { name: 'Join' }).click();
  await lead.getByRole('link', { name: /Demo trainer/ }).click();
  await expect(lead.getByRole('heading', { name: 'What to do next' })).toBeVisible();
  const project = hub.url + new URL(lead.url()).pathname;
  await expect(
    lead
      .locator('.rounds-strip li')
      .filter({ hasText: 'Round 2' })
      .getByText('fails', { exact: true }),
  ).toBeVisible();

  await lead.getByRole('link', { name: 'Shoe', exact: true }).click();
  await lead.getByRole('link', { name: 'Arrival', exact: true }).click();
  await expect(lead.getByRole('heading', { level: 1 })).toHaveText(
    'Pair 229 is out of tolerance: width of the heel cup.',
  );

  await lead.getByRole('link', { name: 'Changes', exact: true }).click();
  await lead.getByRole('link', { name: 'New finding' }).click();
  const form = lead.getByRole('region', { name: 'New finding' });
  await form.getByLabel('Round', { exact: true }).selectOption({ label: 'Round 2' });
  await form.getByLabel('What shows it').selectOption('blueprint');
  await form.getByText('This is frozen with it:').click();
  await expect(form.getByRole('listitem').filter({ hasText: /^Pair 229, / })).toBeVisible();
  await form.getByLabel('Title', { exact: true }).fill('The heel cup is too wide');
  await form.getByRole('button', { name: 'Save' }).click();
  await expect(lead.getByRole('heading', { level: 1 })).toHaveText('The heel cup is too wide');
  await expect(lead.getByText('from the blueprint', { exact: true })).toBeVisible();
  await expect(lead.getByRole('link', { name: 'Pair 229', exact: true })).toBeVisible();

  await lead.goto(`${project}/changes`);
  await lead.getByLabel('Earlier round').selectOption({ label: 'Round 1' });
  await lead.getByLabel('Later round').selectOption({ label: 'Round 2' });
  await expect(lead.getByText(/^4 testers wore both rounds; /)).toBeVisible();
  const mend = lead.getByRole('region', { name: 'Did it mend?' });
  await expect(mend.getByText('better', { exact: true })).toBeVisible();

  await mend.getByRole('link', { name: 'Heel slips in the heel cup' }).click();
  await lead.getByRole('button', { name: 'Write down the outcome' }).click();
  const outcome = lead.getByRole('region', { name: 'Write down the outcome' });
  await expect(outcome.getByLabel('What the change did')).toHaveValue('better');
  await expect(outcome.getByLabel('What shows it, a line each')).toHaveValue(/Round 2: /);
  await outcome.getByRole('button', { name: 'Save' }).click();
  await expect(lead.getByText(/^Round 2 makes this change: better, as of /)).toBeVisible();

  await lead.goto(`${project}/report?trade=upper`);
  await lead.getByLabel('Round').selectOption({ label: 'Round 1' });
  await lead.getByLabel('Language').selectOption({ label: 'English + 简体中文' });
  const sheet = lead.getByRole('article');
  await expect(sheet.getByRole('heading', { name: /For the pattern cutter/ })).toBeVisible();
  await expect(sheet.getByRole('heading', { name: /致版师/ })).toBeVisible();
  if (programs.pdftotext)
    for (const format of ['A4', 'Letter'] as const) {
      const { text, pages } = await printed(lead, format);
      for (const words of [
        'For the pattern cutter',
        '致版师',
        'Outcome in Round 2',
        'Draw in the heel curve',
      ])
        expect(text, format).toContain(words);
      // The tabs and buttons of the screen stay on it.
      expect(text).not.toContain('Send to the specialists');
      // Two findings with a photo, and the trade's own data: map, words, layers, arrivals, pairs; all in two languages.
      expect(pages.length).toBeLessThanOrEqual(4);
    }
  await lead.getByText('No specialist in this group yet.').waitFor();
  await lead.getByRole('button', { name: 'Send to the specialists' }).click();
  await lead.getByText(/^It is kept for the specialists/).waitFor();
  await lead.goto(`${hub.url}/desk/group`);
  await lead.getByRole('button', { name: 'Sync now' }).click();
  await lead.getByRole('button', { name: 'Invite a specialist' }).click();
  const code = await lead.locator('.code').textContent();
  await lead.goto(`${hub.url}/unsent`);
  await lead.getByText('Everything is with your group.').waitFor();

  const context = await browser.newContext({
    locale: 'zh-CN',
    viewport: { width: 360, height: 760 },
  });
  const page = await context.newPage();
  const troubles: string[] = [];
  page.on('console', (message) => message.type() === 'error' && troubles.push(message.text()));
  await page.goto(`${hub.url}/join#${code}`);
  await page.getByRole('button', { name: '加入' }).click();
  await expect(page.getByRole('heading', { name: '帮面纸版 · 帮面' })).toBeVisible();
  const finding = page.getByRole('article').filter({ hasText: 'Heel slips in the heel cup' });
  await expect(finding.getByText(/^部件：帮面纸版。工种：帮面。/)).toBeVisible();
  await expect(finding.getByText(/3\s*mm$/)).toBeVisible();
  // Frozen on an English desk, said in the reader's language.
  const cup = page.getByRole('article').filter({ hasText: 'The heel cup is too wide' });
  await cup.getByRole('link', { name: /^查看/ }).click();
  await page.getByText(/证据，已冻结$/).click();
  await expect(page.getByText(/^样鞋 229，尺寸，后套宽，左脚：.*与标称值相差/)).toBeVisible();
  await page.goto(hub.url);
  await page.getByRole('radio', { name: '发泡' }).check({ force: true });
  await expect(finding).toHaveCount(0);
  await page.getByRole('radio', { name: '全部' }).check({ force: true });

  // Nothing else is theirs, whatever the address.
  await page.goto(`${hub.url}/desk`);
  await expect(page.getByRole('heading', { name: '报告' })).toBeVisible();
  await expect.poll(() => photosHeld(page)).toBeGreaterThan(0);
  await page.evaluate(() => navigator.serviceWorker.ready);

  await hub.pause();
  await page.getByRole('link', { name: /打开/ }).click();
  await expect(page.getByRole('heading', { name: /致版师/ })).toBeVisible();
  await expect(page.locator('.foot-map-picked').first()).toBeAttached();
  // Its own styles hold inside the app's policy, which allows none inline.
  expect(troubles.filter((text) => text.includes('Content Security Policy'))).toEqual([]);
  await context.close();
  await hub.resume();
});

test('the report on paper ends no page with a heading, and has the report’s name', async ({
  page,
}) => {
  test.skip(!programs.pdftotext, 'needs poppler');
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await page.locator('.frame-tabs').waitFor();
  await page.goto(`${hub.url}${new URL(page.url()).pathname}/report`);
  const folder = mkdtempSync(join(tmpdir(), 'pairlog-print-'));
  try {
    for (const language of ['English', 'English + 简体中文']) {
      await page.getByLabel('Round', { exact: true }).selectOption({ label: 'Round 2' });
      await page.getByLabel('Language').selectOption({ label: language });
      await expect(page.getByRole('article').locator('.running')).toContainText('Round 2');
      await colourParts(page);
      const pdf = join(folder, 'page.pdf');
      await page.pdf({ path: pdf, format: 'A4' });
      const pages = pagesOf(pdf);
      expect(pages.length).toBeGreaterThan(5);
      expect(
        pages.flatMap(({ endsWithHead }, at) => (endsWithHead ? [at + 1] : [])),
        language,
      ).toEqual([]);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }

  const title = (event: string) =>
    page.evaluate((name) => {
      window.dispatchEvent(new Event(name));
      return document.title;
    }, event);
  expect(await title('beforeprint')).toMatch(
    /^Demo trainer K1 \(invented\), Round 2: report of the round, \d+ \w+ \d{4}$/,
  );
  expect(await title('afterprint')).toBe('Pairlog');
});

/**
 * Every place of the desk over the demo: the answer stands on the first screen, the place is no longer than a screen and
 * a half, no word of statistics stands outside "How sure?", and whatever leads somewhere leads to a record that is there.
 */
import { expect, test, type Page } from '@playwright/test';
import { chooseLanguage } from './device.ts';
import { joinLead, openPlace, placesAndPages } from './every-place.ts';
import { startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', 'demo-data/wear-test.pairlog');
});
test.afterEach(() => hub.stop());

/** Words that belong behind "How sure?", in both languages. */
const STATISTICS =
  /\be-values?\b|\bp\s*[=<≤]|\bp-values?\b|\bWilson\b|\bStudent\b|\bKendall\b|\bposterior\b|\badjusted\b|\bhypothes[ie]s\b|[eEpP]\s*值|后验|威尔逊|校正后|调整后的/;

/** The text that can be read without opening anything, but for what is quoted of people and of the report. */
const firstLevelText = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const texts: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement;
      if (!parent || parent.closest('.how-sure, script, style, blockquote, q')) continue;
      if (parent.checkVisibility()) texts.push(node.textContent ?? '');
    }
    for (const one of document.querySelectorAll('[aria-label], [title]'))
      if (!one.closest('.how-sure'))
        texts.push(one.getAttribute('aria-label') ?? '', one.getAttribute('title') ?? '');
    return texts.join('\n');
  });

test('every place has its answer on the first screen, and is not long', async ({ page }) => {
  test.setTimeout(1_200_000);
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.emulateMedia({ reducedMotion: 'reduce' });
  const project = await joinLead(page, hub);
  const faults: string[] = [];
  for (const address of await placesAndPages(page, project)) {
    await openPlace(page, hub.url + address);
    const head = await page.locator('.place-head h1').boundingBox();
    const second = page.locator('main > :nth-child(2)');
    const proof = (await second.count()) > 0 ? await second.boundingBox() : null;
    const { height, sideways } = await page.evaluate(() => ({
      height: document.documentElement.scrollHeight,
      sideways: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    }));
    const at = address.replace(project, '');
    console.log(`${at || 'sheet'}: ${height} px`);
    if (!head || head.y + head.height > 300) faults.push(`${at}: the answer ends at ${head?.y}`);
    if (proof && proof.y > 700) faults.push(`${at}: its proof begins at ${proof.y}`);
    if (height > 1200) faults.push(`${at}: ${height} px`);
    if (sideways > 0) faults.push(`${at}: ${sideways} px too wide`);
  }
  expect(faults).toEqual([]);
});

for (const language of ['English', '简体中文'] as const)
  test(`no word of statistics stands outside "How sure?": ${language}`, async ({ page }) => {
    test.setTimeout(1_200_000);
    const project = await joinLead(page, hub);
    const addresses = await placesAndPages(page, project);
    await page.goto(`${hub.url}/settings`);
    await chooseLanguage(page, language);
    const faults: string[] = [];
    for (const address of addresses) {
      await openPlace(page, hub.url + address);
      const text = await firstLevelText(page);
      expect(text.length, address).toBeGreaterThan(100);
      for (const line of text.split('\n'))
        if (STATISTICS.test(line)) faults.push(`${address.replace(project, '')}: ${line.trim()}`);
    }
    expect(faults).toEqual([]);
  });

test('what leads somewhere leads to something, and back comes back', async ({ page }) => {
  test.setTimeout(1_200_000);
  const project = await joinLead(page, hub);
  const addresses = await placesAndPages(page, project);
  const seen = new Set<string>(addresses);
  const faults: string[] = [];
  const kindOf = (href: string) => href.replaceAll(/[0-9a-f]{8}-[0-9a-f-]{27}/g, '…');
  for (const address of addresses) {
    await openPlace(page, hub.url + address);
    const links = await page.locator('main a[href^="/desk"]').evaluateAll((all) =>
      all
        .filter((one) => {
          const { width, height } = one.getBoundingClientRect();
          return one.checkVisibility() && width > 0 && height > 0;
        })
        .map((one) => one.getAttribute('href') as string),
    );
    // One link of each kind on each place.
    const some = new Map(links.map((href) => [kindOf(href), href]));
    for (const href of some.values()) {
      if (seen.has(href)) continue;
      seen.add(href);
      const before = page.url();
      const answer = await page.locator('.place-head h1').textContent();
      await page.locator(`main a[href="${href}"]:visible`).first().focus();
      await page.keyboard.press('Enter');
      await expect(page).toHaveURL(hub.url + href);
      await expect(page.locator('.place-head h1')).toBeVisible();
      await expect(page.locator('main').getByText(/^One moment …$/)).toHaveCount(0);
      const title = (await page.locator('.place-head h1').textContent()) ?? '';
      if (/There is nothing here/.test(title)) faults.push(`${kindOf(href)}: ${title}`);
      await page.goBack();
      await expect(page).toHaveURL(before);
      await expect(page.locator('.place-head h1')).toHaveText(answer as string);
    }
  }
  expect(faults).toEqual([]);
  expect(seen.size).toBeGreaterThan(addresses.length);
});

test('at 390 px no place scrolls sideways, in either language', async ({ page }) => {
  test.setTimeout(1_200_000);
  await page.setViewportSize({ width: 390, height: 844 });
  const project = await joinLead(page, hub);
  const addresses = await placesAndPages(page, project);
  const faults: string[] = [];
  for (const language of ['English', '简体中文'] as const) {
    await page.goto(`${hub.url}/settings`);
    await chooseLanguage(page, language);
    for (const address of addresses) {
      await openPlace(page, hub.url + address);
      const sideways = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      const head = await page.locator('.place-head h1').boundingBox();
      if (sideways > 0) faults.push(`${language} ${address}: ${sideways} px too wide`);
      if (!head || head.y + head.height > 500) faults.push(`${language} ${address}: ${head?.y}`);
    }
  }
  expect(faults).toEqual([]);
});

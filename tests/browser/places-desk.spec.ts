/**
 * Every place of the desk over the demo, in both languages: the answer stands on the first screen, the place is no
 * longer than a screen and a half, nothing is wider than the window down to 320 px, no word of statistics stands
 * outside "How sure?", a screen reader hears what the pictures show, axe finds nothing in light or dark; and
 * whatever leads somewhere leads to a record that is there.
 */
import { expect, test, type Page } from '@playwright/test';
import { axeFaults, COLOURS } from './axe.ts';
import { chooseLanguage } from './device.ts';
import { goTo, joinLead, openPlace, placesAndPages } from './every-place.ts';
import { heardFaults } from './heard.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
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

/** Where the answer ends and its proof begins, and how much room the place takes. */
const measured = (page: Page) =>
  page.evaluate(() => {
    const head = document.querySelector('.place-head h1')?.getBoundingClientRect();
    const proof = document.querySelector('main > :nth-child(2)')?.getBoundingClientRect();
    const { scrollHeight, scrollWidth, clientWidth } = document.documentElement;
    return {
      answerEnds: head ? head.bottom : Infinity,
      proofBegins: proof ? proof.top : 0,
      height: scrollHeight,
      sideways: scrollWidth - clientWidth,
    };
  });

/** What is wrong with a place as it opens, at a desk. */
const faultsAtDesk = async (page: Page): Promise<readonly string[]> => {
  await page.setViewportSize({ width: 1280, height: 800 });
  const { answerEnds, proofBegins, height, sideways } = await measured(page);
  const text = await firstLevelText(page);
  return [
    ...(answerEnds > 300 ? [`the answer ends at ${answerEnds}`] : []),
    ...(proofBegins > 700 ? [`its proof begins at ${proofBegins}`] : []),
    ...(height > 1200 ? [`${height} px`] : []),
    ...(sideways > 0 ? [`${sideways} px too wide`] : []),
    ...(text.length > 100 ? [] : ['no text']),
    ...text.split('\n').filter((line) => STATISTICS.test(line)),
  ];
};

/** What is wrong with it on phones: nothing is wider than the screen, and the answer stands high. */
const faultsOnPhones = async (page: Page, isPlace: boolean): Promise<readonly string[]> => {
  const faults: string[] = [];
  for (const width of [390, 360, 320]) {
    await page.setViewportSize({ width, height: 844 });
    const { answerEnds, sideways } = await measured(page);
    if (sideways > 0) faults.push(`${sideways} px too wide at ${width}`);
    if (isPlace && width === 390 && answerEnds > 500)
      faults.push(`the answer ends at ${answerEnds}`);
  }
  return faults;
};

/** Unfolds all that is folded, so that it is looked at too. */
const unfold = (page: Page) =>
  page
    .locator('main details')
    .evaluateAll((all) => all.forEach((one) => ((one as HTMLDetailsElement).open = true)));

const axeInLightAndDark = async (page: Page): Promise<readonly string[]> => {
  const light = await axeFaults(page);
  // Without motion a colour is there at once.
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
  const dark = await axeFaults(page, COLOURS);
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  return [...light, ...dark.map((fault) => `dark: ${fault}`)];
};

for (const language of ['English', '简体中文'] as const)
  test(`every place fits, speaks plainly, and is read by everybody: ${language}`, async ({
    page,
  }) => {
    test.setTimeout(1_200_000);
    await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
    const project = await joinLead(page, hub);
    const places = await placesAndPages(page, project);
    // Screens of the lead's that are no place with an answer.
    const paper = ['report', 'plan/slips', 'plan/invites'].map((place) => `${project}/${place}`);
    const others = ['/', '/desk/new', '/desk/group', ...paper];
    await page.goto(`${hub.url}/settings`);
    await chooseLanguage(page, language);
    await openPlace(page, hub.url + project);
    const faults: string[] = [];
    for (const address of [...places, ...others]) {
      const isPlace = places.includes(address);
      await goTo(page, address);
      if (address.endsWith('/report')) await page.locator('.report').waitFor();
      const found = [
        ...(isPlace ? await faultsAtDesk(page) : []),
        ...(await faultsOnPhones(page, isPlace)),
      ];
      if (address.endsWith('/plan')) {
        await page.locator('.part > button').last().click();
        await page.locator('.part > button').first().click();
      }
      await unfold(page);
      found.push(...(await faultsOnPhones(page, isPlace)));
      await page.setViewportSize({ width: 360, height: 760 });
      found.push(...(await axeInLightAndDark(page)));
      await page.setViewportSize({ width: 1280, height: 800 });
      // What the width changes is the layout, not the language.
      if (language === 'English') found.push(...(await axeFaults(page)));
      if (isPlace) found.push(...(await heardFaults(page)));
      faults.push(...found.map((fault) => `${address.replace(project, '') || 'sheet'}: ${fault}`));
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
    await goTo(page, address);
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

/** The places of the desk and the pages of its records, for the tests that walk all of them. */
import { expect, type Page } from '@playwright/test';
import type { HubProcess } from './hub-process.ts';

/** Places by their address within the project; `''` is the sheet. */
const PLACES = [
  '',
  'shoe',
  'shoe/comfort',
  'shoe/arrival',
  'wear',
  'wear/checks',
  'wear/checks/table',
  'wear/gauges',
  'changes',
  'verdict',
  'pairs',
  'testers',
  'plan',
  'runs',
  'waiting',
  'ask',
  'words',
  'rounds',
  'brief',
  'tables',
] as const;

/** Pages of single records: found by the first link of that kind on a place. */
const PAGES = [
  ['shoe', 'shoe/zones/'],
  ['pairs', 'pairs/'],
  ['testers', 'testers/'],
  ['runs', 'runs/'],
  ['wear/checks', 'wear/checks/new'],
  ['wear/checks', 'wear/checks/0'],
  ['changes', 'changes/findings/'],
] as const;

/** A lead at the demo's project. @returns the project's address */
export const joinLead = async (page: Page, hub: HubProcess): Promise<string> => {
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: /Demo trainer/ }).click();
  await page.locator('.todo').waitFor();
  return new URL(page.url()).pathname;
};

/** What a place asks of the worker comes after its frame. */
const answered = async (page: Page) => {
  await page.locator('main h1').first().waitFor();
  await expect(page.getByText(/^(One moment …|请稍候……)$/)).toHaveCount(0);
};

/** Loads the app at a place and waits for what it asks of the log. */
export const openPlace = async (page: Page, url: string) => {
  await page.goto(url);
  await answered(page);
};

/** Goes to another place as a press on a link does, which takes a tenth of the time that loading the app takes. */
export const goTo = async (page: Page, path: string) => {
  await page.evaluate(async (href) => {
    const before = document.querySelector('main h1');
    const said = before?.textContent;
    const link = document.createElement('a');
    link.href = href;
    document.body.append(link);
    link.click();
    link.remove();
    // The place before stays until the code of the next one has come.
    while (before?.isConnected && before.textContent === said)
      await new Promise((done) => requestAnimationFrame(done));
  }, path);
  await answered(page);
};

/** Every place of the desk, and a page of each kind of record: found by a link as a lead finds it. */
export const placesAndPages = async (page: Page, project: string): Promise<readonly string[]> => {
  const pages: string[] = [];
  for (const [place, prefix] of PAGES) {
    const path = `${project}/${place}`;
    if (new URL(page.url()).pathname !== path) await goTo(page, path);
    const link = page.locator(`main a[href^="${project}/${prefix}"]`).first();
    pages.push((await link.getAttribute('href')) as string);
  }
  return ['/desk', ...PLACES.map((place) => `${project}/${place}`.replace(/\/$/, '')), ...pages];
};

/** Takes the pictures that a browser shows before it installs the app (manifest: `screenshots`): the built app with the demo. */
import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium, type Browser, type Page } from '@playwright/test';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { launchOptions } from './programs.ts';

const folder = fileURLToPath(new URL('../../app/public/pictures/', import.meta.url));
/** Large enough to read in a dialog; the files stay small. */
const NARROW = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 1.5, hasTouch: true };
const WIDE = { viewport: { width: 1280, height: 640 } };
/** The evening of the demo's last run: nobody is silent yet. */
const EVENING = new Date('2026-11-17T20:30:00+01:00');

const open = async (
  browser: Browser,
  hub: HubProcess,
  code: string | null,
  screen: typeof NARROW | typeof WIDE,
): Promise<Page> => {
  const context = await browser.newContext({ ...screen, locale: 'en-GB', reducedMotion: 'reduce' });
  await context.clock.setFixedTime(EVENING);
  const page = await context.newPage();
  await page.goto(`${hub.url}/join#${code}`);
  await page.getByRole('button', { name: 'Join' }).click();
  return page;
};

/** As it looks once what moves has come to rest. */
const take = async (page: Page, name: string) => {
  await page.waitForTimeout(1500);
  await page.screenshot({ path: `${folder}${name}.png`, animations: 'disabled' });
};

const hub = await startHubProcess('--demo', DEMO);
const browser = await chromium.launch(launchOptions);
try {
  mkdirSync(folder, { recursive: true });
  const phone = await open(browser, hub, hub.codes.tester, NARROW);
  await phone.locator('.pair-shoe').waitFor();
  await phone.getByRole('button', { name: 'Not now' }).first().click();
  await take(phone, 'today');
  await phone.getByRole('link', { name: 'This pair' }).click();
  await phone.locator('.own-pair-head').waitFor();
  await take(phone, 'pair');
  await phone.getByRole('link', { name: 'Back' }).click();
  await phone.getByRole('link', { name: /^Log a run in/ }).click();
  await phone.getByLabel('Distance, km').fill('8.2');
  await phone.getByLabel('Time', { exact: true }).fill('4130');
  await phone.getByText('road', { exact: true }).click();
  await phone.getByText('Nothing bothered me').click();
  await take(phone, 'log');

  const lead = await open(browser, hub, hub.codes.lead, WIDE);
  await lead.getByRole('link', { name: /Demo trainer/ }).click();
  await lead.locator('.todo').waitFor();
  await take(lead, 'sheet');
} finally {
  await browser.close();
  await hub.stop();
}

/** A tester's phone and a lead's desk on the demo: how they come in, send, and what a phone says of its pair. */
import { expect, type Browser, type Page } from '@playwright/test';
import type { HubProcess } from './hub-process.ts';

const join = async (page: Page, hub: HubProcess, code: string | null) => {
  await page.goto(`${hub.url}/join#${code}`);
  await page.getByRole('button', { name: 'Join' }).click();
};

/** T01, who holds pair 637. */
export const joinAsTester = async (page: Page, hub: HubProcess) => {
  await join(page, hub, hub.codes.tester);
  await page.locator('.figure').waitFor();
};

/** A lead in a browser of their own, at the project. */
export const openLead = async (browser: Browser, hub: HubProcess): Promise<Page> => {
  const context = await browser.newContext({ locale: 'en-GB' });
  const lead = await context.newPage();
  await join(lead, hub, hub.codes.lead);
  await openProject(lead);
  return lead;
};

const openProject = async (lead: Page) => {
  await lead.getByRole('link', { name: /Demo trainer/ }).click();
  await lead.locator('.todo').waitFor();
};

/** Everything goes to the hub and comes from it; then the project again. */
export const syncLead = async (lead: Page, hub: HubProcess) => {
  await lead.goto(`${hub.url}/desk/group`);
  await lead.getByRole('button', { name: 'Sync now' }).click();
  await expect(lead.getByText('Up to date.')).toBeVisible();
  await lead.goto(`${hub.url}/desk`);
  await openProject(lead);
};

/** Everything goes to the hub and comes from it; then the first screen again. */
export const syncTester = async (page: Page, hub: HubProcess) => {
  await page.goto(`${hub.url}/unsent`);
  await page.getByRole('button', { name: 'Send now' }).click();
  await expect(page.getByText('Up to date.')).toBeVisible();
  await page.goto(hub.url);
};

/** The lead's answer in the form that is open. */
export const answer = async (lead: Page, advice: string, said: string) => {
  await lead.getByText(advice, { exact: true }).click();
  await lead.getByLabel(/A few words/).fill(said);
  await lead.getByRole('button', { name: 'Save' }).click();
};

export const card = (page: Page) => page.getByRole('region', { name: '637' });

/** The card says this, and a run in the pair is no main action. */
export const expectOff = async (page: Page, said: string) => {
  await expect(card(page).getByText(said)).toBeVisible();
  await expect(page.getByRole('link', { name: /^Log a run in/ })).toHaveCount(0);
  await expect(page.locator('.button-main')).toHaveCount(0);
  await expect(page.getByRole('link', { name: 'Log an earlier run in 637' })).toBeVisible();
};

/** The card no longer says it, and a run in the pair is the main action. */
export const expectOn = async (page: Page, said: string) => {
  const log = page.getByRole('link', { name: /^Log a run in/ });
  await expect(log).toHaveClass(/button-main/);
  await expect(page.getByText(said)).toHaveCount(0);
};

/** Fit trials by hand: a lead begins a session, a person says how a pair fits, on a phone or at the desk. */
import { expect, type Locator, type Page } from '@playwright/test';
import type { Hand } from './hand.ts';

/** What one person says; the rest is right. */
export interface Fitting {
  /** By the words of the screen, such as `Heel`. */
  readonly off: readonly { readonly place: string; readonly fit: string; readonly mm?: string }[];
  readonly heel: string;
  /** A zone where it rubs, on the left foot. */
  readonly rubs?: string;
  /** What should move, as its chip says it. */
  readonly wants: readonly string[];
}

/** The lead names the session; all pairs of the round are tried on. @returns its address */
export const beginSession = async (lead: Page, project: string, name: string): Promise<string> => {
  await lead.goto(`${project}/fitting`);
  await lead.getByLabel('Where, or what you call it').fill(name);
  await lead.getByRole('button', { name: 'Save' }).click();
  await expect(lead.getByRole('heading', { level: 1 })).toHaveText(
    'Nobody has tried a pair on yet.',
  );
  return lead.url();
};

const row = (page: Page, place: string): Locator =>
  page.getByRole('group', { name: place, exact: true });
const chip = (group: Locator, label: string): Locator => group.getByText(label, { exact: true });

/** From the first question to the saved trial, with a finger. */
export const fitByHand = async (
  page: Page,
  hand: Hand,
  who: { readonly another: boolean },
  said: Fitting,
): Promise<void> => {
  await page.getByRole('button', { name: 'Stand in it' }).waitFor();
  hand.think();
  if (who.another && !(await page.getByLabel('Code of this person').isVisible()))
    await hand.tap(page.getByText('Another person here', { exact: true }));
  hand.think();
  await hand.tap(page.getByRole('group', { name: 'Which pair?' }).locator('label').first());
  await hand.tap(page.getByRole('button', { name: 'Stand in it' }));
  await page.getByRole('heading', { name: 'How does it fit?' }).waitFor();
  for (const { place, fit, mm } of said.off) {
    hand.think();
    await hand.tap(chip(row(page, place), fit));
    if (mm === undefined) continue;
    hand.think();
    await hand.tap(chip(row(page, `${place}: by how much?`), mm));
  }
  hand.think();
  await hand.tap(page.getByRole('button', { name: /now walk|Now walk/ }));
  await page.getByRole('heading', { name: 'And when you walk?' }).waitFor();
  hand.think();
  await hand.tap(chip(row(page, 'Walked where?'), 'stairs'));
  hand.think();
  await hand.tap(chip(row(page, 'Your heel'), said.heel));
  hand.think();
  if (said.rubs === undefined)
    await hand.tap(chip(row(page, 'Does anything press, rub or gape?'), 'Nothing'));
  else {
    await hand.tap(chip(row(page, 'Does anything press, rub or gape?'), 'Yes, show where'));
    hand.think();
    await hand.tap(page.locator('.foot-map').getByRole('button', { name: `left, ${said.rubs}` }));
    hand.think();
    await hand.tap(page.getByText('rubs', { exact: true }));
  }
  hand.think();
  await hand.tap(chip(row(page, 'Does it hurt or go numb?'), 'Neither'));
  for (const wish of said.wants) {
    hand.think();
    await hand.tap(chip(row(page, 'What should move?'), wish));
  }
  await hand.tap(page.getByRole('button', { name: /^Save the trial of/ }));
  await page.getByRole('button', { name: 'Stand in it' }).waitFor();
};

/** Heel slip in mm, and whether they want the heel curve in by as much. */
export const looseHeel = (mm: string, wants = true): Fitting => ({
  off: [{ place: 'Heel', fit: 'too loose', mm: `${mm} mm` }],
  heel: 'lifts a little',
  wants: wants ? [`Heel curve: ${mm} mm inward`] : [],
});

/** Everything is right, and nothing is to move. */
export const allRight: Fitting = { off: [], heel: 'stays down', wants: [] };

/** What axe finds on the screen that is open. */
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** The rules that look at colours: all that can differ between light and dark. */
export const COLOURS = ['color-contrast', 'link-in-text-block'];

/** @param rules absent: all of them. @returns a line for each rule that is broken, with the elements that break it */
export const axeFaults = async (
  page: Page,
  rules?: readonly string[],
): Promise<readonly string[]> => {
  // axe brings a copy of Playwright's types of its own; the page is the same. No screen has a frame of another
  // origin, so it may run in the page itself, and nobody reads what it says of elements without a fault: both
  // together take a third of the time.
  const axe = new AxeBuilder({ page: page as never })
    .setLegacyMode(true)
    .options({ resultTypes: ['violations'] });
  const { violations } = await (rules ? axe.withRules([...rules]) : axe).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((n) => n.html).join(' | ')}`);
};

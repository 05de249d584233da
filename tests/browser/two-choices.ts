/** Two choices in lists, the second before the screen is drawn with the first: as quick keys make them. */
import type { Locator, Page } from '@playwright/test';

export const chooseBoth = async (
  page: Page,
  ...choices: readonly (readonly [list: Locator, label: string])[]
): Promise<void> => {
  const lists = await Promise.all(choices.map(([list]) => list.elementHandle()));
  await page.evaluate(
    ([elements, labels]) => {
      for (const [at, element] of elements.entries()) {
        const list = element as HTMLSelectElement;
        list.selectedIndex = [...list.options].findIndex(({ text }) => text === labels[at]);
        list.dispatchEvent(new Event('change', { bubbles: true }));
      }
    },
    [lists, choices.map(([, label]) => label)] as const,
  );
};

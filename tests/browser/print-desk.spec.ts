/** The lists and pages of the desk on paper: nothing to press, nothing cut, and a folded list is whole. */
import { expect, test } from '@playwright/test';
import { joinLead, openPlace } from './every-place.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

/** A4 across less 10 mm on each side, at 96 px an inch. */
const PAPER = { width: 1047, height: 718 } as const;

const PLACES = [
  ...['pairs', 'testers', 'runs', 'wear', 'wear/checks', 'wear/gauges'],
  ...['changes', 'rounds', 'brief', 'waiting', 'tables'],
];

test('a place on paper has nothing to press and no table that is cut', async ({ page }) => {
  test.setTimeout(300_000);
  const project = await joinLead(page, hub);
  await page.setViewportSize(PAPER);
  const faults: string[] = [];
  for (const place of PLACES) {
    await page.emulateMedia({ media: 'screen' });
    await openPlace(page, `${hub.url}${project}/${place}`);
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
    const found = await page.evaluate(() => {
      const seen = (one: Element) => one.checkVisibility({ visibilityProperty: true });
      const named = (one: Element) => `${one.tagName} ${(one.textContent ?? '').slice(0, 30)}`;
      const pressed = [
        ...document.querySelectorAll('nav.frame-tabs, main .button, main input, main select'),
      ].filter(seen);
      const cut = [...document.querySelectorAll('main table')].filter((table) => {
        if (!seen(table)) return false;
        const { right } = table.getBoundingClientRect();
        for (let box = table.parentElement; box && box.tagName !== 'MAIN'; box = box.parentElement)
          if (
            getComputedStyle(box).overflowX !== 'visible' &&
            box.scrollWidth > box.clientWidth + 1
          )
            return true;
        return right > document.documentElement.clientWidth + 1;
      });
      return [
        ...pressed.map((one) => `to press: ${named(one)}`),
        ...cut.map((one) => `cut: ${named(one)}`),
      ];
    });
    faults.push(...found.map((fault) => `${place}: ${fault}`));
  }
  expect(faults).toEqual([]);
});

test('a folded list is printed whole', async ({ page }) => {
  const project = await joinLead(page, hub);
  await openPlace(page, `${hub.url}${project}/pairs`);
  const rows = page.locator('main tbody tr');
  await expect(rows).toHaveCount(12);
  await page.pdf({ format: 'A4' });
  await expect(rows).toHaveCount(24);
});

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
  ...['changes', 'rounds', 'brief', 'waiting', 'ask', 'tables'],
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

test('a list is printed with all its rows, and goes back to those near the reader', async ({
  page,
}) => {
  const project = await joinLead(page, hub);
  await openPlace(page, `${hub.url}${project}/runs`);
  const rows = page.locator('.runs-table tbody tr[data-at]');
  await expect(page.locator('.runs-table')).toHaveAttribute('aria-rowcount', '519');
  expect(await rows.count()).toBeLessThan(80);
  // As the printer finds it: counted when the page has been told, before it is told that printing is over.
  await page.evaluate(() => {
    window.addEventListener('afterprint', () => {
      const { length } = document.querySelectorAll('.runs-table tbody tr[data-at]');
      document.body.dataset['printed'] = String(length);
    });
  });
  await page.pdf({ format: 'A4' });
  await expect(page.locator('body')).toHaveAttribute('data-printed', '518');
  await expect.poll(() => rows.count()).toBeLessThan(80);
});

test('a list folded on a phone is printed whole', async ({ page }) => {
  const project = await joinLead(page, hub);
  await page.setViewportSize({ width: 390, height: 800 });
  await openPlace(page, `${hub.url}${project}/pairs`);
  const rows = page.locator('.pairs-table tbody tr[data-at]');
  await expect(rows).toHaveCount(12);
  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
  await expect(rows).toHaveCount(24);
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await expect(rows).toHaveCount(12);
});

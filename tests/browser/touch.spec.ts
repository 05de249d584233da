/**
 * A thumb on the phone's screens, by real touch events: what scrolls writes nothing, the comfort line takes taps
 * and sideways drags only, and the foot map opens whole with zones that a thumb hits.
 */
import { expect, test, type Locator, type Page } from '@playwright/test';
import { Finger, type Point } from './finger.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { stillness } from './stillness.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const joinAsTester = async (page: Page): Promise<string> => {
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.locator('.figure').waitFor();
  const log = (await page.getByRole('link', { name: 'Log a run' }).getAttribute('href')) as string;
  // The first sync keeps what the hub says of itself: it must be over before what is kept is looked at.
  await page.goto(`${hub.url}/unsent`);
  await page.getByRole('button', { name: 'Send now' }).click();
  await expect(page.getByText('Everything is with your group.')).toBeVisible();
  await page.goto(hub.url);
  return log;
};

/** All that this device keeps and a person wrote: records, drafts, settings. */
const kept = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      new Promise<string>((done) => {
        const opening = indexedDB.open('pairlog');
        opening.onsuccess = () => {
          // Not the attachments: those of the demo arrive while one looks.
          const names = ['heads', 'superseded', 'drafts', 'settings'];
          const tx = opening.result.transaction(names);
          const asked = names.map((name) => tx.objectStore(name).getAll());
          tx.oncomplete = () => {
            opening.result.close();
            done(JSON.stringify(asked.map(({ result }) => result as unknown)));
          };
        };
      }),
  );

/** What every control on the screen says of itself. */
const answers = (page: Page): Promise<string> =>
  page.evaluate(() =>
    JSON.stringify([
      location.pathname,
      ...[...document.querySelectorAll('main input, main select, main textarea')].map((one) =>
        one instanceof HTMLInputElement && /radio|checkbox/.test(one.type)
          ? one.checked
          : (one as HTMLInputElement).value,
      ),
      ...[...document.querySelectorAll('main [role=slider]')].map((one) =>
        one.getAttribute('aria-valuetext'),
      ),
      ...[...document.querySelectorAll('main [aria-pressed]')].map((one) =>
        one.getAttribute('aria-pressed'),
      ),
      ...[...document.querySelectorAll('main details')].map(
        (one) => (one as HTMLDetailsElement).open,
      ),
    ]),
  );

const CONTROLS =
  'main :is(a, button, :not(.choice) > input, select, textarea, summary, .choice, [role=slider], [role=button])';

/** Swipes up from every control, and down from every second one; answers how many there were. */
const swipeFromAll = async (page: Page, finger: Finger): Promise<number> => {
  let swiped = 0;
  const controls = page.locator(CONTROLS);
  for (const [at, control] of (await controls.all()).entries()) {
    const from = await finger.pointOn(control);
    if (!from) continue;
    await finger.move(from, { x: from.x + 6, y: from.y + (at % 2 === 0 ? -260 : 260) });
    swiped++;
  }
  return swiped;
};

const openAll = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'More about comfort' }).click();
  await page.locator('.two-sided-line').first().waitFor();
  await page.getByText('Something did').click();
  await page.locator('.foot-map').waitFor();
  await page.locator('.sheet select').first().selectOption({ index: 3 });
  await page
    .locator('fieldset.field:has(.choices-ten)')
    .last()
    .locator('input[value="4"]')
    .check({ force: true });
  for (const fold of await page.locator('form details summary').all()) await fold.click();
  await page.locator('.track-place .field').first().waitFor();
};

/** Goes to a screen and swipes over all of it. */
const swipeOver = async (
  page: Page,
  path: string,
  fewest: number,
  open: () => Promise<void> = () => Promise.resolve(),
): Promise<void> => {
  await page.goto(hub.url + path);
  await page.locator('main h1').waitFor();
  await expect(page.getByText('One moment …')).toHaveCount(0);
  await open();
  const finger = new Finger(page);
  await stillness(page);
  const before = { answers: await answers(page), kept: await kept(page) };
  expect(await swipeFromAll(page, finger), path).toBeGreaterThanOrEqual(fewest);
  expect(await answers(page), path).toBe(before.answers);
  expect(await kept(page), path).toBe(before.kept);
};

test('no swipe over any control of a half-filled run changes an answer or its draft', async ({
  page,
}) => {
  test.setTimeout(1_200_000);
  const log = await joinAsTester(page);
  await swipeOver(page, log, 60, async () => {
    await page.getByLabel('Distance, km').fill('8.1');
    await openAll(page);
    await expect.poll(() => kept(page)).toContain('"distance":"8.1"');
  });
});

test('no swipe over any control of today or of the list of runs changes what is kept', async ({
  page,
}) => {
  test.setTimeout(1_200_000);
  await joinAsTester(page);
  await swipeOver(page, '/', 4);
  await swipeOver(page, '/runs', 10);
});

test('no swipe over any control of the other screens changes what is answered or kept', async ({
  page,
}) => {
  test.setTimeout(1_200_000);
  const log = await joinAsTester(page);
  await page.goto(`${hub.url}/runs`);
  const run = (await page
    .getByRole('link', { name: 'Change' })
    .first()
    .getAttribute('href')) as string;
  const [heads] = JSON.parse(await kept(page)) as { kind: string; id: string }[][];
  const project = heads?.find(({ kind }) => kind === 'project')?.id ?? '';
  // Each screen, and the fewest controls that it is known to have.
  const screens: readonly (readonly [string, number])[] = [
    [run, 20],
    ['/unsent', 2],
    ['/settings', 10],
    [log.replace('log', 'damage'), 5],
    [`/rank/${project}`, 1],
    ['/file', 1],
  ];
  for (const [path, fewest] of screens) await swipeOver(page, path, fewest);
});

const line = (page: Page): Locator => page.getByRole('slider').first();

test('a comfort line takes a tap or a sideways drag; up and down scrolls the page', async ({
  page,
}) => {
  const log = await joinAsTester(page);
  const finger = new Finger(page);
  await page.goto(hub.url + log);
  await page.getByRole('button', { name: 'More about comfort' }).click();
  const said = () => line(page).getAttribute('aria-valuetext');
  const start = async (share: number): Promise<Point> =>
    (await finger.pointOn(line(page), share)) as Point;

  // Up: the page scrolls by as much as the finger goes, and nothing is scored.
  const from = await start(0.77);
  const before = await page.evaluate(() => scrollY);
  await finger.move(from, { x: from.x, y: from.y - 300 });
  expect(await said()).toContain('not answered');
  expect((await page.evaluate(() => scrollY)) - before).toBeGreaterThan(200);

  // The first touch scores, and moves nothing on the screen.
  const places = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('main .scale, main .label, main h2, main input')].map((one) => {
        const { x, y, width, height } = one.getBoundingClientRect();
        return [x, y, width, height];
      }),
    );
  const tapped = await start(0.7);
  // The part that comes last on this screen.
  await page.locator('main input[type=file]').first().waitFor({ state: 'attached' });
  await stillness(page);
  const still = await places();
  await page.touchscreen.tap(tapped.x, tapped.y);
  await expect.poll(said).toMatch(/^70, /);
  expect(await places()).toEqual(still);

  // Sideways: the point follows the finger, also where it strays.
  const left = await start(0.2);
  await finger.move(left, { x: left.x + 120, y: left.y - 20 });
  const width = (await line(page).boundingBox())?.width as number;
  expect(Number.parseInt((await said()) as string)).toBe(Math.round(20 + 12_000 / width));

  // An answer stays where a thumb scrolls over it, however slanted.
  const answer = await said();
  for (const aside of [0, 40, -90]) {
    const again = await start(0.5);
    await finger.move(again, { x: again.x + aside, y: again.y - 250 });
    expect(await said(), `${aside} px aside`).toBe(answer);
  }
});

test('a comfort line is worked by mouse and by keys as ever', async ({ page }) => {
  await page.goto(hub.url + (await joinAsTester(page)));
  const said = () => line(page).getAttribute('aria-valuetext');
  const box = async () => {
    await line(page).scrollIntoViewIfNeeded();
    return (await line(page).boundingBox()) as NonNullable<
      Awaited<ReturnType<Locator['boundingBox']>>
    >;
  };
  const { x, y, width, height } = await box();
  const at = (share: number) => [x + share * width, y + height / 2] as const;
  await page.mouse.move(...at(0.3));
  await page.mouse.down();
  expect(await said()).toMatch(/^30, /);
  await page.mouse.move(...at(0.6));
  expect(await said()).toMatch(/^60, /);
  await page.mouse.up();
  // A mouse that is not pressed any more leaves the answer alone.
  await page.mouse.move(...at(0.1));
  expect(await said()).toMatch(/^60, /);
  await line(page).press('ArrowRight');
  expect(await said()).toMatch(/^61, /);
  await line(page).press('Home');
  expect(await said()).toMatch(/^0: /);
  await page.getByRole('button', { name: /^No answer: / }).click();
  expect(await said()).toContain('not answered');
  await expect(line(page)).toBeFocused();
  await expect(page.getByRole('button', { name: /^No answer: / })).toHaveCount(0);
});

/** Of each zone the largest circle, by its diameter in px, that a touch hits the zone in: sampled every 2 px. */
const circles = (page: Page): Promise<Record<string, number>> =>
  page.evaluate(() => {
    const STEP = 2;
    const map = (document.querySelector('.foot-map') as Element).getBoundingClientRect();
    const [columns, rows] = [Math.ceil(innerWidth / STEP), Math.ceil(map.height / STEP)];
    const zoneAt = (column: number, row: number): string => {
      const hit = document.elementFromPoint(column * STEP, map.top + row * STEP);
      const zone = hit?.closest('[data-zone]');
      return zone
        ? `${zone.closest('[data-foot]')?.getAttribute('data-foot')} ${zone.getAttribute('data-zone')}`
        : '';
    };
    const zones = Array.from({ length: columns }, (_, column) =>
      Array.from({ length: rows }, (_, row) => zoneAt(column, row)),
    );
    const best: Record<string, number> = {};
    const fits = (column: number, row: number, radius: number): boolean => {
      const zone = zones[column]?.[row];
      for (let dx = -radius; dx <= radius; dx++) {
        const dy = Math.floor(Math.sqrt(radius * radius - dx * dx));
        for (let y = -dy; y <= dy; y++) if (zones[column + dx]?.[row + y] !== zone) return false;
      }
      return true;
    };
    for (let column = 0; column < columns; column++)
      for (let row = 0; row < rows; row++) {
        const zone = zones[column]?.[row];
        if (!zone) continue;
        // The circle reaches half a step beyond the last sample on either side.
        const radius = () => Math.floor((best[zone] ?? 0) / STEP / 2);
        while (fits(column, row, radius() + 1)) best[zone] = (radius() + 1) * 2 * STEP + STEP;
      }
    return best;
  });

const openMap = async (page: Page, log: string): Promise<void> => {
  await page.goto(hub.url + log);
  // The draft of the last time stands there with its map: it opens when it is asked for.
  await page.getByText('Nothing bothered me').click();
  await page.getByText('Something did').click();
  await page.locator('.foot-map').waitFor();
  await stillness(page);
};

test('the foot map opens whole above the save bar', async ({ page }) => {
  const log = await joinAsTester(page);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  for (const [width, height] of [
    [320, 568],
    [320, 640],
    [360, 640],
    [360, 740],
    [390, 844],
    [412, 915],
  ] as const) {
    await page.setViewportSize({ width, height });
    await openMap(page, log);
    const bar = (await page.locator('.foot-bar').boundingBox())?.y as number;
    for (const foot of await page.locator('.foot-map-foot').all()) {
      const box = (await foot.boundingBox()) as { y: number; height: number };
      expect(box.y, `${width} × ${height}`).toBeGreaterThanOrEqual(0);
      expect(box.y + box.height, `${width} × ${height}`).toBeLessThanOrEqual(bar + 0.5);
    }
  }
});

test('every zone of the foot map holds a circle of 44 px on a phone 360 px wide', async ({
  page,
}) => {
  const log = await joinAsTester(page);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  for (const [width, least] of [
    [360, 44],
    [320, 40],
  ] as const) {
    await page.setViewportSize({ width, height: 740 });
    await openMap(page, log);
    for (const view of ['Upper', 'Sole']) {
      await page.getByText(view.toLowerCase(), { exact: true }).click();
      await page.locator('.foot-map').evaluate((map) => map.scrollIntoView({ block: 'start' }));
      const found = await circles(page);
      expect(Object.keys(found)).toHaveLength(view === 'Upper' ? 20 : 18);
      const smallest = Object.entries(found).sort(([, a], [, b]) => a - b);
      console.log(
        width,
        view,
        smallest
          .slice(0, 6)
          .map(([zone, px]) => `${zone} ${px}`)
          .join(),
      );
      for (const [zone, px] of smallest)
        expect(px, `${width}: ${zone}`).toBeGreaterThanOrEqual(least);
    }
  }
});

test('a touch beside the shoe goes to the nearest zone', async ({ page }) => {
  const log = await joinAsTester(page);
  await page.setViewportSize({ width: 360, height: 740 });
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openMap(page, log);
  await page.getByText('sole', { exact: true }).click();
  const zone = page.getByRole('button', { name: 'left, lateral ball', exact: true });
  const area = (await zone.locator('.foot-map-area').boundingBox()) as {
    x: number;
    y: number;
    height: number;
  };
  await page.touchscreen.tap(area.x - 8, area.y + area.height / 2);
  await expect(zone).toHaveAttribute('aria-pressed', 'true');
});

/** The phone as a place to come back to: the pair's seam, a run to read, what was saved, and how to keep the app. */
import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { recordsHeld } from './device.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const joinAsTester = async (page: Page) => {
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.locator('.pair-shoe').waitFor();
};

interface Run {
  readonly distanceM: number;
  readonly photos?: readonly string[];
}

/** A file as another app's share sheet posts it. */
const share = async (page: Page, name: string, type: string, base64: string) => {
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await page.evaluate(
    async ([file, mediaType, content]) => {
      const bytes = Uint8Array.from(atob(content), (one) => one.charCodeAt(0));
      const form = new FormData();
      form.append('files', new File([bytes], file, { type: mediaType }));
      await fetch('/share', { method: 'POST', body: form, redirect: 'manual' });
    },
    [name, type, base64] as const,
  );
  await page.goto(`${hub.url}/shared`);
};

test('the pair’s kilometres, a saved run with its course, and the run to read again', async ({
  page,
}) => {
  // What a saved run asks of the phone: a tick in the hand, and that the browser does not clear the log.
  await page.addInitScript(() => {
    const asked: string[] = [];
    Object.assign(globalThis, { asked });
    navigator.vibrate = () => asked.push('tick') > 0;
    navigator.storage.persist = () => Promise.resolve(asked.push('persist') > 0);
  });
  await joinAsTester(page);
  await expect(page.getByText('of the 600 km it is made for', { exact: true })).toBeVisible();
  await page.getByRole('link', { name: /^Log a run in/ }).click();
  // Earlier answers would lead the next one.
  await expect(page.getByRole('img', { name: /^Your comfort/ })).toHaveCount(0);
  await page.getByLabel('Distance, km').fill('8.2');
  await page.getByLabel('Time', { exact: true }).fill('4130');
  await expect(page.getByText(/5:04 per km/)).toBeVisible();
  await page.getByText('Nothing bothered me').click();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByRole('heading', { name: /^Saved: 8\.2 km in/ })).toBeVisible();
  expect(await page.evaluate(() => (globalThis as { asked?: string[] }).asked)).toEqual([
    'persist',
    'tick',
  ]);
  // The message stands above the main button, also where the phone's own edge raises that.
  const bottom = await page.locator('.toast').boundingBox();
  const bar = await page.locator('.foot-bar').boundingBox();
  expect((bottom?.y ?? Infinity) + (bottom?.height ?? 0)).toBeLessThanOrEqual(bar?.y ?? 0);
  await expect(page.getByRole('img', { name: /^Your comfort, oldest run first/ })).toBeVisible();

  await page.getByRole('link', { name: 'Read this run' }).click();
  await expect(page.getByRole('heading', { name: /^8\.2 km in/ })).toBeVisible();
  await expect(page.getByText('Nothing bothered me')).toBeVisible();
  await expect(page.getByText('5:04/km')).toBeVisible();
  await page.getByRole('link', { name: 'Change this run' }).click();
  await page.getByLabel('Distance, km').fill('8.4');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  // Back on the page that is read, with what it says now.
  await expect(page.getByRole('heading', { name: /^8\.4 km in/ })).toBeVisible();

  await page.goto(hub.url);
  await page.getByRole('link', { name: 'This pair' }).click();
  await expect(page.getByText(/^You ran 192\.\d km of the 600 km/)).toBeVisible();
  await expect(page.getByRole('link', { name: /^8\.4 km ·/ })).toBeVisible();
});

test('“Log a run” from the home screen opens the pair worn last', async ({ page }) => {
  await joinAsTester(page);
  await page.goto(`${hub.url}/log`);
  await expect(page.getByLabel('Distance, km')).toBeVisible();
  expect(new URL(page.url()).pathname).toMatch(/^\/log\/[0-9a-f-]{36}$/);
  const manifest = await page.evaluate(
    async () =>
      (await (await fetch('/manifest.webmanifest')).json()) as {
        shortcuts: { url: string }[];
        launch_handler: { client_mode: string[] };
        screenshots: { src: string }[];
        share_target: { params: { files: { accept: string[] }[] } };
      },
  );
  expect(manifest.share_target.params.files[0]?.accept).toContain('image/*');
  // The hub serves the pictures of the install dialog; the service worker does not keep them for use offline.
  for (const { src } of manifest.screenshots) {
    const answer = await page.request.get(`${hub.url}${src}`);
    expect([answer.status(), answer.headers()['content-type']]).toEqual([200, 'image/png']);
  }
  const kept = await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    const caches_ = await Promise.all((await caches.keys()).map((name) => caches.open(name)));
    const keys = await Promise.all(caches_.map((cache) => cache.keys()));
    return keys.flat().map(({ url }) => new URL(url).pathname);
  });
  expect(kept).toContain('/icons/icon-192.png');
  expect(kept.filter((path) => path.startsWith('/pictures/'))).toEqual([]);
  expect(manifest.shortcuts.map(({ url }) => url)).toEqual(['/log']);
  expect(manifest.launch_handler.client_mode[0]).toBe('navigate-existing');
});

test('the home screen is offered once there is a run, and not again once it was declined', async ({
  page,
}) => {
  await joinAsTester(page);
  const offer = page.getByRole('heading', { name: 'Keep Pairlog on your home screen' });
  await expect(offer).toBeVisible();
  await page.getByRole('link', { name: 'Show me how' }).click();
  await expect(page.getByRole('heading', { name: 'On an iPhone or iPad' })).toBeVisible();
  await page.goto(hub.url);
  await page.getByRole('button', { name: 'Not now' }).click();
  await expect(offer).toBeHidden();
  await page.reload();
  await page.locator('.pair-shoe').waitFor();
  await expect(offer).toBeHidden();
});

test('where the browser can install, its own question is used', async ({ page }) => {
  await joinAsTester(page);
  await page.evaluate(() => {
    const event = Object.assign(new Event('beforeinstallprompt', { cancelable: true }), {
      prompt: () => Promise.resolve(),
      userChoice: Promise.resolve({ outcome: 'accepted' }),
    });
    dispatchEvent(event);
  });
  await page.getByRole('link', { name: 'This pair' }).click();
  await page.getByRole('link', { name: 'Back' }).click();
  await page.getByRole('button', { name: 'Put it there' }).click();
  await expect(page.getByText('Pairlog is on your home screen.')).toBeVisible();
});

const photo = readFileSync(new URL('../../demo-data/pictures/phone.png', import.meta.url));

test('a shared photo finds its run; another watch’s file is told what to do', async ({ page }) => {
  await joinAsTester(page);
  await share(page, 'morning.fit', 'application/octet-stream', btoa('not a track'));
  await expect(
    page.getByText(/Pairlog cannot read morning\.fit.*export it as a GPX/),
  ).toBeVisible();
  await share(page, 'notes.txt', 'text/plain', btoa('hello'));
  await expect(page.getByText(/cannot do anything with notes\.txt/)).toBeVisible();

  await share(page, 'sole.png', 'image/png', photo.toString('base64'));
  await page
    .getByRole('button', { name: /^With my run of/ })
    .first()
    .click();
  await expect(page.getByText('Photo added to the run')).toBeVisible();
  await expect(page.getByRole('img', { name: /^Photo/ })).toBeVisible();
  const runs = await recordsHeld<Run>(page, 'run');
  expect(runs.filter(({ photos }) => photos?.length === 1)).toHaveLength(1);
});

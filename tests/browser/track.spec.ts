/**
 * A track from a watch: shared into the app without a network, painted with two surfaces, saved; later the
 * desk has the kilometres by surface, and the hub has no point near either end.
 */
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, test, type Page } from '@playwright/test';
import { geodesicDistance, readGpx, writeGpx } from '../../core/track/index.ts';
import { fixAt, START_MS, trackOf } from '../core/track/tracks.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

/** Six kilometres north in half an hour: 3.33 m/s, a fix every three seconds. */
const whole = trackOf(
  Array.from({ length: 601 }, (_, at) => ({
    ...fixAt(0, 10 * at, START_MS + 3000 * at),
    cadence: 85,
  })),
);
const gpx = writeGpx(whole);

const joinAsTester = async (page: Page) => {
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.locator('.figure').waitFor();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
};

/** What the system's share sheet does: it posts the file to the app's own address. */
const share = (page: Page, text: string) =>
  page.evaluate(async (content) => {
    const form = new FormData();
    form.append('files', new File([content], 'run.gpx', { type: 'application/gpx+xml' }));
    await fetch('/share', { method: 'POST', body: form, redirect: 'manual' });
  }, text);

/** Every text that the hub holds, attachments included. */
const sentTrack = async (page: Page): Promise<string> => {
  await page.goto(hub.url);
  return page.evaluate(async () => {
    const open = <T>(name: string): Promise<T[]> =>
      new Promise((done) => {
        const opening = indexedDB.open('pairlog');
        opening.onsuccess = () => {
          const asking = opening.result.transaction(name).objectStore(name).getAll();
          asking.onsuccess = () => {
            opening.result.close();
            done(asking.result as T[]);
          };
        };
      });
    const heads = await open<{ kind: string; body: { track?: { attachment?: string } } | null }>(
      'heads',
    );
    const sha = heads.find(({ body }) => body?.track?.attachment)?.body?.track?.attachment ?? '';
    const token = await new Promise<string>((done) => {
      const opening = indexedDB.open('pairlog');
      opening.onsuccess = () => {
        const asking = opening.result.transaction('meta').objectStore('meta').get('token');
        asking.onsuccess = () => {
          opening.result.close();
          done(asking.result as string);
        };
      };
    });
    const answer = await fetch(`/v1/attachment/${sha}`, {
      headers: { authorization: `Bearer ${token}` },
    });
    return answer.text();
  });
};

/** The track is older than the hand-out: the form asks whether its day is right, and saves it so. */
const saveEarlierTrack = async (page: Page) => {
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText(/was not with you then/)).toBeVisible();
  await page.getByRole('button', { name: 'Yes, save it' }).click();
  await expect(page.getByText('Saved on this phone')).toBeVisible();
};

test('a shared track is measured, painted and saved offline; the hub gets it without its ends', async ({
  page,
  browser,
}) => {
  await joinAsTester(page);
  await hub.pause();
  await share(page, gpx);
  await page.goto(`${hub.url}/shared`);
  // One pair in hand: straight on to its form, filled in from the track.
  await expect(page.getByLabel('Distance, km')).toHaveValue(/^(5\.99|6|6\.0\d)$/);
  await expect(page.getByLabel('Time', { exact: true })).toHaveValue('30:00');
  await expect(page.getByText(/moving 30:00 · 5:0\d\/km/)).toBeVisible();
  await page
    .getByRole('group', { name: 'Surface', exact: true })
    .getByText('road', { exact: true })
    .click();

  await page.getByText('Surfaces along the way').click();
  await page.getByLabel('From km').fill('1');
  await page.getByLabel('To km').fill('2.5');
  const there = page.getByRole('group', { name: 'Surface there' });
  await there.getByText('trail', { exact: true }).click();
  await page.getByRole('button', { name: 'Paint' }).click();
  await expect(page.getByText('1.0 km to 2.5 km: trail')).toBeVisible();

  // And once more on the map, with two taps on the line.
  await page.getByRole('button', { name: 'Open the map' }).click();
  await expect(page.locator('.way-kilometre')).toHaveCount(5);
  // The painted stretch in the map, and its sample in the key.
  await expect(page.locator('path.way-trail')).toHaveCount(2);
  const ground = await page.locator('.way-ground').boundingBox();
  if (!ground) throw new Error('no map');
  const middle = ground.x + ground.width / 2;
  await page.locator('.way-ground').scrollIntoViewIfNeeded();
  // The marks are drawn anew whenever the form changes: one may be gone just when it is looked for.
  const tapAt = (kilometre: string, answer: string) =>
    expect(async () => {
      const mark = await page.locator('.way-kilometre', { hasText: kilometre }).boundingBox();
      if (!mark) throw new Error(`no mark at ${kilometre} km`);
      await page.mouse.click(middle, mark.y);
      await expect(page.getByText(answer)).toBeVisible({ timeout: 3000 });
    }).toPass();
  await tapAt('4', 'Tap where it ends');
  // A hand takes its time; two taps within a fifth of a second are one double tap to the map.
  await page.waitForTimeout(400);
  await tapAt('5', 'What is it between the two marks?');
  await page
    .getByRole('group', { name: 'Surface there' })
    .last()
    .getByText('gravel', { exact: true })
    .click();
  await expect(page.getByText(/^4\.0 km to (4\.9|5\.0) km: gravel$/)).toBeVisible();

  await page.getByText('Send the track to my lead').click();
  await page.getByText('Nothing bothered me').click();
  await saveEarlierTrack(page);

  await hub.resume();
  await page.goto(`${hub.url}/unsent`);
  await page.getByRole('button', { name: 'Send now' }).click();
  await expect(page.getByText('Everything is with your group.')).toBeVisible();

  const sent = readGpx(await sentTrack(page));
  if (!sent.ok) throw new Error(sent.problem.why);
  const left = sent.track.segments.flat();
  expect(left.length).toBeGreaterThan(400);
  const ends = [whole.segments[0]?.[0], whole.segments[0]?.at(-1)];
  for (const end of ends)
    for (const point of left)
      expect(geodesicDistance(end as { lat: number; lon: number }, point)).toBeGreaterThan(300);

  const lead = await (
    await browser.newContext({ viewport: { width: 1280, height: 800 } })
  ).newPage();
  await lead.goto(`${hub.url}/join#${hub.codes.lead}`);
  await lead.getByRole('button', { name: 'Join' }).click();
  await lead.getByRole('link', { name: /Demo trainer/ }).click();
  // The run is of a day on which the pair was not with the tester: it counts once the lead says so.
  await lead.getByRole('link', { name: 'Decide whether one entry counts' }).click();
  await lead.getByRole('button', { name: 'Count this run' }).click();
  await lead.getByRole('link', { name: 'Pairs', exact: true }).click();
  // By hand: 6 km less 1.5 on trail and 1 on gravel leave 3.5 on the road.
  await lead.getByRole('searchbox').fill('637');
  await lead.getByRole('rowheader', { name: '637' }).getByRole('link').click();
  await lead.getByText('Surfaces, steps and load').click();
  const row = lead.getByRole('row').filter({ hasText: 'trail' });
  await expect(row).toContainText('189.8 km');
  await expect(row).toContainText(/trail 1\.5 km/);
  await expect(row).toContainText(/counted/);
  await lead.context().close();
});

test('the same track again is recognised, a typed distance that differs is shown, and a bad file is refused', async ({
  page,
}) => {
  await joinAsTester(page);
  const choose = (name: string, text: string) =>
    page
      .locator('input[type=file]')
      .first()
      .setInputFiles({ name, mimeType: 'application/gpx+xml', buffer: Buffer.from(text) });
  await page.getByRole('link', { name: 'Log a run' }).click();
  await choose('bomb.gpx', '<!DOCTYPE gpx [<!ENTITY a "b">]><gpx>&a;</gpx>');
  await expect(page.getByText('The file has a document type')).toBeVisible();
  await page.getByLabel('Distance, km').fill('6.5');
  await choose('run.gpx', gpx);
  await expect(page.getByText('you typed 6.5 km')).toBeVisible();
  await page.getByRole('button', { name: 'Take the track’s' }).click();
  await expect(page.getByLabel('Distance, km')).not.toHaveValue('6.5');
  await saveEarlierTrack(page);

  await page.getByRole('link', { name: 'Log a run' }).click();
  // Written anew by another program: rounded, and without cadence.
  const again = gpx
    .replaceAll(/(lat|lon)="(-?\d+\.\d{5})\d*"/g, '$1="$2"')
    .replaceAll(/<extensions>.*?<\/extensions>/g, '');
  await choose('again.gpx', again);
  await expect(page.getByText('This track was logged before')).toBeVisible();
});

test('tiles of the group lie under the way, are kept, and are there without a network', async ({
  page,
}) => {
  const png = Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
    'base64',
  );
  let served = 0;
  const tileServer = createServer((_, answer) => {
    served++;
    answer.writeHead(200, { 'content-type': 'image/png', 'access-control-allow-origin': '*' });
    answer.end(png);
  });
  await new Promise<void>((done) => tileServer.listen(0, () => done()));
  const { port } = tileServer.address() as AddressInfo;
  await hub.stop();
  hub = await startHubProcess(
    ...['--demo', DEMO],
    ...['--tiles', `http://localhost:${port}/{z}/{x}/{y}.png`, '--attribution', 'Invented tiles'],
  );
  await joinAsTester(page);
  await page.goto(`${hub.url}/unsent`);
  await page.getByRole('button', { name: 'Send now' }).click();
  await expect(page.getByText('Up to date.')).toBeVisible();
  const openMap = async () => {
    await page.goto(hub.url);
    await page.getByRole('link', { name: 'Log a run' }).click();
    await page
      .locator('input[type=file]')
      .first()
      .setInputFiles({
        name: 'run.gpx',
        mimeType: 'application/gpx+xml',
        buffer: Buffer.from(gpx),
      });
    await page.getByRole('button', { name: 'Open the map' }).click();
    await expect(page.locator('img.leaflet-tile-loaded').first()).toBeVisible();
    await expect(page.getByText('Invented tiles')).toBeVisible();
  };
  await openMap();
  await page.getByRole('button', { name: 'Start afresh' }).click();
  const before = served;
  expect(before).toBeGreaterThan(0);
  await hub.pause();
  await new Promise((done) => tileServer.close(done));
  await openMap();
  expect(served).toBe(before);
});

test('a file without a possible place, without a track, or without times says so, and what to do', async ({
  page,
}) => {
  await joinAsTester(page);
  const choose = (text: string) =>
    page
      .locator('input[type=file]')
      .first()
      .setInputFiles({
        name: 'run.gpx',
        mimeType: 'application/gpx+xml',
        buffer: Buffer.from(text),
      });
  await page.getByRole('link', { name: 'Log a run' }).click();
  await choose(gpx.replaceAll(/lat="48/g, 'lat="148'));
  await expect(page.getByText(/No point in this file has a possible latitude/)).toBeVisible();
  await choose('<gpx version="1.1"><wpt lat="48" lon="11"/></gpx>');
  await expect(page.getByText(/only places or a route/)).toBeVisible();

  // All at one time, and one point outside of the world.
  const stopped = gpx
    .replaceAll(/<time>[^<]*<\/time>/g, '<time>2026-05-01T06:00:00Z</time>')
    .replace('lat="48.0008', 'lat="148.0008');
  await choose(stopped);
  await expect(page.getByText(/no usable times/)).toBeVisible();
  await expect(page.getByText(/One point has an impossible place/)).toBeVisible();
  await expect(page.getByLabel('Distance, km')).toHaveValue(/^(5\.99|6|6\.0\d)$/);
  await expect(page.getByLabel('Time', { exact: true })).toHaveValue('');
});

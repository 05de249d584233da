/**
 * A photo as a phone's camera writes it (lying on its side, with the place in it) becomes upright, small
 * and placeless on the phone, travels when it may, and is seen at the desk beside what it shows.
 */
import { expect, test, type Page } from '@playwright/test';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

/** Big-endian TIFF directory entry: tag, type, count, value (Exif 2.32, section 4.6.2). */
const entry = (tag: number, type: number, count: number, value: number, short = false): Buffer => {
  const bytes = Buffer.alloc(12);
  bytes.writeUInt16BE(tag, 0);
  bytes.writeUInt16BE(type, 2);
  bytes.writeUInt32BE(count, 4);
  if (short) bytes.writeUInt16BE(value, 8);
  else bytes.writeUInt32BE(value, 8);
  return bytes;
};

/** An Exif segment with orientation 6 (turn clockwise) and a GPS latitude. */
const exifSegment = (): Buffer => {
  const gpsAt = 8 + 2 + 2 * 12 + 4;
  const latitudeAt = gpsAt + 2 + 12 + 4;
  const latitude = Buffer.alloc(24);
  [48, 1, 12, 1, 30, 1].forEach((value, at) => latitude.writeUInt32BE(value, 4 * at));
  const two = Buffer.from([0, 2]);
  const end = Buffer.alloc(4);
  const tiff = Buffer.concat([
    Buffer.from('MM\0*\0\0\0\u0008', 'latin1'),
    two,
    entry(0x0112, 3, 1, 6, true),
    entry(0x8825, 4, 1, gpsAt),
    end,
    Buffer.from([0, 1]),
    entry(0x0002, 5, 3, latitudeAt),
    end,
    latitude,
  ]);
  const head = Buffer.from('Exif\0\0', 'latin1');
  const length = Buffer.alloc(2);
  length.writeUInt16BE(2 + head.length + tiff.length);
  return Buffer.concat([Buffer.from([0xff, 0xe1]), length, head, tiff]);
};

/** 3000 × 2000 pixels, left half red, right half blue, as a camera on its side would have it. */
const cameraPhoto = async (page: Page): Promise<Buffer> => {
  const plain = Buffer.from(
    await page.evaluate(async () => {
      const canvas = Object.assign(document.createElement('canvas'), { width: 3000, height: 2000 });
      const context = canvas.getContext('2d') as CanvasRenderingContext2D;
      context.fillStyle = 'red';
      context.fillRect(0, 0, 1500, 2000);
      context.fillStyle = 'blue';
      context.fillRect(1500, 0, 1500, 2000);
      const blob = await new Promise<Blob>((done) =>
        canvas.toBlob((made) => done(made as Blob), 'image/jpeg', 0.9),
      );
      return [...new Uint8Array(await blob.arrayBuffer())];
    }),
  );
  return Buffer.concat([plain.subarray(0, 2), exifSegment(), plain.subarray(2)]);
};

const keptPhotos = (page: Page): Promise<number[][]> =>
  page.evaluate(
    () =>
      new Promise((done) => {
        const opening = indexedDB.open('pairlog');
        opening.onsuccess = () => {
          const asking = opening.result
            .transaction('attachments')
            .objectStore('attachments')
            .getAll();
          asking.onsuccess = () => {
            opening.result.close();
            const rows = asking.result as { bytes: ArrayBuffer }[];
            done(rows.map(({ bytes }) => [...new Uint8Array(bytes)]));
          };
        };
      }),
  );

/** Size, and the colour of the middle of the top and bottom edge, of the picture on the page. */
const seen = (page: Page) =>
  page
    .locator('.photo img')
    .first()
    .evaluate(async (element) => {
      const image = element as HTMLImageElement;
      await image.decode();
      const { naturalWidth: width, naturalHeight: height } = image;
      const canvas = Object.assign(document.createElement('canvas'), { width, height });
      const context = canvas.getContext('2d') as CanvasRenderingContext2D;
      context.drawImage(image, 0, 0);
      const colour = (y: number) => {
        const [red = 0, , blue = 0] = context.getImageData(width / 2, y, 1, 1).data;
        return red > blue ? 'red' : 'blue';
      };
      return { width, height, top: colour(5), bottom: colour(height - 6) };
    });

// Turned clockwise, the left half of the sensor is the top of the picture.
const upright = { width: 1067, height: 1600, top: 'red', bottom: 'blue' };

test('a photo is turned, scaled, freed of its place, sent when allowed, and seen at the desk', async ({
  page,
  browser,
}) => {
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.locator('.figure').waitFor();
  await page.goto(`${hub.url}/settings`);
  await page.getByText('only without a data limit').click();
  await page.goto(hub.url);
  await page.getByRole('link', { name: 'Report damage' }).click();
  await page.getByText('sole peels off').click();
  const photo = await cameraPhoto(page);
  expect(photo.includes('Exif')).toBe(true);
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'sole.jpg', mimeType: 'image/jpeg', buffer: photo });
  await expect(page.locator('.photo img')).toBeVisible();
  expect(await seen(page)).toEqual(upright);
  const [kept] = await keptPhotos(page);
  const bytes = Buffer.from(kept as number[]);
  expect(bytes.includes('Exif')).toBe(false);
  expect(bytes.length).toBeLessThan(400_000);
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Reported.')).toBeVisible();

  // This browser does not say that its network has no limit: the report goes, the photo waits.
  await expect(page.getByText('1 entry is only on this phone')).toBeHidden();
  await page.goto(`${hub.url}/unsent`);
  await expect(page.getByText('1 photo or track waits')).toBeVisible();
  await page.getByRole('button', { name: 'Send now' }).click();
  await expect(page.getByText('Everything is with your group.')).toBeVisible();

  const lead = await (
    await browser.newContext({ viewport: { width: 1280, height: 800 } })
  ).newPage();
  await lead.goto(`${hub.url}/join#${hub.codes.lead}`);
  await lead.getByRole('button', { name: 'Join' }).click();
  await lead.getByRole('link', { name: /Demo trainer/ }).click();
  await lead.getByRole('link', { name: /^Look at pair 637/ }).click();
  await expect(lead.getByText('sole peels off').first()).toBeVisible();
  await lead.locator('.photo img').first().waitFor();
  expect(await seen(lead)).toEqual(upright);
  await lead.context().close();
});

/** What a broken storage might do to a photo. */
const damagePhotos = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise((done) => {
        const opening = indexedDB.open('pairlog');
        opening.onsuccess = () => {
          const tx = opening.result.transaction('attachments', 'readwrite');
          const asking = tx.objectStore('attachments').getAll();
          asking.onsuccess = () => {
            for (const row of asking.result as { bytes: ArrayBuffer }[])
              tx.objectStore('attachments').put({ ...row, bytes: row.bytes.slice(1) });
          };
          tx.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
  );

test('a photo that was damaged on the phone is named with what to do, and can be done without', async ({
  page,
}) => {
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: 'Report damage' }).click();
  await page.getByText('sole peels off').click();
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'sole.jpg', mimeType: 'image/jpeg', buffer: await cameraPhoto(page) });
  await expect(page.locator('.photo img')).toBeVisible();
  await damagePhotos(page);
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Reported.')).toBeVisible();
  await page.goto(`${hub.url}/unsent`);
  await page.getByRole('button', { name: 'Send now' }).click();
  await expect(page.getByText('A photo or track is damaged on this phone')).toBeVisible();
  await expect(page.getByText(/report the damage again with a new photo/)).toBeVisible();
  await expect(page.getByText(/Entry saved/)).toBeVisible();
  await expect(page.getByText('Everything is with your group.')).toBeHidden();
  await page.getByRole('button', { name: 'Do without it' }).click();
  await expect(page.getByText('Everything is with your group.')).toBeVisible();
});

test('a file that is no picture is refused by name, and the form stays', async ({ page }) => {
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: 'Report damage' }).click();
  await page.getByText('plate cracked').click();
  await page.locator('input[type=file]').setInputFiles({
    name: 'notes.jpg',
    mimeType: 'image/jpeg',
    buffer: Buffer.from('not a picture'),
  });
  await expect(page.getByText('notes.jpg cannot be read here.')).toBeVisible();
  await expect(page.getByRole('radio', { name: 'plate cracked' })).toBeChecked();
});

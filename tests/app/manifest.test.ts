/** The app manifest: pictures that are there, of the size that they claim and of one shape a form factor, and small. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

interface Picture {
  readonly src: string;
  readonly sizes: string;
  readonly type: string;
  readonly form_factor: 'narrow' | 'wide';
  readonly label: string;
}

const folder = new URL('../../app/public/', import.meta.url);
const { screenshots } = JSON.parse(
  readFileSync(new URL('manifest.webmanifest', folder), 'utf8'),
) as { readonly screenshots: readonly Picture[] };

/** Width and height stand in the first chunk (PNG, ISO/IEC 15948). */
const sizeOf = (png: Buffer): string => `${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`;

describe('the pictures of the install dialog', () => {
  it.each(screenshots)('$src is what the manifest says', ({ src, sizes, type, form_factor }) => {
    const png = readFileSync(new URL(src.slice(1), folder));
    expect(type).toBe('image/png');
    expect(sizeOf(png)).toBe(sizes);
    const [width = 0, height = 0] = sizes.split('x').map(Number);
    // As Chromium takes them: 320 to 3840, the longer side at most 2.3 times the shorter.
    for (const side of [width, height]) {
      expect(side).toBeGreaterThanOrEqual(320);
      expect(side).toBeLessThanOrEqual(3840);
    }
    expect(Math.max(width, height) / Math.min(width, height)).toBeLessThanOrEqual(2.3);
    expect(width < height).toBe(form_factor === 'narrow');
    expect(png.length).toBeLessThan(250_000);
  });

  it('show both phone and desk, those of one form factor in one size, each with words of its own', () => {
    const sizes = (factor: Picture['form_factor']) =>
      new Set(
        screenshots.flatMap(({ form_factor, sizes: own }) => (form_factor === factor ? [own] : [])),
      );
    expect(sizes('narrow').size).toBe(1);
    expect(sizes('wide').size).toBe(1);
    expect(new Set(screenshots.map(({ label }) => label)).size).toBe(screenshots.length);
  });
});

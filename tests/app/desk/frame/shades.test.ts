/** What is shaded is seen: bars and bands stand out from their ground, and the marks on them from the bars, in both themes. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

type Rgb = readonly [number, number, number];

const coloursOf = (block: string): readonly (readonly [string, Rgb])[] =>
  [...block.matchAll(/--([\w-]+): #([0-9a-f]{6});/g)].map(([, name = '', hex = '']) => [
    name,
    [0, 2, 4].map((at) => parseInt(hex.slice(at, at + 2), 16)) as unknown as Rgb,
  ]);

/** The colours of each theme: in every file the light ones, those of a dark device, those of a dark choice. */
const themes = ['light', 'dark by the device', 'dark by choice'].map((theme, at) => {
  const colours = ['parts/tokens.css', 'desk/frame/shades.css'].flatMap((file) => {
    const css = readFileSync(new URL(`../../../../app/${file}`, import.meta.url), 'utf8');
    const block = css.split(/(?=@media screen)/)[at] ?? '';
    return coloursOf(block.split(":root[data-theme='light'] {")[0] ?? '');
  });
  return [theme, new Map(colours)] as const;
});

/** Relative luminance and contrast as in WCAG 2.2. */
const luminance = (colour: Rgb): number => {
  const [r = 0, g = 0, b = 0] = colour
    .map((value) => value / 255)
    .map((value) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a: Rgb, b: Rgb): number => {
  const [low = 0, high = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high + 0.05) / (low + 0.05);
};
const laidOver = (over: Rgb, ground: Rgb, opacity: number): Rgb =>
  over.map((value, at) => opacity * value + (1 - opacity) * (ground[at] ?? 0)) as unknown as Rgb;

describe.each(themes)('in %s', (name, colours) => {
  const of = (token: string): Rgb => {
    const colour = colours.get(token);
    if (!colour) throw new Error(`${name} has no --${token}`);
    return colour;
  };
  const faintest = name === 'light' ? 1.25 : 1.8;

  it('a bar of a hand-out is seen on paper, and its marks on the bar', () => {
    expect(contrast(of('hand'), of('paper'))).toBeGreaterThanOrEqual(faintest);
    for (const mark of ['ink', 'accent', 'danger'])
      expect(contrast(of(mark), of('hand')), mark).toBeGreaterThanOrEqual(3);
  });

  it('a band of a curve is seen on paper and on a sheet, and the curve on the band', () => {
    for (const ground of ['paper', 'sheet']) {
      const band = laidOver(of('band'), of(ground), 0.45);
      expect(contrast(band, of(ground)), ground).toBeGreaterThanOrEqual(faintest);
      expect(contrast(of('ink'), band)).toBeGreaterThanOrEqual(4.5);
    }
  });
});

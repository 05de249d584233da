/**
 * A printed page as a picture: how full it is, whether anything runs into its margins, and whether a heading stands alone
 * at its foot. Headings are printed in a colour that nothing else has, so that no guess from their words is needed.
 */
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Page } from '@playwright/test';
import { programs } from './programs.ts';

const DPI = 36;
/** Heights of the margin with the running head and of the one with the page number, mm (`report.css`). */
const HEAD_MM = 12;
const FOOT_MM = 14;
/** Free at either side, mm. */
const SIDE_MM = 9;
/** Words of one heading stand closer than this, mm; columns do not. */
const GAP_MM = 4;
const px = (mm: number) => Math.round((mm / 25.4) * DPI);

/** What heads something: headings, a line that leads to a list, the head of a table. */
const HEADS = '.report :is(h1, h2, h3, h4, thead, p:has(+ ul))';

/** Prints what heads something in magenta from now on; colours move nothing. */
export const colourHeads = (page: Page): Promise<void> =>
  page.evaluate((heads) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(
      `${heads}, ${heads} * { border-color: #f0f !important; color: #f0f !important; }`,
    );
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  }, HEADS);

interface Picture {
  readonly width: number;
  readonly height: number;
  readonly isInk: (x: number, y: number) => boolean;
  readonly isHead: (x: number, y: number) => boolean;
}

const pictureOf = (file: string): Picture => {
  const bytes = readFileSync(file);
  const [head = '', w = '', h = ''] =
    /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1')) ?? [];
  const [width, height] = [Number(w), Number(h)];
  const at = (x: number, y: number, channel: number) =>
    bytes[head.length + 3 * (y * width + x) + channel] ?? 255;
  return {
    ...{ width, height },
    isInk: (x, y) => [0, 1, 2].some((channel) => at(x, y, channel) < 200),
    isHead: (x, y) => Math.min(at(x, y, 0), at(x, y, 2)) - at(x, y, 1) > 60,
  };
};

/** Stretches of a row with heading ink, each as its first and last column. */
const headsIn = ({ width, isHead }: Picture, y: number): readonly (readonly [number, number])[] => {
  const found: [number, number][] = [];
  for (let x = 0; x < width; x++)
    if (isHead(x, y)) {
      const last = found.at(-1);
      if (last && x - last[1] <= px(GAP_MM)) last[1] = x;
      else found.push([x, x]);
    }
  return found;
};

/** Whether something heads nothing: below it, as wide as it is, the page has no other ink. */
const endsWithHead = (picture: Picture): boolean => {
  const { width, height, isInk, isHead } = picture;
  const end = height - px(FOOT_MM);
  const lowest = Array.from({ length: width }, (_, x) => {
    for (let y = end - 1; y >= 0; y--) if (isInk(x, y) && !isHead(x, y)) return y;
    return -1;
  });
  for (let y = end - 1; y >= px(HEAD_MM); y--)
    for (const [from, to] of headsIn(picture, y))
      if (Math.max(...lowest.slice(from, to + 1)) <= y) return true;
  return false;
};

export interface PrintedPage {
  /** How far down its body has ink, 0 to 1. */
  readonly full: number;
  readonly runsIntoMargin: boolean;
  readonly endsWithHead: boolean;
}

const measure = (file: string): PrintedPage => {
  const picture = pictureOf(file);
  const { width, height, isInk } = picture;
  const end = height - px(FOOT_MM);
  const columns = Array.from({ length: width }, (_, x) => x);
  const side = px(SIDE_MM);
  let lowest = -1;
  let runsIntoMargin = false;
  for (let y = 0; y < end; y++)
    for (const x of columns)
      if (isInk(x, y)) {
        lowest = y;
        if (x < side || x >= width - side) runsIntoMargin = true;
      }
  return {
    full: (lowest - px(HEAD_MM)) / (end - px(HEAD_MM)),
    runsIntoMargin,
    endsWithHead: endsWithHead(picture),
  };
};

/**
 * Every page of a PDF.
 * @param pdf whose name ends in .pdf; the pictures lie beside it
 */
export const pagesOf = (pdf: string): readonly PrintedPage[] => {
  const pdftoppm = join(dirname(programs.pdftotext as string), 'pdftoppm');
  const name = pdf.replace(/\.pdf$/, '-page');
  execFileSync(pdftoppm, ['-r', String(DPI), pdf, name]);
  return readdirSync(dirname(pdf))
    .map((file) => join(dirname(pdf), file))
    .filter((file) => file.startsWith(name))
    .sort()
    .map(measure);
};

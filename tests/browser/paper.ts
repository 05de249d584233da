/**
 * A printed page as a picture: how full it is, whether it is blank, whether anything runs into its margins, whether a heading
 * or the first row of a table stands alone at its foot, or its last rows or a note alone at its head. What must not stand
 * alone is printed in colours that nothing else has, so that no guess from its words is needed.
 */
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Page } from '@playwright/test';
import { programs } from './programs.ts';

const DPI = 50;
/** Heights of the margin with the running head and of the one with the page number, mm (`report.css`). */
const HEAD_MM = 12;
const FOOT_MM = 14;
/** The running head ends above this, in two languages as well; thin letters of another colour may look like it below. */
const RUNNING_MM = 28;
/** Free at either side, mm. */
const SIDE_MM = 9;
/** Words of one heading stand closer than this, mm; columns do not. */
const GAP_MM = 4;
/** Lines of one heading, and a heading and the rule below it, stand closer than this, mm. */
const LINE_MM = 3;
/** Narrower than a letter: the end of a rule, of other dots than the rest. */
const LEAST_MM = 2;
/** From this on a channel is paper: thin letters are grey at so few dots. */
const PAPER = 235;
const px = (mm: number) => Math.round((mm / 25.4) * DPI);

/** What heads something: headings, a line that leads to a list; and the head of a table, which is printed on each of its pages. */
const HEADS = '.report :is(h1, h2, h3, h4, p:has(+ ul))';
const TABLE_HEADS = '.report thead';

/** What must not begin a page: one or two last rows of a longer table, and a note on what stands above it. */
const TAILS =
  '.report :is(table:not(.moves) tbody tr:nth-last-child(-n + 2):not(:first-child), .key, .legend)';

/** The first row of a table; of one that has three or more it must not end a page. */
const FIRST_ROWS = '.report table tbody tr:first-child';
const FIRST_OF_MORE = `${FIRST_ROWS}:not(:nth-last-child(-n + 2))`;

const COLOURS = [
  [HEADS, '#f0f'],
  [TAILS, '#0a0'],
  [TABLE_HEADS, '#f08'],
  [FIRST_ROWS, '#08f'],
  [FIRST_OF_MORE, '#00f'],
  ['.report .running', '#0ff'],
] as const;

/** Prints each of these in a colour of its own from now on, in trees of their own as well; colours move nothing. */
export const colourParts = (page: Page): Promise<void> =>
  page.evaluate((colours) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(
      colours
        .map(
          ([what, colour]) =>
            `${what}, ${what} * { border-color: ${colour} !important; color: ${colour} !important; }`,
        )
        .join('\n'),
    );
    const trees = [...document.querySelectorAll('*')].flatMap(({ shadowRoot }) => shadowRoot ?? []);
    for (const tree of [document, ...trees])
      tree.adoptedStyleSheets = [...tree.adoptedStyleSheets, sheet];
  }, COLOURS);

interface Picture {
  readonly width: number;
  readonly height: number;
  readonly isInk: (x: number, y: number) => boolean;
  readonly isStrong: (x: number, y: number) => boolean;
  readonly isHead: (x: number, y: number) => boolean;
  readonly isTail: (x: number, y: number) => boolean;
  readonly isTableHead: (x: number, y: number) => boolean;
  readonly isFirstRow: (x: number, y: number) => boolean;
  /** The same of a table with three rows or more. */
  readonly isFirstOfMore: (x: number, y: number) => boolean;
  /** The line that stands on every page. */
  readonly isRunning: (x: number, y: number) => boolean;
}

const [INK, HEAD, TABLE_HEAD, TAIL, FIRST_ROW, FIRST_OF_MORE_ROWS, RUNNING, STRONG] = [
  1, 2, 4, 8, 16, 32, 64, 128,
] as const;

/** Fainter ink may be the edge of a coloured letter whose colour cannot be told any more. */
const STRONG_INK = 180;
/** From this difference on a colour is no grey. */
const HUE = 15;

/** What a point of this colour is, by the colours above. */
const kindOf = (r: number, g: number, b: number): number => {
  const least = Math.min(r, g, b);
  let kind = (least < PAPER ? INK : 0) | (least < STRONG_INK ? STRONG : 0);
  if (Math.min(r, b) - g > HUE) kind |= HEAD | (r - b > HUE ? TABLE_HEAD : 0);
  else if (g - Math.max(r, b) > HUE) kind |= TAIL;
  else if (b - Math.max(r, g) > HUE) kind |= FIRST_ROW | (g - r > HUE ? 0 : FIRST_OF_MORE_ROWS);
  // Faint ink of the first rows has this hue too.
  else if (Math.min(g, b) - r > 3 * HUE) kind |= RUNNING;
  return kind;
};

const pictureOf = (file: string): Picture => {
  const bytes = readFileSync(file);
  const [head = '', w = '', h = ''] =
    /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1')) ?? [];
  const [width, height] = [Number(w), Number(h)];
  // Each point once: the rules look at it many times.
  const kinds = new Uint8Array(width * height);
  for (let at = 0, from = head.length; at < kinds.length; at++, from += 3)
    kinds[at] = kindOf(bytes[from] ?? 255, bytes[from + 1] ?? 255, bytes[from + 2] ?? 255);
  const is = (kind: number) => (x: number, y: number) =>
    ((kinds[y * width + x] as number) & kind) !== 0;
  return {
    ...{ width, height },
    isInk: is(INK),
    isStrong: is(STRONG),
    isHead: is(HEAD),
    isTableHead: is(TABLE_HEAD),
    isTail: is(TAIL),
    isFirstRow: is(FIRST_ROW),
    isFirstOfMore: is(FIRST_OF_MORE_ROWS),
    isRunning: is(RUNNING),
  };
};

/** Stretches of the line of a heading that ends at this row, each as its first and last column. */
const headsIn = ({ width, isHead }: Picture, y: number): readonly (readonly [number, number])[] => {
  const found: [number, number][] = [];
  // All rows of the line, because the lowest one has only what hangs below it.
  const rows = Array.from({ length: px(LINE_MM) }, (_, at) => y - at);
  for (let x = 0; x < width; x++)
    if (rows.some((row) => isHead(x, row))) {
      const last = found.at(-1);
      if (last && x - last[1] <= px(GAP_MM)) last[1] = x;
      else found.push([x, x]);
    }
  return found.filter(([from, to]) => to - from >= px(LEAST_MM));
};

/** Whether something heads nothing: below it, as wide as it is, the page has no other ink. */
const endsWithHead = (picture: Picture): boolean => {
  const { width, height, isInk, isHead } = picture;
  const end = height - px(FOOT_MM);
  const lowest = Array.from({ length: width }, (_, x) => {
    for (let y = end - 1; y >= 0; y--) if (isInk(x, y) && !isHead(x, y)) return y;
    return -1;
  });
  /** The row of the heading ink that was met last, by column. */
  const below = new Array<number>(width).fill(Infinity);
  const columns = Array.from({ length: width }, (_, x) => x);
  for (let y = end - 1; y >= px(HEAD_MM); y--) {
    const heads = columns.filter((x) => isHead(x, y));
    const isLastLine = heads.some((x) => (below[x] as number) - y > px(LINE_MM));
    for (const [from, to] of isLastLine ? headsIn(picture, y) : [])
      if (
        Math.min(...below.slice(from, to + 1)) - y > px(LINE_MM) &&
        Math.max(...lowest.slice(from, to + 1)) <= y
      )
        return true;
    for (const x of heads) below[x] = y;
  }
  return false;
};

/**
 * Whether it begins with what belongs to the page before: its uppermost line, repeated heads left out, is the end of
 * something, or it is the first row of a table whose words before it stand there.
 */
const beginsWithTail = (picture: Picture, end: number): boolean => {
  const { width, height, isStrong, isHead, isTableHead, isFirstRow, isTail, isRunning } = picture;
  const columns = Array.from({ length: width }, (_, x) => x);
  const rows = Array.from({ length: height }, (_, y) => y);
  const running =
    rows.slice(0, px(RUNNING_MM)).findLast((y) => columns.some((x) => isRunning(x, y))) ??
    px(HEAD_MM);
  // Where two rules cross their ink is of neither colour.
  const body = rows.slice(running + 2, end);
  const lineOf = (isOwn: (x: number, y: number) => boolean) => {
    const top = body.find((y) => columns.some((x) => isOwn(x, y))) ?? end;
    const line = rows.slice(top, top + px(LINE_MM));
    return (of: (x: number, y: number) => boolean) =>
      line.some((y) => columns.some((x) => of(x, y)));
  };
  const [first, words] = [
    lineOf((x, y) => isStrong(x, y) && !isRunning(x, y)),
    lineOf((x, y) => isStrong(x, y) && !isHead(x, y) && !isRunning(x, y)),
  ];
  return words(isTail) || (first(isTableHead) && words(isFirstRow));
};

export interface PrintedPage {
  /** How far down its body has ink, 0 to 1. */
  readonly full: number;
  /** Nothing but the line that stands on every page. */
  readonly isBlank: boolean;
  readonly runsIntoMargin: boolean;
  readonly endsWithHead: boolean;
  /** With the first row of a table that has more. */
  readonly endsWithRow: boolean;
  /** With the last row or two of a table, a note on what stands above it, or a table whose words before it do. */
  readonly beginsWithTail: boolean;
}

const measure = (file: string): PrintedPage => {
  const picture = pictureOf(file);
  const { width, height, isInk, isStrong, isRunning, isFirstOfMore } = picture;
  const end = height - px(FOOT_MM);
  const columns = Array.from({ length: width }, (_, x) => x);
  const side = px(SIDE_MM);
  let lowest = -1;
  let isBlank = true;
  let runsIntoMargin = false;
  for (let y = 0; y < end; y++)
    for (const x of columns)
      if (isInk(x, y)) {
        lowest = y;
        if (isStrong(x, y) && !isRunning(x, y)) isBlank = false;
        if (x < side || x >= width - side) runsIntoMargin = true;
      }
  const lastLine = Array.from({ length: px(LINE_MM) }, (_, n) => lowest - n);
  return {
    full: (lowest - px(HEAD_MM)) / (end - px(HEAD_MM)),
    ...{ isBlank, runsIntoMargin },
    endsWithHead: endsWithHead(picture),
    endsWithRow: lastLine.some((y) => columns.some((x) => isFirstOfMore(x, y))),
    beginsWithTail: beginsWithTail(picture, end),
  };
};

/**
 * Every page of a PDF.
 * @param pdf whose name ends in .pdf; the pictures lie beside it
 */
export const pagesOf = (pdf: string): readonly PrintedPage[] => {
  const pdftoppm = join(dirname(programs.pdftotext as string), 'pdftoppm');
  const name = pdf.replace(/\.pdf$/, '-page');
  const pictures = () =>
    readdirSync(dirname(pdf))
      .map((file) => join(dirname(pdf), file))
      .filter((file) => file.startsWith(name));
  // Of a print before with more pages.
  for (const old of pictures()) rmSync(old);
  execFileSync(pdftoppm, ['-r', String(DPI), pdf, name]);
  return pictures().sort().map(measure);
};

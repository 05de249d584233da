/**
 * Reports of the demo as paper: no page but the last is under half full, nothing is cut at the side, the head stands on
 * every page. A part of all combinations each time; `npm run pages` prints every one and says how many pages each has.
 */
import { expect, test } from '@playwright/test';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { programs } from './programs.ts';

const ROUNDS = ['1', '2', '3'];
const SHEETS = ['whole', 'last', 'upper', 'materials', 'foam', 'tooling'];
const LANGUAGES = ['en', 'zh', 'en+zh'];
const PAPERS = ['A4', 'Letter'] as const;
const DPI = 24;
/** Height of the page number's margin at the foot, mm (`report.css`). */
const FOOT_MM = 14;
const HEAD_MM = 12;

interface Print {
  readonly what: string;
  readonly paper: (typeof PAPERS)[number];
}

const all: readonly Print[] = ROUNDS.flatMap((round) =>
  SHEETS.flatMap((sheet) =>
    LANGUAGES.flatMap((language) =>
      PAPERS.map((paper) => ({ what: `${round}/${sheet}/${language}`, paper })),
    ),
  ),
);
/** Every round whole in both languages on A4, and every thirteenth of all. */
const some = all.filter(
  ({ what, paper }, at) => (what.endsWith('whole/en+zh') && paper === 'A4') || at % 13 === 0,
);
const prints = process.env['PAIRLOG_PAGES'] === 'all' ? all : some;

/** Rows of a grey picture from the top, each with whether it has ink, and the ink nearest to either side. */
const read = (file: string) => {
  const bytes = readFileSync(file);
  const [head = '', w = '', h = ''] =
    /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1')) ?? [];
  const [width, height] = [Number(w), Number(h)];
  const inked = (x: number, y: number) => (bytes[head.length + y * width + x] ?? 255) < 200;
  const rows = Array.from({ length: height }, (_, y) =>
    Array.from({ length: width }, (__, x) => inked(x, y)),
  );
  return { width, height, rows };
};

test('no page of a report but the last is under half full, and none is cut', async ({ page }) => {
  test.skip(!programs.pdftotext, 'needs poppler');
  const pdftoppm = join(dirname(programs.pdftotext as string), 'pdftoppm');
  const folder = mkdtempSync(join(tmpdir(), 'pairlog-pages-'));
  // One list, because an expectation for each of many thousand rows takes minutes.
  const wrong: string[] = [];
  const px = (mm: number) => Math.round((mm / 25.4) * DPI);
  try {
    const wanted = [...new Set(prints.map(({ what }) => what))];
    execFileSync('node', ['--import', 'tsx', 'tests/browser/report-files.ts', folder, ...wanted]);
    for (const { what, paper } of prints) {
      const name = what.replaceAll('/', '-');
      await page.goto(`file://${join(folder, `${name}.html`)}`);
      const pdf = join(folder, `${name}-${paper}.pdf`);
      await page.pdf({ path: pdf, format: paper });
      const pages = join(folder, `${name}-${paper}-page`);
      execFileSync(pdftoppm, ['-gray', '-r', String(DPI), pdf, pages]);
      const files = readdirSync(folder)
        .filter((one) => one.startsWith(`${name}-${paper}-page`))
        .sort();
      if (prints === all) console.log(`${what} on ${paper}: ${files.length} pages`);
      for (const [at, file] of files.entries()) {
        const where = `${what} on ${paper}, page ${at + 1} of ${files.length}`;
        const { width, height, rows } = read(join(folder, file));
        const body = rows.slice(0, height - px(FOOT_MM));
        const lowest = body.findLastIndex((row) => row.includes(true));
        const full = (lowest - px(HEAD_MM)) / (body.length - px(HEAD_MM));
        if (at < files.length - 1 && full <= 0.5)
          wrong.push(`${where} is ${Math.round(100 * full)} % full`);
        // The margins at both sides stay free: what runs into them is cut.
        const side = px(9);
        if (body.some((row) => [...row.slice(0, side), ...row.slice(width - side)].includes(true)))
          wrong.push(`${where} runs into a margin`);
      }
      const text = execFileSync(programs.pdftotext as string, [pdf, '-'], { encoding: 'utf8' });
      const mark = what.endsWith('/zh') ? '保密' : 'Confidential';
      const heads = text.split(mark).length - 1;
      if (heads < files.length)
        wrong.push(`${what} on ${paper}: a head on ${heads} pages of ${files.length}`);
    }
    expect(wrong).toEqual([]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

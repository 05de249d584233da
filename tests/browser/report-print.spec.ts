/**
 * Reports of the demo as paper: no page but the last is under half full, nothing is cut at the side, no heading stands alone
 * at a page's foot, the head stands on every page. A part of all combinations each time; `npm run pages` prints every one and says how many pages each has.
 */
import { expect, test } from '@playwright/test';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { colourHeads, pagesOf } from './paper.ts';
import { programs } from './programs.ts';

const ROUNDS = ['1', '2', '3'];
const SHEETS = ['whole', 'last', 'upper', 'materials', 'foam', 'tooling'];
const LANGUAGES = ['en', 'zh', 'en+zh'];
const PAPERS = ['A4', 'Letter'] as const;

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

test('no page of a report but the last is under half full, none is cut, none ends with a heading', async ({
  page,
}) => {
  test.skip(!programs.pdftotext, 'needs poppler');
  const folder = mkdtempSync(join(tmpdir(), 'pairlog-pages-'));
  // One list, because an expectation for each of many pages takes minutes.
  const wrong: string[] = [];
  try {
    const wanted = [...new Set(prints.map(({ what }) => what))];
    execFileSync('node', ['--import', 'tsx', 'tests/browser/report-files.ts', folder, ...wanted]);
    for (const { what, paper } of prints) {
      const name = what.replaceAll('/', '-');
      await page.goto(`file://${join(folder, `${name}.html`)}`);
      await colourHeads(page);
      const pdf = join(folder, `${name}-${paper}.pdf`);
      await page.pdf({ path: pdf, format: paper });
      const pages = pagesOf(pdf);
      if (prints === all) console.log(`${what} on ${paper}: ${pages.length} pages`);
      for (const [at, { full, runsIntoMargin, endsWithHead }] of pages.entries()) {
        const where = `${what} on ${paper}, page ${at + 1} of ${pages.length}`;
        if (at < pages.length - 1 && full <= 0.5)
          wrong.push(`${where} is ${Math.round(100 * full)} % full`);
        if (runsIntoMargin) wrong.push(`${where} runs into a margin`);
        if (endsWithHead) wrong.push(`${where} ends with a heading`);
      }
      const text = execFileSync(programs.pdftotext as string, [pdf, '-'], { encoding: 'utf8' });
      const mark = what.endsWith('/zh') ? '保密' : 'Confidential';
      const heads = text.split(mark).length - 1;
      if (heads < pages.length)
        wrong.push(`${what} on ${paper}: a head on ${heads} pages of ${pages.length}`);
    }
    expect(wrong).toEqual([]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('a heading alone at the foot of a page is seen, and one with a word below it is none', async ({
  page,
}) => {
  test.skip(!programs.pdftotext, 'needs poppler');
  const folder = mkdtempSync(join(tmpdir(), 'pairlog-pages-'));
  const column = (heading: string, text: string) => `<div><h3>${heading}</h3>${text}</div>`;
  const printed = async (left: string, right: string) => {
    await page.setContent(
      `<div class="report" style="display:grid;grid-template-columns:1fr 1fr">${left}${right}</div>`,
    );
    await colourHeads(page);
    const pdf = join(folder, 'page.pdf');
    await page.pdf({ path: pdf, format: 'A4', margin: { left: '14mm', top: '14mm' } });
    return pagesOf(pdf).map(({ endsWithHead }) => endsWithHead);
  };
  try {
    expect(await printed(column('有改善', '<p>x</p>'), column('Better', '<p>x</p>'))).toEqual([
      false,
    ]);
    // What stands below it in the other column heads nothing here.
    expect(await printed(column('有改善', ''), column('Better', '<p>x<p>x'))).toEqual([true]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

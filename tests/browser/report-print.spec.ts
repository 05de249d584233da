/**
 * Reports as paper: no page but the last is under half full, none is blank, nothing is cut at the side, no heading and no
 * first row stands alone at a page's foot, no last row and no note at its head, the running head stands on every page. Of the demo a
 * part of all combinations each time; `npm run pages` prints every one and says how many pages each has, and with
 * `PAIRLOG_PAGES_IN=FOLDER` the PDFs stay there. Of a test that has just begun, and of one that has not, the whole report
 * in all languages, from its file and from the desk.
 */
import { expect, test, type Page } from '@playwright/test';
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PROJECT } from '../core/review/log-for-tests.ts';
import { smallBundle } from '../small-log.ts';
import { startHubProcess } from './hub-process.ts';
import { colourParts, pagesOf } from './paper.ts';
import { programs } from './programs.ts';

const ROUNDS = ['1', '2', '3'];
const SHEETS = ['whole', 'last', 'upper', 'materials', 'foam', 'tooling'];
const LANGUAGES = ['en', 'zh', 'en+zh'];
const PAPERS = ['A4', 'Letter'] as const;

interface Print {
  readonly what: string;
  readonly paper: (typeof PAPERS)[number];
}

const printsOf = (logs: readonly string[], sheets: readonly string[]): readonly Print[] =>
  logs.flatMap((log) =>
    sheets.flatMap((sheet) =>
      LANGUAGES.flatMap((language) =>
        PAPERS.map((paper) => ({ what: `${log}/${sheet}/${language}`, paper })),
      ),
    ),
  );

const all = printsOf(ROUNDS, SHEETS);
/** Every round whole in both languages on A4, and every thirteenth of all. */
const some = all.filter(
  ({ what, paper }, at) => (what.endsWith('whole/en+zh') && paper === 'A4') || at % 13 === 0,
);
const prints = process.env['PAIRLOG_PAGES'] === 'all' ? all : some;

let folder: string;
test.beforeEach(() => {
  test.skip(!programs.pdftotext, 'needs poppler');
  folder = mkdtempSync(join(tmpdir(), 'pairlog-pages-'));
});
test.afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** Prints what the page shows. @returns what is wrong on its pages, and how many they are */
const printed = async (page: Page, { what, paper }: Print, pdf: string) => {
  await colourParts(page);
  await page.pdf({ path: pdf, format: paper });
  const pages = pagesOf(pdf);
  const wrong: string[] = [];
  for (const [at, one] of pages.entries()) {
    const where = `${what} on ${paper}, page ${at + 1} of ${pages.length}`;
    if (at < pages.length - 1 && one.full <= 0.5)
      wrong.push(`${where} is ${Math.round(100 * one.full)} % full`);
    if (one.isBlank) wrong.push(`${where} is blank`);
    if (one.runsIntoMargin) wrong.push(`${where} runs into a margin`);
    if (one.endsWithHead) wrong.push(`${where} ends with a heading`);
    if (one.endsWithRow) wrong.push(`${where} ends with the first row of a table`);
    if (one.beginsWithTail) wrong.push(`${where} begins with the end of something`);
  }
  const text = execFileSync(programs.pdftotext as string, [pdf, '-'], { encoding: 'utf8' });
  const mark = what.endsWith('/zh') ? '保密' : 'Confidential';
  const heads = text.split(mark).length - 1;
  if (heads < pages.length)
    wrong.push(`${what} on ${paper}: a head on ${heads} pages of ${pages.length}`);
  return { wrong, pages: pages.length };
};

/** Prints the files of these. One list, because an expectation for each of many pages takes minutes. */
const printFiles = async (page: Page, some: readonly Print[]) => {
  const wanted = [...new Set(some.map(({ what }) => what))];
  execFileSync('node', ['--import', 'tsx', 'tests/browser/report-files.ts', folder, ...wanted]);
  const kept = process.env['PAIRLOG_PAGES_IN'];
  if (kept !== undefined) mkdirSync(kept, { recursive: true });
  const wrong: string[] = [];
  const counts = new Map<string, number>();
  for (const one of some) {
    const name = one.what.replaceAll('/', '-');
    await page.goto(`file://${join(folder, `${name}.html`)}`);
    // As it is printed, before anything is coloured.
    if (kept !== undefined)
      await page.pdf({ path: join(kept, `${name}-${one.paper}.pdf`), format: one.paper });
    const found = await printed(page, one, join(folder, `${name}-${one.paper}.pdf`));
    wrong.push(...found.wrong);
    counts.set(`${one.what} on ${one.paper}`, found.pages);
  }
  return { wrong, counts };
};

test('no page of a report but the last is under half full, nothing is cut or stands alone', async ({
  page,
}) => {
  if (prints === all) test.setTimeout(3_600_000);
  const { wrong, counts } = await printFiles(page, prints);
  if (prints === all) for (const [what, pages] of counts) console.log(`${what}: ${pages} pages`);
  expect(wrong).toEqual([]);
});

for (const log of ['small', 'empty'] as const)
  test(`the same of a test with ${log === 'small' ? 'two runs' : 'no run at all'}, from its file and from the desk`, async ({
    page,
  }) => {
    const own = printsOf([log], ['whole']);
    const { wrong, counts } = await printFiles(page, own);
    const bundle = join(folder, 'small.pairlog');
    writeFileSync(bundle, smallBundle(log, Date.now()));
    const hub = await startHubProcess('--demo', bundle);
    try {
      await page.goto(`${hub.url}/join#${hub.codes.lead}`);
      await page.getByRole('button', { name: 'Join' }).click();
      await page
        .getByRole('link', { name: /^Test\b/ })
        .first()
        .waitFor();
      const project = `${hub.url}/desk/${PROJECT}`;
      for (const one of own) {
        const [, , language] = one.what.split('/') as [string, string, string];
        await page.goto(`${project}/report?languages=${encodeURIComponent(language)}`);
        await page.locator('.report .appendix').waitFor();
        const onDesk = { ...one, what: `desk/${one.what}` };
        const pdf = join(folder, `desk-${language}-${one.paper}.pdf`);
        const found = await printed(page, onDesk, pdf);
        wrong.push(...found.wrong);
        const inFile = counts.get(`${one.what} on ${one.paper}`);
        if (found.pages !== inFile)
          wrong.push(`${onDesk.what} on ${one.paper}: ${found.pages} pages, ${inFile} in its file`);
      }
    } finally {
      await hub.stop();
    }
    expect(wrong).toEqual([]);
  });

test('what stands alone at the edge of a page is seen, and what has something beside it is not', async ({
  page,
}) => {
  const column = (heading: string, text: string) => `<div><h3>${heading}</h3>${text}</div>`;
  const print = async (body: string) => {
    await page.setContent(`<div class="report">${body}</div>`);
    await colourParts(page);
    const pdf = join(folder, 'page.pdf');
    await page.pdf({ path: pdf, format: 'A4', margin: { left: '14mm', top: '14mm' } });
    return pagesOf(pdf);
  };
  const heads = async (left: string, right: string) =>
    (
      await print(`<div style="display:grid;grid-template-columns:1fr 1fr">${left}${right}</div>`)
    ).map(({ endsWithHead }) => endsWithHead);
  expect(await heads(column('有改善', '<p>x</p>'), column('Better', '<p>x</p>'))).toEqual([false]);
  // What stands below it in the other column heads nothing here.
  expect(await heads(column('有改善', ''), column('Better', '<p>x<p>x'))).toEqual([true]);

  const rows = (from: number, to: number) =>
    Array.from(
      { length: 4 },
      (_, at) =>
        `<tr ${at + 1 === from ? 'style="break-before:page"' : ''}><td>${at < to ? 'row' : ''}</td></tr>`,
    ).join('');
  const table = (from: number) =>
    `<table><thead><tr><th>head</th></tr></thead><tbody>${rows(from, 4)}</tbody></table>`;
  const [first, second] = await print(table(4));
  expect([first?.endsWithRow, second?.beginsWithTail]).toEqual([false, true]);
  const [alone, rest] = await print(table(2));
  expect([alone?.endsWithRow, rest?.beginsWithTail]).toEqual([true, false]);
  // A table of one row: with its heading above it, and with the heading on the page before.
  const parted = async (heading: string, table: string) =>
    (
      await print(
        `<p>text</p><h3 style="break-after:auto;${heading}">x</h3><table style="${table}"><thead><tr><th>head</th></tr></thead><tbody><tr><td>x</td></tr></tbody></table>`,
      )
    ).map((one) => one.beginsWithTail);
  const turn = 'break-before:page';
  expect(await parted(turn, '')).toEqual([false, false]);
  expect(await parted('', turn)).toEqual([false, true]);
  const noted = await print(
    '<div class="running">head</div><p>text</p><p class="key" style="break-before:page">note</p>',
  );
  expect(noted.map((one) => one.beginsWithTail)).toEqual([false, true]);
  const blank = await print('<div class="running">head</div>');
  expect(blank.map(({ isBlank }) => isBlank)).toEqual([true]);
});

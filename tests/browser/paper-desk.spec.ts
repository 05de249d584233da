/** On paper: the sheet, the verdict and a zone are one landscape page each, in both languages, with whole words. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { chooseLanguage } from './device.ts';
import { goTo, joinLead, openPlace } from './every-place.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { programs } from './programs.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const PRINTED = ['', '/verdict', '/shoe/zones/right/U3', '/shoe/zones/left/U8'] as const;

/** Size of each page of a PDF, in points. */
const pagesOf = (pdf: Buffer): readonly (readonly [width: number, height: number])[] => {
  const text = pdf.toString('latin1');
  const boxes = [...text.matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/g)];
  expect(text.match(/\/Type\s*\/Page\b/g)).toHaveLength(boxes.length);
  return boxes.map(([, width, height]) => [Number(width), Number(height)]);
};

/** The words of a PDF, each as it stands on its line. */
const wordsOf = (pdf: Buffer): ReadonlySet<string> => {
  const folder = mkdtempSync(join(tmpdir(), 'pairlog-print-'));
  try {
    const file = join(folder, 'page.pdf');
    writeFileSync(file, pdf);
    const text = execFileSync(programs.pdftotext as string, [file, '-'], { encoding: 'utf8' });
    return new Set(text.match(/[a-z]{2,}/gi) ?? []);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

/** All words of the page, those that only paper shows too. */
const shownWords = async (page: Page): Promise<ReadonlySet<string>> =>
  // Not the body's textContent: it joins the words of neighbouring elements.
  new Set(
    await page.evaluate(() => {
      const nodes = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      const words: string[] = [];
      while (nodes.nextNode())
        words.push(...(nodes.currentNode.textContent?.match(/[a-z]{2,}/gi) ?? []));
      return words;
    }),
  );

/** Words on paper that no text of the place has: halves of broken ones. */
const broken = (paper: ReadonlySet<string>, shown: ReadonlySet<string>): readonly string[] => {
  const whole = [...shown];
  return [...paper].filter(
    (word) => !shown.has(word) && whole.some((one) => one.startsWith(word) || one.endsWith(word)),
  );
};

for (const language of ['English', '简体中文'] as const)
  test(`sheet, verdict and zone are printed on one landscape page each: ${language}`, async ({
    page,
  }) => {
    const project = await joinLead(page, hub);
    await page.goto(`${hub.url}/settings`);
    await chooseLanguage(page, language);
    await openPlace(page, hub.url + project);
    for (const place of PRINTED) {
      if (place !== '') await goTo(page, project + place);
      const pages = pagesOf(await page.pdf({ format: 'A4', preferCSSPageSize: true }));
      expect(pages, place).toHaveLength(1);
      for (const [width, height] of pages) expect(width, place).toBeGreaterThan(height);
      if (!programs.pdftotext || language !== 'English') continue;
      for (const landscape of [true, false]) {
        const before = await shownWords(page);
        const paper = wordsOf(await page.pdf({ format: 'A4', landscape }));
        // The log comes in while one looks: what changed meanwhile is no broken word.
        const shown = new Set([...before, ...(await shownWords(page))]);
        expect(broken(paper, shown), `${place}, ${landscape ? 'landscape' : 'upright'}`).toEqual(
          [],
        );
      }
    }
  });

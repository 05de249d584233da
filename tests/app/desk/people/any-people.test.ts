/** Whatever the log: both places answer without an exception or a number that is none, and claim no more than is proved. */
import { expect, it } from 'vitest';
import { deskWork } from '../../../../app/desk/worker/desk-work.ts';
import { places as en } from '../../../../app/words/places/en/index.ts';
import { places as zh } from '../../../../app/words/places/zh/index.ts';
import type { Say } from '../../../../app/words/say-names.ts';
import { addRevisions, emptyLog, viewOfHeads } from '../../../../core/records/index.ts';
import { randomLog } from '../../../random-logs.ts';

const LOGS = Number(process.env['PAIRLOG_LOGS'] ?? 15);

const say: Say = {
  round: (id) => id,
  pair: (id) => id,
  tester: (id) => id,
  testers: (ids) => ids.join(', '),
  felt: ({ zone, kind }) => `${kind} ${zone}`,
  distance: (distance) => `${distance} m`,
  number: (value, digits = 1) => value.toFixed(digits),
  date: String,
  list: (names) => names.join(', '),
  upper: (text) => text,
};

const isWhole = (value: unknown): boolean =>
  typeof value === 'number'
    ? Number.isFinite(value)
    : typeof value === 'object' && value !== null
      ? Object.values(value).every(isWhole)
      : true;

it('answers any log, and says no more of a tester than the stamp beside it', async () => {
  const cases = new Set<string>();
  for (let seed = 1; seed <= LOGS; seed++) {
    const { heads, nowMs, project } = randomLog(seed);
    const records = viewOfHeads(
      [...addRevisions(emptyLog, heads).values()].map(({ head }) => head),
    );
    const work = deskWork(
      () => Promise.resolve(heads),
      () => nowMs,
    );
    await work.read();
    for (const desk of [work, work.inTolerance]) {
      const said: string[] = [];
      const list = desk.pairList(project);
      const testers = desk.testerList(project);
      expect(isWhole([list, testers])).toBe(true);
      for (const words of [en, zh]) {
        said.push(words.pairs.headline(list.headline, say));
        said.push(words.testers.headline(testers.headline, say));
      }
      for (const { pair } of list.rows.slice(0, 2)) {
        const { page } = desk.pairPage(project, pair);
        expect(isWhole(page)).toBe(true);
        if (!page) throw new Error('a pair of the list has a page');
        expect(page.headline.claims).toBe('nothing');
        cases.add(page.headline.case);
        for (const words of [en, zh]) said.push(words.pairs.page.headline(page.headline, say));
      }
      for (const { revision } of records.tester.slice(0, 3)) {
        const { page } = desk.testerPage(project, revision.id);
        expect(isWhole(page)).toBe(true);
        if (!page) throw new Error('a tester of the group has a page');
        cases.add(page.headline.case);
        expect(['nothing', page.stamp]).toContain(page.headline.claims);
        for (const words of [en, zh]) said.push(words.testers.page.headline(page.headline, say));
      }
      for (const text of said) expect(text).not.toMatch(/NaN|Infinity|undefined|null|^\s*$/);
    }
  }
  // Else the logs are too tame to prove anything.
  expect(cases.size).toBeGreaterThan(4);
}, 120_000);

/** What a trade's sheet asks first: its limits with what is measured next, why a complaint is only watched; and how figures stand. */
import { renderToStaticMarkup } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { Trade } from '../../../core/foot/index.ts';
import { decisionRows, rowsOfTrade, type DecisionRow } from '../../../core/headlines/index.ts';
import type { Expected, RoundReport, Settle } from '../../../core/review/index.ts';
import { ActsTable } from '../../../app/report/acts-table.tsx';
import {
  besideLimits,
  limitAct,
  limitBy,
  limitRows,
  measureAsked,
  type LimitRow,
} from '../../../app/report/limit-rows.ts';
import { foreignOfAll } from '../../../app/report/own-words.tsx';
import { gridEnd, labelAt, ticksAround } from '../../../app/report/paper-curve.tsx';
import { reasonWords } from '../../../app/report/row-words.ts';
import { spokenIn, type Languages } from '../../../app/report/spoken.tsx';
import { metres } from '../../../core/units/index.ts';
import { languageFile } from '../../../app/terminal/languages.ts';
import { inColumn, written } from '../../../app/words/figures.ts';
import { readDemo } from './demo-report.ts';

const { reports } = readDemo();
const [first, last] = [reports[0] as RoundReport, reports.at(-1) as RoundReport];
const speak = (...ids: readonly string[]): Languages =>
  ids.map((id) => spokenIn(languageFile(id), first.names, 'km', 'UTC')) as unknown as Languages;
const [english] = speak('en');
const [chinese] = speak('zh');
const plain = (text: string | null) => text?.replaceAll('\u00a0', ' ') ?? null;

type Visit = Extract<Settle, { by: 'measure' }>;
const pairs = last.lines.map(({ pair }) => pair);
const visit = (...expected: readonly Expected[]): LimitRow => ({
  limits: [],
  stamp: 'open',
  settle: {
    by: 'measure',
    pair: pairs[0],
    also: pairs.slice(1, expected.length),
    atM: metres(390_000),
    expected: expected[0],
    expectedOfAlso: expected.slice(1),
  } as Visit,
});
const day = (d: number): Expected => ({ when: 'later', atMs: Date.UTC(2026, 11, d) });

describe('the check that the first line asks for', () => {
  it.each([
    [
      [day(11)],
      'Measure pair 435 at 390 km, about 11 Dec 2026.',
      '请在 390 km 时测量样鞋 435，约 2026年12月11日。',
    ],
    [
      [day(13), day(11)],
      'Measure two pairs at 390 km, from about 11 Dec 2026.',
      '请在 390 km 时测量 2 双样鞋，约 2026年12月11日起。',
    ],
    [
      [day(13), { when: 'now' }],
      'Measure two pairs at 390 km, now.',
      '请在 390 km 时测量 2 双样鞋，现在就测。',
    ],
    [[{ when: 'not-run' }], 'Measure pair 435 at 390 km.', '请在 390 km 时测量样鞋 435。'],
  ] as const)('of %j', (expected, en, zh) => {
    expect(plain(measureAsked([visit(...expected)], english))).toBe(en);
    expect(plain(measureAsked([visit(...expected)], chinese))).toBe(zh);
  });
  it('is the soonest; none where nothing is measured', () => {
    const row = visit(day(11));
    const later = { ...row, settle: { ...row.settle, atM: metres(600_000) } as Visit };
    expect(plain(measureAsked([later, row], english))).toContain('at 390 km');
    expect(measureAsked([{ limits: [], settle: null, stamp: 'holds' }], english)).toBeNull();
  });
});

describe('by when a limit is measured', () => {
  it('names pairs by their day, and a single pair by none', () => {
    expect(limitBy(visit(day(11), day(11), day(13)), english)).toEqual([
      '360: about 13 Dec 2026',
      '428 and 435: about 11 Dec 2026',
    ]);
    expect(limitBy(visit(day(11)), english)).toEqual(['about 11 Dec 2026']);
    expect(limitBy(visit(day(11), { when: 'not-run' }), chinese)).toEqual([
      '428：现在没有人穿着跑',
      '435：约 2026年12月11日',
    ]);
  });
  it('is said of a check alone', () => {
    expect(limitBy({ limits: [], settle: { by: 'pairs-differ' }, stamp: 'open' }, english)).toEqual(
      [],
    );
  });
});

describe('what is asked for a limit', () => {
  const pair = pairs[0] as (typeof pairs)[number];
  it.each([
    [
      { by: 'look-at-pair', pair },
      'open',
      'Look at pair 435: it wears unlike the others.',
      '查看样鞋 435：磨损与其他不同。',
    ],
    [
      { by: 'pairs-differ' },
      'open',
      'The pairs differ, so more checks tell little.',
      '各双差异大，再测也难有定论。',
    ],
    [{ by: 'change', felt: [] }, 'fails', 'It fails, so change it.', '不达标，需要修改。'],
    [null, 'holds', 'Keep it as it is.', '保持不变。'],
    [null, 'open', 'Nothing yet: watch it.', '暂不修改，继续留意。'],
  ] as const)('%j, %s', (settle, stamp, en, zh) => {
    expect(limitAct({ limits: [], settle, stamp }, english)).toBe(en);
    expect(limitAct({ limits: [], settle, stamp }, chinese)).toBe(zh);
  });
});

describe('the limits of a trade', () => {
  it('are one row for one visit, and every limited place is told in a row', () => {
    const rows = limitRows({ report: last, trade: 'foam' });
    expect(rows.map(({ limits }) => limits.map(({ item }) => item.limit.measure))).toEqual([
      ['energy-absorbed', 'stack-height'],
    ]);
    expect(limitRows({ report: last, trade: 'upper' })).toEqual([]);
  });
  it('stand once: wear that is only watched is no row beside the check of the same place', () => {
    const rows = rowsOfTrade(decisionRows(first), 'tooling');
    const isWear = ({ callout }: DecisionRow) => callout?.what === 'wear';
    expect(rows.some(isWear)).toBe(true);
    const limits = limitRows({ report: first, trade: 'tooling' });
    expect(besideLimits(rows, limits)).toEqual(rows.filter((row) => !isWear(row)));
    expect(besideLimits(rows, [])).toEqual(rows);
    const acted = rows.map((row) => ({ ...row, act: 'change' as const }));
    expect(besideLimits(acted, limits)).toEqual(acted);
  });
});

describe('the columns of the first table', () => {
  const heads = (report: RoundReport, trade: Trade) => {
    const rows = rowsOfTrade(decisionRows(report), trade);
    const limits = limitRows({ report, trade });
    const html = renderToStaticMarkup(
      <ActsTable languages={speak('en')} rows={rows} off={[]} of={{ report, trade, limits }} />,
    );
    return [...html.matchAll(/<th scope[^>]*>([^<]*)</g)].map(([, head]) => head);
  };
  it('are left out where no row says anything in them', () => {
    expect(heads(last, 'upper')).toEqual(['What is so', 'What to change', 'How sure']);
    expect(heads(last, 'foam')).toEqual(['What is so', 'What to change', 'By', 'How sure']);
    const all = ['What is so', 'What to change', 'How much', 'By', 'How sure'];
    expect(heads(first, 'upper')).toEqual(all);
  });
});

describe('why a complaint is only watched', () => {
  const found = decisionRows(last).find(
    ({ callout }) => callout?.what === 'complaint' && callout.kind === 'rubbing',
  ) as DecisionRow;
  const withRuns = (runs: number): DecisionRow =>
    ({ ...found, callout: { ...found.callout, runs } }) as DecisionRow;
  const proved = {
    ...last,
    story: { ...last.story, felt: last.story?.felt.map((one) => ({ ...one, word: 'worse' })) },
  } as RoundReport;
  const above =
    'More than the brief accepts (7.6 % of runs, accepted 5 %), but too few runs to prove it.';
  const zhAbove = '超过任务书的允许（占跑步的 7.6 %，允许 5 %），但跑步次数太少，还不能证实。';
  it.each([
    [
      'above the share and up',
      found,
      last,
      `${above} Up from 5.5 % in Round 2; that may be chance.`,
      `${zhAbove}高于 Round 2 的 5.5 %，也可能是偶然。`,
    ],
    [
      'up for certain',
      found,
      proved,
      `${above} Up from 5.5 % in Round 2.`,
      `${zhAbove}高于 Round 2 的 5.5 %。`,
    ],
    ['above, no round before', found, { ...last, story: null }, above, zhAbove],
    ['within the share and not up', withRuns(5), last, null, null],
    ['to be changed', { ...found, act: 'change' as const }, last, null, null],
    [
      'of one tester',
      { ...found, callout: { ...found.callout, word: 'recurs-for-one-tester' } } as DecisionRow,
      last,
      null,
      null,
    ],
  ])('%s', (_, row, report, en, zh) => {
    expect(plain(reasonWords(row, report, english))).toBe(en);
    expect(plain(reasonWords(row, report, chinese))).toBe(zh);
  });
});

describe('words that nobody reads', () => {
  it('are told once where all are in one language', () => {
    expect(foreignOfAll(['鞋口磨脚', '后跟滑'], speak('en'))).toBe('zh');
    expect(foreignOfAll(['It rubs.', 'It slips.'], speak('zh'))).toBeNull();
    expect(foreignOfAll(['It rubs.', '后跟滑'], speak('zh'))).toBeUndefined();
    expect(foreignOfAll(['It rubs.'], speak('zh'))).toBeUndefined();
    expect(foreignOfAll(['It rubs.', 'It slips.'], speak('zh', 'en'))).toBeUndefined();
  });
});

describe('figures on paper', () => {
  it('are reckoned with as they are read: halves go up', () => {
    expect(written(35.635, 2)).toBe(35.64);
    expect(written(1234.5, 0)).toBe(1235);
    expect(written(-0.345, 2)).toBe(-0.35);
  });
  it('stand in a column with the same decimals', () => {
    const write = (values: readonly number[]) =>
      values.map((one) => inColumn(values)(one, english.speaker.number));
    expect(write([62, 61.9])).toEqual(['62.0', '61.9']);
    expect(write([285, 275])).toEqual(['285', '275']);
    expect(write([58.04, 58])).toEqual(['58', '58']);
  });
});

describe('the limit on a curve', () => {
  it('never lies on the lower end of the axis', () => {
    expect(ticksAround([34, 36.3], [34])[0]).toBeLessThan(34);
    expect(ticksAround([34.4, 36.3], [])[0]).toBe(34);
    expect(ticksAround([1.49, 2.2], [1.49])[0]).toBe(1.4);
  });
  it('has its words where a line of the grid is farther, and inside the drawing', () => {
    expect(labelAt(50, [106, 60, 10])).toBe(46);
    expect(labelAt(50, [106, 42, 10])).toBe(62);
    expect(labelAt(100, [106, 90, 10])).toBe(96);
  });
  it('has a line of the grid end before its words', () => {
    const label = [{ text: 'limit 34 mm', base: 96 }];
    expect(gridEnd(92, label)).toBeLessThan(gridEnd(60, label));
    expect(gridEnd(60, label)).toBe(330);
  });
});

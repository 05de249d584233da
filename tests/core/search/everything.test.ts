/** The search over everything: the best few of each kind, by code, name, day or words in either language. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { viewOfHeads, type Revision } from '../../../core/records/index.ts';
import { openProject, type ProjectLog } from '../../../core/review/index.ts';
import { searchEverything, type Everything, type FoundOf } from '../../../core/search/index.ts';
import { idOf } from '../records/make.ts';
import * as make from '../review/log-for-tests.ts';
import { own, record } from '../review/log-for-tests.ts';

const [R1, R2, PAIR, OTHER, THIRD, T1, T2] = [
  ...[idOf(2), idOf(3), idOf(10), idOf(11), idOf(12), idOf(20), idOf(21)],
] as const;
const of = { pair: PAIR, tester: T1 };
const at = (day: number, hour = 18) => `2026-05-${String(day).padStart(2, '0')}T${hour}:00:00Z`;
const finding = (id: number, title: string, more: object = {}) =>
  own(idOf(id), 'finding', {
    ...{ round: R1, title, part: 'upper-pattern', priority: 'medium', state: 'open' },
    ...more,
  });
const heads: readonly Revision[] = [
  make.project(),
  make.round(R1, 1, { name: 'Round 1' }),
  make.round(R2, 2, { name: 'Soft collar' }),
  make.pair(PAIR, R1, '637'),
  make.pair(OTHER, R1, '6370'),
  make.pair(THIRD, R2, 'BOX-37'),
  record(T1, 'tester', { code: 'T05', name: 'Ada Kim' }),
  record(T2, 'tester', { code: 'T051' }),
  make.handOut(idOf(30), of, at(1)),
  make.run(idOf(100), of, at(3), { words: 'The tongue slides to the outside.' }),
  make.run(idOf(101), of, at(4), { words: '鞋舌往外滑。' }),
  make.run(idOf(102), of, at(4, 19)),
  own(idOf(111), 'bench-check', {
    ...{ pair: PAIR, at: at(7), operator: 'Shop A' },
    readings: [
      { measure: 'stack-height', site: 'heel-centre', foot: 'left', value: 30, unit: 'mm' },
    ],
  }),
  finding(120, 'The film presses on the little toe'),
  finding(121, 'Heel too soft', { wanted: 'Sew the tongue to the lining' }),
];
const log = openProject(viewOfHeads(heads), make.PROJECT, Date.parse(at(20))) as ProjectLog;
const search = (text: string, more: { most?: number; day?: number } = {}): Everything =>
  searchEverything(log, {
    text,
    most: more.most ?? 4,
    span:
      more.day === undefined
        ? null
        : { fromMs: Date.parse(at(more.day, 10)), untilMs: Date.parse(at(more.day + 1, 10)) },
  });
const codes = (list: Everything['pairs' | 'testers']) => list.rows.map(({ code }) => code);

describe('the search over everything', () => {
  it('finds a pair by its code, the very one first', () => {
    expect(codes(search('637').pairs)).toEqual(['637', '6370']);
    expect(codes(search('37').pairs)).toEqual(['637', '6370', 'BOX-37']);
    expect(codes(search('box').pairs)).toEqual(['BOX-37']);
    expect(search('637').pairs.rows[0]).toEqual({ id: PAIR, code: '637', round: 'Round 1' });
  });

  it('finds a code within what was typed around it, and by full-width figures', () => {
    expect(codes(search('pair 637').pairs)).toEqual(['637']);
    expect(codes(search('样鞋 ６３７').pairs)).toEqual(['637']);
  });

  it('finds a tester by code or name', () => {
    expect(codes(search('t05').testers)).toEqual(['T05', 'T051']);
    expect(codes(search('kim').testers)).toEqual(['T05']);
  });

  it('finds a round by its name, and a finding by title or wish', () => {
    expect(search('collar').rounds.rows).toEqual([{ id: R2, name: 'Soft collar' }]);
    const titles = (text: string) => search(text).findings.rows.map(({ title }) => title);
    expect(titles('pressing')).toEqual(['The film presses on the little toe']);
    expect(titles('tongue')).toEqual(['Heel too soft']);
  });

  it('finds remarks in either language by words of one', () => {
    for (const typed of ['tongue', '鞋舌'])
      expect(search(typed).remarks.rows.map(({ source }) => source)).toEqual([
        idOf(101),
        idOf(100),
      ]);
    expect(search('tongue').remarks.rows[1]).toMatchObject({
      testerCode: 'T05',
      pairCodes: ['637'],
    });
  });

  it('finds runs and checks of a day, the latest first, and the checks of a pair', () => {
    const { runs, checks } = search('4 May', { day: 4 });
    expect(runs.rows.map(({ id }) => id)).toEqual([idOf(102), idOf(101)]);
    expect(runs.rows[0]).toMatchObject({ tester: 'T05', pair: '637', distanceM: 10_000 });
    expect(checks.found).toBe(0);
    expect(search('7 May', { day: 7 }).checks.rows).toHaveLength(1);
    expect(search('637').checks.rows).toHaveLength(1);
    expect(search('shop').checks.rows).toHaveLength(1);
    expect(search('637').runs.found).toBe(0);
  });

  it('gives the best few and says how many there are', () => {
    const { pairs } = search('37', { most: 2 });
    expect([pairs.rows.length, pairs.found]).toEqual([2, 3]);
  });

  it('finds nothing by nothing, and nothing by what is nowhere', () => {
    for (const typed of ['', '   ', 'zebra'])
      for (const { rows, found } of Object.values<FoundOf<unknown>>({ ...search(typed) }))
        expect([rows.length, found]).toEqual([0, 0]);
  });

  it('takes any text, and never gives more than asked (property)', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.integer({ min: 0, max: 5 }), (text, most) => {
        for (const { rows, found } of Object.values<FoundOf<unknown>>({
          ...search(text, { most }),
        })) {
          expect(rows.length).toBeLessThanOrEqual(Math.min(most, found));
        }
      }),
    );
  });
});

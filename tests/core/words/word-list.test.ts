/** All that was written as one list: whose, where, how far; what counts nowhere is not in it. */
import { describe, expect, it } from 'vitest';
import { viewOfHeads, type Revision } from '../../../core/records/index.ts';
import { openProject, type ProjectLog } from '../../../core/review/index.ts';
import { metres } from '../../../core/units/index.ts';
import {
  everyRemark,
  listWords,
  mentionKey,
  quotesOf,
  type WordsQuery,
} from '../../../core/words/index.ts';
import { idOf } from '../records/make.ts';
import * as make from '../review/log-for-tests.ts';
import { own, record } from '../review/log-for-tests.ts';

const [ROUND, PAIR, OTHER, T1, T2] = [idOf(2), idOf(10), idOf(11), idOf(20), idOf(21)];
const of = { pair: PAIR, tester: T1 };
const at = (day: number) => `2026-05-${String(day).padStart(2, '0')}T18:00:00Z`;
const photo = 'a'.repeat(64);
const aside = make.run(idOf(104), of, at(9), { words: 'Set aside words' });
const heads: readonly Revision[] = [
  make.project(),
  make.round(ROUND, 1),
  make.pair(PAIR, ROUND, '637'),
  make.pair(OTHER, ROUND, '640'),
  record(T1, 'tester', { code: 'T02' }),
  record(T2, 'tester', { code: 'T01' }),
  make.handOut(idOf(30), of, at(1)),
  make.handOut(idOf(31), { pair: OTHER, tester: T2 }, at(1)),
  make.run(idOf(100), of, at(3), { words: 'The tongue slides. My heel slips.', photos: [photo] }),
  make.run(idOf(101), { pair: OTHER, tester: T2 }, at(4), {
    feet: {
      answer: 'complaints',
      complaints: [
        { foot: 'left', zone: 'U8', kind: 'rubbing', words: 'The collar rubs' },
        { foot: 'left', zone: 'U10', kind: 'heel-slip' },
      ],
    },
    words: 'Heel slips again',
    pain: { score: 2, where: 'left shin' },
  }),
  make.run(idOf(102), of, at(5), { words: '  ', wornDespiteStop: 'I had no other pair.' }),
  own(idOf(110), 'damage-report', { ...of, at: at(6), what: 'other', words: 'The eyelet tore.' }),
  own(idOf(111), 'bench-check', {
    pair: PAIR,
    at: at(7),
    readings: [
      { measure: 'stack-height', site: 'heel-centre', foot: 'left', value: 30, unit: 'mm' },
    ],
    words: 'The tongue is 4 mm off.',
  }),
  aside,
  own(idOf(50), 'decision', {
    ...{ record: aside.id, recordKind: 'run', judged: aside.stamp },
    ...{ ruling: 'set-aside', why: 'other shoe', at: at(10) },
  }),
  own(idOf(60), 'quote', {
    ...{ source: idOf(100), sourceKind: 'run', field: 'words', at: at(10) },
    ...{ words: 'The tongue slides. My heel slips.', tester: T1, finding: idOf(70) },
  }),
];
const open = (all: readonly Revision[]): ProjectLog =>
  openProject(viewOfHeads(all), make.PROJECT, Date.parse(at(20))) as ProjectLog;
const log = open(heads);
const ask = (query: Partial<WordsQuery> = {}, within = log) =>
  listWords(within, { ...everyRemark, most: 100, left: [], ...query });
const texts = (query: Partial<WordsQuery> = {}) => ask(query).rows.map(({ text }) => text);

describe('the list of remarks', () => {
  it('has everything that was written, the latest first, and nothing that was set aside', () => {
    expect(ask().rows.map(({ on, text }) => [on, text])).toEqual([
      ['check', 'The tongue is 4 mm off.'],
      ['damage', 'The eyelet tore.'],
      ['stop', 'I had no other pair.'],
      ['complaint', 'The collar rubs'],
      ['pain', 'left shin'],
      ['run', 'Heel slips again'],
      ['run', 'The tongue slides. My heel slips.'],
    ]);
    expect(ask()).toMatchObject({ all: 7, allTesters: 2, found: 7, narrowed: false });
  });

  it('knows of each whose it is, on which pair and how far it had gone', () => {
    expect(ask({ text: 'again' }).rows).toMatchObject([
      { source: idOf(101), field: 'words', tester: T2, pairs: [OTHER], round: ROUND, pairM: 0 },
    ]);
    expect(ask({ text: 'eyelet' }).rows[0]?.pairM).toBe(20_000);
  });

  it('asks about what was not tapped on the same run, and not about what was', () => {
    const untapped = ask().rows.flatMap(({ text, untapped: some }) =>
      some.map(({ zone, kind }) => [text, zone, kind]),
    );
    expect(untapped).toEqual([
      ['The tongue slides. My heel slips.', 'U5', null],
      ['The tongue slides. My heel slips.', 'U10', 'heel-slip'],
    ]);
    expect(ask().allUntapped).toBe(1);
  });

  it('asks no more about what was left alone', () => {
    const left = [
      mentionKey(`${idOf(100)}.words`, { zone: 'U5', kind: null }),
      mentionKey(`${idOf(100)}.words`, { zone: 'U10', kind: 'heel-slip' }),
    ];
    expect(ask({ left }).allUntapped).toBe(0);
    expect(ask({ left: left.slice(0, 1) }).allUntapped).toBe(1);
  });

  it('is narrowed by each filter, and counts what each choice would find', () => {
    expect(texts({ on: 'damage' })).toEqual(['The eyelet tore.']);
    expect(texts({ tester: T2 })).toHaveLength(3);
    expect(texts({ pair: OTHER, on: 'pain' })).toEqual(['left shin']);
    expect(texts({ photo: true })).toEqual(['The tongue slides. My heel slips.']);
    expect(texts({ untapped: true })).toEqual(['The tongue slides. My heel slips.']);
    expect(texts({ marked: true })).toEqual(['The tongue slides. My heel slips.']);
    expect(texts({ zone: 'U8' })).toHaveLength(3);
    expect(texts({ fromM: metres(15_000) })).toHaveLength(2);
    expect(texts({ fromM: metres(5_000), toM: metres(15_000) })).toEqual(['I had no other pair.']);
    const { counts } = ask({ tester: T2, on: 'run' });
    expect(counts.on).toEqual({ run: 1, complaint: 1, pain: 1 });
    expect(counts.tester).toEqual({ [T1]: 1, [T2]: 1 });
  });

  it('counts for every choice what that choice then finds', () => {
    const base = { text: 'tongue' };
    for (const key of ['round', 'zone', 'on', 'tester', 'pair'] as const)
      for (const [value, n] of Object.entries(ask(base).counts[key]))
        expect(ask({ ...base, [key]: value }).found, `${key} ${value}`).toBe(n);
  });

  it('comes by distance where that is asked', () => {
    const distances = ask({ sort: 'distance' }).rows.map(({ pairM }) => pairM ?? Infinity);
    expect(distances).toEqual(distances.toSorted((a, b) => a - b));
  });

  it('lists why pairs stand in an order, with each of them and at no distance', () => {
    const ranking = own(idOf(112), 'ranking', {
      ...{ tester: T2, at: at(8), question: 'comfort', order: [[OTHER], [PAIR]] },
      words: 'Softer under the heel.',
    });
    const within = open([...heads, ranking]);
    const why = ask({ text: 'softer' }, within).rows[0];
    expect(why).toMatchObject({ on: 'ranking', pairs: [OTHER, PAIR], pairM: null, round: ROUND });
    for (const pair of [PAIR, OTHER]) expect(ask({ on: 'ranking', pair }, within).found).toBe(1);
    expect(ask({ on: 'ranking', fromM: metres(0) }, within).found).toBe(0);
    expect(ask({ sort: 'distance' }, within).rows.at(-1)?.on).toBe('ranking');
    const [quoted] = quotesOf(
      open([
        ...heads,
        ranking,
        own(idOf(61), 'quote', {
          ...{ source: idOf(112), sourceKind: 'ranking', field: 'words', at: at(10) },
          ...{ words: 'Softer under the heel.', tester: T2, finding: idOf(71) },
        }),
      ]),
      idOf(71),
    );
    expect(quoted).toMatchObject({ state: 'as-said', of: { pairs: [OTHER, PAIR] } });
  });

  it('answers for 10,000 remarks within a second once they are read', () => {
    const many = open([
      ...heads,
      ...Array.from({ length: 10_000 }, (_, n) =>
        make.run(idOf(1000 + n), of, new Date(Date.UTC(2026, 4, 5) + n * 60_000).toISOString(), {
          words: n % 3 === 0 ? '鞋舌往外滑，半小时后。' : `Remark ${n}: my heels slip at the end.`,
          distanceM: 1000,
        }),
      ),
    ]);
    ask({}, many);
    const began = performance.now();
    for (const text of ['slipping', '鞋舌', 'heel end', 'nowhere', 'remark 77'])
      ask({ text, most: 8 }, many);
    // Five searches; ten times as long as measured, because the machine may be busy.
    expect((performance.now() - began) / 5).toBeLessThan(1000);
  }, 60_000);
});

describe('the quotes of a finding', () => {
  const changed = (body: Readonly<Record<string, unknown>>) =>
    open(
      heads.map((head) => (head.id === idOf(100) ? make.run(idOf(100), of, at(3), body) : head)),
    );

  it('say where the words are from and whether they still stand there', () => {
    expect(quotesOf(log, idOf(70))).toMatchObject([
      { id: idOf(60), state: 'as-said', of: { pairs: [PAIR] } },
    ]);
    expect(quotesOf(log, idOf(71))).toEqual([]);
    const [{ quote } = { quote: null }] = quotesOf(log, idOf(70));
    // One sentence of it was quoted, and more was written since.
    expect(
      quotesOf(changed({ words: `Before. ${quote?.words} And more.` }), idOf(70)),
    ).toMatchObject([{ state: 'as-said' }]);
    expect(quotesOf(changed({ words: 'All fine.' }), idOf(70))).toMatchObject([
      { state: 'changed' },
    ]);
    expect(quotesOf(changed({ distanceM: 900_000 }), idOf(70))).toMatchObject([{ state: 'aside' }]);
  });

  it('are gone while what they quote is erased', () => {
    const gone = heads.map((head) =>
      head.id === idOf(100) ? { ...head, body: null, deleted: true as const } : head,
    );
    expect(quotesOf(open(gone), idOf(70))).toEqual([]);
    expect(ask({}, open(gone)).all).toBe(6);
  });
});

/** Arrival readings decided with what is known of their gauges, and the log read without pairs out of tolerance. */
import { describe, expect, it } from 'vitest';
import { viewOfHeads, type RecordId, type Revision } from '../../../core/records/index.ts';
import {
  isOutOfTolerance,
  lookAtFeet,
  lookAtLayers,
  openProject,
  reviewProject,
  verdictOf,
  withoutPairsOutOfTolerance,
  type ProjectLog,
} from '../../../core/review/index.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT } from './log-for-tests.ts';

const [ROUND, GOOD, BAD, BARE, ONE, TWO] = [2, 3, 4, 5, 6, 7].map(idOf) as [
  RecordId,
  RecordId,
  RecordId,
  RecordId,
  RecordId,
  RecordId,
];
const NOW = Date.UTC(2026, 5, 1);

let next = 100;
const newId = () => idOf(next++);

const pair = (id: RecordId, code: string, sizeMm: number) => make.pair(id, ROUND, code, { sizeMm });
const run = (pairId: RecordId, tester: RecordId, day: number, more: object = {}) =>
  make.run(newId(), { pair: pairId, tester }, `2026-05-${String(day).padStart(2, '0')}T07:00:00Z`, {
    feet: { answer: 'nothing' },
    ...more,
  });
const reading = (value: number, more: object = {}) => ({
  measure: 'dimension',
  site: 'collar-height-lateral',
  foot: 'left',
  unit: 'mm',
  value,
  ...more,
});
const check = (pairId: RecordId, at: string, readings: readonly object[], more: object = {}) =>
  own(newId(), 'bench-check', { pair: pairId, at, readings, ...more });
const ARRIVED = '2026-05-01T06:00:00Z';

const dimension = {
  measure: 'dimension',
  site: 'collar-height-lateral',
  unit: 'mm',
  nominal: 62,
  lower: -2,
  upper: 2,
  leftRight: 1,
};

const base = (blueprint: readonly object[] = [dimension]): Revision[] => [
  make.project({ feet: { lengthMm: [255, 285] } }),
  make.round(ROUND, 1, {
    blueprint,
    last: { name: 'L1', sizeMm: 270, lengthMm: 282, ballWidthMm: 98, widthPerStepMm: 1.5 },
    layers: [
      { zone: 'U4', count: 3 },
      { zone: 'P4', count: 1 },
    ],
  }),
  pair(GOOD, '101', 270),
  pair(BAD, '202', 275),
  pair(BARE, '303', 280),
  make.record(ONE, 'tester', { code: 'T1', footLengthMm: { left: 268, right: 270 } }),
  make.record(TWO, 'tester', { code: 'T2' }),
  run(GOOD, ONE, 2),
  run(BAD, TWO, 3, {
    feet: {
      answer: 'complaints',
      complaints: [{ foot: 'left', zone: 'U4', kind: 'overheating' }],
    },
  }),
  run(BARE, TWO, 4),
];

const open = (revisions: readonly Revision[]): ProjectLog => {
  const log = openProject(viewOfHeads([...revisions]), PROJECT, NOW);
  if (!log) throw new Error('no log');
  return log;
};
const review = (...more: Revision[]) => reviewProject(open([...base(), ...more]));

/** A study of the calliper: its standard uncertainty comes out near 0.3 mm. */
const study = (gauge: string, more: object = {}) =>
  own(newId(), 'gauge-study', {
    at: ARRIVED,
    gauge,
    measure: 'dimension',
    unit: 'mm',
    readings: ['A', 'B'].flatMap((operator) =>
      [60, 61, 62, 63].flatMap((value, part) =>
        [-0.3, 0.3].map((error) => ({
          part: `P${part}`,
          operator,
          value: value + error * (operator === 'A' ? 1 : 0.8),
        })),
      ),
    ),
    ...more,
  });

describe('a reading on arrival', () => {
  it('is decided by the uncertainty that it states', () => {
    const word = (value: number) =>
      review(check(GOOD, ARRIVED, [reading(value, { uncertainty: 0.25 })])).deviations[0];
    expect(word(63.4)).toMatchObject({ word: 'conforming', from: 'reading', uncertainty: 0.25 });
    expect(word(63.7)?.word).toBe('undecided');
    expect(word(64.5)).toMatchObject({ word: 'not-conforming', deviation: 2.5 });
  });

  it('takes the uncertainty of its gauge’s study, of the same site before any', () => {
    const read = check(GOOD, ARRIVED, [reading(63.4, { gauge: 'Calliper C2' })]);
    const [found] = review(read, study('calliper c2 ')).deviations;
    expect(found).toMatchObject({
      word: 'conforming',
      from: 'gauge-study',
      gauges: ['Calliper C2'],
    });
    expect(found?.uncertainty).toBeGreaterThan(0.2);
    for (const other of [
      study('C9'),
      study('calliper c2', { site: 'toe-cap-length' }),
      study('calliper c2', { measure: 'stack-height' }),
      study('calliper c2', {
        readings: [1, 2, 3, 4].map((n) => ({ part: `${n}`, operator: 'A', value: n })),
      }),
    ])
      expect(review(read, other).deviations[0]).toMatchObject({ word: 'inside', from: null });
  });

  it('is put together with what was read again the same day, and with nothing of later', () => {
    const again = (at: string, value: number, operator: string) =>
      check(GOOD, at, [reading(value, { uncertainty: 0.25 })], { operator });
    const { deviations } = review(
      again(ARRIVED, 63, 'A'),
      again('2026-05-01T10:00:00Z', 63.4, 'B'),
      again('2026-05-09T10:00:00Z', 70, 'A'),
    );
    expect(deviations).toMatchObject([
      { value: 63.2, readings: 2, operators: 2, uncertainty: 0.25 },
    ]);
  });

  it('decides nothing where two readings contradict each other', () => {
    const read = [62, 63.8].map((value) => reading(value, { uncertainty: 0.1 }));
    expect(review(check(GOOD, ARRIVED, read)).deviations).toMatchObject([
      { word: 'undecided', disagree: true, risk: null },
    ]);
  });

  it('goes by the dimension of its own foot where there is one', () => {
    const own = { ...dimension, foot: 'left', nominal: 65 };
    const log = open([...base([dimension, own]), check(GOOD, ARRIVED, [reading(65)])]);
    expect(reviewProject(log).deviations).toMatchObject([{ nominal: 65, word: 'inside' }]);
  });

  it('is set left against right, and a difference that the blueprint limits marks the pair', () => {
    const both = (left: number, right: number) =>
      review(
        check(GOOD, ARRIVED, [
          reading(left, { uncertainty: 0.1 }),
          reading(right, { uncertainty: 0.1, foot: 'right' }),
        ]),
      );
    const apart = both(63, 61);
    expect(apart.sides).toMatchObject([
      { difference: 2, allowed: 1, allowedFrom: 'blueprint', word: 'not-conforming' },
    ]);
    expect(apart.pairs[0]?.outOfTolerance).toEqual({
      judged: 3,
      proved: 1,
      outside: 0,
      undecided: 0,
    });
    expect(both(62, 62.5).sides).toMatchObject([{ word: 'conforming' }]);
    const torn = [62, 63.8, 62].map((value, at) =>
      reading(value, { uncertainty: 0.1, ...(at === 2 && { foot: 'right' }) }),
    );
    expect(review(check(GOOD, ARRIVED, torn)).sides).toMatchObject([
      { word: 'undecided', risk: null },
    ]);
  });
});

describe('the log without pairs out of tolerance', () => {
  const more = [
    check(GOOD, ARRIVED, [reading(63.7, { uncertainty: 0.25 })]),
    check(BAD, ARRIVED, [reading(66)]),
    own(newId(), 'ranking', {
      tester: TWO,
      at: '2026-05-10T00:00:00Z',
      question: 'comfort',
      order: [[BAD], [BARE, GOOD]],
    }),
    own(newId(), 'stop-use', { pairs: [BAD], reason: 'bond', from: ARRIVED }),
    own(newId(), 'damage-report', {
      pair: BAD,
      tester: TWO,
      at: '2026-05-03T10:00:00Z',
      what: 'other',
    }),
  ];
  const log = open([...base(), ...more]);
  const less = withoutPairsOutOfTolerance(log);
  const [all, some] = [reviewProject(log), reviewProject(less)];

  it('leaves out the pair that is read out; undecided and unmeasured ones stay', () => {
    expect(all.without).toBeNull();
    expect(some.without).toEqual([{ id: BAD, code: '202' }]);
    expect(all.pairs.map((one) => isOutOfTolerance(one.outOfTolerance))).toEqual([
      false,
      true,
      false,
    ]);
    expect(some.pairs.map(({ code }) => code)).toEqual(['101', '303']);
    expect(some.pairs[0]?.outOfTolerance).toMatchObject({ judged: 1, undecided: 1 });
    expect(some.pairs[1]?.outOfTolerance.judged).toBe(0);
  });

  it('leaves out all that was logged of it, and nothing else', () => {
    expect([all.size.runs, some.size.runs]).toEqual([3, 2]);
    expect([
      all.rounds[0]?.complaints.cells.length,
      some.rounds[0]?.complaints.cells.length,
    ]).toEqual([1, 0]);
    expect([all.damages.length, some.damages.length]).toEqual([1, 0]);
    expect(less.records.ranking[0]?.body.order).toEqual([[BARE, GOOD]]);
    expect(less.records['stop-use']).toEqual([]);
    expect(some.oddities.length).toBe(all.oddities.length - 1);
    const [round] = some.rounds;
    const stops = round && verdictOf(less, round).items.find(({ what }) => what === 'stop-use');
    expect(stops).toMatchObject({ word: 'holds', pairs: [] });
  });

  it('is the same log, but marked, where no pair is out', () => {
    const clean = open(base());
    expect(reviewProject(withoutPairsOutOfTolerance(clean))).toEqual({
      ...reviewProject(clean),
      without: [],
    });
  });
});

describe('feet and layers of a project', () => {
  const log = open(base());

  it('fits each tester to the last of the pairs that they wore', () => {
    const { testers, length, width } = lookAtFeet(log);
    expect(testers.map(({ code, pairs }) => [code, pairs.length])).toEqual([
      ['T1', 1],
      ['T2', 2],
    ]);
    expect(testers[0]).toMatchObject({
      size: { by5: { sizeMm: 270, between: false } },
      asymmetry: { lengthMm: -2, widthMm: null },
      pairs: [{ left: { toeMm: 14, toe: 'usual', widthMm: null }, right: { toeMm: 12 } }],
    });
    expect(testers[1]).toMatchObject({ size: null, pairs: [{ left: { toeMm: null } }, {}] });
    expect(length).toMatchObject({ measured: 1, notMeasured: 1, outside: 0 });
    expect(width).toBeNull();
  });

  it('sets layers of the upper alone against heat', () => {
    expect(lookAtLayers(log, ROUND)).toMatchObject({
      askedRuns: 3,
      zones: [{ zone: 'U4', layers: 3, runs: 1, testers: 1 }],
      association: { ok: false, why: 'too-few-zones', zones: 1 },
    });
    expect(lookAtLayers(log, idOf(77))).toBeNull();
  });
});

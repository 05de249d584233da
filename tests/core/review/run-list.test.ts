/** The list of runs: sorted, narrowed and searched, and where each of them stands. */
import { describe, expect, it } from 'vitest';
import { viewOfHeads, type Revision } from '../../../core/records/index.ts';
import {
  listRuns,
  lookAtRun,
  openProject,
  type ProjectLog,
  type RunQuery,
} from '../../../core/review/index.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const [ROUND, PAIR, OTHER, T1, T2] = [idOf(2), idOf(10), idOf(11), idOf(20), idOf(21)];
const of = { pair: PAIR, tester: T1 };
const at = (day: number) => `2026-05-${String(day).padStart(2, '0')}T18:00:00Z`;
const felt = (...words: string[]) => ({
  feet: {
    answer: 'complaints',
    complaints: words.map((one) => ({ foot: 'left', zone: 'U10', kind: 'heel-slip', words: one })),
  },
});
const aside = make.run(idOf(104), of, at(9), { comfort: { overall: 70 } });
const heads: readonly Revision[] = [
  make.project(),
  make.round(ROUND, 1),
  make.pair(PAIR, ROUND, '637'),
  make.pair(OTHER, ROUND, '640'),
  record(T1, 'tester', { code: 'T02' }),
  record(T2, 'tester', { code: 'T01' }),
  make.handOut(idOf(30), of, at(1)),
  make.handOut(idOf(31), { pair: OTHER, tester: T2 }, at(1)),
  make.run(idOf(100), of, at(3), {
    comfort: { overall: 60 },
    durationS: 3600,
    surfaces: { road: 0.3, trail: 0.7 },
    words: 'Slipped in the Rain',
  }),
  make.run(idOf(101), { pair: OTHER, tester: T2 }, at(4), {
    comfort: { overall: 40 },
    durationS: 3000,
    distanceM: 8000,
    ...felt('at the rain gutter', ''),
  }),
  make.run(idOf(102), of, at(5), { feet: { answer: 'nothing' } }),
  make.run(idOf(103), of, at(7), {
    distanceM: 400_000,
    correctedBy: { by: idOf(9), at: at(8), why: 'typed' },
  }),
  aside,
  own(idOf(50), 'decision', {
    record: aside.id,
    recordKind: 'run',
    judged: aside.stamp,
    ruling: 'set-aside',
    why: 'other shoe',
    at: at(10),
  }),
];
const log = openProject(viewOfHeads(heads), PROJECT, Date.UTC(2026, 5, 1)) as ProjectLog;
const list = (query: Partial<RunQuery> = {}) =>
  listRuns(log, {
    sort: 'date',
    descending: true,
    only: 'all',
    round: null,
    tester: null,
    pair: null,
    text: '',
    most: 50,
    ...query,
  });
const ids = (query: Partial<RunQuery> = {}) =>
  list(query).rows.map(({ run }) => heads.find(({ id }) => id === run)?.body?.['startedAt']);
const days = (...some: number[]) => some.map(at);

describe('the list of runs', () => {
  it('has every run, those that count nowhere among them, latest first', () => {
    expect(ids()).toEqual(days(9, 7, 5, 4, 3));
    expect(list()).toMatchObject({ found: 5, all: 5 });
  });

  it('sorts by each column; what was not answered comes last both ways', () => {
    expect(ids({ sort: 'comfort', descending: false })).toEqual(days(4, 3, 9, 7, 5));
    expect(ids({ sort: 'comfort', descending: true })).toEqual(days(9, 3, 4, 7, 5));
    expect(ids({ sort: 'tester', descending: false })[0]).toBe(at(4));
    expect(ids({ sort: 'pair', descending: true })[0]).toBe(at(4));
    expect(ids({ sort: 'pace', descending: false })).toEqual(days(3, 4, 9, 7, 5));
    expect(ids({ sort: 'complaints', descending: true })).toEqual(days(4, 5, 9, 7, 3));
  });

  it('is narrowed by tester, pair, round and what was said', () => {
    expect(ids({ tester: T2 })).toEqual(days(4));
    expect(ids({ pair: OTHER })).toEqual(days(4));
    expect(ids({ round: idOf(99) })).toEqual([]);
    expect(ids({ only: 'complaint' })).toEqual(days(4));
    expect(ids({ only: 'words' })).toEqual(days(4, 3));
    expect(ids({ only: 'apart' })).toEqual(days(9, 7));
  });

  it('is searched in all that was written, whatever its case', () => {
    expect(ids({ text: ' RAIN ' })).toEqual(days(4, 3));
    expect(ids({ text: 'gutter' })).toEqual(days(4));
    expect(ids({ text: 'sun' })).toEqual([]);
  });

  it('gives the first rows, and says how many there are', () => {
    const { rows, found, all } = list({ tester: T1, most: 2 });
    expect([rows.length, found, all]).toEqual([2, 4, 5]);
  });

  it('says where each run stands', () => {
    const states = list().rows.map(({ state, odd, corrected }) => [state, odd, corrected]);
    expect(states).toEqual([
      ['set-aside', false, false],
      ['waits', true, true],
      ['counts', false, false],
      ['counts', false, false],
      ['counts', false, false],
    ]);
    expect(list().rows.at(-1)).toMatchObject({ surface: 'trail', complaints: null, comfort: 60 });
  });
});

describe('one run', () => {
  it('stands between the counted runs of its pair, and beside those of its tester', () => {
    const look = lookAtRun(log, idOf(102));
    expect(look).toMatchObject({ nth: 2, of: 2, after: null, state: 'counts', pairM: 10_000 });
    expect(look?.before?.id).toBe(idOf(100));
    expect(look?.comfort).toEqual([{ attribute: 'overall', score: null, others: [60] }]);
  });

  it('is looked at as well where it counts nowhere', () => {
    const look = lookAtRun(log, aside.id);
    expect(look).toMatchObject({ nth: null, of: 2, state: 'set-aside' });
    expect(look?.decided).toMatchObject({ decision: idOf(50), why: 'other shoe' });
    expect(look?.before?.id).toBe(idOf(102));
    expect(lookAtRun(log, idOf(103))).toMatchObject({ state: 'waits', odd: ['distance'] });
  });

  it('is nothing where it is not in the log', () => {
    expect(lookAtRun(log, idOf(999))).toBeNull();
  });
});

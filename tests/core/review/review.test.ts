import { describe, expect, it } from 'vitest';
import { viewOfHeads, type Revision } from '../../../core/records/index.ts';
import { openProject, reviewProject, type ProjectLog } from '../../../core/review/index.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const ROUND = idOf(2);
const PAIR = idOf(3);
const TESTER = idOf(4);
const NOW = Date.UTC(2026, 5, 1);

const base: Revision[] = [
  make.project(),
  make.round(ROUND, 1, {
    blueprint: [
      {
        measure: 'stack-height',
        site: 'heel-centre',
        unit: 'mm',
        nominal: 36,
        lower: -1,
        upper: 1,
      },
    ],
  }),
  make.pair(PAIR, ROUND, '101', { carriedInM: 5000 }),
  record(TESTER, 'tester', { code: 'T01' }),
  make.handOut(idOf(5), { pair: PAIR, tester: TESTER }, '2026-05-01T00:00:00Z'),
];

const run = (n: number, day: number, more: Record<string, unknown> = {}) =>
  make.run(
    idOf(100 + n),
    { pair: PAIR, tester: TESTER },
    `2026-05-${String(day).padStart(2, '0')}T07:00:00Z`,
    { durationS: 3000, ...more },
  );

const check = (n: number, at: string, value: number, more: Record<string, unknown> = {}) =>
  own(idOf(200 + n), 'bench-check', {
    pair: PAIR,
    at,
    readings: [
      { measure: 'stack-height', site: 'heel-centre', foot: 'left', value, unit: 'mm' },
      { measure: 'hardness', site: 'heel-centre', foot: 'left', value: 45, unit: 'asker-c' },
    ],
    ...more,
  });

const review = (...more: Revision[]) => {
  const log = openProject(viewOfHeads([...base, ...more]), PROJECT, NOW);
  if (!log) throw new Error('no review');
  return reviewProject(log);
};

describe('the review of a project', () => {
  it('is null where the project is not in the records', () => {
    expect(openProject(viewOfHeads(base), idOf(77), NOW)).toBeNull();
  });

  it('stands without a single run', () => {
    expect(review()).toMatchObject({
      size: { pairs: 1, testers: 0, runs: 0, distanceM: 0 },
      groupTesters: 1,
      pairs: [{ code: '101', totalM: 5000, holder: TESTER, lastRunMs: null, shareOfBrief: 0.0125 }],
      rounds: [{ complaints: { asked: { runs: 0, testers: 0 }, cells: [] } }],
    });
  });

  it('asks once about a run that overlaps with several, and of what waits not at all', () => {
    const { oddities, waiting } = review(
      run(1, 2, { durationS: 7200 }),
      run(2, 2, { startedAt: '2026-05-02T07:30:00Z', distanceM: 5000, durationS: 5400 }),
      run(3, 2, { startedAt: '2026-05-02T08:00:00Z', distanceM: 6000, durationS: 3600 }),
      run(4, 2, { startedAt: '2026-05-02T08:10:00Z', distanceM: 500_000, durationS: 1800 }),
    );
    expect(oddities.map(({ run: id, why }) => [id, why])).toEqual([
      [idOf(102), 'tester-overlap'],
      [idOf(103), 'tester-overlap'],
    ]);
    expect(waiting).toMatchObject([
      { subject: { record: idOf(104) }, whys: [{ why: 'distance' }, { why: 'pace' }] },
    ]);
  });

  it('sets each reading against the distance on the pair at that instant', () => {
    const { bench } = review(
      run(1, 2),
      run(2, 4),
      run(3, 6),
      check(1, '2026-05-01T12:00:00Z', 36.2),
      check(2, '2026-05-05T12:00:00Z', 35.4),
      check(3, '2026-05-09T12:00:00Z', 35.1, { distanceM: 36_000 }),
    );
    const stack = bench.find(({ measure }) => measure === 'stack-height');
    expect(
      stack?.points.map(({ distanceM, distanceFrom, value }) => [distanceM, distanceFrom, value]),
    ).toEqual([
      [5000, 'runs', 36.2],
      [25_000, 'runs', 35.4],
      [36_000, 'shop', 35.1],
    ]);
  });

  it('calls a reading on its limit inside, and only the first check an arrival', () => {
    const inside = review(
      check(1, '2026-05-01T12:00:00Z', 37),
      check(2, '2026-05-09T12:00:00Z', 33),
    );
    expect(inside.deviations).toMatchObject([{ value: 37, deviation: 1, word: 'inside' }]);
    expect(inside.pairs[0]?.outOfTolerance).toMatchObject({ judged: 1, outside: 0 });
    const outside = review(check(1, '2026-05-01T12:00:00Z', 37.01));
    expect(outside.deviations).toMatchObject([{ word: 'outside', chance: null }]);
    expect(outside.pairs[0]?.outOfTolerance).toMatchObject({ outside: 1, proved: 0 });
  });

  it('marks a pair whose stop-use notice stands, and no longer when it was lifted', () => {
    const stop = (until?: string) =>
      record(idOf(300), 'stop-use', {
        project: PROJECT,
        pairs: [PAIR],
        reason: 'bond',
        from: '2026-05-10T00:00:00Z',
        ...(until && { until }),
      });
    expect(review(stop()).pairs[0]?.stopUse).toMatchObject({ reason: 'bond' });
    expect(review(stop('2026-05-20T00:00:00Z')).pairs[0]?.stopUse).toBeNull();
  });

  it('lists pain that calls for the caution notice, latest first', () => {
    const { pains } = review(
      run(1, 2, { pain: { score: 4 } }),
      run(2, 3, { pain: { score: 2 } }),
      run(3, 4, { pain: { score: 1, signs: ['limp'] } }),
    );
    expect(pains.map(({ score }) => score)).toEqual([1, 4]);
  });

  it('says of each pain whether it stands, what was answered, and when it was over', () => {
    const { pains, damages } = review(
      run(1, 2, { pain: { score: 4 } }),
      run(2, 3, { pain: { score: 5, over: '2026-05-20T08:00:00Z' } }),
      run(3, 4, { pain: { score: 6 } }),
      record(idOf(310), 'reply', {
        project: PROJECT,
        tester: TESTER,
        about: idOf(103),
        at: '2026-05-21T08:00:00Z',
        advice: 'go-on',
        words: 'Walk first.',
      }),
    );
    expect(damages).toEqual([]);
    expect(pains.map(({ score, stands, over }) => [score, stands, over])).toEqual([
      [6, false, null],
      [5, false, '2026-05-20T08:00:00Z'],
      [4, true, null],
    ]);
    expect(pains[0]?.answer).toEqual({
      advice: 'go-on',
      at: '2026-05-21T08:00:00Z',
      words: 'Walk first.',
    });
  });

  it('lists pain of a run that came twice once, whether or not the run counts', () => {
    const { pains } = review(
      run(1, 2, { pain: { score: 4 } }),
      run(2, 2, { pain: { score: 4 } }),
      run(3, 5, { pain: { score: 4 }, distanceM: 900_000 }),
    );
    expect(pains.map(({ run: id }) => id)).toEqual([idOf(103), idOf(101)]);
  });

  it('answers the same whatever the order of the records', () => {
    const records = [...base, run(1, 2), run(2, 4), check(1, '2026-05-05T12:00:00Z', 36)];
    const [a, b] = [records, [...records].reverse()].map((list) =>
      reviewProject(openProject(viewOfHeads(list), PROJECT, NOW) as ProjectLog),
    );
    expect(b).toEqual(a);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkRuns,
  loggedRun,
  mileageAt,
  mileageCurve,
  pairMileage,
  type HandOutSpan,
  type LoggedRun,
} from '../../../core/mileage/index.ts';
import { readRecord, sealRevision, type RecordOf, type Run } from '../../../core/records/index.ts';
import { metres } from '../../../core/units/index.ts';
import { idOf, stampAt } from '../records/make.ts';

const HOUR = 3_600_000;
const T0 = Date.UTC(2026, 4, 1, 6);
const PAIR = idOf(50);
const OTHER_PAIR = idOf(51);
const T1 = idOf(60);
const T2 = idOf(61);

const run = (n: number, part: Partial<Run> & { hours?: number } = {}): LoggedRun => {
  const { hours = 24 * n, ...fields } = part;
  const body = {
    project: idOf(40),
    pair: PAIR,
    tester: T1,
    startedAt: new Date(T0 + hours * HOUR).toISOString(),
    distanceM: 10_000,
    distanceFrom: 'typed',
    durationS: 3000,
    ...fields,
  };
  const revision = sealRevision(
    { id: idOf(100 + n), kind: 'run', author: body.tester, sv: 1, body },
    stampAt(1),
    null,
  );
  const read = readRecord(revision);
  if (!read.ok) throw new Error(JSON.stringify(read));
  return loggedRun(read.record as RecordOf<'run'>);
};

const out = (tester = T1, pair = PAIR): HandOutSpan => ({
  id: idOf(70),
  pair,
  tester,
  fromMs: T0 - HOUR,
  untilMs: Infinity,
});
const context = (handOuts = [out()]) => ({
  pairs: new Set([PAIR, OTHER_PAIR]),
  handOuts,
  nowMs: T0 + 100 * 24 * HOUR,
});

describe('which runs count', () => {
  it('counts each plain run and finds nothing odd', () => {
    const { counted, oddities } = checkRuns([run(1), run(2), run(3)], context());
    expect(counted).toHaveLength(3);
    expect(oddities).toEqual([]);
  });

  it('counts a run that was logged twice once, and says so', () => {
    const twice = [run(1), run(2, { hours: 24 + 0.05, distanceM: metres(10_050) })];
    const { counted, repeated, oddities } = checkRuns(twice, context());
    expect(counted.map(({ id }) => id)).toEqual([idOf(101)]);
    expect(repeated.map(({ id }) => id)).toEqual([idOf(102)]);
    expect(oddities).toEqual([{ why: 'logged-twice', run: idOf(102), counted: idOf(101) }]);
  });

  it('recognises the same track whatever distance and start were typed', () => {
    const track = { distanceM: metres(10_000), fingerprint: 'same' };
    const { counted } = checkRuns(
      [run(1, { track }), run(2, { track, hours: 30, distanceM: metres(9000) })],
      context(),
    );
    expect(counted).toHaveLength(1);
  });

  it('keeps two different runs of one morning apart', () => {
    const { counted } = checkRuns(
      [run(1), run(2, { hours: 24 + 0.05, distanceM: metres(5000) })],
      context(),
    );
    expect(counted).toHaveLength(2);
  });

  it('reports overlaps of one tester, and of two testers in one pair, and counts both', () => {
    const overlap = checkRuns(
      [run(1), run(2, { hours: 24.5, pair: OTHER_PAIR })],
      context([out(), out(T1, OTHER_PAIR)]),
    );
    expect(overlap.oddities).toEqual([{ why: 'tester-overlap', run: idOf(102), other: idOf(101) }]);
    expect(overlap.counted).toHaveLength(2);
    const shared = checkRuns(
      [run(1), run(2, { hours: 24.5, tester: T2 })],
      context([out(), out(T2)]),
    );
    expect(shared.oddities).toEqual([{ why: 'pair-overlap', run: idOf(102), other: idOf(101) }]);
  });

  it.each([
    ['pace', { durationS: 1500 as never }],
    ['distance', { distanceM: metres(150_000), durationS: 50_000 as never }],
    ['in-the-future', { hours: 24 * 150 }],
    ['unknown-pair', { pair: idOf(99) }],
    ['not-handed-out', { hours: -96 }],
  ] as const)('keeps a run out until the lead decides: %s', (why, part) => {
    const { waiting, oddities, counted } = checkRuns([run(1, part)], context());
    expect(waiting.map(({ whys }) => whys.map((one) => one.why))).toEqual([[why]]);
    expect(oddities).toEqual([]);
    expect(counted).toEqual([]);
    const decided = (ruling: 'counted' | 'set-aside') =>
      checkRuns([run(1, part)], { ...context(), rulings: new Map([[idOf(101), ruling]]) });
    expect(decided('counted')).toMatchObject({
      waiting: [],
      oddities: [],
      counted: [{ id: idOf(101) }],
    });
    expect(decided('set-aside')).toMatchObject({ waiting: [], oddities: [], counted: [] });
  });

  it('counts and asks about a run just before its hand-out, which may be noted late', () => {
    const { oddities, counted, waiting } = checkRuns([run(1, { hours: -48 })], context());
    expect(oddities.map(({ why }) => why)).toEqual(['not-handed-out']);
    expect([counted.length, waiting.length]).toEqual([1, 0]);
  });

  it('judges the others as if what waits were not there', () => {
    // The first of two alike is in the wrong hands: the second is no repeat of it.
    const wrong = run(1, { hours: -96 });
    const right = run(2, { hours: 24 });
    expect(checkRuns([wrong, right], context()).counted.map(({ id }) => id)).toEqual([idOf(102)]);
  });

  it('answers the same whatever the order', () => {
    const runs = [1, 2, 3, 4, 5, 6].map((n) =>
      run(n, { hours: n * 0.4, distanceM: metres(10_000 + 40 * n), tester: n % 2 ? T1 : T2 }),
    );
    const expected = checkRuns(runs, context());
    fc.assert(
      fc.property(fc.shuffledSubarray(runs, { minLength: runs.length }), (shuffled) => {
        expect(checkRuns(shuffled, context())).toEqual(expected);
      }),
    );
  });
});

describe('the distance on a pair', () => {
  const runs = [
    run(1, { surfaces: { road: 0.75, gravel: 0.25 } }),
    run(2, { surfaces: { trail: 1 }, distanceM: metres(8000) }),
    run(3, { tester: T2, distanceM: metres(6000) }),
  ];

  it('is the carried-in distance plus every counted run, by surface, tester and hand-out', () => {
    const mileage = pairMileage(PAIR, runs, metres(12_000), [out()]);
    expect(mileage).toMatchObject({
      totalM: 36_000,
      loggedM: 24_000,
      runs: 3,
      bySurface: { road: 7500, gravel: 2500, trail: 8000, unknown: 6000 },
    });
    expect([...mileage.byTester]).toEqual([
      [T1, 18_000],
      [T2, 6000],
    ]);
    expect([...mileage.byHandOut]).toEqual([
      [idOf(70), 18_000],
      [null, 6000],
    ]);
  });

  it('at an instant holds the runs that had ended by then', () => {
    const curve = mileageCurve(runs, metres(12_000));
    expect(mileageAt(curve, T0)).toBe(12_000);
    expect(mileageAt(curve, T0 + 24 * HOUR)).toBe(12_000);
    expect(mileageAt(curve, T0 + 24 * HOUR + 3_000_000)).toBe(22_000);
    expect(mileageAt(curve, T0 + 1000 * HOUR)).toBe(36_000);
  });

  it('never shrinks as time goes on, and ends at the total', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 40_000 }), { minLength: 1, maxLength: 20 }),
        (distances) => {
          const some = distances.map((m, n) => run(n, { distanceM: metres(m) }));
          const curve = mileageCurve(some, metres(500));
          const at = distances.map((_, n) => mileageAt(curve, T0 + (24 * n + 2) * HOUR));
          expect([...at].sort((a, b) => a - b)).toEqual(at);
          expect(at.at(-1)).toBe(500 + distances.reduce((a, b) => a + b, 0));
        },
      ),
    );
  });
});

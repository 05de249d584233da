/** Complaints of all rounds in one list, one zone's runs, comfort by tester, and arrival by dimension. */
import { describe, expect, it } from 'vitest';
import { viewOfHeads, type RecordId, type Revision } from '../../../core/records/index.ts';
import {
  arrivalOf,
  lookAtComfort,
  lookAtShoe,
  lookAtZone,
  openProject,
  reviewProject,
  type ZoneQuestion,
} from '../../../core/review/index.ts';
import { mostlyOf } from '../../../core/review/shoe-look.ts';
import { idOf } from '../records/make.ts';
import { own, pair, project, PROJECT, record, round, run } from './log-for-tests.ts';

const [first, second] = [idOf(10), idOf(11)];
const [pairA, pairB, pairC] = [idOf(20), idOf(21), idOf(22)];
const [one, two] = [idOf(30), idOf(31)];
const NOW = Date.UTC(2026, 5, 30);

const tester = (id: RecordId, code: string, more: object = {}): Revision =>
  record(id, 'tester', { code, ...more });

const felt = (kind: string, more: object = {}) => ({
  foot: 'left',
  zone: 'U8',
  kind,
  severity: 4,
  ...more,
});
const told = (...complaints: readonly object[]) => ({ feet: { answer: 'complaints', complaints } });
const nothing = { feet: { answer: 'nothing' } };

let next = 100;
const runOn = (day: number, of: { pair: RecordId; tester: RecordId }, more: object = {}) =>
  run(idOf(next++), of, new Date(Date.UTC(2026, 4, day, 8)).toISOString(), {
    durationS: 3000,
    ...more,
  });

const opened = (...records: readonly Revision[]) => {
  const log = openProject(
    viewOfHeads([
      project(),
      round(first, 1),
      round(second, 2, { layers: [{ zone: 'U8', count: 3 }] }),
      pair(pairA, first, '101'),
      pair(pairB, first, '102', { sizeMm: 250 }),
      pair(pairC, second, '201'),
      tester(one, 'T01', { footLengthMm: { left: 262, right: 265 } }),
      tester(two, 'T02'),
      ...records,
    ]),
    PROJECT,
    NOW,
  );
  if (!log) throw new Error('no project');
  return { log, review: reviewProject(log) };
};

const a1 = { pair: pairA, tester: one };
const b2 = { pair: pairB, tester: two };
const c1 = { pair: pairC, tester: one };

describe('complaints of all rounds', () => {
  const { log, review } = opened(
    runOn(1, a1, nothing),
    runOn(2, a1, told(felt('rubbing'))),
    runOn(3, b2, told(felt('rubbing', { foot: 'right' }))),
    runOn(4, b2, told(felt('pressure', { zone: 'U3' }))),
    runOn(10, c1, told(felt('rubbing'))),
    runOn(11, { pair: pairC, tester: two }, told(felt('rubbing'))),
    runOn(12, c1, told(felt('pain', { zone: 'P1' }))),
  );
  const { latest, complaints } = lookAtShoe(log, review);

  it('put pain first, then what several felt in the latest round', () => {
    expect(latest).toBe(second);
    expect(complaints.map(({ zone, kind }) => `${zone} ${kind}`)).toEqual([
      'P1 pain',
      'U8 rubbing',
      'U3 pressure',
    ]);
    expect(complaints[0]?.painLike).toBe(true);
  });

  it('count every round, and where nobody reported it say so', () => {
    const pressure = complaints.find(({ kind }) => kind === 'pressure');
    expect(pressure?.rounds).toMatchObject([
      { round: first, word: 'seen-once', testers: 1, runs: 1, askedRuns: 4, askedTesters: 2 },
      { round: second, word: null, testers: 0, runs: 0, askedRuns: 3, share: null },
    ]);
    expect(pressure?.surest.round).toBe(first);
  });

  it('say since which run and kilometre, and on which foot', () => {
    const rubbing = complaints.find(({ kind }) => kind === 'rubbing');
    expect(rubbing?.since).toMatchObject({ tester: one, pair: pairA, pairM: 10_000 });
    expect(rubbing?.side).toBe('both');
    expect(complaints.find(({ kind }) => kind === 'pain')?.side).toBe('left');
  });

  it('are none where nobody was asked', () => {
    const silent = opened(runOn(1, a1));
    expect(lookAtShoe(silent.log, silent.review)).toEqual({ latest: null, complaints: [] });
  });
});

describe('nearly all reports', () => {
  it('are one tester’s from four fifths on, and nobody’s where they are few', () => {
    expect(
      mostlyOf([
        [one, 8],
        [two, 2],
      ]),
    ).toEqual({ tester: one, runs: 8, of: 10 });
    expect(
      mostlyOf([
        [one, 7],
        [two, 3],
      ]),
    ).toBeNull();
    expect(
      mostlyOf([
        [one, 3],
        [two, 1],
      ]),
    ).toBeNull();
    expect(mostlyOf([[one, 9]])).toBeNull();
  });
});

describe('one zone', () => {
  const { log, review } = opened(
    runOn(1, a1, nothing),
    runOn(2, a1, told(felt('rubbing'), felt('pressure', { foot: 'right', severity: 7 }))),
    runOn(3, a1, told(felt('rubbing', { words: 'It rubs.' }))),
    runOn(4, a1, told(felt('rubbing', { foot: 'right' }))),
    runOn(5, b2, { ...told(felt('rubbing')), words: 'Fine but for the ankle.' }),
    runOn(6, b2, told(felt('pressure', { zone: 'U3' }))),
    runOn(7, b2),
    runOn(10, c1, nothing),
  );
  const asked: ZoneQuestion = { foot: 'left', zone: 'U8', kind: 'rubbing', testers: 9, reports: 9 };
  const look = lookAtZone(log, review, asked);

  it('counts runs and testers over both feet, and each foot by itself', () => {
    expect(look.rounds).toMatchObject([
      { round: first, runs: 4, askedRuns: 6, testers: 2, askedTesters: 2, left: 3, right: 1 },
      { round: second, runs: 0, askedRuns: 1, testers: 0, askedTesters: 1, word: null },
    ]);
    expect(look.rounds.map(({ layers }) => layers)).toEqual([null, 3]);
    expect(look.allReports).toBe(4);
    expect(look.tellers).toBe(2);
  });

  it('has a row for each tester, with this foot apart from the other', () => {
    const [row, other] = look.rows;
    expect(row?.tester).toBe(one);
    expect(row?.rounds[0]?.dots.map(({ felt: on }) => on)).toEqual([
      null,
      'here',
      'here',
      'other-foot',
    ]);
    expect(row?.rounds[0]?.dots.map(({ pairM }) => pairM)).toEqual([0, 10_000, 20_000, 30_000]);
    // The run without an answer is not in it.
    expect(other?.rounds[0]).toMatchObject({ asked: 2 });
    expect(other?.rounds[1]).toEqual({ asked: 0, dots: [] });
  });

  it('keeps each tester’s words and notes, the latest first', () => {
    expect(look.reports.map(({ note }) => note)).toEqual([
      'Fine but for the ankle.',
      null,
      null,
      null,
    ]);
    expect(
      look.reports.flatMap(({ complaints }) => complaints.map(({ words }) => words)),
    ).toContain('It rubs.');
    expect(lookAtZone(log, review, { ...asked, reports: 1 })).toMatchObject({
      reports: [{ tester: two }],
      allReports: 4,
    });
  });

  it('of any kind counts all that was felt there, and names the kinds', () => {
    const any = lookAtZone(log, review, { ...asked, kind: null });
    expect(any.allReports).toBe(4);
    expect(any.rounds[0]).toMatchObject({ runs: 4, right: 2, word: null });
    expect(any.kinds).toEqual([
      { kind: 'rubbing', runs: 4 },
      { kind: 'pressure', runs: 1 },
    ]);
    expect(any.rows[0]?.rounds[0]?.dots[1]?.severity).toBe(7);
  });

  it('names the pair behind half of a round’s reports, with the foot that wore it', () => {
    expect(look.pairShare).toEqual({
      pair: pairA,
      round: first,
      runs: 3,
      of: 4,
      tester: one,
      sizeMm: 270,
      footMm: 265,
    });
    const few = lookAtZone(log, review, { ...asked, zone: 'U3', kind: 'pressure' });
    expect(few.pairShare).toBeNull();
  });

  it('keeps all that was felt where a row has too many silent runs', () => {
    const many = opened(
      ...Array.from({ length: 20 }, (_, day) =>
        Array.from({ length: 8 }, (__, hour) =>
          run(
            idOf(1000 + day * 8 + hour),
            a1,
            new Date(Date.UTC(2026, 4, 1 + day, 2 * hour)).toISOString(),
            { distanceM: 1000, ...(hour === 3 ? told(felt('rubbing')) : nothing) },
          ),
        ),
      ).flat(),
    );
    const row = lookAtZone(many.log, many.review, asked).rows[0]?.rounds[0];
    expect(row?.asked).toBe(160);
    expect(row?.dots.filter((dot) => dot.felt === 'here')).toHaveLength(20);
    expect(row?.dots.filter((dot) => dot.felt === null).length).toBeLessThanOrEqual(60);
  });
});

describe('comfort', () => {
  const { log, review } = opened(
    runOn(1, a1, { comfort: { overall: 10 }, firstImpression: true }),
    runOn(2, a1, { comfort: { overall: 60 } }),
    runOn(3, a1, { comfort: { overall: 70 } }),
    runOn(3, b2, { comfort: { overall: 55 } }),
    runOn(10, c1, { comfort: { overall: 80 } }),
  );
  const look = lookAtComfort(log, review);

  it('has each tester’s mean, lowest first, without first wearings', () => {
    expect(look.map(({ attribute }) => attribute)).toEqual(['overall']);
    expect(look[0]?.rounds[0]?.testers).toEqual([
      { tester: two, mean: 55 },
      { tester: one, mean: 65 },
    ]);
    expect(look[0]?.rounds[0]?.wear?.mean).toBe(60);
  });

  it('has a course along the kilometres, and a change only against a round before', () => {
    expect(look[0]?.rounds.map(({ change }) => change === null)).toEqual([true, true]);
    expect(look[0]?.rounds[0]?.course).toMatchObject([{ fromM: 0, toM: 50_000 }]);
  });
});

describe('arrival', () => {
  const reading = (pairId: RecordId, roundId: RecordId, site: string, deviation: number) => ({
    measure: 'dimension',
    site,
    unit: 'mm',
    nominal: 58,
    lower: -1,
    upper: 1,
    pair: pairId,
    round: roundId,
    check: own(idOf(90), 'bench-check', {}).id,
    foot: 'left',
    deviation,
    word: Math.abs(deviation) > 1 ? 'not-conforming' : 'conforming',
  });
  const look = arrivalOf(
    [
      reading(pairA, first, 'back-height', 0.2),
      reading(pairA, first, 'heel-cup-width', 2.5),
      reading(pairB, first, 'heel-cup-width', -0.4),
      reading(pairC, second, 'heel-cup-width', 0),
    ] as never,
    [first, second],
  );

  it('has the dimension with most readings out first, and names its pairs', () => {
    expect(look.map(({ site }) => site)).toEqual(['heel-cup-width', 'back-height']);
    expect(look[0]).toMatchObject({ outReadings: 1, readings: 3 });
    expect(look[0]?.rounds.map(({ out }) => out)).toEqual([[pairA], []]);
    expect(look[0]?.rounds[0]?.points.map(({ deviation }) => deviation)).toEqual([-0.4, 2.5]);
  });

  it('draws every dimension on a line that holds its tolerance and all of its readings', () => {
    for (const { range, rounds } of look)
      for (const { lower, upper, points } of rounds)
        for (const value of [lower, upper, ...points.map(({ deviation }) => deviation)]) {
          expect(value).toBeGreaterThan(range[0]);
          expect(value).toBeLessThan(range[1]);
        }
  });
});

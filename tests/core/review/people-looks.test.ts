/** A pair's life by kilometre, and a tester beside the others, from small logs whose answers can be counted by hand. */
import { describe, expect, it } from 'vitest';
import { viewOfHeads, type RecordId, type Revision } from '../../../core/records/index.ts';
import {
  lookAtPair,
  lookAtRun,
  lookAtShoe,
  lookAtTester,
  lookAtZone,
  openProject,
  pairRows,
  reviewProject,
  testerRows,
} from '../../../core/review/index.ts';
import { saidOfRuns } from '../../../core/review/report-parts.ts';
import { remarksOf } from '../../../core/words/remarks.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const ROUND = idOf(2);
const [FIRST, SECOND] = [idOf(20), idOf(21)];
const [ADA, BEA, CLEO] = [idOf(30), idOf(31), idOf(32)];
const NOW = Date.UTC(2026, 5, 30);
const day = (of: number) => new Date(Date.UTC(2026, 5, of, 8)).toISOString();

const slip = { foot: 'left', zone: 'U10', kind: 'heel-slip' };
const felt = (...complaints: readonly object[]) => ({
  feet: complaints.length ? { answer: 'complaints', complaints } : { answer: 'nothing' },
});

const open = (...revisions: readonly Revision[]) => {
  const log = openProject(
    viewOfHeads([
      make.project(),
      make.round(ROUND, 1, { last: { name: 'L1', sizeMm: 270, lengthMm: 280 } }),
      make.pair(FIRST, ROUND, '417'),
      make.pair(SECOND, ROUND, '9', { carriedInM: 5000 }),
      record(ADA, 'tester', { code: 'T10', footLengthMm: { left: 273, right: 275 } }),
      record(BEA, 'tester', { code: 'T2', name: 'Bea' }),
      record(CLEO, 'tester', { code: 'T3' }),
      ...revisions,
    ]),
    PROJECT,
    NOW,
  );
  if (!log) throw new Error('no project');
  return { log, review: reviewProject(log) };
};
const run = (n: number, pair: RecordId, tester: RecordId, on: number, more: object = {}) =>
  make.run(idOf(1000 + n), { pair, tester }, day(on), { durationS: 3600, ...more });

const two = () =>
  open(
    make.handOut(idOf(300), { pair: FIRST, tester: ADA }, day(1), { until: day(10) }),
    make.handOut(idOf(301), { pair: FIRST, tester: BEA }, day(11)),
    make.handOut(idOf(302), { pair: SECOND, tester: CLEO }, day(1)),
    run(1, FIRST, ADA, 2, {
      ...felt(
        { ...slip, severity: 2, words: 'It slips.' },
        { ...slip, foot: 'right', severity: 6 },
      ),
      comfort: { overall: 40 },
      firstImpression: true,
      words: 'Downhill.',
    }),
    run(2, FIRST, ADA, 3, { ...felt(slip), comfort: { overall: 60 } }),
    run(3, FIRST, BEA, 12, { ...felt(), comfort: { overall: 70 } }),
    run(4, SECOND, CLEO, 12, { ...felt(slip), comfort: { overall: 80 } }),
    run(5, SECOND, CLEO, 13),
    own(idOf(400), 'stop-use', { pairs: [FIRST], reason: 'bond', from: day(13), until: day(14) }),
    own(idOf(401), 'damage-report', { pair: FIRST, tester: BEA, at: day(13), what: 'other' }),
  );

describe('one run', () => {
  it('stands at one distance of its pair, with a duration or without, wherever it is shown', () => {
    const timed = { ...felt(slip), comfort: { overall: 40 }, words: 'It slips.' };
    const { log, review } = open(
      run(1, SECOND, CLEO, 2, { ...felt(), durationS: undefined }),
      run(2, SECOND, CLEO, 3, { ...timed, durationS: undefined }),
    );
    const id = idOf(1002);
    const shown = {
      run: lookAtRun(log, id)?.pairM,
      pair: lookAtPair(log, review, SECOND)?.runs.find((one) => one.run === id)?.pairM,
      tester: lookAtTester(log, review, CLEO)?.course.find((one) => one.run === id)?.pairM,
      zone: lookAtZone(log, review, {
        foot: 'left',
        zone: 'U10',
        kind: null,
        testers: 9,
        reports: 9,
      }).reports.find((one) => one.run === id)?.pairM,
      remark: remarksOf(log).find(({ source }) => source === id)?.pairM,
      report: saidOfRuns(log.pairs).find((one) => one.run === id)?.pairM,
      shoe: lookAtShoe(log, review).complaints[0]?.since?.pairM,
    };
    expect(new Set(Object.values(shown)), JSON.stringify(shown)).toEqual(new Set([15_000]));
  });
});

describe('a pair looked at', () => {
  const { log, review } = two();
  const look = lookAtPair(log, review, FIRST);

  it('places hands, runs and events by what was on the pair', () => {
    expect(
      look?.hands.map(({ tester, fromM, untilM, runs }) => [tester, fromM, untilM, runs]),
    ).toEqual([
      [ADA, 0, 20_000, 2],
      [BEA, 20_000, 30_000, 1],
    ]);
    expect(
      look?.runs.map(({ pairM, comfort, complaints }) => [pairM, comfort, complaints]),
    ).toEqual([
      [0, 40, 2],
      [10_000, 60, 1],
      [20_000, 70, 0],
    ]);
    expect(look?.stops).toMatchObject([{ fromM: 30_000, untilM: 30_000, reason: 'bond' }]);
    expect(look?.damages).toMatchObject([{ m: 30_000, what: 'other', stands: true }]);
  });

  it('counts a complaint once a run, and under both feet', () => {
    expect(look?.felt).toEqual([
      {
        zone: 'U10',
        kind: 'heel-slip',
        byFoot: { left: 2, right: 1 },
        marks: [
          { run: idOf(1001), severity: 6 },
          { run: idOf(1002), severity: null },
        ],
      },
    ]);
    expect(look?.asked).toBe(3);
  });

  it('has what was written, the room at the toe, and its neighbours by code', () => {
    expect(look?.notes).toMatchObject([{ run: idOf(1001), words: ['Downhill.', 'It slips.'] }]);
    const ada = look?.fit.find(({ tester }) => tester === ADA);
    expect([ada?.left?.toeMm, ada?.right?.toeMm]).toEqual([7, 5]);
    expect([look?.before, look?.after]).toEqual([SECOND, null]);
  });

  it('is not there where the project has no such pair', () => {
    expect(lookAtPair(log, review, idOf(99))).toBe(null);
  });

  it('stands in one row of the list', () => {
    const rows = pairRows(log, review);
    expect(rows.find(({ pair }) => pair === FIRST)).toMatchObject({
      ...{ code: '417', holder: BEA, handOut: idOf(301), totalM: 30_000, runs: 3 },
      ...{ asked: 3, complained: 2, stopped: false, damage: idOf(401) },
    });
    expect(rows.find(({ pair }) => pair === SECOND)).toMatchObject({
      ...{ totalM: 25_000, asked: 1, complained: 1, damage: null },
    });
  });
});

describe('a tester looked at', () => {
  const { log, review } = two();
  const look = lookAtTester(log, review, ADA);

  it('is held against the others in the same rounds', () => {
    expect(look?.felt).toMatchObject([
      {
        byFoot: { left: 2, right: 1 },
        others: { testers: 1, askedTesters: 2, runs: 1, askedRuns: 2 },
        isProved: false,
      },
    ]);
    expect(look?.othersComplained).toEqual([
      { tester: BEA, share: 0 },
      { tester: CLEO, share: 1 },
    ]);
  });

  it('keeps first wearings out of the means, and shows them in the course', () => {
    expect(look?.comfort).toEqual([
      {
        attribute: 'overall',
        mean: 60,
        runs: 1,
        others: [
          { tester: BEA, mean: 70 },
          { tester: CLEO, mean: 80 },
        ],
      },
    ]);
    expect(look?.course.map(({ score, isFirst }) => [score, isFirst])).toEqual([
      [40, true],
      [60, false],
    ]);
  });

  it('has the last at the size of each pair that they wore', () => {
    expect(look?.feet.inLast).toMatchObject([
      { pair: FIRST, lastLengthMm: 280, lastWidthMm: null },
    ]);
    expect(lookAtTester(log, review, CLEO)?.feet.inLast).toMatchObject([{ pair: SECOND }]);
  });

  it('stands in one row of the list, in the order of codes, silent by the one rule', () => {
    const rows = testerRows(log, review);
    expect(rows.map(({ code }) => code)).toEqual(['T2', 'T3', 'T10']);
    expect(rows.map(({ silentDays }) => silentDays)).toEqual([17, 16, null]);
    expect(rows[2]).toMatchObject({
      ...{ pairs: [], runs: 2, asked: 2, complained: 2 },
      most: { zone: 'U10', kind: 'heel-slip', runs: 2 },
    });
  });
});

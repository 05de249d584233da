/** One question, one answer: what two screens show of the same testers comes from the same rule. */
import { describe, expect, it } from 'vitest';
import { viewOfHeads, type Revision } from '../../../core/records/index.ts';
import {
  feltCushioning,
  openProject,
  overviewOf,
  reviewProject,
  verdictOf,
  withoutPairsOutOfTolerance,
  type ProjectLog,
} from '../../../core/review/index.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { PROJECT, record } from './log-for-tests.ts';

const ROUND = idOf(2);
const DAY_MS = 86_400_000;
const NOW = Date.UTC(2026, 5, 30);
const daysAgo = (days: number) => new Date(NOW - days * DAY_MS).toISOString();

const opened = (...revisions: readonly Revision[]): ProjectLog => {
  const log = openProject(viewOfHeads(revisions), PROJECT, NOW);
  if (!log) throw new Error('no project');
  return log;
};
const base = [make.project(), make.round(ROUND, 1)];
const tester = (n: number) => record(idOf(200 + n), 'tester', { code: `T0${n}` });
const pair = (n: number) => make.pair(idOf(100 + n), ROUND, String(100 + n));
const worn = (n: number, by = n) => ({ pair: idOf(100 + n), tester: idOf(200 + by) });

describe('how cushioning feels over the distance', () => {
  // Five testers of ten runs whose cushioning hardly changes; one of four close runs on a lucky line.
  const noise = [4, -5, 3, -2, 6, -6, 1, -3, 5, -4];
  const scored = (n: number, at: number, km: number, score: number) =>
    make.run(idOf(1000 + 100 * n + at), worn(n), daysAgo(60 - at), {
      distanceM: 1000 * km,
      comfort: { 'heel-cushioning': score },
    });
  const log = opened(
    ...base,
    ...[1, 2, 3, 4, 5, 6].flatMap((n) => [
      tester(n),
      pair(n),
      make.handOut(idOf(300 + n), worn(n), daysAgo(90)),
    ]),
    ...[1, 2, 3, 4, 5].flatMap((n) => noise.map((by, at) => scored(n, at, 40, 60 + by))),
    ...[50, 56, 58, 64].map((score, at) => scored(6, at, 9, score)),
  );
  const ofComfort = reviewProject(log).rounds[0]?.comfort.find(
    ({ attribute }) => attribute === 'heel-cushioning',
  )?.drift;
  const ofBench = feltCushioning(log, ROUND)[0]?.drift;

  it('is the same on Comfort and on Bench', () => {
    expect(ofComfort).toBeTruthy();
    expect(ofBench).toEqual(ofComfort);
  });

  it('is not turned by one tester’s four runs', () => {
    // Their own slope is 49 points per 100 km, which moves a plain mean of six slopes by 8.
    expect(Math.abs(ofComfort?.per100Km ?? 99)).toBeLessThan(3);
  });
});

describe('who is silent', () => {
  const log = opened(
    ...base,
    ...[1, 2, 3, 4].flatMap((n) => [tester(n), pair(n)]),
    // T01 never ran; T02 ran long ago; T03 ran lately in a pair that is back, and holds another one.
    make.handOut(idOf(301), worn(1), daysAgo(20)),
    make.handOut(idOf(302), worn(2), daysAgo(40)),
    make.run(idOf(1001), worn(2), daysAgo(12)),
    make.handOut(idOf(303), worn(3), daysAgo(40), { until: daysAgo(1) }),
    make.run(idOf(1002), worn(3), daysAgo(2)),
    make.handOut(idOf(304), worn(4, 3), daysAgo(20)),
  );
  const review = reviewProject(log);
  const overview = overviewOf(
    log,
    review,
    review.rounds.map((one) => verdictOf(log, one)),
  );
  const bySilence = new Map(review.testers.map(({ code, silentDays }) => [code, silentDays]));

  it('is the same in the overview, in the list of testers and with each pair', () => {
    expect(overview.silent.map(({ tester: who, days }) => [who, days])).toEqual([
      [idOf(201), 20],
      [idOf(202), 12],
    ]);
    expect(Object.fromEntries(bySilence)).toEqual({ T01: 20, T02: 12, T03: null });
    expect(review.pairs.map(({ code, holderSilentDays }) => [code, holderSilentDays])).toEqual([
      ['101', 20],
      ['102', 12],
      ['103', null],
      ['104', null],
    ]);
  });

  it('hears a run in a pair that is left out of the figures', () => {
    const height = { measure: 'stack-height', site: 'heel-centre', unit: 'mm' };
    const more = opened(
      make.project(),
      make.round(ROUND, 1, { blueprint: [{ ...height, nominal: 36, lower: -1, upper: 1 }] }),
      tester(1),
      pair(1),
      pair(2),
      make.handOut(idOf(301), worn(1), daysAgo(20)),
      make.handOut(idOf(302), worn(2, 1), daysAgo(20)),
      make.own(idOf(400), 'bench-check', {
        pair: idOf(102),
        at: daysAgo(19),
        readings: [{ ...height, foot: 'left', value: 39 }],
      }),
      make.run(idOf(1001), worn(2, 1), daysAgo(2)),
    );
    const without = withoutPairsOutOfTolerance(more);
    expect(without.pairs).toHaveLength(1);
    expect(reviewProject(without).testers.map(({ silentDays }) => silentDays)).toEqual([null]);
  });
});

/** From bench checks to a verdict: limits, structure, growing complaints, stop-use; and what a look shows. */
import { describe, expect, it } from 'vitest';
import { viewOfHeads, type Revision } from '../../../core/records/index.ts';
import {
  lookAtWear,
  openProject,
  PER_METRE,
  reviewProject,
  verdictOf,
  wearPlaces,
  type ProjectLog,
} from '../../../core/review/index.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const ROUND = idOf(2);
const DAY_MS = 86_400_000;
const START = Date.UTC(2026, 4, 1);
const at = (day: number) => new Date(START + day * DAY_MS).toISOString().replace('.000', '');

const limits = [
  { measure: 'stack-height', site: 'heel', bound: 'at-least', value: 30, basis: 'reading' },
  { measure: 'tread-depth', bound: 'at-least', value: 1, basis: 'reading' },
];

const PAIRS = 6;
/** Every pair runs 20 km a day for so many days; readings at the given days. */
const log = (plan: {
  readonly days: number;
  readonly stack: (km: number) => number;
  readonly checkDays: readonly number[];
  readonly more?: readonly Revision[];
  readonly slips?: (day: number) => boolean;
  readonly height?: number;
  readonly silent?: boolean;
  readonly limits?: readonly unknown[];
  readonly allowedRate?: { readonly complaint: number; readonly pain: number };
  readonly blueprint?: readonly unknown[];
}): ProjectLog => {
  const pairs = Array.from({ length: PAIRS }, (_, p) => p);
  const revisions = [
    make.project({
      distanceM: 300_000,
      limits: plan.limits ?? limits,
      ...(plan.allowedRate && { allowedRate: plan.allowedRate }),
    }),
    make.round(ROUND, 1, { foam: 'eva', blueprint: plan.blueprint ?? [] }),
    ...pairs.flatMap((p) => [
      make.pair(idOf(10 + p), ROUND, `${100 + p}`, { sizeMm: 265 }),
      record(idOf(30 + p), 'tester', {
        code: `T${p}`,
        ...(plan.height !== undefined && { heightM: plan.height, massKg: 70 }),
      }),
      make.handOut(idOf(50 + p), { pair: idOf(10 + p), tester: idOf(30 + p) }, at(0)),
      ...Array.from({ length: plan.days }, (_, day) =>
        make.run(
          idOf(1000 + 100 * p + day),
          { pair: idOf(10 + p), tester: idOf(30 + p) },
          at(day + 0.25),
          {
            distanceM: 20_000,
            durationS: 6000,
            ...(!plan.silent && {
              feet:
                p < 4 && plan.slips?.(day)
                  ? {
                      answer: 'complaints',
                      complaints: [{ foot: 'left', zone: 'U10', kind: 'heel-slip' }],
                    }
                  : { answer: 'nothing' },
            }),
          },
        ),
      ),
      ...plan.checkDays.map((day, n) =>
        own(idOf(5000 + 10 * p + n), 'bench-check', {
          pair: idOf(10 + p),
          at: at(day),
          temperatureC: 23,
          restedH: 30,
          readings: (['left', 'right'] as const).map((foot) => ({
            measure: 'stack-height',
            site: 'heel',
            foot,
            unit: 'mm',
            value: plan.stack(20 * day) + 0.1 * p,
          })),
        }),
      ),
    ]),
    ...(plan.more ?? []),
  ];
  return openProject(viewOfHeads(revisions), PROJECT, START + 100 * DAY_MS) as ProjectLog;
};

const verdict = (of: ProjectLog) => {
  const [round] = reviewProject(of).rounds;
  if (!round) throw new Error('no round');
  return verdictOf(of, round);
};
const item = (of: ProjectLog, what: string) => verdict(of).items.find((one) => one.what === what);

const fine = { days: 16, stack: (x: number) => 36 - x / 400, checkDays: [0, 5, 10, 15.5] };

describe('the verdict on a round', () => {
  it('holds where the readings stay far from the limit, and is not known where nothing was measured', () => {
    const of = log(fine);
    expect(item(of, 'wear')).toMatchObject({
      word: 'holds',
      kind: 'stack-height mm',
      pairs: PAIRS,
    });
    expect(item(of, 'not-measured')).toMatchObject({ limit: { measure: 'tread-depth' } });
    // Two silent runs of each at the brief's distance: with half of them prone, that comes in 26 % of tests.
    expect(item(of, 'complaints')).toMatchObject({
      word: 'not-known-yet',
      pairsThere: PAIRS,
      silenceChance: expect.closeTo(0.8 ** 6, 9) as number,
    });
    expect(item(log({ ...fine, days: 20 }), 'complaints')).toMatchObject({
      word: 'holds',
      pairsThere: PAIRS,
      growing: [],
      open: [],
    });
    expect(item(of, 'structure')).toMatchObject({
      word: 'not-known-yet',
      pairs: PAIRS,
      failed: 0,
      canHold: false,
    });
    expect(verdict(of).word).toBe('not-known-yet');
  });

  it('says nothing of wear by arrival checks alone, however wide the limit', () => {
    const of = log({ ...fine, checkDays: [0] });
    expect(item(of, 'wear')).toMatchObject({
      word: 'not-known-yet',
      basis: 'prior-only',
      hold: null,
    });
  });

  it('takes no silence for an answer where nobody was asked', () => {
    const of = log({ ...fine, silent: true });
    expect(item(of, 'complaints')).toMatchObject({ word: 'not-known-yet', pairsThere: 0 });
  });

  it('breaks the allowed rate with a complaint proven to recur across testers', () => {
    const slipping = log({ ...fine, slips: () => true });
    expect(item(slipping, 'allowed-rate')).toMatchObject({
      word: 'does-not-hold',
      cells: [{ zone: 'U10', kind: 'heel-slip' }],
      askedRuns: 16 * PAIRS,
    });
    expect(verdict(slipping).word).toBe('does-not-hold');
  });

  it('takes neither the silence of a small panel nor an unasked one for the allowed rate', () => {
    expect(item(log(fine), 'allowed-rate')).toMatchObject({
      word: 'not-known-yet',
      cells: [],
      askedTesters: PAIRS,
    });
    expect(item(log({ ...fine, silent: true }), 'allowed-rate')).toMatchObject({
      word: 'not-known-yet',
      askedRuns: 0,
    });
  });

  it('keeps the allowed rate where every share is surely at or below it', () => {
    const allowedRate = { complaint: 0.5, pain: 0.4 };
    expect(item(log({ ...fine, allowedRate }), 'allowed-rate')).toMatchObject({ word: 'holds' });
    const few = item(log({ ...fine, allowedRate: { complaint: 0.5, pain: 0.3 } }), 'allowed-rate');
    expect(few).toMatchObject({ word: 'not-known-yet' });
  });

  it('sends no pair to a further check that came apart or is withdrawn', () => {
    const short = { days: 16, stack: (x: number) => 33 - x / 60, checkDays: [0, 4, 8] };
    const stop = own(idOf(90), 'stop-use', {
      pairs: [1, 2, 3, 4, 5].map((p) => idOf(10 + p)),
      reason: 'Sole peels',
      from: at(3),
    });
    const open = item(log({ ...short, more: [stop] }), 'wear');
    const pairs = open?.what === 'wear' ? open.next.map(({ pair }) => pair) : [];
    expect(new Set(pairs)).toEqual(new Set([idOf(10)]));
  });

  it('reads a limit in its usual unit only, and a blueprint that cannot be as none', () => {
    const limits = [
      { measure: 'energy-absorbed', bound: 'at-least', value: 4, basis: 'reading' },
      { measure: 'mass', bound: 'at-most', value: 300, basis: 'reading' },
    ];
    const reading = (measure: string, unit: string, value: number) => ({
      measure,
      site: 'heel',
      foot: 'left',
      unit,
      value,
    });
    const check = own(idOf(93), 'bench-check', {
      pair: idOf(10),
      at: at(2),
      readings: [reading('energy-absorbed', '%', 35), reading('mass', 'g', 250)],
    });
    const blueprint = [
      { measure: 'mass', site: 'heel', unit: 'g', nominal: 0, lower: -5, upper: 5 },
    ];
    const of = log({ ...fine, limits, blueprint, more: [check] });
    const items = verdict(of).items;
    expect(items.filter(({ what }) => what === 'wear')).toMatchObject([{ kind: 'mass g' }]);
    expect(item(of, 'not-measured')).toMatchObject({ limit: { measure: 'energy-absorbed' } });
  });

  it('does not hold where the limit is crossed long before the brief’s distance', () => {
    const of = log({ ...fine, stack: (x) => 36 - x / 20 });
    expect(item(of, 'wear')).toMatchObject({ word: 'does-not-hold' });
    expect(verdict(of).word).toBe('does-not-hold');
  });

  it('says what would settle it where checks end early', () => {
    const of = log({ days: 16, stack: (x) => 33 - x / 60, checkDays: [0, 4, 8] });
    const open = item(of, 'wear');
    expect(open?.word).toBe('not-known-yet');
    const [first] = open?.what === 'wear' ? open.next : [];
    expect(first?.narrowing).toBeGreaterThan(0);
    expect(first?.distance).toBe(300_000);
  });

  it('says nothing beyond twice the distance of the checks', () => {
    const of = log({ days: 16, stack: (x) => 36 - x / 400, checkDays: [0, 2, 4] });
    expect(item(of, 'wear')).toMatchObject({ tooFar: true, word: 'not-known-yet' });
    const place = wearPlaces(of)[0];
    if (!place) throw new Error('no place');
    const look = lookAtWear(of, place, 'distance', null);
    expect(look?.atBrief).toBeNull();
    expect(look?.curve?.at(-1)?.x).toBe(160_000);
  });

  it('does not hold with a complaint that grows, and with a stop-use notice that stands', () => {
    const grows = log({ ...fine, slips: (day) => day >= 9 });
    expect(item(grows, 'complaints')).toMatchObject({
      word: 'does-not-hold',
      growing: [{ zone: 'U10', kind: 'heel-slip' }],
    });
    const stop = own(idOf(90), 'stop-use', {
      pairs: [idOf(11)],
      reason: 'Sole peels',
      from: at(3),
    });
    expect(item(log({ ...fine, more: [stop] }), 'stop-use')).toMatchObject({
      word: 'does-not-hold',
      pairs: [idOf(11)],
    });
  });

  it('counts a pair that came apart at its distance then', () => {
    const damage = own(idOf(91), 'damage-report', {
      pair: idOf(12),
      tester: idOf(32),
      what: 'sole-peeling',
      at: at(5),
    });
    const of = log({ ...fine, more: [damage] });
    const structure = item(of, 'structure');
    expect(structure).toMatchObject({ failed: 1, pairs: PAIRS });
    if (structure?.what !== 'structure') throw new Error('no structure');
    expect(structure.steps[0]).toMatchObject({ time: 100_000, events: 1, atRisk: 6 });
  });
});

describe('a look at wear', () => {
  const place = { round: ROUND, kind: 'stack-height mm', site: 'heel' } as const;

  it('has the mean of both shoes at the distance from the runs', () => {
    const look = lookAtWear(log(fine), place, 'distance', null);
    expect(look?.points).toHaveLength(4 * PAIRS);
    expect(look?.points[1]).toMatchObject({
      x: 100_000,
      value: expect.closeTo(35.75, 9) as number,
    });
    expect(look?.direction).toBe('falls');
    expect(look?.leftAgainstRight).toBeNull();
    expect(look?.points.flatMap(({ warnings }) => warnings)).toEqual([]);
  });

  it('counts steps and force as the distance of a reference runner, and leaves out what it cannot', () => {
    const steps = lookAtWear(log({ ...fine, height: 1.75 }), place, 'steps', null);
    expect(steps?.leftOut).toBe(0);
    // 20 km at 5:00 a kilometre and 1.75 m: 1084 + 143.6 · 8.047 − 13.5 · 68.9 steps a mile (Hoeger 2008).
    const perMile = 1084 + (143.6 * 300 * 1609.344) / 60_000 - (13.5 * 1.75) / 0.0254;
    const expected = ((perMile / 1.609344) * 20 * 5) / 2 / PER_METRE.steps;
    expect(steps?.points[1]?.x).toBeCloseTo(expected, 3);
    const load = lookAtWear(log({ ...fine, height: 1.75 }), place, 'load', null);
    // 70 kg, faster than 3 m/s: a little more force a step than the reference.
    expect((load?.points[1]?.x ?? 0) / (steps?.points[1]?.x ?? 1)).toBeCloseTo(
      (2.51 + 0.16 * (1000 / 300 - 3)) / 2.51,
      9,
    );
    // Without a height only the readings of new pairs have a place.
    expect(lookAtWear(log(fine), place, 'steps', null)).toMatchObject({ leftOut: 3 * PAIRS });
  });

  it('is null where nothing was read', () => {
    expect(lookAtWear(log(fine), { ...place, site: 'toe' }, 'distance', null)).toBeNull();
  });
});

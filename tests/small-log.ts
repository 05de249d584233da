/**
 * A wear test that has just begun, invented: one round of six pairs with six testers, checked when they arrived, two runs,
 * one finding; or the same before anybody ran, measured or concluded.
 */
import type { Revision } from '../core/records/index.ts';
import { writeBundle } from '../core/records/index.ts';
import { idOf } from './core/records/make.ts';
import * as make from './core/review/log-for-tests.ts';
import { own, record } from './core/review/log-for-tests.ts';
import { brief, blueprint } from '../demo-data/scenario.ts';

const DAY_MS = 86_400_000;
const ROUND = idOf(2);
const PAIRS = 6;
const pairId = (at: number) => idOf(101 + at);
const testerId = (at: number) => idOf(201 + at);

const isoAt = (nowMs: number, daysAgo: number): string =>
  new Date(nowMs - daysAgo * DAY_MS).toISOString();

/** Each place of the blueprint on both shoes, a little off its number, as six samples are. */
const arrival = (at: number, nowMs: number): Revision =>
  own(idOf(401 + at), 'bench-check', {
    pair: pairId(at),
    at: isoAt(nowMs, 20),
    distanceM: 0,
    readings: blueprint.flatMap(({ measure, site, unit, nominal, upper }) =>
      (['left', 'right'] as const).map((foot, n) => ({
        ...{ measure, site, unit, foot },
        value: Math.round(10 * (nominal + upper * (((at + n) % 5) / 4 - 0.5))) / 10,
      })),
    ),
  });

const began = (nowMs: number): readonly Revision[] => [
  ...Array.from({ length: PAIRS }, (_, at) => arrival(at, nowMs)),
  make.run(idOf(501), { pair: pairId(0), tester: testerId(0) }, isoAt(nowMs, 3), {
    durationS: 3_300,
    surfaces: { road: 1 },
    comfort: { overall: 70, 'heel-hold': 55 },
    feet: {
      answer: 'complaints',
      complaints: [{ foot: 'left', zone: 'U10', kind: 'heel-slip', severity: 4, fromM: 3_000 }],
    },
    pain: { score: 0 },
    words: 'The heel lifts a little on the hills.',
  }),
  make.run(idOf(502), { pair: pairId(1), tester: testerId(1) }, isoAt(nowMs, 2), {
    durationS: 3_000,
    surfaces: { road: 1 },
    comfort: { overall: 78, 'heel-hold': 74 },
    feet: { answer: 'nothing' },
    pain: { score: 0 },
  }),
  own(idOf(601), 'finding', {
    ...{ round: ROUND, title: 'The heel slips', part: 'last', priority: 'medium' },
    ...{ kind: 'heel-slip', zone: 'U10', state: 'asked-for', source: 'complaint' },
    ...{ wanted: 'Draw in the heel curve', wantedMm: 1.5 },
  }),
];

/**
 * The revisions of such a test.
 * @param kind `empty`: nothing was run, measured or concluded yet
 */
export const smallLog = (kind: 'small' | 'empty', nowMs: number): readonly Revision[] => [
  make.project({ ...brief, attributes: [...brief.attributes], limits: [...brief.limits] }),
  make.round(ROUND, 1, { name: 'Round 1', foam: 'eva', blueprint: [...blueprint] }),
  ...Array.from({ length: PAIRS }, (_, at): readonly Revision[] => [
    record(testerId(at), 'tester', { code: `T0${at + 1}` }),
    make.pair(pairId(at), ROUND, String(311 + 7 * at), { sizeMm: 250 + 5 * at }),
    make.handOut(idOf(301 + at), { pair: pairId(at), tester: testerId(at) }, isoAt(nowMs, 14)),
  ]).flat(),
  ...(kind === 'small' ? began(nowMs) : []),
];

/** The same as the text of a file that a hub begins with. */
export const smallBundle = (kind: 'small' | 'empty', nowMs: number): string =>
  writeBundle(
    { madeAt: isoAt(nowMs, 0), group: idOf(8), groupName: 'Small', by: idOf(9) },
    smallLog(kind, nowMs),
  );

/** The log of a large group as sealed revisions, invented and seeded: for looking at screens that hold much. */
import {
  newRecordId,
  sealRevision,
  type DeviceId,
  type RecordId,
  type Revision,
  type Stamp,
} from '../../core/records/index.ts';
import { seeded } from '../seeded.ts';
import { blueprint, brief, changesOf, layers, readingsOf } from './large-brief.ts';
import { largePanel } from './large-panel.ts';

const START = Date.UTC(2026, 4, 1);
const DAY_MS = 86_400_000;
const ROUNDS = 4;
/** In a whole test one tester of so many goes on to a pair of the next round, halfway through. */
const CHANGES_OVER = 4;
/** In a whole test one pair of so many comes to the bench again and again. */
const MEASURED = 10;
/** On which days of the test, by the share of its length. */
const MEASURED_AT = [0.1, 0.25, 0.5, 0.8];
const MEAN_RUN_M = 9500;

export interface LargeGroup {
  readonly project: RecordId;
  readonly revisions: readonly Revision[];
}

interface Wearing {
  readonly pair: RecordId;
  readonly round: number;
  readonly fromDay: number;
}

/**
 * One pair a tester, a quarter of the testers in each round; `runs` over all of them.
 * @param whole also limits, changes between rounds, bench checks, damage, words, and testers who wear two rounds
 */
export const largeGroup = (testers: number, runs: number, whole = false): LargeGroup => {
  const random = seeded(7);
  let count = 0;
  const id = (): RecordId => {
    count++;
    return newRecordId(START + count, new Uint8Array(16).fill(count % 256));
  };
  const author = id();
  const revisions: Revision[] = [];
  const write = (record: RecordId, kind: string, body: Record<string, unknown>): RecordId => {
    const stamp = `${(START + count).toString(16).padStart(12, '0')}-0000-${'1'.padStart(16, '0') as DeviceId}`;
    revisions.push(sealRevision({ id: record, kind, author, sv: 1, body }, stamp as Stamp, null));
    return record;
  };
  const at = (ms: number) => new Date(ms).toISOString().replace('.000Z', '+00:00');
  const days = Math.ceil(runs / testers);

  const project = write(id(), 'project', { name: 'Large demo (invented)', brief: brief(whole) });
  const rounds = Array.from({ length: ROUNDS }, (_, order) =>
    write(id(), 'round', {
      project,
      name: `Round ${order + 1}`,
      order: order + 1,
      stage: 'first-samples',
      changes: whole ? changesOf(order) : [],
      blueprint: whole ? blueprint : [],
      ...(whole && { foam: 'eva', layers: layers(order) }),
    }),
  );
  const people = Array.from({ length: testers }, (_, n) =>
    write(id(), 'tester', {
      code: `T${n + 1}`,
      ...(whole && { footLengthMm: { left: 262 + (n % 5), right: 262 + (n % 4) } }),
    }),
  );
  let pairCount = 0;
  const writePair = (round: number, tester: RecordId, fromDay: number, untilDay: number | null) => {
    const pair = write(id(), 'pair', {
      project,
      round: rounds[round],
      code: String(1000 + pairCount++),
      sizeMm: 265,
    });
    const until = untilDay !== null && { until: at(START + untilDay * DAY_MS - 1000) };
    const from = at(START + fromDay * DAY_MS);
    write(id(), 'hand-out', { project, pair, tester, from, ...until, blind: true });
    return { pair, round, fromDay };
  };
  const check = (pair: RecordId, round: number, day: number, distanceM: number) =>
    write(id(), 'bench-check', {
      project,
      pair,
      at: at(START + day * DAY_MS + 18 * 3_600_000),
      temperatureC: 22,
      readings: readingsOf(round, distanceM / 1000, day <= 0, random),
    });
  const wearings = people.map((tester, n): readonly Wearing[] => {
    const round = n % ROUNDS;
    const goesOn = whole && n % CHANGES_OVER === 0 && round + 1 < ROUNDS;
    const half = Math.floor(days / 2);
    const own = [writePair(round, tester, 0, goesOn ? half : null)];
    if (goesOn) own.push(writePair(round + 1, tester, half, null));
    return own;
  });
  const answers = largePanel(testers, runs, 1)[0] ?? [];
  for (const [n, { complaints }] of answers.entries()) {
    const who = n % testers;
    const day = Math.floor(n / testers);
    const worn = (wearings[who] as readonly Wearing[]).findLast(({ fromDay }) => fromDay <= day);
    write(id(), 'run', {
      project,
      pair: worn?.pair,
      tester: people[who],
      startedAt: at(START + day * DAY_MS + 6 * 3_600_000),
      distanceM: 8000 + (n % 7) * 500,
      distanceFrom: 'typed',
      durationS: 2700 + (n % 11) * 60,
      surfaces: { road: 1 },
      feet: complaints.length > 0 ? { answer: 'complaints', complaints } : { answer: 'nothing' },
      comfort: {
        overall: 60 + (n % 31),
        ...(whole && {
          'heel-cushioning': 75 - day / 20 - (n % 19),
          'toe-room': 50 + 5 * (worn?.round ?? 0) + (n % 23),
        }),
      },
      ...(whole && {
        pain: { score: n % 997 === 0 ? 6 : n % 41 === 0 ? 2 : 0 },
        ...(n % 50 === 0 && { words: 'Felt it on the way down, then no more.' }),
      }),
    });
  }
  if (whole) {
    for (const [n, own] of wearings.entries())
      for (const { pair, round, fromDay } of own) {
        check(pair, round, fromDay - 1, 0);
        if (n % MEASURED === 0)
          for (const share of MEASURED_AT) {
            const worn = Math.floor(share * (days - fromDay));
            check(pair, round, fromDay + worn, worn * MEAN_RUN_M);
          }
        if (n % 100 === 7)
          write(id(), 'damage-report', {
            project,
            pair,
            tester: people[n],
            at: at(START + (fromDay + 3) * DAY_MS),
            what: 'sole-peeling',
            foot: 'right',
          });
      }
    write(id(), 'finding', {
      project,
      round: rounds[0],
      title: 'Heel slips in the heel cup',
      part: 'upper-pattern',
      kind: 'heel-slip',
      zone: 'U10',
      priority: 'high',
      wanted: 'Draw in the heel curve',
      carriedBy: rounds[1],
      state: 'carried-out',
    });
  }
  return { project, revisions };
};

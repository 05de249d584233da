/** The log of a large group as sealed revisions, invented and seeded: for looking at screens that hold much. */
import {
  newRecordId,
  sealRevision,
  type DeviceId,
  type RecordId,
  type Revision,
  type Stamp,
} from '../../core/records/index.ts';
import { largePanel } from './large-panel.ts';

const START = Date.UTC(2026, 4, 1);
const DAY_MS = 86_400_000;
const ROUNDS = 4;

export interface LargeGroup {
  readonly project: RecordId;
  readonly revisions: readonly Revision[];
}

/** One pair a tester, a quarter of the testers in each round; `runs` over all of them. */
export const largeGroup = (testers: number, runs: number): LargeGroup => {
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

  const project = write(id(), 'project', {
    name: 'Large demo (invented)',
    brief: {
      runner: 'neutral',
      use: 'daily-training',
      surfaces: ['road'],
      distanceM: 600_000,
      allowedRate: { complaint: 0.05, pain: 0.01 },
      limits: [],
      attributes: ['overall'],
    },
  });
  const rounds = Array.from({ length: ROUNDS }, (_, order) =>
    write(id(), 'round', {
      project,
      name: `Round ${order + 1}`,
      order: order + 1,
      stage: 'first-samples',
      changes: [],
      blueprint: [],
    }),
  );
  const people = Array.from({ length: testers }, (_, n) =>
    write(id(), 'tester', { code: `T${n + 1}` }),
  );
  const pairs = people.map((tester, n) => {
    const pair = write(id(), 'pair', {
      project,
      round: rounds[n % ROUNDS],
      code: String(1000 + n),
      sizeMm: 265,
    });
    write(id(), 'hand-out', { project, pair, tester, from: at(START), blind: true });
    return pair;
  });
  const answers = largePanel(testers, runs, 1)[0] ?? [];
  for (const [n, { complaints }] of answers.entries()) {
    const who = n % testers;
    write(id(), 'run', {
      project,
      pair: pairs[who],
      tester: people[who],
      startedAt: at(START + Math.floor(n / testers) * DAY_MS + 6 * 3_600_000),
      distanceM: 8000 + (n % 7) * 500,
      distanceFrom: 'typed',
      durationS: 2700 + (n % 11) * 60,
      surfaces: { road: 1 },
      feet: complaints.length > 0 ? { answer: 'complaints', complaints } : { answer: 'nothing' },
      comfort: { overall: 60 + (n % 31) },
    });
  }
  return { project, revisions };
};

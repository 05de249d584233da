/**
 * Ten thousand schedules of saves, edits, erasures, flaky rounds, file exchange, wrong clocks, cloned and
 * restored devices and hubs: after quiet, every device holds the same log, and nothing that was logged is lost.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newRecordId, type RecordId, type Revision } from '../../core/records/index.ts';
import { seeded } from '../seeded.ts';
import { Device, Hub, sync, type Broken } from './model.ts';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const START = 1_780_000_000_000;

const idFor = (name: number, shared: boolean): RecordId =>
  newRecordId(START, new Uint8Array(16).fill(name).fill(shared ? 255 : name * 16, 15));

interface Options {
  /** Clocks are off by up to two days, or by years. */
  readonly skewMs: number;
  /** The hub may be restored from a backup and phones cloned. */
  readonly disasters: boolean;
  readonly broken?: Broken;
}

/** Runs one schedule and names what went wrong; empty where all is well. */
const runSchedule = async (seed: number, options: Options): Promise<ReadonlySet<string>> => {
  const random = seeded(seed);
  const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)] as T;
  const skew = () => Math.round((random() * 2 - 1) * options.skewMs);
  const { broken = {} } = options;
  const hub = new Hub();
  const devices = Array.from(
    { length: 2 + Math.floor(random() * 3) },
    (_, at) =>
      new Device(
        idFor(at + 1, false),
        String(at).padStart(16, '0'),
        at === 0 || random() < 0.4,
        skew(),
        broken,
      ),
  );
  const ledger: { revision: Revision; edited: string | null }[] = [];
  let backup = hub.backup();
  let restored = false;
  let nowMs = START;

  for (let step = 0; step < 25; step++) {
    nowMs += Math.floor(random() * 6 * HOUR);
    const device = pick(devices);
    device.nowMs = nowMs;
    const what = random();
    if (what < 0.45) {
      const shared = random() < 0.5;
      const owner = shared ? 9 : devices.indexOf(device) + 1;
      const id = idFor(20 + owner * 3 + Math.floor(random() * 2), shared);
      const edited = device.kept.histories.get(id)?.head;
      const revision = device.save(id, `step ${step}`, random() < 0.1);
      ledger.push({ revision, edited: edited ? `${edited.stamp} ${edited.hash}` : null });
    } else if (what < 0.75) await sync(hub, device, random, true);
    else if (what < 0.82) {
      // A file from one to another, in any order; whoever sees all carries it on to the hub.
      const other = pick(devices);
      const file = device
        .held()
        .filter(other.maySee)
        .sort(() => random() - 0.5);
      other.take(file);
      if (other.seesAll)
        for (const revision of file)
          other.kept.outbox.set(`${revision.id} ${revision.stamp} ${revision.hash}`, revision);
    } else if (what < 0.88) device.skewMs = skew();
    else if (!options.disasters) await sync(hub, device, random, false);
    else if (what < 0.92) backup = hub.backup();
    else if (what < 0.96) {
      hub.restore(backup);
      restored = true;
    } else if (devices.length < 6) devices.push(device.clone());
  }

  const alive = [...devices.flatMap((device) => device.held()), ...hub.rows.map((r) => r.revision)];
  for (let round = 0; round < 4; round++)
    for (const device of devices) {
      device.nowMs = nowMs;
      await sync(hub, device, random, false);
    }
  return judge(hub, devices, ledger, alive, restored);
};

const keyOf = ({ id, stamp, hash }: Revision) => `${id} ${stamp} ${hash}`;

const judge = (
  hub: Hub,
  devices: readonly Device[],
  ledger: readonly { revision: Revision; edited: string | null }[],
  alive: readonly Revision[],
  restored: boolean,
): ReadonlySet<string> => {
  const wrong = new Set<string>();
  const onHub = new Set(hub.rows.map(({ revision }) => keyOf(revision)));
  for (const revision of alive) if (!onHub.has(keyOf(revision))) wrong.add('lost on the hub');
  if (!restored)
    for (const { revision } of ledger) if (!onHub.has(keyOf(revision))) wrong.add('never arrived');
  for (const device of devices) {
    const held = device.held().map(keyOf).sort();
    const due = [...onHub].filter((key) => {
      const row = hub.rows.find(({ revision }) => keyOf(revision) === key);
      return row && device.maySee(row.revision);
    });
    const mine = new Set(held);
    if (due.some((key) => !mine.has(key))) wrong.add('a device lacks something');
    if (device.kept.outbox.size > 0) wrong.add('an outbox does not empty');
  }
  const all = devices.filter(({ seesAll }) => seesAll);
  const logs = all.map((device) => device.held().map(keyOf).sort().join('\n'));
  if (new Set(logs).size > 1) wrong.add('devices differ');
  for (const { revision, edited } of ledger)
    if (edited !== null && `${revision.stamp} ${revision.hash}` < edited)
      wrong.add('an edit lost to what it edited');
  return wrong;
};

/** Any schedule of this kind, by fast-check; a failure names its seed and what went wrong. */
const always = (runs: number, options: Options) =>
  fc.assert(
    fc.asyncProperty(fc.integer(), async (seed) => {
      expect([...(await runSchedule(seed, options))], `seed ${seed}`).toEqual([]);
    }),
    { numRuns: runs },
  );

describe('any schedule ends in the same log everywhere, and nothing is lost', () => {
  it('with clocks off by up to two days: 7,000 schedules', () =>
    always(7000, { skewMs: 2 * DAY, disasters: false }));
  it('with restored hubs and cloned phones: 2,500 schedules', () =>
    always(2500, { skewMs: 2 * DAY, disasters: true }));
  it('with clocks off by years: 500 schedules', () =>
    always(500, { skewMs: 3650 * DAY, disasters: true }));
});

/** How often each thing went wrong over the same seeds each time. */
const failures = async (runs: number, options: Options): Promise<Map<string, number>> => {
  const found = new Map<string, number>();
  for (let seed = 1; seed <= runs; seed++)
    for (const what of await runSchedule(seed, options))
      found.set(what, (found.get(what) ?? 0) + 1);
  return found;
};

describe('the checks notice a broken rule', () => {
  it.each([
    [
      'an edit stamped by the clock alone',
      { noStampAfter: true },
      'an edit lost to what it edited',
    ],
    ['an outbox cleared by the push answer', { clearOnAnswer: true }, 'lost on the hub'],
    ['a cursor that is a plain number', { plainCursor: true }, 'a device lacks something'],
  ] as const)('%s', async (_, broken, what) => {
    const found = await failures(300, { skewMs: 2 * DAY, disasters: true, broken });
    expect(found.get(what)).toBeGreaterThan(0);
  });
});

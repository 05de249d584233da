/** What the reminder reads of this device: its own calendar, and when a run was logged. */
import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import {
  dayOfRun,
  localTime,
  paceOf,
  readReminders,
} from '../../../app/phone/notices/reminders.ts';
import { newRecordId, sealRevision, type RecordOf } from '../../../core/records/index.ts';
import { idOf, stampAt } from '../../core/records/make.ts';

/** What a device in this zone reads of these instants: a process of its own, because a zone is one of a whole process. */
const inZone = async (zone: string, instants: readonly string[]) => {
  const file = new URL('../../../app/phone/notices/reminders.ts', import.meta.url);
  const script = `
    import { localTime } from ${JSON.stringify(file.href)};
    console.log(JSON.stringify(${JSON.stringify(instants)}.map((one) => localTime(Date.parse(one)))));`;
  const { stdout } = await promisify(execFile)(
    process.execPath,
    ['--import', 'tsx', '--input-type=module', '-e', script],
    { env: { ...process.env, TZ: zone } },
  );
  return JSON.parse(stdout) as readonly { day: number; minute: number }[];
};

const runAt = (startedAt: string, loggedMs: number, more: object = {}): RecordOf<'run'> => {
  const body = { pair: idOf(1), tester: idOf(2), startedAt, distanceM: 5000, ...more };
  const id = newRecordId(loggedMs, new Uint8Array(16));
  return {
    kind: 'run',
    body: body as unknown as RecordOf<'run'>['body'],
    revision: sealRevision({ id, kind: 'run', author: idOf(2), sv: 1, body }, stampAt(1), null),
  };
};

describe('the device’s own calendar', () => {
  it.each([
    ['Asia/Shanghai', [['2026-05-10T23:30:00Z', '2026-05-11', '07:30']]],
    ['America/New_York', [['2026-05-10T02:30:00Z', '2026-05-09', '22:30']]],
    [
      'Europe/Berlin',
      [
        // The hour that summer time leaves out, and the one that it has twice.
        ['2026-03-29T01:30:00Z', '2026-03-29', '03:30'],
        ['2026-10-25T00:30:00Z', '2026-10-25', '02:30'],
        ['2026-10-25T01:30:00Z', '2026-10-25', '02:30'],
      ],
    ],
  ] as const)(
    'in %s',
    async (zone, rows) => {
      const read = await inZone(
        zone,
        rows.map(([instant]) => instant),
      );
      const utc = (text: string) => Date.parse(`${text}Z`) / 60_000;
      expect(read).toEqual(
        rows.map(([, day, time]) => ({
          day: utc(`${day}T00:00`) / 1440,
          minute: utc(`1970-01-01T${time}`),
        })),
      );
    },
    20_000,
  );
});

describe('a run as the reminder reads it', () => {
  it('is of the day on which it began, logged when its record was made', () => {
    const began = '2026-05-10T18:00:00Z';
    const logged = Date.parse('2026-05-11T06:15:20Z');
    expect(dayOfRun(runAt(began, logged))).toEqual({
      day: localTime(Date.parse(began)).day,
      loggedAt: localTime(logged).minute,
    });
    expect(localTime(logged).minute).not.toBe(localTime(Date.parse(began)).minute);
  });

  it('has no hour where a lead brought it in', () => {
    const brought = { broughtIn: { by: idOf(3), at: '2026-05-12T08:00:00Z', dayOnly: true } };
    const run = runAt('2026-05-10T18:00:00Z', Date.parse('2026-05-12T08:00:00Z'), brought);
    expect(dayOfRun(run).loggedAt).toBeNull();
  });

  it('makes a pace once there is enough to tell', () => {
    const runs = [1, 3, 5, 7].map((day) => ({ day, loggedAt: 1100 + day }));
    expect(paceOf(runs.slice(0, 3))).toBeNull();
    expect(paceOf(runs)).toEqual({ everyDays: 2, minute: 1103 });
    expect(paceOf(runs.map((run) => ({ ...run, loggedAt: null })))).toBeNull();
  });
});

describe('what the device keeps of the reminders', () => {
  it.each([[undefined], [null], ['on'], [{ on: 'yes' }], [{ on: true }]])(
    'is nothing where %j is kept',
    async (kept) => {
      const setting = () => Promise.resolve(kept);
      expect(await readReminders({ setting })).toEqual({ on: false, asked: false, reminded: null });
    },
  );
});

/**
 * Is the tester to be reminded of a run now? The rule is in core; here it is asked of this device's own records and
 * calendar. Nothing of it leaves the device.
 */
import * as z from 'zod/mini';
import {
  ownPace,
  reminderAt,
  standingStop,
  usualMinute,
  type DayOfRun,
  type Reminder,
} from '../../../core/mileage/index.ts';
import { standingReplies, type RecordId, type RecordOf } from '../../../core/records/index.ts';
import type { Store } from '../../store/index.ts';
import { heldPairs } from '../own-mileage.ts';
import { isOff } from '../pair-off.ts';

/** Under this name the device keeps what follows. */
const KEY = 'reminders';

const whole = z.number().check(z.int());
const keptSchema = z.object({
  on: z.boolean(),
  /** Whether the card that offers it was answered. */
  asked: z.boolean(),
  reminded: z.nullable(z.object({ since: whole, day: whole, count: whole, closed: z.boolean() })),
});
export type Reminders = z.infer<typeof keptSchema>;

const NONE: Reminders = { on: false, asked: false, reminded: null };

type From = Pick<Store, 'setting' | 'saveSetting' | 'list'>;

export const readReminders = async (from: Pick<Store, 'setting'>): Promise<Reminders> => {
  const read = z.safeParse(keptSchema, await from.setting(KEY));
  return read.success ? read.data : NONE;
};

export const changeReminders = async (
  from: Pick<Store, 'setting' | 'saveSetting'>,
  change: Partial<Reminders>,
): Promise<void> => from.saveSetting(KEY, { ...(await readReminders(from)), ...change });

/** A day and a minute of the device's own calendar. */
export const localTime = (ms: number): { readonly day: number; readonly minute: number } => {
  const at = new Date(ms);
  return {
    day: Math.floor((ms - at.getTimezoneOffset() * 60_000) / 86_400_000),
    minute: 60 * at.getHours() + at.getMinutes(),
  };
};

/** When a record was made: the first 48 bits of its id (UUIDv7). */
const madeMs = (id: RecordId): number => Number.parseInt(id.replace('-', '').slice(0, 12), 16);

/** A run as the reminder reads it; one that a lead brought in was not logged by the tester at any hour. */
export const dayOfRun = ({ revision, body }: RecordOf<'run'>): DayOfRun => ({
  day: localTime(Date.parse(body.startedAt)).day,
  loggedAt: body.broughtIn ? null : localTime(madeMs(revision.id)).minute,
});

export interface OwnPace {
  readonly everyDays: number;
  readonly minute: number;
}

/** How often and when the tester logs; null while there is too little to tell. */
export const paceOf = (runs: readonly DayOfRun[]): OwnPace | null => {
  const everyDays = ownPace(runs.map(({ day }) => day));
  const minute = usualMinute(runs.flatMap(({ loggedAt }) => loggedAt ?? []));
  return everyDays === null || minute === null ? null : { everyDays, minute };
};

/** Whether the tester holds a pair that may be worn. */
const holdsOne = async (from: From, tester: RecordId, nowMs: number): Promise<boolean> => {
  const [pairs, handOuts, runs, stops, replies, reports] = await Promise.all([
    from.list('pair'),
    from.list('hand-out'),
    from.list('run'),
    from.list('stop-use'),
    from.list('reply'),
    from.list('damage-report'),
  ]);
  const standing = standingReplies(replies);
  return heldPairs(tester, pairs, handOuts, runs, nowMs).some(({ pair, ownRuns }) => {
    const { id } = pair.revision;
    const told = { runs: ownRuns, replies: standing };
    const own = reports.filter(({ body }) => body.pair === id);
    return standingStop(stops, id, nowMs) === null && !isOff({ ...told, reports: own });
  });
};

/** What is to be said now; null where nothing is: reminders are off, say. What was said is kept. */
export const remindNow = async (
  from: From,
  tester: RecordId,
  nowMs: number,
): Promise<(Reminder & { readonly due: true }) | null> => {
  const { on, reminded } = await readReminders(from);
  if (!on) return null;
  const runs = (await from.list('run')).filter(({ body }) => body.tester === tester);
  const reminder = reminderAt(runs.map(dayOfRun), reminded, localTime(nowMs));
  if (!reminder.due || !(await holdsOne(from, tester, nowMs))) return null;
  if (reminder.reminded !== reminded) await changeReminders(from, { reminded: reminder.reminded });
  return reminder;
};

/** The worker listens under this name. */
export const PERIODIC_TAG = 'run-due';
const LOOK_EVERY_MS = 3 * 3_600_000;

/** Periodic Background Sync; only Chromium has it, for apps on the home screen. */
interface WithPeriodicSync extends ServiceWorkerRegistration {
  readonly periodicSync?: {
    register(tag: string, options: { readonly minInterval: number }): Promise<void>;
    unregister(tag: string): Promise<void>;
  };
}

const periodicSync = async () =>
  ((await navigator.serviceWorker?.getRegistration()) as WithPeriodicSync | undefined)
    ?.periodicSync;

/** Whether the browser looks, while the app is closed, whether a run was due, and can show it on the icon. */
export const looksWhileClosed = async (): Promise<boolean> =>
  'setAppBadge' in navigator &&
  (await periodicSync()) !== undefined &&
  (await navigator.permissions.query({ name: 'periodic-background-sync' as PermissionName }).then(
    ({ state }) => state === 'granted',
    () => false,
  ));

export const turnReminders = async (from: From, on: boolean): Promise<void> => {
  await changeReminders(from, { on, asked: true });
  const looking = await periodicSync();
  // Refused where the app is not on the home screen: the card on Today works all the same.
  await (
    on
      ? looking?.register(PERIODIC_TAG, { minInterval: LOOK_EVERY_MS })
      : looking?.unregister(PERIODIC_TAG)
  )?.catch(() => undefined);
};

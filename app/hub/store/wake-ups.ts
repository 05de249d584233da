/** Which devices are to be woken now, and what came of it? Several hubs on one database never wake one twice. */
import type { DeviceId, RecordId } from '../../../core/records/index.ts';
import type { HubDatabase } from './database.ts';
import { dropWakeAddress, liveAddresses } from './waking.ts';

/** While a hub tries, no other does; a hub that died meanwhile is taken over from after this. */
const LEASE_MS = 60_000;

/** One device and everything that it is to be woken for: one message says it all. */
export interface WakeUp {
  readonly group: RecordId;
  readonly device: DeviceId;
  readonly records: readonly RecordId[];
  /** Tries so far, and when the oldest of them was asked for, ms since 1970. */
  readonly tries: number;
  readonly askedMs: number;
  readonly address: {
    readonly endpoint: string;
    readonly p256dh: string;
    readonly auth: string;
    readonly origin: string;
  };
}

/** The devices that are due, at most `limit` of them. */
export const dueDevices = (db: HubDatabase, nowMs: number, limit: number) =>
  db
    .selectFrom('wake_ups')
    .select(['group_id', 'device'])
    .distinct()
    .where('next_ms', '<=', nowMs)
    .limit(limit)
    .execute();

/** When the next of them is due; null where nothing waits. */
export const nextDue = async (db: HubDatabase): Promise<number | null> =>
  (
    await db
      .selectFrom('wake_ups')
      .select((eb) => eb.fn.min('next_ms').as('at'))
      .where('next_ms', 'is not', null)
      .executeTakeFirst()
  )?.at ?? null;

/** Takes what a device is due for; null where another hub took it, or where it has no address any more. */
export const takeWakeUp = async (
  db: HubDatabase,
  group: string,
  device: string,
  nowMs: number,
): Promise<WakeUp | null> => {
  const taken = await db
    .updateTable('wake_ups')
    .set({ next_ms: nowMs + LEASE_MS })
    .where('group_id', '=', group)
    .where('device', '=', device)
    .where('next_ms', '<=', nowMs)
    .returning(['record', 'tries', 'asked_ms'])
    .execute();
  if (taken.length === 0) return null;
  const address = await liveAddresses(db, group)
    .select(['endpoint', 'p256dh', 'auth', 'origin'])
    .where('wake_addresses.device', '=', device)
    .executeTakeFirst();
  if (!address) {
    await dropWakeAddress(db, group as RecordId, device as DeviceId);
    return null;
  }
  return {
    group: group as RecordId,
    device: device as DeviceId,
    records: taken.map(({ record }) => record as RecordId),
    tries: Math.max(...taken.map(({ tries }) => tries)),
    askedMs: Math.min(...taken.map(({ asked_ms }) => asked_ms)),
    address,
  };
};

/** Notes what came of a try. @param next when it is tried again, ms since 1970; null: sent or given up */
export const settleWakeUp = async (
  db: HubDatabase,
  { group, device, records, tries }: WakeUp,
  { sentMs, next }: { readonly sentMs: number | null; readonly next: number | null },
): Promise<void> => {
  await db
    .updateTable('wake_ups')
    .set({ sent_ms: sentMs, next_ms: next, tries: tries + 1 })
    .where('group_id', '=', group)
    .where('device', '=', device)
    .where('record', 'in', records)
    .execute();
};

/** Forgets an address of which the push service says that it is gone, unless the device has another one by now. */
export const dropGoneAddress = async (
  db: HubDatabase,
  { group, device, address }: WakeUp,
): Promise<void> => {
  const { numDeletedRows } = await db
    .deleteFrom('wake_addresses')
    .where('group_id', '=', group)
    .where('device', '=', device)
    .where('endpoint', '=', address.endpoint)
    .executeTakeFirstOrThrow();
  if (numDeletedRows > 0n) await dropWakeAddress(db, group, device);
};

/**
 * Which devices want to be woken, and which records are to wake them? A device has one address at a push service; it
 * ends with the device, with its signing out, and with the taking back of its member. What is to be sent is noted in the
 * transaction that takes the record in, so that no crash loses it.
 */
import type { Transaction } from 'kysely';
import { holdersOf } from '../../../core/mileage/index.ts';
import {
  readRecord,
  RECORD_ID_PATTERN,
  type DeviceId,
  type Reach,
  type RecordId,
  type RecordOf,
  type Revision,
  type WakeAddress,
} from '../../../core/records/index.ts';
import type { HubDatabase } from './database.ts';
import type { Tables } from './schema.ts';

type Writing = Transaction<Tables>;
type Row = Tables['revisions'];

export interface WakeKey {
  readonly publicKey: string;
  readonly privateKey: string;
}

/** The key pair of a group; `make` is asked where there is none. Of several hubs that ask at once one keeps its own. */
export const wakeKeyOf = async (
  db: HubDatabase,
  group: RecordId,
  make: () => WakeKey,
): Promise<WakeKey> => {
  const read = () =>
    db
      .selectFrom('wake_keys')
      .select(['public_key as publicKey', 'private_key as privateKey'])
      .where('group_id', '=', group)
      .executeTakeFirst();
  const known = await read();
  if (known) return known;
  const { publicKey, privateKey } = make();
  await db
    .insertInto('wake_keys')
    .values({ group_id: group, public_key: publicKey, private_key: privateKey })
    .onConflict((conflict) => conflict.doNothing())
    .execute();
  return (await read()) as WakeKey;
};

interface Asking {
  readonly group: RecordId;
  readonly device: DeviceId;
  readonly caller: { readonly member: RecordId };
}

/** Keeps where a device is reached, in place of what was known. A browser that was another device here is no more. */
export const keepWakeAddress = async (
  db: HubDatabase,
  { group, device, caller }: Asking,
  { endpoint, keys: { p256dh, auth } }: WakeAddress,
  origin: string,
): Promise<void> => {
  await db
    .deleteFrom('wake_addresses')
    .where('group_id', '=', group)
    .where('endpoint', '=', endpoint)
    .where('device', '!=', device)
    .execute();
  const address = { member_id: caller.member, endpoint, p256dh, auth, origin };
  await db
    .insertInto('wake_addresses')
    .values({ group_id: group, device, ...address })
    .onConflict((conflict) => conflict.columns(['group_id', 'device']).doUpdateSet(address))
    .execute();
};

export const hasWakeAddress = async (
  db: HubDatabase,
  { group, device, caller }: Asking,
): Promise<boolean> =>
  (await db
    .selectFrom('wake_addresses')
    .select('device')
    .where('group_id', '=', group)
    .where('device', '=', device)
    .where('member_id', '=', caller.member)
    .executeTakeFirst()) !== undefined;

/** Forgets where a device is reached, and what it was still to be woken for. */
export const dropWakeAddress = async (
  db: HubDatabase | Writing,
  group: RecordId,
  device: DeviceId,
): Promise<void> => {
  await db
    .deleteFrom('wake_addresses')
    .where('group_id', '=', group)
    .where('device', '=', device)
    .execute();
  await db
    .deleteFrom('wake_ups')
    .where('group_id', '=', group)
    .where('device', '=', device)
    .where('next_ms', 'is not', null)
    .execute();
};

/** Forgets everything of a member who took everything back. */
export const dropWaking = async (tx: Writing, group: string, member: string): Promise<void> => {
  for (const table of ['wake_addresses', 'wake_ups'] as const)
    await tx
      .deleteFrom(table)
      .where('group_id', '=', group)
      .where('member_id', '=', member)
      .execute();
};

/** The addresses of a group as far as they are still their members': of no device that was signed out or changed hands. */
export const liveAddresses = (db: HubDatabase | Writing, group: string) =>
  db
    .selectFrom('wake_addresses')
    .innerJoin('devices', (join) =>
      join
        .onRef('devices.group_id', '=', 'wake_addresses.group_id')
        .onRef('devices.device', '=', 'wake_addresses.device')
        .onRef('devices.member_id', '=', 'wake_addresses.member_id'),
    )
    .where('wake_addresses.group_id', '=', group)
    .where('devices.revoked', '=', 0);

const isLater = (a: Row, b: Row): boolean =>
  a.erased !== b.erased
    ? a.erased > b.erased
    : a.stamp !== b.stamp
      ? a.stamp > b.stamp
      : a.hash > b.hash;

/** The current revision of each of these records; a record that was taken back has none. */
const headsOf = async (
  tx: Writing,
  group: string,
  ids: readonly string[],
): Promise<ReadonlyMap<string, Row>> => {
  const heads = new Map<string, Row>();
  if (ids.length === 0) return heads;
  const rows = await tx
    .selectFrom('revisions')
    .selectAll()
    .where('group_id', '=', group)
    .where('id', 'in', ids)
    .execute();
  for (const row of rows) {
    const other = heads.get(row.id);
    if (!other || isLater(row, other)) heads.set(row.id, row);
  }
  return heads;
};

const recordIn = ({ json }: Row) =>
  json === null ? null : readRecord(JSON.parse(json) as Revision);

/** Who of these members holds one of the pairs now. */
const holdersAmong = async (
  tx: Writing,
  group: string,
  members: readonly string[],
  pairs: readonly RecordId[],
  nowMs: number,
): Promise<ReadonlySet<string>> => {
  const once = await tx
    .selectFrom('revisions')
    .select('id')
    .distinct()
    .where('group_id', '=', group)
    .where('audience', 'in', members)
    .where('kind', '=', 'hand-out')
    .execute();
  const heads = await headsOf(
    tx,
    group,
    once.map(({ id }) => id),
  );
  const handOuts = [...heads.values()].flatMap((row): RecordOf<'hand-out'>[] => {
    const read = recordIn(row);
    return read?.ok && read.record.kind === 'hand-out' ? [read.record] : [];
  });
  return holdersOf(pairs, handOuts, nowMs);
};

/** The kinds of record that wake a phone, and whose. Nothing else ever does. */
const WAKES: Readonly<Record<string, 'holders' | 'audience'>> = {
  'stop-use': 'holders',
  question: 'audience',
};

/** Whom a record wakes as it stands; null where it wakes nobody, or no longer. */
const wokenBy = async (
  tx: Writing,
  group: string,
  row: Row,
  members: readonly string[],
  nowMs: number,
): Promise<ReadonlySet<string> | null> => {
  const read = recordIn(row);
  if (WAKES[row.kind] === 'audience') {
    const isOver =
      read === null ||
      (read.ok
        ? read.record.kind === 'question' && read.record.body.withdrawn !== undefined
        : read.why === 'gone');
    return isOver || !RECORD_ID_PATTERN.test(row.audience) ? null : new Set([row.audience]);
  }
  if (!read?.ok || read.record.kind !== 'stop-use') return null;
  const { pairs, until } = read.record.body;
  return until !== undefined && Date.parse(until) <= nowMs
    ? null
    : holdersAmong(tx, group, members, pairs, nowMs);
};

/**
 * Notes which devices these revisions are to wake: each once for a record, however often that is written. What was taken
 * back or ended before it went out wakes nobody.
 */
export const noteWakeUps = async (
  tx: Writing,
  group: string,
  rows: readonly Pick<Row, 'id' | 'kind'>[],
  nowMs: number,
): Promise<void> => {
  const ids = rows.filter(({ kind }) => kind in WAKES).map(({ id }) => id);
  if (ids.length === 0) return;
  const addresses = await liveAddresses(tx, group)
    .select(['wake_addresses.device', 'wake_addresses.member_id as member'])
    .execute();
  if (addresses.length === 0) return;
  const members = [...new Set(addresses.map(({ member }) => member))];
  for (const [record, row] of await headsOf(tx, group, [...new Set(ids)])) {
    const woken = await wokenBy(tx, group, row, members, nowMs);
    if (!woken)
      await tx
        .deleteFrom('wake_ups')
        .where('group_id', '=', group)
        .where('record', '=', record)
        .where('next_ms', 'is not', null)
        .execute();
    const fresh = addresses
      .filter(({ member }) => woken?.has(member))
      .map(({ device, member }) => ({
        ...{ group_id: group, device, record, member_id: member },
        ...{ asked_ms: nowMs, next_ms: nowMs, tries: 0, sent_ms: null },
      }));
    if (fresh.length > 0)
      await tx
        .insertInto('wake_ups')
        .values(fresh)
        .onConflict((conflict) => conflict.doNothing())
        .execute();
  }
};

/** Who of the group could be woken, and who was by this record. */
export const reachOf = async (
  db: HubDatabase,
  group: RecordId,
  record: RecordId,
): Promise<Reach> => {
  const on = await liveAddresses(db, group)
    .select('wake_addresses.member_id as member')
    .distinct()
    .execute();
  const woken = await db
    .selectFrom('wake_ups')
    .select((eb) => ['member_id as member', eb.fn.min('sent_ms').as('sentAt')])
    .where('group_id', '=', group)
    .where('record', '=', record)
    .groupBy('member_id')
    .execute();
  return {
    on: on.map(({ member }) => member as RecordId),
    woken: woken.map(({ member, sentAt }) => ({ member: member as RecordId, sentAt })),
  };
};

/** Who belongs to a group, with which devices, and who is invited? Codes and tokens are kept as hashes only. */
import {
  INVITE_HOURS,
  sha256OfText,
  type Caller,
  type DeviceId,
  type RecordId,
  type Role,
} from '../../../core/records/index.ts';
import type { Transaction } from 'kysely';
import { isFull, type HubDatabase } from './database.ts';
import type { Tables } from './schema.ts';
import { dropWakeAddress } from './waking.ts';

const CROCKFORD = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

export interface Device {
  readonly group: RecordId;
  readonly device: DeviceId;
  readonly caller: Caller;
  readonly revoked: boolean;
}

/** Ten characters of Crockford's base 32: 50 random bits. */
export const newInviteCode = (random: (bytes: number) => Uint8Array): string =>
  Array.from(random(10), (byte) => CROCKFORD[byte % 32]).join('');

const withMembers = (db: HubDatabase | Transaction<Tables>) =>
  db
    .selectFrom('devices')
    .innerJoin('members', (join) =>
      join
        .onRef('members.group_id', '=', 'devices.group_id')
        .onRef('members.member_id', '=', 'devices.member_id'),
    );

/**
 * The device that holds this token; null where none does. Looked up by hash, so no comparison leaks
 * time. A renewed token takes the place of the one before when it first comes.
 */
export const deviceOfToken = async (db: HubDatabase, token: string): Promise<Device | null> => {
  const hash = sha256OfText(token);
  const row = await withMembers(db)
    .select(['devices.group_id', 'device', 'devices.member_id', 'role', 'revoked', 'next_hash'])
    .where((eb) => eb.or([eb('token_hash', '=', hash), eb('next_hash', '=', hash)]))
    .executeTakeFirst();
  if (!row) return null;
  if (row.next_hash === hash)
    await db
      .updateTable('devices')
      .set({ token_hash: hash, next_hash: null })
      .where('group_id', '=', row.group_id)
      .where('next_hash', '=', hash)
      .execute();
  return {
    group: row.group_id as RecordId,
    device: row.device as DeviceId,
    caller: { member: row.member_id as RecordId, role: row.role as Role },
    revoked: row.revoked === 1,
  };
};

/** Keeps a token that the device made to take the place of its own. May be repeated. */
export const renewToken = async (
  db: HubDatabase,
  { group, device }: Device,
  token: string,
  nowMs: number,
): Promise<void> => {
  await db
    .updateTable('devices')
    .set({ next_hash: sha256OfText(token), token_ms: nowMs })
    .where('group_id', '=', group)
    .where('device', '=', device)
    .execute();
};

/** Adds an invite; keeps only the hash of its code. @returns when it expires, in epoch milliseconds */
export const addInvite = async (
  db: HubDatabase,
  group: RecordId,
  code: string,
  role: Role,
  member: RecordId | null,
  nowMs: number,
): Promise<number> => {
  const expires = nowMs + INVITE_HOURS * 3_600_000;
  await db
    .insertInto('invites')
    .values({
      group_id: group,
      code_hash: sha256OfText(code),
      role,
      member_id: member,
      expires_ms: expires,
      used_by: null,
    })
    .execute();
  return expires;
};

/** What an invite that can still be used says. */
export interface Invited {
  readonly groupName: string;
  readonly role: Role;
  /** What the group calls the tester; null for leads and specialists, and where the record is not here. */
  readonly tester: string | null;
}

/** The code by which the group calls a tester, by the record as it stands. */
const codeOfTester = async (
  db: HubDatabase,
  group: string,
  tester: string,
): Promise<string | null> => {
  const head = await db
    .selectFrom('revisions')
    .select('json')
    .where('group_id', '=', group)
    .where('id', '=', tester)
    .where('kind', '=', 'tester')
    .orderBy('stamp', 'desc')
    .orderBy('hash', 'desc')
    .limit(1)
    .executeTakeFirst();
  if (!head?.json) return null;
  const { body } = JSON.parse(head.json) as { body: { code?: unknown } | null };
  return typeof body?.code === 'string' ? body.code : null;
};

/** What a code would make of a device, without using it; null where there is no such code, or it is used or too old. */
export const lookAtInvite = async (
  db: HubDatabase,
  code: string,
  nowMs: number,
): Promise<Invited | null> => {
  const invite = await db
    .selectFrom('invites')
    .innerJoin('groups', 'groups.group_id', 'invites.group_id')
    .select(['invites.group_id', 'name', 'role', 'member_id'])
    .where('code_hash', '=', sha256OfText(code))
    .where('used_by', 'is', null)
    .where('expires_ms', '>=', nowMs)
    .executeTakeFirst();
  if (!invite) return null;
  const { group_id, name, role, member_id } = invite;
  return {
    groupName: name,
    role: role as Role,
    tester:
      role === 'tester' && member_id !== null ? await codeOfTester(db, group_id, member_id) : null,
  };
};

export interface Join {
  readonly code: string;
  /** The token of the member that this device was before, where it was one. */
  readonly before?: string | undefined;
  readonly token: string;
  readonly device: DeviceId;
  readonly deviceName: string;
}

export interface Joined {
  readonly group: RecordId;
  readonly groupName: string;
  readonly caller: Caller;
  /** It came in before; only the answer was lost. */
  readonly again?: true;
}

/**
 * Uses an invite. The same code with the same device and token may come again: its answer was lost.
 * @param newMember id for a member whom the invite does not name
 * @returns null where there is no such invite, it has expired, or another device used it;
 *   `other-device` where a device of another member already goes by this id
 */
export const joinByInvite = (
  db: HubDatabase,
  join: Join,
  nowMs: number,
  newMember: () => RecordId,
): Promise<Joined | 'other-device' | null> =>
  db.transaction().execute(async (tx) => {
    // Written first, so that of two devices with one code the second waits and then sees it used.
    const invite = await tx
      .updateTable('invites')
      .set((eb) => ({ used_by: eb.ref('used_by') }))
      .where('code_hash', '=', sha256OfText(join.code))
      .returningAll()
      .executeTakeFirst();
    if (!invite) return null;
    const { name: groupName } = await tx
      .selectFrom('groups')
      .select('name')
      .where('group_id', '=', invite.group_id)
      .executeTakeFirstOrThrow();
    const tokenHash = sha256OfText(join.token);
    const usedBy = `${join.device} ${tokenHash}`;
    const group = invite.group_id as RecordId;
    const role = invite.role as Role;
    if (invite.used_by !== null) {
      if (invite.used_by !== usedBy || invite.member_id === null) return null;
      // Only the answer was lost: the device is there, with this very token, and nobody signed it out.
      const still = await tx
        .selectFrom('devices')
        .select('device')
        .where('group_id', '=', group)
        .where('device', '=', join.device)
        .where('member_id', '=', invite.member_id)
        .where('token_hash', '=', tokenHash)
        .where('revoked', '=', 0)
        .executeTakeFirst();
      const caller = { member: invite.member_id as RecordId, role };
      return still ? { group, groupName, caller, again: true } : null;
    }
    if (invite.expires_ms < nowMs) return null;
    const member = (invite.member_id as RecordId | null) ?? newMember();
    const known = await tx
      .selectFrom('members')
      .select('role')
      .where('group_id', '=', group)
      .where('member_id', '=', member)
      .executeTakeFirst();
    // A member keeps the role that they came in with.
    if (known && known.role !== role) return null;
    const sameId = await tx
      .selectFrom('devices')
      .select(['member_id', 'token_hash', 'revoked'])
      .where('group_id', '=', group)
      .where('device', '=', join.device)
      .executeTakeFirst();
    // Ids of devices are no secret: without its token nobody signs the device of another out.
    if (
      sameId?.revoked === 0 &&
      sameId.member_id !== member &&
      (join.before === undefined || sha256OfText(join.before) !== sameId.token_hash)
    )
      return 'other-device';
    await tx
      .insertInto('members')
      .values({ group_id: group, member_id: member, role, joined_ms: nowMs })
      .onConflict((conflict) => conflict.doNothing())
      .execute();
    // A device that joins anew (a second code, another role) replaces what it was.
    await dropWakeAddress(tx, group, join.device);
    await tx
      .deleteFrom('devices')
      .where('group_id', '=', group)
      .where('device', '=', join.device)
      .execute();
    await tx
      .insertInto('devices')
      .values({
        group_id: group,
        device: join.device,
        member_id: member,
        token_hash: tokenHash,
        token_ms: nowMs,
        name: join.deviceName,
        joined_ms: nowMs,
        seen_ms: nowMs,
        revoked: 0,
      })
      .execute();
    await tx
      .updateTable('invites')
      .set({ used_by: usedBy, member_id: member })
      .where('group_id', '=', group)
      .where('code_hash', '=', invite.code_hash)
      .execute();
    return { group, groupName, caller: { member, role } };
  });

export const devicesOf = async (db: HubDatabase, group: RecordId) => {
  const rows = await withMembers(db)
    .select([
      'device',
      'devices.member_id',
      'role',
      'name',
      'devices.joined_ms',
      'seen_ms',
      'revoked',
    ])
    .where('devices.group_id', '=', group)
    .orderBy('devices.joined_ms')
    .execute();
  return rows.map((row) => ({
    device: row.device,
    member: row.member_id,
    role: row.role,
    name: row.name,
    joinedAt: row.joined_ms,
    seenAt: row.seen_ms,
    revoked: row.revoked === 1,
  }));
};

/**
 * Signs a device out; answers whether that changed anything. With a lead's device the codes that are still
 * open end too: whoever held it may have made them.
 */
export const revokeDevice = (
  db: HubDatabase,
  group: RecordId,
  device: DeviceId,
): Promise<boolean> =>
  db.transaction().execute(async (tx) => {
    const owner = await withMembers(tx)
      .select('role')
      .where('devices.group_id', '=', group)
      .where('device', '=', device)
      .where('revoked', '=', 0)
      .executeTakeFirst();
    if (!owner) return false;
    // The codes before the device, as a join takes them.
    if (owner.role === 'lead')
      await tx
        .deleteFrom('invites')
        .where('group_id', '=', group)
        .where('used_by', 'is', null)
        .execute();
    const { numUpdatedRows } = await tx
      .updateTable('devices')
      .set({ revoked: 1 })
      .where('group_id', '=', group)
      .where('device', '=', device)
      .where('revoked', '=', 0)
      .executeTakeFirst();
    await dropWakeAddress(tx, group, device);
    return numUpdatedRows > 0n;
  });

export const memberOfDevice = async (
  db: HubDatabase,
  group: RecordId,
  device: DeviceId,
): Promise<RecordId | null> => {
  const row = await db
    .selectFrom('devices')
    .select('member_id')
    .where('group_id', '=', group)
    .where('device', '=', device)
    .executeTakeFirst();
  return (row?.member_id as RecordId | undefined) ?? null;
};

/** More exactly nobody needs it, and each time is a write to the disk. */
const SEEN_EVERY_MS = 60_000;

/** Notes that a device was here; not where the disk is full, for what it came for is then to be read. */
export const noteSeen = async (
  db: HubDatabase,
  { group, device }: Device,
  nowMs: number,
): Promise<void> => {
  try {
    await db
      .updateTable('devices')
      .set({ seen_ms: nowMs })
      .where('group_id', '=', group)
      .where('device', '=', device)
      .where('seen_ms', '<', nowMs - SEEN_EVERY_MS)
      .execute();
  } catch (error) {
    if (!isFull(error)) throw error;
  }
};

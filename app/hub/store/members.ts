/** Who belongs to a group, with which devices, and who is invited? Codes and tokens are kept as hashes only. */
import {
  sha256OfText,
  type DeviceId,
  type RecordId,
  type Role,
} from '../../../core/records/index.ts';
import type { Caller } from '../policy.ts';
import type { HubDatabase } from './sqlite.ts';

export const INVITE_HOURS = 72;
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

/** The device that holds this token; null where none does. Looked up by hash, so no comparison leaks time. */
export const deviceOfToken = async (db: HubDatabase, token: string): Promise<Device | null> => {
  const row = await db
    .selectFrom('devices')
    .innerJoin('members', (join) =>
      join
        .onRef('members.group_id', '=', 'devices.group_id')
        .onRef('members.member_id', '=', 'devices.member_id'),
    )
    .select(['devices.group_id', 'device', 'devices.member_id', 'role', 'revoked'])
    .where('token_hash', '=', sha256OfText(token))
    .executeTakeFirst();
  if (!row) return null;
  return {
    group: row.group_id as RecordId,
    device: row.device as DeviceId,
    caller: { member: row.member_id as RecordId, role: row.role as Role },
    revoked: row.revoked === 1,
  };
};

/** Makes a group; does nothing where it is already there. */
export const makeGroup = async (
  db: HubDatabase,
  group: RecordId,
  name: string,
  nowMs: number,
): Promise<void> => {
  await db
    .insertInto('groups')
    .values({
      group_id: group,
      name,
      last_seq: 0,
      last_chain: '0000000000000000',
      created_ms: nowMs,
    })
    .onConflict((conflict) => conflict.doNothing())
    .execute();
};

export const firstGroup = async (
  db: HubDatabase,
): Promise<{ group: RecordId; name: string } | null> => {
  const row = await db
    .selectFrom('groups')
    .select(['group_id', 'name'])
    .orderBy('created_ms')
    .executeTakeFirst();
  return row ? { group: row.group_id as RecordId, name: row.name } : null;
};

/** Adds an invite and answers nothing: the code itself is known only to who made it. */
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

export interface Join {
  readonly code: string;
  readonly token: string;
  readonly device: DeviceId;
  readonly deviceName: string;
}

/**
 * Uses an invite. The same code with the same device and token may come again: its answer was lost.
 * @param newMember id for a member whom the invite does not name
 * @returns null where there is no such invite, it has expired, or another device used it
 */
export const joinByInvite = (
  db: HubDatabase,
  join: Join,
  nowMs: number,
  newMember: () => RecordId,
): Promise<{ group: RecordId; groupName: string; caller: Caller } | null> =>
  db.transaction().execute(async (tx) => {
    const invite = await tx
      .selectFrom('invites')
      .innerJoin('groups', 'groups.group_id', 'invites.group_id')
      .selectAll('invites')
      .select('groups.name')
      .where('code_hash', '=', sha256OfText(join.code))
      .executeTakeFirst();
    if (!invite) return null;
    const tokenHash = sha256OfText(join.token);
    const usedBy = `${join.device} ${tokenHash}`;
    const group = invite.group_id as RecordId;
    const role = invite.role as Role;
    if (invite.used_by !== null) {
      if (invite.used_by !== usedBy || invite.member_id === null) return null;
      const caller = { member: invite.member_id as RecordId, role };
      return { group, groupName: invite.name, caller };
    }
    if (Number(invite.expires_ms) < nowMs) return null;
    const member = (invite.member_id as RecordId | null) ?? newMember();
    await tx
      .insertInto('members')
      .values({ group_id: group, member_id: member, role, joined_ms: nowMs })
      .onConflict((conflict) => conflict.doNothing())
      .execute();
    // A device that joins anew (a second code, another role) replaces what it was.
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
    return { group, groupName: invite.name, caller: { member, role } };
  });

export const devicesOf = async (db: HubDatabase, group: RecordId) => {
  const rows = await db
    .selectFrom('devices')
    .innerJoin('members', (join) =>
      join
        .onRef('members.group_id', '=', 'devices.group_id')
        .onRef('members.member_id', '=', 'devices.member_id'),
    )
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
    joinedAt: Number(row.joined_ms),
    seenAt: Number(row.seen_ms),
    revoked: row.revoked === 1,
  }));
};

/** Answers whether there was such a device. */
export const revokeDevice = async (
  db: HubDatabase,
  group: RecordId,
  device: DeviceId,
): Promise<boolean> => {
  const result = await db
    .updateTable('devices')
    .set({ revoked: 1 })
    .where('group_id', '=', group)
    .where('device', '=', device)
    .executeTakeFirst();
  return Number(result.numUpdatedRows) > 0;
};

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

export const noteSeen = async (
  db: HubDatabase,
  { group, device }: Device,
  nowMs: number,
): Promise<void> => {
  await db
    .updateTable('devices')
    .set({ seen_ms: nowMs })
    .where('group_id', '=', group)
    .where('device', '=', device)
    .execute();
};

/** Notes who did what, never what it said. */
export const noteAudit = async (
  db: HubDatabase,
  entry: {
    readonly group: RecordId;
    readonly atMs: number;
    readonly member: RecordId | null;
    readonly device: DeviceId | null;
    readonly what: string;
    readonly subject: string | null;
  },
): Promise<void> => {
  await db
    .insertInto('audit')
    .values({
      group_id: entry.group,
      at_ms: entry.atMs,
      member_id: entry.member,
      device: entry.device,
      what: entry.what,
      subject: entry.subject,
    })
    .execute();
};

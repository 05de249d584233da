/**
 * How does a device come back whose browser cleared its storage? By a secret that the hub set as a cookie
 * out of every script's reach: browsers that evict what pages wrote keep such cookies. As with tokens,
 * only its hash is kept here.
 */
import {
  sha256OfText,
  type DeviceId,
  type RecordId,
  type Role,
} from '../../../core/records/index.ts';
import type { HubDatabase } from './database.ts';
import type { Joined } from './members.ts';
import { dropWakeAddress } from './waking.ts';

/** Gives a device, known by its group, id and token, the secret to come back with. */
export const keepReturn = async (
  db: HubDatabase,
  group: RecordId,
  device: DeviceId,
  token: string,
  secret: string,
): Promise<void> => {
  await db
    .updateTable('devices')
    .set({ return_hash: sha256OfText(secret) })
    .where('group_id', '=', group)
    .where('device', '=', device)
    .where('token_hash', '=', sha256OfText(token))
    .execute();
};

export interface Return {
  readonly secret: string;
  readonly nextSecret: string;
  readonly token: string;
  readonly device: DeviceId;
  readonly deviceName: string;
}

/**
 * The same member on a new device, in place of the one that was cleared: the old token is worth nothing
 * from now on, and the secret is used up.
 * @returns null where nobody has this secret, or a lead signed the device out; `other-device` where a
 *   device of another member already goes by this id
 */
export const returnBySecret = (
  db: HubDatabase,
  { secret, nextSecret, token, device, deviceName }: Return,
  nowMs: number,
): Promise<Joined | 'other-device' | null> =>
  db.transaction().execute(async (tx) => {
    const cleared = await tx
      .selectFrom('devices')
      .innerJoin('groups', 'groups.group_id', 'devices.group_id')
      .innerJoin('members', (join) =>
        join
          .onRef('members.group_id', '=', 'devices.group_id')
          .onRef('members.member_id', '=', 'devices.member_id'),
      )
      .select([
        'devices.group_id',
        'device',
        'devices.member_id',
        'devices.name',
        'return_hash',
        'role',
        'groups.name as groupName',
      ])
      .where((eb) =>
        eb.or([
          eb('return_hash', '=', sha256OfText(secret)),
          // The answer to the same return was lost: the same device with the same token asks again.
          eb.and([
            eb('return_before', '=', sha256OfText(secret)),
            eb('device', '=', device),
            eb('token_hash', '=', sha256OfText(token)),
          ]),
        ]),
      )
      .where('revoked', '=', 0)
      .executeTakeFirst();
    if (!cleared) return null;
    const { group_id, member_id } = cleared;
    const sameId = await tx
      .selectFrom('devices')
      .select('member_id')
      .where('group_id', '=', group_id)
      .where('device', '=', device)
      .executeTakeFirst();
    if (sameId && sameId.member_id !== member_id) return 'other-device';
    // Used up by whoever drops the row: of two at once the second finds nothing left.
    const { numDeletedRows } = await tx
      .deleteFrom('devices')
      .where('group_id', '=', group_id)
      .where('device', '=', cleared.device)
      .where('return_hash', '=', cleared.return_hash)
      .where('revoked', '=', 0)
      .executeTakeFirstOrThrow();
    if (numDeletedRows === 0n) return null;
    for (const gone of [cleared.device, device])
      await dropWakeAddress(tx, group_id as RecordId, gone as DeviceId);
    await tx
      .deleteFrom('devices')
      .where('group_id', '=', group_id)
      .where('device', '=', device)
      .execute();
    await tx
      .insertInto('devices')
      .values({
        group_id,
        device,
        member_id,
        token_hash: sha256OfText(token),
        token_ms: nowMs,
        return_hash: sha256OfText(nextSecret),
        return_before: sha256OfText(secret),
        name: deviceName || cleared.name,
        joined_ms: nowMs,
        seen_ms: nowMs,
        revoked: 0,
      })
      .execute();
    return {
      group: group_id as RecordId,
      groupName: cleared.groupName,
      caller: { member: member_id as RecordId, role: cleared.role as Role },
    };
  });

/** Who did what in a group, and when? Never what it said. */
import { newRecordId, type DeviceId, type RecordId } from '../../../core/records/index.ts';
import type { HubDatabase } from './database.ts';

export interface AuditEntry {
  readonly group: RecordId;
  readonly atMs: number;
  readonly member: RecordId | null;
  readonly device: DeviceId | null;
  /** `join`, `return`, `invite tester`, `revoke`, `take back` … */
  readonly what: string;
  /** The device, tester or record that it was done to. */
  readonly subject: string | null;
}

/** Notes an entry. `random` gives as many random bytes as it is asked for. */
export const noteAudit = async (
  db: HubDatabase,
  { group, atMs, member, device, what, subject }: AuditEntry,
  random: (bytes: number) => Uint8Array,
): Promise<void> => {
  await db
    .insertInto('audit')
    .values({
      group_id: group,
      entry: newRecordId(atMs, random(16)),
      at_ms: atMs,
      member_id: member,
      device,
      what,
      subject,
    })
    .execute();
};

/** The latest entries of a group, latest first; `before` is the entry that the page before ended with. */
export const auditOf = async (
  db: HubDatabase,
  group: RecordId,
  before: string | null,
  limit: number,
) => {
  const rows = await db
    .selectFrom('audit')
    .selectAll()
    .where('group_id', '=', group)
    .$if(before !== null, (query) => query.where('entry', '<', before))
    .orderBy('entry', 'desc')
    .limit(limit)
    .execute();
  return rows.map((row) => ({
    entry: row.entry,
    atMs: row.at_ms,
    member: row.member_id,
    device: row.device,
    what: row.what,
    subject: row.subject,
  }));
};

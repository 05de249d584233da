/** How much may one member send in a day? Counted in the transaction that writes, so that none slips by. */
import { sql, type Transaction } from 'kysely';
import type { Caller } from '../../../core/records/index.ts';
import type { Tables } from './schema.ts';

export interface Quota {
  readonly revisionsPerDay: number;
  readonly attachmentBytesPerDay: number;
  /** Days since 1970, UTC. */
  readonly day: number;
}

export const NO_QUOTA: Quota = {
  revisionsPerDay: Number.POSITIVE_INFINITY,
  attachmentBytesPerDay: Number.POSITIVE_INFINITY,
  day: 0,
};

/** A tester's day is some runs and photos, a specialist's some proposals and sketches; a lead may bring in a log by file. Judgement, no source. */
const PER_DAY: Readonly<
  Record<Caller['role'], Pick<Quota, 'revisionsPerDay' | 'attachmentBytesPerDay'>>
> = {
  tester: { revisionsPerDay: 5_000, attachmentBytesPerDay: 100 * 4_194_304 },
  specialist: { revisionsPerDay: 1_000, attachmentBytesPerDay: 25 * 4_194_304 },
  lead: { revisionsPerDay: 1_000_000, attachmentBytesPerDay: 2_000 * 4_194_304 },
};

const DAY_MS = 86_400_000;

export const quotaOf = ({ role }: Caller, nowMs: number): Quota => ({
  ...PER_DAY[role],
  day: Math.floor(nowMs / DAY_MS),
});

/** Seconds until the next day, when the count begins anew. */
export const secondsToNextDay = (nowMs: number): number =>
  Math.ceil((DAY_MS - (nowMs % DAY_MS)) / 1000);

/** Counts what is about to be stored; false where it would pass the quota, and then nothing is counted. */
export const useQuota = async (
  tx: Transaction<Tables>,
  group: string,
  { member }: Caller,
  { revisions = 0, attachmentBytes = 0 }: { revisions?: number; attachmentBytes?: number },
  quota: Quota,
): Promise<boolean> => {
  if (quota === NO_QUOTA) return true;
  const used = await tx
    .insertInto('usage')
    .values({
      group_id: group,
      member_id: member,
      day: quota.day,
      revisions,
      attachment_bytes: attachmentBytes,
    })
    .onConflict((conflict) =>
      conflict.columns(['group_id', 'member_id', 'day']).doUpdateSet({
        revisions: sql`usage.revisions + ${revisions}`,
        attachment_bytes: sql`usage.attachment_bytes + ${attachmentBytes}`,
      }),
    )
    .returning(['revisions', 'attachment_bytes'])
    .executeTakeFirstOrThrow();
  if (
    used.revisions <= quota.revisionsPerDay &&
    used.attachment_bytes <= quota.attachmentBytesPerDay
  )
    return true;
  await tx
    .updateTable('usage')
    .set({
      revisions: sql`usage.revisions - ${revisions}`,
      attachment_bytes: sql`usage.attachment_bytes - ${attachmentBytes}`,
    })
    .where('group_id', '=', group)
    .where('member_id', '=', member)
    .where('day', '=', quota.day)
    .execute();
  return false;
};

/** What stands at this instant: a stop-use notice, a lead's answer, a report of damage? */
import type { Reply } from './bodies/answering.ts';
import type { StopUse } from './bodies/making.ts';
import type { RecordOf } from './body.ts';
import type { RecordId } from './id.ts';

/** True from its beginning until it was lifted. @param nowMs milliseconds since 1970 */
export const isStanding = ({ from, until }: StopUse, nowMs: number): boolean =>
  Date.parse(from) <= nowMs && (until === undefined || nowMs < Date.parse(until));

/** The reply that stands about each record: the latest that advises, by its stamp. Words alone settle nothing. */
export const standingReplies = (
  replies: readonly RecordOf<'reply'>[],
): ReadonlyMap<RecordId, RecordOf<'reply'>> => {
  const latest = new Map<RecordId, RecordOf<'reply'>>();
  for (const reply of replies) {
    if (reply.body.advice === undefined) continue;
    const other = latest.get(reply.body.about);
    if (!other || other.revision.stamp < reply.revision.stamp) latest.set(reply.body.about, reply);
  }
  return latest;
};

/**
 * Whether a report keeps its pair from being worn: until a lead says go on. A report that was taken back is no
 * record any more.
 * @param reply the one that stands about the report
 */
export const damageStands = (reply: Reply | undefined): boolean => reply?.advice !== 'go-on';

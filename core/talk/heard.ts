/** What has a tester to read of what came of their reports? The latest of each finding; the oldest unread comes first. */
import type { RecordId, RecordOf } from '../records/index.ts';
import { writtenMs } from './questions.ts';

type ThanksRecord = RecordOf<'thanks'>;

/** Of each finding what was told last: how it ended takes the place of "a round carries it". Oldest first. */
export const latestThanks = (thanks: readonly ThanksRecord[]): readonly ThanksRecord[] => {
  const latest = new Map<RecordId, ThanksRecord>();
  for (const one of thanks) {
    const before = latest.get(one.body.finding);
    if (!before || writtenMs(one) >= writtenMs(before)) latest.set(one.body.finding, one);
  }
  return [...latest.values()].sort((a, b) => writtenMs(a) - writtenMs(b));
};

/**
 * The one to show next; null: all are read.
 * @param thanks to this tester
 * @param read those that were read on this device
 */
export const nextThanks = (
  thanks: readonly ThanksRecord[],
  read: ReadonlySet<string>,
): ThanksRecord | null =>
  latestThanks(thanks).find(({ revision }) => !read.has(revision.id)) ?? null;

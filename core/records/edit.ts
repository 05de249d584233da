/** How does a saved change become a revision? */
import { addToHistory, type History } from './log.ts';
import type { Revision } from './revision.ts';
import { sealRevision, type UnsealedRevision } from './seal.ts';
import { nextStamp, stampAfter, type Clock } from './stamp.ts';

export interface Saved {
  readonly clock: Clock;
  readonly revision: Revision;
  readonly history: History;
}

/**
 * Stamps and seals a draft on top of what this device knows of the record, so that the change wins
 * over everything its author had seen. All three parts of the answer belong in one transaction.
 */
export const saveDraft = (
  clock: Clock,
  nowMs: number,
  history: History | undefined,
  draft: UnsealedRevision,
): Saved => {
  const head = history?.head;
  const next = head ? stampAfter(clock, nowMs, head.stamp) : nextStamp(clock, nowMs);
  const revision = sealRevision(draft, next.stamp, head?.stamp ?? null);
  return { clock: next.clock, revision, history: addToHistory(history, revision) };
};

/**
 * What does the log hold, and what is the current state of each record?
 *
 * A log is a grow-only set of revisions, kept as one history per record. Merging two logs is the
 * union of two sets, so it is idempotent, commutative and associative. One thing shrinks it: an
 * erasure absorbs every other revision of its record, whenever and in whichever order they come;
 * that too is a function of the set alone, so merging keeps its three properties.
 */
import type { RecordId } from './id.ts';
import { compareRevisions, type Revision } from './revision.ts';

/** All revisions known of one record. */
export interface History {
  /** The current state: the greatest by (stamp, hash), or the erasure. */
  readonly head: Revision;
  /** The others, oldest first. */
  readonly older: readonly Revision[];
}

export type Log = ReadonlyMap<RecordId, History>;

const ofOne = (head: Revision): History => ({ head, older: [] });

/** The history with one more revision; the same object where the revision adds nothing. */
export const addToHistory = (history: History | undefined, added: Revision): History => {
  if (!history) return ofOne(added);
  const { head, older } = history;
  if (added.erased || head.erased) {
    if (!added.erased) return history;
    return head.erased && compareRevisions(added, head) <= 0 ? history : ofOne(added);
  }
  const order = compareRevisions(added, head);
  if (order === 0) return history;
  if (order > 0) return { head: added, older: [...older, head] };
  let at = older.length;
  for (; at > 0; at--) {
    const step = compareRevisions(older[at - 1] as Revision, added);
    if (step === 0) return history;
    if (step < 0) break;
  }
  return { head, older: [...older.slice(0, at), added, ...older.slice(at)] };
};

/** The log with these revisions added, in any order, any number of times. `log` is not changed. */
export const addRevisions = (log: Log, revisions: Iterable<Revision>): Log => {
  const grown = new Map(log);
  for (const revision of revisions)
    grown.set(revision.id, addToHistory(grown.get(revision.id), revision));
  return grown;
};

export const emptyLog: Log = new Map();

/** Every revision of the log, record by record, oldest first. */
export function* revisionsOf(log: Log): Generator<Revision> {
  for (const { head, older } of log.values()) {
    yield* older;
    yield head;
  }
}

/**
 * The revisions that lost to one whose author had not seen them: to be shown beside the current
 * state, newest first. The head's author had seen everything up to the stamp it was edited from.
 */
export const unseenByHead = ({ head, older }: History): readonly Revision[] =>
  older.filter((revision) => head.prev === null || revision.stamp > head.prev).reverse();

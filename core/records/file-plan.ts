/**
 * What of a file may a device take in by itself, and what only if its person says so?
 *
 * Revisions in a file carry no proof of who wrote them, and neither does its header. So a file is held to the
 * policy of the hub as if whoever made it were sending it: what that member could not have written is asked about,
 * author by author, and what the hub would not send to this device stays out of it.
 */
import type { RecordId, Sha256 } from './id.ts';
import { isKind, kindsOfSpecialists, kindsOfTesters } from './kinds.ts';
import { addToHistory, type History, type Log } from './log.ts';
import {
  audiencesIn,
  heldAs,
  mayRead,
  mayWrite,
  recordNamedIn,
  recordShownIn,
  type Caller,
  type HeldRecord,
} from './policy.ts';
import { compareRevisions, type Revision } from './revision.ts';

/** Whether only leads write such a revision. */
export const isOfLeads = ({ kind, body }: Revision): boolean =>
  body !== null && isKind(kind) && !kindsOfTesters.has(kind) && !kindsOfSpecialists.has(kind);

/** The members who wrote what only leads write. */
export const leadsIn = (log: Log): ReadonlySet<RecordId> => {
  const leads = new Set<RecordId>();
  for (const { head, older } of log.values())
    for (const revision of [head, ...older]) if (isOfLeads(revision)) leads.add(revision.author);
  return leads;
};

export const isTesterIn = (log: Log, member: RecordId): boolean =>
  log.get(member)?.head.kind === 'tester';

/** Whether the log knows this member by an answer to a finding, and as nobody else. */
const isSpecialistIn = (log: Log, member: RecordId): boolean => {
  if (isTesterIn(log, member) || leadsIn(log).has(member)) return false;
  for (const { head } of log.values())
    if (head.kind === 'proposal' && head.author === member) return true;
  return false;
};

/**
 * As whom a file is held to the policy that says it is by this member; null: as nobody, so that all is asked about.
 * A lead's device believes no file to be a lead's, because a tester can name a lead in the header as well.
 */
export const makerAt = (taker: Caller, by: RecordId | undefined, log: Log): Caller | null => {
  if (by === undefined) return null;
  if (taker.role === 'lead') {
    if (isTesterIn(log, by)) return { member: by, role: 'tester' };
    return isSpecialistIn(log, by) ? { member: by, role: 'specialist' } : null;
  }
  if (by === taker.member) return taker;
  return leadsIn(log).has(by) ? { member: by, role: 'lead' } : null;
};

export interface FilePlan {
  /** New here, for this device, and such as the maker of the file may write: taken in without a question. */
  readonly taken: readonly Revision[];
  /** New here and for this device, but not such as the maker may write. */
  readonly asked: readonly Revision[];
  /** Already here, or without effect because their record was taken back. */
  readonly known: number;
  /** Not for the member of this device: they stay out whatever is chosen. */
  readonly away: number;
}

/** A log that revisions are added to one by one, with what is held of each record. */
const growing = (log: Log) => {
  const histories = new Map<RecordId, History>();
  const held = new Map<RecordId, HeldRecord>();
  const historyOf = (id: RecordId) => histories.get(id) ?? log.get(id);
  return {
    headOf: (id: RecordId) => historyOf(id)?.head,
    lacks: (revision: Revision) => {
      const history = historyOf(revision.id);
      return addToHistory(history, revision) !== history;
    },
    heldOf: (id: RecordId | null): HeldRecord | null => {
      if (id === null) return null;
      const history = log.get(id);
      return held.get(id) ?? (history ? (audiencesIn(history).at(-1)?.held ?? null) : null);
    },
    add: (revision: Revision, as: HeldRecord) => {
      const after = addToHistory(historyOf(revision.id), revision);
      histories.set(revision.id, after);
      if (after.head === revision) held.set(revision.id, as);
    },
  };
};

/** The records that quotes name, here or in the file: whoever has a quote hears that its source was taken back. */
const quotedIn = (revisions: readonly Revision[], log: Log): ReadonlySet<RecordId> => {
  const held = [...log.values()].flatMap(({ head, older }) => [head, ...older]);
  return new Set(
    [...held, ...revisions].flatMap((one) =>
      one.kind === 'quote' ? (recordShownIn(one) ?? []) : [],
    ),
  );
};

/** Holds the revisions of a file to the policy; `log` is what the device holds. Their order does not matter. */
export const planFile = (
  revisions: readonly Revision[],
  taker: Caller,
  maker: Caller | null,
  log: Log,
): FilePlan => {
  /** What the device holds with what is taken, and what it would hold with all of the file: whom an erasure concerns. */
  const [believed, whole] = [growing(log), growing(log)];
  const taken: Revision[] = [];
  const asked = new Map<Sha256, Revision>();
  const quoted = taker.role === 'specialist' ? quotedIn(revisions, log) : new Set<RecordId>();
  let known = 0;
  let away = 0;
  for (const revision of [...revisions].sort(compareRevisions)) {
    const { id, hash } = revision;
    const about = recordShownIn(revision);
    // Nothing more comes of a record that was taken back, nor of a photo of it.
    const isGone = [id, about].some((one) => one !== null && believed.headOf(one)?.erased === true);
    if (isGone || asked.has(hash) || !believed.lacks(revision)) {
      known++;
      continue;
    }
    const next = heldAs(revision, whole.heldOf(id));
    whole.add(revision, next);
    const ends = revision.erased === true && quoted.has(id);
    if (!mayRead(taker, next) && !ends) away++;
    else if (
      maker &&
      mayWrite(maker, revision, believed.heldOf(id), believed.heldOf(recordNamedIn(revision)))
    ) {
      taken.push(revision);
      believed.add(revision, next);
    } else asked.set(hash, revision);
  }
  return { taken, asked: [...asked.values()], known, away };
};

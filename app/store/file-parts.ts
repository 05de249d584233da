/** How does a file that is opened fall into parts: what is taken in by itself, and what a person has to choose? */
import {
  addRevisions,
  changesByFile,
  emptyLog,
  isOfLeads,
  isTesterIn,
  leadsIn,
  makerAt,
  planFile,
  type BundleHeader,
  type FileChange,
  type FilePlan,
  type Log,
  type RecordId,
  type Revision,
} from '../../core/records/index.ts';
import type { Session } from './session.ts';

/** A member as this device knows them. */
export interface Person {
  readonly member: RecordId;
  readonly is: 'self' | 'tester' | 'lead' | 'unknown';
  /** Of a tester. */
  readonly code: string | null;
  readonly name: string | null;
}

export interface FilePart {
  readonly entries: number;
  readonly changes: readonly FileChange[];
}

export interface AskedPart extends FilePart {
  /** What is chosen by. */
  readonly key: string;
  /** Who wrote it, as the file says. */
  readonly author: Person;
  readonly erases: boolean;
}

export interface SortedFile {
  readonly maker: Person | null;
  readonly plan: FilePlan;
  /** The part that a revision belongs to where it is asked about. */
  keyOf(revision: Revision): string;
  personOf(member: RecordId): Person;
}

/**
 * Whose device a file makes of one that is nobody's yet; null: nobody's. A hand-out file sets up its tester's phone, a
 * specialist's file that specialist's.
 * A backup by a lead can set up that lead's own new device: only a lead's holds what only leads write.
 */
export const settingUp = (
  { for: tester, forSpecialist, by, group, groupName = '' }: BundleHeader,
  revisions: readonly Revision[],
): Session | null => {
  if (!group) return null;
  const of = { group, groupName, hub: null };
  if (tester) return { ...of, member: tester, role: 'tester' };
  if (forSpecialist) return { ...of, member: forSpecialist, role: 'specialist' };
  const isLeads = revisions.some((revision) => revision.author === by && isOfLeads(revision));
  return by && isLeads ? { ...of, member: by, role: 'lead' } : null;
};

const textOf = (value: unknown): string | null => (typeof value === 'string' ? value : null);

/** Tells who a member is, by what a log knows of them. */
const peopleOf = (log: Log, self: RecordId | null): ((member: RecordId) => Person) => {
  const leads = leadsIn(log);
  return (member) => {
    const isTester = isTesterIn(log, member);
    const body = isTester ? log.get(member)?.head.body : null;
    const known = isTester ? 'tester' : leads.has(member) ? 'lead' : 'unknown';
    return {
      member,
      is: member === self ? 'self' : known,
      code: textOf(body?.['code']),
      name: textOf(body?.['name']),
    };
  };
};

/** Key of all that a backup brings to a device that it makes the lead's. */
const BACKUP = 'backup';

/**
 * Sorts what a file holds for the member of a device.
 * @param isNew the file makes the device that member's: nothing is here yet that it could change
 */
export const sortFile = (
  header: BundleHeader,
  revisions: readonly Revision[],
  { member, role }: Pick<Session, 'member' | 'role'>,
  isNew: boolean,
  log: Log,
): SortedFile => {
  const { by } = header;
  const taker = { member, role };
  // A file that does not say whose log it is says nothing of its maker that could be held against the log here.
  const maker = isNew
    ? role === 'lead'
      ? null
      : ({ member: by ?? member, role: 'lead' } as const)
    : makerAt(taker, header.group ? by : undefined, log);
  // A device that was nobody's knows people only from the file.
  const personOf = isNew
    ? peopleOf(addRevisions(emptyLog, revisions), null)
    : peopleOf(log, member);
  return {
    maker: by ? personOf(by) : null,
    plan: planFile(revisions, taker, maker, log),
    keyOf: (revision) =>
      isNew ? BACKUP : `${revision.author}${revision.body === null ? ' erases' : ''}`,
    personOf,
  };
};

/** What some revisions of a file would change. */
export const partOf = (
  revisions: readonly Revision[],
  file: readonly Revision[],
  log: Log,
): FilePart => ({ entries: revisions.length, changes: changesByFile(revisions, file, log) });

/** What has to be chosen, by author; what erases stands by itself. */
export const askedParts = (
  { plan, keyOf, personOf }: SortedFile,
  file: readonly Revision[],
  log: Log,
): readonly AskedPart[] => {
  const parts = new Map<string, Revision[]>();
  for (const revision of plan.asked) {
    const key = keyOf(revision);
    const part = parts.get(key);
    if (part) part.push(revision);
    else parts.set(key, [revision]);
  }
  return [...parts].map(([key, revisions]) => ({
    ...partOf(revisions, file, log),
    key,
    author: personOf((revisions[0] as Revision).author),
    erases: key !== BACKUP && revisions[0]?.body === null,
  }));
};

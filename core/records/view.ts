/** What does a log say now: the readable records by kind, and what had to be left out? */
import { readRecord, type BodyProblem, type RecordOf } from './body.ts';
import type { RecordId } from './id.ts';
import { kinds, type Kind } from './kinds.ts';
import type { Log } from './log.ts';
import { recordShownIn } from './policy.ts';
import type { Revision } from './revision.ts';

export interface LeftOut {
  readonly id: RecordId;
  readonly kind: string;
  /** What it is called, or when it was: for people to recognise it. Null: it says neither. */
  readonly called: string | null;
  readonly why: 'unknown-kind' | 'newer-schema' | 'unreadable';
  readonly problems?: readonly BodyProblem[];
}

/** The current state of every record that this version can read, by kind and then by id. */
export type Records = { readonly [K in Kind]: readonly RecordOf<K>[] } & {
  readonly leftOut: readonly LeftOut[];
};

/** Fields that a record is recognised by, the best first. A tester's name is none: it stays in the group. */
const callingFields = ['code', 'title', 'name', 'startedAt', 'at', 'from'] as const;

/** What a record that cannot be read is called; a text of any length, from anybody, is cut. */
const calledOf = ({ kind, body }: Revision): string | null => {
  const found = callingFields
    .filter((field) => kind !== 'tester' || field === 'code')
    .map((field) => body?.[field])
    .find((value) => typeof value === 'string' && value !== '');
  return typeof found === 'string' ? found.slice(0, 60) : null;
};

/** A quote is not shown while what it quotes is erased; an erasure for good takes it along. */
const withoutOrphans = (heads: readonly Revision[]): Revision[] => {
  const gone = new Set(heads.flatMap(({ id, body }) => (body === null ? [id] : [])));
  return heads.filter((head) => {
    const source = head.kind === 'quote' ? recordShownIn(head) : null;
    return source === null || !gone.has(source);
  });
};

/** The view of current revisions (heads), in whatever order they come. */
export const viewOfHeads = (all: Iterable<Revision>): Records => {
  const heads = withoutOrphans([...all]);
  const byKind = new Map<Kind, RecordOf<Kind>[]>(kinds.map((kind) => [kind, []]));
  const leftOut: LeftOut[] = [];
  for (const head of heads.sort((a, b) => (a.id < b.id ? -1 : 1))) {
    const read = readRecord(head);
    if (read.ok) (byKind.get(read.record.kind) as RecordOf<Kind>[]).push(read.record);
    else if (read.why !== 'gone') {
      const { id, kind } = head;
      const problems = read.why === 'unreadable' ? { problems: read.problems } : {};
      leftOut.push({ id, kind, called: calledOf(head), why: read.why, ...problems });
    }
  }
  return { ...Object.fromEntries(byKind), leftOut } as unknown as Records;
};

/** The view of a whole log. */
export const viewOfLog = (log: Log): Records =>
  viewOfHeads([...log.values()].map(({ head }) => head));

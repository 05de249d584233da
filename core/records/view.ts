/** What does a log say now: the readable records by kind, and what had to be left out? */
import { readRecord, type BodyProblem, type RecordOf } from './body.ts';
import type { RecordId } from './id.ts';
import { kinds, type Kind } from './kinds.ts';
import type { Log } from './log.ts';
import type { Revision } from './revision.ts';

export interface LeftOut {
  readonly id: RecordId;
  readonly kind: string;
  readonly why: 'unknown-kind' | 'newer-schema' | 'unreadable';
  readonly problems?: readonly BodyProblem[];
}

/** The current state of every record that this version can read, by kind and then by id. */
export type Records = { readonly [K in Kind]: readonly RecordOf<K>[] } & {
  readonly leftOut: readonly LeftOut[];
};

/** The view of current revisions (heads), in whatever order they come. */
export const viewOfHeads = (heads: Iterable<Revision>): Records => {
  const byKind = new Map<Kind, RecordOf<Kind>[]>(kinds.map((kind) => [kind, []]));
  const leftOut: LeftOut[] = [];
  for (const head of [...heads].sort((a, b) => (a.id < b.id ? -1 : 1))) {
    const read = readRecord(head);
    if (read.ok) (byKind.get(read.record.kind) as RecordOf<Kind>[]).push(read.record);
    else if (read.why !== 'gone') {
      const { id, kind } = head;
      const problems = read.why === 'unreadable' ? { problems: read.problems } : {};
      leftOut.push({ id, kind, why: read.why, ...problems });
    }
  }
  return { ...Object.fromEntries(byKind), leftOut } as unknown as Records;
};

/** The view of a whole log. */
export const viewOfLog = (log: Log): Records =>
  viewOfHeads([...log.values()].map(({ head }) => head));

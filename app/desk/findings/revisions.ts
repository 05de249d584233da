/** What was changed in a finding, when and by whom: its revisions, told by the fields that differ. */
import {
  stampParts,
  type Body,
  type Finding,
  type History,
  type RecordId,
  type Revision,
} from '../../../core/records/index.ts';

/** The fields whose change is told; others are kept and not looked at. */
export const toldFields = [
  'title',
  'part',
  'priority',
  'state',
  'wanted',
  'wantedMm',
  'carriedBy',
  'evidence',
  'outcome',
  'photos',
] as const satisfies readonly (keyof Finding)[];
export type ToldField = (typeof toldFields)[number];

export interface ToldRevision {
  readonly hash: string;
  readonly author: RecordId;
  /** Milliseconds since 1970, by the clock of the device that saved it. */
  readonly atMs: number;
  readonly what: 'written' | 'changed' | 'erased' | 'restored';
  readonly changes: readonly {
    readonly field: ToldField;
    /** Undefined where the field was not there. */
    readonly from: unknown;
    readonly to: unknown;
  }[];
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

const changesOf = (before: Body, after: Body): ToldRevision['changes'] =>
  toldFields.flatMap((field) =>
    same(before[field], after[field]) ? [] : [{ field, from: before[field], to: after[field] }],
  );

/** One revision beside the one that it was edited from. */
const told = (
  revision: Revision,
  before: Revision | undefined,
  last: Body | null,
): ToldRevision => {
  const { hash, author, stamp, body } = revision;
  const atMs = stampParts(stamp).ms;
  const of = { hash, author, atMs };
  if (body === null) return { ...of, what: 'erased', changes: [] };
  if (!before) return { ...of, what: 'written', changes: [] };
  const changes = last === null ? [] : changesOf(last, body);
  return { ...of, what: before.body === null ? 'restored' : 'changed', changes };
};

/**
 * Every revision of a finding, newest first. Each is held against the revision that its author had before
 * them, so what two people did at the same time is told of each by itself.
 */
export const revisionsOf = ({ head, older }: History): readonly ToldRevision[] => {
  const all = [...older, head];
  const byStamp = new Map(all.map((revision) => [revision.stamp as string, revision]));
  /** The last words before a revision, over erasures in between. */
  const bodyBefore = (revision: Revision | undefined): Body | null => {
    for (let one = revision; one; one = one.prev === null ? undefined : byStamp.get(one.prev))
      if (one.body !== null) return one.body;
    return null;
  };
  return all
    .map((revision, at) => {
      // One whose earlier revision never came here is held against the one before it in time.
      const before =
        revision.prev === null ? undefined : (byStamp.get(revision.prev) ?? all[at - 1]);
      return told(revision, before, bodyBefore(before));
    })
    .reverse();
};

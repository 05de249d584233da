/**
 * Who may write and read what? The whole of it, as pure functions over one table of roles: the hub asks them of
 * every revision that comes or goes, and a device of every file that it takes in.
 */
import { RECORD_ID_PATTERN, type RecordId } from './id.ts';
import { audienceOf, isKind, kindsOfTesters } from './kinds.ts';
import type { History } from './log.ts';
import type { Revision } from './revision.ts';
import type { Role } from './role.ts';

export interface Caller {
  readonly member: RecordId;
  readonly role: Role;
}

/** What is held of a record before a new revision of it. */
export interface HeldRecord {
  readonly author: string;
  readonly kind: string;
  readonly audience: string;
}

export const EVERYONE = '*';
/** Leads and specialists: findings and reports. */
export const SPECIALISTS = '+';
export const LEADS_ONLY = '';

/** Whether this record is the member's: they wrote it, or it is about them. */
const isOf = (member: RecordId, { author, audience }: HeldRecord): boolean =>
  author === member || audience === member;

/** Whether a tester may write this record, and so name photos in it. */
const isWrittenBy = (tester: RecordId, held: HeldRecord): boolean =>
  isKind(held.kind) && kindsOfTesters.has(held.kind) && isOf(tester, held);

/**
 * Whether the caller may add this revision.
 * @param about what is held of the record that an attachment names; null: nothing yet, it may come
 *   later, and who could name it before it was here made it
 */
export const mayWrite = (
  { member, role }: Caller,
  revision: Revision,
  held: HeldRecord | null,
  about: HeldRecord | null,
): boolean => {
  switch (role) {
    case 'lead':
      return true;
    case 'specialist':
      return false;
    case 'tester': {
      const { kind, author, body } = revision;
      if (author !== member || !isKind(kind)) return false;
      // What the group noted of a tester's body is the tester's to take back, and nothing else of it.
      if (kind === 'tester') return revision.erased === true && revision.id === member;
      if (!kindsOfTesters.has(kind)) return false;
      if (body !== null && 'tester' in body && body['tester'] !== member) return false;
      // They say that a lead wrote this.
      if (body !== null && ('correctedBy' in body || 'broughtIn' in body)) return false;
      if (about && !isWrittenBy(member, about)) return false;
      return !held || (held.kind === kind && isOf(member, held));
    }
  }
};

/** Who receives a revision besides its author and the leads; a deletion goes where the record went. */
export const audienceOfRevision = (revision: Revision, held: HeldRecord | null): string => {
  const { kind, id, body } = revision;
  // What only leads had besides its author goes back to its author when it goes.
  if (body === null) return held ? held.audience || held.author : LEADS_ONLY;
  if (!isKind(kind)) return LEADS_ONLY;
  switch (audienceOf[kind]) {
    case 'everyone':
      return EVERYONE;
    case 'specialists':
      return SPECIALISTS;
    case 'leads':
      return LEADS_ONLY;
    case 'specialists-when-sent':
      // Whoever had it once hears of it when it is no longer sent.
      return typeof body['sent'] === 'string' || held?.audience === SPECIALISTS
        ? SPECIALISTS
        : LEADS_ONLY;
    case 'named-tester':
      return kind === 'tester'
        ? id
        : typeof body['tester'] === 'string' && RECORD_ID_PATTERN.test(body['tester'])
          ? body['tester']
          : LEADS_ONLY;
  }
};

/** Whether a revision with this author, kind and audience reaches the member. */
export const mayRead = ({ member, role }: Caller, revision: HeldRecord): boolean => {
  switch (role) {
    case 'lead':
      return true;
    case 'specialist':
      return (
        revision.audience === SPECIALISTS ||
        (revision.audience === EVERYONE && revision.kind === 'project')
      );
    case 'tester':
      return isOf(member, revision) || revision.audience === EVERYONE;
  }
};

/** The revision as what is held of its record from then on, where it becomes the current one. */
export const heldAs = (revision: Revision, before: HeldRecord | null): HeldRecord => ({
  author: revision.author,
  kind: revision.kind,
  audience: audienceOfRevision(revision, before),
});

/** Each revision of a record with whom it reaches, oldest first. */
export const audiencesIn = ({
  head,
  older,
}: History): readonly { readonly revision: Revision; readonly held: HeldRecord }[] => {
  let before: HeldRecord | null = null;
  return [...older, head].map((revision) => {
    const held = heldAs(revision, before);
    before = held;
    return { revision, held };
  });
};

/** The record that an attachment belongs to, or that a quote is of; null for other kinds. */
export const recordShownIn = ({ kind, body }: Pick<Revision, 'kind' | 'body'>): RecordId | null => {
  const field = kind === 'attachment' ? 'record' : kind === 'quote' ? 'source' : null;
  const named = field && body?.[field];
  return typeof named === 'string' && RECORD_ID_PATTERN.test(named) ? (named as RecordId) : null;
};

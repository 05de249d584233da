/** Who may write and read what? The whole of it, as pure functions over one table of roles. */
import {
  audienceOf,
  isKind,
  kindsOfTesters,
  RECORD_ID_PATTERN,
  type RecordId,
  type Revision,
  type Role,
  type Scope,
} from '../../core/records/index.ts';

export interface Caller {
  readonly member: RecordId;
  readonly role: Role;
}

/** What the hub holds of the record before a new revision of it. */
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
 * @param about what the hub holds of the record that an attachment names; null: nothing yet, it may come
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
    case 'named-tester':
      return kind === 'tester'
        ? id
        : typeof body['tester'] === 'string' && RECORD_ID_PATTERN.test(body['tester'])
          ? body['tester']
          : LEADS_ONLY;
  }
};

/** Whether the caller may pull with this scope. */
export const mayPull = ({ role }: Caller, scope: Scope): boolean =>
  scope === 'mine' || role === 'lead';

/** What only a lead may do: invite, list and revoke the devices of others, read the audit. */
export const mayManage = ({ role }: Caller): boolean => role === 'lead';

/** Who may send photos, tracks and reports. */
export const mayAttach = ({ role }: Caller): boolean => role !== 'specialist';

/**
 * Who may write and read what? The whole of it, as pure functions over one table of roles: the hub asks them of
 * every revision that comes or goes, and a device of every file that it takes in.
 */
import { RECORD_ID_PATTERN, type RecordId } from './id.ts';
import {
  audienceOf,
  isKind,
  kindsOfSpecialists,
  kindsOfTesters,
  kindsToTakeBack,
} from './kinds.ts';
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

type MayWrite = (
  member: RecordId,
  revision: Revision,
  held: HeldRecord | null,
  about: HeldRecord | null,
) => boolean;

const mayTesterWrite: MayWrite = (member, revision, held, about) => {
  const { kind, author, body } = revision;
  if (author !== member || !isKind(kind)) return false;
  // What the group noted of a tester, and what leads wrote to them, is theirs to take back, and nothing else of it.
  if (kindsToTakeBack.has(kind))
    return (
      revision.erased === true &&
      (kind === 'tester'
        ? revision.id === member
        : !held || (held.kind === kind && held.audience === member))
    );
  if (!kindsOfTesters.has(kind)) return false;
  if (body !== null && 'tester' in body && body['tester'] !== member) return false;
  // They say that a lead wrote this.
  if (body !== null && ('correctedBy' in body || 'broughtIn' in body)) return false;
  if (about) {
    // An answer is to a question that was asked of them; everything else that names a record shows it a photo.
    if (kind === 'answer' ? !isAskedOf(member, about) : !isWrittenBy(member, about)) return false;
  }
  return !held || (held.kind === kind && isOf(member, held));
};

const isAskedOf = (tester: RecordId, { kind, audience }: HeldRecord): boolean =>
  kind === 'question' && audience === tester;

const maySpecialistWrite: MayWrite = (member, { kind, author, body }, held, about) => {
  if (author !== member || !isKind(kind) || !kindsOfSpecialists.has(kind)) return false;
  if (about) {
    const isTheirs =
      kind === 'attachment'
        ? about.kind === 'proposal' && about.author === member
        : about.kind === 'finding' && about.audience === SPECIALISTS;
    if (!isTheirs) return false;
  } else if (body !== null && recordNamedIn({ kind, body }) === null) return false;
  return !held || (held.kind === kind && held.author === member);
};

/**
 * Whether the caller may add this revision.
 * @param held what is held of its own record
 * @param about what is held of the record that it names ({@link recordNamedIn}); null: nothing yet, it may come
 *   later, and whoever could name it before it was here made it or was given it
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
      return maySpecialistWrite(member, revision, held, about);
    case 'tester':
      return mayTesterWrite(member, revision, held, about);
  }
};

/**
 * Whether a record goes when this member takes everything back: what they wrote, and of a tester what the group noted
 * of them and what leads wrote to them.
 */
export const isToTakeBack = (
  { member, role }: Caller,
  { id, kind, author, body }: Pick<Revision, 'id' | 'kind' | 'author' | 'body'>,
): boolean => {
  if (!isKind(kind)) return false;
  if (author === member && (kindsOfTesters.has(kind) || kindsOfSpecialists.has(kind))) return true;
  if (role !== 'tester') return false;
  // A lead may have written it for them.
  if (kind !== 'fit-trial' && !kindsToTakeBack.has(kind)) return false;
  return kind === 'tester' ? id === member : body?.['tester'] === member;
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
        revision.author === member ||
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

type Named = Pick<Revision, 'kind' | 'body'>;

const idAt = (field: string | undefined, { body }: Named): RecordId | null => {
  const named = field === undefined ? undefined : body?.[field];
  return typeof named === 'string' && RECORD_ID_PATTERN.test(named) ? (named as RecordId) : null;
};

/** What goes when another record is taken back: the field that names that one. */
const shownField: Readonly<Partial<Record<string, string>>> = {
  attachment: 'record',
  quote: 'source',
};
/** What is allowed only by what another record is: the field that names that one. */
const namedField: Readonly<Partial<Record<string, string>>> = {
  ...shownField,
  answer: 'question',
  proposal: 'finding',
};

/** The record that an attachment belongs to, or that a quote is of; null for other kinds. It goes with that one. */
export const recordShownIn = (revision: Named): RecordId | null =>
  idAt(shownField[revision.kind], revision);

/** The record that {@link mayWrite} is asked about: of an answer its question, of a proposal its finding as well. */
export const recordNamedIn = (revision: Named): RecordId | null =>
  idAt(namedField[revision.kind], revision);

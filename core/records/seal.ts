/**
 * How is a revision made, and is this one whole?
 *
 * A revision never changes once made. Its hash covers everything but the hash itself, so a
 * revision that arrives by any way can be checked, and unknown envelope fields of a newer version
 * travel on untouched.
 */
import * as z from 'zod/mini';
import { isIn } from './bodies/number-in.ts';
import * as ranges from './bodies/field-ranges.ts';
import { canonicalJson, sha256OfJson, sha256OfText, withKeysInOrder } from './hash.ts';
import { RECORD_ID_PATTERN, SHA256_PATTERN, type RecordId } from './id.ts';
import type { Kind } from './kinds.ts';
import {
  ENVELOPE_VERSION,
  KIND_PATTERN,
  revisionSchema,
  type Body,
  type Revision,
} from './revision.ts';
import { STAMP_PATTERN, type Stamp } from './stamp.ts';

/** The longest canonical JSON of one revision, in characters; a larger one is refused at every door. */
export const MAX_REVISION_CHARACTERS = 32_768;

/** What the author decides; the stamp, the predecessor and the hash follow from the log. */
export interface UnsealedRevision {
  readonly id: RecordId;
  readonly kind: Kind | (string & {});
  readonly author: RecordId;
  readonly sv: number;
  readonly body: Body | null;
  readonly deleted?: true;
  readonly erased?: true;
}

/**
 * Seals a draft into a revision. `prev` is the stamp of the current revision, null for a new record. The keys of
 * the body are put in order once, here, as every other device gets them from the hub or a bundle: whoever
 * checks the hash has nothing left to sort.
 */
export const sealRevision = (
  draft: UnsealedRevision,
  stamp: Stamp,
  prev: Stamp | null,
): Revision => {
  const { id, kind, author, sv, body } = draft;
  const open = {
    v: ENVELOPE_VERSION as 1,
    id,
    kind,
    author,
    stamp,
    prev,
    ...(draft.deleted && { deleted: true as const }),
    ...(draft.erased && { erased: true as const }),
    sv,
    body: withKeysInOrder(body),
  };
  return { ...open, hash: sha256OfJson(open) };
};

export type RevisionProblem =
  | { readonly why: 'not-a-revision'; readonly field: string }
  | { readonly why: 'newer-envelope'; readonly v: number }
  | { readonly why: 'too-large'; readonly characters: number; readonly most: number }
  | { readonly why: 'hash-differs' };

export type ParsedRevision =
  | { readonly ok: true; readonly revision: Revision }
  | { readonly ok: false; readonly problem: RevisionProblem };

const refuse = (problem: RevisionProblem): Extract<ParsedRevision, { ok: false }> => ({
  ok: false,
  problem,
});

/** A revision that was found whole, with its canonical JSON, which was made on the way. */
export type ParsedRevisionJson =
  | { readonly ok: true; readonly revision: Revision; readonly json: string }
  | Extract<ParsedRevision, { ok: false }>;

const matches = (pattern: RegExp, value: unknown): boolean =>
  typeof value === 'string' && pattern.test(value);

const isPlainObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' &&
  value !== null &&
  Object.getPrototypeOf(value) === Object.prototype &&
  !Object.hasOwn(value, '__proto__');

/**
 * Whether a value has the shape of {@link revisionSchema}, told in a fifth of the time and without a copy of it:
 * it stands between every revision and every table. Where it says no, the schema is asked, which also says why.
 */
const hasShape = (value: unknown): value is Revision => {
  if (!isPlainObject(value)) return false;
  const { v, id, kind, author, stamp, prev, deleted, erased, sv, body, hash } = value;
  return (
    v === ENVELOPE_VERSION &&
    matches(RECORD_ID_PATTERN, id) &&
    matches(KIND_PATTERN, kind) &&
    matches(RECORD_ID_PATTERN, author) &&
    matches(STAMP_PATTERN, stamp) &&
    (prev === null || matches(STAMP_PATTERN, prev)) &&
    (deleted === undefined || deleted === true) &&
    (erased === undefined || erased === true) &&
    Number.isSafeInteger(sv) &&
    isIn(sv as number, ranges.version) &&
    (body === null || isPlainObject(body)) &&
    matches(SHA256_PATTERN, hash)
  );
};

/** The canonical JSON of a revision, whole and without its hash. */
interface CanonicalTexts {
  readonly whole: string;
  readonly open: string;
}

/** {@link CanonicalTexts} of any revision, whatever stands beside the fields that this version knows. */
const textsOfAny = (revision: Revision): CanonicalTexts => {
  // In the order of keys `author` and the body stand before the hash and `id` behind: neither part is empty.
  const before: Record<string, unknown> = {};
  const behind: Record<string, unknown> = {};
  for (const key of Object.keys(revision))
    if (key !== 'hash') (key < 'hash' ? before : behind)[key] = revision[key];
  const [left, right] = [canonicalJson(before).slice(0, -1), canonicalJson(behind).slice(1)];
  return { whole: `${left},"hash":"${revision.hash}",${right}`, open: `${left},${right}` };
};

/** {@link CanonicalTexts}: where no unknown field stands in between, only the body is not in order by itself. */
const canonicalTexts = (revision: Revision): CanonicalTexts => {
  const { v, id, kind, author, stamp, prev, deleted, erased, sv, body, hash } = revision;
  const known = 9 + (deleted ? 1 : 0) + (erased ? 1 : 0);
  if (Object.keys(revision).length !== known) return textsOfAny(revision);
  // The patterns of these texts leave nothing in them that JSON would escape.
  const left =
    `{"author":"${author}","body":${canonicalJson(body)}` +
    `${deleted ? ',"deleted":true' : ''}${erased ? ',"erased":true' : ''}`;
  const right =
    `"id":"${id}","kind":"${kind}","prev":${prev === null ? 'null' : `"${prev}"`},` +
    `"stamp":"${stamp}","sv":${sv},"v":${v}}`;
  return { whole: `${left},"hash":"${hash}",${right}`, open: `${left},${right}` };
};

/**
 * As {@link parseRevision}, for who also keeps the text.
 * @param sha256 SHA-256 of a text in UTF-8, in hex; a platform may have a faster one
 */
export const parseRevisionJson = (
  value: unknown,
  sha256: (text: string) => string = sha256OfText,
): ParsedRevisionJson => {
  const parsed = hasShape(value)
    ? { success: true as const, data: value }
    : z.safeParse(revisionSchema, value);
  if (!parsed.success) {
    const v = (value as { v?: unknown } | null)?.v;
    if (typeof v === 'number' && v > ENVELOPE_VERSION) return refuse({ why: 'newer-envelope', v });
    return refuse({ why: 'not-a-revision', field: parsed.error.issues[0]?.path.join('.') ?? '' });
  }
  let texts: CanonicalTexts;
  try {
    texts = canonicalTexts(parsed.data);
  } catch {
    return refuse({ why: 'not-a-revision', field: 'body' });
  }
  const characters = texts.whole.length;
  if (characters > MAX_REVISION_CHARACTERS)
    return refuse({ why: 'too-large', characters, most: MAX_REVISION_CHARACTERS });
  if (sha256(texts.open) !== parsed.data.hash) return refuse({ why: 'hash-differs' });
  return { ok: true, revision: parsed.data, json: texts.whole };
};

/** Checks an unknown value as a revision: its shape, its size, its hash. The body is kept as it came. */
export const parseRevision = (value: unknown): ParsedRevision => {
  const parsed = parseRevisionJson(value);
  return parsed.ok ? { ok: true, revision: parsed.revision } : parsed;
};

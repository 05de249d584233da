/** What is one saved state of a record? Made and checked in `seal.ts`, which a page that only reads does without. */
import * as z from 'zod/mini';
import { wholeIn } from './bodies/number-in.ts';
import * as ranges from './bodies/field-ranges.ts';
import { RECORD_ID_PATTERN, SHA256_PATTERN } from './id.ts';
import { STAMP_PATTERN } from './stamp.ts';

export const ENVELOPE_VERSION = 1;

export const recordIdSchema = z.string().check(z.regex(RECORD_ID_PATTERN)).brand<'RecordId'>();
export const sha256Schema = z.string().check(z.regex(SHA256_PATTERN)).brand<'Sha256'>();
export const stampSchema = z.string().check(z.regex(STAMP_PATTERN)).brand<'Stamp'>();

export const KIND_PATTERN = /^[a-z][a-z-]{0,39}$/;
const bodySchema = z.record(z.string(), z.unknown());

export const revisionSchema = z.looseObject({
  /** Envelope version. */
  v: z.literal(ENVELOPE_VERSION),
  id: recordIdSchema,
  /** What the record is; a kind this version does not know is kept and passed on. */
  kind: z.string().check(z.regex(KIND_PATTERN)),
  /** The member who wrote it: a tester's record id, or a lead's member id. */
  author: recordIdSchema,
  stamp: stampSchema,
  /** Stamp of the revision this one was edited from; null for the first. */
  prev: z.nullable(stampSchema),
  /** The record was erased by hand and may be brought back: history stays readable. */
  deleted: z.optional(z.literal(true)),
  /** The record was taken back for good: every other revision of it is dropped wherever it went. */
  erased: z.optional(z.literal(true)),
  /** Schema version of the body. */
  sv: wholeIn(ranges.version),
  body: z.nullable(bodySchema),
  hash: sha256Schema,
});

export type Revision = Readonly<z.infer<typeof revisionSchema>>;
export type Body = Readonly<Record<string, unknown>>;

/** Order of the revisions of one record, by (stamp, hash): negative where `a` came first. */
export const compareRevisions = (a: Revision, b: Revision): number => {
  if (a.stamp !== b.stamp) return a.stamp < b.stamp ? -1 : 1;
  return a.hash === b.hash ? 0 : a.hash < b.hash ? -1 : 1;
};

/** What is a record, a member or an attachment called? */
import type { $brand } from 'zod/v4/core';

/** UUIDv7 (RFC 9562) in lower case: names a record, and sorts by the time it was made. */
export type RecordId = string & $brand<'RecordId'>;
/** SHA-256 in lower-case hex: names an attachment by its bytes, a revision by its canonical JSON. */
export type Sha256 = string & $brand<'Sha256'>;

export const RECORD_ID_PATTERN =
  /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
export const SHA256_PATTERN = /^[0-9a-f]{64}$/;

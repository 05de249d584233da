/** Names for new records. Apart from `id.ts`: the first page of a phone only reads. */
import { v7 } from 'uuid';
import type { RecordId } from './id.ts';

/**
 * A new record id.
 * @param nowMs milliseconds since 1970
 * @param random 16 random bytes
 */
export const newRecordId = (nowMs: number, random: Uint8Array): RecordId =>
  v7({ msecs: nowMs, random }) as RecordId;

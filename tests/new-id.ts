/** A name for a record that a test makes. */
import { randomBytes } from 'node:crypto';
import { newRecordId, type RecordId } from '../core/records/index.ts';

export const newId = (): RecordId => newRecordId(Date.now(), randomBytes(16));

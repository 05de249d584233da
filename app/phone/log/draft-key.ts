import type { RecordId } from '../../../core/records/index.ts';

/** The name under which the draft of a new run in a pair, or of the change of a run, is kept. */
export const draftKey = (id: RecordId): string => `run ${id}`;

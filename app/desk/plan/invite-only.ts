/** Whom the sheet of invites is for: those that were selected in the list of testers; null: all who have not joined. */
import { signal } from '@preact/signals';
import type { RecordId } from '../../../core/records/index.ts';

export const inviteOnly = signal<ReadonlySet<RecordId> | null>(null);

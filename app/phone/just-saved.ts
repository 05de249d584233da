/** Which run was saved just now, so that the first screen can say what became of it. Gone with the page. */
import { signal } from '@preact/signals';
import type { RecordId } from '../../core/records/index.ts';

export const justSaved = signal<RecordId | null>(null);

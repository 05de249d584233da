/** One tester saw the change list of the last round: the hand-out is marked as no longer blind. */
import type { Body, RecordId } from '../core/records/index.ts';
import type { Writer } from './writer.ts';

/** The wearer, counted from 0, and the round. */
export const UNBLINDED = { tester: 5, round: 2 } as const;

/** Marks the hand-out; a revision more, and nothing else changes. */
export const markUnblinded = (lead: Writer, id: RecordId, handOut: Body, atMs: number): void =>
  lead.change(id, { ...handOut, blind: false }, atMs);

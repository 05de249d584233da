/** Who writes a record of the demo, when, and on which device: revisions as the app would make them. */
import {
  newClock,
  newRecordId,
  saveDraft,
  schemaVersionOf,
  type Body,
  type Clock,
  type DeviceId,
  type History,
  type Kind,
  type RecordId,
  type Revision,
} from '../core/records/index.ts';
import type { Dice } from './random.ts';

export interface Writer {
  readonly member: RecordId;
  /** A new record, saved at this instant. */
  write(kind: Kind | (string & {}), body: Body, atMs: number, id?: RecordId): RecordId;
  /** The record changed by this writer. */
  change(id: RecordId, body: Body, atMs: number): void;
  /** The record erased by this writer. */
  erase(id: RecordId, atMs: number): void;
}

export interface Scribe {
  writer(member: RecordId): Writer;
  newId(atMs: number): RecordId;
  /** Everything written so far, in the order it was written. */
  readonly revisions: readonly Revision[];
}

export const newScribe = (dice: Dice): Scribe => {
  const histories = new Map<RecordId, History>();
  const revisions: Revision[] = [];
  const newId = (atMs: number) => newRecordId(atMs, dice.bytes(16));

  const writer = (member: RecordId): Writer => {
    const device = Array.from(dice.bytes(8), (byte) => byte.toString(16).padStart(2, '0')).join('');
    let clock: Clock = newClock(device as DeviceId);
    const save = (id: RecordId, kind: string, body: Body | null, atMs: number) => {
      const saved = saveDraft(clock, atMs, histories.get(id), {
        id,
        kind,
        author: member,
        sv: schemaVersionOf(kind, body ?? {}),
        body,
        ...(body === null && { deleted: true as const }),
      });
      clock = saved.clock;
      histories.set(id, saved.history);
      revisions.push(saved.revision);
    };
    const kindOf = (id: RecordId) => (histories.get(id) as History).head.kind;
    return {
      member,
      write: (kind, body, atMs, id = newId(atMs)) => {
        save(id, kind, body, atMs);
        return id;
      },
      change: (id, body, atMs) => save(id, kindOf(id), body, atMs),
      erase: (id, atMs) => save(id, kindOf(id), null, atMs),
    };
  };
  return { writer, newId, revisions };
};

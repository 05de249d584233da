/** Must a pair in hand not be worn for now, and is there more to say on its card? From the records on this phone. */
// By its file: the rest of that room is no part of the first page.
import { painStands } from '../../core/complaints/pain-stands.ts';
import { damageStands, type RecordId, type RecordOf } from '../../core/records/index.ts';

/** What was told of a pair in hand, and what leads answered. */
export interface PairCautions {
  /** The tester's runs in it. */
  readonly runs: readonly RecordOf<'run'>[];
  readonly reports: readonly RecordOf<'damage-report'>[];
  /** The reply that stands about each record. */
  readonly replies: ReadonlyMap<RecordId, RecordOf<'reply'>>;
}

export const painsThatStand = ({ runs, replies }: PairCautions): readonly RecordOf<'run'>[] =>
  runs.filter(({ body, revision }) => painStands(body.pain, replies.get(revision.id)?.body));

export const damageThatStands = ({ reports, replies }: PairCautions): PairCautions['reports'] =>
  reports.filter(({ revision }) => damageStands(replies.get(revision.id)?.body));

/** Whether pain or damage keeps the pair from being worn. */
export const isOff = (told: PairCautions): boolean =>
  painsThatStand(told).length + damageThatStands(told).length > 0;

/** Whether a lead answered anything that was told of the pair. */
export const isAnswered = ({ runs, reports, replies }: PairCautions): boolean =>
  [...runs, ...reports].some(({ revision }) => replies.has(revision.id));

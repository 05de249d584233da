/** When was which pair in whose hands? */
import type { RecordId, RecordOf } from '../records/index.ts';

/** A hand-out with its times as milliseconds since 1970; `untilMs` is infinite while it is out. */
export interface HandOutSpan {
  readonly id: RecordId;
  readonly pair: RecordId;
  readonly tester: RecordId;
  readonly fromMs: number;
  readonly untilMs: number;
}

export const handOutSpan = ({ body, revision }: RecordOf<'hand-out'>): HandOutSpan => ({
  id: revision.id,
  pair: body.pair,
  tester: body.tester,
  fromMs: Date.parse(body.from),
  untilMs: body.until === undefined ? Infinity : Date.parse(body.until),
});

/** Whether the pair was out at that instant, both ends included. */
export const isWithin = ({ fromMs, untilMs }: HandOutSpan, ms: number): boolean =>
  fromMs <= ms && ms <= untilMs;

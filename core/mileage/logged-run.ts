/** A run as the sums take it. */
import type { RecordId, RecordOf, Run } from '../records/index.ts';
import type { Metres } from '../units/index.ts';

/** One run with what the sums need, times in milliseconds since 1970. */
export interface LoggedRun {
  readonly id: RecordId;
  readonly pair: RecordId;
  readonly tester: RecordId;
  readonly startMs: number;
  /** Start plus duration; the start itself where no duration was given. */
  readonly endMs: number;
  readonly distanceM: Metres;
  readonly run: Run;
}

/** A record of a run as the sums take it. */
export const loggedRun = (record: RecordOf<'run'>): LoggedRun => {
  const { body, revision } = record;
  const startMs = Date.parse(body.startedAt);
  return {
    id: revision.id,
    pair: body.pair,
    tester: body.tester,
    startMs,
    endMs: startMs + (body.durationS ?? 0) * 1000,
    distanceM: body.distanceM,
    run: body,
  };
};

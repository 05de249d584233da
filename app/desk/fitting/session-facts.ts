/** What one session of fit trials holds, put together from the desk's records. Pure. */
import {
  fittersIn,
  moveKey,
  type Fitter,
  type TrialRecord,
  type WantedMove,
} from '../../../core/fitting/index.ts';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import type { DeskRecords } from '../worker/desk-work.ts';

export type SessionRecord = RecordOf<'fit-session'>;

export interface SessionFacts {
  readonly session: SessionRecord;
  readonly trials: readonly TrialRecord[];
  readonly fitters: readonly Fitter[];
  readonly pairs: ReadonlyMap<RecordId, RecordOf<'pair'>>;
}

/** The sessions of a project, the latest first. */
export const sessionsOf = (
  records: Pick<DeskRecords, 'fit-session'>,
  project: RecordId,
): readonly SessionRecord[] =>
  records['fit-session']
    .filter(({ body }) => body.project === project)
    .sort((a, b) => Date.parse(b.body.at) - Date.parse(a.body.at));

export const factsOf = (
  session: SessionRecord,
  records: Pick<DeskRecords, 'fit-trial' | 'pair'>,
): SessionFacts => {
  const trials = records['fit-trial'].filter(({ body }) => body.session === session.revision.id);
  return {
    ...{ session, trials },
    fitters: fittersIn(trials),
    pairs: new Map(records.pair.map((pair) => [pair.revision.id, pair])),
  };
};

/** The finding in which a move was asked for already; null: it was not. */
export const askedIn = (
  move: WantedMove,
  session: RecordId,
  records: Pick<DeskRecords, 'finding'>,
): RecordOf<'finding'> | null => {
  const { direction } = move;
  if (direction === null) return null;
  return (
    records.finding.find(
      ({ body }) =>
        body.fitSession === session &&
        body.change !== undefined &&
        moveKey(body.change) === moveKey({ ...move, direction }),
    ) ?? null
  );
};

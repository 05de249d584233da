/** A session of fit trials as this device knows it: what is tried on, who was here, and whether it is still offered. */
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import type { Store } from '../../store/index.ts';

const DAY_MS = 86_400_000;
/** Offered from the day before until a week after, unless a lead ended it. Judgement, no source. */
const OFFERED_DAYS = { before: 1, after: 7 } as const;

/** Whether phones offer a session now. @param nowMs milliseconds since 1970 */
export const isOffered = ({ body }: RecordOf<'fit-session'>, nowMs: number): boolean => {
  const atMs = Date.parse(body.at);
  return (
    body.closed === undefined &&
    nowMs >= atMs - OFFERED_DAYS.before * DAY_MS &&
    nowMs <= atMs + OFFERED_DAYS.after * DAY_MS
  );
};

/** The name under which the half-filled trial of a session is kept. */
export const fitDraftKey = (session: RecordId): string => `fit ${session}`;

/** The kinds that {@link readSession} reads. */
export const SESSION_KINDS = ['fit-session', 'fit-trial', 'pair', 'tester', 'hand-out'] as const;

export interface SessionHere {
  readonly session: RecordOf<'fit-session'>;
  /** The smallest size first. */
  readonly pairs: readonly RecordOf<'pair'>[];
  readonly trials: readonly RecordOf<'fit-trial'>[];
  /** Those that this device knows: on a tester's phone their own. */
  readonly testers: readonly RecordOf<'tester'>[];
  /** The pair of the session that the member has in hand; null: none. */
  readonly own: RecordId | null;
}

/** Null: it is not on this device. */
export const readSession = async (
  from: Store,
  id: RecordId,
  member: RecordId,
): Promise<SessionHere | null> => {
  const session = await from.get('fit-session', id);
  if (!session) return null;
  const [pairs, trials, testers, handOuts] = await Promise.all([
    from.list('pair'),
    from.list('fit-trial'),
    from.list('tester'),
    from.list('hand-out'),
  ]);
  const tried = pairs
    .filter(({ revision }) => session.body.pairs.includes(revision.id))
    .sort((a, b) => a.body.sizeMm - b.body.sizeMm || (a.body.code < b.body.code ? -1 : 1));
  const held = handOuts.find(
    ({ body }) =>
      body.tester === member && body.until === undefined && session.body.pairs.includes(body.pair),
  );
  return {
    ...{ session, pairs: tried, testers },
    trials: trials.filter(({ body }) => body.session === id),
    own: held?.body.pair ?? null,
  };
};

/** Whom does a stop-use notice reach? Those who hold the pairs now. */
import { isStanding, type RecordId, type RecordOf } from '../records/index.ts';
import { handOutSpan, isWithin } from './hand-out-span.ts';

/** A notice that stands on a pair in the tester's hands. */
export interface OwnNotice {
  readonly stop: RecordOf<'stop-use'>;
  readonly pair: RecordId;
}

/** The notice that stands on a pair at this instant. */
export const standingStop = (
  stops: readonly RecordOf<'stop-use'>[],
  pair: RecordId,
  nowMs: number,
): RecordOf<'stop-use'> | null =>
  stops.find(({ body }) => body.pairs.includes(pair) && isStanding(body, nowMs)) ?? null;

/** Whoever holds one of these pairs now. */
export const holdersOf = (
  pairs: readonly RecordId[],
  handOuts: readonly RecordOf<'hand-out'>[],
  nowMs: number,
): ReadonlySet<RecordId> =>
  new Set(
    handOuts
      .filter(({ body }) => pairs.includes(body.pair))
      .map(handOutSpan)
      .filter((span) => isWithin(span, nowMs))
      .map(({ tester }) => tester),
  );

/** The notices on the pairs that this tester holds, one a pair. */
export const noticesOf = (
  tester: RecordId,
  stops: readonly RecordOf<'stop-use'>[],
  handOuts: readonly RecordOf<'hand-out'>[],
  nowMs: number,
): readonly OwnNotice[] =>
  handOuts
    .filter((one) => one.body.tester === tester && isWithin(handOutSpan(one), nowMs))
    .flatMap(({ body }) => {
      const stop = standingStop(stops, body.pair, nowMs);
      return stop ? [{ stop, pair: body.pair }] : [];
    });

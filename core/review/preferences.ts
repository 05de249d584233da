/** Which round do testers who ranked pairs of two rounds prefer? Each of them is heard once. */
import { isWithin, type HandOutSpan } from '../mileage/index.ts';
import type { RecordId, RecordOf } from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';

/** How many testers put a pair of one round before a pair of another, when they were asked to rank. */
export interface Preference {
  /** The earlier and the later round. */
  readonly first: RecordId;
  readonly second: RecordId;
  readonly preferFirst: number;
  readonly preferSecond: number;
  readonly equal: number;
  /** How many of them knew what was changed in a pair that they ranked. */
  readonly unblinded: number;
}

/**
 * Preferences between rounds. Each tester counts once per two rounds, with the latest ranking that has
 * pairs of both; with several pairs of a round in it, the side that is more often before the other.
 * @param roundOf the round of each pair
 * @param order rounds in the order in which they were made
 * @param handOuts hand-outs, which say who wore a pair blind
 */
export const preferencesOf = (
  rankings: readonly RecordOf<'ranking'>[],
  roundOf: ReadonlyMap<string, RecordId>,
  order: readonly RecordId[],
  handOuts: readonly { readonly span: HandOutSpan; readonly blind: boolean }[],
): readonly Preference[] => {
  const latestFirst = [...rankings].sort((a, b) => Date.parse(b.body.at) - Date.parse(a.body.at));
  const byTester = [...groupBy(latestFirst, ({ body }) => body.tester).values()];
  return order.flatMap((second, later) =>
    order.slice(0, later).flatMap((first): Preference[] => {
      const verdicts = byTester.flatMap((own) => {
        for (const { body } of own) {
          const verdict = verdictOf(body.order, (pair) => roundOf.get(pair), first, second);
          if (verdict === null) continue;
          const knew = handOuts.some(
            ({ span, blind }) =>
              !blind &&
              span.tester === body.tester &&
              body.order.flat().includes(span.pair) &&
              isWithin(span, Date.parse(body.at)),
          );
          return [{ verdict, knew }];
        }
        return [];
      });
      if (verdicts.length === 0) return [];
      const count = (sign: number) =>
        verdicts.filter(({ verdict }) => Math.sign(verdict) === sign).length;
      return [
        {
          first,
          second,
          preferFirst: count(1),
          preferSecond: count(-1),
          equal: count(0),
          unblinded: verdicts.filter(({ knew }) => knew).length,
        },
      ];
    }),
  );
};

/** How often a pair of `first` stands before one of `second`, less the other way round; null: never compared. */
const verdictOf = (
  places: readonly (readonly RecordId[])[],
  roundOf: (pair: RecordId) => RecordId | undefined,
  first: RecordId,
  second: RecordId,
): number | null => {
  const placed = places.flatMap((pairs, place) =>
    pairs.map((pair) => ({ place, round: roundOf(pair) })),
  );
  const [ones, others] = [first, second].map((round) =>
    placed.filter((one) => one.round === round),
  ) as [typeof placed, typeof placed];
  if (ones.length === 0 || others.length === 0) return null;
  return ones
    .flatMap((one) => others.map((other) => Math.sign(other.place - one.place)))
    .reduce((sum: number, sign) => sum + sign, 0);
};

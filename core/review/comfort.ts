/** How comfortable did the testers find a round, each of them heard once, whatever their number of runs? */
import { comfortAttributeIds, type ComfortAttributeId } from '../foot/index.ts';
import { isWithin, type HandOutSpan, type LoggedRun } from '../mileage/index.ts';
import type { RecordId, RecordOf } from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';

/** Scores of one attribute on the 0-100 line, with the tester as the unit. */
export interface ComfortScores {
  readonly attribute: ComfortAttributeId;
  readonly testers: number;
  readonly scores: number;
  /** Mean of the testers' own means. */
  readonly mean: number;
  /** The lowest and the highest of the testers' own means. */
  readonly lowest: number;
  readonly highest: number;
}

export interface RoundComfort {
  /**
   * Scores of the first wearing, kept apart: after a day in the shoe 65 % of wearers preferred another one
   * than after a minute (Anderson et al., J Foot Ankle Res 2020, PMC7341629).
   */
  readonly firstImpressions: readonly ComfortScores[];
  readonly wear: readonly ComfortScores[];
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const scoresOf = (runs: readonly LoggedRun[]): ComfortScores[] => {
  const byTester = [...groupBy(runs, ({ tester }) => tester).values()];
  return comfortAttributeIds.flatMap((attribute) => {
    const answers = byTester
      .map((own) => own.flatMap(({ run }) => run.comfort?.[attribute] ?? []))
      .filter((own) => own.length > 0);
    if (answers.length === 0) return [];
    const means = answers.map(meanOf);
    return [
      {
        attribute,
        testers: means.length,
        scores: answers.reduce((sum, own) => sum + own.length, 0),
        mean: meanOf(means),
        lowest: Math.min(...means),
        highest: Math.max(...means),
      },
    ];
  });
};

/** The comfort scores of the runs of one round; an attribute that nobody answered is absent. */
export const comfortOf = (runs: readonly LoggedRun[]): RoundComfort => ({
  firstImpressions: scoresOf(runs.filter(({ run }) => run.firstImpression === true)),
  wear: scoresOf(runs.filter(({ run }) => run.firstImpression !== true)),
});

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
 * @param spans hand-outs, which say who wore a pair blind
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

/** How do the samples of each round lie against the blueprint, dimension by dimension? */
import { isOut } from '../rounds/index.ts';
import type { Measure, MeasureUnit, RecordId } from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';
import type { Deviation } from './review-types.ts';

export interface ArrivalRound extends Pick<Deviation, 'nominal' | 'lower' | 'upper'> {
  readonly round: RecordId;
  /** One for each pair and foot, by deviation. */
  readonly points: readonly Pick<Deviation, 'pair' | 'check' | 'foot' | 'deviation' | 'word'>[];
  /** Pairs with a reading that is proved or read out. */
  readonly out: readonly RecordId[];
}

export interface ArrivalDimension {
  readonly measure: Measure;
  readonly site: string;
  readonly unit: MeasureUnit;
  /** From … to, deviations and tolerances of all rounds in it, in the dimension's unit. */
  readonly range: readonly [number, number];
  readonly rounds: readonly ArrivalRound[];
  /** Readings out and all readings, over all rounds. */
  readonly outReadings: number;
  readonly readings: number;
}

/** A little room at both ends of the line. */
const ROOM = 0.08;

const roundOf = (round: RecordId, own: readonly Deviation[]): ArrivalRound[] => {
  const [first] = own;
  if (!first) return [];
  const { nominal, lower, upper } = first;
  return [
    {
      round,
      nominal,
      lower,
      upper,
      points: own
        .map(({ pair, check, foot, deviation, word }) => ({ pair, check, foot, deviation, word }))
        .sort((a, b) => a.deviation - b.deviation),
      out: [...new Set(own.filter(({ word }) => isOut(word)).map(({ pair }) => pair))],
    },
  ];
};

/**
 * The dimensions with a reading, those with most readings out first.
 * @param order the rounds, the first first
 */
export const arrivalOf = (
  deviations: readonly Deviation[],
  order: readonly RecordId[],
): readonly ArrivalDimension[] =>
  [...groupBy(deviations, ({ measure, site, unit }) => `${measure} ${site} ${unit}`).values()]
    .flatMap((own): ArrivalDimension[] => {
      const [first] = own;
      if (!first) return [];
      const { measure, site, unit } = first;
      const byRound = groupBy(own, ({ round }) => round);
      const ends = own.flatMap(({ deviation, lower, upper }) => [deviation, lower, upper]);
      const [lo, hi] = [Math.min(...ends), Math.max(...ends)];
      const room = ROOM * (hi - lo || 1);
      return [
        {
          measure,
          site,
          unit,
          range: [lo - room, hi + room],
          rounds: order.flatMap((round) => roundOf(round, byRound.get(round) ?? [])),
          outReadings: own.filter(({ word }) => isOut(word)).length,
          readings: own.length,
        },
      ];
    })
    .sort((a, b) => b.outReadings - a.outReadings);

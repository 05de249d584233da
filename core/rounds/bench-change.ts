/**
 * Are the samples of a round taller, harder or heavier than those of another, when they are new?
 *
 * Each pair counts once, by the mean of its readings (both shoes) at its first bench check. The pairs of
 * two rounds are different things, so the difference is that of two means with unequal variances (Welch
 * BL, Biometrika 1947;34:28-35). Stack height, hardness and mass only: what a build sets from the start.
 */
import type { Measure, MeasureUnit, RecordId } from '../records/index.ts';
import {
  groupBy,
  meanOfUnits,
  welch,
  type Interval,
  type MeanOfUnits,
} from '../statistics/index.ts';

/** What is compared, in the order in which it is shown. */
export const comparedMeasures = [
  'stack-height',
  'hardness',
  'mass',
] as const satisfies readonly Measure[];

/** A reading of a pair's first bench check. */
export interface FirstReading {
  readonly pair: RecordId;
  readonly measure: Measure;
  readonly site: string;
  readonly unit: MeasureUnit;
  readonly value: number;
}

export interface BenchChange {
  readonly measure: Measure;
  readonly site: string;
  readonly unit: MeasureUnit;
  /** Means of the pairs, in the unit. */
  readonly earlier: MeanOfUnits;
  readonly later: MeanOfUnits;
  /** Later less earlier, in the unit. */
  readonly difference: number;
  /** Null where a round has a single pair. */
  readonly interval: Interval | null;
  /** Whether the interval leaves zero out; null without one. */
  readonly differs: boolean | null;
}

const byPair = (readings: readonly FirstReading[]): number[] =>
  [...groupBy(readings, ({ pair }) => pair).values()].map(
    (own) => own.reduce((sum, { value }) => sum + value, 0) / own.length,
  );

/**
 * Every measure, site and unit that both rounds were measured at; by measure, then site.
 * @param among the measures that are compared, in the order in which they are shown
 */
export const benchChanges = (
  earlier: readonly FirstReading[],
  later: readonly FirstReading[],
  among: readonly Measure[] = comparedMeasures,
): BenchChange[] => {
  const placeOf = ({ measure, site, unit }: FirstReading) => `${measure} ${site} ${unit}`;
  const [before, after] = [groupBy(earlier, placeOf), groupBy(later, placeOf)];
  return [...before]
    .flatMap(([place, readings]): BenchChange[] => {
      const others = after.get(place);
      const [first] = readings;
      if (!others || !first || !among.includes(first.measure)) return [];
      const [old, young] = [byPair(readings), byPair(others)];
      const [from, to] = [meanOfUnits(old), meanOfUnits(young)];
      if (!from || !to) return [];
      const apart = welch(young, old);
      const { measure, site, unit } = first;
      return [
        {
          measure,
          site,
          unit,
          earlier: from,
          later: to,
          difference: to.mean - from.mean,
          interval: apart?.interval ?? null,
          differs: apart && (apart.interval.lower > 0 || apart.interval.upper < 0),
        },
      ];
    })
    .sort(
      (a, b) =>
        among.indexOf(a.measure) - among.indexOf(b.measure) ||
        (a.site < b.site ? -1 : a.site > b.site ? 1 : a.unit < b.unit ? -1 : 1),
    );
};

/**
 * Does a second gauge sit apart from the first? At each shoe where the gauge changes, the step across the change is
 * held against the steps within one gauge at the same places: wear is in both, the offset in the first only.
 */
import type { Measure, MeasureUnit } from '../records/index.ts';
import { groupBy, tQuantile } from '../statistics/index.ts';
import type { KnownReading } from './expected.ts';

export interface GaugeApart {
  readonly measure: Measure;
  readonly unit: MeasureUnit;
  /** As first typed. */
  readonly gauge: string;
  readonly than: string;
  /** By which share of the value the second reads higher; negative: lower. */
  readonly share: number;
  /** Shoes and sites at which both were used. */
  readonly places: number;
}

/** The same gauge, however its name was typed. */
export const gaugeName = (gauge: string): string => gauge.trim().toLowerCase();

/** Standard deviation of a step as a share, and as many observations as it counts for. Judgement, no source. */
const USUAL_STEP = 0.02;
const PRIOR = 4;
/** Both ends. */
const TAIL = 0.0025;
/** A smaller offset changes no verdict. Judgement, no source. */
const LEAST_SHARE = 0.015;
/** Farther apart two gauges never are: a reading is wrong, and asked about by itself. Judgement, no source. */
const MOST_OFFSET = Math.log(10);

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

interface Step {
  readonly by: number;
  readonly from: string;
  readonly to: string;
}

/** From each reading of a shoe at a site to the next, where both name a gauge. */
const stepsOf = (readings: readonly KnownReading[]): Step[] =>
  [...groupBy(readings, ({ pair, foot, site }) => `${pair} ${foot} ${site}`).values()].flatMap(
    (own) => {
      const sorted = own.filter(({ value }) => value > 0).sort((a, b) => a.atMs - b.atMs);
      return sorted.slice(1).flatMap((one, at): Step[] => {
        const before = sorted[at] as KnownReading;
        return one.gauge === undefined || before.gauge === undefined
          ? []
          : [
              {
                by: Math.log(one.value) - Math.log(before.value),
                from: before.gauge,
                to: one.gauge,
              },
            ];
      });
    },
  );

/**
 * The gauges that sit apart from another that was used before them on the same shoes.
 * @param readings of the pairs of one round; what cannot be right is left out before
 */
export const gaugesApart = (readings: readonly KnownReading[]): readonly GaugeApart[] =>
  [...groupBy(readings, ({ measure, unit }) => `${measure} ${unit}`).values()].flatMap((own) => {
    const steps = stepsOf(own);
    const isSame = ({ from, to }: Step) => gaugeName(from) === gaugeName(to);
    const within = steps.filter(isSame).map(({ by }) => by);
    const usual = within.length > 0 ? mean(within) : 0;
    const changes = groupBy(
      steps.filter((step) => !isSame(step)),
      ({ from, to }) => [gaugeName(from), gaugeName(to)].sort().join('\n'),
    );
    return [...changes.values()].flatMap((across): GaugeApart[] => {
      const [first] = across;
      const [one] = own;
      if (!first || !one) return [];
      // A change back counts the other way round.
      const offsets = across.map(
        ({ by, from }) => (by - usual) * (gaugeName(from) === gaugeName(first.from) ? 1 : -1),
      );
      const offset = mean(offsets);
      const squares =
        PRIOR * USUAL_STEP ** 2 +
        within.reduce((sum, by) => sum + (by - usual) ** 2, 0) +
        offsets.reduce((sum, by) => sum + (by - offset) ** 2, 0);
      const df = PRIOR + Math.max(0, within.length - 1) + offsets.length - 1;
      const error = Math.sqrt(
        (squares / df) * (1 / offsets.length + 1 / Math.max(1, within.length)),
      );
      const share = Math.expm1(offset);
      if (Math.abs(offset) > MOST_OFFSET) return [];
      if (Math.abs(share) < LEAST_SHARE || Math.abs(offset) < tQuantile(1 - TAIL, df) * error)
        return [];
      const { measure, unit } = one;
      return [{ measure, unit, gauge: first.to, than: first.from, share, places: offsets.length }];
    });
  });

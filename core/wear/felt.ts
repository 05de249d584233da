/**
 * Does the cushioning feel otherwise with distance? The tester is the unit: a start and a slope of each
 * tester's own (mixed model by REML, sources in `core/statistics/mixed.ts`), the mean slope with Student's
 * interval on testers − 1 degrees of freedom. Felt and measured cushioning often part, so both are shown.
 */
import {
  groupBy,
  linearMixedModel,
  meanOfUnits,
  tQuantile,
  type Interval,
  type MeanOfUnits,
  type MixedModel,
  type MixedRow,
} from '../statistics/index.ts';
import { metres, type Metres } from '../units/index.ts';
import { WEAR_LEVEL } from './fit.ts';

/** One score of one run, 0 to 100, with the distance on the pair. */
export interface FeltScore {
  readonly tester: string;
  readonly score: number;
  readonly pairM: Metres;
}

export interface FeltChange {
  readonly testers: number;
  readonly scores: number;
  /** Points of 100 per 100 km; null below two testers with three scores each that vary. */
  readonly per100Km: (Interval & { readonly mean: number; readonly testers: number }) | null;
  /** Mean of the testers' own means in each stretch of distance. */
  readonly stretches: readonly {
    readonly fromM: Metres;
    readonly toM: Metres;
    readonly mean: MeanOfUnits;
  }[];
}

const STRETCH_M = 50_000;
const UNIT_M = 100_000;

/** Null where scores lie on a line for each tester, or never change: they leave no spread to judge by. */
const modelOf = (rows: readonly MixedRow[]): MixedModel | null => {
  try {
    return linearMixedModel(rows, { method: 'REML', correlated: false });
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
};

const slopeOf = (scores: readonly FeltScore[]): FeltChange['per100Km'] => {
  const byTester = groupBy(scores, ({ tester }) => tester);
  const usable = [...byTester].filter(
    ([, own]) => own.length >= 3 && new Set(own.map(({ pairM }) => pairM)).size >= 2,
  );
  if (usable.length < 2) return null;
  const rows = usable.flatMap(([group, own]) =>
    own.map(({ score, pairM }) => {
      const effects = [1, pairM / UNIT_M];
      return { y: score, group, fixed: effects, random: effects };
    }),
  );
  const model = modelOf(rows);
  if (model === null) return null;
  const [mean, error] = [model.fixed[1] as number, model.standardErrors[1] as number];
  const reach = tQuantile((1 + WEAR_LEVEL) / 2, usable.length - 1) * error;
  return error > 0
    ? { mean, lower: mean - reach, upper: mean + reach, testers: usable.length }
    : null;
};

/** How one attribute of comfort changes over distance. */
export const feltChange = (scores: readonly FeltScore[]): FeltChange => {
  const stretches = [...groupBy(scores, ({ pairM }) => Math.floor(pairM / STRETCH_M))]
    .sort(([a], [b]) => a - b)
    .flatMap(([at, own]) => {
      const testers = [...groupBy(own, ({ tester }) => tester).values()].map(
        (answers) => answers.reduce((sum, { score }) => sum + score, 0) / answers.length,
      );
      const mean = meanOfUnits(testers, WEAR_LEVEL);
      return mean
        ? [{ fromM: metres(at * STRETCH_M), toM: metres((at + 1) * STRETCH_M), mean }]
        : [];
    });
  return {
    testers: new Set(scores.map(({ tester }) => tester)).size,
    scores: scores.length,
    per100Km: slopeOf(scores),
    stretches,
  };
};

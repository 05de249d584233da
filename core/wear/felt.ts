/**
 * How does the cushioning feel along the distance? Means of the testers' own means, each tester once in each
 * stretch. By how much it changes is the comfort's drift (`core/complaints/comfort.ts`), so that two screens
 * never tell two slopes. Felt and measured cushioning often part, so both are shown.
 */
import { groupBy, meanOfUnits, type MeanOfUnits } from '../statistics/index.ts';
import { metres, type Metres } from '../units/index.ts';
import { WEAR_LEVEL } from './fit.ts';

/** One score of one run, 0 to 100, with the distance on the pair. */
export interface FeltScore {
  readonly tester: string;
  readonly score: number;
  readonly pairM: Metres;
}

export interface FeltStretch {
  readonly fromM: Metres;
  readonly toM: Metres;
  readonly mean: MeanOfUnits;
}

const STRETCH_M = 50_000;

/** Mean of the testers' own means in each stretch of distance that has a score. */
export const feltStretches = (scores: readonly FeltScore[]): readonly FeltStretch[] =>
  [...groupBy(scores, ({ pairM }) => Math.floor(pairM / STRETCH_M))]
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

/**
 * Which comfort score is unlike the others that the tester gave this pair, so that it may have slipped?
 *
 * Student's prediction interval for one more score, from the tester's other scores of the pair: n of them, and as many
 * more as PRIOR with the spread that is usual from run to run. A right score leaves it once in a thousand runs, whatever
 * number of questions the brief asks (Bonferroni).
 */
import type { ComfortAttributeId } from '../foot/index.ts';
import type { LoggedRun } from '../mileage/index.ts';
import type { RecordId } from '../records/index.ts';
import { groupBy, tQuantile } from '../statistics/index.ts';

export interface OutlyingScore {
  readonly run: RecordId;
  readonly tester: RecordId;
  readonly pair: RecordId;
  readonly attribute: ComfortAttributeId;
  readonly score: number;
  /** Mean of the others. */
  readonly usual: number;
}

/** Spread of a score from run to run on the line from 0 to 100. Judgement; published lines: 3 to 10. */
const USUAL_SPREAD = 8;
const PRIOR = 4;
/** Fewer say little of what is usual. Judgement, no source. */
const LEAST_OTHERS = 4;
const RATE = 0.001;

interface Scored {
  readonly run: LoggedRun;
  readonly score: number;
}

/** How far beyond the interval, in its half widths; null: within, or too few others. */
const beyond = (
  { score }: Scored,
  others: readonly Scored[],
  quantile: (df: number) => number,
): { readonly by: number; readonly usual: number } | null => {
  const n = others.length;
  if (n < LEAST_OTHERS) return null;
  const usual = others.reduce((sum, one) => sum + one.score, 0) / n;
  const squares = others.reduce((sum, one) => sum + (one.score - usual) ** 2, 0);
  const df = PRIOR + n - 1;
  const variance = (PRIOR * USUAL_SPREAD ** 2 + squares) / df;
  const half = quantile(df) * Math.sqrt(variance * (1 + 1 / n));
  const by = Math.abs(score - usual) / half;
  return by > 1 ? { by, usual } : null;
};

/**
 * The scores of these runs that are unlike the tester's others of the pair; of one run the one that is farthest off.
 * @param isAsked whether a run is looked at; the others only say what is usual
 */
export const outlyingScores = (
  runs: readonly LoggedRun[],
  attributes: readonly ComfortAttributeId[],
  isAsked: (run: LoggedRun) => boolean,
): readonly OutlyingScore[] => {
  const tail = RATE / Math.max(1, attributes.length);
  const quantiles = new Map<number, number>();
  const quantile = (df: number): number => {
    const known = quantiles.get(df) ?? tQuantile(1 - tail / 2, df);
    quantiles.set(df, known);
    return known;
  };
  const worst = new Map<RecordId, OutlyingScore & { readonly by: number }>();
  const wearing = runs.filter(({ run }) => run.firstImpression !== true);
  for (const own of groupBy(wearing, ({ tester, pair }) => `${tester} ${pair}`).values())
    for (const attribute of attributes) {
      const scored = own.flatMap((run): readonly Scored[] => {
        const score = run.run.comfort?.[attribute];
        return score === undefined ? [] : [{ run, score }];
      });
      for (const one of scored) {
        if (!isAsked(one.run)) continue;
        const found = beyond(
          one,
          scored.filter((other) => other !== one),
          quantile,
        );
        const { id: run, tester, pair } = one.run;
        if (found && found.by > (worst.get(run)?.by ?? 0))
          worst.set(run, { run, tester, pair, attribute, score: one.score, ...found });
      }
    }
  return [...worst.values()].map(({ by: _, ...one }) => one);
};

/**
 * Do complaints grow towards the brief's distance? Not shown to grow is not the same as shown not to.
 *
 * Every zone and kind that the round reported is tested for a trend. One that grows does not hold. To hold, more is
 * needed than that nothing is shown: each must be shown to fade, or be so rare in the runs at the brief's distance
 * that this would be seldom if half of the testers had it there (`core/complaints/silence.ts`); and what nobody
 * reported counts by the same rule. Until then it is not known.
 */
import {
  allowedRateOf,
  chanceOfSilence,
  countReports,
  reportedCells,
  SILENCE_LEVEL,
  trendsOverDistance,
  type AllowedRate,
  type CellName,
  type ObservedRun,
} from '../complaints/index.ts';
import { groupBy } from '../statistics/index.ts';

/** From this share of the brief's distance on, a run counts as run at it. Judgement, no source. */
const NEAR = 0.9;
/** Pairs that must have carried the brief's distance. Judgement, no source. */
export const LEAST_PAIRS_THERE = 3;

export interface Growth {
  /** Shown to grow. */
  readonly growing: readonly CellName[];
  /** Reported, and that it grows is not ruled out. */
  readonly open: readonly CellName[];
  /** Reported zones and kinds that were tested. */
  readonly tested: number;
  /** Pairs of which somebody was asked at the brief's distance, and those runs and testers. */
  readonly pairsThere: number;
  readonly runsThere: number;
  readonly testersThere: number;
  /** Chance that such a panel is silent there although half of the testers have it, 0 to 1. */
  readonly silenceChance: number;
  /** Whether the silence there says enough. */
  readonly silenceTells: boolean;
}

/** @param runs of one round, the feet question answered */
export const growthOf = (
  runs: readonly ObservedRun[],
  briefM: number,
  allowed: AllowedRate,
): Growth => {
  const cells = reportedCells(runs);
  const trends = trendsOverDistance(runs, cells);
  const there = runs.filter(({ pairM }) => pairM >= NEAR * briefM);
  const asked = [...groupBy(there, ({ tester }) => tester).values()].map((own) => own.length);
  const pairsThere = new Set(there.map(({ pair }) => pair)).size;
  // The greater rate allowed of the two needs the least runs, so the lesser one is asked about.
  const silenceChance =
    there.length === 0 ? 1 : chanceOfSilence(asked, Math.min(allowed.complaint, allowed.pain));
  const reportsThere = countReports(there);
  const isRuledOut = (cell: CellName): boolean => {
    const rate = allowedRateOf(cell.kind, allowed);
    return chanceOfSilence(asked, rate, reportsThere(cell)) <= SILENCE_LEVEL;
  };
  return {
    growing: cells.filter((_, at) => trends[at]?.word === 'grows'),
    open: cells.filter((cell, at) => {
      const word = trends[at]?.word;
      return word !== 'grows' && word !== 'fades' && !(there.length > 0 && isRuledOut(cell));
    }),
    tested: cells.length,
    pairsThere,
    runsThere: there.length,
    testersThere: asked.length,
    silenceChance,
    silenceTells: pairsThere >= LEAST_PAIRS_THERE && silenceChance <= SILENCE_LEVEL,
  };
};

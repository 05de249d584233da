/**
 * Does a complaint fade with the kilometres on the pair (break-in), stay, or grow (wear)?
 *
 * It names no cause: kilometres go along with season, training and skin. The runs of one tester follow each
 * other, and a complaint that lingers from run to run makes a trend more often than the level says.
 *
 * Within each tester and pair, the kilometres at the runs that reported it against those that did not:
 * the stratified rank test, which is Kendall's S against kilometres summed over strata (sources in
 * `core/statistics/ranks.ts`); over all cells asked together by Holm S, Scand J Stat 1979;6:65-70. A tester
 * who always or never reported it says nothing on its change.
 */
import { groupBy, holm, stratifiedRankTest } from '../statistics/index.ts';
import type { Metres } from '../units/index.ts';
import { reports, type CellName, type ObservedRun } from './observed-runs.ts';

export interface Trend {
  /** `no-trend-shown` does not say that there is none. */
  readonly word: 'fades' | 'grows' | 'no-trend-shown' | 'too-few-runs';
  /** Two-sided. */
  readonly p: number;
  /** Over the cells of the same question, by Holm; a direction is named up to 5 %. */
  readonly adjustedP: number;
  /** Chance that a run that reported it had more kilometres than one of the same tester that did not. */
  readonly chanceLater: number | null;
  /** Testers with both kinds of run. */
  readonly testers: number;
  readonly method: 'exact' | 'normal';
}

const TREND_LEVEL = 0.05;

/** The trend of one cell over the runs of each tester in each pair. */
const testOf = (wearings: readonly (readonly ObservedRun[])[], cell: CellName) => {
  const strata = wearings.map((own) => ({
    tester: own[0]?.tester,
    values: own.map(({ pairM }) => pairM as number),
    inFirst: own.map((run) => reports(run, cell)),
  }));
  const telling = strata.filter(({ inFirst }) => inFirst.includes(true) && inFirst.includes(false));
  return {
    ...stratifiedRankTest(strata),
    testers: new Set(telling.map(({ tester }) => tester)).size,
  };
};

/** The trend of each cell, in the order of the cells. */
export const trendsOverDistance = (
  runs: readonly ObservedRun[],
  cells: readonly CellName[],
): Trend[] => {
  const wearings = [...groupBy(runs, ({ tester, pair }) => `${tester} ${pair}`).values()];
  const tests = cells.map((cell) => testOf(wearings, cell));
  const adjusted = holm(tests.map(({ p }) => p));
  return tests.map(({ p, chanceAbove, testers, method }, at) => {
    const adjustedP = adjusted[at] as number;
    const word =
      chanceAbove === null
        ? 'too-few-runs'
        : adjustedP > TREND_LEVEL
          ? 'no-trend-shown'
          : chanceAbove > 0.5
            ? 'grows'
            : 'fades';
    return { word, p, adjustedP, chanceLater: chanceAbove, testers, method };
  });
};

/** From where in a run a complaint begins, metres: quartiles of the testers' medians. */
export interface Onset {
  readonly medianM: Metres;
  readonly lowerM: Metres;
  readonly upperM: Metres;
  readonly testers: number;
  readonly runs: number;
}

const quantile = (sorted: readonly number[], share: number): number => {
  const at = share * (sorted.length - 1);
  const low = sorted[Math.floor(at)] as number;
  return low + (at - Math.floor(at)) * ((sorted[Math.ceil(at)] as number) - low);
};

/** @returns null where no report says from where */
export const onsetInRun = (runs: readonly ObservedRun[], cell: CellName): Onset | null => {
  const starts = runs.flatMap(({ tester, complaints }) => {
    const own = complaints.flatMap(({ zone, kind, fromM }) =>
      zone === cell.zone && kind === cell.kind && fromM !== undefined ? [fromM as number] : [],
    );
    return own.length > 0 ? [{ tester, fromM: Math.min(...own) }] : [];
  });
  if (starts.length === 0) return null;
  const medians = [...groupBy(starts, ({ tester }) => tester).values()]
    .map((own) =>
      quantile(
        own.map(({ fromM }) => fromM).sort((a, b) => a - b),
        0.5,
      ),
    )
    .sort((a, b) => a - b);
  const at = (share: number) => quantile(medians, share) as Metres;
  return {
    medianM: at(0.5),
    lowerM: at(0.25),
    upperM: at(0.75),
    testers: medians.length,
    runs: starts.length,
  };
};

/**
 * Does a complaint fade with the kilometres on the pair (break-in), stay, or grow (wear)?
 *
 * Within each tester and pair, the kilometres at the runs that reported it against those that did not:
 * the stratified rank test, which is Kendall's S against kilometres summed over strata (sources in
 * `core/statistics/ranks.ts`). A tester who always or never reported it says nothing on its change.
 */
import { groupBy, stratifiedRankTest } from '../statistics/index.ts';
import type { Metres } from '../units/index.ts';
import { reports, type CellName, type ObservedRun } from './observed-runs.ts';

export interface Trend {
  /** `no-trend-shown` does not say that there is none. */
  readonly word: 'fades' | 'grows' | 'no-trend-shown' | 'too-few-runs';
  /** Two-sided; to be held against the number of cells looked at. */
  readonly p: number;
  /** Chance that a run that reported it had more kilometres than one of the same tester that did not. */
  readonly chanceLater: number | null;
  /** Testers and pairs with both kinds of run. */
  readonly strata: number;
  readonly method: 'exact' | 'normal';
}

/** @param level p up to which a direction is named */
export const trendOverDistance = (
  runs: readonly ObservedRun[],
  cell: CellName,
  level = 0.05,
): Trend => {
  const strata = [...groupBy(runs, ({ tester, pair }) => `${tester} ${pair}`).values()].map(
    (own) => ({
      values: own.map(({ pairM }) => pairM as number),
      inFirst: own.map((run) => reports(run, cell)),
    }),
  );
  const { p, chanceAbove, strata: telling, method } = stratifiedRankTest(strata);
  const word =
    chanceAbove === null
      ? 'too-few-runs'
      : p > level
        ? 'no-trend-shown'
        : chanceAbove > 0.5
          ? 'grows'
          : 'fades';
  return { word, p, chanceLater: chanceAbove, strata: telling, method };
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

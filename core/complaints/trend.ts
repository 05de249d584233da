/**
 * Does a complaint fade with the kilometres on the pair (break-in), stay, or grow (wear)?
 *
 * It names no cause: kilometres go along with season, training and skin.
 *
 * Within each tester and pair, the kilometres at the runs that reported it against those that did not:
 * the stratified rank test, which is Kendall's S against kilometres summed over strata (sources in
 * `core/statistics/ranks.ts`). A tester who always or never reported it says nothing on its change.
 *
 * Runs of one tester follow each other, and a complaint that lingers from run to run looks like a trend. So the
 * variance is widened by (1 + r) / (1 − r), r the correlation of a run's report with that of the run before
 * (Bayley GV & Hammersley JM, J R Stat Soc Suppl 1946;8:184-197, from memory) beyond what the testers have in
 * common over the distance, and the greater of both p is taken.
 * `tests/calibrate` says what is left of the error.
 *
 * Every reported zone and kind of the round is tested, and the level is held over all of them together (Holm over
 * those that could show a trend at all, sources in `core/statistics/multiplicity.ts`): one answer, whoever asks.
 */
import type { RecordId } from '../records/index.ts';
import {
  groupBy,
  logChoose,
  normalTwoSided,
  rankedTest,
  rankValues,
  taroneHolm,
  type RankedValues,
} from '../statistics/index.ts';
import type { Metres } from '../units/index.ts';
import type { CellName, ObservedRun } from './observed-runs.ts';

export interface Trend {
  /** `no-trend-shown` does not say that there is none. */
  readonly word: 'fades' | 'grows' | 'no-trend-shown' | 'too-few-runs';
  /** Two-sided. */
  readonly p: number;
  /** Over every reported cell of the round, by Holm; a direction is named up to 5 %. */
  readonly adjustedP: number;
  /** Chance that a run that reported it had more kilometres than one of the same tester that did not. */
  readonly chanceLater: number | null;
  /** Testers with both kinds of run. */
  readonly testers: number;
  readonly method: 'exact' | 'normal';
}

const TREND_LEVEL = 0.05;

/** Into so many stretches the distance is cut to see what the testers have in common. Judgement, no source. */
const STRETCHES = 8;

/** Fewer reports are no story, however they lie. Judgement, no source. */
const LEAST_REPORTS = 3;

/** Runs are never taken to hang together more than this. */
const MOST_LAG = 0.9;

/** The runs of one tester in one pair in their order, ranked once for all cells. */
interface Wearing {
  readonly tester: RecordId;
  readonly ranked: RankedValues;
  /** In which stretch of the distance each run lies, and how many runs lie in each. */
  readonly stretchOf: Uint8Array;
  readonly perStretch: Float64Array;
}

/** The runs of a wearing that reported one cell, as places in its order. */
interface Reporting {
  readonly wearing: Wearing;
  readonly at: number[];
}

const keyOf = ({ zone, kind }: CellName): string => `${zone} ${kind}`;

/** Which runs of which wearing reported each cell, in one pass over the runs. */
const reportingsOf = (
  runs: readonly ObservedRun[],
  cells: readonly CellName[],
): readonly (readonly Reporting[])[] => {
  const numberOf = new Map(cells.map((cell, at) => [keyOf(cell), at]));
  const found = cells.map((): Reporting[] => []);
  const endM = runs.reduce((most, { pairM }) => Math.max(most, pairM), 1);
  for (const own of groupBy(runs, ({ tester, pair }) => `${tester} ${pair}`).values()) {
    const sorted = [...own].sort((a, b) => a.pairM - b.pairM || a.startMs - b.startMs);
    const stretchOf = Uint8Array.from(sorted, ({ pairM }) =>
      Math.min(STRETCHES - 1, Math.floor((STRETCHES * pairM) / endM)),
    );
    const perStretch = new Float64Array(STRETCHES);
    for (const stretch of stretchOf) perStretch[stretch] = (perStretch[stretch] as number) + 1;
    const wearing = {
      tester: (own[0] as ObservedRun).tester,
      ranked: rankValues(sorted.map(({ pairM }) => pairM)),
      stretchOf,
      perStretch,
    };
    for (const [at, { complaints }] of sorted.entries())
      for (const complaint of complaints) {
        const reporting = found[numberOf.get(keyOf(complaint)) ?? -1];
        if (!reporting) continue;
        const last = reporting.at(-1);
        if (last?.wearing !== wearing) reporting.push({ wearing, at: [at] });
        else if (last.at.at(-1) !== at) last.at.push(at);
      }
  }
  return found;
};

/** A stratum whose wearing says something on change, with its share of runs and its reports by stretch. */
interface Telling extends Reporting {
  readonly share: number;
  /** Reports above the stratum's own share, by stretch of distance. */
  readonly above: Float64Array;
}

const tellingOf = (reporting: readonly Reporting[]): Telling[] =>
  reporting.flatMap(({ wearing, at }) => {
    const n = wearing.ranked.ranks.length;
    if (at.length === n || wearing.ranked.spread === 0) return [];
    const share = at.length / n;
    const above = wearing.perStretch.map((runs) => -share * runs);
    for (const place of at) {
      const stretch = wearing.stretchOf[place] as number;
      above[stretch] = (above[stretch] as number) + 1;
    }
    return [{ wearing, at, share, above }];
  });

/**
 * How much a run's answer is like that of the run before, within testers and pairs: the lag-1 correlation of what is
 * left after the stratum's own share and what the other strata have in common over the same stretches. So a
 * complaint that all get from some distance on is no lingering, and one that each has for a while is. What is lost by
 * taking the own share off is given back (−1/n a stratum).
 */
const lagOf = (telling: readonly Telling[]): number => {
  const [above, runs] = [new Float64Array(STRETCHES), new Float64Array(STRETCHES)];
  for (const one of telling)
    for (let stretch = 0; stretch < STRETCHES; stretch++) {
      above[stretch] = (above[stretch] as number) + (one.above[stretch] as number);
      runs[stretch] = (runs[stretch] as number) + (one.wearing.perStretch[stretch] as number);
    }
  let [together, all] = [0, 0];
  const expected = new Float64Array(STRETCHES);
  for (const { wearing, at, share, above: own } of telling) {
    const { perStretch, stretchOf } = wearing;
    const n = stretchOf.length;
    let [squares, next, before] = [0, 0, -1];
    for (let stretch = 0; stretch < STRETCHES; stretch++) {
      const here = perStretch[stretch] as number;
      const others = (runs[stretch] as number) - here;
      const common =
        others > 0 ? ((above[stretch] as number) - (own[stretch] as number)) / others : 0;
      const level = share + common;
      expected[stretch] = level;
      if (here === 0) continue;
      squares += here * level * level;
      next += (here - 1) * level * level + (before < 0 ? 0 : (expected[before] as number) * level);
      before = stretch;
    }
    const levelAt = (place: number): number =>
      place < 0 || place >= n ? 0 : (expected[stretchOf[place] as number] as number);
    for (const [index, place] of at.entries()) {
      squares += 1 - 2 * levelAt(place);
      next -= levelAt(place - 1) + levelAt(place + 1);
      if (at[index + 1] === place + 1) next++;
    }
    together += next + squares / n;
    all += (squares * (n - 1)) / n;
  }
  return all > 1e-9 ? Math.min(MOST_LAG, Math.max(0, together / all)) : 0;
};

/** The trend of one cell over the runs of each tester in each pair. */
const testOf = (reporting: readonly Reporting[]) => {
  const telling = tellingOf(reporting);
  const test = rankedTest(
    telling.map(({ wearing: { ranked }, at }) => ({
      of: ranked,
      take: at.length,
      sum: at.reduce((total, place) => total + (ranked.ranks[place] as number), 0),
    })),
  );
  const reported = telling.reduce((sum, { at }) => sum + at.length, 0);
  const lag = lagOf(telling);
  const wider = normalTwoSided(test.z / Math.sqrt((1 + lag) / (1 - lag)));
  const logWays = telling.reduce(
    (sum, { wearing, at }) => sum + logChoose(wearing.ranked.ranks.length, at.length),
    0,
  );
  return {
    chanceLater: test.chanceAbove,
    method: test.method,
    p: lag > 0 ? Math.max(test.p, wider) : test.p,
    leastP: reported < LEAST_REPORTS ? 1 : Math.min(1, 2 * Math.exp(-logWays)),
    testers: new Set(telling.map(({ wearing }) => wearing.tester)).size,
  };
};

/** Every cell that any of the runs reported. */
export const reportedCells = (runs: readonly ObservedRun[]): CellName[] => {
  const cells = new Map<string, CellName>();
  for (const { complaints } of runs)
    for (const { zone, kind } of complaints) {
      const cell = { zone, kind };
      cells.set(keyOf(cell), cell);
    }
  return [...cells.values()];
};

/**
 * The trend of each cell, in the order of the cells.
 * @param family every cell that is asked about at once, for which the level is held together; the cells
 * themselves belong to it anyway
 */
export const trendsOverDistance = (
  runs: readonly ObservedRun[],
  cells: readonly CellName[],
  family: readonly CellName[] = reportedCells(runs),
): Trend[] => {
  const all = new Map([...cells, ...family].map((cell) => [keyOf(cell), cell]));
  const tests = reportingsOf(runs, [...all.values()]).map(testOf);
  const adjusted = taroneHolm(
    tests.map(({ p }) => p),
    tests.map(({ leastP }) => leastP),
    TREND_LEVEL,
  );
  const found = new Map(
    [...all.keys()].map((key, at): [string, Trend] => {
      const { leastP, ...test } = tests[at] as ReturnType<typeof testOf>;
      const adjustedP = adjusted[at] as number;
      const { chanceLater } = test;
      const word =
        chanceLater === null || leastP > TREND_LEVEL
          ? 'too-few-runs'
          : adjustedP > TREND_LEVEL
            ? 'no-trend-shown'
            : chanceLater > 0.5
              ? 'grows'
              : 'fades';
      return [key, { ...test, word, adjustedP }];
    }),
  );
  return cells.map((cell) => found.get(keyOf(cell)) as Trend);
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

/**
 * Who wears which pair when? A plan in which orders, periods and comparisons are as even as the testers, the
 * sizes and the pairs allow, drawn from a seed.
 *
 * Rounds are put in periods by a Williams square or balanced blocks where such a plan exists and the pairs
 * suffice for it, else by a search (`search.ts`); which tester gets which row and which round which letter is
 * drawn by chance (randomisation: Fisher RA, The Design of Experiments, 1935). Then each place gets the pair
 * of the round that comes nearest to the tester's foot, never one pair for two testers at a time.
 */
import type { HandOutPlan, RecordId } from '../records/index.ts';
import { seededChance } from '../statistics/index.ts';
import type { Millimetres } from '../units/index.ts';
import { planBalance, wornIn, type PlanBalance, type PlanRow } from './balance.ts';
import { firstRows } from './constructed.ts';
import { leastImbalance } from './least-imbalance.ts';
import { matchMost } from './matching.ts';
import { searchPlan, type PlanFrame } from './search.ts';

export interface PlanTester {
  readonly id: RecordId;
  /** Of the longer foot; null: not known, and no pair is known to fit. */
  readonly footLengthMm: Millimetres | null;
  /** Periods in which the tester takes no part, counted from 0. */
  readonly away: readonly number[];
}

export interface PlanPair {
  readonly id: RecordId;
  readonly round: RecordId;
  /** Foot length that the pair is made for. */
  readonly sizeMm: Millimetres;
}

export interface PlanPlace {
  readonly tester: RecordId;
  /** Counted from 0. */
  readonly period: number;
  readonly pair: RecordId;
  readonly round: RecordId;
}

export interface PlanQuestion {
  readonly seed: number;
  readonly rounds: readonly RecordId[];
  readonly periods: number;
  readonly testers: readonly PlanTester[];
  /** The pairs that can be handed out: not withdrawn, and back by the first period. */
  readonly pairs: readonly PlanPair[];
  /** A pair fits where its size differs from the foot length by no more than this. */
  readonly allowedMm: number;
  /** Places that stand already, because they were handed out. */
  readonly kept?: readonly PlanPlace[];
  /** Earlier periods stay as they are, also where they are empty. */
  readonly fromPeriod?: number;
  /** The places of an earlier plan, to begin the search with. */
  readonly before?: readonly PlanPlace[];
}

export interface DrawnPlan {
  readonly basis: HandOutPlan['basis'];
  readonly places: readonly PlanPlace[];
  /** Where a tester is there and no pair was left that fits. */
  readonly empty: readonly { readonly tester: RecordId; readonly period: number }[];
  readonly balance: PlanBalance;
  /** The least imbalance of any plan of so many testers who could wear all; null: not known. */
  readonly least: number | null;
}

/** Why no plan can be drawn. */
export type PlanTrouble = 'no-round' | 'no-tester' | 'more-periods-than-rounds' | 'no-pair';

export type PlanAnswer =
  | { readonly ok: true; readonly plan: DrawnPlan }
  | { readonly ok: false; readonly why: PlanTrouble };

/** Sizes come in steps of 5 mm (Mondopoint) or 6.7 mm (EU): up to half a step. Judgement, no source. */
export const ALLOWED_MM = 4;

/** How often the search warms up anew at most. */
const GOES = 6;

/** Changes to try in one go: by the number of places, and fewer where pairs must be counted at each. */
const movesFor = (testers: number, periods: number, isScarce: boolean): number => {
  const most = Math.min(60_000, 1_000 * testers * periods);
  return isScarce ? Math.max(1_000, Math.round((most * 6) / Math.max(12, testers))) : most;
};

/** The rounds of each tester by period, as the balance counts them. */
export const rowsOfPlaces = (
  places: readonly PlanPlace[],
  testers: readonly RecordId[],
  rounds: readonly RecordId[],
  periods: number,
): PlanRow[] => {
  const rowOf = new Map(testers.map((id) => [id, new Array<number | null>(periods).fill(null)]));
  for (const { tester, period, round } of places) {
    const letter = rounds.indexOf(round);
    const row = rowOf.get(tester);
    if (row && letter >= 0 && period < periods) row[period] = letter;
  }
  return [...rowOf.values()];
};

/** What the finished rows are, by the property that defines it. */
export const basisOf = (
  rows: readonly PlanRow[],
  rounds: number,
  balance: PlanBalance,
): HandOutPlan['basis'] => {
  const isEqual = ({ least, most }: { least: number; most: number }) => least > 0 && least === most;
  const isWhole = rows.every((row) => wornIn(row).length === row.length);
  const periods = rows[0]?.length ?? 0;
  if (!isWhole || periods < 2 || !isEqual(balance.inAll)) return 'best-found';
  if (periods === rounds && isEqual(balance.inPeriod) && isEqual(balance.after))
    return 'carry-over-balanced';
  return periods < rounds && isEqual(balance.together) ? 'balanced-blocks' : 'best-found';
};

/**
 * The evenest rows that are known or found where nobody is away and pairs abound. Always the same: chance has
 * its say when the rows go to testers and the letters to rounds.
 * @param isLast whether nothing will be searched after
 */
const evenRows = (
  rounds: number,
  periods: number,
  testers: number,
  isLast: boolean,
): readonly PlanRow[] => {
  const start = firstRows(rounds, periods, testers);
  const least = leastImbalance(rounds, periods, testers) ?? 0;
  if (!isLast || planBalance(start, rounds).imbalance <= least) return start;
  const frame: PlanFrame = {
    rounds,
    periods,
    testers,
    isThere: () => true,
    isFixed: () => false,
    pairsFor: () => [],
    isScarce: () => false,
  };
  const effort = { moves: movesFor(testers, periods, false), goes: GOES, enough: least };
  return searchPlan(frame, start, seededChance(1), effort);
};

/** Rows with their pairs, as far as there are some. */
interface Realised {
  readonly rows: readonly PlanRow[];
  readonly places: PlanPlace[];
  readonly empty: readonly { readonly tester: number; readonly period: number }[];
  readonly balance: PlanBalance;
}

const placeName = (tester: number, period: number): string => `${tester} ${period}`;

/** Draws the plan. The same question has the same answer, in whatever order testers and pairs come. */
export const drawPlan = (question: PlanQuestion): PlanAnswer => {
  const { seed, rounds, periods, allowedMm, kept = [], fromPeriod = 0 } = question;
  const byId = (a: { id: string }, b: { id: string }) => (a.id < b.id ? -1 : 1);
  const testers = [...question.testers].sort(byId);
  const pairs = [...question.pairs].sort(byId).filter(({ round }) => rounds.includes(round));
  if (rounds.length === 0) return { ok: false, why: 'no-round' };
  if (testers.length === 0) return { ok: false, why: 'no-tester' };
  if (periods > rounds.length) return { ok: false, why: 'more-periods-than-rounds' };
  if (pairs.length === 0) return { ok: false, why: 'no-pair' };

  const ids = testers.map(({ id }) => id);
  const chance = seededChance(seed);
  const pairNumber = new Map(pairs.map(({ id }, at) => [id, at]));
  const keptAt = new Map(
    kept.map((place) => [placeName(ids.indexOf(place.tester), place.period), place]),
  );
  const isThere = (tester: number, period: number): boolean =>
    period < fromPeriod
      ? keptAt.has(placeName(tester, period))
      : !(testers[tester]?.away.includes(period) ?? true);
  const isFixed = (tester: number, period: number): boolean =>
    period < fromPeriod || keptAt.has(placeName(tester, period));

  // Pairs of each round that fit each tester, the nearest first.
  const fits = testers.map(({ footLengthMm }) =>
    rounds.map((round) =>
      footLengthMm === null
        ? []
        : pairs
            .map((pair, at) => ({ at, pair, off: Math.abs(pair.sizeMm - footLengthMm) }))
            .filter(({ pair, off }) => pair.round === round && off <= allowedMm)
            .sort((a, b) => a.off - b.off || a.at - b.at)
            .map(({ at }) => at),
    ),
  );
  const pairsFor = (tester: number, period: number, round: number): readonly number[] => {
    const own = keptAt.get(placeName(tester, period));
    if (own) {
      const number = pairNumber.get(own.pair);
      return number === undefined ? [] : [number];
    }
    return fits[tester]?.[round] ?? [];
  };
  // A round is scarce in a period where not everybody who is there could wear it at once.
  const scarce = Array.from({ length: periods }, (_, period) =>
    rounds.map((_round, round) => {
      const there = testers.flatMap((_tester, at) =>
        isThere(at, period) ? [pairsFor(at, period, round)] : [],
      );
      return period >= fromPeriod && matchMost(there).includes(null);
    }),
  );
  const frame: PlanFrame = {
    rounds: rounds.length,
    periods,
    testers: testers.length,
    isThere,
    isFixed,
    pairsFor,
    isScarce: (period, round) => scarce[period]?.[round] ?? false,
  };

  const isWhole = ids.every((_, at) =>
    Array.from({ length: periods }, (_period, period) => period).every(
      (period) => isThere(at, period) && !isFixed(at, period),
    ),
  );
  const isAnyScarce = scarce.flat().includes(true);
  const isFree = isWhole && !isAnyScarce;
  const least = isWhole ? leastImbalance(rounds.length, periods, testers.length) : null;
  const base = evenRows(rounds.length, periods, testers.length, isFree);
  const letters = chance.shuffled(rounds.map((_, at) => at));
  const drawn = chance.shuffled(
    base.map((row) => row.map((letter) => (letter === null ? null : (letters[letter] ?? null)))),
  );
  const beforeRows = question.before && rowsOfPlaces(question.before, ids, rounds, periods);
  const start = testers.map((_, tester): PlanRow => {
    const keptRow = Array.from({ length: periods }, (_period, period) => {
      const place = keptAt.get(placeName(tester, period));
      return place ? rounds.indexOf(place.round) : null;
    });
    const wish = (beforeRows ?? drawn)[tester] ?? [];
    return keptRow.map((round, period) => {
      if (round !== null) return round;
      if (!isThere(tester, period)) return null;
      const wished = wish[period] ?? null;
      return wished !== null && keptRow.includes(wished) ? null : wished;
    });
  });
  // The pairs: nearest sizes first, and those that went out least so far before others.
  const realise = (rows: readonly PlanRow[]): Realised => {
    const used = new Array<number>(pairs.length).fill(0);
    const places: PlanPlace[] = [];
    for (let period = 0; period < periods; period++)
      for (const [round, roundId] of rounds.entries()) {
        const takers = testers.flatMap((_, at) => (rows[at]?.[period] === round ? [at] : []));
        const offers = takers.map((tester) => {
          const foot = testers[tester]?.footLengthMm ?? 0;
          const off = (at: number) => Math.abs((pairs[at]?.sizeMm ?? 0) - foot);
          return [...pairsFor(tester, period, round)].sort(
            (a, b) => off(a) - off(b) || (used[a] ?? 0) - (used[b] ?? 0) || a - b,
          );
        });
        const given = matchMost(offers);
        takers.forEach((tester, at) => {
          const keptPlace = keptAt.get(placeName(tester, period));
          const number = given[at] ?? -1;
          const pair = pairs[number];
          if (keptPlace) places.push(keptPlace);
          else if (pair) {
            used[number] = (used[number] ?? 0) + 1;
            places.push({ tester: ids[tester] as RecordId, period, pair: pair.id, round: roundId });
          }
        });
      }
    const finished = rowsOfPlaces(places, ids, rounds, periods);
    const empty = finished.flatMap((row, tester) =>
      row.flatMap((round, period) =>
        round === null && period >= fromPeriod && isThere(tester, period)
          ? [{ tester, period }]
          : [],
      ),
    );
    return { rows: finished, places, empty, balance: planBalance(finished, rounds.length) };
  };

  const effort = {
    moves: movesFor(testers.length, periods, isAnyScarce),
    goes: GOES,
    enough: least ?? 0,
  };
  let best = realise(start);
  const take = (other: Realised): void => {
    const fewer = best.empty.length - other.empty.length;
    if (fewer > 0 || (fewer === 0 && other.balance.imbalance < best.balance.imbalance))
      best = other;
  };
  if (!isFree) {
    take(realise(searchPlan(frame, start, chance, effort)));
    if (best.empty.length > 0) {
      // What cannot be filled is set aside, and the rest is made as even as it can be by itself.
      const aside = new Set(best.empty.map(({ tester, period }) => placeName(tester, period)));
      const rest = {
        ...frame,
        isThere: (tester: number, period: number) =>
          isThere(tester, period) && !aside.has(placeName(tester, period)),
      };
      take(realise(searchPlan(rest, best.rows, chance, effort)));
    }
  }
  const { places, empty, balance } = best;
  places.sort((a, b) => a.period - b.period || (a.tester < b.tester ? -1 : 1));
  return {
    ok: true,
    plan: {
      basis: basisOf(best.rows, rounds.length, balance),
      places,
      empty: empty.map(({ tester, period }) => ({ tester: ids[tester] as RecordId, period })),
      balance,
      least,
    },
  };
};

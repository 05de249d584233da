/**
 * The evenest plan that a search finds, where none is known beforehand or the pairs forbid it.
 *
 * Simulated annealing (Kirkpatrick S, Gelatt CD & Vecchi MP, Science 1983;220:671-680) over whole plans. It
 * lowers the spread of the four tables of `balance.ts`, and before it the number of places without a
 * pair. All chance comes from the seed, so the same question has the same answer.
 */
import type { Chance } from '../statistics/index.ts';
import { leastSquares, type PlanRow } from './balance.ts';
import { matchMost } from './matching.ts';

/** What a plan must keep to. */
export interface PlanFrame {
  readonly rounds: number;
  readonly periods: number;
  readonly testers: number;
  /** Whether the tester takes part in the period at all. */
  readonly isThere: (tester: number, period: number) => boolean;
  /** Already handed out: the search leaves it as it is. */
  readonly isFixed: (tester: number, period: number) => boolean;
  /** The pairs of the round that the tester can have in the period. */
  readonly pairsFor: (tester: number, period: number, round: number) => readonly number[];
  /** Whether there may be too few pairs; where not, everybody finds one, whoever wears the round. */
  readonly isScarce: (period: number, round: number) => boolean;
}

export interface SearchEffort {
  /** Changes to try in one go. */
  readonly moves: number;
  /** How many times to warm up anew at most; two in vain are enough. */
  readonly goes: number;
  /** An imbalance that is known to be the least, where the search can stop. */
  readonly enough: number;
}

/** A place without a pair weighs as much as this spread. */
const WEIGHT_OF_EMPTY = 40;
const NONE = -1;
const HOT = 3;
const COLD = 0.12;

/**
 * The evenest plan found.
 * @param start rows to begin with, places where the tester is not there left null
 */
export const searchPlan = (
  frame: PlanFrame,
  start: readonly PlanRow[],
  chance: Chance,
  { moves, goes, enough }: SearchEffort,
): PlanRow[] => {
  const { rounds: v, periods: p, testers: n } = frame;
  const plan = new Int16Array(n * p).fill(NONE);
  const inPeriod = new Float64Array(p * v);
  const inAll = new Float64Array(v);
  const together = new Float64Array(v * v);
  const after = new Float64Array(v * v);
  const short = new Int16Array(p * v);

  const there: number[][] = Array.from({ length: n }, (_, tester) =>
    Array.from({ length: p }, (_, period) => period).filter((period) =>
      frame.isThere(tester, period),
    ),
  );
  const open: number[] = [];
  for (let tester = 0; tester < n; tester++)
    for (const period of there[tester] as number[])
      if (!frame.isFixed(tester, period)) open.push(tester * p + period);
  // Means of the tables in a plan without an empty place; centred counts, so that emptying never pays.
  const wearable = there.map((own) => Math.min(own.length, v));
  const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);
  const totals = {
    periods: Array.from({ length: p }, (_, period) =>
      sum(there.map((own) => (own.includes(period) ? 1 : 0))),
    ),
    all: sum(wearable),
    together: sum(wearable.map((k) => (k * (k - 1)) / 2)),
    after: sum(wearable.map((k) => Math.max(0, k - 1))),
  };
  const twos = Math.max(1, (v * (v - 1)) / 2);
  const meanPeriod = totals.periods.map((total) => total / v);
  const meanAll = totals.all / v;
  const meanTogether = totals.together / twos;
  const meanAfter = totals.after / (2 * twos);
  const spreadOf = (total: number, cells: number) =>
    leastSquares(total, cells) - (total * total) / cells;
  const target =
    sum(totals.periods.map((total) => spreadOf(total, v))) +
    spreadOf(totals.all, v) +
    (v > 1 ? spreadOf(totals.together, twos) + spreadOf(totals.after, 2 * twos) : 0);

  const bump = (table: Float64Array, cell: number, by: 1 | -1, mean: number): number => {
    const count = table[cell] as number;
    table[cell] = count + by;
    return 2 * by * (count - mean) + 1;
  };
  const worn = new Int16Array(p);
  /** Counts a tester's row in or out; answers the change of the spread. */
  const countRow = (tester: number, by: 1 | -1): number => {
    let change = 0;
    let k = 0;
    for (let period = 0; period < p; period++) {
      const round = plan[tester * p + period] as number;
      if (round === NONE) continue;
      change += bump(inPeriod, period * v + round, by, meanPeriod[period] as number);
      change += bump(inAll, round, by, meanAll);
      for (let other = 0; other < k; other++) {
        const [a, b] = [worn[other] as number, round];
        change += bump(together, a < b ? a * v + b : b * v + a, by, meanTogether);
      }
      if (k > 0) change += bump(after, (worn[k - 1] as number) * v + round, by, meanAfter);
      worn[k++] = round;
    }
    return change;
  };
  /** Testers in the period and round for whom no pair is left. */
  const shortOf = (period: number, round: number): number => {
    if (!frame.isScarce(period, round)) return 0;
    const fits: (readonly number[])[] = [];
    for (let tester = 0; tester < n; tester++)
      if (plan[tester * p + period] === round) fits.push(frame.pairsFor(tester, period, round));
    // Whoever comes first takes the nearest pair; only where that fails it takes a matching to know.
    const taken: number[] = [];
    const isEasy = fits.every((own) => {
      const pair = own.find((one) => !taken.includes(one));
      if (pair !== undefined) taken.push(pair);
      return pair !== undefined;
    });
    if (isEasy) return 0;
    return matchMost(fits).filter((pair) => pair === null).length;
  };
  /** Takes up the shortage of a period's round; answers the change. */
  const recount = (period: number, round: number): number => {
    const cell = period * v + round;
    const now = shortOf(period, round);
    const change = now - (short[cell] as number);
    short[cell] = now;
    return change;
  };
  const has = (tester: number, round: number): boolean => {
    for (let period = 0; period < p; period++) if (plan[tester * p + period] === round) return true;
    return false;
  };

  let spread = 0;
  let empty = 0;
  const load = (rows: readonly PlanRow[]): void => {
    for (const table of [inPeriod, inAll, together, after]) table.fill(0);
    short.fill(0);
    empty = 0;
    // From the tables' sums of squares about their means, all counts being 0.
    spread =
      sum(meanPeriod.map((mean) => v * mean * mean)) +
      v * meanAll ** 2 +
      (v > 1 ? twos * meanTogether ** 2 + 2 * twos * meanAfter ** 2 : 0);
    for (let tester = 0; tester < n; tester++) {
      for (let period = 0; period < p; period++)
        plan[tester * p + period] = rows[tester]?.[period] ?? NONE;
      spread += countRow(tester, 1);
    }
    for (const place of open) if (plan[place] === NONE) empty++;
    for (let period = 0; period < p; period++)
      for (let round = 0; round < v; round++) empty += recount(period, round);
  };
  const rowsOf = (from: Int16Array): PlanRow[] =>
    Array.from({ length: n }, (_, tester) =>
      Array.from(from.subarray(tester * p, (tester + 1) * p), (round) =>
        round === NONE ? null : round,
      ),
    );

  /** The periods and rounds of some places, each once, where a pair may be missing. */
  const scarceCells = (places: readonly number[], to: readonly number[]): [number, number][] => {
    const cells = new Map<number, [number, number]>();
    to.forEach((round, at) => {
      const period = (places[at % places.length] as number) % p;
      if (round !== NONE && frame.isScarce(period, round))
        cells.set(period * v + round, [period, round]);
    });
    return [...cells.values()];
  };

  /** Sets places to rounds if that makes the plan no worse than the heat allows. */
  const tryToSet = (places: readonly number[], to: readonly number[], heat: number): void => {
    const from = places.map((place) => plan[place] as number);
    const testers = [...new Set(places.map((place) => Math.floor(place / p)))];
    const cells = scarceCells(places, [...from, ...to]);
    let change = 0;
    let emptied = 0;
    for (const tester of testers) change += countRow(tester, -1);
    places.forEach((place, at) => {
      plan[place] = to[at] as number;
      emptied += Number(to[at] === NONE) - Number(from[at] === NONE);
    });
    for (const tester of testers) change += countRow(tester, 1);
    const touch = (): number => {
      let shortage = 0;
      for (const [period, round] of cells) shortage += recount(period, round);
      return shortage;
    };
    emptied += touch();
    const worse = change + WEIGHT_OF_EMPTY * emptied;
    if (worse <= 0 || chance.share() < Math.exp(-worse / heat)) {
      spread += change;
      empty += emptied;
      return;
    }
    for (const tester of testers) countRow(tester, -1);
    places.forEach((place, at) => (plan[place] = from[at] as number));
    for (const tester of testers) countRow(tester, 1);
    touch();
  };

  const openOf: number[][] = Array.from({ length: n }, () => []);
  const openIn: number[][] = Array.from({ length: p }, () => []);
  for (const place of open) {
    openOf[Math.floor(place / p)]?.push(place);
    openIn[place % p]?.push(place);
  }
  const move = (heat: number): void => {
    const place = open[chance.below(open.length)] as number;
    const tester = Math.floor(place / p);
    const what = chance.below(4);
    if (what === 0) {
      // Two periods of a tester change places.
      const own = openOf[tester] as number[];
      const other = own[chance.below(own.length)] as number;
      if (plan[place] !== plan[other])
        tryToSet([place, other], [plan[other] as number, plan[place] as number], heat);
    } else if (what === 1) {
      // Two testers change rounds in a period.
      const others = openIn[place % p] as number[];
      const other = others[chance.below(others.length)] as number;
      const [mine, theirs] = [plan[place] as number, plan[other] as number];
      if (mine === theirs) return;
      const otherTester = Math.floor(other / p);
      if (theirs !== NONE && has(tester, theirs)) return;
      if (mine !== NONE && has(otherTester, mine)) return;
      tryToSet([place, other], [theirs, mine], heat);
    } else if (what === 2) {
      // A round that the tester does not wear yet, or seldom none.
      const round = chance.below(50) === 0 ? NONE : chance.below(v);
      if (plan[place] === round || (round !== NONE && has(tester, round))) return;
      tryToSet([place], [round], heat);
    } else {
      // Two testers change whole rows.
      const other = chance.below(n);
      const [mine, theirs] = [openOf[tester] as number[], openOf[other] as number[]];
      if (other === tester || mine.length !== theirs.length) return;
      if (there[tester]?.length !== mine.length || there[other]?.length !== theirs.length) return;
      if (mine.some((own, at) => own % p !== (theirs[at] as number) % p)) return;
      const rows = [...mine, ...theirs];
      tryToSet(
        rows,
        [...theirs, ...mine].map((from) => plan[from] as number),
        heat,
      );
    }
  };

  load(start);
  let best = plan.slice();
  let [bestEmpty, bestSpread] = [empty, spread];
  const isDone = () => bestEmpty === 0 && bestSpread <= target + enough + 1e-6;
  let idle = 0;
  for (let go = 0; go < goes && idle < 2 && open.length > 0 && !isDone(); go++) {
    const [emptyBefore, spreadBefore] = [bestEmpty, bestSpread];
    if (go > 0) load(rowsOf(best));
    const cooling = (COLD / HOT) ** (1 / moves);
    let heat = go === 0 ? HOT / 3 : HOT;
    for (let step = 0; step < moves && !isDone(); step++, heat *= cooling) {
      move(Math.max(heat, COLD));
      if (empty < bestEmpty || (empty === bestEmpty && spread < bestSpread - 1e-6)) {
        best = plan.slice();
        [bestEmpty, bestSpread] = [empty, spread];
      }
    }
    idle = bestEmpty < emptyBefore || bestSpread < spreadBefore - 1e-6 ? 0 : idle + 1;
  }
  return rowsOf(best);
};

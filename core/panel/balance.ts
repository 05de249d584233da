/**
 * How even is a plan, and how even could it be?
 *
 * Four tables are counted. A table is as even as can be when no two of its counts differ by more than 1;
 * its **imbalance** is the sum of its squared counts beyond what such counts would give, so 0 is the
 * theoretical optimum. Some numbers of testers admit no plan with 0 in all four at once.
 *
 * Why these four: period effects and carry-over of the pair worn before (Williams EJ, Aust J Sci Res A
 * 1949;2:149-168; Wakeling IN & MacFie HJH, Food Qual Prefer 1995;6:299-308); which rounds are compared by
 * the same tester (the λ of balanced incomplete blocks, Yates F, Ann Eugen 1936;7:121-140).
 */

/** One tester's rounds by period, counted from 0; null where nothing is worn. No round comes twice. */
export type PlanRow = readonly (number | null)[];

/** How often something came, and how far from even that is. */
export interface Evenness {
  /** Smallest and greatest count. */
  readonly least: number;
  readonly most: number;
  /** Greatest difference of two counts that should be the same: within a period, within a table. */
  readonly differ: number;
  /** Sum of squared counts beyond the least possible for the same total; 0 is as even as can be. */
  readonly imbalance: number;
}

export interface PlanBalance {
  /** How often each round is worn in each period. */
  readonly inPeriod: Evenness;
  /** How often each round is worn in all. */
  readonly inAll: Evenness;
  /** How many testers wear both of two rounds, over all twos. */
  readonly together: Evenness;
  /** How often a round is the next that is worn after another, over all ordered twos. */
  readonly after: Evenness;
  /** The four imbalances together. */
  readonly imbalance: number;
}

/** The least sum of squares of `cells` whole numbers with this total. */
export const leastSquares = (total: number, cells: number): number => {
  if (cells === 0) return 0;
  const low = Math.floor(total / cells);
  const over = total - low * cells;
  return (cells - over) * low * low + over * (low + 1) ** 2;
};

const evenness = (tables: readonly (readonly number[])[]): Evenness => {
  const all = tables.flat();
  if (all.length === 0) return { least: 0, most: 0, differ: 0, imbalance: 0 };
  const imbalance = tables.reduce(
    (sum, counts) =>
      sum +
      counts.reduce((a, c) => a + c * c, 0) -
      leastSquares(
        counts.reduce((a, c) => a + c, 0),
        counts.length,
      ),
    0,
  );
  const ends = (counts: readonly number[]) => ({
    least: Math.min(...counts),
    most: Math.max(...counts),
  });
  const spans = tables.flatMap((counts) => (counts.length > 0 ? [ends(counts)] : []));
  const differ = Math.max(...spans.map(({ least, most }) => most - least));
  return { ...ends(all), differ, imbalance };
};

/** The rounds of a row in the order in which they are worn. */
export const wornIn = (row: PlanRow): number[] => row.filter((round) => round !== null);

/**
 * Counts a plan.
 * @param rows one a tester
 * @param rounds how many rounds are compared
 */
export const planBalance = (rows: readonly PlanRow[], rounds: number): PlanBalance => {
  const periods = rows.reduce((most, row) => Math.max(most, row.length), 0);
  const zeros = (count: number): number[] => new Array<number>(count).fill(0);
  const up = (list: number[] | undefined, at: number): void => {
    if (list) list[at] = (list[at] ?? 0) + 1;
  };
  const inPeriod = Array.from({ length: periods }, () => zeros(rounds));
  const inAll = zeros(rounds);
  const together = Array.from({ length: rounds }, (_, first) => zeros(rounds - first - 1));
  const after = Array.from({ length: rounds }, () => zeros(rounds));
  for (const row of rows) {
    row.forEach((round, period) => {
      if (round === null) return;
      up(inPeriod[period], round);
      up(inAll, round);
    });
    const worn = wornIn(row);
    worn.forEach((round, at) => {
      const before = worn[at - 1];
      if (before !== undefined) up(after[before], round);
      for (const other of worn.slice(at + 1))
        up(together[Math.min(round, other)], Math.abs(round - other) - 1);
    });
  }
  const all = {
    inPeriod: evenness(inPeriod),
    inAll: evenness([inAll]),
    together: evenness([together.flat()]),
    after: evenness([after.flatMap((row, from) => row.filter((_, to) => to !== from))]),
  };
  return {
    ...all,
    imbalance:
      all.inPeriod.imbalance + all.inAll.imbalance + all.together.imbalance + all.after.imbalance,
  };
};

/**
 * Who is compared with whom between two rounds: the same testers over as many first runs of each, or all
 * testers of the one with all of the other. The reasons stand at the head of `compare.ts`.
 */
import type { RecordId } from '../records/index.ts';
import { intraclassOfShares, type UnitCount } from '../statistics/index.ts';
import type { Reports, RoundAnswers } from './answers.ts';

/** Testers with fewer asked runs in a round are counted, and not compared. Judgement, no source. */
export const LEAST_RUNS = 2;
/** From so many testers who wore both rounds on, they alone decide. */
export const LEAST_SAME_TESTERS = 5;
/** Testers that each round needs where they are not the same. Judgement, no source. */
const LEAST_OTHER_TESTERS = 4;
/** Runs of one tester are taken to hang together at least this much. Judgement, no source. */
const LEAST_CORRELATION = 0.1;

/** Counts of one round, over some testers. */
export interface RoundCount {
  /** Testers asked, and those who reported it at least once. */
  readonly testers: number;
  readonly reporters: number;
  /** Runs asked, and those that reported it. */
  readonly runs: number;
  readonly reported: number;
}

/** Both rounds' answers about one complaint. */
export interface BothRounds {
  readonly earlier: { readonly answers: RoundAnswers; readonly reports: Reports };
  readonly later: { readonly answers: RoundAnswers; readonly reports: Reports };
}

/** Counts over some testers. */
export const countOf = (units: readonly UnitCount[]): RoundCount => ({
  testers: units.length,
  reporters: units.filter(({ x }) => x > 0).length,
  runs: units.reduce((sum, { n }) => sum + n, 0),
  reported: units.reduce((sum, { x }) => sum + x, 0),
});

/** A tester's asked and reporting runs of one round; null: not asked in it. */
export const unitOf = (
  { answers, reports }: BothRounds['earlier'],
  tester: RecordId,
): UnitCount | null => {
  const n = answers.asked.get(tester) ?? 0;
  return n === 0 ? null : { x: reports.get(tester)?.length ?? 0, n };
};

/** The same of every tester with at least so many asked runs. */
export const unitsOf = (round: BothRounds['earlier'], least = 1): UnitCount[] =>
  [...round.answers.asked].flatMap(([tester, n]) =>
    n >= least ? [{ x: round.reports.get(tester)?.length ?? 0, n }] : [],
  );

/** Reports among the first so many asked runs. */
const amongFirst = (reports: readonly number[] | undefined, runs: number): number =>
  reports?.filter((at) => at < runs).length ?? 0;

/** The first runs of each tester who wore both rounds often enough, as many of one as of the other. */
export const pairedFirsts = ({
  earlier,
  later,
}: BothRounds): {
  readonly tester: RecordId;
  readonly earlier: UnitCount;
  readonly later: UnitCount;
  readonly change: number;
}[] =>
  [...earlier.answers.asked].flatMap(([tester, asked]) => {
    const n = Math.min(asked, later.answers.asked.get(tester) ?? 0);
    if (n < LEAST_RUNS) return [];
    const [before, after] = [earlier, later].map(({ reports }) =>
      amongFirst(reports.get(tester), n),
    ) as [number, number];
    return [
      { tester, earlier: { x: before, n }, later: { x: after, n }, change: (after - before) / n },
    ];
  });

/** How much runs of one tester hang together, in both rounds; never taken to be less than a tenth. */
export const correlationOf = (sets: readonly (readonly UnitCount[])[]): number =>
  Math.min(1, Math.max(LEAST_CORRELATION, intraclassOfShares(sets) ?? LEAST_CORRELATION));

/** All testers of two rounds that were asked often enough, as if they were different people. */
export const asOthers = ({ earlier, later }: BothRounds) => ({
  earlier: unitsOf(earlier, LEAST_RUNS),
  later: unitsOf(later, LEAST_RUNS),
});

/** Who decides: those who wore both rounds, all of both, or nobody. */
export type Basis = 'same-testers' | 'all-testers' | 'none';

/** Whether the testers who wore both rounds decide, or all of both, or nothing can be said. */
export const basisOf = (both: BothRounds): Basis => {
  if (pairedFirsts(both).length >= LEAST_SAME_TESTERS) return 'same-testers';
  const { earlier, later } = asOthers(both);
  return Math.min(earlier.length, later.length) >= LEAST_OTHER_TESTERS ? 'all-testers' : 'none';
};

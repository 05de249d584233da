/**
 * Who was asked, and who reported what where?
 *
 * A run counts as asked only if the feet question was answered, with complaints or with "nothing
 * bothered me". Zero complaints and nobody asked are different things and stay different here.
 */
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';
import type { Foot, RecordId } from '../records/index.ts';
import type { FeetAnswer } from './feet-answer.ts';
import type { CellTally, Tally } from './tally.ts';

export interface Asked {
  /** Runs in which the question was answered. */
  readonly runs: number;
  readonly testers: number;
}

/** One zone and kind of complaint, over both feet. */
export interface ComplaintCell {
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind;
  /** Runs that reported it, on either foot. */
  readonly runs: number;
  /** Testers who reported it at least once, and at least twice. */
  readonly testersOnce: number;
  readonly testersTwice: number;
  /** Runs that reported it by foot; a run may count under both. */
  readonly byFoot: Readonly<Record<Foot, number>>;
  /** Mean and greatest severity (0-10) of the runs that gave one; null where none did. */
  readonly severity: { readonly mean: number; readonly most: number; readonly runs: number } | null;
  /** Runs asked and runs reported of each tester who reported it, by tester id. */
  readonly byTester: readonly {
    readonly tester: RecordId;
    readonly asked: number;
    readonly reported: number;
  }[];
  /** The runs behind it, by id. */
  readonly runIds: readonly RecordId[];
}

export interface ComplaintCounts {
  readonly asked: Asked;
  /** Cells with at least one report: most testers first, then most runs, then by zone and kind. */
  readonly cells: readonly ComplaintCell[];
}

/** The counts of a tally of these answers. */
export const countTally = (tally: Tally, answers: readonly FeetAnswer[]): ComplaintCounts => {
  // Testers by id once, so that the cells compare small numbers and not long texts.
  const rank = new Int32Array(tally.testers.length);
  [...tally.testers.keys()]
    .sort((a, b) => ((tally.testers[a] as string) < (tally.testers[b] as string) ? -1 : 1))
    .forEach((number, at) => (rank[number] = at));
  const scratch = new Int32Array(tally.testers.length);
  return {
    asked: { runs: answers.length, testers: tally.testers.length },
    cells: tally.cells.map((cell) => cellOf(cell, tally, answers, rank, scratch)).sort(byWeight),
  };
};

const cellOf = (
  { zone, kind, runs, feet, severities }: CellTally,
  { testers, asked, testerOf }: Tally,
  answers: readonly FeetAnswer[],
  rank: Int32Array,
  /** One count a tester, all 0 before and after. */
  scratch: Int32Array,
): ComplaintCell => {
  const reporters: { number: number; count: number }[] = [];
  for (const run of runs) {
    const number = testerOf[run] as number;
    if (scratch[number] === 0) reporters.push({ number, count: 0 });
    scratch[number] = (scratch[number] as number) + 1;
  }
  let testersTwice = 0;
  for (const reporter of reporters) {
    reporter.count = scratch[reporter.number] as number;
    scratch[reporter.number] = 0;
    if (reporter.count >= 2) testersTwice++;
  }
  reporters.sort(
    (a, b) => b.count - a.count || (rank[a.number] as number) - (rank[b.number] as number),
  );
  const graded = severities.filter((severity) => severity >= 0);
  return {
    zone,
    kind,
    runs: runs.length,
    testersOnce: reporters.length,
    testersTwice,
    byFoot: {
      left: feet.filter((side) => side !== 2).length,
      right: feet.filter((side) => side !== 1).length,
    },
    severity:
      graded.length === 0
        ? null
        : {
            mean: graded.reduce((a, b) => a + b, 0) / graded.length,
            most: graded.reduce((a, b) => Math.max(a, b), 0),
            runs: graded.length,
          },
    byTester: reporters.map(({ number, count }) => ({
      tester: testers[number] as RecordId,
      asked: asked[number] as number,
      reported: count,
    })),
    runIds: runs.map((run) => (answers[run] as FeetAnswer).run).sort(),
  };
};

const byWeight = (a: ComplaintCell, b: ComplaintCell): number =>
  b.testersOnce - a.testersOnce ||
  b.runs - a.runs ||
  (a.zone === b.zone ? (a.kind < b.kind ? -1 : 1) : a.zone < b.zone ? -1 : 1);

/** How many testers reported anything in a zone, for the foot map: the union over its kinds. */
export interface ZoneCount {
  readonly zone: ZoneCode;
  readonly runs: number;
  readonly testers: number;
  readonly testersTwice: number;
}

/** Counts per zone and foot, over all kinds. Zones without a report are absent. */
export const countZones = (
  answers: readonly FeetAnswer[],
  foot: Foot,
): ReadonlyMap<ZoneCode, ZoneCount> => {
  const runsOf = new Map<ZoneCode, Map<RecordId, number>>();
  for (const { tester, complaints } of answers) {
    const touched = new Set(complaints.filter((c) => c.foot === foot).map((c) => c.zone));
    for (const zone of touched) {
      const testers = runsOf.get(zone) ?? new Map<RecordId, number>();
      testers.set(tester, (testers.get(tester) ?? 0) + 1);
      runsOf.set(zone, testers);
    }
  }
  return new Map(
    [...runsOf].map(([zone, testers]) => {
      const counts = [...testers.values()];
      return [
        zone,
        {
          zone,
          runs: counts.reduce((a, b) => a + b, 0),
          testers: counts.length,
          testersTwice: counts.filter((count) => count >= 2).length,
        },
      ];
    }),
  );
};

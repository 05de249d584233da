/**
 * Who was asked, and who reported what where?
 *
 * A run counts as asked only if the feet question was answered, with complaints or with "nothing
 * bothered me". Zero complaints and nobody asked are different things and stay different here.
 */
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';
import type { Complaint, Foot, RecordId } from '../records/index.ts';

/** One run's answer to the feet question, as the counts need it. */
export interface FeetAnswer {
  readonly run: RecordId;
  readonly tester: RecordId;
  /** Empty: "nothing bothered me". */
  readonly complaints: readonly Complaint[];
}

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

interface Tally {
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind;
  readonly runs: Map<RecordId, { tester: RecordId; feet: Set<Foot>; severity: number | null }>;
}

/** Counts the answers of one set of runs. The order of the answers never changes the counts. */
export const countComplaints = (answers: readonly FeetAnswer[]): ComplaintCounts => {
  const askedOf = new Map<RecordId, number>();
  const tallies = new Map<string, Tally>();
  for (const { run, tester, complaints } of answers) {
    askedOf.set(tester, (askedOf.get(tester) ?? 0) + 1);
    for (const { zone, kind, foot, severity } of complaints) {
      const key = `${zone} ${kind}`;
      let tally = tallies.get(key);
      if (!tally) tallies.set(key, (tally = { zone, kind, runs: new Map() }));
      const entry = tally.runs.get(run) ?? { tester, feet: new Set<Foot>(), severity: null };
      entry.feet.add(foot);
      if (severity !== undefined) entry.severity = Math.max(entry.severity ?? 0, severity);
      tally.runs.set(run, entry);
    }
  }
  const cells = [...tallies.values()].map((tally) => cellOf(tally, askedOf));
  return {
    asked: { runs: answers.length, testers: askedOf.size },
    cells: cells.sort(byWeight),
  };
};

const cellOf = ({ zone, kind, runs }: Tally, askedOf: ReadonlyMap<RecordId, number>) => {
  const reported = new Map<RecordId, number>();
  const byFoot = { left: 0, right: 0 };
  const severities: number[] = [];
  for (const { tester, feet, severity } of runs.values()) {
    reported.set(tester, (reported.get(tester) ?? 0) + 1);
    for (const foot of feet) byFoot[foot]++;
    if (severity !== null) severities.push(severity);
  }
  const counts = [...reported.values()];
  return {
    zone,
    kind,
    runs: runs.size,
    testersOnce: counts.length,
    testersTwice: counts.filter((count) => count >= 2).length,
    byFoot,
    severity:
      severities.length === 0
        ? null
        : {
            mean: severities.reduce((a, b) => a + b, 0) / severities.length,
            most: Math.max(...severities),
            runs: severities.length,
          },
    byTester: [...reported]
      .map(([tester, count]) => ({
        tester,
        asked: askedOf.get(tester) as number,
        reported: count,
      }))
      .sort((a, b) => b.reported - a.reported || (a.tester < b.tester ? -1 : 1)),
    runIds: [...runs.keys()].sort(),
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

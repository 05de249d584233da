/**
 * What did the changes between two rounds do? Puts complaints, comfort and first bench checks of both
 * together, for those who wore both rounds and apart for those who wore one.
 *
 * A tester who knows what was changed answers to that as well: the same shoes under a better description
 * gained 14.6 ± 15.0 of 100 points of comfort (24 runners; Hébert-Losier K et al., Footwear Sci
 * 2025;17:79-88), and in 15 runners comfort rose with d = 0.70 (Chan ZYS et al., Transl Sports Med
 * 2020;3:256-262). So each comparison names who knew, and can be read with blind hand-outs alone.
 */
import {
  allowedRateOf,
  comfortChanges,
  twoSidedChanges,
  type ComfortChange,
  type TwoSidedChange,
} from '../complaints/index.ts';
import { isWithin, mileageAt, type LoggedRun } from '../mileage/index.ts';
import type { Change, RecordId } from '../records/index.ts';
import {
  benchChanges,
  compareCell,
  compareCells,
  orderAnswers,
  reportsOf,
  type AnsweredRun,
  type BenchChange,
  type CellComparison,
  type CellRise,
  type Felt,
  type FirstReading,
  type RoundAnswers,
} from '../rounds/index.ts';
import { changeArrivals, type ChangeArrival } from './change-arrivals.ts';
import { isProven } from './closer-look.ts';
import { NEW_UP_TO_M } from './check-distance.ts';
import { ownRecords, type LoggedPair, type ProjectLog } from './project-log.ts';
import type { RoundReview } from './review-types.ts';
import { allComfortAnswers, type ComfortAnswers } from './round-review.ts';

/** Which runs are read: all, or those of hand-outs in which the tester did not know what was changed. */
export type Hands = 'all' | 'blind-only';

/** One entry of the rounds' lists of changes, and what it did. */
export interface ComparedChange extends Pick<Change, 'part' | 'what'> {
  /** The round that brought it. */
  readonly round: RecordId;
  /** What it was meant to mend; null where the list names nothing. */
  readonly mends: Felt | null;
  /** Null where there is nothing to mend. */
  readonly found: CellComparison | null;
  /** Whether it is in the shoe; null: it is said in words alone. */
  readonly arrival: ChangeArrival | null;
}

export interface RoundComparison {
  readonly earlier: RecordId;
  readonly later: RecordId;
  readonly hands: Hands;
  /** Testers by what they wore, of those with a run. */
  readonly testers: {
    readonly both: number;
    readonly onlyEarlier: number;
    readonly onlyLater: number;
  };
  /** Of those who wore both, how many began with each; both could be worn from one day on. */
  readonly beganWith: { readonly earlier: number; readonly later: number };
  /** Testers with a run, in one of the rounds, in a hand-out in which they knew what was changed. */
  readonly knew: { readonly earlier: readonly RecordId[]; readonly later: readonly RecordId[] };
  /** Changes of every round after the earlier one, up to the later one. */
  readonly changes: readonly ComparedChange[];
  /** Every zone and kind that either round reported; new complaints first. */
  readonly cells: readonly CellRise[];
  /** Wear scores, the same testers in both rounds, and those who wore only one. */
  readonly comfort: {
    readonly same: readonly ComfortChange[];
    readonly onlyOne: readonly ComfortChange[];
  };
  /** Closer to just right or further from it, by those who answered the two-sided questions in both. */
  readonly twoSided: readonly TwoSidedChange[];
  readonly bench: readonly BenchChange[];
  /** Pairs that were measured first when they were no longer new, and are left out. */
  readonly measuredLate: number;
}

interface Side {
  readonly pairs: readonly LoggedPair[];
  readonly answers: RoundAnswers;
  readonly comfort: ComfortAnswers;
  readonly testers: ReadonlySet<RecordId>;
  /** When each tester first wore it. */
  readonly firstMs: ReadonlyMap<RecordId, number>;
  readonly knew: readonly RecordId[];
}

/** The hand-outs of the project in which the tester did not, or did, know what was changed. */
const handOutsOf = ({ id, records }: ProjectLog) => {
  const all = ownRecords(records['hand-out'], id);
  const ids = (blind: boolean) =>
    new Set(all.flatMap(({ body, revision }) => (body.blind === blind ? [revision.id] : [])));
  return { blind: ids(true), open: ids(false) };
};

const answeredRuns = (runs: readonly LoggedRun[]): AnsweredRun[] =>
  runs.flatMap(({ id, tester, startMs, run: { feet } }) =>
    feet
      ? [
          {
            run: id,
            tester,
            startMs,
            complaints: feet.answer === 'complaints' ? feet.complaints : [],
          },
        ]
      : [],
  );

const sideOf = (log: ProjectLog, round: RecordId, hands: Hands): Side => {
  const { blind, open } = handOutsOf(log);
  const isOf = ({ spans }: LoggedPair, run: LoggedRun, which: ReadonlySet<RecordId>) =>
    spans.some(
      (span) => which.has(span.id) && span.tester === run.tester && isWithin(span, run.startMs),
    );
  const all = log.pairs.filter((pair) => pair.round === round);
  const pairs =
    hands === 'all'
      ? all
      : all.map((pair) => ({ ...pair, runs: pair.runs.filter((run) => isOf(pair, run, blind)) }));
  const runs = pairs.flatMap((pair) => pair.runs);
  const knew = all.flatMap((pair) =>
    pair.runs.filter((run) => isOf(pair, run, open)).map(({ tester }) => tester),
  );
  return {
    pairs,
    answers: orderAnswers(answeredRuns(runs)),
    comfort: allComfortAnswers(pairs),
    testers: new Set(runs.map(({ tester }) => tester)),
    firstMs: firstStarts(runs),
    knew: [...new Set(knew)].sort(),
  };
};

const firstStarts = (runs: readonly LoggedRun[]): ReadonlyMap<RecordId, number> => {
  const first = new Map<RecordId, number>();
  for (const { tester, startMs } of runs)
    first.set(tester, Math.min(first.get(tester) ?? Infinity, startMs));
  return first;
};

/** Who of those that wore both began with the earlier round, and who with the later one. */
const beganWithOf = (before: Side, after: Side): RoundComparison['beganWith'] => {
  const pairs = [...before.firstMs].flatMap(([tester, startMs]) => {
    const then = after.firstMs.get(tester);
    return then === undefined ? [] : [then - startMs];
  });
  return {
    earlier: pairs.filter((by) => by >= 0).length,
    later: pairs.filter((by) => by < 0).length,
  };
};

/** The readings of each pair's first bench check, and how many pairs were not new any more at it. */
const firstReadings = (pairs: readonly LoggedPair[]) => {
  let late = 0;
  const readings = pairs.flatMap(({ id, checks, curve }): FirstReading[] => {
    const [first] = checks;
    if (!first) return [];
    if ((first.body.distanceM ?? mileageAt(curve, Date.parse(first.body.at))) > NEW_UP_TO_M) {
      late++;
      return [];
    }
    return first.body.readings.map(({ measure, site, unit, value }) => ({
      pair: id,
      measure,
      site,
      unit,
      value,
    }));
  });
  return { readings, late };
};

const compareFelt = (log: ProjectLog, earlier: Side, later: Side, felt: Felt): CellComparison =>
  compareCell(
    {
      earlier: { answers: earlier.answers, reports: reportsOf(earlier.answers, felt) },
      later: { answers: later.answers, reports: reportsOf(later.answers, felt) },
    },
    allowedRateOf(felt.kind, log.project.brief.allowedRate),
  );

/**
 * Compares one complaint between any two rounds of a project.
 * @param felt a kind of complaint in one zone, or anywhere
 */
export const compareComplaint = (
  log: ProjectLog,
  earlier: RecordId,
  later: RecordId,
  felt: Felt,
  hands: Hands = 'all',
): CellComparison => compareFelt(log, sideOf(log, earlier, hands), sideOf(log, later, hands), felt);

/** Compares a round with another one of the project, the earlier first. */
export const compareRounds = (
  log: ProjectLog,
  earlier: Pick<RoundReview, 'id' | 'order' | 'complaints'>,
  later: Pick<RoundReview, 'id' | 'order' | 'complaints'>,
  hands: Hands = 'all',
): RoundComparison => {
  const [before, after] = [sideOf(log, earlier.id, hands), sideOf(log, later.id, hands)];
  const isBoth = (tester: RecordId) => before.testers.has(tester) && after.testers.has(tester);
  const both = [...before.testers].filter(isBoth).length;
  const provenIn = ({ complaints }: Pick<RoundReview, 'complaints'>) =>
    new Set(complaints.cells.filter(isProven).map(({ zone, kind }) => `${zone} ${kind}`));
  const [provenBefore, provenAfter] = [provenIn(earlier), provenIn(later)];
  const comfortOf = (same: boolean) =>
    comfortChanges(
      before.comfort.scores.filter(({ tester }) => isBoth(tester) === same),
      after.comfort.scores.filter(({ tester }) => isBoth(tester) === same),
    );
  const [first, second] = [firstReadings(before.pairs), firstReadings(after.pairs)];
  return {
    earlier: earlier.id,
    later: later.id,
    hands,
    testers: {
      both,
      onlyEarlier: before.testers.size - both,
      onlyLater: after.testers.size - both,
    },
    beganWith: beganWithOf(before, after),
    knew: { earlier: before.knew, later: after.knew },
    changes: log.rounds
      .filter(({ body }) => body.order > earlier.order && body.order <= later.order)
      .flatMap(({ body, revision }) => {
        const arrivals = changeArrivals(log, revision.id);
        return body.changes.map(({ part, what, mends }, at): ComparedChange => {
          const felt = mends ? { kind: mends.kind, zone: mends.zone ?? null } : null;
          return {
            round: revision.id,
            part,
            what,
            mends: felt,
            found: felt && compareFelt(log, before, after, felt),
            arrival: arrivals[at] ?? null,
          };
        });
      }),
    cells: compareCells(before.answers, after.answers, (zone, kind) => ({
      earlier: provenBefore.has(`${zone} ${kind}`),
      later: provenAfter.has(`${zone} ${kind}`),
    })),
    comfort: { same: comfortOf(true), onlyOne: comfortOf(false) },
    twoSided: twoSidedChanges(before.comfort.marks, after.comfort.marks),
    bench: benchChanges(first.readings, second.readings),
    measuredLate: first.late + second.late,
  };
};

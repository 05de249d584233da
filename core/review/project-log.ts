/** What of the log belongs to one project, checked and sorted once for every question that is asked of it? */
import {
  checkRuns,
  handOutSpan,
  loggedRun,
  mileageCurve,
  type HandOutSpan,
  type LoggedRun,
  type MileageCurve,
  type RunOddity,
} from '../mileage/index.ts';
import {
  isStanding,
  type Project,
  type RecordId,
  type RecordOf,
  type Records,
} from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';
import { metres } from '../units/index.ts';
import { deviationsOf, sidesOf } from './deviations.ts';
import { reviewGauges, type GaugeReview } from './gauges.ts';
import type { Deviation, SideDifference } from './review-types.ts';
import { toleranceOf, type PairTolerance } from './tolerance.ts';

/** A pair with everything that was logged of it. */
export interface LoggedPair {
  readonly id: RecordId;
  readonly round: RecordId;
  readonly record: RecordOf<'pair'>;
  /** Counted runs by start, then id. */
  readonly runs: readonly LoggedRun[];
  readonly spans: readonly HandOutSpan[];
  /** Bench checks, earliest first. */
  readonly checks: readonly RecordOf<'bench-check'>[];
  readonly curve: MileageCurve;
  /** The readings on arrival against the blueprint, and left against right. */
  readonly deviations: readonly Deviation[];
  readonly sides: readonly SideDifference[];
  readonly tolerance: PairTolerance;
}

export interface ProjectLog {
  readonly id: RecordId;
  readonly project: Project;
  /** When the question is asked, milliseconds since 1970. */
  readonly nowMs: number;
  /** By order. */
  readonly rounds: readonly RecordOf<'round'>[];
  readonly pairs: readonly LoggedPair[];
  readonly counted: readonly LoggedRun[];
  readonly oddities: readonly RunOddity[];
  readonly spans: readonly HandOutSpan[];
  /** End of each tester's last run so far, of those as well that count in no figure or are of pairs left out. */
  readonly heardMs: ReadonlyMap<RecordId, number>;
  readonly gauges: readonly GaugeReview[];
  /** The pairs that were left out because they are out of tolerance; null: none was to be left out. */
  readonly without: readonly RecordOf<'pair'>[] | null;
  /** All records, for the kinds that belong to no project or need no checking. */
  readonly records: Records;
}

/** The records that belong to a project. */
export const ownRecords = <T extends { body: { project?: unknown } }>(
  list: readonly T[],
  project: RecordId,
): T[] => list.filter(({ body }) => body.project === project);

/** Pairs under a stop-use notice that stands. */
export const withdrawnPairs = ({
  id,
  records,
  nowMs,
}: Pick<ProjectLog, 'id' | 'records' | 'nowMs'>): ReadonlySet<RecordId> =>
  new Set(
    ownRecords(records['stop-use'], id)
      .filter(({ body }) => isStanding(body, nowMs))
      .flatMap(({ body }) => body.pairs),
  );

/** A run that lies in the future says nothing of when its tester was last heard. */
const lastHeard = (runs: readonly LoggedRun[], nowMs: number): ReadonlyMap<RecordId, number> => {
  const heard = new Map<RecordId, number>();
  for (const { tester, startMs, endMs } of runs)
    if (startMs <= nowMs) heard.set(tester, Math.max(heard.get(tester) ?? -Infinity, endMs));
  return heard;
};

/**
 * Opens the log of one project.
 * @param nowMs when the question is asked, milliseconds since 1970
 * @returns null where the project is not in the records
 */
export const openProject = (
  records: Records,
  projectId: RecordId,
  nowMs: number,
): ProjectLog | null => {
  const project = records.project.find(({ revision }) => revision.id === projectId);
  if (!project) return null;
  const rounds = ownRecords(records.round, projectId).sort((a, b) => a.body.order - b.body.order);
  const pairs = ownRecords(records.pair, projectId);
  const spans = ownRecords(records['hand-out'], projectId).map(handOutSpan);
  const logged = ownRecords(records.run, projectId).map(loggedRun);
  const { counted, oddities } = checkRuns(logged, {
    pairs: new Set(pairs.map(({ revision }) => revision.id)),
    handOuts: spans,
    nowMs,
  });
  const runsOf = groupBy(counted, ({ pair }) => pair);
  const spansOf = groupBy(spans, ({ pair }) => pair);
  const checksOf = groupBy(ownRecords(records['bench-check'], projectId), ({ body }) => body.pair);
  const blueprints = new Map(rounds.map(({ body, revision }) => [revision.id, body.blueprint]));
  const gauges = reviewGauges(ownRecords(records['gauge-study'], projectId));
  return {
    id: projectId,
    project: project.body,
    nowMs,
    rounds,
    pairs: pairs.map((record) => {
      const { body, revision } = record;
      const runs = runsOf.get(revision.id) ?? [];
      const checks = (checksOf.get(revision.id) ?? []).sort(
        (a, b) => Date.parse(a.body.at) - Date.parse(b.body.at),
      );
      const curve = mileageCurve(runs, body.carriedInM ?? metres(0));
      const deviations = deviationsOf(
        revision.id,
        body.round,
        { checks, curve },
        blueprints.get(body.round) ?? [],
        gauges,
      );
      const sides = sidesOf(deviations);
      return {
        id: revision.id,
        round: body.round,
        record,
        runs,
        spans: spansOf.get(revision.id) ?? [],
        checks,
        curve,
        deviations,
        sides,
        tolerance: toleranceOf(deviations, sides),
      };
    }),
    counted,
    oddities,
    spans,
    heardMs: lastHeard(logged, nowMs),
    gauges,
    without: null,
    records,
  };
};

/** What of the log belongs to one project, checked and sorted once for every question that is asked of it? */
import {
  handOutSpan,
  mileageCurve,
  type HandOutSpan,
  type LoggedRun,
  type MileageCurve,
  type RunOddity,
  loggedRun,
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
import { standingOf, type Standing } from './standing/standing.ts';
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
  /** All that was logged, whether or not it counts: pain is told of every run. */
  readonly everyRun: readonly RecordOf<'run'>[];
  /** All that was measured, whether or not it counts. */
  readonly everyCheck: readonly RecordOf<'bench-check'>[];
  /** What waits for the lead, and what the lead decided. */
  readonly standing: Standing;
  readonly spans: readonly HandOutSpan[];
  /** End of each tester's last run so far, of those as well that count in no figure or are of pairs left out. */
  readonly heardMs: ReadonlyMap<RecordId, number>;
  readonly gauges: readonly GaugeReview[];
  /** The pairs that were left out because they are out of tolerance; null: none was to be left out. */
  readonly without: readonly RecordOf<'pair'>[] | null;
  /**
   * All records, for the kinds that belong to no project or need no checking; of this project's runs and checks those
   * that count.
   */
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
 * Opens the log of one project. What waits for the lead or was set aside is in nothing that is opened but `standing`.
 * @param nowMs when the question is asked, milliseconds since 1970
 * @returns null where the project is not in the records
 */
export const openProject = (
  all: Records,
  projectId: RecordId,
  nowMs: number,
): ProjectLog | null => {
  const project = all.project.find(({ revision }) => revision.id === projectId);
  if (!project) return null;
  const rounds = ownRecords(all.round, projectId).sort((a, b) => a.body.order - b.body.order);
  const pairs = ownRecords(all.pair, projectId);
  const spans = ownRecords(all['hand-out'], projectId).map(handOutSpan);
  const logged = ownRecords(all.run, projectId);
  const everyCheck = ownRecords(all['bench-check'], projectId);
  const { runs, checks, waiting, decided } = standingOf({
    runs: logged,
    checks: everyCheck,
    decisions: ownRecords(all.decision, projectId),
    pairs,
    rounds,
    spans,
    nowMs,
  });
  const { counted, oddities } = runs;
  const records: Records = {
    ...all,
    run: all.run.filter(({ revision }) => !runs.out.has(revision.id)),
    'bench-check': [
      ...all['bench-check'].filter(({ body }) => body.project !== projectId),
      ...checks,
    ],
  };
  const runsOf = groupBy(counted, ({ pair }) => pair);
  const spansOf = groupBy(spans, ({ pair }) => pair);
  const checksOf = groupBy(checks, ({ body }) => body.pair);
  const blueprints = new Map(rounds.map(({ body, revision }) => [revision.id, body.blueprint]));
  const gauges = reviewGauges(ownRecords(records['gauge-study'], projectId));
  return {
    id: projectId,
    project: project.body,
    nowMs,
    rounds,
    pairs: pairs.map((record) => {
      const { body, revision } = record;
      const own = runsOf.get(revision.id) ?? [];
      const measured = (checksOf.get(revision.id) ?? []).sort(
        (a, b) => Date.parse(a.body.at) - Date.parse(b.body.at),
      );
      const curve = mileageCurve(own, body.carriedInM ?? metres(0));
      const deviations = deviationsOf(
        revision.id,
        body.round,
        { checks: measured, curve },
        blueprints.get(body.round) ?? [],
        gauges,
      );
      const sides = sidesOf(deviations);
      return {
        id: revision.id,
        round: body.round,
        record,
        runs: own,
        spans: spansOf.get(revision.id) ?? [],
        checks: measured,
        curve,
        deviations,
        sides,
        tolerance: toleranceOf(deviations, sides),
      };
    }),
    counted,
    oddities,
    everyRun: logged,
    everyCheck,
    standing: { waiting, decided },
    spans,
    heardMs: lastHeard(logged.map(loggedRun), nowMs),
    gauges,
    without: null,
    records,
  };
};

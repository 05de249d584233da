/**
 * What does the desk ask of the log? Everything that takes longer the more runs there are, so that it can
 * be answered beside the screen, in a worker. Answers are plain values; long lists come one at a time.
 */
import { countZones, type ZoneCount } from '../../../core/complaints/index.ts';
import type { ComplaintKind, ZoneCode } from '../../../core/foot/index.ts';
import {
  viewOfHeads,
  type Complaint,
  type Foot,
  type RecordId,
  type Records,
  type Revision,
  type Run,
} from '../../../core/records/index.ts';
import {
  feetAnswers,
  feltCushioning,
  findingsOf,
  lookAtWear,
  lookCloser,
  openProject,
  recurring,
  reportRound,
  reviewProject,
  summarise,
  verdictOf,
  wearPlaces,
  type CloserLook,
  type Dose,
  type Felt,
  type PairReview,
  type ProjectLog,
  type Review,
  type ReviewSummary,
  type RoundReport,
  type Verdict,
  type WearLook,
  type WearPlace,
  type WearPlaceSize,
} from '../../../core/review/index.ts';
import { csvOf, jsonOf, tablesOf } from '../../report/tables.ts';

/** Every readable record but the runs, which are many and asked for in other ways. */
export type DeskRecords = Omit<Records, 'run' | 'leftOut'>;

/** A run with the complaints of it that were asked for. */
export interface RunBehind extends Pick<Run, 'tester' | 'pair' | 'startedAt' | 'distanceM'> {
  readonly id: RecordId;
  readonly complaints: readonly Complaint[];
}

export type PairCourse = Pick<PairReview, 'id' | 'course'>;

/** What of a round to look at; of any kind where that is null. */
export interface Wanted {
  readonly round: RecordId;
  readonly foot: Foot;
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind | null;
}

export interface DeskWork {
  /** Reads the log anew; every other answer is of the log as it was read last. */
  read(): Promise<DeskRecords>;
  /** Null where the project is not in the records. */
  review(project: RecordId): ReviewSummary | null;
  /** What was on the pairs of a round that went farthest, thinned to what a chart can show. */
  courses(
    project: RecordId,
    round: RecordId,
    most: number,
  ): { readonly pairs: readonly PairCourse[]; readonly worn: number };
  /** Kinds and sites of bench readings that can be looked at. */
  wearPlaces(project: RecordId): readonly WearPlaceSize[];
  /** Of one pair, or of a new one where it is null; null where there are no such readings. */
  wear(project: RecordId, place: WearPlace, dose: Dose, pair: RecordId | null): WearLook | null;
  felt(project: RecordId, round: RecordId): readonly Felt[];
  /** One for each round, in their order. */
  verdicts(project: RecordId): readonly Verdict[];
  /** Reports by zone of each foot, of one kind or of all. */
  zones(
    project: RecordId,
    round: RecordId,
    kind: ComplaintKind | null,
  ): Readonly<Record<Foot, readonly ZoneCount[]>>;
  /** The latest runs that reported it, at most so many, and how many there are. */
  runsBehind(
    project: RecordId,
    wanted: Wanted,
    most: number,
  ): { readonly runs: readonly RunBehind[]; readonly all: number };
  /** What stands in the report of a round; null where there is no such round. */
  report(project: RecordId, round: RecordId): RoundReport | null;
  /** The figures of the whole project as files: tables by their name, and JSON. */
  figures(project: RecordId): {
    readonly tables: Readonly<Record<string, string>>;
    readonly json: string;
  };
  /** When, where and with whom the recurring complaints of a round come. */
  closerLooks(project: RecordId, round: RecordId): readonly CloserLook[];
}

/** More points than this on a line are not seen as points. */
const MOST_POINTS = 60;

/** At most so many of the list, evenly, the first and the last among them. */
const thinned = <T>(list: readonly T[], most: number): readonly T[] =>
  list.length <= most
    ? list
    : Array.from(
        { length: most },
        (_, at) => list[Math.round((at * (list.length - 1)) / (most - 1))] as T,
      );

/**
 * @param readHeads the current revision of each record
 * @param now milliseconds since 1970
 */
export const deskWork = (
  readHeads: () => Promise<readonly Revision[]>,
  now: () => number,
): DeskWork => {
  let records: Records | null = null;
  const opened = new Map<RecordId, { log: ProjectLog; review: Review }>();

  const find = (project: RecordId) => {
    const known = opened.get(project);
    if (known) return known;
    const log = records && openProject(records, project, now());
    if (!log) return null;
    const one = { log, review: reviewProject(log) };
    opened.set(project, one);
    return one;
  };
  const get = (project: RecordId) => {
    const one = find(project);
    if (!one) throw new Error('the project is not in the log');
    return one;
  };
  const runsOf = (project: RecordId, round: RecordId) =>
    get(project).log.pairs.flatMap((pair) => (pair.round === round ? pair.runs : []));

  return {
    async read() {
      records = viewOfHeads(await readHeads());
      opened.clear();
      const { run: _run, leftOut: _leftOut, ...rest } = records;
      return rest;
    },
    review(project) {
      const one = find(project);
      return one && summarise(one.review);
    },
    courses(project, round, most) {
      const worn = get(project)
        .review.pairs.filter((pair) => pair.round === round && pair.course.length > 0)
        .sort((a, b) => b.totalM - a.totalM);
      const pairs = worn
        .slice(0, most)
        .map(({ id, course }) => ({ id, course: thinned(course, MOST_POINTS) }));
      return { worn: worn.length, pairs };
    },
    wearPlaces: (project) => wearPlaces(get(project).log),
    wear: (project, place, dose, pair) => lookAtWear(get(project).log, place, dose, pair),
    felt: (project, round) => feltCushioning(get(project).log, round),
    verdicts(project) {
      const { log, review } = get(project);
      return review.rounds.map((round) => verdictOf(log, round));
    },
    zones(project, round, kind) {
      const answers = feetAnswers(runsOf(project, round), kind);
      return {
        left: [...countZones(answers, 'left').values()],
        right: [...countZones(answers, 'right').values()],
      };
    },
    runsBehind(project, { round, foot, zone, kind }, most) {
      const behind = runsOf(project, round).flatMap(({ id, startMs, run }) => {
        if (run.feet?.answer !== 'complaints') return [];
        const complaints = run.feet.complaints.filter(
          (one) => one.foot === foot && one.zone === zone && (kind === null || one.kind === kind),
        );
        return complaints.length > 0 ? [{ id, startMs, run, complaints }] : [];
      });
      return {
        all: behind.length,
        runs: behind
          .sort((a, b) => b.startMs - a.startMs)
          .slice(0, most)
          .map(({ id, complaints, run: { tester, pair, startedAt, distanceM } }) => ({
            id,
            tester,
            pair,
            startedAt,
            distanceM,
            complaints,
          })),
      };
    },
    report(project, round) {
      const { log, review } = get(project);
      return reportRound(log, review, round);
    },
    figures(project) {
      const { log, review } = get(project);
      const reports = review.rounds.flatMap(({ id }) => reportRound(log, review, id) ?? []);
      const written = { review, reports, findings: findingsOf(log) };
      return {
        tables: Object.fromEntries(tablesOf(written).map((table) => [table.name, csvOf(table)])),
        json: jsonOf(written),
      };
    },
    closerLooks(project, round) {
      const { log, review } = get(project);
      const reviewed = review.rounds.find(({ id }) => id === round);
      return reviewed ? lookCloser(log, round, recurring(reviewed)) : [];
    },
  };
};

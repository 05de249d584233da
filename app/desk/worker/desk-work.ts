/**
 * What does the desk ask of the log? Everything that takes longer the more runs there are, so that it can
 * be answered beside the screen, in a worker. Answers are plain values; long lists come one at a time.
 */
import { countZones, type ZoneCount } from '../../../core/complaints/index.ts';
import type { ComplaintKind } from '../../../core/foot/index.ts';
import { drawPlan, type PlanAnswer, type PlanQuestion } from '../../../core/panel/index.ts';
import type { LayersAndHeat } from '../../../core/rounds/index.ts';
import {
  viewOfHeads,
  type Foot,
  type LeftOut,
  type RecordId,
  type Records,
  type Revision,
} from '../../../core/records/index.ts';
import {
  checkPanel,
  feetAnswers,
  feltCushioning,
  lookAtFeet,
  lookAtLayers,
  findingsOf,
  lookAtWear,
  openProject,
  overviewOf,
  proposeOutcome,
  reportRound,
  reportRounds,
  startOf,
  summarise,
  wearPlaces,
  withoutPairsOutOfTolerance,
  type Dose,
  type FeetLook,
  type Felt,
  type Overview,
  type PairReview,
  type PanelCheck,
  type ProjectLog,
  type ProposedOutcome,
  type ReviewSummary,
  type RoundInfluence,
  type RoundReport,
  type Start,
  type Verdict,
  type WearLook,
  type WearPlace,
  type WearPlaceSize,
} from '../../../core/review/index.ts';
import { roundsOf } from '../changes/round-pair.ts';
import { csvOf } from '../../report/tables/csv.ts';
import { jsonOf, tablesOf, type Table } from '../../report/tables/index.ts';
import { openedOf, type Opened } from './opened.ts';
import { placeAnswers, type PlaceAnswers } from './place-answers.ts';

/** Every readable record but the runs, which are many and asked for in other ways. */
export interface DeskRecords extends Omit<Records, 'run' | 'leftOut'> {
  /** Records that cannot be read because something in them is wrong: the first of them, and how many there are. */
  readonly unread: { readonly first: readonly LeftOut[]; readonly all: number };
}

/** More are not put right one by one. */
const MOST_UNREAD = 50;

export type PairCourse = Pick<PairReview, 'id' | 'course'>;

/** What is answered of one project, of the log as it was read last. */
export interface DeskAnswers extends PlaceAnswers {
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
  /** How the project stands, and what to do next. */
  overview(project: RecordId): Overview;
  /** One for each round, in their order. */
  verdicts(project: RecordId): readonly Verdict[];
  /** Which tester or pair alone decides each verdict; takes longer than the verdicts. */
  influences(project: RecordId): readonly RoundInfluence[];
  /** What came of a finding; null where it names no complaint, or no later round that carries it. */
  proposeOutcome(project: RecordId, finding: RecordId): ProposedOutcome | null;
  /** Reports by zone of each foot, of one kind or of all. */
  zones(
    project: RecordId,
    round: RecordId,
    kind: ComplaintKind | null,
  ): Readonly<Record<Foot, readonly ZoneCount[]>>;
  /** What stands in the report of a round; null where there is no such round. */
  report(project: RecordId, round: RecordId): RoundReport | null;
  /** The figures and the records of the whole project as files: tables as CSV, and JSON. */
  figures(project: RecordId): {
    readonly tables: readonly (Pick<Table, 'name' | 'columns'> & { readonly csv: string })[];
    readonly json: string;
  };
  /** Layers of material against heat and wet; null where none were counted. */
  layers(project: RecordId, round: RecordId): LayersAndHeat | null;
  feet(project: RecordId): FeetLook;
  /** Whether the panel answers steadily, and whom to ask what. */
  panelCheck(project: RecordId): PanelCheck;
  /** Works out what the places will ask, one answer at a time, while nobody asks anything. */
  prepare(project: RecordId): Promise<void>;
}

export interface DeskWork extends DeskAnswers {
  /** Reads the log anew; every answer is of the log as it was read last. */
  read(): Promise<DeskRecords>;
  /** The same answers without the pairs that are out of tolerance. */
  readonly inTolerance: DeskAnswers;
  /** How far a shoe has come to its first run, whichever pairs are read; null: it is there, or there is no such shoe. */
  start(project: RecordId): Start | null;
  /** Takes up to some seconds of work; asks nothing of the log. */
  drawPlan(question: PlanQuestion): PlanAnswer;
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

/** The answers from what `find` opens; it gives null where the project is not in the log. */
const answersFrom = (find: (project: RecordId) => Opened | null): DeskAnswers => {
  const get = (project: RecordId) => {
    const one = find(project);
    if (!one) throw new Error('the project is not in the log');
    return one;
  };
  const runsOf = (project: RecordId, round: RecordId) =>
    get(project).log.pairs.flatMap((pair) => (pair.round === round ? pair.runs : []));

  const answers = placeAnswers(get);
  return {
    ...answers,
    async prepare(project) {
      const opened = find(project);
      const { earlier, later } = roundsOf(opened?.review.rounds ?? [], {});
      for (const ask of [
        answers.shoe,
        answers.testerList,
        answers.comfort,
        answers.wearState,
        answers.verdictState,
        answers.pairList,
        (id: RecordId) => earlier && later && answers.changes(id, earlier.id, later.id, 'all'),
      ]) {
        // A question that came in the meantime is answered first.
        await new Promise((done) => setTimeout(done));
        if (!opened || find(project) !== opened) return;
        try {
          ask(project);
        } catch {
          // The place itself says so, when it asks.
        }
      }
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
    verdicts: (project) => get(project).verdicts(),
    influences: (project) => get(project).influences(),
    overview(project) {
      const { log, review, verdicts } = get(project);
      return overviewOf(log, review, verdicts());
    },
    proposeOutcome(project, finding) {
      const { log } = get(project);
      const one = log.records.finding.find(({ revision }) => revision.id === finding);
      return one ? proposeOutcome(log, one.body, finding) : null;
    },
    zones(project, round, kind) {
      const answers = feetAnswers(runsOf(project, round), kind);
      return {
        left: [...countZones(answers, 'left').values()],
        right: [...countZones(answers, 'right').values()],
      };
    },
    report(project, round) {
      const { log, review } = get(project);
      return reportRound(log, review, round);
    },
    figures(project) {
      const { log, review } = get(project);
      const written = {
        log,
        review,
        reports: reportRounds(log, review),
        findings: findingsOf(log),
        feet: lookAtFeet(log),
        panel: checkPanel(log),
      };
      return {
        tables: tablesOf(written).map((table) => ({
          name: table.name,
          columns: table.columns,
          csv: csvOf(table),
        })),
        json: jsonOf(written),
      };
    },
    layers: (project, round) => lookAtLayers(get(project).log, round),
    feet: (project) => lookAtFeet(get(project).log),
    panelCheck: (project) => checkPanel(get(project).log),
  };
};

/**
 * @param readHeads the current revision of each record
 * @param now milliseconds since 1970
 */
export const deskWork = (
  readHeads: () => Promise<readonly Revision[]>,
  now: () => number,
): DeskWork => {
  let records: Records | null = null;
  const opened = new Map<RecordId, ProjectLog>();
  const open = (project: RecordId): ProjectLog | null => {
    const log = opened.get(project) ?? (records && openProject(records, project, now()));
    if (log) opened.set(project, log);
    return log;
  };
  /** Reviews each project once, of the part of its log that `part` keeps. */
  const reviewed = (part: (log: ProjectLog) => ProjectLog) => {
    const known = new Map<RecordId, Opened>();
    const find = (project: RecordId): Opened | null => {
      const before = known.get(project);
      if (before) return before;
      const whole = open(project);
      if (!whole) return null;
      const log = part(whole);
      const one = openedOf(log);
      known.set(project, one);
      return one;
    };
    return { find, forget: () => known.clear() };
  };
  const all = reviewed((log) => log);
  const inTolerance = reviewed(withoutPairsOutOfTolerance);
  return {
    async read() {
      records = viewOfHeads(await readHeads());
      opened.clear();
      all.forget();
      inTolerance.forget();
      const { run: _run, leftOut, ...rest } = records;
      const unread = leftOut.filter(({ why }) => why === 'unreadable');
      return { ...rest, unread: { first: unread.slice(0, MOST_UNREAD), all: unread.length } };
    },
    ...answersFrom(all.find),
    inTolerance: answersFrom(inTolerance.find),
    start(project) {
      const log = open(project);
      return log && startOf(log);
    },
    drawPlan,
  };
};

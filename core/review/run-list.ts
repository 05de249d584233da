/** The runs of a project as a list that can be sorted, narrowed and searched; a slice of it at a time. */
import type { RecordId, RecordOf, Run, Stamp, Surface } from '../records/index.ts';
import type { Metres, Seconds } from '../units/index.ts';
import type { ProjectLog } from './project-log.ts';
import { runStates, type RunStanding, type RunState } from './run-states.ts';

export interface RunRow {
  readonly run: RecordId;
  /** Of the revision that is listed: what a decision about it names. */
  readonly stamp: Stamp;
  /** Milliseconds since 1970. */
  readonly startMs: number;
  readonly tester: RecordId;
  readonly pair: RecordId;
  /** Null: the pair is not in the log. */
  readonly round: RecordId | null;
  readonly distanceM: Metres;
  /** Null: no time was given. */
  readonly durationS: Seconds | null;
  /** The surface with the largest share; null: not answered. */
  readonly surface: Surface | null;
  /** Overall comfort, 0-100; null: not answered. */
  readonly comfort: number | null;
  /** How many complaints; null: the feet were not asked about. */
  readonly complaints: number | null;
  /** 0-10; null: not answered. */
  readonly pain: number | null;
  /** What the tester wrote, cut short; null: nothing. */
  readonly words: string | null;
  readonly photos: number;
  /** A track was sent. */
  readonly track: boolean;
  readonly state: RunState;
  /** Odd, though it counts. */
  readonly odd: boolean;
  readonly corrected: boolean;
  /** Run although a notice not to run the pair stood. */
  readonly despiteStop: boolean;
}

export const runSorts = [
  'date',
  'tester',
  'pair',
  'distance',
  'pace',
  'comfort',
  'complaints',
  'pain',
] as const;
export type RunSort = (typeof runSorts)[number];

/** `apart`: waits, was set aside, came twice, is odd or was corrected. */
export const runFilters = ['all', 'complaint', 'pain', 'words', 'photos', 'apart'] as const;
export type RunFilter = (typeof runFilters)[number];

export interface RunQuery {
  readonly sort: RunSort;
  readonly descending: boolean;
  readonly only: RunFilter;
  readonly round: RecordId | null;
  readonly tester: RecordId | null;
  readonly pair: RecordId | null;
  /** Looked for in all that the tester wrote and in both codes, whatever its case; empty: not looked for. */
  readonly text: string;
  /** So many rows at most. */
  readonly most: number;
}

export interface RunSlice {
  readonly rows: readonly RunRow[];
  /** How many runs the query finds. */
  readonly found: number;
  /** How many there are. */
  readonly all: number;
}

/** Longer words are read on the page of the run. */
const MOST_WORDS = 160;

interface Line {
  readonly row: RunRow;
  /** Everything that was written, and the codes, in lower case. */
  readonly text: string;
  /** Codes, to sort by. */
  readonly tester: string;
  readonly pair: string;
}

const mainSurface = (shares: Run['surfaces']): Surface | null => {
  let best: Surface | null = null;
  for (const [surface, share] of Object.entries(shares ?? {}))
    if (share > (best ? (shares?.[best] ?? 0) : 0)) best = surface as Surface;
  return best;
};

const complaintsIn = ({ feet }: Run) => (feet?.answer === 'complaints' ? feet.complaints : []);

/** Everything that the tester wrote in a run. */
const wordsIn = (run: Run): readonly string[] =>
  [run.words, ...complaintsIn(run).map(({ words }) => words), run.wornDespiteStop].flatMap(
    (words) => (words ? [words] : []),
  );

const rowOf = (
  { body, revision }: RecordOf<'run'>,
  round: RecordId | null,
  { state, odd }: RunStanding,
): RunRow => {
  const [words] = wordsIn(body);
  return {
    run: revision.id,
    stamp: revision.stamp,
    startMs: Date.parse(body.startedAt),
    tester: body.tester,
    pair: body.pair,
    round,
    distanceM: body.distanceM,
    durationS: body.durationS ?? null,
    surface: mainSurface(body.surfaces),
    comfort: body.comfort?.overall ?? null,
    complaints: body.feet ? complaintsIn(body).length : null,
    pain: body.pain?.score ?? null,
    words: words?.slice(0, MOST_WORDS) ?? null,
    photos:
      (body.photos?.length ?? 0) +
      complaintsIn(body).reduce((sum, { photos }) => sum + (photos?.length ?? 0), 0),
    track: body.track?.attachment !== undefined,
    state,
    odd: odd.length > 0,
    corrected: body.correctedBy !== undefined,
    despiteStop: body.wornDespiteStop !== undefined,
  };
};

const linesOf = (log: ProjectLog): readonly Line[] => {
  const states = runStates(log);
  const pairs = new Map(log.records.pair.map(({ revision, body }) => [revision.id, body]));
  const testers = new Map(log.records.tester.map(({ revision, body }) => [revision.id, body.code]));
  return log.everyRun.map((record) => {
    const { pair, tester } = record.body;
    const codes = { tester: testers.get(tester) ?? '', pair: pairs.get(pair)?.code ?? '' };
    return {
      row: rowOf(record, pairs.get(pair)?.round ?? null, states.of(record.revision.id)),
      text: [...wordsIn(record.body), codes.tester, codes.pair].join('\n').toLowerCase(),
      ...codes,
    };
  });
};

/** Each log is read into lines once; a sort, a filter or a search then only passes over them. */
const known = new WeakMap<ProjectLog, readonly Line[]>();

const keyOf: Readonly<Record<RunSort, (line: Line) => number | string | null>> = {
  date: ({ row }) => row.startMs,
  tester: ({ tester }) => tester,
  pair: ({ pair }) => pair,
  distance: ({ row }) => row.distanceM,
  pace: ({ row }) => (row.durationS === null ? null : row.durationS / row.distanceM),
  comfort: ({ row }) => row.comfort,
  complaints: ({ row }) => row.complaints,
  pain: ({ row }) => row.pain,
};

/** What was not answered comes last in either direction; equals latest first. */
const byKey =
  (sort: RunSort, descending: boolean) =>
  (a: Line, b: Line): number => {
    const [x, y] = [keyOf[sort](a), keyOf[sort](b)];
    const latest = b.row.startMs - a.row.startMs || (a.row.run < b.row.run ? -1 : 1);
    if (x === y) return latest;
    if (x === null) return 1;
    if (y === null) return -1;
    return (x < y ? -1 : 1) * (descending ? -1 : 1);
  };

const isKept: Readonly<Record<RunFilter, (row: RunRow) => boolean>> = {
  all: () => true,
  complaint: ({ complaints }) => (complaints ?? 0) > 0,
  pain: ({ pain }) => (pain ?? 0) > 0,
  words: ({ words }) => words !== null,
  photos: ({ photos, track }) => photos > 0 || track,
  apart: ({ state, odd, corrected }) => state !== 'counts' || odd || corrected,
};

/** The first rows of the runs that the query finds, in its order. */
export const listRuns = (log: ProjectLog, query: RunQuery): RunSlice => {
  const lines = known.get(log) ?? linesOf(log);
  known.set(log, lines);
  const { only, round, tester, pair } = query;
  const text = query.text.trim().toLowerCase();
  const found = lines.filter(
    (line) =>
      isKept[only](line.row) &&
      (round === null || line.row.round === round) &&
      (tester === null || line.row.tester === tester) &&
      (pair === null || line.row.pair === pair) &&
      (text === '' || line.text.includes(text)),
  );
  return {
    rows: found
      .sort(byKey(query.sort, query.descending))
      .slice(0, query.most)
      .map(({ row }) => row),
    found: found.length,
    all: lines.length,
  };
};

/** What does one tester feel, and does anybody else? Their runs beside those of the others in the same rounds. */
import { evidenceWords, type EvidenceWord } from '../complaints/index.ts';
import { twoSidedIds, type ComfortAttributeId, type TwoSidedId } from '../foot/index.ts';
import { mileageBefore, type LoggedRun } from '../mileage/index.ts';
import type { RecordId, Tester } from '../records/index.ts';
import { lastAt } from '../rounds/index.ts';
import { groupBy } from '../statistics/index.ts';
import { metres, type Metres, type Millimetres } from '../units/index.ts';
import { byCode } from './by-code.ts';
import { lookAtFeet, type FeetInPair } from './feet-look.ts';
import { cellOf, feltInRuns, notesOf, type FeltInRuns, type Note } from './felt-in-runs.ts';
import { MOST_OTHERS, ownMeans, type OwnMean } from './own-means.ts';
import type { ProjectLog } from './project-log.ts';
import type { Review } from './review-types.ts';

export interface FeltByTester extends FeltInRuns {
  /** Of the others asked in the same rounds: testers and runs, and those who reported it. */
  readonly others: {
    readonly testers: number;
    readonly askedTesters: number;
    readonly runs: number;
    readonly askedRuns: number;
  };
  /** The strongest that is proved of it in a round that this tester ran in, and of how many testers there. */
  readonly word: EvidenceWord | null;
  readonly reporters: number;
  /** Proved for this tester. */
  readonly isProved: boolean;
}

export interface TesterHand {
  readonly handOut: RecordId;
  readonly pair: RecordId;
  readonly blind: boolean;
  readonly fromMs: number;
  readonly untilMs: number | null;
  readonly runs: number;
  readonly distanceM: Metres;
}

/** Both feet of a tester in the last of one pair, with the last's own size there, mm. */
export interface FeetInLast extends FeetInPair {
  readonly lastLengthMm: Millimetres | null;
  readonly lastWidthMm: Millimetres | null;
}

export interface TesterLook {
  readonly id: RecordId;
  readonly code: string;
  readonly before: RecordId | null;
  readonly after: RecordId | null;
  readonly pairs: readonly RecordId[];
  readonly rounds: readonly RecordId[];
  readonly runs: number;
  readonly distanceM: Metres;
  readonly lastRunMs: number | null;
  readonly silentDays: number | null;
  readonly asked: number;
  readonly complained: number;
  readonly felt: readonly FeltByTester[];
  /** Wear scores by attribute in the brief's order, 0 to 100. */
  readonly comfort: readonly OwnMean<ComfortAttributeId>[];
  /** Marks from too little, −100, to too much, 100, in the order of the questions: never mixed with the scores. */
  readonly marks: readonly OwnMean<TwoSidedId>[];
  /** Share of asked runs with a complaint, of each other tester in the same rounds. */
  readonly othersComplained: readonly { readonly tester: RecordId; readonly share: number }[];
  /** Overall comfort run by run. */
  readonly course: readonly {
    readonly run: RecordId;
    readonly pair: RecordId;
    readonly atMs: number;
    /** On the pair as the run began. */
    readonly pairM: Metres;
    readonly score: number;
    readonly isFirst: boolean;
  }[];
  readonly hands: readonly TesterHand[];
  readonly feet: Pick<Tester, 'footLengthMm' | 'footWidthMm' | 'ballGirthMm'> & {
    readonly inLast: readonly FeetInLast[];
  };
  readonly notes: readonly Note[];
  readonly pains: Review['pains'];
  readonly damages: Review['damages'];
}

const MOST_COURSE = 120;

const isAsked = ({ run }: LoggedRun): boolean => run.feet !== undefined;

/** What is proved of one cell in the rounds that the tester ran in: the strongest. */
const provedOf = (
  review: Review,
  rounds: ReadonlySet<RecordId>,
  tester: RecordId,
  cell: FeltInRuns,
) => {
  const found = review.rounds
    .filter(({ id }) => rounds.has(id))
    .flatMap(({ complaints }) =>
      complaints.cells.filter(({ zone, kind }) => zone === cell.zone && kind === cell.kind),
    )
    .sort((a, b) => evidenceWords.indexOf(a.word) - evidenceWords.indexOf(b.word));
  const [strongest] = found;
  return {
    word: strongest?.word ?? null,
    reporters: strongest?.testersOnce ?? 0,
    isProved: found.some(({ provenTesters }) => provenTesters.some((one) => one.tester === tester)),
  };
};

const handsOf = (log: ProjectLog, tester: RecordId, runs: readonly LoggedRun[]): TesterHand[] => {
  const blind = new Map(
    log.records['hand-out'].map(({ body, revision }) => [revision.id, body.blind]),
  );
  return log.spans
    .filter((span) => span.tester === tester && span.fromMs <= log.nowMs)
    .sort((a, b) => b.fromMs - a.fromMs)
    .map(({ id, pair, fromMs, untilMs }) => {
      const within = runs.filter(
        (run) => run.pair === pair && run.startMs >= fromMs && run.startMs < untilMs,
      );
      return {
        handOut: id,
        pair,
        blind: blind.get(id) ?? true,
        fromMs,
        untilMs: Number.isFinite(untilMs) ? untilMs : null,
        runs: within.length,
        distanceM: metres(within.reduce((sum, { distanceM }) => sum + distanceM, 0)),
      };
    });
};

const feetOf = (log: ProjectLog, tester: RecordId, body: Tester): TesterLook['feet'] => {
  const lasts = new Map(log.rounds.map(({ body: round, revision }) => [revision.id, round.last]));
  const own = lookAtFeet(log).testers.find((one) => one.tester === tester);
  return {
    ...(body.footLengthMm && { footLengthMm: body.footLengthMm }),
    ...(body.footWidthMm && { footWidthMm: body.footWidthMm }),
    ...(body.ballGirthMm && { ballGirthMm: body.ballGirthMm }),
    inLast: (own?.pairs ?? []).map((pair) => {
      const last = lasts.get(pair.round);
      const at = last && lastAt(last, pair.sizeMm);
      return { ...pair, lastLengthMm: at?.lengthMm ?? null, lastWidthMm: at?.widthMm ?? null };
    }),
  };
};

/** @returns null where there is no such tester in the group */
export const lookAtTester = (log: ProjectLog, review: Review, id: RecordId): TesterLook | null => {
  const record = log.records.tester.find(({ revision }) => revision.id === id);
  if (!record) return null;
  const codes = log.records.tester
    .map(({ body, revision }) => ({ id: revision.id, code: body.code }))
    .sort(byCode);
  const at = codes.findIndex((one) => one.id === id);
  const pairs = new Map(log.pairs.map((pair) => [pair.id, pair]));
  const roundOf = (run: LoggedRun) => pairs.get(run.pair)?.round;
  const own = log.counted
    .filter(({ tester }) => tester === id)
    .toSorted((a, b) => a.startMs - b.startMs);
  const rounds = new Set(own.flatMap((run) => roundOf(run) ?? []));
  const others = groupBy(
    log.counted.filter((run) => {
      const round = roundOf(run);
      return run.tester !== id && round !== undefined && rounds.has(round);
    }),
    ({ tester }) => tester,
  );
  const askedOthers = [...others].flatMap(([tester, runs]) => {
    const asked = runs.filter(isAsked);
    return asked.length === 0 ? [] : [{ tester, asked }];
  });
  const othersFelt = askedOthers.map(({ asked }) => ({
    asked: asked.length,
    cells: new Map(feltInRuns(asked).map((cell) => [cellOf(cell), cell.marks.length])),
  }));
  const reviewed = review.testers.find((one) => one.id === id);
  const asked = own.filter(isAsked);
  return {
    id,
    code: record.body.code,
    before: codes[at - 1]?.id ?? null,
    after: codes[at + 1]?.id ?? null,
    pairs: review.pairs
      .filter(({ holder }) => holder === id)
      .sort(byCode)
      .map((pair) => pair.id),
    rounds: review.rounds.filter((round) => rounds.has(round.id)).map((round) => round.id),
    runs: own.length,
    distanceM: reviewed?.distanceM ?? metres(0),
    lastRunMs: reviewed?.lastRunMs ?? null,
    silentDays: reviewed?.silentDays ?? null,
    asked: asked.length,
    complained: asked.filter(({ run }) => run.feet?.answer === 'complaints').length,
    felt: feltInRuns(asked).map((cell) => {
      const key = cellOf(cell);
      const reports = othersFelt.map(({ cells }) => cells.get(key) ?? 0);
      return {
        ...cell,
        others: {
          testers: reports.filter((count) => count > 0).length,
          askedTesters: othersFelt.length,
          runs: reports.reduce((sum, count) => sum + count, 0),
          askedRuns: othersFelt.reduce((sum, one) => sum + one.asked, 0),
        },
        ...provedOf(review, rounds, id, cell),
      };
    }),
    comfort: ownMeans(
      log.project.brief.attributes,
      ({ comfort }, question) => comfort?.[question],
      own,
      others,
    ),
    marks: ownMeans(twoSidedIds, ({ comfort2 }, question) => comfort2?.[question], own, others),
    othersComplained: askedOthers
      .map(({ tester, asked: runs }) => ({
        tester,
        share: runs.filter(({ run }) => run.feet?.answer === 'complaints').length / runs.length,
      }))
      .slice(0, MOST_OTHERS),
    course: own
      .flatMap((run) => {
        const score = run.run.comfort?.overall;
        const pair = pairs.get(run.pair);
        return score === undefined || !pair
          ? []
          : [
              {
                run: run.id,
                pair: run.pair,
                atMs: run.startMs,
                pairM: mileageBefore(pair.curve, run.startMs),
                score,
                isFirst: run.run.firstImpression === true,
              },
            ];
      })
      .slice(-MOST_COURSE),
    hands: handsOf(log, id, own),
    feet: feetOf(log, id, record.body),
    notes: notesOf(own),
    pains: review.pains.filter(({ tester }) => tester === id),
    damages: review.damages.filter(({ tester }) => tester === id),
  };
};

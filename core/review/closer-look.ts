/** When, where and with whom does a complaint come? One project's asked runs, made ready for the questions. */
import {
  associations,
  firstRepeat,
  onsetInRun,
  trendsOverDistance,
  type Association,
  type CellName,
  type EvidenceWord,
  type FirstRepeat,
  type ObservedRun,
  type Onset,
  type TesterTraits,
  type Trend,
} from '../complaints/index.ts';
import { mileageBefore, type LoggedRun } from '../mileage/index.ts';
import { socks, type RecordId, type Run, type Surface } from '../records/index.ts';
import { metres } from '../units/index.ts';
import type { LoggedPair, ProjectLog } from './project-log.ts';
import type { RoundReview } from './review-types.ts';
import { wasOutOfTolerance } from './tolerance.ts';

export interface CloserLook {
  readonly cell: CellName;
  readonly trend: Trend;
  /** Null where no report says from where in the run. */
  readonly onset: Onset | null;
  readonly firstRepeat: FirstRepeat;
  /** Most convincing first. */
  readonly associations: readonly Association[];
}

const soft: readonly Surface[] = ['trail', 'gravel', 'grass', 'sand', 'snow'];

const softShare = ({ surfaces }: Run): number | null =>
  surfaces ? soft.reduce((sum, surface) => sum + (surfaces[surface] ?? 0), 0) : null;

const observed = (
  { id, tester, pair, startMs, run }: LoggedRun,
  round: RecordId,
  pairM: number,
): ObservedRun[] =>
  run.feet
    ? [
        {
          run: id,
          tester,
          pair,
          round,
          startMs,
          pairM: metres(pairM),
          complaints: run.feet.answer === 'complaints' ? run.feet.complaints : [],
          softShare: softShare(run),
          wet: run.ground === undefined ? null : run.ground !== 'dry' && run.ground !== 'damp',
          temperatureC: run.temperatureC ?? null,
          sock: run.sock === undefined ? null : socks.indexOf(run.sock),
        },
      ]
    : [];

/** The asked runs of some pairs, each with the distance on the pair when it began. */
export const observedRuns = (pairs: readonly LoggedPair[]): ObservedRun[] =>
  pairs.flatMap(({ round, runs, curve }) =>
    runs.flatMap((run) => observed(run, round, mileageBefore(curve, run.startMs))),
  );

/** What is known of the testers who wore these pairs; one with several pairs counts by the first of them. */
const traitsOf = (pairs: readonly LoggedPair[], { records }: ProjectLog): TesterTraits[] => {
  const pairsOf = new Map<RecordId, Set<LoggedPair>>();
  for (const pair of pairs)
    for (const { tester } of pair.runs)
      pairsOf.set(tester, (pairsOf.get(tester) ?? new Set()).add(pair));
  return records.tester.flatMap(({ body, revision }): TesterTraits[] => {
    const own = [...(pairsOf.get(revision.id) ?? [])];
    const sizeMm = own[0]?.record.body.sizeMm;
    if (sizeMm === undefined) return [];
    const { footLengthMm: length, footWidthMm: width, footStrike } = body;
    return [
      {
        tester: revision.id,
        sizeMm,
        lengthOverMm: length ? Math.max(length.left, length.right) - sizeMm : null,
        widthMm: width ? Math.max(width.left, width.right) : null,
        forefootStrike: footStrike === undefined ? null : footStrike !== 'rearfoot',
        outOfTolerance: wasOutOfTolerance(own.flatMap(({ deviations }) => deviations)),
      },
    ];
  });
};

/** Whether a cell is proven to recur, for one tester or across testers. */
export const isProven = ({ word }: { readonly word: EvidenceWord }): boolean =>
  word === 'recurs-across-testers' || word === 'recurs-for-one-tester';

/** The cells of a round that are proven to recur, for one tester or across testers: worth a closer look. */
export const recurring = ({ complaints }: Pick<RoundReview, 'complaints'>): CellName[] =>
  complaints.cells.filter(isProven).map(({ zone, kind }) => ({ zone, kind }));

/** Looks closer at some cells of one round; what is asked of all of them together is held together. */
export const lookCloser = (
  log: ProjectLog,
  roundId: RecordId,
  cells: readonly CellName[],
): CloserLook[] => {
  const inRound = log.pairs.filter(({ round }) => round === roundId);
  const runs = observedRuns(inRound);
  const layersOf = new Map(
    log.rounds.flatMap(({ body, revision }) =>
      (body.layers ?? []).map(({ zone, count }) => [`${revision.id} ${zone}`, count] as const),
    ),
  );
  const found = associations(runs, cells, {
    traits: traitsOf(inRound, log),
    // Layers change from round to round only, so that question looks at all rounds.
    allRounds: layersOf.size > 0 ? observedRuns(log.pairs) : [],
    layers: (round, zone) => layersOf.get(`${round} ${zone}`) ?? null,
  });
  const trends = trendsOverDistance(runs, cells);
  return cells.map((cell, at) => ({
    cell,
    trend: trends[at] as Trend,
    onset: onsetInRun(runs, cell),
    firstRepeat: firstRepeat(runs, cell),
    associations: found.filter((one) => one.cell.zone === cell.zone && one.cell.kind === cell.kind),
  }));
};

/** When, where and with whom does a complaint come? One project's asked runs, made ready for the questions. */
import {
  associations,
  firstRepeat,
  onsetInRun,
  trendOverDistance,
  type Association,
  type CellName,
  type FirstRepeat,
  type ObservedRun,
  type Onset,
  type TesterTraits,
  type Trend,
} from '../complaints/index.ts';
import {
  checkRuns,
  handOutSpan,
  loggedRun,
  mileageAt,
  mileageCurve,
  type LoggedRun,
} from '../mileage/index.ts';
import type { RecordId, Records, Run, Surface } from '../records/index.ts';
import { groupBy, holm } from '../statistics/index.ts';
import { metres } from '../units/index.ts';
import { deviationsOf } from './bench.ts';

export interface CloserLook {
  readonly cell: CellName;
  readonly trend: Trend & {
    /** Over the cells of this look, Holm. */
    readonly adjustedP: number;
  };
  /** Null where no report says from where in the run. */
  readonly onset: Onset | null;
  readonly firstRepeat: FirstRepeat;
  /** Most convincing first. */
  readonly associations: readonly Association[];
}

const soft: readonly Surface[] = ['trail', 'gravel', 'grass', 'sand', 'snow'];
const socks = ['none', 'thin', 'medium', 'thick'] as const;

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

/**
 * Looks closer at some cells of one round.
 * @param nowMs when the question is asked, milliseconds since 1970
 */
export const lookCloser = (
  records: Records,
  projectId: RecordId,
  roundId: RecordId,
  cells: readonly CellName[],
  nowMs: number,
): CloserLook[] => {
  const ours = <T extends { body: { project?: unknown } }>(list: readonly T[]): T[] =>
    list.filter(({ body }) => body.project === projectId);
  const pairs = ours(records.pair);
  const spans = ours(records['hand-out']).map(handOutSpan);
  const { counted } = checkRuns(ours(records.run).map(loggedRun), {
    pairs: new Set(pairs.map(({ revision }) => revision.id)),
    handOuts: spans,
    nowMs,
  });
  const runsOfPair = groupBy(counted, ({ pair }) => pair);
  const rounds = ours(records.round);
  const checksOfPair = groupBy(ours(records['bench-check']), ({ body }) => body.pair);

  const worn = pairs.flatMap(({ body, revision }) => {
    const own = runsOfPair.get(revision.id) ?? [];
    const curve = mileageCurve(own, body.carriedInM ?? metres(0));
    const runs = own.flatMap((run) => observed(run, body.round, mileageAt(curve, run.startMs)));
    const checks = (checksOfPair.get(revision.id) ?? []).sort(
      (a, b) => Date.parse(a.body.at) - Date.parse(b.body.at),
    );
    const blueprint = rounds.find((round) => round.revision.id === body.round)?.body.blueprint;
    const deviations = deviationsOf(
      { pair: revision.id, round: body.round, checks, curve },
      blueprint ?? [],
    );
    return [{ pair: revision.id, round: body.round, sizeMm: body.sizeMm, runs, deviations }];
  });
  const inRound = worn.filter(({ round }) => round === roundId);
  const runs = inRound.flatMap((pair) => pair.runs);
  const allRuns = worn.flatMap((pair) => pair.runs);

  const traits = records.tester.flatMap(({ body, revision }): TesterTraits[] => {
    const own = inRound.filter((pair) => pair.runs.some(({ tester }) => tester === revision.id));
    const sizeMm = own[0]?.sizeMm;
    if (sizeMm === undefined) return [];
    const { footLengthMm: length, footWidthMm: width, footStrike } = body;
    const measured = own.flatMap(({ deviations }) => deviations);
    return [
      {
        tester: revision.id,
        sizeMm,
        lengthOverMm: length ? Math.max(length.left, length.right) - sizeMm : null,
        widthMm: width ? Math.max(width.left, width.right) : null,
        forefootStrike: footStrike === undefined ? null : footStrike !== 'rearfoot',
        outOfTolerance: measured.length > 0 ? measured.some(({ inside }) => !inside) : null,
      },
    ];
  });
  const layersOf = new Map(
    rounds.flatMap(({ body, revision }) =>
      (body.layers ?? []).map(({ zone, count }) => [`${revision.id} ${zone}`, count] as const),
    ),
  );
  const layers = (round: RecordId, zone: CellName['zone']) =>
    layersOf.get(`${round} ${zone}`) ?? null;

  const found = [
    ...associations(runs, cells, { traits, layers: () => null }),
    // Layers change from round to round only, so that question looks at all rounds.
    ...associations(allRuns, cells, { traits: [], layers }).filter(
      ({ factor }) => factor === 'layers',
    ),
  ];
  const trends = cells.map((cell) => trendOverDistance(runs, cell));
  const adjusted = holm(trends.map(({ p }) => p));
  return cells.map((cell, at) => ({
    cell,
    trend: { ...(trends[at] as Trend), adjustedP: adjusted[at] as number },
    onset: onsetInRun(runs, cell),
    firstRepeat: firstRepeat(runs, cell),
    associations: found.filter((one) => one.cell.zone === cell.zone && one.cell.kind === cell.kind),
  }));
};

/** What does the log say about one project? Puts the rooms' answers together. */
import {
  comfortByAttribute,
  comfortChanges,
  countZones,
  isCautionDue,
  weighComplaints,
  type AllowedRate,
  type ComfortAnswer,
  type FeetAnswer,
} from '../complaints/index.ts';
import {
  checkRuns,
  handOutSpan,
  isWithin,
  loggedRun,
  mileageAt,
  mileageCurve,
  pairMileage,
  type HandOutSpan,
  type LoggedRun,
  type MileageCurve,
} from '../mileage/index.ts';
import { isStanding, type RecordId, type RecordOf, type Records } from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';
import { metres, type Metres } from '../units/index.ts';
import { benchSeries, deviationsOf } from './bench.ts';
import type {
  EvidenceSize,
  PairReview,
  Review,
  RoundReview,
  TesterReview,
} from './review-types.ts';

const sumM = (runs: readonly LoggedRun[]): Metres =>
  metres(runs.reduce((sum, { distanceM }) => sum + distanceM, 0));

const sizeOf = (pairs: number, runs: readonly LoggedRun[]): EvidenceSize => ({
  pairs,
  testers: new Set(runs.map(({ tester }) => tester)).size,
  runs: runs.length,
  distanceM: sumM(runs),
});

const feetAnswers = (runs: readonly LoggedRun[]): FeetAnswer[] =>
  runs.flatMap(({ id, tester, run: { feet } }) =>
    feet
      ? [{ run: id, tester, complaints: feet.answer === 'complaints' ? feet.complaints : [] }]
      : [],
  );

const comfortAnswers = (
  runs: readonly LoggedRun[],
  curves: ReadonlyMap<RecordId, MileageCurve>,
): ComfortAnswer[] =>
  runs.flatMap(({ tester, pair, startMs, run: { comfort, firstImpression } }) => {
    const curve = curves.get(pair);
    return comfort && curve
      ? [
          {
            tester,
            comfort,
            firstImpression: firstImpression === true,
            pairM: mileageAt(curve, startMs),
          },
        ]
      : [];
  });

/** Names sort as people count: T2 before T10. */
const byCode = (a: { code: string }, b: { code: string }): number =>
  a.code.localeCompare(b.code, 'en', { numeric: true });

/**
 * Reviews one project.
 * @param nowMs when the question is asked, milliseconds since 1970
 * @returns null where the project is not in the records
 */
export const reviewProject = (
  records: Records,
  projectId: RecordId,
  nowMs: number,
): Review | null => {
  const project = records.project.find(({ revision }) => revision.id === projectId);
  if (!project) return null;
  const ours = <T extends { body: { project?: unknown } }>(list: readonly T[]): T[] =>
    list.filter(({ body }) => body.project === projectId);

  const rounds = ours(records.round).sort((a, b) => a.body.order - b.body.order);
  const pairs = ours(records.pair);
  const spans = ours(records['hand-out']).map(handOutSpan);
  const checked = checkRuns(ours(records.run).map(loggedRun), {
    pairs: new Set(pairs.map(({ revision }) => revision.id)),
    handOuts: spans,
    nowMs,
  });
  const runsOfPair = groupBy(checked.counted, ({ pair }) => pair);
  const roundOfPair = new Map(pairs.map(({ body, revision }) => [revision.id, body.round]));
  const orderOfRound = new Map(rounds.map(({ body, revision }) => [revision.id, body.order]));
  const checksOfPair = groupBy(ours(records['bench-check']), ({ body }) => body.pair);
  const blueprints = new Map(rounds.map(({ body, revision }) => [revision.id, body.blueprint]));

  const checkedPairs = pairs.map(({ body, revision }) => ({
    pair: revision.id,
    round: body.round,
    checks: (checksOfPair.get(revision.id) ?? []).sort(
      (a, b) => Date.parse(a.body.at) - Date.parse(b.body.at),
    ),
    curve: mileageCurve(runsOfPair.get(revision.id) ?? [], body.carriedInM ?? metres(0)),
  }));
  const deviations = checkedPairs.flatMap((pair) =>
    deviationsOf(pair, blueprints.get(pair.round) ?? []),
  );
  const outOf = groupBy(
    deviations.filter(({ inside }) => !inside),
    ({ pair }) => pair,
  );

  const curves = new Map(checkedPairs.map(({ pair, curve }) => [pair, curve]));
  const countedByRound = groupBy(checked.counted, ({ pair }) => roundOfPair.get(pair));
  const runsOfRound = ({ revision }: RecordOf<'round'>) => countedByRound.get(revision.id) ?? [];
  const comfortOf = rounds.map((round) => comfortAnswers(runsOfRound(round), curves));

  const pairReviews = pairs
    .map((pair) =>
      reviewPair(pair, {
        runs: runsOfPair.get(pair.revision.id) ?? [],
        spans: spans.filter((span) => span.pair === pair.revision.id),
        stops: ours(records['stop-use']),
        briefM: project.body.brief.distanceM,
        outOfTolerance: outOf.get(pair.revision.id)?.length ?? 0,
        nowMs,
      }),
    )
    .sort(
      (a, b) => (orderOfRound.get(a.round) ?? 0) - (orderOfRound.get(b.round) ?? 0) || byCode(a, b),
    );

  return {
    project: { id: projectId, name: project.body.name, brief: project.body.brief },
    nowMs,
    size: sizeOf(pairs.length, checked.counted),
    rounds: rounds.map((round, at) =>
      reviewRound(round, {
        pairs: pairs.filter(({ body }) => body.round === round.revision.id).length,
        panel: spans
          .filter(({ pair }) => roundOfPair.get(pair) === round.revision.id)
          .map(({ tester }) => tester),
        runs: runsOfRound(round),
        comfort: comfortOf[at] as ComfortAnswer[],
        comfortBefore: comfortOf[at - 1] ?? [],
        allowed: project.body.brief.allowedRate,
      }),
    ),
    pairs: pairReviews,
    testers: reviewTesters(records.tester, spans, checked.counted),
    bench: checkedPairs.flatMap(benchSeries),
    deviations,
    damages: ours(records['damage-report']).map(({ body, revision }) => ({
      id: revision.id,
      pair: body.pair,
      tester: body.tester,
      what: body.what,
      at: body.at,
      words: body.words ?? null,
    })),
    pains: painsOf(checked.counted),
    oddities: checked.oddities,
    leftOut: records.leftOut,
  };
};

const painsOf = (runs: readonly LoggedRun[]): Review['pains'] =>
  runs
    .flatMap(({ id, tester, pair, run: { pain, startedAt } }) =>
      pain && isCautionDue(pain.score, pain.isNew ?? null, pain.signs ?? [])
        ? [{ run: id, tester, pair, at: startedAt, score: pain.score, signs: pain.signs ?? [] }]
        : [],
    )
    .reverse();

interface RoundContext {
  readonly pairs: number;
  /** Testers who hold or held a pair of the round. */
  readonly panel: readonly RecordId[];
  readonly runs: readonly LoggedRun[];
  readonly comfort: readonly ComfortAnswer[];
  readonly comfortBefore: readonly ComfortAnswer[];
  readonly allowed: AllowedRate;
}

const reviewRound = (
  { body, revision }: RecordOf<'round'>,
  { pairs, panel, runs, comfort, comfortBefore, allowed }: RoundContext,
): RoundReview => {
  const answers = feetAnswers(runs);
  const { counts, evidence } = weighComplaints(answers, allowed, panel);
  const zonesOf = (foot: 'left' | 'right') =>
    [...countZones(answers, foot).values()].sort((a, b) => (a.zone < b.zone ? -1 : 1));
  return {
    id: revision.id,
    name: body.name,
    order: body.order,
    stage: body.stage,
    changes: body.changes,
    size: sizeOf(pairs, runs),
    complaints: counts,
    zones: { left: zonesOf('left'), right: zonesOf('right') },
    evidence,
    comfort: comfortByAttribute(comfort),
    comfortChanges: comfortChanges(comfortBefore, comfort),
  };
};

interface PairContext {
  readonly runs: readonly LoggedRun[];
  readonly spans: readonly HandOutSpan[];
  readonly stops: readonly RecordOf<'stop-use'>[];
  readonly briefM: Metres;
  readonly outOfTolerance: number;
  readonly nowMs: number;
}

const reviewPair = ({ body, revision }: RecordOf<'pair'>, context: PairContext): PairReview => {
  const { runs, spans, stops, briefM, outOfTolerance, nowMs } = context;
  const mileage = pairMileage(revision.id, runs, body.carriedInM ?? metres(0), spans);
  const stop = stops.find((s) => s.body.pairs.includes(revision.id) && isStanding(s.body, nowMs));
  const byDistance = (a: { distanceM: number }, b: { distanceM: number }) =>
    b.distanceM - a.distanceM;
  return {
    id: revision.id,
    code: body.code,
    round: body.round,
    sizeMm: body.sizeMm,
    totalM: mileage.totalM,
    carriedInM: mileage.carriedInM,
    runs: mileage.runs,
    shareOfBrief: briefM > 0 ? mileage.totalM / briefM : 0,
    bySurface: mileage.bySurface,
    byTester: [...mileage.byTester]
      .map(([tester, distanceM]) => ({ tester, distanceM }))
      .sort(byDistance),
    byHandOut: [...mileage.byHandOut]
      .map(([handOut, distanceM]) => ({ handOut, distanceM }))
      .sort(byDistance),
    holder: spans.find((span) => isWithin(span, nowMs))?.tester ?? null,
    lastRunMs: mileage.lastRunMs,
    stopUse: stop ? { id: stop.revision.id, reason: stop.body.reason } : null,
    outOfTolerance,
  };
};

const reviewTesters = (
  testers: readonly RecordOf<'tester'>[],
  spans: readonly HandOutSpan[],
  runs: readonly LoggedRun[],
): TesterReview[] => {
  const runsOf = groupBy(runs, ({ tester }) => tester);
  const involved = new Set([...spans.map(({ tester }) => tester), ...runsOf.keys()]);
  return testers
    .filter(({ revision }) => involved.has(revision.id))
    .map(({ body, revision }) => {
      const own = runsOf.get(revision.id) ?? [];
      return {
        id: revision.id,
        code: body.code,
        name: body.name ?? null,
        runs: own.length,
        distanceM: sumM(own),
        lastRunMs: own.at(-1)?.startMs ?? null,
      };
    })
    .sort(byCode);
};

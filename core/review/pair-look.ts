/** What has one pair lived through? Everything on one axis: the distance on the pair. */
import { mileageAt, mileageBefore, type LoggedRun } from '../mileage/index.ts';
import type { DamageReport, RecordId } from '../records/index.ts';
import { metres, type Metres, type Millimetres } from '../units/index.ts';
import { byCode } from './by-code.ts';
import { lookAtFeet, type FeetInPair } from './feet-look.ts';
import { feltInRuns, notesOf, type FeltInRuns, type Note } from './felt-in-runs.ts';
import { benchOf, type PairBench } from './pair-bench.ts';
import { ownRecords, type LoggedPair, type ProjectLog } from './project-log.ts';
import type { Review } from './review-types.ts';

export interface PairRun {
  readonly run: RecordId;
  readonly tester: RecordId;
  readonly atMs: number;
  readonly distanceM: Metres;
  /** On the pair as the run began. */
  readonly pairM: Metres;
  /** Overall comfort, 0 to 100; null: not answered. */
  readonly comfort: number | null;
  readonly isFirst: boolean;
  /** Null: not asked. */
  readonly complaints: number | null;
  readonly pain: number | null;
}

export interface PairHand {
  readonly handOut: RecordId;
  readonly tester: RecordId;
  readonly blind: boolean;
  readonly fromMs: number;
  /** Null: still out. */
  readonly untilMs: number | null;
  readonly fromM: Metres;
  readonly untilM: Metres;
  readonly runs: number;
}

export interface PairLook {
  readonly id: RecordId;
  readonly code: string;
  readonly round: RecordId;
  readonly sizeMm: Millimetres;
  readonly totalM: Metres;
  readonly carriedInM: Metres;
  readonly briefM: Metres;
  readonly holder: RecordId | null;
  /** The pair before and after it by code in the same round. */
  readonly before: RecordId | null;
  readonly after: RecordId | null;
  readonly hands: readonly PairHand[];
  readonly runs: readonly PairRun[];
  readonly asked: number;
  /** Comfort of the round's other pairs: means over equal stretches, where there are runs. */
  readonly usual: readonly { readonly m: Metres; readonly score: number }[];
  readonly felt: readonly FeltInRuns[];
  readonly bench: readonly PairBench[];
  readonly checks: readonly {
    readonly check: RecordId;
    readonly atMs: number;
    readonly m: Metres;
    readonly readings: number;
    readonly words: string | null;
    readonly photos: readonly string[];
  }[];
  readonly damages: readonly (Pick<DamageReport, 'what'> & {
    readonly damage: RecordId;
    readonly atMs: number;
    readonly m: Metres;
    readonly stands: boolean;
  })[];
  readonly stops: readonly {
    readonly stop: RecordId;
    readonly reason: string;
    readonly fromMs: number;
    readonly untilMs: number | null;
    readonly fromM: Metres;
    readonly untilM: Metres;
  }[];
  /** Each tester who holds or held it, against its last. */
  readonly fit: readonly (Pick<FeetInPair, 'left' | 'right'> & { readonly tester: RecordId })[];
  readonly judged: number;
  readonly outOfTolerance: boolean;
  readonly notes: readonly Note[];
}

/** Stretches that the comfort of the round's other pairs is averaged over. */
const STRETCHES = 20;

const overall = ({ run }: LoggedRun): number | null => run.comfort?.overall ?? null;

const runsOf = ({ runs, curve }: LoggedPair): readonly PairRun[] =>
  runs.map((one) => ({
    run: one.id,
    tester: one.tester,
    atMs: one.startMs,
    distanceM: one.distanceM,
    pairM: mileageBefore(curve, one.startMs),
    comfort: overall(one),
    isFirst: one.run.firstImpression === true,
    complaints:
      one.run.feet === undefined
        ? null
        : one.run.feet.answer === 'complaints'
          ? one.run.feet.complaints.length
          : 0,
    pain: one.run.pain?.score ?? null,
  }));

const usualOf = (log: ProjectLog, pair: LoggedPair, untilM: number): PairLook['usual'] => {
  const sums = Array.from({ length: STRETCHES }, () => ({ sum: 0, n: 0 }));
  for (const other of log.pairs) {
    if (other.round !== pair.round || other.id === pair.id) continue;
    for (const one of runsOf(other)) {
      const bin = sums[Math.floor((one.pairM / untilM) * STRETCHES)];
      if (!bin || one.comfort === null || one.isFirst) continue;
      bin.sum += one.comfort;
      bin.n++;
    }
  }
  return sums.flatMap(({ sum, n }, at) =>
    n === 0 ? [] : [{ m: metres(((at + 0.5) / STRETCHES) * untilM), score: sum / n }],
  );
};

const handsOf = (pair: LoggedPair, log: ProjectLog): readonly PairHand[] => {
  const blind = new Map(
    log.records['hand-out'].map(({ body, revision }) => [revision.id, body.blind]),
  );
  const atEnd = metres(pair.curve.totalM.at(-1) ?? pair.curve.carriedInM);
  return (
    pair.spans
      // What was agreed ahead is no part of its life yet.
      .filter(({ fromMs }) => fromMs <= log.nowMs)
      .toSorted((a, b) => a.fromMs - b.fromMs)
      .map(({ id, tester, fromMs, untilMs }) => ({
        handOut: id,
        tester,
        blind: blind.get(id) ?? true,
        fromMs,
        untilMs: Number.isFinite(untilMs) ? untilMs : null,
        fromM: mileageAt(pair.curve, fromMs),
        untilM: Number.isFinite(untilMs) ? mileageAt(pair.curve, untilMs) : atEnd,
        runs: pair.runs.filter(
          (run) => run.tester === tester && run.startMs >= fromMs && run.startMs < untilMs,
        ).length,
      }))
  );
};

/** @returns null where the pair is not in the project */
export const lookAtPair = (log: ProjectLog, review: Review, id: RecordId): PairLook | null => {
  const pair = log.pairs.find((one) => one.id === id);
  const reviewed = review.pairs.find((one) => one.id === id);
  if (!pair || !reviewed) return null;
  const { curve } = pair;
  const same = log.pairs
    .filter(({ round }) => round === pair.round)
    .map((one) => ({ id: one.id, code: one.record.body.code }))
    .sort(byCode);
  const at = same.findIndex((one) => one.id === id);
  const briefM = log.project.brief.distanceM;
  const untilM = Math.max(briefM, reviewed.totalM, 1);
  const stands = new Map(review.damages.map((one) => [one.id, one.stands]));
  return {
    id,
    code: reviewed.code,
    round: pair.round,
    sizeMm: reviewed.sizeMm,
    totalM: reviewed.totalM,
    carriedInM: reviewed.carriedInM,
    briefM,
    holder: reviewed.holder,
    before: same[at - 1]?.id ?? null,
    after: same[at + 1]?.id ?? null,
    hands: handsOf(pair, log),
    runs: runsOf(pair),
    asked: pair.runs.filter(({ run }) => run.feet !== undefined).length,
    usual: usualOf(log, pair, untilM),
    felt: feltInRuns(pair.runs),
    bench: benchOf(log, pair, untilM),
    checks: pair.checks.map(({ body, revision }) => ({
      check: revision.id,
      atMs: Date.parse(body.at),
      m: body.distanceM ?? mileageAt(curve, Date.parse(body.at)),
      readings: body.readings.length,
      words: body.words ?? null,
      photos: body.photos ?? [],
    })),
    damages: ownRecords(log.records['damage-report'], log.id)
      .filter(({ body }) => body.pair === id)
      .map(({ body, revision }) => ({
        damage: revision.id,
        what: body.what,
        atMs: Date.parse(body.at),
        m: mileageAt(curve, Date.parse(body.at)),
        stands: stands.get(revision.id) ?? false,
      })),
    stops: ownRecords(log.records['stop-use'], log.id)
      .filter(({ body }) => body.pairs.includes(id))
      .map(({ body, revision }) => {
        const [fromMs, untilMs] = [body.from, body.until].map((when) =>
          when === undefined ? null : Date.parse(when),
        ) as [number, number | null];
        return {
          stop: revision.id,
          reason: body.reason,
          fromMs,
          untilMs,
          fromM: mileageAt(curve, fromMs),
          untilM: mileageAt(curve, untilMs ?? log.nowMs),
        };
      }),
    fit: lookAtFeet(log).testers.flatMap(({ tester, pairs }) =>
      pairs.filter((one) => one.pair === id).map(({ left, right }) => ({ tester, left, right })),
    ),
    judged: reviewed.outOfTolerance.judged,
    outOfTolerance: reviewed.outOfTolerance.proved + reviewed.outOfTolerance.outside > 0,
    notes: notesOf(pair.runs),
  };
};

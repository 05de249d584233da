/** Where is each pair, how far has it come, and may it be worn? One row a pair, for a list that is sorted and filtered. */
import type { RecordId } from '../records/index.ts';
import type { Metres, Millimetres } from '../units/index.ts';
import type { LoggedPair, ProjectLog } from './project-log.ts';
import type { Review } from './review-types.ts';
import { isOutOfTolerance } from './tolerance.ts';

export interface PairRow {
  readonly pair: RecordId;
  readonly code: string;
  readonly round: RecordId;
  /** Place of the round among the project's rounds, from 0. */
  readonly roundAt: number;
  readonly sizeMm: Millimetres;
  /** Who has it now; null: nobody. */
  readonly holder: RecordId | null;
  /** The hand-out that has not ended. */
  readonly handOut: RecordId | null;
  readonly sinceMs: number | null;
  readonly holderSilentDays: number | null;
  readonly totalM: Metres;
  /** What of it the pair had on it before its first run. */
  readonly carriedInM: Metres;
  readonly shareOfBrief: number;
  readonly runs: number;
  readonly lastRunMs: number | null;
  /** Runs whose tester was asked what they felt, and those of them with a complaint. */
  readonly asked: number;
  readonly complained: number;
  readonly checks: number;
  /** A stop-use notice stands. */
  readonly stopped: boolean;
  /** A report of damage that still keeps everybody out of it; null: none. */
  readonly damage: RecordId | null;
  readonly outOfTolerance: boolean;
}

/** Whether nobody may run in the pair. */
export const mustNotRun = ({ stopped, damage }: Pick<PairRow, 'stopped' | 'damage'>): boolean =>
  stopped || damage !== null;

const heldNow = ({ spans }: LoggedPair, nowMs: number) =>
  spans.find(({ fromMs, untilMs }) => fromMs <= nowMs && nowMs < untilMs) ?? null;

/** One row for each pair, by round, then code, as the review has them. */
export const pairRows = (
  log: Pick<ProjectLog, 'pairs' | 'nowMs'>,
  review: Pick<Review, 'pairs' | 'rounds' | 'damages'>,
): readonly PairRow[] => {
  const logged = new Map(log.pairs.map((pair) => [pair.id, pair]));
  const places = new Map(review.rounds.map(({ id }, at) => [id, at]));
  const damaged = new Map(
    review.damages.flatMap(({ id, pair, stands }) => (stands ? [[pair, id] as const] : [])),
  );
  return review.pairs.flatMap((pair): PairRow[] => {
    const own = logged.get(pair.id);
    if (!own) return [];
    const held = heldNow(own, log.nowMs);
    const asked = own.runs.filter(({ run }) => run.feet !== undefined);
    return [
      {
        pair: pair.id,
        code: pair.code,
        round: pair.round,
        roundAt: places.get(pair.round) ?? -1,
        sizeMm: pair.sizeMm,
        holder: pair.holder,
        handOut: held?.id ?? null,
        sinceMs: held?.fromMs ?? null,
        holderSilentDays: pair.holderSilentDays,
        totalM: pair.totalM,
        carriedInM: pair.carriedInM,
        shareOfBrief: pair.shareOfBrief,
        runs: pair.runs,
        lastRunMs: pair.lastRunMs,
        asked: asked.length,
        complained: asked.filter(({ run }) => run.feet?.answer === 'complaints').length,
        checks: own.checks.length,
        stopped: pair.stopUse !== null,
        damage: damaged.get(pair.id) ?? null,
        outOfTolerance: isOutOfTolerance(pair.outOfTolerance),
      },
    ];
  });
};

/**
 * When is a tester asked to put their pairs in order of comfort? Ranking was the most stable of the
 * published comfort measures (Mills et al., Med Sci Sports Exerc 2010;42:1966-71), so it is asked
 * beside the scores, now and then. How often: judgement, no source.
 */
import type { RecordId, RecordOf } from '../../core/records/index.ts';
import type { HeldPair } from './own-mileage.ts';

const DAY_MS = 86_400_000;
/** A pair can be compared once it was worn this often: the first wearing is not yet an opinion. */
export const RUNS_TO_COMPARE = 2;
/** At most one question in so many days. */
export const DAYS_BETWEEN = 14;

export interface RankingQuestion {
  readonly project: RecordId;
  readonly pairs: readonly HeldPair[];
}

/** The question that is due now, or null. Pairs of one project only, in the order of their codes. */
export const rankingDue = (
  held: readonly HeldPair[],
  rankings: readonly RecordOf<'ranking'>[],
  nowMs: number,
): RankingQuestion | null => {
  const projects = new Set(held.map(({ pair }) => pair.body.project));
  for (const project of projects) {
    const pairs = held
      .filter(({ pair, runs }) => pair.body.project === project && runs >= RUNS_TO_COMPARE)
      .sort((a, b) => (a.pair.body.code < b.pair.body.code ? -1 : 1));
    const last = Math.max(
      ...rankings
        .filter(({ body }) => body.project === project)
        .map(({ body }) => Date.parse(body.at)),
      Number.NEGATIVE_INFINITY,
    );
    // Nothing new was felt since the last answer: the same question would get the same answer.
    const wornSince = pairs.filter(({ lastRunMs }) => (lastRunMs ?? 0) > last).length;
    if (pairs.length >= 2 && nowMs - last >= DAYS_BETWEEN * DAY_MS && wornSince >= 2)
      return { project, pairs };
  }
  return null;
};

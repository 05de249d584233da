/** How far did each tester come? */
import type { HandOutSpan, LoggedRun } from '../mileage/index.ts';
import type { RecordId, RecordOf } from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';
import { byCode } from './by-code.ts';
import { sumM } from './evidence-size.ts';
import type { TesterReview } from './review-types.ts';

/**
 * Those who hold or held a pair or logged a run, by code.
 * @param silent days by tester, of those who are
 */
export const reviewTesters = (
  testers: readonly RecordOf<'tester'>[],
  spans: readonly HandOutSpan[],
  runs: readonly LoggedRun[],
  silent: ReadonlyMap<RecordId, number>,
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
        silentDays: silent.get(revision.id) ?? null,
      };
    })
    .sort(byCode);
};

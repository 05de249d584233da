/** What the lead of the demo plans next: rounds 2 and 3 against each other. Invented. */
import { drawPlan } from '../core/panel/index.ts';
import type { HandOutPlan, RecordId, Records } from '../core/records/index.ts';
import { millimetres } from '../core/units/index.ts';

/** Its own seed: nothing that was there before is drawn otherwise. */
export const PLAN_SEED = 20261119;

/** @returns the body of the record; the tester `T03` is away in the second period */
export const planNext = (
  { round, pair, tester, 'stop-use': stops }: Records,
  about: Pick<HandOutPlan, 'project' | 'at' | 'from'>,
): HandOutPlan => {
  const rounds = [...round]
    .sort((a, b) => a.body.order - b.body.order)
    .slice(1)
    .map(({ revision }): RecordId => revision.id);
  const withdrawn = new Set(stops.flatMap(({ body }) => body.pairs));
  const testers = tester.map(({ body: { code, footLengthMm: feet }, revision }) => ({
    id: revision.id,
    footLengthMm: feet ? millimetres(Math.max(feet.left, feet.right)) : null,
    away: code === 'T03' ? [1] : [],
  }));
  const question = {
    seed: PLAN_SEED,
    rounds,
    periods: rounds.length,
    testers,
    pairs: pair.flatMap(({ body, revision }) =>
      withdrawn.has(revision.id)
        ? []
        : [{ id: revision.id, round: body.round, sizeMm: body.sizeMm }],
    ),
    allowedMm: 8,
  };
  const answer = drawPlan(question);
  if (!answer.ok) throw new Error(answer.why);
  return {
    ...about,
    seed: PLAN_SEED,
    rounds,
    basis: answer.plan.basis,
    periods: question.periods,
    weeksPerPeriod: 3,
    allowedMm: millimetres(question.allowedMm),
    testers: testers.map(({ id, away }) => ({ tester: id, ...(away.length > 0 && { away }) })),
    places: answer.plan.places.map((place) => ({ ...place })),
  };
};

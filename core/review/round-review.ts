/** What does the log say about one round? */
import {
  comfortByAttribute,
  comfortChanges,
  countZones,
  reviewTwoSided,
  twoSidedChanges,
  weighComplaints,
  weighPain,
  type ComfortAnswer,
  type FeetAnswer,
  type PainAnswer,
  type TwoSidedAnswer,
} from '../complaints/index.ts';
import type { ComplaintKind } from '../foot/index.ts';
import { mileageBefore, type LoggedRun } from '../mileage/index.ts';
import type { RecordOf } from '../records/index.ts';
import { sizeOf } from './evidence-size.ts';
import type { LoggedPair, ProjectLog } from './project-log.ts';
import type { RoundReview } from './review-types.ts';

/** The answers to the feet question; the complaints of one kind, or all of them where it is null. */
export const feetAnswers = (
  runs: readonly LoggedRun[],
  kind: ComplaintKind | null = null,
): FeetAnswer[] => {
  const answers: FeetAnswer[] = [];
  for (const {
    id,
    tester,
    run: { feet },
  } of runs) {
    if (!feet) continue;
    const all = feet.answer === 'complaints' ? feet.complaints : [];
    answers.push({
      run: id,
      tester,
      complaints: kind === null ? all : all.filter((one) => one.kind === kind),
    });
  }
  return answers;
};

/** The answers to the question after pain. */
const painAnswers = (runs: readonly LoggedRun[]): PainAnswer[] =>
  runs.flatMap(({ id, tester, run: { pain } }) =>
    pain
      ? [
          {
            run: id,
            tester,
            score: pain.score,
            isNew: pain.isNew ?? null,
            signs: pain.signs ?? [],
          },
        ]
      : [],
  );

/** The comfort scores of some pairs, each with the distance on the pair when its run began. */
export const comfortAnswers = (pairs: readonly LoggedPair[]): ComfortAnswer[] =>
  pairs.flatMap(({ runs, curve }) => {
    const answers: ComfortAnswer[] = [];
    for (const { tester, startMs, run } of runs)
      if (run.comfort)
        answers.push({
          tester,
          comfort: run.comfort,
          firstImpression: run.firstImpression === true,
          pairM: mileageBefore(curve, startMs),
        });
    return answers;
  });

/** The two-sided answers of some pairs. */
export const twoSidedAnswers = (pairs: readonly LoggedPair[]): TwoSidedAnswer[] =>
  pairs.flatMap(({ runs }) =>
    runs.flatMap(({ tester, run: { comfort, comfort2, firstImpression } }) =>
      comfort2
        ? [
            {
              tester,
              marks: comfort2,
              overall: comfort?.overall ?? null,
              firstImpression: firstImpression === true,
            },
          ]
        : [],
    ),
  );

/** Everything that testers answered about comfort in one round. */
export interface ComfortAnswers {
  readonly scores: readonly ComfortAnswer[];
  readonly marks: readonly TwoSidedAnswer[];
}

export const noComfort: ComfortAnswers = { scores: [], marks: [] };

export const allComfortAnswers = (pairs: readonly LoggedPair[]): ComfortAnswers => ({
  scores: comfortAnswers(pairs),
  marks: twoSidedAnswers(pairs),
});

/**
 * Reviews one round.
 * @param comfort its own comfort answers
 * @param before those of the round before; none for the first
 */
export const reviewRound = (
  { body, revision }: RecordOf<'round'>,
  { project, pairs }: ProjectLog,
  comfort: ComfortAnswers,
  before: ComfortAnswers,
): RoundReview => {
  const own = pairs.filter(({ round }) => round === revision.id);
  const runs = own.flatMap((pair) => pair.runs);
  const answers = feetAnswers(runs);
  const panel = own.flatMap(({ spans }) => spans.map(({ tester }) => tester));
  const zonesOf = (foot: 'left' | 'right') =>
    [...countZones(answers, foot).values()].sort((a, b) => (a.zone < b.zone ? -1 : 1));
  return {
    id: revision.id,
    name: body.name,
    order: body.order,
    stage: body.stage,
    changes: body.changes,
    size: sizeOf(own.length, runs),
    comfort: comfortByAttribute(comfort.scores),
    comfortChanges: comfortChanges(before.scores, comfort.scores),
    twoSided: reviewTwoSided(comfort.marks),
    twoSidedChanges: twoSidedChanges(before.marks, comfort.marks),
    complaints: weighComplaints(answers, project.brief.allowedRate, panel),
    pain: weighPain(painAnswers(runs), project.brief.allowedRate.pain, panel),
    zones: { left: zonesOf('left'), right: zonesOf('right') },
  };
};

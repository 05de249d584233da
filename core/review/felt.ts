/**
 * How does the cushioning of a round feel over the distance on the pairs? First wearings left out. What was answered
 * from bad to good and what was marked from too soft to too firm are two curves, never one.
 */
import {
  comfortByAttribute,
  driftOf,
  type ComfortDrift,
  type ScoreAt,
} from '../complaints/index.ts';
import type { ComfortAttributeId, TwoSidedId } from '../foot/index.ts';
import { mileageBefore } from '../mileage/index.ts';
import type { RecordId } from '../records/index.ts';
import { metres } from '../units/index.ts';
import { feltStretches, type FeltStretch } from '../wear/index.ts';
import type { ProjectLog } from './project-log.ts';
import { comfortAnswers } from './round-review.ts';

const cushioning = [
  'heel-cushioning',
  'forefoot-cushioning',
] as const satisfies readonly (ComfortAttributeId & TwoSidedId)[];

interface OverDistance {
  readonly attribute: (typeof cushioning)[number];
  /** The same as the comfort of the round has, of scores; null where too few answers tell it. */
  readonly drift: ComfortDrift | null;
  readonly stretches: readonly FeltStretch[];
}

/** On which line: a score from 0 to 100, or a mark from too soft, −100, to too firm, 100. */
export type Felt = OverDistance & { readonly line: 'score' | 'mark' };

/** Scores of a round, heel and forefoot; an attribute that nobody scored is absent. */
const feltScores = (log: ProjectLog, round: RecordId): readonly OverDistance[] => {
  const answers = comfortAnswers(log.pairs.filter((pair) => pair.round === round)).filter(
    ({ firstImpression }) => !firstImpression,
  );
  const comfort = comfortByAttribute(answers);
  return cushioning.flatMap((attribute) => {
    const scores = answers.flatMap(({ tester, comfort: given, pairM }) => {
      const score = given[attribute];
      return score === undefined ? [] : [{ tester, score, pairM: metres(pairM) }];
    });
    const drift = comfort.find((one) => one.attribute === attribute)?.drift ?? null;
    return scores.length === 0 ? [] : [{ attribute, drift, stretches: feltStretches(scores) }];
  });
};

/** Marks of a round, heel and forefoot; a question that nobody marked is absent. */
const feltMarks = (log: ProjectLog, round: RecordId): readonly OverDistance[] => {
  const pairs = log.pairs.filter((pair) => pair.round === round);
  return cushioning.flatMap((attribute) => {
    const marks = pairs.flatMap(({ runs, curve }) =>
      runs.flatMap(({ tester, startMs, run }): ScoreAt[] => {
        const score = run.comfort2?.[attribute];
        return score === undefined || run.firstImpression === true
          ? []
          : [{ tester, score, pairM: mileageBefore(curve, startMs) }];
      }),
    );
    return marks.length === 0
      ? []
      : [
          {
            attribute,
            drift: driftOf(marks),
            stretches: feltStretches(
              marks.map(({ pairM, ...one }) => ({ ...one, pairM: metres(pairM) })),
            ),
          },
        ];
  });
};

/** Felt cushioning of a round: marks first, because they say which way it goes. */
export const feltCushioning = (log: ProjectLog, round: RecordId): readonly Felt[] => [
  ...feltMarks(log, round).map((one): Felt => ({ ...one, line: 'mark' })),
  ...feltScores(log, round).map((one): Felt => ({ ...one, line: 'score' })),
];

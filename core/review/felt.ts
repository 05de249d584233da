/** How does the cushioning of a round feel over the distance on the pairs? First wearings left out. */
import { comfortByAttribute, type ComfortDrift } from '../complaints/index.ts';
import type { ComfortAttributeId } from '../foot/index.ts';
import type { RecordId } from '../records/index.ts';
import { metres } from '../units/index.ts';
import { feltStretches, type FeltStretch } from '../wear/index.ts';
import type { ProjectLog } from './project-log.ts';
import { comfortAnswers } from './round-review.ts';

const cushioning = [
  'heel-cushioning',
  'forefoot-cushioning',
] as const satisfies ComfortAttributeId[];

export interface Felt {
  readonly attribute: ComfortAttributeId;
  /** The same as the comfort of the round has; null where too few scores tell it. */
  readonly drift: ComfortDrift | null;
  readonly stretches: readonly FeltStretch[];
}

/** Felt cushioning of a round, heel and forefoot; an attribute that nobody scored is absent. */
export const feltCushioning = (log: ProjectLog, round: RecordId): readonly Felt[] => {
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

/** How does the cushioning of a round feel over the distance on the pairs? First wearings left out. */
import type { ComfortAttributeId } from '../foot/index.ts';
import type { RecordId } from '../records/index.ts';
import { metres } from '../units/index.ts';
import { feltChange, type FeltChange } from '../wear/index.ts';
import type { ProjectLog } from './project-log.ts';
import { comfortAnswers } from './round-review.ts';

const cushioning = [
  'heel-cushioning',
  'forefoot-cushioning',
] as const satisfies ComfortAttributeId[];

export interface Felt extends FeltChange {
  readonly attribute: ComfortAttributeId;
}

/** Felt cushioning of a round, heel and forefoot; an attribute that nobody scored is absent. */
export const feltCushioning = (log: ProjectLog, round: RecordId): readonly Felt[] => {
  const answers = comfortAnswers(log.pairs.filter((pair) => pair.round === round)).filter(
    ({ firstImpression }) => !firstImpression,
  );
  return cushioning.flatMap((attribute) => {
    const scores = answers.flatMap(({ tester, comfort, pairM }) => {
      const score = comfort[attribute];
      return score === undefined ? [] : [{ tester, score, pairM: metres(pairM) }];
    });
    return scores.length === 0 ? [] : [{ attribute, ...feltChange(scores) }];
  });
};

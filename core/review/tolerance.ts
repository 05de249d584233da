/** Which pairs are out of tolerance? */
import { isOut, type ConformityWord } from '../rounds/index.ts';
import type { Deviation, SideDifference } from './review-types.ts';

/** How many dimensions of a pair on arrival, differences of left and right that the blueprint names among them. */
export interface PairTolerance {
  /** Decided or not; 0: the pair was not measured against a blueprint. */
  readonly judged: number;
  /** Proved out. */
  readonly proved: number;
  /** Read out by a gauge whose uncertainty is not known. */
  readonly outside: number;
  readonly undecided: number;
}

/** Counts what was decided of one pair. */
export const toleranceOf = (
  deviations: readonly Pick<Deviation, 'word'>[],
  sides: readonly Pick<SideDifference, 'word' | 'allowedFrom'>[],
): PairTolerance => {
  const words: readonly ConformityWord[] = [
    ...deviations.map(({ word }) => word),
    // A difference that only practice limits is shown, and marks no pair.
    ...sides.filter(({ allowedFrom }) => allowedFrom === 'blueprint').map(({ word }) => word),
  ];
  const count = (word: ConformityWord) => words.filter((one) => one === word).length;
  return {
    judged: words.length,
    proved: count('not-conforming'),
    outside: count('outside'),
    undecided: count('undecided'),
  };
};

/** A pair is out of tolerance where one dimension is proved or read out; what is undecided does not count. */
export const isOutOfTolerance = ({ proved, outside }: PairTolerance): boolean =>
  proved + outside > 0;

/** Whether a pair was out of tolerance; null where that is not known: not measured, or undecided. */
export const wasOutOfTolerance = (
  deviations: readonly Pick<Deviation, 'word'>[],
): boolean | null => {
  if (deviations.some(({ word }) => isOut(word))) return true;
  return deviations.length === 0 || deviations.some(({ word }) => word === 'undecided')
    ? null
    : false;
};

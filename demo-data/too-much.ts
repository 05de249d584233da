/** On which side of just right the invented testers find things, in the rounds that were asked so. */
import { JUST_RIGHT, type TwoSidedId } from '../core/foot/index.ts';
import type { TwoSided } from '../core/records/index.ts';
import type { Dice } from './random.ts';
import { TESTERS, wideFeet } from './scenario.ts';

/** The first round, from 0, in which phones asked with the good point in the middle. */
const FIRST_ROUND = 1;

/** What a tester is used to, and one answer's noise, points of 100. */
const [DIFFER, NOISE] = [12, 14];

interface At {
  readonly tester: number;
  readonly round: number;
  readonly pairKm: number;
  /** By how much this tester scores comfort above the others. */
  readonly offset: number;
}

/** Where the mean tester lies. The foam of round 2 is too soft; a denser batch helps, and softens with the kilometres. */
const truths: Readonly<Partial<Record<TwoSidedId, (at: At) => number>>> = {
  'heel-cushioning': ({ round, pairKm, offset }) =>
    (round === 1 ? -44 : -21) - 0.02 * pairKm + 1.5 * offset,
  'forefoot-cushioning': ({ round, pairKm }) => (round === 1 ? -14 : -4) - 0.02 * pairKm,
  'heel-hold': ({ round }) => (round === 1 ? -6 : 0),
  'toe-room': ({ tester, round }) => (round === 1 && wideFeet.has(tester) ? -42 : -4),
  ventilation: () => -12,
};

/** Marks of one run after another. @param dice of its own, so that no other figure changes */
export const marksFrom = (dice: Dice): ((at: At) => TwoSided | null) => {
  const questions = Object.keys(truths) as TwoSidedId[];
  const habits = Array.from({ length: TESTERS }, () =>
    Object.fromEntries(questions.map((one) => [one, dice.normal(0, DIFFER)])),
  );
  return (at) => {
    if (at.round < FIRST_ROUND) return null;
    return Object.fromEntries(
      questions.map((one) => {
        const felt =
          (truths[one]?.(at) ?? 0) + (habits[at.tester]?.[one] ?? 0) + dice.normal(0, NOISE);
        const mark = Math.round(Math.min(100, Math.max(-100, felt)));
        // As a finger does it: what comes near the middle is just right.
        return [one, Math.abs(mark) <= JUST_RIGHT ? 0 : mark];
      }),
    );
  };
};

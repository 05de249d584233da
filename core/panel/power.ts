/** How many testers and runs does it take to see a difference between two rounds? */
import {
  betaBinomialAll,
  fewestUnits,
  pairedTPower,
  seenOnce,
  signTestPower,
} from '../statistics/index.ts';

/** More testers than this are not looked for. */
export const MOST_TESTERS = 200;
/** The chance of seeing it that a test is usually made for (common practice, no source). */
export const USUAL_POWER = 0.8;
/** Means of testers differ by so much between two pairs (standard deviation of the differences, 100 scale): Hébert-Losier K et al., Footwear Sci 2025;17:79-88. */
export const SD_OF_DIFFERENCES = 15;

/**
 * How much the runs of one tester are alike in a complaint: correlation of two of them. Judgement, no source:
 * what a foot and a pair do, they do again.
 */
export const ALIKE = 0.2;

export interface FallQuestion {
  readonly testers: number;
  /** Asked runs of each tester in each of the two rounds. */
  readonly runs: number;
  /** Share of runs with the complaint before and after, 0 to 1. */
  readonly before: number;
  readonly after: number;
  /** 0: every tester has the same rate; towards 1: some always have it, others never. */
  readonly alike?: number;
}

export interface Power {
  /** Probability of seeing the difference, 0 to 1. */
  readonly power: number;
  /** The fewest testers with whom it is seen in four tests of five; null: more than 200. */
  readonly testersNeeded: number | null;
}

/**
 * Do the same testers, in both rounds, show that a complaint became rarer? Exact sign test over testers of their
 * shares of runs (level 5 %, two-sided). Each tester's rate in each round is drawn on its own from a beta
 * distribution, so it is a little pessimistic where the same testers have it in both.
 */
export const powerOfFall = (question: FallQuestion): Power => {
  const { testers, runs, before, after, alike = ALIKE } = question;
  const [first, second] = [before, after].map((mean) => betaBinomialAll(runs, mean, alike));
  let [better, worse] = [0, 0];
  first?.forEach((p, had) =>
    second?.forEach((q, has) => {
      if (has < had) better += p * q;
      else if (has > had) worse += p * q;
    }),
  );
  const of = (units: number) => signTestPower(units, better, worse);
  return {
    power: of(testers),
    testersNeeded: better > worse ? fewestUnits(of, USUAL_POWER, MOST_TESTERS) : null,
  };
};

/**
 * Do the same testers show a difference of comfort? Paired t test of the testers' means (level 5 %, two-sided).
 * @param difference on the 0-100 line
 * @param sd standard deviation of the testers' differences
 */
export const powerOfComfort = (
  testers: number,
  difference: number,
  sd = SD_OF_DIFFERENCES,
): Power => {
  const of = (units: number) => pairedTPower(units, difference, sd);
  return {
    power: of(testers),
    testersNeeded: difference === 0 ? null : fewestUnits(of, USUAL_POWER, MOST_TESTERS),
  };
};

/**
 * Is a complaint that some testers have seen at all, by at least one of them?
 * @param share of testers who have it, 0 to 1
 */
export const powerOfSeeing = (testers: number, share: number): Power => {
  const of = (units: number) => seenOnce(units, share);
  return {
    power: of(testers),
    testersNeeded: share <= 0 ? null : fewestUnits(of, 0.95, MOST_TESTERS),
  };
};

/** Simulated rounds of two-sided comfort answers with a known truth, read by `core/complaints/two-sided.ts`. */
import {
  penaltyOf,
  reviewTwoSided,
  twoSidedChanges,
  type TwoSidedAnswer,
} from '../../core/complaints/index.ts';
import { JUST_RIGHT, twoSidedIds } from '../../core/foot/index.ts';
import type { RecordId, TwoSided } from '../../core/records/index.ts';
import { seeded } from '../seeded.ts';

export interface TwoSidedScenario {
  readonly testers: number;
  /** Runs of a tester; `unbalanced`: from one to 24, few of most and many of some. */
  readonly runs: number | 'unbalanced';
  /** Questions asked; only the first has anything in it. */
  readonly questions: number;
  /** Where the first question's mean tester lies, −100 to 100; all others at 0. */
  readonly truth: number;
  /** Standard deviation of what testers are used to, about the truth. */
  readonly differ: number;
  /** What they are used to has a long tail on one side; its mean stays where it is. */
  readonly skewed?: boolean;
  /** Standard deviation of one answer. */
  readonly noise?: number;
  /** Standard deviation of each tester's own drift from the first run to the last, points. */
  readonly drift?: number;
}

export interface TwoSidedFigures {
  /** Share of rounds whose first question is said to be too little: likely or clear, and clear alone. */
  readonly low: number;
  readonly lowClear: number;
  readonly high: number;
  /** Share of rounds with any such word on a question in which nothing is; likely or clear, and clear alone. */
  readonly anyFalse: number;
  readonly anyFalseClear: number;
  /** Share of rounds whose first question is said to be just right. */
  readonly right: number;
}

type Random = () => number;

/** Box GEP & Muller ME, Ann Math Stat 1958;29:610-611. */
const normal = (random: Random): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** Mean 0, standard deviation 1, most of it a little below and few far above. */
const skewed = (random: Random): number => -Math.log(1 - random()) - 1;

const DEFAULT_NOISE = 20;
/** Points of comfort that a point off the good point costs. */
const SLOPE = 0.3;

const runsOf = ({ runs }: TwoSidedScenario, random: Random): number =>
  runs === 'unbalanced' ? Math.max(1, Math.round(24 * random() ** 3)) : runs;

/** As the phone writes it: what is close to the middle is just right. */
const marked = (felt: number): number => {
  const mark = Math.round(Math.min(100, Math.max(-100, felt)));
  return Math.abs(mark) <= JUST_RIGHT ? 0 : mark;
};

/** The same testers keep what they are used to in a later round. */
const habitsOf = (scenario: TwoSidedScenario, random: Random): readonly (readonly number[])[] =>
  Array.from({ length: scenario.testers }, () =>
    Array.from(
      { length: scenario.questions },
      () => scenario.differ * (scenario.skewed ? skewed(random) : normal(random)),
    ),
  );

const answersOf = (
  scenario: TwoSidedScenario,
  habits: readonly (readonly number[])[],
  random: Random,
): TwoSidedAnswer[] =>
  habits.flatMap((own, tester) => {
    const runs = runsOf(scenario, random);
    const slopes = own.map(() => (scenario.drift ?? 0) * normal(random));
    return Array.from({ length: runs }, (_, run): TwoSidedAnswer => {
      const along = runs === 1 ? 0 : run / (runs - 1) - 0.5;
      const felt = own.map(
        (habit, at) =>
          (at === 0 ? scenario.truth : 0) +
          habit +
          (slopes[at] as number) * along +
          (scenario.noise ?? DEFAULT_NOISE) * normal(random),
      );
      return {
        tester: `tester-${tester}` as RecordId,
        marks: Object.fromEntries(
          felt.map((one, at) => [twoSidedIds[at], marked(one)]),
        ) as TwoSided,
        overall: Math.min(
          100,
          Math.max(0, 75 - SLOPE * Math.abs(felt[0] as number) + 8 * normal(random)),
        ),
        firstImpression: false,
      };
    });
  });

export const simulateTwoSided = (
  scenario: TwoSidedScenario,
  tests: number,
  seed: number,
): TwoSidedFigures => {
  const random = seeded(seed);
  const seen = { low: 0, lowClear: 0, high: 0, anyFalse: 0, anyFalseClear: 0, right: 0 };
  for (let test = 0; test < tests; test++) {
    const found = reviewTwoSided(answersOf(scenario, habitsOf(scenario, random), random));
    const [first] = found;
    const empty = scenario.truth === 0 ? found : found.slice(1);
    const named = empty.filter(({ word }) => word === 'low' || word === 'high');
    seen.low += Number(first?.word === 'low');
    seen.lowClear += Number(first?.word === 'low' && first.sure === 'clear');
    seen.high += Number(first?.word === 'high');
    seen.right += Number(first?.word === 'right');
    seen.anyFalse += Number(named.length > 0);
    seen.anyFalseClear += Number(named.some(({ sure }) => sure === 'clear'));
  }
  return Object.fromEntries(
    Object.entries(seen).map(([what, count]) => [what, count / tests]),
  ) as unknown as TwoSidedFigures;
};

export interface MoveFigures {
  readonly better: number;
  readonly worse: number;
  readonly 'no-relevant': number;
  readonly open: number;
}

/** The same testers in two rounds: how often is the first question said to be closer, or further away? */
export const simulateMoves = (
  scenario: TwoSidedScenario,
  later: Pick<TwoSidedScenario, 'truth' | 'runs'>,
  tests: number,
  seed: number,
): MoveFigures => {
  const random = seeded(seed);
  const seen = { better: 0, worse: 0, 'no-relevant': 0, open: 0 };
  for (let test = 0; test < tests; test++) {
    const habits = habitsOf(scenario, random);
    const [change] = twoSidedChanges(
      answersOf(scenario, habits, random),
      answersOf({ ...scenario, ...later }, habits, random),
    );
    if (change) seen[change.word] += 1 / tests;
  }
  return seen;
};

/** How often the interval of a cost holds the true one, with so many testers on the side and for whom it is right. */
export const costCoverage = (
  onSide: number,
  right: number,
  spread: readonly [number, number],
  tests: number,
  seed: number,
): number => {
  const random = seeded(seed);
  const cost = 15;
  let held = 0;
  for (let test = 0; test < tests; test++) {
    const found = penaltyOf([
      ...Array.from({ length: right }, () => ({
        mark: 0,
        overall: 72 + spread[1] * normal(random),
      })),
      ...Array.from({ length: onSide }, () => ({
        mark: -50,
        overall: 72 - cost + spread[0] * normal(random),
      })),
    ]).cost.low;
    held += Number(found && found.interval.lower <= cost && cost <= found.interval.upper);
  }
  return held / tests;
};

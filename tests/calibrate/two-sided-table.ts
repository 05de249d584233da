/** The tables on two-sided comfort that `npm run calibrate` prints. */
import {
  costCoverage,
  simulateMoves,
  simulateTwoSided,
  type TwoSidedScenario,
} from './two-sided.ts';

const shown = (share: number): string => `${(100 * share).toFixed(1)} %`;

const base: TwoSidedScenario = { testers: 8, runs: 8, questions: 10, truth: 0, differ: 20 };

const nameOf = ({ testers, runs, questions, differ, skewed, drift }: TwoSidedScenario): string =>
  [
    `${testers} testers, ${runs === 'unbalanced' ? '1 to 24' : runs} runs`,
    `${questions} questions`,
    `habits ± ${differ}${skewed ? ', with a tail' : ''}`,
    drift ? `drift ± ${drift}` : '',
  ]
    .filter(Boolean)
    .join(', ');

const nulls: readonly TwoSidedScenario[] = [
  base,
  { ...base, differ: 0 },
  { ...base, differ: 30 },
  { ...base, runs: 'unbalanced', drift: 30 },
  { ...base, runs: 'unbalanced', differ: 30, drift: 30 },
  { ...base, runs: 1 },
  { ...base, questions: 1, runs: 'unbalanced', drift: 30 },
  { ...base, testers: 20, runs: 'unbalanced', drift: 30 },
  { ...base, testers: 20, questions: 1, runs: 'unbalanced', drift: 30 },
  { ...base, skewed: true, runs: 'unbalanced' },
  { ...base, testers: 20, skewed: true, runs: 'unbalanced' },
];

export const NULL_HEADER = [
  '| nothing is off | one question "too soft" | one question "too firm" | any word in the round | any "clear" in the round |',
  '| --- | --- | --- | --- | --- |',
] as const;

/** Rounds in which nothing is too little or too much. */
export const nullRows = (tests: number, seed: number): readonly string[] =>
  nulls.map((scenario) => {
    const { low, high, anyFalse, anyFalseClear } = simulateTwoSided(scenario, tests, seed);
    return `| ${nameOf(scenario)} | ${[low, high, anyFalse, anyFalseClear].map(shown).join(' | ')} |`;
  });

const powers: readonly TwoSidedScenario[] = [
  ...[-15, -20, -30, -40].map((truth) => ({ ...base, truth, differ: 15 })),
  ...[-20, -30, -40].map((truth) => ({ ...base, truth, differ: 25 })),
  { ...base, truth: -30, differ: 25, runs: 'unbalanced' },
  { ...base, truth: -30, differ: 15, testers: 5 },
  { ...base, truth: -30, differ: 15, testers: 6 },
  { ...base, truth: -30, differ: 25, testers: 12 },
  { ...base, truth: -20, differ: 25, testers: 20 },
];

export const POWER_HEADER = [
  '| heel too soft by | testers, runs | said | clear | said to be just right | too firm |',
  '| --- | --- | --- | --- | --- | --- |',
] as const;

/** One question in ten is off. */
export const powerRows = (tests: number, seed: number): readonly string[] =>
  powers.map((scenario) => {
    const { low, lowClear, right, high } = simulateTwoSided(scenario, tests, seed);
    return `| ${-scenario.truth} | ${nameOf(scenario)} | ${[low, lowClear, right, high].map(shown).join(' | ')} |`;
  });

const one: TwoSidedScenario = { ...base, questions: 1 };
const moves: readonly (readonly [TwoSidedScenario, Pick<TwoSidedScenario, 'truth' | 'runs'>])[] = [
  [one, { truth: 0, runs: 8 }],
  [
    { ...one, truth: -30 },
    { truth: -30, runs: 8 },
  ],
  [
    { ...one, runs: 1 },
    { truth: 0, runs: 20 },
  ],
  [
    { ...one, runs: 20 },
    { truth: 0, runs: 1 },
  ],
  [
    { ...one, truth: -30 },
    { truth: 0, runs: 8 },
  ],
  [
    { ...one, truth: -40 },
    { truth: 0, runs: 8 },
  ],
  [
    { ...one, truth: -40, testers: 12 },
    { truth: -10, runs: 8 },
  ],
  [one, { truth: -40, runs: 8 }],
];

export const MOVE_HEADER = [
  '| mean mark, before → now | testers | better | worse | no relevant difference | open |',
  '| --- | --- | --- | --- | --- | --- |',
] as const;

/** The same testers in two rounds. */
export const moveRows = (tests: number, seed: number): readonly string[] =>
  moves.map(([earlier, later]) => {
    const found = simulateMoves(earlier, later, tests, seed);
    const words = ['better', 'worse', 'no-relevant', 'open'] as const;
    return `| ${earlier.truth} → ${later.truth} | ${earlier.testers}; ${earlier.runs} and ${later.runs} runs each | ${words.map((word) => shown(found[word])).join(' | ')} |`;
  });

/** Coverage of the interval of a cost. */
export const costLines = (tests: number, seed: number): readonly string[] =>
  (
    [
      [3, 3, [10, 10]],
      [3, 5, [10, 10]],
      [5, 3, [18, 8]],
      [3, 12, [20, 8]],
      [5, 12, [12, 10]],
    ] as const
  ).map(
    ([off, right, spread]) =>
      `${off} against ${right}, standard deviations ${spread.join(' and ')}: ${shown(costCoverage(off, right, spread, tests, seed))}`,
  );

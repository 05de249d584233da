/** The tables on changes between rounds that `npm run calibrate` prints. */
import { simulateChanges, type ChangeScenario } from './changes.ts';

const shown = (share: number): string => `${(100 * share).toFixed(1)} %`;
const percent = (share: number): string => `${Number((100 * share).toFixed(2))} %`;

const nameOf = ({ both, onlyOne = 0, runs, differ = 0, linger = 0 }: ChangeScenario): string =>
  [
    both > 0 ? `${both} wore both` : '',
    onlyOne > 0 ? `${onlyOne} only one, each` : '',
    runs[0] === runs[1] ? `${runs[0]} runs` : `${runs[0]} and ${runs[1]} runs`,
    differ > 0 ? `differ ${differ}` : '',
    linger > 0 ? `linger ${linger}` : '',
  ]
    .filter(Boolean)
    .join(', ');

/** Whom the tests are made of, from kind to unkind. */
const people: readonly Pick<ChangeScenario, 'differ' | 'linger'>[] = [
  {},
  { differ: 0.2 },
  { linger: 0.5 },
  { differ: 0.2, linger: 0.3 },
  { differ: 0.2, linger: 0.5 },
];

const scenarios: readonly ChangeScenario[] = [
  ...people.map((who): ChangeScenario => ({ both: 8, runs: [8, 8], rate: [0.4, 0.05], ...who })),
  { both: 12, runs: [8, 8], rate: [0.4, 0.05], differ: 0.2, linger: 0.5 },
  { both: 5, runs: [8, 8], rate: [0.4, 0.05], differ: 0.2 },
  { both: 8, runs: [20, 5], rate: [0.4, 0.05], differ: 0.2 },
  { both: 2, onlyOne: 6, runs: [8, 8], rate: [0.4, 0.05], differ: 0.2 },
  { both: 0, onlyOne: 4, runs: [8, 8], rate: [0.4, 0.05], differ: 0.2 },
  { both: 12, runs: [20, 20], rate: [0.4, 0.005] },
  { both: 12, runs: [20, 20], rate: [0.4, 0.06], differ: 0.2, linger: 0.5 },
  { both: 12, runs: [20, 20], rate: [0.4, 0.24], differ: 0.2 },
  ...people.map((who): ChangeScenario => ({ both: 8, runs: [8, 8], rate: [0.4, 0.4], ...who })),
  ...[4, 5, 6, 12].map((both): ChangeScenario => ({
    both,
    runs: [8, 8],
    rate: [0.4, 0.4],
    differ: 0.2,
    linger: 0.5,
  })),
  { both: 8, runs: [8, 8], rate: [0.1, 0.1], differ: 0.2, linger: 0.5 },
  { both: 8, runs: [20, 5], rate: [0.1, 0.1], differ: 0.2 },
  { both: 12, runs: [20, 20], rate: [0.4, 0.4], differ: 0.2 },
  { both: 2, onlyOne: 6, runs: [8, 8], rate: [0.4, 0.4], differ: 0.2, linger: 0.5 },
  { both: 2, onlyOne: 6, runs: [20, 5], rate: [0.4, 0.4], differ: 0.2, linger: 0.5 },
  { both: 0, onlyOne: 4, runs: [8, 8], rate: [0.4, 0.4], differ: 0.2, linger: 0.5 },
  { both: 8, runs: [8, 8], rate: [0.05, 0.4], differ: 0.2 },
];

export const CHANGE_HEADER = [
  '| share of runs | testers and runs | mended | better | no different | worse | too little | interval holds the truth |',
  '| --- | --- | --- | --- | --- | --- | --- | --- |',
] as const;

/** One row a scenario. */
export const changeRows = (tests: number, seed: number): string[] =>
  scenarios.map((scenario) => {
    const { verdicts, coverage } = simulateChanges(scenario, tests, seed);
    const [from, to] = scenario.rate.map(percent);
    const words = ['mended', 'better', 'no-different', 'worse', 'too-little'] as const;
    return `| ${from} → ${to} | ${nameOf(scenario)} | ${words.map((word) => shown(verdicts[word])).join(' | ')} | ${coverage === null ? '' : shown(coverage)} |`;
  });

const others = { cells: 40, rate: 0.05 };
const withOthers: readonly ChangeScenario[] = [
  { both: 8, runs: [12, 12], rate: [0.01, 0.4], differ: 0.2, others },
  { both: 8, runs: [12, 12], rate: [0.01, 0.4], differ: 0.2, linger: 0.5, others },
  { both: 12, runs: [12, 12], rate: [0.01, 0.4], differ: 0.2, others },
  { both: 2, onlyOne: 6, runs: [12, 12], rate: [0.01, 0.4], differ: 0.2, others },
];

export const NEW_HEADER = [
  '| one complaint rises among 40 at 5 % | proved new | any other proved new | any other worth a look |',
  '| --- | --- | --- | --- |',
] as const;

/** One row a scenario with many complaints, of which one came with the round. */
export const newRows = (tests: number, seed: number): string[] =>
  withOthers.map((scenario) => {
    const { provedNew, falselyNew, falselyLook } = simulateChanges(scenario, tests, seed);
    return `| ${scenario.rate.map(percent).join(' → ')}, ${nameOf(scenario)} | ${[provedNew, falselyNew, falselyLook].map(shown).join(' | ')} |`;
  });

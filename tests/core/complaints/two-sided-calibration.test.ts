/** How often two-sided answers say what is not so, seeded and small; `npm run calibrate` has the whole table. */
import { describe, expect, it } from 'vitest';
import {
  costCoverage,
  simulateMoves,
  simulateTwoSided,
  type TwoSidedScenario,
} from '../../calibrate/two-sided.ts';

const TESTS = 400;
/** Three standard errors of a share of so many tests. */
const slack = (share: number) => 3 * Math.sqrt((share * (1 - share)) / TESTS);
const eight: TwoSidedScenario = { testers: 8, runs: 8, questions: 8, truth: 0, differ: 20 };

describe('where nothing is too little or too much', () => {
  it.each<[string, TwoSidedScenario]>([
    ['testers who differ', eight],
    ['unequal numbers of runs', { ...eight, runs: 'unbalanced' }],
    [
      'unequal runs, larger habits and drift',
      { ...eight, runs: 'unbalanced', differ: 30, drift: 30 },
    ],
    ['ten testers of one run', { ...eight, testers: 10, runs: 1, drift: 30 }],
  ])('says clearly that something is in 5 % of rounds at most: %s', (_, scenario) => {
    const found = simulateTwoSided(scenario, TESTS, 11);
    expect(found.anyFalseClear).toBeLessThanOrEqual(0.05 + slack(0.05));
    expect(found.anyFalse).toBeLessThanOrEqual(0.2 + slack(0.2));
    expect(found.low).toBeLessThanOrEqual(0.05);
    expect(found.high).toBeLessThanOrEqual(0.05);
  });

  it('says "too soft" of a question that is asked alone in 5 % at most', () => {
    const alone = { ...eight, questions: 1, runs: 'unbalanced' as const, drift: 30 };
    const found = simulateTwoSided(alone, 4 * TESTS, 12);
    expect(found.low).toBeLessThanOrEqual(0.05 + slack(0.05) / 2);
    expect(found.high).toBeLessThanOrEqual(0.05 + slack(0.05) / 2);
  });
});

describe('where the heel is too soft', () => {
  it('finds it with eight testers, and nothing of the other side', () => {
    const found = simulateTwoSided({ ...eight, truth: -30, differ: 15 }, TESTS, 13);
    expect(found.low).toBeGreaterThan(0.9);
    expect(found.lowClear).toBeGreaterThan(0.6);
    expect(found.high).toBe(0);
    expect(found.right).toBeLessThan(0.01);
  });
});

describe('round against round', () => {
  const one = { ...eight, questions: 1 };
  it.each([
    ['the same shoe', { ...one, truth: -30 }, { truth: -30, runs: 8 }],
    ['a run each against twenty', { ...one, runs: 1 }, { truth: 0, runs: 20 }],
    ['twenty against a run each', { ...one, runs: 20 }, { truth: 0, runs: 1 }],
  ] as const)('calls nothing better or worse in 5 % at most: %s', (_, earlier, later) => {
    const found = simulateMoves(earlier, later, TESTS, 14);
    expect(found.better).toBeLessThanOrEqual(0.05);
    expect(found.worse).toBeLessThanOrEqual(0.05);
  });

  it('finds what came to the middle with twelve testers', () => {
    const found = simulateMoves(
      { ...one, testers: 12, truth: -40 },
      { truth: -10, runs: 8 },
      TESTS,
      15,
    );
    expect(found.better).toBeGreaterThan(0.8);
    expect(found.worse).toBe(0);
  });
});

it.each([
  [3, 3, [10, 10]],
  [3, 12, [20, 8]],
  [5, 12, [12, 10]],
] as const)('the interval of a cost of %d against %d holds the truth', (off, right, spread) => {
  expect(costCoverage(off, right, spread, 4000, 16)).toBeGreaterThan(0.92);
});

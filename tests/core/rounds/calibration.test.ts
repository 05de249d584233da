/** The figures that the rule for changes was chosen by, seeded and small; `npm run calibrate` has the whole table. */
import { describe, expect, it } from 'vitest';
import { simulateChanges, type ChangeScenario } from '../../calibrate/changes.ts';

const TESTS = 200;
/** Three standard errors of a share of so many tests. */
const slack = (share: number) => 3 * Math.sqrt((share * (1 - share)) / TESTS);
const eight = { both: 8, runs: [8, 8] } as const;

describe('the verdict on a change, 8 testers of 8 runs in each round', () => {
  it.each([
    { who: {}, named: 'alike' },
    { who: { differ: 0.2 }, named: 'who differ' },
    { who: { linger: 0.5 }, named: 'in whom it lingers' },
    { who: { differ: 0.2, linger: 0.3 }, named: 'who differ and in whom it lingers' },
  ])('finds a fall from 40 to 5 % in 80 % of tests with testers $named', ({ who }) => {
    const { verdicts } = simulateChanges({ ...eight, rate: [0.4, 0.05], ...who }, TESTS, 1);
    expect(verdicts.mended + verdicts.better).toBeGreaterThanOrEqual(0.8);
    expect(verdicts.worse).toBe(0);
  });

  const nothing: readonly ChangeScenario[] = [
    { ...eight, rate: [0.4, 0.4] },
    { ...eight, rate: [0.4, 0.4], differ: 0.2, linger: 0.5 },
    { both: 8, runs: [20, 5], rate: [0.1, 0.1], differ: 0.2, linger: 0.3 },
    { both: 2, onlyOne: 6, runs: [12, 6], rate: [0.4, 0.4], differ: 0.2, linger: 0.5 },
  ];
  it.each(nothing)(
    'calls a change that does nothing a success or a harm in 5 % of tests at most, $rate $runs',
    (one) => {
      const { verdicts, coverage } = simulateChanges(one, TESTS, 2);
      expect(verdicts.mended + verdicts.better).toBeLessThanOrEqual(1 / 32 + slack(1 / 32));
      expect(verdicts.worse).toBeLessThanOrEqual(1 / 64 + slack(1 / 64));
      expect(coverage).toBeGreaterThanOrEqual(0.95 - slack(0.95));
    },
  );

  it('calls mended what is just above the allowed rate in 5 % of tests at most', () => {
    const { verdicts } = simulateChanges(
      { both: 12, runs: [20, 20], rate: [0.4, 0.055], differ: 0.2 },
      TESTS,
      3,
    );
    expect(verdicts.mended).toBeLessThanOrEqual(0.05);
    expect(verdicts.better).toBeGreaterThan(0.9);
  });

  it('proves a new complaint among 40 others that are none, and falsely few of them', () => {
    const found = simulateChanges(
      { both: 8, runs: [12, 12], rate: [0.01, 0.4], others: { cells: 40, rate: 0.05 } },
      40,
      4,
    );
    expect(found.provedNew).toBeGreaterThan(0.8);
    expect(found.falselyNew).toBeLessThanOrEqual(0.1);
  });
});

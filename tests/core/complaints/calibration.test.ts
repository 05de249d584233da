/** The figures that the rules were chosen by, seeded and small; `npm run calibrate` gives the whole table. */
import { describe, expect, it } from 'vitest';
import { simulate, type Scenario } from '../../calibrate/simulate.ts';

const base: Scenario = {
  name: '',
  testers: 8,
  runs: 12,
  cells: 220,
  allowed: 0.05,
  background: 0.01,
  affected: 0,
  rate: 0,
  firstCellOnly: true,
};
const TESTS = 500;
/** Three standard errors of a share of so many tests. */
const slack = (share: number) => 3 * Math.sqrt((share * (1 - share)) / TESTS);

describe('calibration, 8 testers of 12 runs, 220 cells, allowed rate 5 %, background 1 %', () => {
  it.each([
    [4, 0.4, 0.78],
    [2, 0.6, 0.45],
    [6, 0.4, 0.98],
  ])('finds %d of 8 at %d in at least %d of tests', (affected, rate, atLeast) => {
    const { evidence } = simulate({ ...base, affected, rate }, TESTS, 1);
    expect(evidence.detectedEver).toBeGreaterThanOrEqual(atLeast - slack(atLeast));
    if (affected === 6) expect(evidence.medianRun).toBeLessThanOrEqual(6);
  });

  it('names one tester at 80 % as one tester and does not call it recurrent across testers', () => {
    const { evidence } = simulate({ ...base, affected: 1, rate: 0.8 }, TESTS, 2);
    expect(evidence.oneTester).toBeGreaterThanOrEqual(0.9);
    expect(evidence.detectedEver).toBeLessThanOrEqual(0.05);
  });

  it('hardly ever calls anything where every cell is exactly at the allowed rate; the eyeball always does', () => {
    const everything = { ...base, background: 0.05, firstCellOnly: false };
    const { evidence, eyeball } = simulate(everything, 40, 3);
    expect(evidence.falseEver).toBeLessThanOrEqual(0.1);
    expect(eyeball.falseEver).toBeGreaterThan(0.9);
  });
});

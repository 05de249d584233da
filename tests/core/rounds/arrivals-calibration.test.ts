/** How often a change is said to be there that is not, or not to be there that is; `npm run calibrate` has the whole table. */
import { describe, expect, it } from 'vitest';
import { arrivalBase, simulateArrivals, type ArrivalScenario } from '../../calibrate/arrivals.ts';

const TESTS = 500;
/** Three standard errors of a share of so many tests. */
const slack = (share: number) => 3 * Math.sqrt((share * (1 - share)) / TESTS);

const designs: readonly (readonly [string, Partial<ArrivalScenario>])[] = [
  ['eight pairs of one size', {}],
  ['two pairs each', { pairs: [2, 2] }],
  ['sizes that differ between the rounds', { sizes: 4 }],
  ['few pairs in several sizes', { pairs: [5, 8], sizes: 3 }],
  ['later pairs that scatter more', { pairs: [4, 8], laterSd: 1.5 }],
  ['readings in whole millimetres', { pairSd: 0.1, shoeSd: 0.05, step: 1 }],
  ['a gauge a round, with known error', { gauge: 0.5 }],
  ['a gauge a round, as good as is usual, and nobody knows it', { gauge: 0.2, gaugeKnown: false }],
];

describe.each(designs)('a change of 3 mm: %s', (_, more) => {
  const of = (truth: number) => simulateArrivals({ ...arrivalBase, ...more, truth }, TESTS, 21);

  it('is said to be there, whole or in part, in 5 % at most where nothing is', () => {
    const { arrived, partly, beyond } = of(0);
    expect(arrived + partly + beyond).toBeLessThanOrEqual(0.05 + slack(0.05));
  });

  it('is said not to be there in 5 % at most where all of it is', () => {
    const { not, partly } = of(3);
    expect(not).toBeLessThanOrEqual(0.05);
    expect(not + partly).toBeLessThanOrEqual(0.05 + slack(0.05));
  });
});

describe('a change of 3 mm on eight pairs each', () => {
  it('is told from nothing and from half of it nearly always', () => {
    const of = (truth: number) => simulateArrivals({ ...arrivalBase, truth }, TESTS, 22);
    expect(of(0).not).toBeGreaterThan(0.94);
    expect(of(1.5).partly).toBeGreaterThan(0.94);
    expect(of(3).arrived).toBeGreaterThan(0.94);
  });

  it('stays open where the pairs scatter by most of it', () => {
    const found = simulateArrivals({ ...arrivalBase, pairs: [2, 2], pairSd: 2 }, TESTS, 23);
    expect(found.open).toBeGreaterThan(0.5);
  });
});

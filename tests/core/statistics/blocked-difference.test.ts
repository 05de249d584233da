/** The difference of two sets within blocks, against figures worked by hand and against Welch. */
import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { blockedDifference, tQuantile, welch } from '../../../core/statistics/index.ts';

describe('a difference within blocks', () => {
  it('is the paired t where each block has one thing of each set', () => {
    // Differences 1, 2, 3: mean 2, standard deviation 1, standard error 1/√3, two degrees of freedom.
    const found = blockedDifference([
      { first: [10], second: [11] },
      { first: [20], second: [22] },
      { first: [30], second: [33] },
    ]);
    expect(found?.difference).toBeCloseTo(2, 12);
    expect(found?.error?.se).toBeCloseTo(1 / Math.sqrt(3), 12);
    expect(found?.error?.df).toBe(2);
    expect(found?.first).toEqual({ n: 3, mean: 20 });
    expect(found?.second).toEqual({ n: 3, mean: 22 });
  });

  it('weighs blocks by how much they tell, worked by hand', () => {
    // Weights 2·2/4 = 1 and 1·3/4 = 0.75; differences 1 and 3; mean (1 + 2.25)/1.75.
    const found = blockedDifference([
      { first: [0, 2], second: [1, 3] },
      { first: [10], second: [12, 13, 14] },
    ]);
    const difference = (1 + 0.75 * 3) / 1.75;
    const squares = 2 + 2 + 2 + (1 - difference) ** 2 + 0.75 * (3 - difference) ** 2;
    expect(found?.difference).toBeCloseTo(difference, 12);
    expect(found?.error?.df).toBe(8 - 2 - 1);
    expect(found?.scatter).toBeCloseTo(Math.sqrt(squares / 5), 12);
    expect(found?.error?.se).toBeCloseTo(Math.sqrt(squares / 5 / 1.75), 12);
  });

  it('is Welch where there is one block', () => {
    const [first, second] = [
      [1, 2, 4],
      [5, 9],
    ];
    const found = blockedDifference([{ first, second }]);
    const known = welch(second, first);
    if (!found?.error || !known) throw new Error('both are known');
    expect(found.difference).toBeCloseTo(known.difference, 12);
    expect(found.error.df).toBeCloseTo(known.df, 12);
    expect(found.difference - tQuantile(0.975, found.error.df) * found.error.se).toBeCloseTo(
      known.interval.lower,
      9,
    );
  });

  it('knows no error of one thing each, and nothing without things of both sets', () => {
    expect(blockedDifference([{ first: [1], second: [2] }])).toMatchObject({
      difference: 1,
      scatter: null,
      error: null,
    });
    expect(blockedDifference([{ first: [1], second: [] }])).toBeNull();
    expect(blockedDifference([])).toBeNull();
  });

  it('never falls below the scatter that is known to be there', () => {
    const flat = [
      { first: [1], second: [2] },
      { first: [3], second: [4] },
    ];
    expect(blockedDifference(flat)?.error?.se).toBe(0);
    expect(blockedDifference(flat, 0.1)?.scatter).toBe(0.1);
    expect(blockedDifference([{ first: [1, 1], second: [2, 2] }], 0.1)?.scatter).toBeCloseTo(
      0.1,
      12,
    );
  });

  it('does not mind what all things of a block share', () => {
    const value = fc.double({ min: -50, max: 50, noNaN: true });
    const block = fc.record({
      first: fc.array(value, { minLength: 1, maxLength: 4 }),
      second: fc.array(value, { minLength: 1, maxLength: 4 }),
      shared: value,
    });
    fc.assert(
      fc.property(fc.array(block, { minLength: 2, maxLength: 5 }), (blocks) => {
        const moved = blocks.map(({ first, second, shared }) => ({
          first: first.map((one) => one + shared),
          second: second.map((one) => one + shared),
        }));
        const [a, b] = [blockedDifference(blocks), blockedDifference(moved)];
        if (!a || !b) throw new Error('every block has both');
        expect(b.difference).toBeCloseTo(a.difference, 6);
        expect(b.error?.se ?? 0).toBeCloseTo(a.error?.se ?? 0, 6);
      }),
    );
  });
});

/** Shares of clustered trials, and what a change of a few units proves. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clusteredDifference,
  clusteredUpper,
  exactMcNemar,
  intraclassOfShares,
  pOfClusteredRise,
  signFlip,
  signFlipInterval,
  worthOfTrials,
  type UnitCount,
} from '../../../core/statistics/index.ts';

const units = (x: readonly number[], n: readonly number[]): UnitCount[] =>
  x.map((own, at) => ({ x: own, n: n[at] as number }));

// Weil CS, Food Cosmet Toxicol 1970;8:177-182: pups of 16 litters alive at 4 days, of those born.
const control = units(
  [13, 12, 9, 9, 8, 8, 12, 11, 9, 9, 8, 11, 4, 5, 7, 7],
  [13, 12, 9, 9, 8, 8, 13, 12, 10, 10, 9, 13, 5, 7, 10, 10],
);
const treated = units(
  [12, 11, 10, 9, 10, 9, 9, 8, 8, 4, 7, 4, 5, 3, 3, 0],
  [12, 11, 10, 9, 11, 10, 10, 9, 9, 5, 9, 7, 10, 6, 10, 7],
);

describe('the intraclass correlation of shares', () => {
  it('is that of Weil’s litters (values by analysis of variance in R 4.2.2)', () => {
    expect(intraclassOfShares([control])).toBeCloseTo(0.0290914, 7);
    expect(intraclassOfShares([treated])).toBeCloseTo(0.372135, 6);
  });

  it('of both sets lies between, and does not care that their shares differ', () => {
    const pooled = intraclassOfShares([control, treated]) as number;
    expect(pooled).toBeGreaterThan(0.0290914);
    expect(pooled).toBeLessThan(0.372135);
    const far = intraclassOfShares([units([1, 1, 1], [8, 8, 8]), units([7, 7, 7], [8, 8, 8])]);
    expect(far).toBeLessThan(0);
  });

  it('says nothing of single trials, single units, or trials that are all alike', () => {
    expect(intraclassOfShares([units([1, 0], [1, 1])])).toBeNull();
    expect(intraclassOfShares([units([3], [8])])).toBeNull();
    expect(intraclassOfShares([units([0, 0], [8, 8])])).toBeNull();
    expect(intraclassOfShares([])).toBeNull();
  });
});

describe('the difference of two clustered shares', () => {
  it('is Newcombe’s (1998, method 10: 56/70 and 48/80) for many units of one trial', () => {
    const set = (x: number, n: number) =>
      Array.from({ length: n }, (_, at) => ({ x: at < x ? 1 : 0, n: 1 }));
    const found = clusteredDifference(set(48, 80), set(56, 70), 0, { lower: 0.025, upper: 0.025 });
    const plain = { lower: 0.0524, upper: 0.3339 };
    // Student's t for 70 and 80 units is a little wider than the normal.
    expect(found?.difference).toBeCloseTo(0.2, 12);
    expect(found?.lower).toBeLessThan(plain.lower);
    expect(found?.upper).toBeGreaterThan(plain.upper);
  });

  it('of Weil’s litters is not proved at 5 %, though the plain chi-squared says p = 0.003', () => {
    const rho = intraclassOfShares([control, treated]) as number;
    expect(pOfClusteredRise(treated, control, 0)).toBeLessThan(0.005);
    const p = 2 * pOfClusteredRise(treated, control, rho);
    // The tester-level methods that are published for them: .0430 (Rao and Scott: .0444) to .0839.
    expect(p).toBeGreaterThan(0.02);
    expect(p).toBeLessThan(0.12);
  });

  it('has the p-value at which its interval touches zero', () => {
    const p = pOfClusteredRise(treated, control, 0.2);
    const at = (tail: number) =>
      clusteredDifference(treated, control, 0.2, { lower: tail, upper: tail })?.lower;
    expect(at(p * 0.99)).toBeLessThan(0);
    expect(at(p * 1.01)).toBeGreaterThan(0);
    expect(pOfClusteredRise(control, treated, 0.2)).toBe(0.5);
  });

  it('is null without units', () => {
    expect(clusteredDifference([], control, 0, { lower: 0.025, upper: 0.025 })).toBeNull();
  });

  it('gives trials that hang together fully the worth of one a unit', () => {
    expect(worthOfTrials(control, 1)).toBeCloseTo(16, 12);
    expect(worthOfTrials(control, 0)).toBe(158);
    // 0 of 12 units: 1 − .05^(1/12) (Clopper and Pearson).
    const none = units(new Array<number>(12).fill(0), new Array<number>(12).fill(5));
    expect(clusteredUpper(none, 1, 0.05)).toBeCloseTo(1 - 0.05 ** (1 / 12), 6);
    expect(clusteredUpper(none, 0, 0.05)).toBeCloseTo(1 - 0.05 ** (1 / 60), 6);
    expect(clusteredUpper(units([3], [3]), 0, 0.05)).toBe(1);
  });
});

// Darwin's maize (Fisher RA, The Design of Experiments, 1935, section 21), eighths of an inch.
const maize = [49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48];

describe('the interval of the sign-flip test', () => {
  it('is, for 12 of Darwin’s pairs, the interval that the test itself does not reject', () => {
    const twelve = maize.slice(0, 12);
    const { lower, upper, method } = signFlipInterval(twelve, { lower: 0.025, upper: 0.025 });
    expect(method).toBe('exact');
    const p = (centre: number) => signFlip(twelve.map((d) => d - centre)).pGreater;
    expect(p((lower as number) - 1e-6)).toBeLessThanOrEqual(0.025);
    expect(p((lower as number) + 1e-6)).toBeGreaterThan(0.025);
    const q = (centre: number) => signFlip(twelve.map((d) => centre - d)).pGreater;
    expect(q((upper as number) + 1e-6)).toBeLessThanOrEqual(0.025);
    expect(q((upper as number) - 1e-6)).toBeGreaterThan(0.025);
  });

  it('of all 15 holds zero, as p is .0263 (863 of 32768), and the middle', () => {
    const found = signFlipInterval(maize, { lower: 0.025, upper: 0.025 });
    expect(found.method).toBe('normal');
    expect(found.lower).toBeLessThanOrEqual(0);
    expect(found.upper).toBeGreaterThan(25);
    expect(signFlipInterval(maize, { lower: 0.027, upper: 0.025 }).lower).toBeGreaterThan(0);
  });

  it('needs five differences for a bound at 1 in 32, six at 1 in 64', () => {
    const tails = { lower: 1 / 32, upper: 1 / 64 };
    expect(signFlipInterval([1, 2, 3, 4], tails)).toMatchObject({ lower: null, upper: null });
    expect(signFlipInterval([1, 2, 3, 4, 5], tails)).toMatchObject({ lower: 1, upper: null });
    expect(signFlipInterval([1, 2, 3, 4, 5, 6], tails)).toMatchObject({ upper: 6 });
    expect(signFlipInterval([], tails)).toMatchObject({ lower: null, upper: null });
  });

  it('leaves zero out exactly where the test rejects it, ties and noughts included', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -8, max: 8 }), { minLength: 5, maxLength: 15 }),
        (eighths) => {
          const differences = eighths.map((d) => d / 8);
          const tail = 1 / 32;
          const { lower, upper } = signFlipInterval(differences, { lower: tail, upper: tail });
          const less = signFlip(differences.map((d) => -d)).pGreater;
          expect((lower as number) > 0).toBe(signFlip(differences).pGreater <= tail);
          expect((upper as number) < 0).toBe(less <= tail);
        },
      ),
      { numRuns: 60 },
    );
  });
});

it('McNemar’s exact test has the values of the binomial table', () => {
  // Two-sided, by hand from the binomial: 5 to 0, 6 to 0, 8 to 1, 12 to 2.
  expect(exactMcNemar(5, 0)).toBeCloseTo(0.0625, 12);
  expect(exactMcNemar(0, 6)).toBeCloseTo(0.03125, 12);
  expect(exactMcNemar(8, 1)).toBeCloseTo(0.0390625, 12);
  expect(exactMcNemar(12, 2)).toBeCloseTo(0.012939453125, 12);
  // Agresti A, Categorical Data Analysis, 1990, p. 350: 150 and 86.
  expect(exactMcNemar(150, 86)).toBeCloseTo(3.7159e-5, 8);
  expect(exactMcNemar(0, 0)).toBe(1);
});

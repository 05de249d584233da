import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { powerOfComfort, powerOfFall, powerOfSeeing } from '../../../core/panel/index.ts';
import {
  betaBinomialAll,
  binomialTest,
  fewestUnits,
  pairedTPower,
  seenOnce,
  seededChance,
  signTestPower,
} from '../../../core/statistics/index.ts';

const sum = (list: ArrayLike<number>) => Array.from(list).reduce((a, b) => a + b, 0);

describe('the sign test', () => {
  // Computed independently from the definition; sizes of the approximate formula: Connor 1987.
  it.each([
    [0.6, 0.1, 22, 0.446, 0.75],
    [0.5, 0, 15, 0.613, 0.979],
    [0.5, 0.05, 21, 0.42, 0.785],
    [0.4, 0, 19, 0.335, 0.874],
    [0.4, 0.05, 29, 0.226, 0.582],
    [0.3, 0.05, 45, 0.08, 0.321],
  ])('with %f better and %f worse needs %i units', (better, worse, needed, at12, at20) => {
    expect(fewestUnits((n) => signTestPower(n, better, worse), 0.8, 100)).toBe(needed);
    expect(signTestPower(12, better, worse)).toBeCloseTo(at12, 3);
    expect(signTestPower(20, better, worse)).toBeCloseTo(at20, 3);
  });

  it('is what counting every outcome gives', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 14 }),
        fc.double({ min: 0.05, max: 0.7, noNaN: true }),
        fc.double({ min: 0.01, max: 0.25, noNaN: true }),
        (n, better, worse) => {
          let power = 0;
          const factorial = (k: number): number => (k < 2 ? 1 : k * factorial(k - 1));
          for (let up = 0; up <= n; up++)
            for (let down = 0; up + down <= n; down++) {
              if (up <= down || binomialTest(up, up + down) > 0.05) continue;
              const still = n - up - down;
              power +=
                (factorial(n) / factorial(up) / factorial(down) / factorial(still)) *
                better ** up *
                worse ** down *
                (1 - better - worse) ** still;
            }
          expect(signTestPower(n, better, worse)).toBeCloseTo(power, 10);
        },
      ),
      { numRuns: 20 },
    );
  });
});

describe('the paired t test', () => {
  // n of R's power.t.test (type "paired", 80 % power unless said).
  it.each([
    [10, 15, 20],
    [10, 21.75, 40],
    [0.5, 1, 34],
    [0.8, 1, 15],
    [1, 1, 10],
  ])('for a difference of %f at a spread of %f needs %i units', (difference, sd, needed) => {
    expect(fewestUnits((n) => pairedTPower(n, difference, sd), 0.8, 100)).toBe(needed);
  });

  it.each([
    [19.667, 10, 15, 0.8],
    [33.37, 0.5, 1, 0.8],
    [14.3, 0.8, 1, 0.8],
    [9.94, 1, 1, 0.8],
  ])('has at %f units the power that they were solved for', (units, difference, sd, power) => {
    expect(pairedTPower(units, difference, sd)).toBeCloseTo(power, 3);
  });

  it('needs 44 units for 90 % at half a standard deviation, and gives α / 2 where nothing is', () => {
    expect(fewestUnits((n) => pairedTPower(n, 0.5, 1), 0.9, 100)).toBe(44);
    for (const units of [2, 3, 5, 20, 150]) expect(pairedTPower(units, 0, 1)).toBeCloseTo(0.025, 6);
  });
});

describe('seeing it once', () => {
  it('takes n = ln(1 − C) / ln(1 − p), rounded up', () => {
    const needed = (rate: number, sure: number) => fewestUnits((n) => seenOnce(n, rate), sure, 100);
    expect([0.05, 0.1, 0.2, 0.3].map((rate) => needed(rate, 0.95))).toEqual([59, 29, 14, 9]);
    expect([0.05, 0.1, 0.2, 0.3].map((rate) => needed(rate, 0.9))).toEqual([45, 22, 11, 7]);
    expect(powerOfSeeing(12, 0.2).testersNeeded).toBe(14);
    expect(powerOfSeeing(12, 0).testersNeeded).toBeNull();
  });
});

describe('runs of testers who differ', () => {
  it('have the mean and the variance of the beta-binomial distribution', () => {
    for (const [n, mean, alike] of [
      [8, 0.3, 0.2],
      [12, 0.05, 0.5],
      [5, 0.9, 0],
    ] as const) {
      const all = betaBinomialAll(n, mean, alike);
      const first = sum(Array.from(all, (p, x) => p * x));
      const second = sum(Array.from(all, (p, x) => p * (x - first) ** 2));
      expect(sum(all)).toBeCloseTo(1, 10);
      expect(first).toBeCloseTo(n * mean, 10);
      expect(second).toBeCloseTo(n * mean * (1 - mean) * (1 + (n - 1) * alike), 10);
    }
  });
});

describe('a complaint that became rarer', () => {
  it('is seen as often as a simulation sees it', () => {
    const question = { testers: 8, runs: 8, before: 0.4, after: 0.05, alike: 0.2 };
    const chance = seededChance(11);
    const draw = (all: Float64Array) => {
      let left = chance.share();
      return Math.max(
        0,
        all.findIndex((p) => (left -= p) < 0),
      );
    };
    const tables = [0.4, 0.05].map((mean) => betaBinomialAll(8, mean, 0.2));
    const tests = 4000;
    let seen = 0;
    for (let test = 0; test < tests; test++) {
      let [up, down] = [0, 0];
      for (let tester = 0; tester < 8; tester++) {
        const [had, has] = tables.map(draw) as [number, number];
        if (has < had) up++;
        if (has > had) down++;
      }
      if (up > down && binomialTest(up, up + down) <= 0.05) seen++;
    }
    const { power } = powerOfFall(question);
    expect(Math.abs(seen / tests - power)).toBeLessThan(4 * Math.sqrt(0.25 / tests));
  });

  it('is seen more often with more runs, more testers and a steeper fall', () => {
    const power = (testers: number, runs: number, after: number) =>
      powerOfFall({ testers, runs, before: 0.4, after }).power;
    expect(power(12, 8, 0.05)).toBeGreaterThan(power(8, 8, 0.05));
    expect(power(8, 12, 0.05)).toBeGreaterThan(power(8, 4, 0.05));
    expect(power(8, 8, 0.02)).toBeGreaterThan(power(8, 8, 0.2));
    expect(power(5, 50, 0)).toBe(0);
  });

  it('needs more testers than there are where there is no fall', () => {
    expect(powerOfFall({ testers: 8, runs: 8, before: 0.2, after: 0.2 }).testersNeeded).toBeNull();
    expect(powerOfComfort(8, 0).testersNeeded).toBeNull();
    expect(powerOfComfort(12, 10).testersNeeded).toBe(20);
  });
});

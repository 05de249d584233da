import { describe, expect, it } from 'vitest';
import { BETS, evidenceOverUnits, logUnitEvidence } from '../../../core/statistics/index.ts';

const ALLOWED = 0.2;

/** The e-value from its definition, set by set. */
const byDefinition = (x: readonly number[], n: readonly number[], allowed: number): number => {
  const likelihood = (i: number, t: number) => {
    const q = allowed + t * (1 - allowed);
    const [xi, ni] = [x[i] as number, n[i] as number];
    return (q / allowed) ** xi * ((1 - q) / (1 - allowed)) ** (ni - xi);
  };
  const sets = (from: readonly number[], k: number): number[][] =>
    k === 0
      ? [[]]
      : from.flatMap((first, at) =>
          sets(from.slice(at + 1), k - 1).map((rest) => [first, ...rest]),
        );
  const without = x.map((_, j) => {
    const others = x.map((_, i) => i).filter((i) => i !== j);
    return BETS.reduce((sum, bet) => {
      if ('w' in bet)
        return (
          sum +
          bet.weight *
            others.reduce((all, i) => all * (1 - bet.w + bet.w * likelihood(i, bet.t)), 1)
        );
      const all = sets(others, Math.min(bet.k, others.length));
      const mean =
        all.reduce((s, set) => s + set.reduce((p, i) => p * likelihood(i, bet.t), 1), 0) /
        all.length;
      return sum + bet.weight * mean;
    }, 0);
  });
  return Math.min(...without);
};

const evidence = (x: readonly number[], n: readonly number[], allowed: number): number =>
  Math.exp(
    evidenceOverUnits(
      n,
      allowed,
    )(x.flatMap((count, i) => (count > 0 ? [{ x: count, n: n[i] as number }] : []))),
  );

describe('evidence on rates', () => {
  it('weights sum to 1', () => {
    expect(BETS.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
  });

  it.each([
    [
      [0, 0, 0, 0],
      [3, 4, 3, 0],
    ],
    [
      [3, 0, 2, 1],
      [3, 4, 3, 2],
    ],
    [
      [5, 5, 5, 5, 1, 0, 0],
      [12, 12, 12, 6, 6, 6, 0],
    ],
    [
      [2, 2],
      [3, 9],
    ],
  ])('is what its definition says: %j of %j', (x, n) => {
    for (const allowed of [0.01, 0.05, 0.3]) {
      const expected = byDefinition(x, n, allowed);
      expect(evidence(x, n, allowed) / expected).toBeCloseTo(1, 10);
    }
  });

  /**
   * Every sequence of reports of three units in turn, by hand of the definition of an e-process: its mean at
   * the reading at which one stops is at most 1, whatever the one unit does that may be above the rate.
   */
  it.each([0, 0.2, 0.7, 1])(
    'has a mean of at most 1 at any stopping rule, with one unit at %d',
    (free) => {
      const rates = [ALLOWED, ALLOWED, free];
      for (const stopAt of [1.5, 3, 10, Infinity]) {
        let mean = 0;
        for (let code = 0; code < 2 ** 9; code++) {
          const [x, n] = [
            [0, 0, 0],
            [0, 0, 0],
          ];
          let probability = 1;
          let e = 1;
          let stopped = 9;
          for (let turn = 0; turn < 9; turn++) {
            const unit = turn % 3;
            const report = (code >> turn) & 1;
            probability *= report ? (rates[unit] as number) : 1 - (rates[unit] as number);
            if (stopped < 9) continue;
            n[unit] = (n[unit] as number) + 1;
            x[unit] = (x[unit] as number) + report;
            e = evidence(x, n, ALLOWED);
            if (e >= stopAt) stopped = turn;
          }
          mean += probability * e;
        }
        expect(mean).toBeLessThanOrEqual(1 + 1e-9);
      }
    },
  );

  it('has a mean of exactly 1 for one unit at the rate, and less below it', () => {
    const meanAt = (p: number) => {
      let mean = 0;
      for (let x = 0, ways = 1; x <= 12; ways = (ways * (12 - x)) / ++x)
        mean += ways * p ** x * (1 - p) ** (12 - x) * Math.exp(logUnitEvidence(x, 12, ALLOWED));
      return mean;
    };
    expect(meanAt(ALLOWED)).toBeCloseTo(1, 10);
    expect(meanAt(0.1)).toBeLessThan(1);
    expect(meanAt(0.5)).toBeGreaterThan(10);
  });

  it('never finds two where one unit has all the reports, and needs two units', () => {
    const n = [200, 200, 200, 200];
    expect(evidence([200, 0, 0, 0], n, 0.05)).toBeLessThan(1);
    expect(evidence([200, 12, 0, 0], n, 0.05)).toBeLessThan(20);
    expect(evidence([5], [5], 0.05)).toBe(1);
    expect(evidence([], [], 0.05)).toBe(1);
  });

  it('stands at the ends: rates of 0 and 1, and thousands of trials', () => {
    expect(evidence([5, 5], [5, 5], 1)).toBe(1);
    expect(evidence([1, 1], [10, 10], 0)).toBeGreaterThan(100);
    const judge = evidenceOverUnits([5000, 5000, 5000], 0.05);
    const many = judge([
      { x: 4000, n: 5000 },
      { x: 3000, n: 5000 },
    ]);
    expect(Number.isFinite(many)).toBe(true);
    expect(many).toBeGreaterThan(1000);
    expect(logUnitEvidence(3, 9, 1)).toBe(0);
  });

  it('rises with each report and falls with each run without one', () => {
    const base = evidence([4, 3, 1], [8, 8, 8], 0.05);
    expect(evidence([4, 4, 1], [8, 9, 8], 0.05)).toBeGreaterThan(base);
    expect(evidence([4, 3, 1], [8, 9, 8], 0.05)).toBeLessThan(base);
  });
});

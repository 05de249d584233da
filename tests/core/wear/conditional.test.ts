/**
 * The closed form at fixed spreads and bend, against the same normal model written out as dense matrices of
 * all readings (textbook conditioning of a joint normal distribution).
 */
import { describe, expect, it } from 'vitest';
import {
  conditional,
  covarianceOfPairs,
  covarianceWithin,
  ofNewPair,
  ofPair,
  type Spreads,
} from '../../../core/wear/conditional.ts';

type Matrix = number[][];

/** Solves A X = B and gives ln |det A|, by Gauss-Jordan with pivoting. */
const solve = (a: Matrix, b: Matrix): { readonly x: Matrix; readonly logDet: number } => {
  const n = a.length;
  const rows = a.map((row, at) => [...row, ...(b[at] as number[])]);
  let logDet = 0;
  for (let column = 0; column < n; column++) {
    let best = column;
    for (let row = column + 1; row < n; row++)
      if (
        Math.abs((rows[row] as number[])[column] as number) >
        Math.abs((rows[best] as number[])[column] as number)
      )
        best = row;
    [rows[column], rows[best]] = [rows[best] as number[], rows[column] as number[]];
    const pivotRow = rows[column] as number[];
    const pivot = pivotRow[column] as number;
    logDet += Math.log(Math.abs(pivot));
    for (let k = 0; k < pivotRow.length; k++) pivotRow[k] = (pivotRow[k] as number) / pivot;
    for (const [at, row] of rows.entries()) {
      if (at === column) continue;
      const factor = row[column] as number;
      for (let k = 0; k < row.length; k++)
        row[k] = (row[k] as number) - factor * (pivotRow[k] as number);
    }
  }
  return { x: rows.map((row) => row.slice(n)), logDet };
};

const spreads: Spreads = { start: 0.7, pair: 0.4, error: 0.25 };
const prior = {
  startMean: 0.3,
  startPrecision: 1 / 4,
  changeMean: -0.5,
  changePrecision: 1 / 0.81,
};
const readings = [
  { pair: 0, g: 0, y: 0.2 },
  { pair: 0, g: 0.4, y: -0.1 },
  { pair: 0, g: 0.9, y: -0.9 },
  { pair: 1, g: 0, y: 1.1 },
  { pair: 1, g: 0.6, y: 0.4 },
  { pair: 2, g: 0.5, y: -0.3 },
];
const sums = new Float64Array(18);
for (const { pair, g, y } of readings)
  for (const [at, add] of [1, g, g * g, y, g * y, y * y].entries())
    sums[pair * 6 + at] = (sums[pair * 6 + at] as number) + add;

/** A linear form: of the means, of the pairs' own departures, mean included through the means. */
interface Line {
  readonly pair: number;
  readonly c: number;
  readonly g: number;
}
/** Prior covariance of two values; a pair number of its own for a new pair, null for the means. */
const covariance = (one: Line, other: Line): number => {
  const means =
    (one.c * other.c) / prior.startPrecision + (one.g * other.g) / prior.changePrecision;
  const own = spreads.start ** 2 * one.c * other.c + spreads.pair ** 2 * one.g * other.g;
  return means + (one.pair === other.pair && one.pair >= 0 ? own : 0);
};
const meanOf = ({ c, g }: Line) => c * prior.startMean + g * prior.changeMean;
const observed = readings.map(({ pair, g }): Line => ({ pair, c: 1, g }));
const V = observed.map((one, i) =>
  observed.map((other, j) => covariance(one, other) + (i === j ? spreads.error ** 2 : 0)),
);
/** Posterior mean and covariance of two lines by brute force. */
const dense = (one: Line, other: Line) => {
  const away = readings.map(({ y }, at) => [y - meanOf(observed[at] as Line)]);
  const cross = (line: Line) => observed.map((seen) => [covariance(seen, line)]);
  const dot = (a: Matrix, b: Matrix) =>
    a.reduce((sum, row, at) => sum + (row[0] as number) * ((b[at] as number[])[0] as number), 0);
  return {
    mean: meanOf(one) + dot(cross(one), solve(V, away).x),
    covariance: covariance(one, other) - dot(cross(one), solve(V, cross(other)).x),
  };
};
const MEANS = -1;
const NEW = 9;
const start = (pair: number): Line => ({ pair, c: 1, g: 0 });
const change = (pair: number): Line => ({ pair, c: 0, g: 1 });

describe('closed form against dense linear algebra', () => {
  const means = conditional(sums, spreads, prior);

  it('probability of the readings', () => {
    const away = readings.map(({ y }, at) => [y - meanOf(observed[at] as Line)]);
    const { x, logDet } = solve(V, away);
    const square = x.reduce((s, [v = 0], at) => s + v * ((away[at] as number[])[0] as number), 0);
    const log = -0.5 * (readings.length * Math.log(2 * Math.PI) + logDet + square);
    expect(means.logLikelihood).toBeCloseTo(log, 10);
  });

  it.each([
    ['means', MEANS, means],
    ['a new pair', NEW, ofNewPair(spreads, means)],
    ['pair of three readings', 0, ofPair(sums, 0, spreads, means)],
    ['pair of two readings', 1, ofPair(sums, 1, spreads, means)],
    ['pair of one reading', 2, ofPair(sums, 2, spreads, means)],
  ] as const)('start and change of %s', (_, pair, own) => {
    expect(own.start).toBeCloseTo(dense(start(pair), start(pair)).mean, 10);
    expect(own.change).toBeCloseTo(dense(change(pair), change(pair)).mean, 10);
    expect(own.startVariance).toBeCloseTo(dense(start(pair), start(pair)).covariance, 10);
    expect(own.covariance).toBeCloseTo(dense(start(pair), change(pair)).covariance, 10);
    expect(own.changeVariance).toBeCloseTo(dense(change(pair), change(pair)).covariance, 10);
  });

  it('covariance within a pair and between pairs', () => {
    const at = (pair: number, g: number): Line => ({ pair, c: 1, g });
    const within = covarianceWithin(ofPair(sums, 0, spreads, means), 0.3, 1.2);
    expect(within).toBeCloseTo(dense(at(0, 0.3), at(0, 1.2)).covariance, 10);
    for (const [first, second] of [
      [0, 1],
      [1, 2],
      [2, NEW],
    ] as const) {
      const numbers = [first, second === NEW ? undefined : second] as const;
      expect(covarianceOfPairs(sums, numbers, spreads, means, [0.3, 1.2])).toBeCloseTo(
        dense(at(first, 0.3), at(second, 1.2)).covariance,
        10,
      );
    }
  });

  it('spreads of zero: all pairs alike', () => {
    const none = { start: 0, pair: 0, error: 0.25 };
    const all = conditional(sums, none, prior);
    const own = ofPair(sums, 0, none, all);
    expect(own).toEqual({
      start: all.start,
      change: all.change,
      startVariance: all.startVariance,
      covariance: all.covariance,
      changeVariance: all.changeVariance,
    });
  });
});

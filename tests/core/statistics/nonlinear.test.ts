import { describe, expect, it } from 'vitest';
import { nonlinearLeastSquares } from '../../../core/statistics/index.ts';
import reference from '../../reference/nist-nls.json' with { type: 'json' };

type Nine = readonly [number, number, number, number, number, number, number, number, number];
type Model = (b: Nine, x: number, x2: number) => number;

const { exp } = Math;
const gauss: Model = ([b1, b2, b3, b4, b5, b6, b7, b8], x) =>
  b1 * exp(-b2 * x) + b3 * exp(-((x - b4) ** 2) / b5 ** 2) + b6 * exp(-((x - b7) ** 2) / b8 ** 2);
const chwirut: Model = ([b1, b2, b3], x) => exp(-b1 * x) / (b2 + b3 * x);
const lanczos: Model = ([b1, b2, b3, b4, b5, b6], x) =>
  b1 * exp(-b2 * x) + b3 * exp(-b4 * x) + b5 * exp(-b6 * x);

const MODELS: Readonly<Record<string, Model>> = {
  Misra1a: ([b1, b2], x) => b1 * (1 - exp(-b2 * x)),
  Misra1b: ([b1, b2], x) => b1 * (1 - (1 + (b2 * x) / 2) ** -2),
  Misra1c: ([b1, b2], x) => b1 * (1 - (1 + 2 * b2 * x) ** -0.5),
  Misra1d: ([b1, b2], x) => (b1 * b2 * x) / (1 + b2 * x),
  Chwirut1: chwirut,
  Chwirut2: chwirut,
  DanWood: ([b1, b2], x) => b1 * x ** b2,
  Lanczos1: lanczos,
  Lanczos2: lanczos,
  Lanczos3: lanczos,
  Gauss1: gauss,
  Gauss2: gauss,
  Gauss3: gauss,
  // The response is the logarithm of what was measured.
  Nelson: ([b1, b2, b3], x1, x2) => b1 - b2 * x1 * exp(-b3 * x2),
  MGH09: ([b1, b2, b3, b4], x) => (b1 * (x ** 2 + x * b2)) / (x ** 2 + x * b3 + b4),
  MGH10: ([b1, b2, b3], x) => b1 * exp(b2 / (x + b3)),
  MGH17: ([b1, b2, b3, b4, b5], x) => b1 + b2 * exp(-x * b4) + b3 * exp(-x * b5),
  Thurber: ([b1, b2, b3, b4, b5, b6, b7], x) =>
    (b1 + b2 * x + b3 * x ** 2 + b4 * x ** 3) / (1 + b5 * x + b6 * x ** 2 + b7 * x ** 3),
  Bennett5: ([b1, b2, b3], x) => b1 * (b2 + x) ** (-1 / b3),
  Kirby2: ([b1, b2, b3, b4, b5], x) => (b1 + b2 * x + b3 * x ** 2) / (1 + b4 * x + b5 * x ** 2),
  ENSO: ([b1, b2, b3, b4, b5, b6, b7, b8, b9], x) => {
    const turn = 2 * Math.PI * x;
    return (
      b1 +
      b2 * Math.cos(turn / 12) +
      b3 * Math.sin(turn / 12) +
      b5 * Math.cos(turn / b4) +
      b6 * Math.sin(turn / b4) +
      b8 * Math.cos(turn / b7) +
      b9 * Math.sin(turn / b7)
    );
  },
  BoxBOD: ([b1, b2], x) => b1 * (1 - exp(-b2 * x)),
  Rat42: ([b1, b2, b3], x) => b1 / (1 + exp(b2 - b3 * x)),
  Rat43: ([b1, b2, b3, b4], x) => b1 / (1 + exp(b2 - b3 * x)) ** (1 / b4),
  Roszman1: ([b1, b2, b3, b4], x) => b1 - b2 * x - Math.atan(b3 / (x - b4)) / Math.PI,
  Eckerle4: ([b1, b2, b3], x) => (b1 / b2) * exp(-0.5 * ((x - b3) / b2) ** 2),
};

/** Significant digits in agreement with what is certified: the fewest over the values. */
const digits = (found: readonly (number | null)[] | null, certified: readonly number[]): number =>
  Math.min(
    ...certified.map((value, i) => {
      const miss = Math.abs(((found?.[i] ?? NaN) - value) / value);
      return miss > 0 ? -Math.log10(miss) : miss === 0 ? 16 : -Infinity;
    }),
  );

// NIST/ITL Statistical Reference Datasets, nonlinear regression.
describe('nonlinear least squares: the certified values of NIST', () => {
  for (const [name, set] of Object.entries(reference.datasets))
    for (const start of ['start1', 'start2'] as const)
      it(`${name} from ${start}`, () => {
        const model = MODELS[name] as Model;
        const y = name === 'Nelson' ? set.y.map(Math.log) : set.y;
        const fit = nonlinearLeastSquares(
          y,
          (b, row) => {
            const [x1, x2 = NaN] = [set.x[row] as number | number[]].flat();
            return model(b as unknown as Nine, x1 as number, x2);
          },
          set[start],
        );
        expect(fit.converged).toBe(true);
        expect(fit.degreesOfFreedom).toBe(set.df);
        expect(digits(fit.parameters, set.certified)).toBeGreaterThan(7);
        // Residuals of 1e-13 beside values of 1: their own digits are lost to rounding in y.
        if (name === 'Lanczos1') return;
        expect(digits(fit.standardErrors, set.certifiedSE)).toBeGreaterThan(6);
        expect(digits([fit.residualSumOfSquares], [set.rss])).toBeGreaterThan(9);
        expect(digits([fit.residualSd], [set.rsd])).toBeGreaterThan(9);
      });
});

describe('nonlinear least squares: its edges', () => {
  const { x, y, start1, certified, certifiedSE } = reference.datasets.Misra1a;
  const curve = (b: readonly number[], row: number): number =>
    (b[0] as number) * (1 - exp(-(b[1] as number) * (x[row] as number)));

  it('takes the derivatives it is given', () => {
    const fit = nonlinearLeastSquares(y, curve, start1, ([b1, b2], row) => {
      const at = x[row] as number;
      const left = exp(-(b2 as number) * at);
      return [1 - left, (b1 as number) * at * left];
    });
    expect(digits(fit.parameters, certified)).toBeGreaterThan(9);
    expect(digits(fit.standardErrors, certifiedSE)).toBeGreaterThan(9);
    const [se1, se2] = fit.standardErrors as readonly [number, number];
    const covariance = fit.covariance as readonly (readonly number[])[];
    expect(covariance[0]?.[0]).toBeCloseTo(se1 ** 2, 9);
    expect(covariance[0]?.[1]).toBe(covariance[1]?.[0]);
    expect(Math.abs(covariance[0]?.[1] as number)).toBeLessThan(se1 * se2);
  });

  it('gives no standard error to what the data do not settle', () => {
    const twins = nonlinearLeastSquares([1, 2, 4], ([a = 0, b = 0]) => a + b, [1, 0]);
    expect(twins.standardErrors).toBeNull();
    expect((twins.parameters[0] as number) + (twins.parameters[1] as number)).toBeCloseTo(7 / 3, 9);
    expect(twins.converged).toBe(false);
  });

  it('comes back where a parameter does nothing, or the start is as good as any', () => {
    const idle = nonlinearLeastSquares([0, 2], ([a = 0, b = 0]) => a + 0 * b, [1, 0]);
    expect(idle.parameters).toEqual([1, 0]);
    expect(idle.converged).toBe(false);
    const elsewhere = nonlinearLeastSquares([0, 2, 4], ([a = 0, b = 0]) => a + 0 * b, [1, 5]);
    expect(elsewhere.parameters[0]).toBeCloseTo(2, 9);
    expect(elsewhere.parameters[1]).toBe(5);
    const flat = nonlinearLeastSquares([1, 2], ([a = 0]) => Math.sign(a), [3]);
    expect(flat.parameters).toEqual([3]);
    expect(flat.standardErrors).toBeNull();
  });

  it('turns back from where the curve is not a number', () => {
    const fit = nonlinearLeastSquares(
      [1, 1.5, 1.75],
      ([a = 0], row) => Math.sqrt(a) + row / 3,
      [400],
    );
    expect(fit.converged).toBe(true);
    expect(fit.parameters[0]).toBeCloseTo((13 / 12) ** 2, 9);
  });

  it('meets as many rows as parameters exactly, with no degree of freedom', () => {
    const exact = nonlinearLeastSquares([2, 8], ([a = 0, b = 0], row) => a * exp(b * row), [1, 1]);
    expect(exact.parameters[0]).toBeCloseTo(2, 9);
    expect(exact.parameters[1]).toBeCloseTo(Math.log(4), 9);
    expect(exact.residualSd).toBeNull();
    expect(exact.standardErrors).toBeNull();
    expect(exact.converged).toBe(true);
  });

  it('refuses too few rows, and a start where the curve is not a number', () => {
    expect(() => nonlinearLeastSquares([1], curve, start1)).toThrow(RangeError);
    expect(() =>
      nonlinearLeastSquares([1, 2], ([a = 0, b = 0]) => a + Math.log(b), [1, -1]),
    ).toThrow(RangeError);
  });
});

import { describe, expect, it } from 'vitest';
import { linearMixedModel, type MixedRow } from '../../../core/statistics/index.ts';
import reference from '../../reference/mixed-models.json' with { type: 'json' };

interface Data {
  readonly y: readonly number[];
  readonly group: readonly string[];
  readonly Days?: readonly number[];
  readonly age?: readonly number[];
  readonly Sex?: readonly string[];
}

interface Fit {
  readonly dataset: string;
  readonly model: string;
  readonly fixed: readonly string[];
  readonly random: readonly string[];
  readonly correlated: boolean;
  readonly method: string;
  readonly expected: {
    readonly fixed: readonly number[];
    readonly se: readonly number[];
    readonly vcov?: readonly (readonly number[])[];
    readonly sd: readonly number[];
    readonly correlation: number | null;
    readonly sigma: number;
    readonly logLik: number;
    readonly levels?: readonly string[];
    readonly blup?: readonly (readonly number[])[];
    readonly condSD?: readonly (readonly number[])[];
  };
}

const rowsOf = ({ dataset, fixed, random }: Fit): MixedRow[] => {
  const data = (reference.data as Readonly<Record<string, Data>>)[dataset] as Data;
  const term = (name: string, row: number): number => {
    const age = data.age?.[row] as number;
    const female = data.Sex?.[row] === 'Female' ? 1 : 0;
    switch (name) {
      case '1':
        return 1;
      case 'Days':
        return data.Days?.[row] as number;
      case 'age':
        return age;
      case 'cAge':
        return age - 11;
      case 'Female':
        return female;
      case 'cAge:Female':
        return (age - 11) * female;
      default:
        throw new Error(name);
    }
  };
  return data.y.map((y, row) => ({
    y,
    group: data.group[row] as string,
    fixed: fixed.map((name) => term(name, row)),
    random: random.map((name) => term(name, row)),
  }));
};

const near = (found: number | null | undefined, expected: number, relative = 1e-5) => {
  expect(Math.abs((found ?? NaN) - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));
};

// Data published by Belenky 2003, Potthoff & Roy 1964, Devore 2000, Davies 1972, Box & Tiao 1973, as named
// in the file; values by lme4 1.1-31 and nlme 3.1-162.
describe('linear mixed models: the values of lme4 and nlme', () => {
  for (const fit of reference.fits as readonly Fit[])
    it(`${fit.dataset}, ${fit.method}: ${fit.model}`, () => {
      const { expected, correlated } = fit;
      const method = fit.method === 'ML' ? 'ML' : 'REML';
      const model = linearMixedModel(rowsOf(fit), { method, correlated });
      expect(model.converged).toBe(true);
      expected.fixed.forEach((value, j) => near(model.fixed[j], value));
      expected.se.forEach((value, j) => near(model.standardErrors[j], value));
      expected.vcov?.forEach((row, i) =>
        row.forEach((value, j) => near(model.covariance[i]?.[j], value, 5e-5)),
      );
      expected.sd.forEach((value, j) => near(model.sd[j], value));
      near(model.sigma, expected.sigma);
      near(model.logLik, expected.logLik, 1e-9);
      expect(model.criterion).toBe(-2 * model.logLik);
      if (expected.correlation !== null)
        near(model.correlation[0]?.[1], expected.correlation, 5e-5);
      expect(model.singular).toBe(expected.sd.includes(0));
      expected.levels?.forEach((level, g) => {
        const found = model.groups.find(({ group }) => group === level);
        expected.blup?.[g]?.forEach((value, j) =>
          expect(Math.abs((found?.effects[j] ?? NaN) - value)).toBeLessThan(
            1e-5 * (expected.sd[j] as number),
          ),
        );
        expected.condSD?.[g]?.forEach((value, j) => near(found?.conditionalSd[j], value));
      });
    });
});

describe('linear mixed models: what can be worked out by hand', () => {
  const balanced = (means: readonly number[], within: readonly number[]): MixedRow[] =>
    means.flatMap((mean, g) =>
      within.map((left) => ({ y: mean + left, group: String(g), fixed: [1], random: [1] })),
    );

  it('balanced groups: the estimates of the analysis of variance', () => {
    const means = Array.from({ length: 1000 }, (_, g) => 20 * Math.sin(g * g));
    const within = [-4, -3, -2, -1, 0, 0, 1, 2, 3, 4];
    const model = linearMixedModel(balanced(means, within));
    const grand = means.reduce((a, b) => a + b) / 1000;
    const between = (10 * means.reduce((sum, m) => sum + (m - grand) ** 2, 0)) / 999;
    const error = within.reduce((sum, v) => sum + v * v, 0) / 9;
    near(model.fixed[0], grand, 1e-9);
    near(model.sigma ** 2, error, 1e-7);
    near((model.sd[0] as number) ** 2, (between - error) / 10, 1e-7);
    near((model.standardErrors[0] as number) ** 2, between / 10_000, 1e-7);
    const shrunk = ((means[7] as number) - grand) * (1 - error / between);
    near(model.groups[7]?.effects[0], shrunk, 1e-6);
    expect(model.groups[7]?.group).toBe('7');
    expect(model.correlation).toEqual([[expect.closeTo(1, 12)]]);
  });

  it('groups that differ a thousand times as much as their rows', () => {
    const means = [300, -100, 250, 0, 120];
    const model = linearMixedModel(balanced(means, [-0.1, 0, 0.1]));
    const between = (3 * means.reduce((sum, m) => sum + (m - 114) ** 2, 0)) / 4;
    expect(model.converged).toBe(true);
    near(model.sigma ** 2, 0.01, 1e-9);
    near((model.sd[0] as number) ** 2, (between - 0.01) / 3, 1e-9);
  });

  it('groups that differ less than their rows: no variance between them', () => {
    const model = linearMixedModel(balanced([0, 0.01, 0, 0.01], [-1, 0, 1]));
    expect(model.sd).toEqual([0]);
    expect(model.singular).toBe(true);
    expect(model.correlation).toEqual([[null]]);
    expect(model.groups.every(({ effects }) => effects[0] === 0)).toBe(true);
    near(model.sigma ** 2, (8 + 3 * 4 * 0.005 ** 2) / 11, 1e-9);
  });

  it('the scale and origin of a covariate change nothing else', () => {
    const fit = reference.fits[0] as Fit;
    const plain = linearMixedModel(rowsOf(fit));
    const later = linearMixedModel(
      rowsOf(fit).map((row) => ({
        ...row,
        fixed: [1, 2020 + (row.fixed[1] as number) / 365],
        random: [1, 2020 + (row.random[1] as number) / 365],
      })),
    );
    near(later.logLik + Math.log(1 / 365), plain.logLik, 1e-6);
    near((later.fixed[1] as number) / 365, plain.fixed[1] as number, 1e-6);
    near((later.sd[1] as number) / 365, plain.sd[1] as number, 1e-5);
  });

  it('refuses what it cannot fit', () => {
    const rows = balanced([1, 2, 4], [-1, 0, 1]);
    const changed = (change: (row: MixedRow, i: number) => Partial<MixedRow>) => () =>
      linearMixedModel(rows.map((row, i) => ({ ...row, ...change(row, i) })));
    expect(changed(() => ({ fixed: [1, 2] }))).toThrow('sum of the others');
    expect(changed(() => ({ group: 'one' }))).toThrow('One group');
    expect(changed((_, i) => ({ group: String(i) }))).toThrow('As many random effects as rows');
    expect(changed(() => ({ y: 3 }))).toThrow('Nothing is left');
    expect(changed(({ group }) => ({ y: Number(group) }))).toThrow('Nothing varies within');
    expect(changed(() => ({ y: NaN }))).toThrow('not a number');
    expect(changed((_, i) => ({ random: i > 0 ? [1] : [1, 2] }))).toThrow('differ in their number');
    expect(changed(() => ({ fixed: [] }))).toThrow('no effects');
  });
});

import { describe, expect, it } from 'vitest';
import {
  benjaminiHochberg,
  betaLower,
  betaQuantile,
  binomialTest,
  binomialUpper,
  chiSquaredUpper,
  clopperPearson,
  clusteredProportion,
  eBenjaminiHochberg,
  fQuantile,
  fisherExact,
  holm,
  intraclassCorrelations,
  kaplanMeier,
  logGamma,
  meanOfUnits,
  medianSurvival,
  normalCdf,
  normalQuantile,
  rankSumTest,
  signFlip,
  stratifiedKendall,
  stratifiedRankTest,
  stratifiedTwoByTwo,
  tQuantile,
  tTwoSided,
  welch,
  wilson,
  type Lifetime,
} from '../../../core/statistics/index.ts';
import reference from '../../reference/statistics.json' with { type: 'json' };

const near = (value: number | null | undefined, expected: number, relative = 1e-9) => {
  expect(Math.abs((value ?? NaN) - expected)).toBeLessThanOrEqual(
    relative * Math.max(1, Math.abs(expected)),
  );
};

describe('special functions', () => {
  it('ln gamma: factorials, and the half by ln √π', () => {
    near(logGamma(0.5), Math.log(Math.sqrt(Math.PI)), 1e-14);
    let factorial = 0;
    for (let n = 1; n < 60; n++) {
      near(logGamma(n), factorial, 1e-14);
      factorial += Math.log(n);
    }
    expect(() => logGamma(0)).toThrow(RangeError);
  });

  it('incomplete beta: closed forms, symmetry, and its inverse', () => {
    near(betaLower(0.3, 1, 4), 1 - 0.7 ** 4, 1e-14);
    near(betaLower(0.3, 4, 1), 0.3 ** 4, 1e-14);
    for (const [a, b] of [
      [0.5, 0.5],
      [3, 11],
      [200, 20],
    ] as const)
      for (const x of [0.01, 0.2, 0.5, 0.9]) {
        near(betaLower(x, a, b), 1 - betaLower(1 - x, b, a), 1e-13);
        const p = betaLower(x, a, b);
        if (p > 1e-12 && p < 1 - 1e-12) near(betaQuantile(p, a, b), x, 1e-9);
      }
  });

  // Abramowitz & Stegun, tables 26.1, 26.8, 26.9, 26.10: the usual printed values.
  it('normal, chi-squared, t and F: printed quantiles', () => {
    near(normalQuantile(0.975), 1.959963984540054, 1e-13);
    near(normalQuantile(1e-10), -6.361340902404056, 1e-12);
    near(normalCdf(-1), 0.15865525393145707, 1e-13);
    near(normalCdf(1.4), 0.9192433407662289, 1e-13);
    expect(chiSquaredUpper(3.841458820694124, 1)).toBeCloseTo(0.05, 12);
    expect(chiSquaredUpper(18.307, 10)).toBeCloseTo(0.05, 5);
    expect(tQuantile(0.975, 9)).toBeCloseTo(2.262157, 6);
    expect(tQuantile(0.025, 1)).toBeCloseTo(-12.7062, 4);
    expect(fQuantile(0.95, 5, 15)).toBeCloseTo(2.9013, 4);
    expect(tQuantile(0.5, 3)).toBe(0);
  });
});

describe(`proportions (${reference.sources.proportions})`, () => {
  it.each(reference.proportions)('$x of $n', ({ x, n, ...expected }) => {
    for (const [of, name] of [
      [wilson, 'wilson'],
      [clopperPearson, 'clopperPearson'],
    ] as const) {
      const { lower, upper } = of(x, n);
      near(lower, expected[name][0] as number);
      near(upper, expected[name][1] as number);
    }
    const { lower, upper } = wilson(x, n);
    expect([lower, upper].map((v) => v.toFixed(4))).toEqual(
      expected.published.wilson.map((v) => v.toFixed(4)),
    );
  });
});

// Weil 1970 as re-analysed by Rao & Scott, Biometrics 1992;48:577-585.
describe('clustered shares', () => {
  it.each([
    ['control', 0.898734, 0.0266447, 1.232495, 128.1952],
    ['treated', 0.772414, 0.0692261, 3.952861, 36.6823],
  ] as const)('%s litters', (group, share, se, deff, effective) => {
    const { y, n } = reference.weil[group];
    const answer = clusteredProportion(y, n);
    near(answer?.share, share, 1e-6);
    near(answer?.standardError, se, 1e-7);
    near(answer?.designEffect, deff, 1e-6);
    near(answer?.effectiveTrials, effective, 1e-5);
    expect(answer?.lower).toBeLessThan(share);
    expect(answer?.upper).toBeGreaterThan(share);
  });

  it('is wider than if each trial were its own unit, and counts units where nothing varies', () => {
    const { y, n } = reference.weil.treated;
    const total = (list: number[]) => list.reduce((a, b) => a + b, 0);
    const naive = wilson(total(y), total(n));
    const answer = clusteredProportion(y, n);
    expect(answer?.lower).toBeLessThan(naive.lower);
    expect(answer?.upper).toBeGreaterThan(naive.upper);
    expect(clusteredProportion([0, 0, 0], [10, 10, 10])).toMatchObject({
      designEffect: null,
      effectiveTrials: 3,
      lower: 0,
      upper: wilson(0, 3).upper,
    });
    expect(clusteredProportion([], [])).toBeNull();
  });
});

describe('exact tests', () => {
  it(`Fisher (${reference.sources.fisher})`, () => {
    near(fisherExact([3, 1, 1, 3], 'greater'), reference.fisherTea.pGreater);
    near(fisherExact([3, 1, 1, 3]), reference.fisherTea.pTwoSided);
    near(fisherExact([2, 15, 10, 3]), reference.fisherTwins.p);
    near(fisherExact([2, 15, 10, 3], 'less'), reference.fisherTwins.pLess);
  });

  it('binomial: the sign test of the shoes; exact McNemar 8 to 1', () => {
    near(binomialTest(2, 10), reference.shoes.signTest.p);
    near(binomialTest(8, 9), 0.0390625);
    near(binomialUpper(3, 8, 0.05), 0.00578764, 1e-6);
    near(binomialTest(0, 12, 0.2, 'less'), 0.8 ** 12);
    near(binomialTest(12, 12, 0.2, 'greater'), 0.2 ** 12);
  });

  it(`sign flips (${reference.sources.shoes}; Darwin's maize, Fisher 1935 section 21)`, () => {
    const shoes = signFlip(reference.shoes.differenceAminusB);
    near(shoes.pTwoSided, reference.shoes.permutation.pTwoSided);
    near(1 - shoes.pGreater, 1 - 1017 / 1024 + 0, 0.01);
    const maize = [49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48];
    near(signFlip(maize).pGreater, 863 / 32_768);
    near(signFlip(maize).pTwoSided, 1726 / 32_768);
    expect(signFlip([...maize, ...maize]).method).toBe('normal');
  });

  // Hollander & Wolfe 1973, p. 69: permeability of placental tissue.
  it('rank sums', () => {
    const x = [0.8, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46];
    const y = [1.15, 0.88, 0.9, 0.74, 1.21];
    const answer = rankSumTest(x, y);
    expect(answer.chanceAbove).toBe(35 / 50);
    expect(answer.p).toBeCloseTo(0.2544, 4);
    expect(rankSumTest(y, x).p).toBeCloseTo(answer.p, 12);
    expect(rankSumTest([1, 1], [1]).p).toBe(1);
  });

  // Agresti A, Categorical Data Analysis, 1990, p. 234 (penicillin in rabbits; from memory, recomputed).
  it('stratified two by two, exact and chi-squared', () => {
    const answer = stratifiedTwoByTwo([
      [0, 6, 0, 5],
      [3, 3, 0, 6],
      [6, 0, 2, 4],
      [5, 1, 6, 0],
      [2, 0, 5, 0],
    ]);
    expect(answer.p).toBeCloseTo(0.03994, 5);
    expect(answer.oddsRatio).toBeCloseTo(7, 9);
    expect(answer.chiSquaredCorrected).toBeCloseTo(3.9286, 4);
    expect(answer).toMatchObject({ strata: 3, method: 'exact' });
    expect(stratifiedTwoByTwo([[0, 0, 3, 4]])).toMatchObject({ p: 1, strata: 0, oddsRatio: null });
  });

  it('stratified ranks: one stratum is the rank sum test, and a large one is near the exact', () => {
    const first = [3, 5, 8, 9, 12, 4.5];
    const second = [1, 2, 4, 6, 7, 2.5, 0.5];
    const stratum = {
      values: [...first, ...second],
      inFirst: [...first.map(() => true), ...second.map(() => false)],
    };
    near(stratifiedRankTest([stratum]).p, rankSumTest(first, second).p, 1e-12);
    const twice = stratifiedRankTest([stratum, stratum]);
    const many = stratifiedRankTest(Array.from({ length: 400 }, () => stratum));
    expect(twice.p).toBeLessThan(rankSumTest(first, second).p);
    expect(many.method).toBe('normal');
    expect(stratifiedRankTest([]).p).toBe(1);
  });
});

describe('trends', () => {
  const inOrder = (values: readonly number[]) => ({ x: values.map((_, at) => at), y: values });

  it.each(Object.entries(reference.trend))(`%s (${reference.sources.trend})`, (_, series) => {
    const answer = stratifiedKendall([inOrder(series.values)]);
    expect(answer.s).toBe(series.S);
    near(answer.variance, series.varS, 1e-8);
    near(answer.z, series.Z);
    near(answer.p, series.p, 1e-9);
  });

  // Gilbert RO, Statistical Methods for Environmental Pollution Monitoring, 1987 (values as published online).
  it('ties: S = 54, variance 332.67, Z = 2.9058; strata add up', () => {
    const values = [
      12.9, 14.8, 13.2, 15.7, 13.8, 15.6, 12.9, 11.0, 17.3, 15.9, 19.0, 18.3, 20.1, 21.7,
    ];
    const answer = stratifiedKendall([inOrder(values)]);
    expect(answer.s).toBe(54);
    expect(answer.variance).toBeCloseTo(332.6667, 4);
    expect(answer.z).toBeCloseTo(2.9058, 4);
    const stratum = inOrder(values);
    expect(stratifiedKendall([stratum, stratum])).toMatchObject({ s: 108 });
    expect(stratifiedKendall([])).toMatchObject({ s: 0, z: 0, p: 1, gamma: null });
  });
});

describe('multiplicity', () => {
  it(`Benjamini-Hochberg and Holm (${reference.sources.benjaminiHochberg})`, () => {
    const { p, BH, holm: expected } = reference.benjaminiHochberg;
    benjaminiHochberg(p).forEach((v, at) => near(v, BH[at] as number));
    holm(p).forEach((v, at) => near(v, expected[at] as number));
    const order = [3, 14, 0, 7];
    const few = order.map((at) => p[at] as number);
    expect(holm(few)).toEqual([3, 1, 4, 2].map((_, at) => holm(few)[at]));
  });

  it('e-BH: by hand', () => {
    const log = (list: number[]) => list.map(Math.log);
    // m = 10, level 0.1: thresholds 100, 50, 33.3 …
    expect(eBenjaminiHochberg(log([99, 1]), 10, 0.1)).toEqual([false, false]);
    expect(eBenjaminiHochberg(log([51, 1, 60]), 10, 0.1)).toEqual([true, false, true]);
    expect(eBenjaminiHochberg([], 10, 0.1)).toEqual([]);
    expect(eBenjaminiHochberg([-Infinity, Infinity], 10, 0.1)).toEqual([false, true]);
  });
});

describe(`survival (${reference.sources.gehan})`, () => {
  const rows = reference.gehan.data as [number, number, number, string][];
  const group = (name: string): Lifetime[] =>
    rows.filter(([, , , treat]) => treat === name).map(([, time, e]) => ({ time, event: e === 1 }));

  it.each(['6-MP', 'control'] as const)('%s: curve, Greenwood, log-log interval', (name) => {
    const expected = reference.gehan.logLog[`treat=${name}`];
    const steps = kaplanMeier(group(name));
    expect(steps.map(({ time }) => time)).toEqual(expected.time);
    expect(steps.map(({ atRisk }) => atRisk)).toEqual(expected.nRisk);
    for (const [at, step] of steps.entries()) {
      near(step.survival, expected.surv[at] as number);
      if (step.survival === 0) continue;
      near(step.standardError / step.survival, expected.seLog[at] as number);
      near(step.lower, expected.lower[at] as number);
      near(step.upper, expected.upper[at] as number);
    }
  });

  it('medians', () => {
    const [drug, control] = [group('6-MP'), group('control')];
    expect([drug, control].map((g) => medianSurvival(kaplanMeier(g)))).toEqual(
      reference.gehan.medians,
    );
  });
});

describe(`intraclass correlation (${reference.sources.icc})`, () => {
  it('all six, with intervals', () => {
    const answer = intraclassCorrelations(reference.icc.scores);
    for (const [own, theirs] of [
      ['single1', 'ICC1_1'],
      ['single2', 'ICC2_1'],
      ['single3', 'ICC3_1'],
      ['mean1', 'ICC1_4'],
      ['mean2', 'ICC2_4'],
      ['mean3', 'ICC3_4'],
    ] as const) {
      const expected = reference.icc.icc[theirs];
      near(answer?.[own].icc, expected.ICC);
      near(answer?.[own].lower, expected['lower bound'], 1e-8);
      near(answer?.[own].upper, expected['upper bound'], 1e-8);
    }
    expect(intraclassCorrelations([[1, 2]])).toBeNull();
    expect(
      intraclassCorrelations([
        [1, 1],
        [1, 1],
      ]),
    ).toBeNull();
  });
});

describe(`means of units (${reference.sources.shoes})`, () => {
  it('paired t', () => {
    const { pairedT, differenceAminusB } = reference.shoes;
    const answer = meanOfUnits(differenceAminusB);
    near(answer?.mean, pairedT.mean);
    near(answer?.interval?.lower, pairedT.ci95[0] as number);
    near(answer?.interval?.upper, pairedT.ci95[1] as number);
    near(answer?.p, pairedT.p);
    near(tTwoSided(pairedT.t, 9), pairedT.p);
    expect(meanOfUnits([])).toBeNull();
    expect(meanOfUnits([3])).toMatchObject({ mean: 3, interval: null });
  });

  // Student, Biometrika 1908;6:1-25: hours of sleep gained.
  it('Welch', () => {
    const a = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2];
    const b = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];
    const answer = welch(a, b);
    expect(answer?.difference).toBeCloseTo(-1.58, 10);
    near(answer?.p, 0.0793941401874, 1e-9);
    near(answer?.df, 17.7764735162, 1e-9);
    near(answer?.interval.lower, -3.36548323071, 1e-9);
    near(answer?.interval.upper, 0.205483230712, 1e-9);
    expect(welch([1], b)).toBeNull();
  });
});

/** Mixture of normals and integration grid, against the statistics room and against closed integrals. */
import { describe, expect, it } from 'vitest';
import { normalCdf, normalQuantile } from '../../../core/statistics/index.ts';
import { gridAround } from '../../../core/wear/grid.ts';
import {
  fastNormalCdf,
  mixtureCdf,
  mixtureMoments,
  mixtureQuantile,
} from '../../../core/wear/mixture.ts';

describe('mixture of normals', () => {
  it('the fast normal distribution agrees with the incomplete gamma function', () => {
    for (let z = -12; z <= 12; z += 0.37) {
      const [fast, exact] = [fastNormalCdf(z), normalCdf(z)];
      expect(Math.abs(fast / exact - 1)).toBeLessThan(1e-8);
      expect(Math.abs(fast - exact)).toBeLessThan(1e-14);
    }
    expect(fastNormalCdf(-40)).toBe(0);
    expect(fastNormalCdf(40)).toBe(1);
  });

  it('one component has the quantiles of its normal distribution', () => {
    const one = { weights: [1], means: [3], sds: [2] };
    for (const p of [0.001, 0.05, 0.3, 0.95, 0.999])
      expect(mixtureQuantile(one, p)).toBeCloseTo(3 + 2 * normalQuantile(p), 7);
    expect(mixtureQuantile(one, 0.5)).toBeCloseTo(3, 9);
    expect(mixtureQuantile({ weights: [1], means: [3], sds: [0] }, 0.05)).toBe(3);
  });

  it('quantiles of two far hills invert the distribution', () => {
    const two = { weights: [0.7, 0.3], means: [0, 100], sds: [1, 0.5] };
    for (const p of [0.01, 0.35, 0.69, 0.71, 0.85, 0.99])
      expect(mixtureCdf(two, mixtureQuantile(two, p))).toBeCloseTo(p, 9);
    expect(mixtureMoments(two).mean).toBeCloseTo(30, 12);
    expect(mixtureMoments(two).variance).toBeCloseTo(0.7 + 0.3 * 0.25 + 0.21 * 10_000, 9);
  });
});

describe('integration grid', () => {
  const sum = (nodes: ReturnType<typeof gridAround>, log: (place: readonly number[]) => number) =>
    nodes.reduce((total, { place, logWeight }) => total + Math.exp(logWeight + log(place)), 0);

  it('integrates a normal and a half-normal density to one', () => {
    const log = ([a = 0, b = 0]: readonly number[]) =>
      -0.5 * ((a - 7) / 0.3) ** 2 -
      Math.log(0.3 * Math.sqrt(2 * Math.PI)) -
      0.5 * (b / 2) ** 2 +
      Math.log(2 / (2 * Math.sqrt(2 * Math.PI)));
    const axes = [
      { least: 0, most: 20, start: 1, nodes: 6 },
      { least: 0, most: 20, start: 1, nodes: 6 },
    ];
    expect(Math.abs(sum(gridAround(axes, log), log) - 1)).toBeLessThan(0.01);
  });

  it('an axis with equal ends is held there and weighs nothing', () => {
    const nodes = gridAround([{ least: 4, most: 4, start: 4, nodes: 5 }], () => 0);
    expect(nodes).toEqual([{ place: [4], logWeight: 0 }]);
  });
});

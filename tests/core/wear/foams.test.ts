/**
 * The priors against the publications they come from, and the fitter of the form to published points.
 */
import { foamIds } from '../../../core/foot/index.ts';
import { describe, expect, it } from 'vitest';
import { metres } from '../../../core/units/index.ts';
import {
  fitWear,
  forms,
  priorSources,
  wearKinds,
  wearPrior,
  type WearKind,
} from '../../../core/wear/index.ts';

/** Least squares of (1 + d/d0)^-p on points of km and share kept: p is closed given ln d0; golden section. */
const fitPower = (points: readonly (readonly [km: number, kept: number])[]) => {
  const misfit = (logD0: number) => {
    const x = points.map(([km]) => Math.log1p(km / Math.exp(logD0)));
    const sum = (p: number) =>
      points.reduce((s, [, kept], at) => s + (Math.exp(-p * (x[at] as number)) - kept) ** 2, 0);
    let [low, high] = [0, 2];
    for (let step = 0; step < 100; step++) {
      const third = (high - low) / 3;
      if (sum(low + third) < sum(high - third)) high -= third;
      else low += third;
    }
    return { p: (low + high) / 2, square: sum((low + high) / 2) };
  };
  let [low, high] = [Math.log(0.5), Math.log(500)];
  for (let step = 0; step < 100; step++) {
    const third = (high - low) / 3;
    if (misfit(low + third).square < misfit(high - third).square) high -= third;
    else low += third;
  }
  const d0 = Math.exp((low + high) / 2);
  const { p } = misfit(Math.log(d0));
  return { p, d0, at: (km: number) => (1 + km / d0) ** -p };
};

describe('published points', () => {
  it('the power form through the worn shoes of Cook et al. 1985', () => {
    const { p, d0, at } = fitPower([
      [241.4, 0.8],
      [804.7, 0.7],
    ]);
    expect(Math.abs(p - 0.1234)).toBeLessThan(0.002);
    expect(Math.abs(d0 - 47.3)).toBeLessThan(1.5);
    expect(Math.abs(at(500) - 0.739)).toBeLessThan(0.005);
    // The prior's middle is that curve.
    const prior = wearPrior('energy-absorbed J', 'eva');
    expect(Math.exp(prior.change.mean)).toBeCloseTo(at(500), 2);
    const bend = forms.find(({ name }) => name === 'power')?.bend;
    expect(Math.abs((bend?.median ?? 0) / 1000 - d0)).toBeLessThan(5);
  });

  it('the same on their machine: it ages shoes faster', () => {
    const { p, d0 } = fitPower([
      [80.5, 0.75],
      [201.2, 0.67],
      [603.5, 0.585],
    ]);
    expect(Math.abs(p - 0.13)).toBeLessThan(0.003);
    expect(Math.abs(d0 - 9.7)).toBeLessThan(0.7);
    expect(d0).toBeLessThan(47.3);
  });

  it('EVA impact peak: Wang et al. 2012 (921.1 to 968.0 N) and 2010 (+4.88 %, 3.40 to 6.36)', () => {
    expect(Math.abs(968.0 / 921.1 - 1.0509)).toBeLessThan(0.0005);
    const fit = fitWear(
      { kind: 'impact-peak N', site: 'heel-centre', checks: [] },
      wearPrior('impact-peak N', 'eva'),
    );
    const { median, lower, upper } = fit.changeAt(metres(500_000));
    expect(median).toBeGreaterThan(1.034);
    expect(median).toBeLessThan(1.064);
    expect(lower).toBeLessThan(1.034);
    expect(upper).toBeGreaterThan(1.064);
  });

  it('PU that got softer (Wang et al. 2012: 972.9, 909.6, 921.9, 924.6 N): no rise is claimed', () => {
    expect(Math.abs(100 * (909.6 / 972.9 - 1) - -6.51)).toBeLessThan(0.05);
    const published = [
      [0, 972.9],
      [200, 909.6],
      [250, 921.9],
      [300, 924.6],
    ] as const;
    for (const foam of ['pu', 'eva'] as const) {
      const fit = fitWear(
        {
          kind: 'impact-peak N',
          site: 'heel-centre',
          checks: published.map(([km, value]) => ({
            kind: 'impact-peak N',
            pair: 'mean of 8',
            distance: metres(km * 1000),
            value,
          })),
        },
        wearPrior('impact-peak N', foam),
      );
      expect(fit.direction).not.toBe('rises');
      expect(fit.changeAt(metres(200_000), { pair: 'mean of 8' }).median).toBeLessThan(1);
    }
  });
});

describe('priors of all kinds and foams', () => {
  it('each says where it comes from and how sure that is', () => {
    for (const foam of foamIds)
      for (const kind of wearKinds) {
        const { change, pairSpread, startSpread, checkError } = wearPrior<WearKind>(kind, foam);
        expect(priorSources).toContain(change.source);
        for (const known of [pairSpread, startSpread, checkError])
          expect(known.source.length).toBeGreaterThan(10);
        expect(change.sd).toBeGreaterThan(0);
        for (const { size } of [pairSpread, startSpread, checkError])
          expect(size).toBeGreaterThan(0);
      }
    expect(wearPrior('energy-absorbed J', 'eva').change.basis).toBe('published');
    expect(wearPrior('energy-absorbed J', 'peba').change.basis).toBe('judgement');
    expect(wearPrior('mass g', 'eva').change.basis).toBe('judgement');
  });

  it('the forms weigh one together, and are 0 when new and 1 at 500 km', () => {
    expect(forms.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
    for (const { share, bend } of forms) {
      expect(share(0, bend?.median ?? 1)).toBeCloseTo(0, 12);
      expect(share(500_000, bend?.median ?? 1)).toBeCloseTo(1, 12);
    }
  });
});

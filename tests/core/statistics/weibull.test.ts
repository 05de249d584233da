import { describe, expect, it } from 'vitest';
import {
  weibull,
  weibullSurvival,
  type Lifetime,
  type WeibullFit,
} from '../../../core/statistics/index.ts';
import reference from '../../reference/weibull.json' with { type: 'json' };

const near = (found: number | undefined, expected: number, relative = 1e-9) => {
  expect(Math.abs((found ?? NaN) - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));
};

const lifetimesOf = (data: readonly (readonly number[])[]): Lifetime[] =>
  data.map(([time = NaN, event]) => ({ time, event: event === 1 }));

// Lung: Loprinzi 1994. 6-MP: Freireich 1963, Gehan 1965. Values by survreg of R's survival 3.5-3; the
// intervals from the Hessian in 40 digits.
for (const name of ['lung', 'gehan6MP'] as const)
  describe(`Weibull by maximum likelihood: ${name}`, () => {
    const expected = reference[name];
    const fit = weibull(lifetimesOf(expected.data)) as WeibullFit;

    it('shape, scale, their standard errors and the likelihood', () => {
      expect(fit.n).toBe(expected.data.length);
      expect(fit.events).toBe(expected.data.filter(([, event]) => event === 1).length);
      near(fit.shape, expected.shape);
      near(Math.log(fit.scale), expected.logScale);
      near(fit.standardErrorLogScale, expected.seLogScale, 1e-8);
      near(fit.standardErrorLogShape, expected.seLogShape, 1e-8);
      near(fit.covariance[0][0], expected.seLogScale ** 2, 1e-8);
      near(fit.logLik, expected.logLik);
    });

    it('survival at a time, and the time of a share', () => {
      for (const [time, survival, lower, upper] of expected.survival) {
        const found = weibullSurvival(fit, time as number);
        near(found.survival, survival as number);
        near(found.lower, lower as number);
        near(found.upper, upper as number);
      }
      for (const [share, time] of expected.quantile)
        near(weibullSurvival(fit, time as number).survival, 1 - (share as number));
      const [, at] = expected.quantile[0] ?? [];
      const [wide, narrow] = [0.99, 0.8].map((level) => weibullSurvival(fit, at as number, level));
      expect(wide?.lower).toBeLessThan(narrow?.lower as number);
      expect(wide?.upper).toBeGreaterThan(narrow?.upper as number);
    });
  });

describe('Weibull by maximum likelihood: its edges', () => {
  const events = (...times: number[]): Lifetime[] => times.map((time) => ({ time, event: true }));

  it('there is none without an event, nor with every event at the latest time', () => {
    expect(weibull([])).toBeNull();
    expect(weibull([{ time: 3, event: false }])).toBeNull();
    expect(weibull(events(5, 5, 5))).toBeNull();
    expect(weibull([{ time: 2, event: false }, ...events(5)])).toBeNull();
    expect(weibull([{ time: 7, event: false }, ...events(5)])).not.toBeNull();
  });

  it('nearly equal lifetimes have a steep shape, and the unit changes only the scale', () => {
    const steep = weibull(events(1000, 1001, 1002)) as WeibullFit;
    expect(steep.shape).toBeGreaterThan(1000);
    const inHours = weibull(events(24_000, 24_024, 24_048)) as WeibullFit;
    near(inHours.shape, steep.shape);
    near(inHours.scale, 24 * steep.scale);
  });

  it('refuses a time that is not above zero', () => {
    expect(() => weibull(events(0, 1))).toThrow(RangeError);
    expect(() => weibull(events(NaN))).toThrow(RangeError);
  });
});

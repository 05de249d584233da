/**
 * A small, seeded part of the calibration in tests/calibrate/wear.ts: enough to notice an interval that no
 * longer covers. The binomial spread of 240 rounds is 1.9 points.
 */
import { describe, expect, it } from 'vitest';
import { simulateWear, type Design, type Scenario } from '../../calibrate/wear.ts';

const TESTS = 60;
const some: readonly (readonly [Scenario, Design])[] = [
  ['power law', 'six pairs, four checks'],
  ['plateau', 'three pairs, three checks'],
  ['straight line, stack height', 'three pairs, three checks'],
  ['softens against the prior', 'six pairs, four checks'],
];

describe('calibration of the wear intervals', () => {
  const results = some.map(([scenario, design], at) =>
    simulateWear(scenario, design, TESTS, 71 + at),
  );
  const mean = (of: 'value' | 'distance' | 'wrongHolds' | 'wronglyNamed') =>
    results.reduce((sum, result) => sum + result[of], 0) / results.length;

  it('nine of ten 90 % intervals hold the value of a new pair', () => {
    expect(mean('value')).toBeGreaterThan(0.85);
    expect(mean('value')).toBeLessThan(0.96);
    for (const { value } of results) expect(value).toBeGreaterThan(0.8);
  });

  it('and no fewer its distance to the limit', () => {
    expect(mean('distance')).toBeGreaterThan(0.86);
  });

  it('few say "holds" wrongly, and few pairs are named wrongly', () => {
    expect(mean('wrongHolds')).toBeLessThan(0.05);
    expect(mean('wronglyNamed')).toBeLessThan(0.03);
  });

  it('the same seed gives the same figures', () => {
    const again = () => simulateWear('power law', 'three pairs, three checks', 3, 5);
    expect(again()).toEqual(again());
  });
});

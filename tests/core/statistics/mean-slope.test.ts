/** The mean slope of units that each start elsewhere: balanced by hand, unbalanced by what each unit can tell. */
import { describe, expect, it } from 'vitest';
import { meanOfUnits, meanSlope, type UnitPoint } from '../../../core/statistics/index.ts';

const points = (slopes: readonly number[]): UnitPoint[] =>
  slopes.flatMap((slope, unit) =>
    [0.2, 0.7, 1.2, 1.7, 2.2].map((x, n) => ({
      unit: String(unit),
      x,
      y: 70 + 3 * unit + slope * x + (n % 2 === 0 ? 0.5 : -0.5),
    })),
  );

describe('a mean slope', () => {
  it('has each unit count once: balanced, it is the mean of their slopes with Student’s interval', () => {
    const found = meanSlope(points([-4, -2, -3, -7, -1]), 0.9);
    const plain = meanOfUnits([-4, -2, -3, -7, -1], 0.9);
    expect(found?.units).toBe(5);
    expect(found?.mean).toBeCloseTo(plain?.mean ?? 0, 1);
    expect(found?.interval.lower).toBeCloseTo(plain?.interval?.lower ?? 0, 0);
    expect(found?.interval.upper).toBeCloseTo(plain?.interval?.upper ?? 0, 0);
  });

  it('says nothing of one unit, of two points, or where nothing scatters within units', () => {
    expect(meanSlope(points([-3]))).toBeNull();
    expect(meanSlope([])).toBeNull();
    expect(meanSlope(points([0, 0]).map((one) => ({ ...one, y: 60 })))).toBeNull();
    expect(
      meanSlope(points([0, 0]).map((one) => ({ ...one, y: one.unit === '0' ? 50 : 70 }))),
    ).toBeNull();
    expect(meanSlope(points([0, 0]).map((one) => ({ ...one, y: 80 - one.x })))).toBeNull();
  });

  it('lets four points close together count for what they tell', () => {
    const odd = [
      [0.5, 40],
      [0.55, 65],
      [0.6, 62],
      [0.65, 70],
    ].map(([x = 0, y = 0]) => ({ unit: 'odd', x, y }));
    const noise = [4, -5, 3, -2, 6, -6, 1, -3, 5, -4];
    const steady = [0, 1, 2, 3, 4].flatMap((unit) =>
      noise.map((by, n) => ({ unit: `s${unit}`, x: n / 2, y: 60 + unit + by - n / 2 })),
    );
    // By itself the odd unit's slope is above 150; the mean of the six own slopes would be above 25.
    const found = meanSlope([...steady, ...odd]);
    expect(found?.mean).toBeGreaterThan(-4);
    expect(found?.mean).toBeLessThan(4);
  });
});

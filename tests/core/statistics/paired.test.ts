import { describe, expect, it } from 'vitest';
import { meanOfUnits } from '../../../core/statistics/index.ts';

// Wear of two sole materials, one on each foot of ten boys, sides drawn by lot: Box GEP, Hunter WG & Hunter
// JS, Statistics for Experimenters (1978), p. 100. Values by t.test of R 4.2.2.
describe("a paired comparison of soles (boys' shoes)", () => {
  const a = [13.2, 8.2, 10.9, 14.3, 10.7, 6.6, 9.5, 10.8, 8.8, 13.3];
  const b = [14.0, 8.8, 11.2, 14.2, 11.8, 6.4, 9.8, 11.3, 9.3, 13.6];

  it('material B less material A', () => {
    const found = meanOfUnits(b.map((wear, boy) => wear - (a[boy] as number)));
    expect(found?.n).toBe(10);
    expect(found?.mean).toBeCloseTo(0.41, 12);
    const t = (found?.mean as number) / ((found?.sd as number) / Math.sqrt(10));
    expect(t).toBeCloseTo(3.3489, 4);
    expect(found?.p).toBeCloseTo(0.008539, 6);
    expect(found?.interval?.lower).toBeCloseTo(0.133, 4);
    expect(found?.interval?.upper).toBeCloseTo(0.687, 4);
  });
});

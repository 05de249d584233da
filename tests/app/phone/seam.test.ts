import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dashesOf, seamOf } from '../../../app/phone/own/seam.ts';
import { metres } from '../../../core/units/index.ts';

const sum = (dashes: string, every: (at: number) => boolean): number =>
  dashes
    .split(' ')
    .map(Number)
    .filter((_, at) => every(at))
    .reduce((total, one) => total + one, 0);

describe('the seam around a pair', () => {
  it('has a stitch for each 10 km that the brief asks', () => {
    expect(seamOf(metres(0), metres(600_000))).toEqual({ stitches: 60, sewn: 0 });
    expect(seamOf(metres(183_800), metres(600_000)).sewn).toBeCloseTo(18.38);
  });

  it('closes at the target and never goes beyond it', () => {
    expect(seamOf(metres(600_000), metres(600_000)).sewn).toBe(60);
    expect(seamOf(metres(900_000), metres(600_000)).sewn).toBe(60);
  });

  it('shows no thread before the first run', () => {
    expect(sum(dashesOf(seamOf(metres(0), metres(300_000))), (at) => at % 2 === 0)).toBe(0);
  });

  it('has dashes that fill its whole length, and thread that only grows', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10_000, max: 2_000_000 }),
        fc.integer({ min: 0, max: 2_500_000 }),
        fc.integer({ min: 0, max: 50_000 }),
        (target, distance, more) => {
          const seam = seamOf(metres(distance), metres(target));
          const dashes = dashesOf(seam);
          expect(sum(dashes, () => true)).toBeCloseTo(seam.stitches, 1);
          expect(dashes.split(' ').every((one) => Number(one) >= 0)).toBe(true);
          const later = dashesOf(seamOf(metres(distance + more), metres(target)));
          const thread = (text: string) => sum(text, (at) => at % 2 === 0);
          expect(thread(later)).toBeGreaterThanOrEqual(thread(dashes) - 0.002);
        },
      ),
    );
  });
});

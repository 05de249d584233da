/** Means of the same units, held against the greatest of all by flipping whole units. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { signFlip, signFlipMax } from '../../../core/statistics/index.ts';

const value = fc.integer({ min: -100, max: 100 });

describe('several means under flips of whole units', () => {
  it('each by itself is the sign-flip test', () => {
    fc.assert(
      fc.property(fc.array(value, { minLength: 1, maxLength: 10 }), (own) => {
        const [found] = signFlipMax([own]);
        expect(found?.p).toBeCloseTo(signFlip(own).pTwoSided, 12);
        expect(found?.adjustedP).toBeCloseTo(found?.p ?? 0, 12);
      }),
    );
  });

  it('two that go together are adjusted less than two that do not', () => {
    // Six units: 2 of 64 flips are as far by itself. The second mean is the first again, or one on its own.
    const first = [-40, -40, -40, -40, -40, -40];
    const [same] = signFlipMax([first, first]);
    expect(same?.p).toBeCloseTo(2 / 64, 12);
    expect(same?.adjustedP).toBeCloseTo(2 / 64, 12);
    // Of the 64 flips two reach the first and two others the second, and either would have been the greatest.
    const [apart] = signFlipMax([first, [-40, 40, -40, 40, -40, 40]]);
    expect(apart?.adjustedP).toBeCloseTo(4 / 64, 12);
  });

  it('a mean that is far off does not count against the next: step down', () => {
    const far = [-50, -50, -50, -50, -50, -50, -50, -50];
    const near = [-40, -40, -40, -40, -40, -40, 40, 0];
    const [, beside] = signFlipMax([far, near]);
    const [alone] = signFlipMax([near]);
    expect(beside?.adjustedP).toBeCloseTo(alone?.p ?? 0, 12);
  });

  it('never adjusts below the plain p, and keeps the order of the evidence', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.option(value), { minLength: 7, maxLength: 7 }), {
          minLength: 1,
          maxLength: 5,
        }),
        (means) => {
          const found = signFlipMax(means);
          for (const { p, adjustedP } of found) {
            expect(p).toBeGreaterThan(0);
            expect(adjustedP).toBeGreaterThanOrEqual(p - 1e-12);
            expect(adjustedP).toBeLessThanOrEqual(1);
          }
        },
      ),
    );
  });

  it('says nothing of no answers, and is the same for many units each time', () => {
    expect(signFlipMax([])).toEqual([]);
    expect(signFlipMax([[null, null]])).toEqual([{ p: 1, adjustedP: 1 }]);
    const many = Array.from({ length: 30 }, (_, at) => (at % 3 === 0 ? 20 : -30));
    expect(signFlipMax([many])).toEqual(signFlipMax([many]));
    expect(signFlipMax([many])[0]?.p).toBeLessThan(0.1);
    expect(signFlipMax([many.map(() => -30)])[0]?.p).toBe(1 / 2000);
  });
});

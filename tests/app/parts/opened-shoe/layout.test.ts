/** Words beside the drawn shoes: none over another, each on its shoe's side. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOut } from '../../../../app/parts/opened-shoe/layout.ts';
import { zoneCodes } from '../../../../core/foot/index.ts';
import type { Callout } from '../../../../core/review/index.ts';

const anyCallout = fc.record({
  what: fc.constant('complaint'),
  zone: fc.constantFrom(...zoneCodes),
  side: fc.constantFrom('left', 'right', 'both'),
}) as unknown as fc.Arbitrary<Callout>;

describe('the words of callouts', () => {
  it('never overlap, stay within the picture, and stand in the order of their spots', () => {
    fc.assert(
      fc.property(fc.array(anyCallout, { maxLength: 24 }), (callouts) => {
        const { left, right, height } = layOut(callouts);
        expect(left.length + right.length).toBe(callouts.length);
        for (const side of [left, right]) {
          for (const [at, { top, y }] of side.entries()) {
            const before = side[at - 1];
            if (before) {
              expect(top - before.top).toBeGreaterThanOrEqual(64 - 1e-9);
              expect(y).toBeGreaterThanOrEqual(before.y);
            }
            expect(top).toBeGreaterThanOrEqual(-1e-9);
            expect(top).toBeLessThanOrEqual(height - 64 + 1e-9);
          }
        }
        for (const { callout, foot } of [...left, ...right])
          if (callout.side !== 'both') expect(foot).toBe(callout.side);
      }),
    );
  });
});

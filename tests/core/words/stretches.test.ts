/** The bars by distance count every remark once, and a press on a bar finds as many as it shows. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stretchesOf } from '../../../core/words/stretches.ts';
import { metres } from '../../../core/units/index.ts';

const KM = metres(1000);
const MILE = metres(1609.344);

describe('remarks by distance', () => {
  it('has no stretch without a remark', () => {
    expect(stretchesOf([], [], KM).counts).toEqual([]);
  });

  it('puts a remark at a border into the stretch that begins there', () => {
    const all = [0, 19_999, 20_000, 239_000].map(metres);
    expect(stretchesOf(all, all, KM)).toEqual({
      stepM: 20_000,
      counts: [2, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1],
    });
  });

  it('counts each once, in at most a dozen stretches, as the filter of a bar would', () => {
    const distance = fc.double({ min: 0, max: 2_000_000, noNaN: true }).map(metres);
    fc.assert(
      fc.property(
        fc.array(distance, { minLength: 1, maxLength: 40 }),
        fc.constantFrom(KM, MILE),
        (all, unit) => {
          const { stepM, counts } = stretchesOf(all, all, unit);
          expect(counts.length).toBeLessThanOrEqual(12);
          counts.forEach((count, at) =>
            expect(
              all.filter((one) => one >= metres(at * stepM) && one < metres((at + 1) * stepM)),
            ).toHaveLength(count),
          );
        },
      ),
    );
  });
});

/** Labels beside lines: none over another, each near its line, all within the picture. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LABEL_GAP, layOutSlopes, spread } from '../../../../app/desk/changes/slope-layout.ts';

const share = fc.double({ min: 0, max: 100, noNaN: true });
const lines = fc.array(fc.record({ from: share, to: share }), { minLength: 1, maxLength: 12 });

describe('the labels of slopes', () => {
  it('never overlap, stay within the picture, and keep the order of their lines', () => {
    fc.assert(
      fc.property(lines, fc.boolean(), (all, fromZero) => {
        const { height, places } = layOutSlopes(all, fromZero);
        const sorted = places.toSorted((a, b) => a.label - b.label);
        for (const [at, one] of sorted.entries()) {
          expect(one.label).toBeGreaterThanOrEqual(0);
          expect(one.label).toBeLessThanOrEqual(height);
          const before = sorted[at - 1];
          if (!before) continue;
          expect(one.label - before.label).toBeGreaterThan(LABEL_GAP - 0.001);
          expect(one.to).toBeGreaterThanOrEqual(before.to - 1e-9);
        }
      }),
    );
  });

  it('draw every value within the scale, with marks on it', () => {
    fc.assert(
      fc.property(lines, fc.boolean(), (all, fromZero) => {
        const { height, places, ticks, least, most } = layOutSlopes(all, fromZero);
        expect(ticks.length).toBeGreaterThanOrEqual(2);
        expect(ticks.length).toBeLessThanOrEqual(7);
        for (const { from, to } of all)
          for (const value of [from, to]) {
            expect(value).toBeGreaterThanOrEqual(least);
            expect(value).toBeLessThanOrEqual(most);
          }
        for (const { from, to } of places)
          for (const y of [from, to]) {
            expect(y).toBeGreaterThanOrEqual(0);
            expect(y).toBeLessThanOrEqual(height);
          }
      }),
    );
  });
});

describe('spreading', () => {
  it('leaves alone what lies apart already', () => {
    expect(spread([10, 50, 90], 20, [0, 100])).toEqual([10, 50, 90]);
  });
  it('pushes down, and back up at the end', () => {
    expect(spread([95, 96, 97], 20, [0, 100])).toEqual([60, 80, 100]);
  });
});

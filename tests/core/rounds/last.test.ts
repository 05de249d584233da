/** Lasts, sizes and whose feet a panel has. */
import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import type { Last } from '../../../core/records/index.ts';
import {
  asymmetryOf,
  coverageOf,
  fitOf,
  lastAt,
  mondopointOf,
} from '../../../core/rounds/index.ts';
import { millimetres as mm } from '../../../core/units/index.ts';

const last: Last = {
  name: 'L1',
  sizeMm: mm(270),
  lengthMm: mm(282),
  ballWidthMm: mm(98),
  ballGirthMm: mm(248),
  widthPerStepMm: mm(1.5),
};

describe('a last', () => {
  it('grows by 5 mm a size, and in width by the step that is named', () => {
    expect(lastAt(last, mm(270))).toEqual({ lengthMm: 282, widthMm: 98, girthMm: 248 });
    expect(lastAt(last, mm(285))).toEqual({ lengthMm: 297, widthMm: 102.5, girthMm: null });
    expect(lastAt(last, mm(262.5)).widthMm).toBeCloseTo(95.75, 12);
  });

  it('of which nothing was measured says nothing', () => {
    expect(lastAt({ name: 'L2', sizeMm: mm(270) }, mm(270))).toEqual({
      lengthMm: null,
      widthMm: null,
      girthMm: null,
    });
  });
});

describe('a foot in it', () => {
  const tester = {
    footLengthMm: { left: mm(268), right: mm(273) },
    footWidthMm: { left: mm(99), right: mm(97.5) },
  };

  it('has its toe allowance, width and girth by themselves', () => {
    const at = lastAt(last, mm(270));
    expect(fitOf(tester, 'left', at)).toEqual({
      toeMm: 14,
      toe: 'usual',
      widthMm: -1,
      girthMm: null,
    });
    expect(fitOf(tester, 'right', at)).toMatchObject({ toeMm: 9, toe: 'short', widthMm: 0.5 });
    expect(fitOf({}, 'left', at)).toEqual({
      toeMm: null,
      toe: null,
      widthMm: null,
      girthMm: null,
    });
    expect(fitOf(tester, 'left', lastAt(last, mm(275))).toe).toBe('long');
  });

  it('may differ from its other one', () => {
    expect(asymmetryOf(tester)).toEqual({ lengthMm: -5, widthMm: 1.5, girthMm: null });
  });
});

describe('a Mondopoint size', () => {
  it('is the nearest of its range, and some feet lie between two', () => {
    expect(mondopointOf(271, 5)).toEqual({ sizeMm: 270, offMm: 1, between: false });
    expect(mondopointOf(272, 5)).toEqual({ sizeMm: 270, offMm: 2, between: true });
    expect(mondopointOf(271, 7.5)).toEqual({ sizeMm: 270, offMm: 1, between: false });
    expect(mondopointOf(274, 7.5)).toEqual({ sizeMm: 277.5, offMm: -3.5, between: true });
  });

  it('is never farther than half a step', () => {
    fc.assert(
      fc.property(fc.double({ min: 150, max: 350, noNaN: true }), (length) => {
        for (const step of [5, 7.5] as const)
          expect(Math.abs(mondopointOf(length, step).offMm)).toBeLessThanOrEqual(step / 2 + 1e-9);
      }),
      { numRuns: 50 },
    );
  });
});

describe('the panel against the brief', () => {
  it('names the stretches of feet that nobody has', () => {
    const cover = coverageOf([250, 285], [251, 262, 263, 284, null, 240]);
    expect(cover).toMatchObject({ measured: 5, notMeasured: 1, outside: 1 });
    expect(cover?.steps[0]).toEqual({ fromMm: 250, toMm: 252.5, testers: 1 });
    expect(cover?.empty).toEqual([
      { fromMm: 252.5, toMm: 257.5, testers: 0 },
      { fromMm: 267.5, toMm: 282.5, testers: 0 },
    ]);
  });

  it('counts every foot in the range once, the last at its very end', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 240, max: 300, noNaN: true })), (feet) => {
        const cover = coverageOf([250, 290], [...feet, 250, 290]);
        const counted = cover?.steps.reduce((sum, { testers }) => sum + testers, 0) ?? 0;
        expect(counted + (cover?.outside ?? 0)).toBe(feet.length + 2);
      }),
      { numRuns: 50 },
    );
  });

  it('is none for a range that is none', () => {
    expect(coverageOf([270, 270], [270])).toBeNull();
  });
});

/** Room in front of the longer foot: by the last where one is noted, else roughly by the size. */
import { describe, expect, it } from 'vitest';
import type { Last } from '../../../core/records/index.ts';
import { longerFootMm, roomOf, roomWord } from '../../../core/rounds/index.ts';
import { millimetres } from '../../../core/units/index.ts';

const last: Last = { name: 'L1', sizeMm: millimetres(270), lengthMm: millimetres(283) };

describe('the room in front of the longer foot', () => {
  it('is 10 to 15 mm where it is good, and said as it is shown, in whole mm', () => {
    expect([9, 10, 12, 15, 16].map(roomWord)).toEqual(['short', 'good', 'good', 'good', 'long']);
    expect(roomOf(millimetres(270), last, 273.4)).toEqual({ mm: 10, word: 'good', by: 'last' });
    expect(roomOf(millimetres(270), last, 267.4)).toEqual({ mm: 16, word: 'long', by: 'last' });
  });

  it('grows with the size by the grading of the last', () => {
    expect(roomOf(millimetres(275), last, 273)).toEqual({ mm: 15, word: 'good', by: 'last' });
    expect(roomOf(millimetres(255), last, 260)).toEqual({ mm: 8, word: 'short', by: 'last' });
  });

  it('is rough by the size alone: EU 42 is a last of 280 mm for a foot of 266.67', () => {
    // 280 − 266.67 = 13.33 mm: EU sizes by ISO/TS 19407:2015, public arithmetic.
    for (const known of [undefined, { name: 'L2', sizeMm: millimetres(270) }])
      expect(roomOf(millimetres(266.67), known, 266.67)).toEqual({
        ...{ mm: 13, word: 'good', by: 'size' },
      });
  });

  it('is not known of feet that were not measured', () => {
    expect(roomOf(millimetres(270), last, null)).toBeNull();
    expect(longerFootMm({})).toBeNull();
    const feet = { left: millimetres(266), right: millimetres(268) };
    expect(longerFootMm({ footLengthMm: feet })).toBe(268);
  });
});

/** A picture of the test that is wider than the window opens on the latest days. */
import { describe, expect, it } from 'vitest';
import { besideTick, scrollToLatest } from '../../../../app/desk/sheet/calendar-lines.ts';

describe('the picture day by day', () => {
  it('opens with today near its right edge', () => {
    expect(scrollToLatest(500, 360, 640)).toBe(500 - 0.85 * 360);
  });

  it('is not scrolled past either end', () => {
    expect(scrollToLatest(200, 360, 640)).toBe(0);
    expect(scrollToLatest(640, 360, 640)).toBe(280);
    expect(scrollToLatest(900, 1200, 1200)).toBe(0);
  });
});

describe('the day beside its tick', () => {
  it('ends at the edge of the picture where it would be cut', () => {
    expect(besideTick(100, 400)).toEqual({ x: 103 });
    expect(besideTick(380, 400)).toEqual({ x: 400, 'text-anchor': 'end' });
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  footLengthOf,
  lastLengthOf,
  formatDuration,
  fromCelsius,
  fromMetres,
  metres,
  millimetres,
  pace,
  parseDecimal,
  parseDuration,
  seconds,
  sizeOf,
  sizeOfLast,
  toCelsius,
  toMetres,
  celsius,
  type SizeSystem,
} from '../../../core/units/index.ts';
import sizes from '../../reference/shoe-sizes.json' with { type: 'json' };

describe('distance', () => {
  // International yard and pound agreement of 1959: one mile is 1609.344 m exactly.
  it('takes a mile as 1609.344 m and the marathon as 42.195 km', () => {
    expect(toMetres(1, 'mi')).toBe(1609.344);
    expect(toMetres(500, 'mi')).toBe(804_672);
    expect(fromMetres(metres(42_195), 'km')).toBe(42.195);
    expect(fromMetres(metres(42_195), 'mi')).toBeCloseTo(26.218757, 6);
  });

  it('says the pace per kilometre and per mile, and none for no distance', () => {
    expect(pace(metres(10_000), seconds(3000), 'km')).toBe(300);
    expect(pace(metres(10_000), seconds(3000), 'mi')).toBeCloseTo(482.8032, 9);
    expect(pace(metres(0), seconds(3000), 'km')).toBeNull();
  });
});

describe('temperature', () => {
  // Fixed points of the Fahrenheit scale: water freezes at 32 °F and boils at 212 °F.
  it('meets the fixed points of both scales', () => {
    expect(fromCelsius(celsius(0), 'F')).toBe(32);
    expect(fromCelsius(celsius(100), 'F')).toBe(212);
    expect(toCelsius(-40, 'F')).toBe(-40);
    expect(toCelsius(21, 'C')).toBe(21);
  });
});

describe('typed numbers', () => {
  it('takes a comma or a point before the decimals', () => {
    expect(parseDecimal(' 12,4 ')).toBe(12.4);
    expect(parseDecimal('12.40')).toBe(12.4);
    expect(parseDecimal('.5')).toBe(0.5);
  });

  it.each(['', '1,000.5', '12 km', '1e3', 'NaN', '--1', '0x1'])('refuses %j', (text) => {
    expect(parseDecimal(text)).toBeNull();
  });

  it('reads hours, minutes and seconds', () => {
    expect(parseDuration('52:30')).toBe(3150);
    expect(parseDuration('1:02:03')).toBe(3723);
    expect(parseDuration('45')).toBe(2700);
  });

  it.each(['', '1:60', '1:2:60', '52.30', 'abc', '1:2:3:4', '-5'])(
    'refuses %j as a time',
    (text) => {
      expect(parseDuration(text)).toBeNull();
    },
  );

  it('reads back every duration it writes', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359_999 }), (whole) => {
        expect(parseDuration(formatDuration(seconds(whole)))).toBe(whole);
      }),
    );
  });
});

describe('shoe sizes', () => {
  it.each(sizes.checks)('$footMm mm is $system $size', ({ footMm, system, size }) => {
    expect(sizeOf(millimetres(footMm), system as SizeSystem)).toBeCloseTo(size, 9);
    expect(footLengthOf(size, system as SizeSystem)).toBeCloseTo(footMm, 9);
  });

  // Lasts by the open arithmetic: Paris points of 20/3 mm, UK sizes of 25.4/3 mm.
  it.each([
    ['eu', 42, 280, 266.67],
    ['eu', 43, 286.67, 273.33],
    ['eu', 44, 293.33, 280],
    ['uk', 8, 279.4, 262.47],
    ['uk', 9, 287.87, 270.93],
    ['uk', 10, 296.33, 279.4],
  ] as const)('%s %d is a last of %d mm for a foot of %d mm', (system, size, lastMm, footMm) => {
    expect(lastLengthOf(size, system)).toBeCloseTo(lastMm, 2);
    expect(sizeOfLast(lastLengthOf(size, system), system)).toBeCloseTo(size, 9);
    expect(footLengthOf(size, system)).toBeCloseTo(footMm, 2);
  });

  it.each([
    [270, 42.5, 8.89],
    [265, 41.75, 8.3],
    [280, 44, 10.07],
    [240, 38, 5.35],
  ])('a foot of %d mm is EU %d and UK %d', (footMm, eu, uk) => {
    expect(sizeOf(millimetres(footMm), 'eu')).toBeCloseTo(eu, 2);
    expect(sizeOf(millimetres(footMm), 'uk')).toBeCloseTo(uk, 2);
  });
});

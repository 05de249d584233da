import { describe, expect, it } from 'vitest';
import {
  footLengthOf,
  markedSizeOf,
  fromCelsius,
  fromMetres,
  metres,
  millimetres,
  pace,
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

describe('shoe sizes', () => {
  it.each(sizes.checks)('$footMm mm is $system $size', ({ footMm, system, size }) => {
    expect(sizeOf(millimetres(footMm), system as SizeSystem)).toBeCloseTo(size, 9);
    expect(footLengthOf(size, system as SizeSystem)).toBeCloseTo(footMm, 9);
  });

  it('is marked as the published table marks it, foot length by foot length', () => {
    for (const [mm, eu, uk] of sizes.byFootLength.rows as [number, number, number | null][]) {
      const foot = millimetres(mm);
      expect([mm, markedSizeOf(foot, 'eu')]).toEqual([mm, eu]);
      if (uk === null) continue;
      expect([mm, markedSizeOf(foot, 'uk')]).toEqual([mm, uk]);
      expect([mm, markedSizeOf(foot, 'us')]).toEqual([mm, uk + 1]);
      expect([mm, markedSizeOf(foot, 'us-women')]).toEqual([mm, uk + 2]);
    }
  });

  it('takes the smaller of two that are equally near, as a second table does', () => {
    for (const [mm, eu] of sizes.otherTables.tiesEu as [number, number][])
      expect([mm, markedSizeOf(millimetres(mm), 'eu')]).toEqual([mm, eu]);
    expect(markedSizeOf(millimetres(255), 'mondopoint')).toBe(255);
  });

  // That table adds 6.7 mm a size instead of 6.667, so that its last lines lie up to 0.4 mm off.
  it('lies within half a millimetre of a third table, by foot length', () => {
    for (const [eu, mm] of sizes.otherTables.footOfEu as [number, number][]) {
      expect(Math.abs(footLengthOf(eu, 'eu') - mm)).toBeLessThan(0.5);
      expect(markedSizeOf(millimetres(mm), 'eu')).toBe(eu);
    }
  });

  it('marks every half size that was typed as that size, kept in whole millimetres', () => {
    for (let eu = 32; eu <= 52; eu += 0.5)
      expect(markedSizeOf(millimetres(Math.round(footLengthOf(eu, 'eu'))), 'eu')).toBe(eu);
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
    expect(sizeOfLast(millimetres(lastMm), system)).toBeCloseTo(size, 2);
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

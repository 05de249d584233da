/**
 * Warnings of a bench check. Expected figures: recovery to 90 % in 7.28 h and 12.52 h (MSE thesis, Grand
 * Valley State University, ScholarWorks theses/1015), so 0.05 % and 1.21 % are left after 24 h; 23 ± 2 °C,
 * ISO 23529.
 */
import { describe, expect, it } from 'vitest';
import type { Reading } from '../../../core/records/index.ts';
import { celsius, metres } from '../../../core/units/index.ts';
import {
  checkWarnings,
  leftAfterRest,
  recoveryHours,
  type CheckAt,
} from '../../../core/wear/index.ts';

const reading = (extra: Partial<Reading> = {}): Reading => ({
  measure: 'hardness',
  site: 'heel-centre',
  foot: 'left',
  value: 45,
  unit: 'asker-c',
  ...extra,
});
const check = (km: number, extra: Partial<CheckAt> = {}): CheckAt => ({
  distance: metres(km * 1000),
  restedH: 30,
  temperatureC: celsius(23),
  readings: [reading()],
  ...extra,
});
const codes = (now: CheckAt, earlier: readonly CheckAt[]) =>
  checkWarnings(now, earlier).map(({ code }) => code);

describe('rest before a check', () => {
  it('time constants and what is left after 24 h', () => {
    expect(recoveryHours(7.28)).toBeCloseTo(3.162, 3);
    expect(recoveryHours(12.52)).toBeCloseTo(5.437, 3);
    expect(100 * leftAfterRest(24).short).toBeCloseTo(0.05, 2);
    expect(100 * leftAfterRest(24).long).toBeCloseTo(1.21, 2);
  });

  it('warns below 24 h, with the share that is left, and not of a new pair', () => {
    const [warning] = checkWarnings(check(100, { restedH: 12 }), [check(0)]);
    expect(warning).toEqual({ code: 'short-rest', restedH: 12, left: leftAfterRest(12) });
    expect(leftAfterRest(12).short).toBeCloseTo(0.022, 3);
    expect(leftAfterRest(12).long).toBeCloseTo(0.11, 2);
    expect(codes(check(100, { restedH: 24 }), [check(0)])).toEqual([]);
    expect(codes(check(0, { restedH: 1 }), [])).toEqual([]);
  });
});

describe('temperature of a check', () => {
  it('warns beyond 23 ± 2 °C; ten degrees colder read 6.7 Asker C too hard', () => {
    expect(codes(check(0, { temperatureC: celsius(25) }), [])).toEqual([]);
    expect(codes(check(0, { temperatureC: celsius(21) }), [])).toEqual([]);
    const [warning] = checkWarnings(check(0, { temperatureC: celsius(13) }), []);
    expect(warning).toMatchObject({ code: 'temperature', celsius: 13 });
    expect(warning?.code === 'temperature' && warning.askerC).toBeCloseTo(6.7, 9);
    const mass = [reading({ measure: 'mass', unit: 'g', value: 250 })];
    expect(
      checkWarnings(check(0, { temperatureC: celsius(30), readings: mass }), []),
    ).toMatchObject([{ code: 'temperature', askerC: null }]);
  });

  it('asks for the temperature of hardness alone', () => {
    const { temperatureC: _, ...untold } = check(0);
    expect(codes(untold, [])).toEqual(['temperature-missing']);
    const mass = [reading({ measure: 'mass', unit: 'g', value: 250 })];
    expect(codes({ ...untold, readings: mass }, [])).toEqual([]);
  });
});

describe('the same way as before', () => {
  it('no reading at 0 km of that measure at that site', () => {
    expect(codes(check(100), [])).toEqual(['no-start']);
    expect(codes(check(100), [check(0)])).toEqual([]);
    expect(codes(check(100), [check(50)])).toEqual(['no-start']);
    const other = check(0, { readings: [reading({ site: 'forefoot' })] });
    expect(codes(check(100), [other])).toEqual(['no-start', 'measured-otherwise']);
  });

  it.each([
    ['site', { site: 'forefoot' }],
    ['foot', { foot: 'right' }],
    ['method', { method: 'after 15 s' }],
    ['gauge', { gauge: 'no. 2' }],
    ['load', { loadN: 20 }],
  ] as const)('another %s', (way, extra) => {
    const before = check(0, {
      readings: [reading({ method: 'after 3 s', gauge: 'no. 1', loadN: 10 })],
    });
    const as = { method: 'after 3 s', gauge: 'no. 1', loadN: 10, ...extra };
    expect(checkWarnings(check(100, { readings: [reading(as)] }), [before])).toContainEqual({
      code: 'measured-otherwise',
      measure: 'hardness',
      site: way === 'site' ? 'forefoot' : 'heel-centre',
      differs: [way],
    });
  });

  it('what was not told is not held against it; nor one of several earlier ways', () => {
    const before = check(0, {
      readings: [reading({ gauge: 'no. 1' }), reading({ foot: 'right' })],
    });
    expect(codes(check(100), [before])).toEqual([]);
    expect(codes(check(100, { readings: [reading({ foot: 'right' })] }), [before])).toEqual([]);
  });

  it('an impossible value is named, and once', () => {
    const mass = reading({ measure: 'mass', unit: 'g', value: 0 });
    expect(codes(check(0, { readings: [mass, mass] }), [])).toEqual(['impossible-value']);
    const dimension = reading({ measure: 'dimension', unit: 'mm' });
    expect(codes(check(100, { readings: [dimension] }), [])).toEqual([]);
  });
});

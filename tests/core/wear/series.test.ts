/** Series of a round: grouped by measure, site and unit, and never pooled, by type and at run time. */
import { describe, expect, it } from 'vitest';
import type { Reading } from '../../../core/records/index.ts';
import { metres } from '../../../core/units/index.ts';
import {
  fitWear,
  scaleOf,
  wearPrior,
  wearSeries,
  type MeasuredCheck,
  type WearCheck,
  type WearSeries,
} from '../../../core/wear/index.ts';

const reading = (extra: Partial<Reading>): Reading => ({
  measure: 'stack-height',
  site: 'heel-centre',
  foot: 'left',
  value: 38,
  unit: 'mm',
  ...extra,
});
const at = (pair: string, km: number, ...readings: Reading[]): MeasuredCheck => ({
  pair,
  distance: metres(km * 1000),
  readings,
});

describe('series of a round', () => {
  it('one for each measure, site and unit; both shoes averaged', () => {
    const series = wearSeries([
      at(
        'a',
        0,
        reading({ value: 38 }),
        reading({ value: 39, foot: 'right' }),
        reading({ site: 'forefoot', value: 30 }),
        reading({ measure: 'hardness', unit: 'asker-c', value: 45 }),
        reading({ measure: 'hardness', unit: 'shore-a', value: 27 }),
        reading({ measure: 'dimension', value: 100 }),
      ),
      at('a', 100, reading({ value: 37.5 })),
    ]);
    expect(series.map(({ kind, site, checks }) => [kind, site, checks.length])).toEqual([
      ['hardness asker-c', 'heel-centre', 1],
      ['hardness shore-a', 'heel-centre', 1],
      ['stack-height mm', 'forefoot', 1],
      ['stack-height mm', 'heel-centre', 2],
    ]);
    expect(series[3]?.checks.map(({ value }) => value)).toEqual([38.5, 37.5]);
  });

  it('ratios are averaged by their logarithms, and impossible ones left out', () => {
    const energy = { measure: 'energy-absorbed', unit: 'J' } as const;
    const series = wearSeries([
      at('a', 0, reading({ ...energy, value: 2 }), reading({ ...energy, value: 8 })),
      at('b', 0, reading({ ...energy, value: 0 })),
    ]);
    expect(series).toHaveLength(1);
    expect(series[0]?.checks).toHaveLength(1);
    expect(series[0]?.checks[0]?.value).toBeCloseTo(4, 12);
  });

  it('lengths and hardness wear by difference, the rest by ratio', () => {
    expect(scaleOf('stack-height mm')).toBe('difference');
    expect(scaleOf('tread-depth mm')).toBe('difference');
    expect(scaleOf('hardness shore-a')).toBe('difference');
    expect(scaleOf('mass g')).toBe('ratio');
    expect(scaleOf('impact-peak N')).toBe('ratio');
    expect(scaleOf('energy-absorbed %')).toBe('ratio');
  });
});

describe('pooling', () => {
  it('does not type: checks of two kinds in one series, or a prior of another kind', () => {
    const stack: WearCheck<'stack-height mm'> = {
      kind: 'stack-height mm',
      pair: 'a',
      distance: metres(0),
      value: 38,
    };
    const asker: WearCheck<'hardness asker-c'> = {
      kind: 'hardness asker-c',
      pair: 'a',
      distance: metres(0),
      value: 45,
    };
    const mixed: WearSeries<'stack-height mm'> = {
      kind: 'stack-height mm',
      site: 'heel-centre',
      // @ts-expect-error a hardness is no stack height
      checks: [stack, asker],
    };
    const series: WearSeries<'stack-height mm'> = {
      kind: 'stack-height mm',
      site: 'heel-centre',
      checks: [stack],
    };
    const prior = wearPrior('hardness asker-c', 'eva');
    // @ts-expect-error what is known of hardness says nothing of stack height
    expect(() => fitWear(series, prior)).toThrow(RangeError);
    expect(() => fitWear(mixed, wearPrior('stack-height mm', 'eva'))).toThrow(RangeError);
    const shoreA: WearCheck<'hardness shore-a'> = { ...asker, kind: 'hardness shore-a' };
    // @ts-expect-error points of two scales are two kinds
    const units: WearCheck<'hardness asker-c'>[] = [asker, shoreA];
    expect(units).toHaveLength(2);
  });

  it('impossible checks are refused', () => {
    const prior = wearPrior('mass g', 'eva');
    const check = { kind: 'mass g', pair: 'a', distance: metres(0), value: 250 } as const;
    const fit = (extra: Partial<WearCheck<'mass g'>>) =>
      fitWear({ kind: 'mass g', site: 'whole', checks: [{ ...check, ...extra }] }, prior);
    expect(() => fit({ value: 0 })).toThrow(RangeError);
    expect(() => fit({ value: NaN })).toThrow(RangeError);
    expect(() => fit({ distance: metres(-1) })).toThrow(RangeError);
    expect(() => fit({})).not.toThrow();
  });
});

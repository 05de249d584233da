/** The rows that blueprint and brief ask for in the bench form: one for each dimension and foot, and nothing typed is lost. */
import { describe, expect, it } from 'vitest';
import { emptyReading, placesOfLimits, withAsked } from '../../../app/drafts/check-readings.ts';
import type { Round } from '../../../core/records/index.ts';

const limits = { nominal: 30, lower: -1, upper: 1 };
const blueprint: Round['blueprint'] = [
  { measure: 'stack-height', site: 'heel-centre', unit: 'mm', ...limits },
  { measure: 'hardness', site: 'midsole-heel', unit: 'shore-a', foot: 'left', ...limits },
];
const places = (rows: ReturnType<typeof withAsked>) =>
  rows.map(({ measure, site, foot, unit, value }) => [measure, site, foot, unit, value].join(' '));

describe('rows of a blueprint', () => {
  it('has both feet of a dimension, or the one that it is for, in place of the empty row', () => {
    expect(places(withAsked([emptyReading], blueprint))).toEqual([
      'stack-height heel-centre left mm ',
      'stack-height heel-centre right mm ',
      'hardness midsole-heel left shore-a ',
    ]);
  });

  it('keeps what was typed and asks for it no second time', () => {
    const typed = { ...emptyReading, value: '30.2' };
    const once = withAsked([typed], blueprint);
    expect(once[0]).toBe(typed);
    expect(once).toHaveLength(3);
    expect(withAsked(once, blueprint)).toEqual(once);
  });

  it('has one row where a dimension of both feet and one of one foot name the same place', () => {
    const [both] = blueprint;
    expect(
      withAsked([], both ? [both, { ...both, foot: 'right' }] : []).map(({ foot }) => foot),
    ).toEqual(['left', 'right']);
  });
});

describe('rows of the limits in the brief', () => {
  const known = [
    { measure: 'tread-depth', site: 'heel-lateral', unit: 'mm' },
    { measure: 'tread-depth', site: 'forefoot', unit: 'mm' },
    { measure: 'tread-depth', site: 'forefoot', unit: 'mm' },
    { measure: 'hardness', site: 'midsole-heel', unit: 'shore-a' },
  ] as const;
  it('stand at the site of the limit, or wherever its measure is known from', () => {
    expect(
      placesOfLimits(
        [
          { measure: 'energy-absorbed', site: 'heel-centre' },
          { measure: 'tread-depth' },
          { measure: 'hardness' },
        ],
        known,
      ),
    ).toEqual([
      { measure: 'energy-absorbed', site: 'heel-centre', unit: 'J' },
      { measure: 'tread-depth', site: 'heel-lateral', unit: 'mm' },
      { measure: 'tread-depth', site: 'forefoot', unit: 'mm' },
      { measure: 'hardness', site: 'heel-centre', unit: 'asker-c' },
    ]);
  });

  it('come after those of the blueprint, and none twice', () => {
    const limits = placesOfLimits(
      [
        { measure: 'stack-height', site: 'heel-centre' },
        { measure: 'tread-depth', site: 'forefoot' },
      ],
      [],
    );
    expect(places(withAsked([], [...blueprint, ...limits]))).toEqual([
      'stack-height heel-centre left mm ',
      'stack-height heel-centre right mm ',
      'hardness midsole-heel left shore-a ',
      'tread-depth forefoot left mm ',
      'tread-depth forefoot right mm ',
    ]);
  });
});

/** The blueprint's rows in the bench form: one for each dimension and foot, and nothing typed is lost. */
import { describe, expect, it } from 'vitest';
import { emptyReading, withBlueprint } from '../../../app/drafts/check-readings.ts';
import type { Round } from '../../../core/records/index.ts';

const limits = { nominal: 30, lower: -1, upper: 1 };
const blueprint: Round['blueprint'] = [
  { measure: 'stack-height', site: 'heel-centre', unit: 'mm', ...limits },
  { measure: 'hardness', site: 'midsole-heel', unit: 'shore-a', foot: 'left', ...limits },
];
const places = (rows: ReturnType<typeof withBlueprint>) =>
  rows.map(({ measure, site, foot, unit, value }) => [measure, site, foot, unit, value].join(' '));

describe('rows of a blueprint', () => {
  it('has both feet of a dimension, or the one that it is for, in place of the empty row', () => {
    expect(places(withBlueprint([emptyReading], blueprint))).toEqual([
      'stack-height heel-centre left mm ',
      'stack-height heel-centre right mm ',
      'hardness midsole-heel left shore-a ',
    ]);
  });

  it('keeps what was typed and asks for it no second time', () => {
    const typed = { ...emptyReading, value: '30.2' };
    const once = withBlueprint([typed], blueprint);
    expect(once[0]).toBe(typed);
    expect(once).toHaveLength(3);
    expect(withBlueprint(once, blueprint)).toEqual(once);
  });

  it('has one row where a dimension of both feet and one of one foot name the same place', () => {
    const [both] = blueprint;
    expect(
      withBlueprint([], both ? [both, { ...both, foot: 'right' }] : []).map(({ foot }) => foot),
    ).toEqual(['left', 'right']);
  });
});

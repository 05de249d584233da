/** What stands in a field: not said, no number, or a number that can be. */
import { describe, expect, it } from 'vitest';
import {
  typedIn,
  typedLine,
  typedNumber,
  typedWhole,
  typedWithin,
} from '../../../app/drafts/typed.ts';

describe('what is typed into a field', () => {
  it('is nothing, no number, or a number', () => {
    expect([' ', '1,5', '１２', 'x'].map(typedNumber)).toEqual([undefined, 1.5, 12, null]);
    expect(['', ' a b '].map(typedLine)).toEqual([undefined, 'a b']);
  });

  it('is kept within its ends, both of which can be', () => {
    expect(['1', '4', '4.1', ''].map((text) => typedWithin(text, 1, 4))).toEqual([
      1,
      4,
      null,
      null,
    ]);
    expect(['2', '2.5', '0'].map((text) => typedWhole(text, 1, 4))).toEqual([2, null, null]);
  });

  it('has its range in the unit of the field', () => {
    expect(typedIn({ least: 0, most: 5000, unit: 'm' }, 'km', 1 / 1000)).toEqual({
      least: 0,
      most: 5,
      unit: 'km',
    });
  });
});

/** Which zone and which kind of complaint an address of the place Shoe names. */
import { describe, expect, it } from 'vitest';
import { kindToShow, zoneAddress } from '../../../../app/desk/shoe/zone-address.ts';

const cell = (kind: 'rubbing' | 'pressure' | 'heel-slip', word: string, runs: number) =>
  ({ zone: 'U8', kind, word, runs }) as Parameters<typeof kindToShow>[2][number];

describe('the address of a zone', () => {
  it('names a foot and a zone, and nothing else is one', () => {
    expect(zoneAddress(['zones', 'left', 'U8'])).toEqual({ foot: 'left', zone: 'U8' });
    expect(zoneAddress(['zones', 'both', 'U8'])).toBeNull();
    expect(zoneAddress(['zones', 'left', 'U99'])).toBeNull();
    expect(zoneAddress(['zones'])).toBeNull();
  });
});

describe('the kind to look at', () => {
  const cells = [cell('rubbing', 'early-sign', 9), cell('pressure', 'seen-once', 1)];

  it('is the one that is asked for, or all of them', () => {
    expect(kindToShow('pressure', 'U8', cells)).toBe('pressure');
    expect(kindToShow('any', 'U8', cells)).toBeNull();
  });

  it('else is what is proved, then what is reported most, there and nowhere else', () => {
    expect(kindToShow(undefined, 'U8', cells)).toBe('rubbing');
    expect(kindToShow('no-such-kind', 'U8', cells)).toBe('rubbing');
    const proved = [...cells, cell('heel-slip', 'recurs-for-one-tester', 4)];
    expect(kindToShow(undefined, 'U8', proved)).toBe('heel-slip');
    const across = [...proved, cell('pressure', 'recurs-across-testers', 2)];
    expect(kindToShow(undefined, 'U8', across)).toBe('pressure');
    expect(kindToShow(undefined, 'P1', across)).toBeNull();
  });
});

/** For each pair every tester is offered, those first whom its size fits, with what they have already. */
import { describe, expect, it } from 'vitest';
import {
  candidatesOf,
  offersFor,
  pairsInHands,
} from '../../../../app/desk/pairs/hand-out-offers.ts';
import type { RecordOf } from '../../../../core/records/index.ts';
import { millimetres } from '../../../../core/units/index.ts';
import { says, trial } from '../../../core/fitting/made.ts';
import { idOf } from '../../../core/records/make.ts';

const tester = (n: number, code: string, left?: number, right = left) =>
  ({
    revision: { id: idOf(n) },
    body: { code, ...(left !== undefined && { footLengthMm: { left, right } }) },
  }) as RecordOf<'tester'>;
const pair = { revision: { id: idOf(8) }, body: { sizeMm: 270 } } as RecordOf<'pair'>;
const handOut = {
  revision: { id: idOf(9) },
  body: { pair: idOf(8), tester: idOf(5), from: '2026-05-01T08:00Z' },
} as RecordOf<'hand-out'>;

const known = {
  tester: [
    tester(4, 'T04'),
    tester(3, 'T03', 268, 272),
    tester(2, 'T02', 290),
    tester(6, 'T06', 261),
    tester(1, 'T01', 271),
    tester(5, 'T05'),
  ],
  pair: [pair],
  'hand-out': [handOut],
  'stop-use': [],
  'fit-trial': [],
} satisfies Parameters<typeof candidatesOf>[0];
const candidates = candidatesOf(known);
const codes = (list: ReturnType<typeof offersFor>['fits']) =>
  list.map((one) => one.tester.body.code);

describe('whom a pair is offered to', () => {
  it('is those whom its size fits, nearest first; by the longer foot, else by the last pair', () => {
    expect(codes(offersFor(millimetres(270), candidates).fits)).toEqual(['T05', 'T01', 'T03']);
  });

  it('is whom that size fitted in a fit trial, whatever their feet measure', () => {
    const fitted = trial(2, [says('length', 'right')], { pair: idOf(8) });
    const tooShort = trial(1, [says('length', 'little')], { pair: idOf(8) });
    const after = candidatesOf({ ...known, 'fit-trial': [fitted, tooShort] });
    // T02, whose foot is 290 mm long, said that 270 is right.
    expect(codes(offersFor(millimetres(270), after).fits)).toContain('T02');
    expect(codes(offersFor(millimetres(270), candidates).fits)).not.toContain('T02');
    expect(codes(offersFor(millimetres(270), after).fits)).toContain('T01');
  });

  it('is everybody else too, nearest first, and apart those of whom no size is known', () => {
    const offers = offersFor(millimetres(270), candidates);
    expect(codes(offers['other-size'])).toEqual(['T06', 'T02']);
    expect(codes(offers['size-unknown'])).toEqual(['T04']);
  });

  it('names what each has in hands', () => {
    const hands = pairsInHands([
      { code: '101', holder: idOf(1) },
      { code: '102', holder: null },
      { code: '103', holder: idOf(1) },
    ]);
    expect([...hands]).toEqual([[idOf(1), ['101', '103']]]);
  });
});

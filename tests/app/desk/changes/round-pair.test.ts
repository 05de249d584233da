/** Which two rounds are compared. */
import { describe, expect, it } from 'vitest';
import { roundsOf } from '../../../../app/desk/changes/round-pair.ts';
import { idOf } from '../../../core/records/make.ts';

const rounds = (...runs: number[]) =>
  runs.map((count, at) => ({ id: idOf(at + 1), order: at + 1, size: { runs: count } }));
const pair = (...of: Parameters<typeof roundsOf>) => {
  const { earlier, later } = roundsOf(...of);
  return [earlier?.order, later?.order];
};

describe('the rounds that are compared', () => {
  it('are the two latest that anybody has run in', () => {
    expect(pair(rounds(5, 5, 5), {})).toEqual([2, 3]);
    expect(pair(rounds(5, 5, 5, 0), {})).toEqual([2, 3]);
    expect(pair(rounds(5, 0, 5), {})).toEqual([1, 3]);
  });
  it('are the last two where nobody has run in two', () => {
    expect(pair(rounds(5, 0), {})).toEqual([1, 2]);
    expect(pair(rounds(0, 0, 0), {})).toEqual([2, 3]);
  });
  it('are none where there are not two', () => {
    expect(pair([], {})).toEqual([undefined, undefined]);
    expect(pair(rounds(5), {})).toEqual([undefined, undefined]);
  });
  it('are those that were chosen, as long as they are there and in this order', () => {
    expect(pair(rounds(5, 5, 5), { earlier: idOf(1), later: idOf(3) })).toEqual([1, 3]);
    expect(pair(rounds(5, 5, 5), { later: idOf(2) })).toEqual([1, 2]);
    expect(pair(rounds(5, 5, 5), { later: idOf(1) })).toEqual([2, 3]);
    expect(pair(rounds(5, 5, 5), { earlier: idOf(9), later: idOf(3) })).toEqual([2, 3]);
  });
});

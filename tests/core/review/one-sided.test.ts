/** Which shoe's build is to be looked at first: only where nearly all of enough reports are on it. */
import { expect, it } from 'vitest';
import { oneSided } from '../../../core/review/index.ts';

it.each([
  [5, 0, 'left'],
  [0, 5, 'right'],
  [9, 1, 'left'],
  [8, 1, null],
  [4, 0, null],
  [5, 5, null],
  [0, 0, null],
] as const)('%d left and %d right: %s', (left, right, side) => {
  expect(oneSided({ left, right })).toBe(side);
});

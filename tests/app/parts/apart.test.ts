import { expect, it } from 'vitest';
import { apart } from '../../../app/parts/charts/apart.ts';

const at = ([x, y]: readonly [number, number]) => [x, y] as const;

it('keeps the first of those that lie over each other, in their order', () => {
  expect(
    apart(
      [
        [0, 0],
        [4, 4],
        [6, 0],
        [-1, 0],
      ],
      at,
      5,
    ),
  ).toEqual([
    [0, 0],
    [6, 0],
    [-1, 0],
  ]);
});

it('never draws more marks than the picture has room for', () => {
  const many = Array.from({ length: 20_000 }, (_, n) => [(n * 37) % 380, (n * 91) % 160] as const);
  expect(apart(many, at, 5).length).toBeLessThanOrEqual((380 / 5) * (160 / 5));
});

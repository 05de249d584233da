/** A drawn value is told with its tolerance, on whatever side that lies. */
import { expect, it } from 'vitest';
import { withTolerance } from '../../../app/words/figures.ts';

const write = (value: number, most: number) => String(Number(value.toFixed(most)));

it.each([
  [{ nominal: 34, lower: -0.5, upper: 0.5 }, '34 ± 0.5'],
  [{ nominal: 34, lower: -0.3, upper: 0.5 }, '34 −0.3/+0.5'],
  [{ nominal: 12.25, lower: 0, upper: 0.4 }, '12.25 0/+0.4'],
  [{ nominal: 255, lower: -5, upper: 0 }, '255 −5/0'],
])('%j: %s', (drawn, said) => {
  expect(withTolerance(drawn, write).replaceAll('\u00a0', ' ')).toBe(said);
});

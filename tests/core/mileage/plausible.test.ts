/** Which runs need no question, and which are asked about before they are saved. */
import { describe, expect, it } from 'vitest';
import { isPlausibleRun } from '../../../core/mileage/index.ts';
import { metres, seconds } from '../../../core/units/index.ts';

describe('a run as typed', () => {
  it.each([
    ['10 km in 50 minutes', 10_000, 3000, true],
    ['a run without a time', 10_000, undefined, true],
    ['500 km in 30 minutes', 500_000, 1800, false],
    ['500 km without a time', 500_000, undefined, false],
    ['10 km in 10 minutes', 10_000, 600, false],
    ['1 km in an hour', 1000, 3600, false],
    ['50 m', 50, undefined, false],
  ])('%s', (_, distanceM, durationS, plausible) => {
    const duration = durationS === undefined ? undefined : seconds(durationS);
    expect(isPlausibleRun(metres(distanceM), duration)).toBe(plausible);
  });
});

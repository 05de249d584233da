/** Distance where fixes are sparse, noisy, or both: against the true length of the way, beside the plain geodesic sum. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { measureTrack, type TrackPoint } from '../../../core/track/index.ts';
import { seeded } from '../../seeded.ts';
import { seenOn, SHAPES, type Seen } from './shapes.ts';
import { plainSum, trackOf } from './tracks.ts';

const SEEDS = [1, 2, 3, 4, 5, 6];
const INTERVALS = [1, 2, 3, 5, 10];
const names = Object.keys(SHAPES);
const shapeOf = (name: string) => SHAPES[name] as (typeof SHAPES)[string];

/** The plane of the tests is a little off the ellipsoid, so the true length is measured in tenths of metres. */
const scales = new Map(
  names.map((name) => {
    const { fixes, lengthM } = seenOn(shapeOf(name), { lengthM: 5000, everyS: 0.1, mps: 5 });
    return [name, plainSum(fixes) / lengthM];
  }),
);

/** Mean errors in percent of the true length. */
const errorsOn = (
  name: string,
  seen: Omit<Seen, 'lengthM' | 'random' | 'fromM'>,
  seeds = SEEDS,
) => {
  let [plain, ours] = [0, 0];
  for (const seed of seeds) {
    const { fixes, lengthM } = seenOn(shapeOf(name), {
      ...seen,
      lengthM: 5500,
      fromM: 37 * seed,
      random: seeded(1000 * seed + seen.everyS),
    });
    const truth = lengthM * (scales.get(name) as number);
    plain += (100 * (plainSum(fixes) / truth - 1)) / seeds.length;
    ours += (100 * (measureTrack(trackOf(fixes)).distanceM / truth - 1)) / seeds.length;
  }
  return { plain, ours };
};

describe.each(names)('%s', (name) => {
  it.each(INTERVALS)(
    'without noise, every %i s: never worse than the plain sum by half a percent',
    (everyS) => {
      // Each start by itself, not their mean: no start may lose.
      for (const seed of SEEDS) {
        const { plain, ours } = errorsOn(name, { everyS }, [seed]);
        expect(Math.abs(ours), `plain ${plain} %`).toBeLessThanOrEqual(Math.abs(plain) + 0.5);
      }
    },
  );

  it('without noise, a change of pace does not cost it either', () => {
    for (const everyS of INTERVALS) {
      const { fixes, lengthM } = seenOn(shapeOf(name), { everyS, lengthM: 5500 });
      const uneven = fixes.flatMap((_, at) => {
        // Eight percent faster and slower, in waves of a minute and a half.
        const s = at * everyS;
        const along = 3 * s + 0.08 * 3 * 14.3 * Math.sin(s / 14.3);
        return along > lengthM
          ? []
          : [
              {
                ...seenOn(shapeOf(name), { everyS, lengthM: 1, fromM: along }).fixes[0],
                timeMs: 1000 * s,
              } as TrackPoint,
            ];
      });
      const last = uneven.length - 1;
      const along = 3 * last * everyS + 0.08 * 3 * 14.3 * Math.sin((last * everyS) / 14.3);
      const truth = along * (scales.get(name) as number);
      const [plain, ours] = [plainSum(uneven), measureTrack(trackOf(uneven)).distanceM].map(
        (metres) => Math.abs(100 * (metres / truth - 1)),
      ) as [number, number];
      expect(ours, `${everyS} s, plain ${plain} %`).toBeLessThanOrEqual(plain + 0.5);
    }
  });

  it.each([3, 5])('with 2 m of noise, every %i s', (everyS) => {
    const { plain, ours } = errorsOn(name, { everyS, whiteM: 2 });
    const isEasy = name === 'straight' || name === 'track';
    expect(Math.abs(ours), `plain ${plain} %`).toBeLessThan(Math.abs(plain) + (isEasy ? 0 : 1));
  });

  it.each([1, 2, 3, 5, 10])(
    'with errors that last, every %i s: no worse than the plain sum by half a percent',
    (everyS) => {
      for (const noise of [
        { lastingM: 3, lastingS: 30 },
        { lastingM: 3, lastingS: 10, whiteM: 0.5 },
      ]) {
        const { plain, ours } = errorsOn(name, { everyS, ...noise });
        expect(Math.abs(ours), `plain ${plain} %`).toBeLessThanOrEqual(Math.abs(plain) + 0.5);
      }
    },
  );
});

describe('dense and noisy', () => {
  it.each(['straight', 'track', 'trail'])(
    '%s, every second, 1 and 2 m of noise: within 1 percent, half of that without bends',
    (name) => {
      for (const whiteM of [1, 2])
        expect(Math.abs(errorsOn(name, { everyS: 1, whiteM }).ours)).toBeLessThan(
          name === 'trail' ? 1 : 0.5,
        );
    },
  );

  it('lasting errors every second: most of what they add is gone', () => {
    const { plain, ours } = errorsOn('straight', { everyS: 1, lastingM: 3, lastingS: 30 });
    expect(plain).toBeGreaterThan(3);
    expect(Math.abs(ours)).toBeLessThan(0.5);
  });
});

/**
 * Sizes of the errors in percent before arcs, corners and lasting errors were thought of, at 1, 2, 3, 5 and 10 s:
 * of 3 m that last 30 s, and of 3 m that last 10 s with half a metre of white noise.
 */
const BEFORE: Readonly<Record<string, readonly [readonly number[], readonly number[]]>> = {
  straight: [
    [3.37, 0.37, 0.23, 0.17, 0.12],
    [2.41, 1.04, 0.53, 0.27, 0.06],
  ],
  city: [
    [2.48, 2.24, 4.04, 6.37, 14.86],
    [1.14, 1.61, 3.69, 6.57, 14.85],
  ],
  track: [
    [3.53, 0.57, 0.02, 1.05, 6.9],
    [2.64, 1.19, 0.34, 1.2, 7.32],
  ],
  trail: [
    [3.21, 2.89, 8.72, 22, 31.41],
    [1.91, 2.03, 7.93, 21.54, 31.57],
  ],
  switchbacks: [
    [3.51, 3.21, 6.2, 13.03, 30.44],
    [0.89, 2.3, 5.61, 12.73, 30.11],
  ],
};

describe('errors that last', () => {
  it.each(names)('%s: not half a percent worse than before', (name) => {
    const noises = [
      { lastingM: 3, lastingS: 30 },
      { lastingM: 3, lastingS: 10, whiteM: 0.5 },
    ];
    for (const [i, noise] of noises.entries())
      for (const [j, everyS] of INTERVALS.entries())
        expect(Math.abs(errorsOn(name, { everyS, ...noise }).ours)).toBeLessThan(
          (BEFORE[name]?.[i]?.[j] as number) + 0.5,
        );
  });
});

const recorded = (name: string): TrackPoint[] =>
  readFileSync(new URL(`../../reference/tracks/${name}.csv`, import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => {
      const [s, lat, lon, eleM] = line.split(',').map(Number) as [number, number, number, number];
      return { lat, lon, eleM, timeMs: 1000 * s, cadence: null };
    });

/** The fixes that a device would have kept that writes one every so many seconds. */
const thinned = (fixes: readonly TrackPoint[], everyS: number, fromS: number): TrackPoint[] => {
  let lastMs = -Infinity;
  return fixes.filter(({ timeMs }) => {
    const ms = timeMs as number;
    if (ms < 1000 * fromS || ms - lastMs < 1000 * everyS) return false;
    lastMs = ms;
    return true;
  });
};

describe.each(['recorded-run', 'recorded-ride'])('%s, a real receiver', (name) => {
  const whole = recorded(name);
  const dense = measureTrack(trackOf(whole)).distanceM;

  it('is measured near the plain sum where it has a fix a second', () => {
    expect(Math.abs(dense / plainSum(whole) - 1)).toBeLessThan(0.01);
  });

  // What one fix a second says is the best length there is; the plain sum is judged by its own.
  it.each([3, 5, 10])(
    'thinned to one fix in %i s it loses no more than the plain sum by half a percent',
    (everyS) => {
      for (let fromS = 0; fromS < everyS; fromS++) {
        const part = thinned(whole, everyS, fromS);
        const from = whole.filter(({ timeMs }) => (timeMs as number) >= 1000 * fromS);
        const ours = measureTrack(trackOf(part)).distanceM / measureTrack(trackOf(from)).distanceM;
        const plain = plainSum(part) / plainSum(from);
        expect(Math.abs(ours - 1)).toBeLessThanOrEqual(Math.abs(plain - 1) + 0.005);
      }
    },
  );
});

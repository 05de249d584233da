import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  climbOf,
  geodesicDistance,
  measureTrack,
  readGpx,
  type Track,
} from '../../../core/track/index.ts';
import { seeded } from '../../seeded.ts';
import { errorsOf, fixAt, START_MS, trackOf } from './tracks.ts';

const reference = new URL('../../reference/', import.meta.url);

describe('distances against GeographicLib 2.1.2 (GeodSolve -i -E)', () => {
  const lines = readFileSync(new URL('geodesic-inverse.csv', reference), 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','));

  it(`are within 1 mm + 1e-9 on ${lines.length} lines: short, long, near-antipodal, poles, 180°`, () => {
    expect(lines.length).toBeGreaterThanOrEqual(200);
    for (const [kind, ...numbers] of lines) {
      const [lat1, lon1, lat2, lon2, metres] = numbers.map(Number) as [
        number,
        number,
        number,
        number,
        number,
      ];
      const ours = geodesicDistance({ lat: lat1, lon: lon1 }, { lat: lat2, lon: lon2 });
      expect(Math.abs(ours - metres), `${kind} ${numbers.join()}`).toBeLessThanOrEqual(
        0.001 + 1e-9 * metres,
      );
    }
  });

  it('agree with Karney, J Geod 2013;87:43-55 (short and antipodal inverse)', () => {
    const short = geodesicDistance({ lat: -30.12345, lon: 0 }, { lat: -30.12344, lon: 0.00005 });
    expect(short).toBeCloseTo(4.944208, 6);
    const antipodal = geodesicDistance({ lat: -30, lon: 0 }, { lat: 29.9, lon: 179.8 });
    expect(antipodal).toBeCloseTo(19_989_832.82761, 4);
  });
});

const folder = new URL('gpx/', reference);
const expected = JSON.parse(readFileSync(new URL('expected.json', folder), 'utf8')) as {
  tracks: Record<string, { design: number; elapsed: number | null; geodesic2d: number }>;
};
const read = (name: string): Track => {
  const outcome = readGpx(readFileSync(new URL(name, folder), 'utf8'));
  if (!outcome.ok) throw new Error(`${name}: ${outcome.problem.why}`);
  return outcome.track;
};
const files = readdirSync(folder).filter((name) => name.endsWith('.gpx'));

describe('the designed tracks', () => {
  it.each(files)('%s is measured within 0.5 %% of its length', (name) => {
    const { design, elapsed } = expected.tracks[name.replace('.gpx', '')] as {
      design: number;
      elapsed: number | null;
    };
    const measured = measureTrack(read(name));
    // A shoe that did not move: nothing at all.
    expect(Math.abs(measured.distanceM - design)).toBeLessThanOrEqual(0.005 * design);
    expect(measured.elapsedS).toBe(elapsed);
  });

  it('count no pause as moving: 15 minutes of 30 (first half standing, then a recorder gap)', () => {
    const { movingS } = measureTrack(read('pauses.gpx'));
    expect(Math.abs((movingS ?? 0) - 900)).toBeLessThan(0.01 * 900);
    expect(measureTrack(read('stationary_jitter_10min.gpx')).movingS).toBe(0);
    expect(measureTrack(read('two_segments_gap.gpx')).movingS).toBe(600);
  });

  it('climb by turning points of 3 m or more: 200 m up and down; known elevations only', () => {
    const hill = measureTrack(read('hill_two_peaks.gpx'));
    expect(hill.climbM).toBeCloseTo(200, 1);
    expect(hill.descentM).toBeCloseTo(200, 1);
    expect(measureTrack(read('missing_some_ele.gpx')).climbM).toBeCloseTo(39, 6);
    expect(measureTrack(read('missing_all_ele.gpx')).climbM).toBeNull();
    expect(measureTrack(read('empty_elements.gpx')).climbM).toBeNull();
  });

  it('say when the noise of the fixes was taken out first, and how much there was', () => {
    const noisy = measureTrack(read('jitter_sd3m_5km.gpx'));
    expect(noisy.distanceBy).toBe('smoothed');
    expect(noisy.noiseM).toBeGreaterThan(2.4);
    expect(noisy.noiseM).toBeLessThan(3.6);
    expect(measureTrack(read('track400_12p5laps.gpx')).distanceBy).toBe('as-recorded');
  });

  it('give the pace of each kilometre', () => {
    const { paceByKmS } = measureTrack(read('straight_5km.gpx'));
    expect(paceByKmS).toHaveLength(5);
    for (const pace of paceByKmS) expect(pace).toBeCloseTo(300, 2);
  });
});

/** A straight run of some kilometres that stands for a while in the middle, each fix with its own errors. */
const runWithPause = (random: () => number, pauseS: number, everyS: number, deviation: number) => {
  const speed = 3;
  const fixes = [];
  for (let s = 0; s <= 1800 + pauseS; s += everyS) {
    const moving = Math.min(s, 900) + Math.max(0, s - 900 - pauseS);
    const isStanding = s > 900 && s < 900 + pauseS;
    const [east, north] = isStanding ? errorsOf(random, deviation) : [0, 0];
    fixes.push(fixAt(east, speed * moving + north, START_MS + 1000 * s));
  }
  return trackOf(fixes);
};

describe('properties', () => {
  it('standing with jitter of 5 m changes the distance by less than 1 %', () => {
    fc.assert(
      fc.property(
        fc.integer(),
        fc.integer({ min: 60, max: 1200 }),
        fc.constantFrom(1, 2, 5, 10),
        (seed, pauseS, everyS) => {
          const track = runWithPause(seeded(seed), pauseS - (pauseS % everyS), everyS, 5);
          expect(Math.abs(measureTrack(track).distanceM / 5400 - 1)).toBeLessThan(0.01);
        },
      ),
      { numRuns: 200 },
    );
  });

  it('a spike is not run', () => {
    const fixes = Array.from({ length: 301 }, (_, s) => fixAt(0, 3 * s, START_MS + 1000 * s));
    fixes[150] = fixAt(400, 450, START_MS + 150_000);
    expect(Math.abs(measureTrack(trackOf(fixes)).distanceM - 900)).toBeLessThan(3);
  });

  it('climb and descent differ by the difference of the ends, up to the threshold', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 3000, noNaN: true }), { minLength: 2 }),
        (ele) => {
          const { climbM, descentM } = climbOf(ele);
          const between = (ele.at(-1) as number) - (ele[0] as number);
          expect(Math.abs(climbM - descentM - between)).toBeLessThanOrEqual(3 + 1e-6);
        },
      ),
    );
  });

  it('cadence of one foot is doubled, of both kept, and little of it is none', () => {
    const withCadence = (cadence: number | null, share = 1) =>
      measureTrack(
        trackOf(
          Array.from({ length: 100 }, (_, s) => ({
            ...fixAt(0, 3 * s, START_MS + 1000 * s),
            cadence: s < 100 * share ? cadence : null,
          })),
        ),
      ).stepsPerMinute;
    expect(withCadence(86)).toBe(172);
    expect(withCadence(172)).toBe(172);
    expect(withCadence(86, 0.3)).toBeNull();
    expect(withCadence(null)).toBeNull();
  });
});

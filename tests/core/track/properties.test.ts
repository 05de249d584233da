/** What holds for every track: no figure that cannot be right, and the same length however a file was cut, turned or moved. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  measureTrack,
  readGpx,
  writeGpx,
  type MeasuredTrack,
  type Track,
  type TrackPoint,
} from '../../../core/track/index.ts';
import { seeded } from '../../seeded.ts';
import { errorsOf, fixAt, plainSum, START_MS, trackOf } from './tracks.ts';

/** Anything a device may write: places close to each other or far, times that lack, repeat or run back. */
const wildTrack = fc
  .array(
    fc.array(
      fc.record({
        lat: fc.double({ min: -90, max: 90, noNaN: true }),
        lon: fc.double({ min: -180, max: 179.999, noNaN: true }),
        eleM: fc.option(fc.double({ min: -500, max: 9000, noNaN: true })),
        timeMs: fc.option(fc.integer({ min: 0, max: 4e12 })),
        cadence: fc.option(fc.double({ min: 0, max: 400, noNaN: true })),
      }),
      { maxLength: 30 },
    ),
    { maxLength: 4 },
  )
  .map((segments) => trackOf(...segments));

const walk = fc.record({
  seed: fc.integer(),
  fixes: fc.integer({ min: 2, max: 400 }),
  everyS: fc.constantFrom(1, 2, 3, 5, 10),
  noiseM: fc.constantFrom(0, 0.5, 2),
});

/** On so winding a way it matters whether noise just passes for dense: a centimetre of rounding may decide it. */
const toleranceOf = ({ noiseM }: { readonly noiseM: number }) => (noiseM < 1 ? 0.01 : 0.1);

/** A wandering run that stops now and then. */
const wander = (
  { seed, fixes, everyS, noiseM }: { seed: number; fixes: number; everyS: number; noiseM: number },
  lonShift = 0,
): TrackPoint[] => {
  const random = seeded(seed);
  let [east, north, heading, stands] = [0, 0, 2 * Math.PI * random(), 0];
  return Array.from({ length: fixes }, (_, at) => {
    heading += (random() - 0.5) * 0.8;
    if (stands > 0) stands--;
    else if (random() < 0.01) stands = Math.round(60 / everyS);
    const step = stands > 0 ? 0 : 3 * everyS;
    east += step * Math.cos(heading);
    north += step * Math.sin(heading);
    const [x, y] = noiseM > 0 ? errorsOf(random, noiseM) : [0, 0];
    const fix = fixAt(east + x, north + y, START_MS + 1000 * at * everyS);
    const lon = fix.lon + lonShift;
    return { ...fix, lon: lon >= 180 ? lon - 360 : lon };
  });
};

const numbersOf = (measured: MeasuredTrack): number[] => [
  ...Object.values(measured).filter((one): one is number => typeof one === 'number'),
  ...measured.paceByKmS,
  ...measured.segments.flat().flatMap(({ lat, lon, alongM }) => [lat, lon, alongM]),
];

describe('properties of a measured track', () => {
  it('never NaN, never negative, never back along the way, whatever the file', () => {
    fc.assert(
      fc.property(wildTrack, (track) => {
        const measured = measureTrack(track);
        for (const one of numbersOf(measured)) expect(Number.isFinite(one)).toBe(true);
        const { distanceM, elapsedS, movingS, climbM, descentM, paceByKmS } = measured;
        for (const one of [distanceM, elapsedS, movingS, climbM, descentM, ...paceByKmS])
          expect(one ?? 0).toBeGreaterThanOrEqual(0);
        expect(movingS ?? 0).toBeLessThanOrEqual((elapsedS ?? 0) + 1e-6);
        let before = 0;
        for (const { alongM } of measured.segments.flat()) {
          expect(alongM).toBeGreaterThanOrEqual(before);
          before = alongM;
        }
        expect(before).toBeLessThanOrEqual(distanceM);
      }),
      { numRuns: 400 },
    );
  });

  it('a run is at most a twentieth longer than its plain sum', () => {
    fc.assert(
      fc.property(walk, (way) => {
        const fixes = wander(way);
        const { distanceM } = measureTrack(trackOf(fixes));
        expect(distanceM).toBeLessThanOrEqual(1.05 * plainSum(fixes));
      }),
      { numRuns: 150 },
    );
  });

  it('the same elsewhere on its parallel, over 180° too', () => {
    fc.assert(
      fc.property(walk, fc.double({ min: 0, max: 300, noNaN: true }), (way, shift) => {
        const [here, there] = [wander(way), wander(way, shift)].map(
          (fixes) => measureTrack(trackOf(fixes)).distanceM as number,
        ) as [number, number];
        expect(Math.abs(there - here)).toBeLessThanOrEqual(1e-6 * here + 1e-3);
      }),
      { numRuns: 150 },
    );
  });

  it('the same from the end to the start', () => {
    fc.assert(
      fc.property(walk, (way) => {
        const fixes = wander(way);
        const back = fixes.map((fix, at) => ({
          ...(fixes[fixes.length - 1 - at] as TrackPoint),
          timeMs: fix.timeMs,
        }));
        const [there, again] = [fixes, back].map(
          (one) => measureTrack(trackOf(one)).distanceM as number,
        ) as [number, number];
        expect(Math.abs(again - there)).toBeLessThanOrEqual(toleranceOf(way) * there + 10);
      }),
      { numRuns: 150 },
    );
  });

  it('nearly the same in two spans that share a fix', () => {
    fc.assert(
      fc.property(walk, fc.double({ min: 0.2, max: 0.8, noNaN: true }), (way, share) => {
        const fixes = wander({ ...way, fixes: way.fixes + 100 });
        const cut = Math.round(share * fixes.length);
        const [one, two] = [trackOf(fixes), trackOf(fixes.slice(0, cut + 1), fixes.slice(cut))].map(
          (track: Track) => measureTrack(track).distanceM as number,
        ) as [number, number];
        expect(Math.abs(two - one)).toBeLessThanOrEqual(0.06 * one + 40);
      }),
      { numRuns: 150 },
    );
  });

  it('the same once written and read', () => {
    fc.assert(
      fc.property(walk, (way) => {
        const track = trackOf(wander(way));
        const again = readGpx(writeGpx(track));
        if (!again.ok) throw new Error(again.problem.why);
        const [one, two] = [track, again.track].map((each) => measureTrack(each).distanceM);
        expect(Math.abs((two as number) - (one as number))).toBeLessThan(
          toleranceOf(way) * (one as number) + 10,
        );
      }),
      { numRuns: 50 },
    );
  });
});

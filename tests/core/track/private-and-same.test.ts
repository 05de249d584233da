import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isSameTrack } from '../../../core/records/index.ts';
import {
  cutPrivateEnds,
  fingerprintOf,
  geodesicDistance,
  paint,
  PRIVATE_M,
  readGpx,
  sharesOf,
  writeGpx,
  type Track,
} from '../../../core/track/index.ts';
import { seeded } from '../../seeded.ts';
import { fixAt, START_MS, trackOf } from './tracks.ts';

/** A wandering run that may come past its start again. */
const wander = (seed: number, fixes: number, everyS = 3, timed = true): Track => {
  const random = seeded(seed);
  let [east, north, heading] = [0, 0, 2 * Math.PI * random()];
  return trackOf(
    Array.from({ length: fixes }, (_, at) => {
      heading += (random() - 0.5) * 0.6;
      east += 9 * Math.cos(heading);
      north += 9 * Math.sin(heading);
      return fixAt(east, north, timed ? START_MS + at * everyS * 1000 : null);
    }),
  );
};

describe('private ends', () => {
  const track = fc.record({ seed: fc.integer(), fixes: fc.integer({ min: 2, max: 900 }) });

  it('leave no point, and no line between two, within the private distance of either end', () => {
    fc.assert(
      fc.property(track, fc.integer({ min: 50, max: 600 }), ({ seed, fixes }, privateM) => {
        const whole = wander(seed, fixes);
        const all = whole.segments.flat();
        const ends = [all[0], all.at(-1)] as { lat: number; lon: number }[];
        const cut = cutPrivateEnds(whole, { privateM });
        for (const segment of cut.segments)
          for (const [at, point] of segment.entries()) {
            const next = segment[at + 1];
            const between = next
              ? [0, 0.25, 0.5, 0.75, 1].map((share) => ({
                  lat: point.lat + share * (next.lat - point.lat),
                  lon: point.lon + share * (next.lon - point.lon),
                }))
              : [point];
            for (const end of ends)
              for (const place of between)
                expect(geodesicDistance(end, place)).toBeGreaterThan(privateM);
          }
      }),
      { numRuns: 150 },
    );
  });

  it('cut a return past the door out of the middle', () => {
    // Out 2 km, back past the start, 2 km the other way, and home.
    const norths = [...Array(200).keys()].map((at) => 10 * at);
    const path = [
      ...norths,
      ...norths.toReversed(),
      ...norths.map((n) => -n),
      ...norths.toReversed().map((n) => -n),
    ];
    const whole = trackOf(path.map((north, at) => fixAt(0, north, START_MS + at * 3000)));
    const cut = cutPrivateEnds(whole);
    expect(cut.segments).toHaveLength(2);
    const start = whole.segments[0]?.[0] as { lat: number; lon: number };
    for (const point of cut.segments.flat())
      expect(geodesicDistance(start, point)).toBeGreaterThan(PRIVATE_M);
  });

  it('leave nothing of a run that stays near the door, and no name', () => {
    const short = trackOf(
      [0, 50, 100, 50, 0].map((north, at) => fixAt(0, north, START_MS + at * 1000)),
    );
    expect(cutPrivateEnds({ ...short, name: 'From my house' })).toMatchObject({
      name: null,
      segments: [],
    });
  });

  it('make times coarse where asked', () => {
    const cut = cutPrivateEnds(wander(1, 600), { coarseTimes: true });
    expect(cut.segments.length).toBeGreaterThan(0);
    for (const { timeMs } of cut.segments.flat()) expect((timeMs ?? 0) % 60_000).toBe(0);
  });
});

describe('the same track', () => {
  const rounded = (track: Track, digits: number, everySecond = false): Track => ({
    ...track,
    segments: track.segments.map((segment) =>
      segment.map((point) => ({
        ...point,
        lat: Number(point.lat.toFixed(digits)),
        lon: Number(point.lon.toFixed(digits)),
        timeMs:
          point.timeMs === null || !everySecond
            ? point.timeMs
            : 1000 * Math.round(point.timeMs / 1000),
        cadence: 85,
        eleM: 300,
      })),
    ),
  });

  it('is known again after rounding and with other extensions, with times and without', () => {
    fc.assert(
      fc.property(
        fc.integer(),
        fc.integer({ min: 20, max: 800 }),
        fc.constantFrom(5, 6, 7),
        fc.boolean(),
        (seed, fixes, digits, timed) => {
          const track = wander(seed, fixes, 3, timed);
          const again = readGpx(writeGpx(rounded(track, digits, true)));
          if (!again.ok) throw new Error(again.problem.why);
          expect(isSameTrack(fingerprintOf(track), fingerprintOf(again.track))).toBe(true);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('is not taken for another run of the same length, nor of the same way on another day', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer(), (a, b) => {
        fc.pre(a !== b);
        const [one, other] = [wander(a, 400, 3, false), wander(b, 400, 3, false)];
        expect(isSameTrack(fingerprintOf(one), fingerprintOf(other))).toBe(false);
      }),
    );
    const day = wander(5, 300);
    const nextDay = trackOf(
      ...day.segments.map((segment) =>
        segment.map((point) => ({ ...point, timeMs: (point.timeMs as number) + 86_400_000 })),
      ),
    );
    expect(isSameTrack(fingerprintOf(day), fingerprintOf(nextDay))).toBe(false);
  });

  it('is kept short, and tells no place', () => {
    const print = fingerprintOf(wander(9, 900));
    expect(print.length).toBeLessThan(400);
    expect(print).not.toContain('48.');
    expect(isSameTrack('damaged', 't1 0 5')).toBe(false);
  });
});

describe('painting', () => {
  const stretch = fc.record({
    fromM: fc.double({ min: -100, max: 6000, noNaN: true }),
    toM: fc.double({ min: -100, max: 6000, noNaN: true }),
    surface: fc.constantFrom('gravel' as const, 'trail' as const, 'grass' as const),
  });

  it('the last stroke counts, strokes never overlap, and shares sum to 1', () => {
    fc.assert(
      fc.property(fc.array(stretch, { maxLength: 12 }), (strokes) => {
        const painted = strokes.reduce<ReturnType<typeof paint>>(
          (so, stroke) => paint(so, stroke, 5000),
          [],
        );
        for (const [at, one] of painted.entries()) {
          expect(one.fromM).toBeLessThan(one.toM);
          if (at > 0) expect(painted[at - 1]?.toM).toBeLessThanOrEqual(one.fromM);
        }
        const last = strokes.at(-1);
        if (last && Math.min(last.fromM, last.toM) < 4999 && Math.max(last.fromM, last.toM) > 1) {
          const middle =
            (Math.max(0, Math.min(last.fromM, last.toM)) +
              Math.min(5000, Math.max(last.fromM, last.toM))) /
            2;
          const there = painted.find(({ fromM, toM }) => fromM <= middle && middle <= toM);
          if (last.fromM !== last.toM) expect(there?.surface).toBe(last.surface);
        }
        const shares = Object.values(sharesOf(painted, 'road', 5000) ?? {});
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
        for (const share of shares) expect(share).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('says nothing of a way of which a part is unknown', () => {
    const half = paint([], { fromM: 0, toM: 500, surface: 'trail' }, 1000);
    expect(sharesOf(half, null, 1000)).toBeNull();
    expect(sharesOf(half, 'road', 1000)).toEqual({ trail: 0.5, road: 0.5 });
    expect(
      sharesOf(paint(half, { fromM: 500, toM: 1000, surface: 'grass' }, 1000), null, 1000),
    ).toEqual({
      trail: 0.5,
      grass: 0.5,
    });
  });
});

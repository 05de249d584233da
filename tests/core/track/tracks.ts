/** Tracks for tests: straight, round and noisy ones made by arithmetic, with seeds. */
import {
  geodesicDistance,
  type Segment,
  type Track,
  type TrackPoint,
} from '../../../core/track/index.ts';

const EARTH_M_PER_DEGREE = 111_320;

export const fix = (lat: number, lon: number, timeMs: number | null = null): TrackPoint => ({
  lat,
  lon,
  eleM: null,
  timeMs,
  cadence: null,
});

/** Metres east and north of a place near 48°, as a fix. */
export const fixAt = (east: number, north: number, timeMs: number | null): TrackPoint =>
  fix(
    48 + north / EARTH_M_PER_DEGREE,
    11 + east / (EARTH_M_PER_DEGREE * Math.cos((48 * Math.PI) / 180)),
    timeMs,
  );

export const trackOf = (...segments: readonly Segment[]): Track => ({
  name: null,
  segments,
  skippedPoints: 0,
});

export const START_MS = Date.UTC(2026, 4, 1, 6);

/** Two independent errors of mean 0 and this deviation (Box and Muller). */
export const errorsOf = (random: () => number, deviation: number): [number, number] => {
  const size = deviation * Math.sqrt(-2 * Math.log(1 - random()));
  const turn = 2 * Math.PI * random();
  return [size * Math.cos(turn), size * Math.sin(turn)];
};

/** The sum of the geodesics between the fixes, metres: what a distance is without any thought. */
export const plainSum = (fixes: Segment): number =>
  fixes.reduce(
    (sum, fix, at) => sum + (at === 0 ? 0 : geodesicDistance(fixes[at - 1] as TrackPoint, fix)),
    0,
  );

/**
 * A track without its first and last stretch, and without whatever else comes that near to either end, so
 * that it does not show where a tester lives.
 */
import { geodesicDistance, toPlane } from './geodesic.ts';
import type { Segment, Track, TrackPoint } from './track.ts';

/** Metres of the way, and around either end. Judgement, no source. */
export const PRIVATE_M = 300;
/** The plane of a few hundred metres is flat to millimetres; a metre covers it and the rounding of a file. */
const MARGIN_M = 1;

/** Shortest distance from the origin of the plane to the straight line between two points of it. */
const passesAt = (a: { x: number; y: number }, b: { x: number; y: number }): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const long = dx * dx + dy * dy;
  const share = long === 0 ? 0 : Math.min(1, Math.max(0, -(a.x * dx + a.y * dy) / long));
  return Math.hypot(a.x + share * dx, a.y + share * dy);
};

/** Times to the whole minute, in order: the run is still known by its day, the pace no longer by its second. */
const coarse = (point: TrackPoint): TrackPoint => ({
  ...point,
  timeMs: point.timeMs === null ? null : Math.floor(point.timeMs / 60_000) * 60_000,
});

export interface CutOptions {
  readonly privateM?: number;
  readonly coarseTimes?: boolean;
}

/**
 * Cuts the ends off. Neither a point that is left nor the straight line between two that follow each other
 * lies within the private distance of the first or last fix.
 * @returns a track that may have no segments at all, where all of the way was near an end
 */
export const cutPrivateEnds = (
  track: Track,
  { privateM = PRIVATE_M, coarseTimes = false }: CutOptions = {},
): Track => {
  const all = track.segments.flat();
  const [first, last] = [all[0], all.at(-1)];
  if (!first || !last) return { ...track, segments: [] };
  const ends = [first, last];
  const planes = ends.map((end) => toPlane(end));
  const near = privateM + MARGIN_M;

  const alongM: number[] = [];
  let along = 0;
  for (const segment of track.segments)
    for (const [at, point] of segment.entries()) {
      along += at === 0 ? 0 : geodesicDistance(segment[at - 1] as TrackPoint, point);
      alongM.push(along);
    }

  const isFar = (point: TrackPoint, at: number): boolean =>
    (alongM[at] as number) > privateM &&
    along - (alongM[at] as number) > privateM &&
    ends.every((end) => geodesicDistance(end, point) > near);
  const passesFar = (a: TrackPoint, b: TrackPoint): boolean =>
    geodesicDistance(a, b) > 50 * near
      ? false
      : planes.every((plane) => passesAt(plane(a), plane(b)) > near);

  const segments: Segment[] = [];
  let at = 0;
  for (const segment of track.segments) {
    let kept: TrackPoint[] = [];
    const close = () => {
      if (kept.length > 0) segments.push(kept);
      kept = [];
    };
    for (const point of segment) {
      const before = kept.at(-1);
      if (!isFar(point, at++)) close();
      else {
        if (before && !passesFar(before, point)) close();
        kept.push(point);
      }
    }
    close();
  }
  return {
    ...track,
    // A name may tell a place.
    name: null,
    segments: coarseTimes ? segments.map((segment) => segment.map(coarse)) : segments,
  };
};

/**
 * A span made fit to be measured: fixes in order, doubled ones and spikes left out, standing drawn together to
 * one place, and its way measured without noise. Limits without a source are judgement.
 */
import { nearDistance } from './geodesic.ts';
import { noiseOf } from './noise.ts';
import { Span } from './span.ts';
import { drawTogether, isMoving } from './standing.ts';
import type { Segment, TrackPoint } from './track.ts';
import { measureWay, type Way } from './way.ts';

/** Nobody runs faster, metres per second: a fix that needs it there and back is a spike. */
const SPIKE_MPS = 12;

interface CleanSegment {
  /** The fixes where they are thought to have been. */
  readonly points: readonly TrackPoint[];
  /** From each fix to the next, metres. */
  readonly stepsM: Float64Array;
  /** From each fix to the next, 0 where that is standing or a pause. */
  readonly movingS: Float64Array;
}

export interface CleanTrack {
  readonly segments: readonly CleanSegment[];
  /** Standard deviation of a fix in east and in north, metres, as its neighbours show it. */
  readonly noiseM: number;
  readonly isSmoothed: boolean;
}

/** By time where the fixes have one; doubled times keep the first fix. */
const inOrder = (segment: Segment): Segment => {
  if (segment[0]?.timeMs === null) return segment;
  const time = (point: TrackPoint | undefined) => point?.timeMs as number;
  if (segment.every((point, at) => at === 0 || time(segment[at - 1]) < time(point))) return segment;
  const sorted = [...segment].sort((a, b) => time(a) - time(b));
  return sorted.filter((point, at) => at === 0 || time(point) !== time(sorted[at - 1]));
};

const isTooFast = (a: TrackPoint, b: TrackPoint): boolean =>
  a.timeMs !== null &&
  b.timeMs !== null &&
  1000 * nearDistance(a, b) > SPIKE_MPS * (b.timeMs - a.timeMs);

/** Leaves out single fixes that are far off and from which the next one is back. */
const withoutSpikes = (points: Segment): Segment => {
  const kept: TrackPoint[] = [];
  for (const [at, point] of points.entries()) {
    const before = kept.at(-1);
    const after = points[at + 1];
    const isSpike =
      before !== undefined &&
      after !== undefined &&
      isTooFast(before, point) &&
      isTooFast(point, after) &&
      !isTooFast(before, after);
    if (!isSpike) kept.push(point);
  }
  return kept;
};

/**
 * The spans of a track; one receiver, so their noise is estimated together.
 * @param segments with usable times: every fix has one, or none has
 */
export const cleanSegments = (segments: readonly Segment[]): CleanTrack => {
  const spans = segments.map((segment) => new Span(withoutSpikes(inOrder(segment))));
  for (const span of spans) drawTogether(span);
  const noise = noiseOf(spans);
  const ways = spans.map((span) => measureWay(span, noise));
  return {
    noiseM: noise.sigmaM,
    isSmoothed: ways.some((way) => way.isSmoothed),
    segments: spans.map((span, i) => {
      const { stepsM } = ways[i] as Way;
      return {
        points: span.points.map((point, at) => ({
          ...point,
          lat: span.lat[at] as number,
          lon: span.lon[at] as number,
        })),
        stepsM,
        movingS: stepsM.map((stepM, at) =>
          span.isTimed && isMoving(span, at, stepM)
            ? ((span.timesMs[at + 1] as number) - (span.timesMs[at] as number)) / 1000
            : 0,
        ),
      };
    }),
  };
};

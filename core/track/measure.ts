/** How far, how long, how high was it, kilometre by kilometre? Each figure says how it was made. */
import { metres, seconds, type Metres, type Seconds } from '../units/index.ts';
import { cleanSegment, isMoving, lengthening, type CleanPoint } from './clean.ts';
import { geodesicDistance } from './geodesic.ts';
import type { Track, TrackPoint } from './track.ts';

/** A rise or fall smaller than this between two turns is noise, metres. Judgement, no source. */
export const CLIMB_THRESHOLD_M = 3;
/** Half of the cadences below this: the device counted the steps of one foot. Judgement, no source. */
const ONE_FOOT_CADENCE = 130;

/** A fix with its distance from the start along the way. */
export interface MeasuredPoint extends TrackPoint {
  readonly alongM: number;
}

export interface MeasuredTrack {
  readonly distanceM: Metres;
  /** `smoothed`: noise of the fixes was taken out first; `as-recorded`: there was too little to matter. */
  readonly distanceBy: 'smoothed' | 'as-recorded';
  /** Noise of a fix in east and in north, metres, in the noisiest span. */
  readonly noiseM: number;
  /** First fix; null where the file has no times. */
  readonly startMs: number | null;
  /** From the first to the last fix. */
  readonly elapsedS: Seconds | null;
  /** Without standing and without pauses of the recorder. */
  readonly movingS: Seconds | null;
  /** Null where fewer than two fixes have an elevation. */
  readonly climbM: Metres | null;
  readonly descentM: Metres | null;
  /** Moving seconds of each whole kilometre, and of the rest scaled to a kilometre where it is 100 m or more. */
  readonly paceByKmS: readonly number[];
  /** Steps of both feet a minute, over the fixes that have a cadence. */
  readonly stepsPerMinute: number | null;
  readonly segments: readonly (readonly MeasuredPoint[])[];
}

/**
 * Sum of rises and of falls between turning points that differ by the threshold or more.
 * @param elevations known elevations in order, metres
 */
export const climbOf = (
  elevations: readonly number[],
  thresholdM = CLIMB_THRESHOLD_M,
): { climbM: number; descentM: number } => {
  let [climbM, descentM] = [0, 0];
  const [first] = elevations;
  if (first === undefined) return { climbM, descentM };
  let [turn, extreme, direction] = [first, first, 0];
  const book = () => {
    if (extreme > turn) climbM += extreme - turn;
    else descentM += turn - extreme;
  };
  for (const ele of elevations) {
    if (direction === 0) {
      if (Math.abs(ele - turn) >= thresholdM) {
        direction = Math.sign(ele - turn);
        extreme = ele;
      }
    } else if (direction * (ele - extreme) > 0) extreme = ele;
    else if (direction * (extreme - ele) >= thresholdM) {
      book();
      [turn, extreme, direction] = [extreme, ele, -direction];
    }
  }
  if (direction !== 0) book();
  return { climbM, descentM };
};

const cadenceOf = (points: readonly TrackPoint[]): number | null => {
  const known = points.flatMap(({ cadence }) => (cadence !== null && cadence > 0 ? [cadence] : []));
  if (known.length === 0 || known.length < points.length / 2) return null;
  const typical = [...known].sort((a, b) => a - b)[known.length >> 1] as number;
  const mean = known.reduce((sum, one) => sum + one, 0) / known.length;
  return typical < ONE_FOOT_CADENCE ? 2 * mean : mean;
};

/** Measures a track on the WGS84 ellipsoid; what lies between its spans does not count. */
export const measureTrack = (track: Track): MeasuredTrack => {
  const clean = track.segments.map(cleanSegment);
  let along = 0;
  let moving = 0;
  const kilometres: number[] = [];
  let spent = 0;
  const segments = clean.map((span) => {
    const measured: MeasuredPoint[] = [];
    let before: CleanPoint | null = null;
    for (const point of span.points) {
      if (before) {
        const raw = geodesicDistance(before, point);
        const step = raw - lengthening(raw, span);
        const took =
          before.timeMs !== null && point.timeMs !== null && isMoving(before, point, step)
            ? (point.timeMs - before.timeMs) / 1000
            : 0;
        let [left, time] = [step, took];
        for (let toMark = 1000 - (along % 1000); left >= toMark; toMark = 1000) {
          const share = (time * toMark) / left;
          kilometres.push(spent + share);
          [spent, left, time, along] = [0, left - toMark, time - share, along + toMark];
        }
        along += left;
        spent += time;
        moving += took;
      }
      measured.push({ ...point, alongM: along });
      before = point;
    }
    return measured;
  });
  const all = clean.flatMap(({ points }) => points);
  const times = all.flatMap(({ timeMs }) => (timeMs === null ? [] : [timeMs]));
  const isTimed = all.length > 0 && times.length === all.length;
  const [first, last] = [times[0] ?? 0, times.at(-1) ?? 0];
  const elevations = all.flatMap(({ eleM }) => (eleM === null ? [] : [eleM]));
  const climb = elevations.length < 2 ? null : climbOf(elevations);
  const rest = along % 1000;
  return {
    distanceM: metres(along),
    distanceBy: clean.some((one) => one.smoothed) ? 'smoothed' : 'as-recorded',
    noiseM: Math.max(0, ...clean.map(({ noiseM }) => noiseM)),
    startMs: isTimed ? first : null,
    elapsedS: isTimed ? seconds((last - first) / 1000) : null,
    movingS: isTimed ? seconds(moving) : null,
    climbM: climb && metres(climb.climbM),
    descentM: climb && metres(climb.descentM),
    paceByKmS: isTimed ? [...kilometres, ...(rest >= 100 ? [(1000 * spent) / rest] : [])] : [],
    stepsPerMinute: cadenceOf(all),
    segments,
  };
};

/** How far, how long, how high was it, kilometre by kilometre? Each figure says how it was made. */
import { metres, seconds, type Metres, type Seconds } from '../units/index.ts';
import { stepsPerMinute } from './cadence.ts';
import { cleanSegments } from './clean.ts';
import { withUsableTimes } from './times.ts';
import type { Segment, Track, TrackPoint } from './track.ts';

/** A rise or fall smaller than this between two turns is noise, metres. Judgement, no source. */
export const CLIMB_THRESHOLD_M = 3;

/** A fix with its distance from the start along the way. */
export interface MeasuredPoint extends TrackPoint {
  readonly alongM: number;
}

export interface MeasuredTrack {
  readonly distanceM: Metres;
  /** `smoothed`: noise of the fixes was taken out; `as-recorded`: there was too little to matter. */
  readonly distanceBy: 'smoothed' | 'as-recorded';
  /** Noise of a fix in east and in north, metres. */
  readonly noiseM: number;
  /** First fix; null where the file has no times that can be used. */
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
  /** Steps of both feet a minute, over the fixes that have a cadence; null without times, too. */
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

/** Mean of the cadences, where most fixes have one. */
const cadenceOf = (points: readonly TrackPoint[]): number | null => {
  const known = points.flatMap(({ cadence }) => (cadence !== null && cadence > 0 ? [cadence] : []));
  if (known.length === 0 || known.length < points.length / 2) return null;
  return known.reduce((sum, one) => sum + one, 0) / known.length;
};

/** Known elevations of all spans as if each began where the one before ended: what lies between was not measured. */
const joinedElevations = (spans: readonly Segment[]): number[] => {
  const joined: number[] = [];
  for (const span of spans) {
    const known = span.flatMap(({ eleM }) => (eleM === null ? [] : [eleM]));
    const jump = (known[0] ?? 0) - (joined.at(-1) ?? known[0] ?? 0);
    for (const eleM of known) joined.push(eleM - jump);
  }
  return joined;
};

/** Measures a track on the WGS84 ellipsoid; what lies between its spans does not count. */
export const measureTrack = (track: Track): MeasuredTrack => {
  const clean = cleanSegments(withUsableTimes(track).segments);
  let along = 0;
  let moving = 0;
  const kilometres: number[] = [];
  let spent = 0;
  const segments = clean.segments.map(({ points, stepsM, movingS }) =>
    points.map((point, at): MeasuredPoint => {
      if (at > 0) {
        let [left, time] = [stepsM[at - 1] as number, movingS[at - 1] as number];
        moving += time;
        for (let toMark = 1000 - (along % 1000); left >= toMark; toMark = 1000) {
          const share = (time * toMark) / left;
          kilometres.push(spent + share);
          [spent, left, time, along] = [0, left - toMark, time - share, along + toMark];
        }
        along += left;
        spent += time;
      }
      return { ...point, alongM: along };
    }),
  );
  const all = clean.segments.flatMap(({ points }) => points);
  const [first, last] = [all[0]?.timeMs ?? null, all.at(-1)?.timeMs ?? null];
  const isTimed = first !== null && last !== null;
  const elevations = joinedElevations(clean.segments.map(({ points }) => points));
  const climb = elevations.length < 2 ? null : climbOf(elevations);
  const rest = along % 1000;
  const cadence = cadenceOf(all);
  return {
    distanceM: metres(along),
    distanceBy: clean.isSmoothed ? 'smoothed' : 'as-recorded',
    noiseM: clean.noiseM,
    startMs: first,
    elapsedS: isTimed ? seconds((last - first) / 1000) : null,
    movingS: isTimed ? seconds(moving) : null,
    climbM: climb && metres(climb.climbM),
    descentM: climb && metres(climb.descentM),
    paceByKmS: isTimed ? [...kilometres, ...(rest >= 100 ? [(1000 * spent) / rest] : [])] : [],
    stepsPerMinute:
      cadence === null || moving <= 0 ? null : stepsPerMinute(cadence, along / moving),
    segments,
  };
};

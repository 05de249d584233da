/** The fingerprint of a track: see `core/records/track-fingerprint.ts` for what it keeps. */
import { writeFingerprint } from '../records/index.ts';
import { geodesicDistance } from './geodesic.ts';
import { withUsableTimes } from './times.ts';
import type { Track, TrackPoint } from './track.ts';

const SHARES = 48;

/** Linear interpolation of the distance from the start at a mark of the way's time (or length). */
const awayAt = (marks: readonly number[], away: readonly number[], mark: number): number => {
  let after = marks.findIndex((one) => one >= mark);
  if (after < 0) after = marks.length - 1;
  const [from, to] = [marks[Math.max(0, after - 1)] as number, marks[after] as number];
  const [near, far] = [away[Math.max(0, after - 1)] as number, away[after] as number];
  return to > from ? near + ((far - near) * (mark - from)) / (to - from) : far;
};

/** Recognises the track when it comes again, whoever wrote the file. */
export const fingerprintOf = (track: Track): string => {
  let points: readonly TrackPoint[] = withUsableTimes(track).segments.flat();
  const isTimed = points.every(({ timeMs }) => timeMs !== null);
  if (isTimed) points = [...points].sort((a, b) => (a.timeMs as number) - (b.timeMs as number));
  const [start] = points;
  if (!start) return writeFingerprint({ startS: null, length: 0, awayM: [0] });
  let along = 0;
  const marks = points.map((point, at) => {
    const before = points[at - 1];
    if (!isTimed) return (along += before ? geodesicDistance(before, point) : 0);
    return ((point.timeMs as number) - (start.timeMs as number)) / 1000;
  });
  const away = points.map((point) => geodesicDistance(start, point));
  const length = marks.at(-1) as number;
  return writeFingerprint({
    startS: isTimed ? Math.round((start.timeMs as number) / 1000) : null,
    length,
    awayM: Array.from({ length: SHARES }, (_, at) =>
      awayAt(marks, away, (length * (at + 1)) / (SHARES + 1)),
    ),
  });
};

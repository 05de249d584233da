/** A span while it is made fit to be measured: its fixes on a plane, which of them stand, which come evenly. */
import { toPlane } from './geodesic.ts';
import type { Segment, TrackPoint } from './track.ts';

export class Span {
  readonly points: readonly TrackPoint[];
  readonly length: number;
  /** Every fix has a time, or none has. */
  readonly isTimed: boolean;
  /** 0 where there are no times. */
  readonly timesMs: Float64Array;
  /** Metres east and north of the first fix. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly lat: Float64Array;
  readonly lon: Float64Array;
  /** 1 for the fixes that stand together at one place. */
  readonly standing: Uint8Array;
  /** Middle time between two fixes, milliseconds. */
  readonly stepMs: number;

  constructor(points: Segment) {
    this.points = points;
    this.length = points.length;
    this.isTimed = points[0]?.timeMs !== null;
    const numbers = () => new Float64Array(points.length);
    [this.timesMs, this.x, this.y, this.lat, this.lon] = [
      numbers(),
      numbers(),
      numbers(),
      numbers(),
      numbers(),
    ];
    this.standing = new Uint8Array(points.length);
    const plane = points[0] && toPlane(points[0]);
    for (const [at, point] of points.entries()) {
      this.timesMs[at] = point.timeMs ?? 0;
      this.lat[at] = point.lat;
      this.lon[at] = point.lon;
      const place = plane?.(point) ?? { x: 0, y: 0 };
      this.x[at] = place.x;
      this.y[at] = place.y;
    }
    const steps = this.timesMs.slice(1).map((ms, at) => ms - (this.timesMs[at] as number));
    this.stepMs = steps.sort()[steps.length >> 1] ?? 0;
  }

  /** The fixes from first to last stand at this place. */
  moveTo(first: number, last: number, { lat, lon }: { lat: number; lon: number }): void {
    this.standing.fill(1, first, last + 1);
    this.lat.fill(lat, first, last + 1);
    this.lon.fill(lon, first, last + 1);
  }

  /** Whether the fixes that many around this one come evenly, and none of them stands. */
  isEven(at: number, reach: number): boolean {
    const [from, to] = [at - reach, at + reach];
    if (from < 0 || to >= this.length) return false;
    let [least, most] = [Infinity, -Infinity];
    for (let i = from; i <= to; i++) {
      if (this.standing[i]) return false;
      if (i === from) continue;
      const step = (this.timesMs[i] as number) - (this.timesMs[i - 1] as number);
      if (step < least) least = step;
      if (step > most) most = step;
    }
    return most <= 1.6 * least;
  }
}

/** What a track is: fixes in the order in which they were taken, in spans without a gap. */

/** One fix. Degrees on WGS84; null where the file says nothing. */
export interface TrackPoint {
  readonly lat: number;
  /** −180 up to, not including, 180. */
  readonly lon: number;
  readonly eleM: number | null;
  /** Milliseconds since 1970. */
  readonly timeMs: number | null;
  /** As the device wrote it, per minute: of one foot or of both, which the file does not say. */
  readonly cadence: number | null;
}

/** A span of continuous reception: what lies between two of them was not recorded. */
export type Segment = readonly TrackPoint[];

export interface Track {
  readonly name: string | null;
  readonly segments: readonly Segment[];
  /** Points of the file that have no valid place, left out. */
  readonly skippedPoints: number;
}

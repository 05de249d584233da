export type { Segment, Track, TrackPoint } from './track.ts';
export {
  gpxReader,
  readGpx,
  type GpxOutcome,
  type GpxProblem,
  type GpxReader,
} from './read-gpx.ts';
export { encodingOfXml } from './encoding.ts';
export { geodesicDistance } from './geodesic.ts';
export { climbOf, measureTrack, type MeasuredPoint, type MeasuredTrack } from './measure.ts';
export { fingerprintOf } from './fingerprint.ts';
export { cutPrivateEnds, PRIVATE_M, type CutOptions } from './private-ends.ts';
export { writeGpx } from './write-gpx.ts';
export { paint, sharesOf, type Stretch } from './painting.ts';

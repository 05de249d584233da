/** A file from a watch becomes what the form keeps of it; the whole track stays on this phone. */
import {
  encodingOfXml,
  fingerprintOf,
  gpxReader,
  measureTrack,
  readGpx,
  type GpxOutcome,
  type GpxProblem,
  type Track,
} from '../../../core/track/index.ts';
import type { Sha256 } from '../../../core/records/index.ts';
import type { Store } from '../../store/index.ts';
import type { TrackForm } from '../../drafts/run.ts';

export const TRACK_TYPE = 'application/gpx+xml';

/** Reads the file piece by piece, so that a huge or hostile one ends early and fills no memory. */
const readFile = async (file: Blob): Promise<GpxOutcome> => {
  const head = new Uint8Array(await file.slice(0, 200).arrayBuffer());
  let decoder: TextDecoder;
  try {
    decoder = new TextDecoder(encodingOfXml(head));
  } catch {
    return { ok: false, problem: { why: 'broken-xml', line: 1, column: 0 } };
  }
  const reader = gpxReader();
  const pieces = file.stream().getReader();
  for (let more = true; more;) {
    const { done, value } = await pieces.read();
    more = reader.write(done ? decoder.decode() : decoder.decode(value, { stream: true })) && !done;
  }
  await pieces.cancel();
  return reader.end();
};

export type TrackOutcome =
  | {
      readonly ok: true;
      readonly track: TrackForm;
      /** Points of the file without a valid place, which nothing was measured by. */
      readonly skippedPoints: number;
    }
  | { readonly ok: false; readonly why: GpxProblem['why'] | 'storage-full'; readonly line: number };

/** What the form keeps of a measured track; `whole` names the file as it lies on this phone. */
const formOf = (track: Track, whole: Sha256): TrackForm => {
  const measured = measureTrack(track);
  const { movingS, stepsPerMinute } = measured;
  return {
    whole,
    fingerprint: fingerprintOf(track),
    distanceM: Math.round(measured.distanceM),
    startMs: measured.startMs,
    elapsedS: measured.elapsedS,
    movingS: movingS === null ? null : Math.round(movingS),
    climbM: measured.climbM === null ? null : Math.round(measured.climbM),
    stepsPerShoe:
      stepsPerMinute === null || movingS === null
        ? null
        : Math.round((stepsPerMinute * movingS) / 120),
    paceByKmS: measured.paceByKmS.map(Math.round),
    distanceBy: measured.distanceBy,
    stretches: [],
    send: false,
  };
};

/** Reads, measures and keeps a GPX file. */
export const takeTrack = async (store: Store, file: Blob): Promise<TrackOutcome> => {
  const read = await readFile(file);
  if (!read.ok) return { ok: false, why: read.problem.why, line: read.problem.line };
  const kept = await store.putAttachment(new Uint8Array(await file.arrayBuffer()), TRACK_TYPE);
  if (!kept.ok) return { ok: false, why: 'storage-full', line: 0 };
  const { skippedPoints } = read.track;
  return { ok: true, track: formOf(read.track, kept.value), skippedPoints };
};

/** The whole track as it lies on this phone; null where it is not here (any more). */
export const wholeTrack = async (store: Store, whole: string): Promise<Track | null> => {
  const kept = await store.attachment(whole as Sha256);
  if (!kept) return null;
  const text = new TextDecoder(encodingOfXml(kept.bytes.subarray(0, 200))).decode(kept.bytes);
  const read = readGpx(text);
  return read.ok ? read.track : null;
};

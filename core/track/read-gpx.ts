/**
 * Reads the tracks of a GPX file (open standard, versions 1.1 and 1.0) piece by piece, in bounded memory.
 *
 * Only what lies in `trk/trkseg/trkpt` counts: waypoints, routes and foreign elements are passed over, and
 * of extensions only `cad` or `cadence` is read, in whatever namespace. No entity is defined and nothing is
 * fetched: a document type declaration ends the reading.
 */
import { SaxesParser } from 'saxes';
import type { Segment, Track, TrackPoint } from './track.ts';

export const MAX_GPX_CHARACTERS = 50_000_000;
export const MAX_POINTS = 500_000;
const MAX_DEPTH = 64;
/** Longest text of one element, such as a name; a fix's own are far shorter. */
const MAX_TEXT = 10_000;

export interface GpxProblem {
  readonly why:
    | 'not-gpx'
    | 'broken-xml'
    /** A document type declaration: it could define entities or name files elsewhere. */
    | 'doctype'
    | 'too-deep'
    | 'too-large'
    | 'too-many-points'
    /** Only places or a route. */
    | 'no-track'
    /** A track, or nothing at all, without a single point. */
    | 'no-points'
    /** Points, but not one whose latitude and longitude can be. The line is that of the first. */
    | 'no-places';
  readonly line: number;
  readonly column: number;
}

export type GpxOutcome =
  | { readonly ok: true; readonly track: Track }
  | { readonly ok: false; readonly problem: GpxProblem };

export interface GpxReader {
  /** Takes the next piece of the text; false once reading has ended early and the rest may stay away. */
  write(text: string): boolean;
  end(): GpxOutcome;
}

/** xsd:decimal: a dot, no exponent, blanks around it collapse. */
const DECIMAL = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)$/;

const decimal = (text: string | undefined): number | null => {
  const trimmed = text?.trim() ?? '';
  return DECIMAL.test(trimmed) ? Number(trimmed) : null;
};

/** xsd:dateTime; a time without a zone is UTC, as the standard has it. */
const instant = (text: string): number | null => {
  const trimmed = text.trim();
  if (!/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d/.test(trimmed)) return null;
  const ms = Date.parse(/(?:Z|[+-]\d\d:\d\d)$/.test(trimmed) ? trimmed : `${trimmed}Z`);
  return Number.isFinite(ms) ? ms : null;
};

/** A place, or null. 180° east is −180°: the schema excludes it, but many devices write it. */
const placeOf = (
  lat: string | undefined,
  lon: string | undefined,
): { lat: number; lon: number } | null => {
  const [y, x] = [decimal(lat), decimal(lon)];
  if (y === null || x === null || Math.abs(y) > 90 || Math.abs(x) > 180) return null;
  return { lat: y, lon: x === 180 ? -180 : x };
};

const localName = (name: string): string => name.slice(name.indexOf(':') + 1);

/** Where in the file the parser stands, as far as it matters. */
type Place =
  'gpx' | 'trk' | 'trkseg' | 'trkpt' | 'name' | 'ele' | 'time' | 'extensions' | 'cad' | 'other';

const CHILDREN: Readonly<Record<Place, Readonly<Record<string, Place>>>> = {
  gpx: { trk: 'trk' },
  trk: { trkseg: 'trkseg', name: 'name' },
  trkseg: { trkpt: 'trkpt' },
  trkpt: { ele: 'ele', time: 'time', extensions: 'extensions' },
  // Extensions nest as their makers like; the cadence may stand at any depth.
  extensions: { cad: 'cad', cadence: 'cad' },
  name: {},
  ele: {},
  time: {},
  cad: {},
  other: {},
};

/** A reader for one file, fed with pieces of its text in order. */
export const gpxReader = (): GpxReader => {
  const parser = new SaxesParser({ xmlns: false, position: true });
  let problem: GpxProblem | null = null;
  let read = 0;
  let points = 0;
  let skippedPoints = 0;
  let firstSkipped: { line: number; column: number } | null = null;
  let hasOthers = false;
  let name: string | null = null;
  const segments: Segment[] = [];
  let segment: TrackPoint[] = [];
  const places: Place[] = [];
  let text = '';
  let wantsText = false;
  let place: { lat: number; lon: number } | null = null;
  let eleM: number | null = null;
  let timeMs: number | null = null;
  let cadence: number | null = null;

  const fail = (
    why: GpxProblem['why'],
    { line, column } = { line: parser.line, column: parser.column },
  ) => {
    problem ??= { why, line, column };
  };
  const closeSegment = () => {
    if (segment.length > 0) segments.push(segment);
    segment = [];
  };

  parser.on('error', () => fail('broken-xml'));
  parser.on('doctype', () => fail('doctype'));
  parser.on('opentag', ({ name: qualified, attributes }) => {
    if (problem) return;
    const local = localName(qualified);
    const parent = places.at(-1);
    if (places.length >= MAX_DEPTH) return fail('too-deep');
    if (parent === undefined && local !== 'gpx') return fail('not-gpx');
    const child: Place =
      parent === undefined
        ? 'gpx'
        : (CHILDREN[parent][local] ?? (parent === 'extensions' ? 'extensions' : 'other'));
    places.push(child);
    if (parent === 'gpx' && (local === 'wpt' || local === 'rte')) hasOthers = true;
    wantsText =
      child === 'ele' || child === 'time' || child === 'cad' || (child === 'name' && !name);
    text = '';
    if (child === 'trkpt') {
      place = placeOf(attributes['lat'], attributes['lon']);
      eleM = timeMs = cadence = null;
    }
  });
  const onText = (piece: string) => {
    if (!wantsText || problem) return;
    text += piece;
    if (text.length > MAX_TEXT) fail('too-large');
  };
  parser.on('text', onText);
  parser.on('cdata', onText);
  parser.on('closetag', () => {
    if (problem) return;
    const closed = places.pop();
    wantsText = false;
    if (closed === 'ele') eleM = decimal(text);
    else if (closed === 'time') timeMs = instant(text);
    else if (closed === 'cad') cadence = decimal(text);
    else if (closed === 'name') name ??= text.trim() || null;
    else if (closed === 'trkseg') closeSegment();
    else if (closed === 'trkpt') {
      if (++points > MAX_POINTS) fail('too-many-points');
      else if (place) segment.push({ ...place, eleM, timeMs, cadence });
      else {
        skippedPoints++;
        firstSkipped ??= { line: parser.line, column: parser.column };
      }
    }
  });

  return {
    write(piece) {
      if (problem) return false;
      read += piece.length;
      if (read > MAX_GPX_CHARACTERS) fail('too-large');
      else
        // In small steps, so that a file that fails early is not parsed to its end.
        for (let at = 0; at < piece.length && !problem; at += 65_536)
          parser.write(piece.slice(at, at + 65_536));
      return !problem;
    },
    end() {
      if (!problem) parser.close();
      closeSegment();
      if (!problem && segments.length === 0) {
        if (firstSkipped) fail('no-places', firstSkipped);
        else fail(hasOthers ? 'no-track' : 'no-points');
      }
      return problem
        ? { ok: false, problem }
        : { ok: true, track: { name, segments, skippedPoints } };
    },
  };
};

/** Reads a whole text at once. */
export const readGpx = (text: string): GpxOutcome => {
  const reader = gpxReader();
  reader.write(text);
  return reader.end();
};

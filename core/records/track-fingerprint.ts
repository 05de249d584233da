/**
 * Is this the track that was logged before, although another program wrote it out again? A fingerprint
 * keeps when the track began, how long it took, and how far the runner was from the start at even shares of
 * the time: shape enough to know it again, and no place.
 */

/** Metres of one unit of the profile: coarser than any rounding of coordinates that still makes a track. */
const UNIT_M = 10;
const FORMAT = 't1';

export interface TrackProfile {
  /** Whole seconds since 1970; null where the track has no times. */
  readonly startS: number | null;
  /** Whole seconds from the first to the last fix; with no times, whole metres along the way. */
  readonly length: number;
  /** Metres from the first fix, at even shares of the length. */
  readonly awayM: readonly number[];
}

/** The fingerprint as a record keeps it. */
export const writeFingerprint = ({ startS, length, awayM }: TrackProfile): string =>
  [FORMAT, startS ?? '-', Math.round(length), ...awayM.map((m) => Math.round(m / UNIT_M))].join(
    ' ',
  );

const parse = (text: string): TrackProfile | null => {
  const [format, start, ...numbers] = text.split(' ');
  if (format !== FORMAT || numbers.length < 2) return null;
  const [length, ...units] = numbers.map(Number);
  if (numbers.some((one) => !/^\d+$/.test(one)) || length === undefined) return null;
  if (start !== '-' && !/^-?\d+$/.test(start ?? '')) return null;
  return {
    startS: start === '-' ? null : Number(start),
    length,
    awayM: units.map((one) => one * UNIT_M),
  };
};

/** Whether two fingerprints are of one track, up to rounding of places and times. */
export const isSameTrack = (a: string, b: string): boolean => {
  if (a === b) return true;
  const [one, other] = [parse(a), parse(b)];
  if (!one || !other || (one.startS === null) !== (other.startS === null)) return false;
  if (one.startS !== null && Math.abs(one.startS - (other.startS as number)) > 2) return false;
  const tolerance = one.startS === null ? Math.max(10, 0.01 * one.length) : 2;
  return (
    Math.abs(one.length - other.length) <= tolerance &&
    one.awayM.length === other.awayM.length &&
    one.awayM.every((m, at) => Math.abs(m - (other.awayM[at] as number)) <= 3 * UNIT_M)
  );
};

/**
 * How much of a pair's seam is sewn? The picture of a pair carries a seam around its sole: one stitch is 10 km, and it
 * closes at the distance that the brief asks of a pair.
 */
import { metres, type Metres } from '../../../core/units/index.ts';

export const STITCH_M: Metres = metres(10_000);
/** Of one stitch and the gap behind it, how much is thread. */
const THREAD = 0.66;

export interface Seam {
  /** Stitches of the whole seam, at least 1. */
  readonly stitches: number;
  /** How many of them are sewn; the last one may be sewn in part. */
  readonly sewn: number;
}

/** @param targetM what the brief asks of a pair, more than 0 */
export const seamOf = (distanceM: Metres, targetM: Metres): Seam => {
  const stitches = Math.max(1, Math.round(targetM / STITCH_M));
  return { stitches, sewn: Math.min(stitches, (distanceM / targetM) * stitches) };
};

/** Dashes and gaps of a stroke whose path is `stitches` long (`pathLength`), as far as it is sewn. */
export const dashesOf = ({ stitches, sewn }: Seam): string => {
  const whole = Math.floor(sewn);
  const part = Math.min(THREAD, sewn - whole);
  const parts = Array.from({ length: whole }, () => [THREAD, 1 - THREAD]).flat();
  // A path that is not sewn at all still needs a dash, or it would be drawn whole.
  parts.push(part, stitches - whole - part);
  return parts.map((one) => Number(one.toFixed(3))).join(' ');
};

/** Dashes and gaps of the whole seam, the line that is still to be sewn. */
export const allDashes = `${THREAD} ${(1 - THREAD).toFixed(2)}`;

/**
 * Which size is this in the other size systems?
 *
 * Mondopoint (ISO 9407:2019) is the foot length in millimetres and what Pairlog stores. The others are computed from
 * it as ISO/TS 19407:2015 aligns them, on foot length; its own tables are not public, so what stands here is the
 * arithmetic of public size-system pages and of charts by foot length, which agree:
 *  - a Paris point is 2/3 cm and the last two points longer than the foot: EU = 0.15 foot + 2;
 *  - a UK size is 1/3 inch and the last 2/3 inch longer than the foot: UK = 3 foot − 23, in inches;
 *  - US men's is UK + 1, that is 3 foot − 22 (the Brannock scale);
 *  - US women's is UK + 2, that is 3 foot − 21. Many makers' tables say men's + 1.5 instead.
 * Makers' tables differ by half a size and more: a converted size is a guide.
 */
import { millimetres, type Millimetres } from './quantity.ts';

/** `us` are men's sizes: those of a shoe for everybody, and what was kept before women's were offered. */
export type SizeSystem = 'mondopoint' | 'eu' | 'uk' | 'us' | 'us-women';

const MM_PER_INCH = 25.4;

/** What is taken from three times the foot length in inches. */
const LESS = { uk: 23, us: 22, 'us-women': 21 } as const;

/** Foot length in millimetres as a size of another system; not rounded. */
export const sizeOf = (footLength: Millimetres, system: SizeSystem): number => {
  if (system === 'mondopoint') return footLength;
  return system === 'eu' ? 0.15 * footLength + 2 : (3 * footLength) / MM_PER_INCH - LESS[system];
};

/** Foot length in millimetres of a size of another system: the inverse of {@link sizeOf}. */
export const footLengthOf = (size: number, system: SizeSystem): Millimetres => {
  if (system === 'mondopoint') return millimetres(size);
  return millimetres(
    system === 'eu' ? (size - 2) / 0.15 : ((size + LESS[system]) * MM_PER_INCH) / 3,
  );
};

/** Feet are measured to the millimetre: within a tenth of one of the middle of two sizes is a tie. Judgement. */
const TIE_MM = 0.1;

/**
 * The size that a pair for this foot length is marked with: the nearest half, of two equally near the smaller, as
 * published tables do it (255 mm is EU 40, 235 mm UK 4.5). Mondopoint: the nearest whole millimetre.
 */
export const markedSizeOf = (footLength: Millimetres, system: SizeSystem): number =>
  system === 'mondopoint'
    ? Math.round(footLength)
    : Math.ceil(2 * sizeOf(millimetres(footLength - TIE_MM), system) - 0.5) / 2;

/** The systems that count the last: Paris points of 2/3 cm, and thirds of an inch. */
export type LastSizeSystem = 'eu' | 'uk';

/**
 * Length of a last in millimetres as a size, not rounded: EU 1.5 a centimetre, UK adult 3 an inch less 25 (public
 * size-system pages). Two Paris points over {@link sizeOf} are the toe's room in the EU system.
 */
export const sizeOfLast = (lastLength: Millimetres, system: LastSizeSystem): number =>
  system === 'eu' ? 0.15 * lastLength : (3 * lastLength) / MM_PER_INCH - 25;

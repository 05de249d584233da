/**
 * Which size is this in the other size systems?
 *
 * Mondopoint (ISO 9407) is the foot length in millimetres and what Pairlog stores. The others are
 * computed from foot length by the customary formulas below; makers' tables differ by half a size,
 * so a converted size is a guide. UK and EU last-length formulas: public size-system pages;
 * the foot-length forms of UK and US: from memory (US men = UK + 1, common practice, no source).
 */
import { millimetres, type Millimetres } from './quantity.ts';

export type SizeSystem = 'mondopoint' | 'eu' | 'uk' | 'us';

const MM_PER_INCH = 25.4;

/** Foot length in millimetres as a size of another system; not rounded. */
export const sizeOf = (footLength: Millimetres, system: SizeSystem): number => {
  switch (system) {
    case 'mondopoint':
      return footLength;
    case 'eu':
      return 0.15 * footLength + 2;
    case 'uk':
      return (3 * footLength) / MM_PER_INCH - 23;
    case 'us':
      return (3 * footLength) / MM_PER_INCH - 22;
  }
};

/** Foot length in millimetres of a size of another system: the inverse of {@link sizeOf}. */
export const footLengthOf = (size: number, system: SizeSystem): Millimetres => {
  switch (system) {
    case 'mondopoint':
      return millimetres(size);
    case 'eu':
      return millimetres((size - 2) / 0.15);
    case 'uk':
      return millimetres(((size + 23) * MM_PER_INCH) / 3);
    case 'us':
      return millimetres(((size + 22) * MM_PER_INCH) / 3);
  }
};

/** The systems that count the last: Paris points of 2/3 cm, and thirds of an inch. */
export type LastSizeSystem = 'eu' | 'uk';

/**
 * Length of a last in millimetres as a size, not rounded: EU 1.5 a centimetre, UK adult 3 an inch less 25 (public
 * size-system pages). Two Paris points over {@link sizeOf} are the toe's room in the EU system.
 */
export const sizeOfLast = (lastLength: Millimetres, system: LastSizeSystem): number =>
  system === 'eu' ? 0.15 * lastLength : (3 * lastLength) / MM_PER_INCH - 25;

/** Length of the last of a size: the inverse of {@link sizeOfLast}. */
export const lastLengthOf = (size: number, system: LastSizeSystem): Millimetres =>
  millimetres(system === 'eu' ? size / 0.15 : ((size + 25) * MM_PER_INCH) / 3);

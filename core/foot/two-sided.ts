/**
 * Which comfort questions have their good point in the middle, and what a mark on such a line says.
 *
 * "Far too hard or too soft … just right" does not tell the foam developer which way to go; a just-about-right line
 * does (Rothman L & Parker MJ, Just-About-Right Scales, ASTM MNL63, 2009). A mark is a whole number from −100 (too
 * little of it) over 0 (just right) to 100 (too much). Overall comfort, weight and inside feel have one good end and
 * stay on the 0-100 line: feet do not rank the mass of shoes well, and smoothness does not go with preference.
 *
 * The ends of cushioning, flexibility and so on are chosen so that the low end is less of the thing named: too soft is
 * too little firmness, too stiff is too little flexibility.
 */
import { comfortAttributeIds, type ComfortAttributeId } from './comfort-attributes.ts';

/** A question whose good point is in the middle; those that were once asked on a 0-100 line keep that name. */
export type TwoSidedId =
  Exclude<ComfortAttributeId, 'overall' | 'inside-feel' | 'weight-feel'> | 'ball-width';

/** All but the first and the last two of the others, which have one good end; a test holds the names against the type. */
export const twoSidedIds = [
  ...(comfortAttributeIds.slice(1, -2) as Exclude<TwoSidedId, 'ball-width'>[]),
  'ball-width',
] as readonly TwoSidedId[];

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
export const twoSidedIds = [
  'heel-cushioning',
  'forefoot-cushioning',
  'fit-length',
  'toe-room',
  'ball-width',
  'arch',
  'midfoot-hold',
  'heel-hold',
  'flexibility',
  'stability',
  'ventilation',
] as const;
/** A question whose good point is in the middle; those that were once asked on a 0-100 line keep that name. */
export type TwoSidedId = (typeof twoSidedIds)[number];

export const isTwoSided = (attribute: string): attribute is TwoSidedId =>
  (twoSidedIds as readonly string[]).includes(attribute);

/** On which side of the good point a mark lies. */
export type Side = 'low' | 'right' | 'high';

/**
 * Up to here a mark, or a tester's mean, is "just right". Twice the change that one runner's answer can show by chance
 * (6.5 of 100, MDD 90 %; Bishop C et al., J Sports Sci 2020;38:2100-07), because this line has 200 points, is 13; the
 * middle of a seven-point just-about-right scale reaches to 14.3. Rounded up to 15: judgement.
 */
export const JUST_RIGHT = 15;
/** Beyond these a mark is "too", and "far too". Judgement. */
const [TOO, FAR] = [40, 75];

/** @param mark −100 to 100 */
export const sideOf = (mark: number): Side =>
  mark < -JUST_RIGHT ? 'low' : mark > JUST_RIGHT ? 'high' : 'right';

/** How far from just right a mark lies, in the words of the line. */
export type Degree = 'right' | 'little' | 'too' | 'far';

/** @param mark −100 to 100 */
export const degreeOf = (mark: number): Degree => {
  const far = Math.abs(mark);
  return far <= JUST_RIGHT ? 'right' : far <= TOO ? 'little' : far <= FAR ? 'too' : 'far';
};

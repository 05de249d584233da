/** What does a mark on a line with the good point in the middle say? A file of its own: no first page reads marks. */
import { twoSidedIds, type TwoSidedId } from './two-sided.ts';

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

/** A foot or a last from above, drawn to a length and a width: the outline of the sole, stretched to them. */
import { soleOutlinePath } from '../../../core/foot/index.ts';

/** Where the outline of the sole begins and ends in its drawing, measured once from its path. */
const numbersOf = (path: string) => [...path.matchAll(/-?\d+(?:\.\d+)?/g)].map(Number);
const outline = (() => {
  const path = soleOutlinePath();
  const numbers = numbersOf(path);
  const xs = numbers.filter((_, at) => at % 2 === 0);
  const ys = numbers.filter((_, at) => at % 2 === 1);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  return { path, left, bottom, width: right - left, length: bottom - top };
})();

/** The outline of a left foot as the `d` of an SVG path; `stretchedTo` says where it goes. */
export const footOutlinePath = outline.path;

/** Where no width was measured, that of the drawing at this length. */
export const widthAt = (length: number): number => (length * outline.width) / outline.length;

/**
 * The transform that gives the outline its size.
 * @param at x of its middle, and y of the heel's end, in the units of `length`
 */
export const stretchedTo = (
  length: number,
  width: number,
  [middle, heel]: readonly [number, number],
): string => {
  const [x, y] = [width / outline.width, length / outline.length];
  const dx = middle - x * (outline.left + outline.width / 2);
  return `translate(${dx} ${heel - y * outline.bottom}) scale(${x} ${y})`;
};

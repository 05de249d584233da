/** Where on a line with the good point in the middle does a finger or a key put the mark? Pure. */
import {
  isTwoSided,
  JUST_RIGHT,
  type ComfortAttributeId,
  type TwoSidedId,
} from '../../core/foot/index.ts';
import type { Brief } from '../../core/records/index.ts';
import type { RunForm } from './run-form.ts';

/** One press of an arrow, and of a page key. */
const [STEP, LEAP] = [5, 20];

const inside = (mark: number): number => Math.min(100, Math.max(-100, Math.round(mark)));

/** The middle holds on to what comes near: nobody hits it to the point, and "just right" is one answer. */
const heldByMiddle = (mark: number): number => (Math.abs(mark) <= JUST_RIGHT ? 0 : mark);

/** The mark where a line is touched. @param share 0 at the left end, 1 at the right one */
export const markAt = (share: number): number => heldByMiddle(inside(200 * share - 100));

/** The first mark beside the middle that is not just right any more. */
const BESIDE = JUST_RIGHT + STEP;

const moved = (from: number, by: number): number => {
  const way = Math.sign(by);
  const start = heldByMiddle(from);
  // Out of the middle goes to the first mark that says something else, and back over it stops there.
  if (start === 0) return inside(way * Math.max(BESIDE, Math.abs(by)));
  const next = start + by;
  return Math.sign(next) !== Math.sign(start) ? 0 : heldByMiddle(inside(next));
};

/**
 * The mark after a key; null: the key does not move it.
 * @param mark null: nothing was answered, so that the first arrow says "just right"
 */
export const markAfterKey = (mark: number | null, key: string): number | null => {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return mark === null ? 0 : moved(mark, STEP);
    case 'ArrowLeft':
    case 'ArrowDown':
      return mark === null ? 0 : moved(mark, -STEP);
    case 'PageUp':
      return moved(mark ?? 0, LEAP);
    case 'PageDown':
      return moved(mark ?? 0, -LEAP);
    case 'Home':
      return -100;
    case 'End':
      return 100;
    default:
      return null;
  }
};

export interface AskedOfComfort {
  /** Asked on a line with the good point in the middle. */
  readonly twoSided: readonly TwoSidedId[];
  /** Asked on a 0-100 line, besides overall comfort. */
  readonly oneSided: readonly ComfortAttributeId[];
}

/**
 * Which questions a run is asked, and on which line. What was answered on the 0-100 line before stays there, in the run
 * or draft that has it: its figure says nothing of either side, and is neither turned into a mark nor asked twice.
 */
export const askedOfComfort = (
  { attributes, alsoAsked = [] }: Pick<Brief, 'attributes' | 'alsoAsked'>,
  answered: RunForm['comfort'],
): AskedOfComfort => {
  const others = attributes.filter((one) => one !== 'overall');
  const isOnOldLine = (one: ComfortAttributeId): boolean => !isTwoSided(one) || one in answered;
  return {
    twoSided: [
      ...others.flatMap((one) => (isTwoSided(one) && !isOnOldLine(one) ? [one] : [])),
      ...alsoAsked,
    ],
    oneSided: others.filter(isOnOldLine),
  };
};

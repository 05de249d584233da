/**
 * Where do the words of the callouts stand beside the drawn shoes, so that their leader lines do not cross and no two
 * overlap? Pure: the drawing has a size of its own, in px, and everything else follows.
 */
import type { FootView } from '../../../core/foot/index.ts';
import { zones } from '../../../core/foot/index.ts';
import type { Foot } from '../../../core/records/index.ts';
import type { Callout } from '../../../core/review/index.ts';
import { middleOf } from '../foot-map/shoe-drawing.tsx';

export const DRAWING = { width: 108, height: 260, gap: 16 } as const;
/** From the outside in, as one looks at a pair that is laid out. */
export const drawn: readonly { readonly foot: Foot; readonly view: FootView }[] = [
  { foot: 'left', view: 'sole' },
  { foot: 'left', view: 'upper' },
  { foot: 'right', view: 'upper' },
  { foot: 'right', view: 'sole' },
];
export const DRAWINGS_WIDTH = drawn.length * DRAWING.width + (drawn.length - 1) * DRAWING.gap;
/** A title and two or three lines. */
const SLOT = 64;
/** Middle of the title's line below the top of its words. */
const TITLE_Y = 10;

export interface PlacedCallout {
  readonly callout: Callout;
  readonly foot: Foot;
  /** The spot on the drawing, px. */
  readonly x: number;
  readonly y: number;
  /** Top of its words, px. */
  readonly top: number;
  /** Where the leader line begins, px: the middle of the title. */
  readonly lineY: number;
}

export interface CalloutLayout {
  readonly left: readonly PlacedCallout[];
  readonly right: readonly PlacedCallout[];
  /** Of the whole picture, px. */
  readonly height: number;
}

const spotOf = (callout: Callout, foot: Foot): { readonly x: number; readonly y: number } => {
  const { view } = zones[callout.zone];
  const at = drawn.findIndex((one) => one.foot === foot && one.view === view);
  const [x, y] = middleOf(view, foot, callout.zone);
  return {
    x: at * (DRAWING.width + DRAWING.gap) + (x / 200) * DRAWING.width,
    y: (y / 480) * DRAWING.height,
  };
};

/** Tops from the top down, each at its spot or as near as those above leave it, none below the end if there is room. */
const stacked = (
  own: readonly Omit<PlacedCallout, 'top' | 'lineY'>[],
  height: number,
): PlacedCallout[] => {
  const sorted = [...own].sort((a, b) => a.y - b.y);
  let free = 0;
  const tops = sorted.map(({ y }) => {
    const top = Math.max(free, y - TITLE_Y);
    free = top + SLOT;
    return top;
  });
  let end = Math.max(height, sorted.length * SLOT);
  for (let at = tops.length - 1; at >= 0; at--) {
    tops[at] = Math.min(tops[at] as number, end - SLOT);
    end = tops[at] as number;
  }
  return sorted.map((one, at) => {
    const top = tops[at] as number;
    return { ...one, top, lineY: top + TITLE_Y };
  });
};

/** Those of one shoe stand on its side; those of both shoes where fewer stand. */
export const layOut = (callouts: readonly Callout[]): CalloutLayout => {
  const sides: Record<Foot, Omit<PlacedCallout, 'top' | 'lineY'>[]> = { left: [], right: [] };
  const put = (callout: Callout, foot: Foot) =>
    sides[foot].push({ callout, foot, ...spotOf(callout, foot) });
  for (const one of callouts) if (one.side !== 'both') put(one, one.side);
  for (const one of callouts)
    if (one.side === 'both') put(one, sides.left.length <= sides.right.length ? 'left' : 'right');
  const height = Math.max(DRAWING.height, SLOT * Math.max(sides.left.length, sides.right.length));
  return { left: stacked(sides.left, height), right: stacked(sides.right, height), height };
};

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
/** Height of the words until they have been measured, px: a title and two or three lines. */
const USUAL_HEIGHT = 56;
/** Between the words of two callouts, px. */
const GAP = 8;
/** Middle of the title's line below the top of its words. */
const TITLE_Y = 10;
/** Where the lines begin, px outside of the drawings. */
export const LINE_START = 8;
/** Between the marks of one zone, px: a mark is 16 wide. */
const MARK_STEP = 17;

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

/** How high the words of each callout are, px; absent: not measured yet. */
export type CalloutHeights = ReadonlyMap<Callout, number>;

type Spotted = Omit<PlacedCallout, 'top' | 'lineY'>;

const spotOf = (callout: Callout, foot: Foot): { readonly x: number; readonly y: number } => {
  const { view } = zones[callout.zone];
  const at = drawn.findIndex((one) => one.foot === foot && one.view === view);
  const [x, y] = middleOf(view, foot, callout.zone);
  return {
    x: at * (DRAWING.width + DRAWING.gap) + (x / 200) * DRAWING.width,
    y: (y / 480) * DRAWING.height,
  };
};

/** Marks of one zone stand side by side. */
const apart = (own: readonly Spotted[]): Spotted[] =>
  own.map((one) => {
    const same = own.filter(({ callout }) => callout.zone === one.callout.zone);
    const shift = (same.indexOf(one) - (same.length - 1) / 2) * MARK_STEP;
    return { ...one, x: one.x + shift };
  });

const heightOf = (heights: CalloutHeights, { callout }: Spotted): number =>
  heights.get(callout) ?? USUAL_HEIGHT;

/** What a column of words needs, px. */
const columnOf = (own: readonly Spotted[], heights: CalloutHeights): number =>
  own.reduce((sum, one) => sum + heightOf(heights, one) + GAP, 0);

/** Tops from the top down, each at its spot or as near as those above leave it, none below the end if there is room. */
const stacked = (
  own: readonly Spotted[],
  heights: CalloutHeights,
  height: number,
): PlacedCallout[] => {
  let free = 0;
  const tops = own.map((one) => {
    const top = Math.max(free, one.y - TITLE_Y);
    free = top + heightOf(heights, one) + GAP;
    return top;
  });
  let end = height;
  for (let at = own.length - 1; at >= 0; at--) {
    end -= heightOf(heights, own[at] as Spotted) + GAP;
    tops[at] = end = Math.min(tops[at] as number, end);
  }
  return own.map((one, at) => {
    const top = tops[at] as number;
    return { ...one, top, lineY: top + TITLE_Y };
  });
};

/** From the edge of the words: the line of the nearer spot, against where the farther one's line is at that spot. */
const isAbove = (a: PlacedCallout, b: PlacedCallout): boolean => {
  const reach = ({ foot, x }: PlacedCallout) =>
    foot === 'left' ? x + LINE_START : DRAWINGS_WIDTH + LINE_START - x;
  const at = (one: PlacedCallout, far: number) =>
    one.lineY + ((one.y - one.lineY) * far) / reach(one);
  const far = Math.min(reach(a), reach(b));
  return at(a, far) < at(b, far);
};

/**
 * In the order of their spots; where two lines would still cross, their words change places. Each change shortens the
 * lines where the words are of one height; otherwise it ends after a number of rounds.
 */
const ordered = (
  own: readonly Spotted[],
  heights: CalloutHeights,
  height: number,
): PlacedCallout[] => {
  let placed = stacked(
    own.toSorted((a, b) => a.y - b.y),
    heights,
    height,
  );
  for (let round = 0; round < own.length * own.length; round++) {
    const crossing = placed
      .flatMap((one, at) => placed.slice(at + 1).map((other, by) => [one, other, at, at + 1 + by]))
      .find(([one, other]) => isAbove(other as PlacedCallout, one as PlacedCallout));
    if (!crossing) break;
    const [one, other, at, to] = crossing as [PlacedCallout, PlacedCallout, number, number];
    placed = stacked(placed.with(at, other).with(to, one), heights, height);
  }
  return placed;
};

/** Those of one shoe stand on its side; those of both shoes where fewer stand. @param heights of the words */
export const layOut = (
  callouts: readonly Callout[],
  heights: CalloutHeights = new Map(),
): CalloutLayout => {
  const sides: Record<Foot, Spotted[]> = { left: [], right: [] };
  const put = (callout: Callout, foot: Foot) =>
    sides[foot].push({ callout, foot, ...spotOf(callout, foot) });
  for (const one of callouts) if (one.side !== 'both') put(one, one.side);
  for (const one of callouts)
    if (one.side === 'both') put(one, sides.left.length <= sides.right.length ? 'left' : 'right');
  const height = Math.max(
    DRAWING.height,
    columnOf(sides.left, heights),
    columnOf(sides.right, heights),
  );
  const column = (foot: Foot) => ordered(apart(sides[foot]), heights, height);
  return { left: column('left'), right: column('right'), height };
};

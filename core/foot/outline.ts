/**
 * Where each zone lies in the drawing of a foot: one vector source that the phone taps and the desk
 * colours. The left foot is drawn; the right one is its mirror.
 */
import { isInside, pathOf, shifted, type Point, type Polygon, type Stretch } from './geometry.ts';
import { soleOutline, soleStretches } from './sole-drawing.ts';
import { upperStretches } from './upper-drawing.ts';
import { type FootView, type ZoneCode } from './zones.ts';

/** Width and height of the drawing of one foot, in drawing units. */
export const viewBox = { width: 200, height: 480 } as const;

/**
 * How far a tap may land outside the outline, in drawing units: as far as the lateral ball and the heel cup need to
 * hold a circle of 44 px on a phone 360 px wide (judgement; 44 px: WCAG 2.2, 2.5.5).
 */
const reach: Readonly<Record<FootView, number>> = { sole: 22, upper: 23 };

/**
 * Where taps of the left foot's drawing end. To the medial side that is half way to the other foot; the lateral
 * side has more room, because its zones need it, so a map for tapping is drawn from `left` on.
 */
export const tapBounds = { left: -8, right: 196 } as const;

export type ZoneShape = {
  readonly zone: ZoneCode;
  /** What is seen: the zones of a view share borders and do not overlap. */
  readonly polygon: Polygon;
  /** The polygon as the `d` of an SVG path. */
  readonly path: string;
  /** What can be tapped: the same, and a margin outside the outline of the foot, which goes to the nearest zone. */
  readonly tapPolygon: Polygon;
  readonly tapPath: string;
  /** Where the middle of a label stands. */
  readonly label: Point;
};

const labels: Readonly<Record<ZoneCode, Point>> = {
  P1: [152, 66],
  P2: [82, 78],
  P3: [160, 148],
  P4: [94, 150],
  P5: [31, 176],
  P6: [123, 258],
  P7: [60, 266],
  P8: [136, 396],
  P9: [70, 396],
  U1: [114, 46],
  U2: [160, 128],
  U3: [44, 142],
  U4: [104, 122],
  U5: [99, 236],
  U6: [151, 246],
  U7: [42, 250],
  U8: [98, 346],
  U9: [98, 408],
  U10: [98, 447],
};

const within = ([x, y]: Point): Point => [
  Math.min(tapBounds.right, Math.max(tapBounds.left, x)),
  Math.min(viewBox.height, Math.max(0, y)),
];

const joined = (stretches: readonly Stretch[], margin: number): Polygon =>
  stretches.flatMap(({ points, outer }) =>
    // The next stretch begins with the last point, unless one of the two was moved.
    margin > 0 && outer
      ? shifted(points, margin).map(within)
      : margin > 0
        ? points
        : points.slice(0, -1),
  );

const drawn = (view: FootView): readonly ZoneShape[] =>
  (view === 'sole' ? soleStretches() : upperStretches()).map(([zone, stretches]) => {
    const polygon = joined(stretches, 0);
    const tapPolygon = joined(stretches, reach[view]);
    return {
      zone,
      polygon,
      path: pathOf(polygon),
      tapPolygon,
      tapPath: pathOf(tapPolygon),
      label: labels[zone],
    };
  });

const shapesByView = new Map<FootView, readonly ZoneShape[]>();

/** The zones of a view of the left foot, in the order of their codes. Worked out once. */
export const zoneShapes = (view: FootView): readonly ZoneShape[] => {
  let shapes = shapesByView.get(view);
  if (shapes === undefined) {
    shapes = drawn(view);
    shapesByView.set(view, shapes);
  }
  return shapes;
};

/** The whole sole of the left foot as a path; under the upper it is the rim of the midsole. */
export const soleOutlinePath = (): string => pathOf(soleOutline());

/** The x of a point of the left foot's drawing on the given foot. */
export const mirroredX = (foot: 'left' | 'right', x: number): number =>
  foot === 'left' ? x : viewBox.width - x;

/**
 * The zone that is seen at a point of the drawing of a foot (drawing units, y downward), or null
 * outside of all.
 */
export const zoneAt = (
  view: FootView,
  foot: 'left' | 'right',
  x: number,
  y: number,
): ZoneCode | null =>
  zoneShapes(view).find(({ polygon }) => isInside(polygon, [mirroredX(foot, x), y]))?.zone ?? null;

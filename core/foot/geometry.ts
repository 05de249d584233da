/** The little plane geometry that the drawing of the foot needs. Units: drawing units, y downward. */

export type Point = readonly [x: number, y: number];
/** A closed shape as its corners in order; the last joins the first. */
export type Polygon = readonly Point[];
/** A cubic Bézier curve without its start: two control points and its end. */
export type Curve = readonly [Point, Point, Point];

const stepsPerCurve = 24;

/** Points along curves that follow each other, the start included. */
export const flatten = (start: Point, curves: readonly Curve[]): Point[] => {
  const points: Point[] = [start];
  let from = start;
  for (const [a, b, to] of curves) {
    for (let step = 1; step <= stepsPerCurve; step += 1) {
      const t = step / stepsPerCurve;
      const u = 1 - t;
      const at = (axis: 0 | 1): number =>
        u * u * u * from[axis] +
        3 * u * u * t * a[axis] +
        3 * u * t * t * b[axis] +
        t * t * t * to[axis];
      points.push([at(0), at(1)]);
    }
    from = to;
  }
  return points;
};

/** True for a point inside the polygon (even-odd rule); either for a point exactly on its edge. */
export const isInside = (polygon: Polygon, [x, y]: Point): boolean => {
  let inside = false;
  let before = polygon.at(-1);
  for (const corner of polygon) {
    if (
      before !== undefined &&
      corner[1] > y !== before[1] > y &&
      x < corner[0] + ((before[0] - corner[0]) * (y - corner[1])) / (before[1] - corner[1])
    ) {
      inside = !inside;
    }
    before = corner;
  }
  return inside;
};

/** The points of an open line, each moved square to it by `distance`, to the right as one walks along. */
export const shifted = (line: readonly Point[], distance: number): Point[] =>
  line.map((point, index) => {
    const before = line[index - 1] ?? point;
    const after = line[index + 1] ?? point;
    const dx = after[0] - before[0];
    const dy = after[1] - before[1];
    const length = Math.hypot(dx, dy) || 1;
    return [point[0] - (dy / length) * distance, point[1] + (dx / length) * distance];
  });

/** A tenth of a unit is finer than a pixel, and keeps the text short. */
const short = (value: number): string => String(Math.round(value * 10) / 10);

/** The polygon as the `d` of an SVG path. */
export const pathOf = (polygon: Polygon): string =>
  `M${polygon.map(([x, y]) => `${short(x)} ${short(y)}`).join('L')}Z`;

/** A stretch of a zone's edge; `outer` where it runs along the outline of the foot. */
export type Stretch = { readonly points: readonly Point[]; readonly outer: boolean };

export const reversed = ({ points, outer }: Stretch): Stretch => ({
  points: [...points].reverse(),
  outer,
});

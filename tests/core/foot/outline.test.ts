import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  footViews,
  soleOutlinePath,
  tapBounds,
  viewBox,
  zoneAt,
  zoneShapes,
  zones,
  zonesOfView,
  type FootView,
} from '../../../core/foot/index.ts';
import { isInside, type Point, type Polygon } from '../../../core/foot/geometry.ts';
import { solePoint } from '../../../core/foot/sole-drawing.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });
const anywhere = fc.tuple(
  share.map((x) => x * viewBox.width),
  share.map((y) => y * viewBox.height),
);
const view = fc.constantFrom<FootView>(...footViews);

/** The corners that an SVG reader sees in a path. */
const cornersOf = (path: string): Polygon =>
  path
    .slice(1, -1)
    .split('L')
    .map((pair) => pair.split(' ').map(Number) as unknown as Point);

const distanceToEdge = (polygon: Polygon, [x, y]: Point): number =>
  Math.min(
    ...polygon.map(([x1, y1], index) => {
      const [x0, y0] = polygon.at(index - 1) as Point;
      const [dx, dy] = [x1 - x0, y1 - y0];
      const along = ((x - x0) * dx + (y - y0) * dy) / (dx * dx + dy * dy || 1);
      const t = Math.max(0, Math.min(1, along));
      return Math.hypot(x - x0 - t * dx, y - y0 - t * dy);
    }),
  );

describe('the drawing of a foot', () => {
  it('has one shape for each zone of the view', () => {
    for (const each of footViews) {
      expect(zoneShapes(each).map(({ zone }) => zone)).toEqual(zonesOfView(each));
    }
  });

  it('lays each box of the zone table wholly inside its zone', () => {
    const soleZones = zonesOfView('sole');
    fc.assert(
      fc.property(fc.constantFrom(...soleZones), share, share, (code, a, b) => {
        const { boundary } = zones[code];
        if (!('width' in boundary)) throw new Error(`${code} has no width`);
        const [l0, l1] = boundary.length;
        const [w0, w1] = boundary.width;
        // A hair inside: a point on a border belongs to either neighbour.
        const inset = (t: number): number => 0.02 + 0.96 * t;
        const [x, y] = solePoint(l0 + (l1 - l0) * inset(a), w0 + (w1 - w0) * inset(b));
        expect(zoneAt('sole', 'left', x, y)).toBe(code);
      }),
      { numRuns: 3000 },
    );
  });

  it('covers the whole sole, and nothing beside it', () => {
    const outline = cornersOf(soleOutlinePath());
    fc.assert(
      fc.property(anywhere, (point) => {
        fc.pre(distanceToEdge(outline, point) > 0.3);
        expect(zoneAt('sole', 'left', ...point) !== null).toBe(isInside(outline, point));
      }),
      { numRuns: 3000 },
    );
  });

  it('covers the upper without a hole', () => {
    // Between the leftmost and the rightmost zone of a row there is always a zone.
    for (let y = 24; y < 460; y += 1) {
      const row = Array.from({ length: 401 }, (_, step) => zoneAt('upper', 'left', step / 2, y));
      const first = row.findIndex((zone) => zone !== null);
      const last = row.findLastIndex((zone) => zone !== null);
      expect(first).toBeGreaterThan(0);
      expect(row.slice(first, last + 1)).not.toContain(null);
    }
  });

  it('lets no two zones of a view overlap', () => {
    fc.assert(
      fc.property(view, anywhere, (each, point) => {
        const holders = zoneShapes(each).filter(({ polygon }) => isInside(polygon, point));
        expect(holders.length).toBeLessThanOrEqual(1);
      }),
      { numRuns: 5000 },
    );
  });

  it('finds the zone whose path holds the point', () => {
    fc.assert(
      fc.property(view, anywhere, (each, point) => {
        const found = zoneAt(each, 'left', ...point);
        for (const { zone, path } of zoneShapes(each)) {
          const corners = cornersOf(path);
          if (distanceToEdge(corners, point) > 0.2) {
            expect(isInside(corners, point)).toBe(zone === found);
          }
        }
      }),
      { numRuns: 1500 },
    );
  });

  it('mirrors the left foot in the right one, big toes towards each other', () => {
    fc.assert(
      fc.property(view, anywhere, (each, [x, y]) => {
        expect(zoneAt(each, 'right', viewBox.width - x, y)).toBe(zoneAt(each, 'left', x, y));
      }),
    );
    expect(zoneAt('sole', 'left', 150, 60)).toBe('P1');
    expect(zoneAt('sole', 'right', 50, 60)).toBe('P1');
    expect(zoneAt('sole', 'right', 150, 60)).toBe('P2');
  });

  it('keeps each label inside its zone', () => {
    for (const each of footViews) {
      for (const { zone, label } of zoneShapes(each)) {
        expect(zoneAt(each, 'left', ...label), zone).toBe(zone);
      }
    }
  });
});

describe('tapping with a thumb', () => {
  // Two feet side by side on a phone 360 px wide, from edge to edge: 176 px each.
  const px = viewBox.width / 176;

  it('holds what is seen, and only beside the foot more', () => {
    fc.assert(
      fc.property(view, anywhere, (each, point) => {
        const seen = zoneAt(each, 'left', ...point);
        const taps = zoneShapes(each).filter(({ tapPolygon }) => isInside(tapPolygon, point));
        if (seen !== null) expect(taps.map(({ zone }) => zone)).toEqual([seen]);
        else {
          // Where two margins meet, a sliver below half a unit may belong to both.
          const clear = taps.filter(({ tapPolygon }) => distanceToEdge(tapPolygon, point) > 0.5);
          expect(clear.length).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 3000 },
    );
  });

  it('stays inside the view', () => {
    for (const each of footViews) {
      for (const [x, y] of zoneShapes(each).flatMap(({ tapPolygon }) => tapPolygon)) {
        expect(x).toBeGreaterThanOrEqual(tapBounds.left);
        expect(x).toBeLessThanOrEqual(tapBounds.right);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(viewBox.height);
      }
    }
  });

  /** Diameter in px of the largest circle inside, from a grid of middles two units apart. */
  const circleIn = (polygon: Polygon): number => {
    let best = 0;
    for (let x = tapBounds.left; x < tapBounds.right; x += 2)
      for (let y = 0; y < viewBox.height; y += 2)
        if (isInside(polygon, [x, y])) best = Math.max(best, distanceToEdge(polygon, [x, y]));
    return (2 * best) / px;
  };

  it('gives each zone a circle of 44 px at 360 px (WCAG 2.2, 2.5.5)', () => {
    for (const each of footViews)
      for (const { zone, tapPolygon } of zoneShapes(each))
        expect(circleIn(tapPolygon), zone).toBeGreaterThanOrEqual(44);
  });
});

/** Words beside the drawn shoes: none over another, each on its shoe's side. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  DRAWINGS_WIDTH,
  layOut,
  LINE_START,
  type PlacedCallout,
} from '../../../../app/parts/opened-shoe/layout.ts';
import { zoneCodes } from '../../../../core/foot/index.ts';
import type { Callout } from '../../../../core/review/index.ts';

const anyCallout = fc.record({
  what: fc.constant('complaint'),
  zone: fc.constantFrom(...zoneCodes),
  side: fc.constantFrom('left', 'right', 'both'),
}) as unknown as fc.Arbitrary<Callout>;

/** Whether two straight lines from the words to their spots cross. */
const cross = (a: PlacedCallout, b: PlacedCallout): boolean => {
  const from = ({ foot }: PlacedCallout) =>
    foot === 'left' ? -LINE_START : DRAWINGS_WIDTH + LINE_START;
  const turn = (p: number[], q: number[], r: number[]) =>
    Math.sign((q[0]! - p[0]!) * (r[1]! - p[1]!) - (q[1]! - p[1]!) * (r[0]! - p[0]!));
  const [p, q] = [
    [from(a), a.lineY],
    [a.x, a.y],
  ];
  const [r, s] = [
    [from(b), b.lineY],
    [b.x, b.y],
  ];
  return turn(p, q, r) * turn(p, q, s) < 0 && turn(r, s, p) * turn(r, s, q) < 0;
};

const pairsOf = <T>(list: readonly T[]): [T, T][] =>
  list.flatMap((one, at) => list.slice(at + 1).map((other): [T, T] => [one, other]));

const callout = (zone: Callout['zone'], side: Callout['side']) =>
  ({ what: 'complaint', zone, side }) as Callout;

describe('the words of callouts', () => {
  it('never overlap, by their real heights, and stay within the picture', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(anyCallout, fc.integer({ min: 18, max: 120 })), { maxLength: 24 }),
        (some) => {
          const heights = new Map(some);
          const { left, right, height } = layOut([...heights.keys()], heights);
          expect(left.length + right.length).toBe(heights.size);
          for (const side of [left, right]) {
            let free = 0;
            for (const { top, callout: one } of side) {
              expect(top).toBeGreaterThanOrEqual(free - 1e-9);
              free = top + (heights.get(one) ?? 0);
            }
            expect(free).toBeLessThanOrEqual(height + 1e-9);
          }
          for (const { callout: one, foot } of [...left, ...right])
            if (one.side !== 'both') expect(foot).toBe(one.side);
        },
      ),
    );
  });

  it('are tied to their spots by lines that do not cross', () => {
    fc.assert(
      fc.property(fc.array(anyCallout, { maxLength: 8 }), (callouts) => {
        const { left, right } = layOut(callouts);
        for (const side of [left, right])
          for (const [a, b] of pairsOf(side)) expect(cross(a, b)).toBe(false);
      }),
    );
  });

  it('of the demo’s left shoe, in their heights, have no crossing lines', () => {
    const some = [
      [callout('P8', 'left'), 48],
      [callout('U9', 'left'), 64],
      [callout('U10', 'left'), 64],
      [callout('U10', 'left'), 48],
    ] as const;
    const { left } = layOut(
      some.map(([one]) => one),
      new Map(some),
    );
    for (const [a, b] of pairsOf(left)) expect(cross(a, b)).toBe(false);
  });

  it('that mean one zone have marks beside each other', () => {
    const { left } = layOut([callout('U10', 'left'), callout('U10', 'left')]);
    const [a, b] = left;
    expect(Math.abs((a?.x ?? 0) - (b?.x ?? 0))).toBeGreaterThanOrEqual(16);
  });
});

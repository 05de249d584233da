/** What people want moved, summed up by line: the middle, the spread, who is against. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeOf, fittersIn, moveKey, wantedMoves } from '../../../core/fitting/index.ts';
import type { StructuredChange } from '../../../core/records/index.ts';
import { heelCurve, trial } from './made.ts';

const sumOf = (...wishes: readonly (readonly StructuredChange[])[]) =>
  wantedMoves(fittersIn(wishes.map((wanted, n) => trial(11 + n, [], { wanted: [...wanted] }))));
const first = (...wishes: readonly (readonly StructuredChange[])[]) => {
  const [move] = sumOf(...wishes);
  if (!move) throw new Error('nothing is wanted');
  return move;
};

describe('what is wanted of one line', () => {
  it('is the middle of what people want, with both ends', () => {
    const move = first(
      [heelCurve('inward', 1)],
      [heelCurve('inward', 2)],
      [heelCurve('inward', 2)],
      [heelCurve('inward', 4)],
    );
    expect(move).toMatchObject({
      ...{ line: 'back-curve', direction: 'inward', unit: 'mm' },
      by: { median: 2, least: 1, most: 4, people: 4 },
    });
    expect(changeOf(move)).toEqual(heelCurve('inward', 2));
  });

  it('goes the way of most; who wants the other way counts against it', () => {
    const move = first(
      [heelCurve('inward', 3)],
      [heelCurve('inward', 1)],
      [heelCurve('outward', 2)],
    );
    expect(move.direction).toBe('inward');
    expect(move.by).toEqual({ median: 1, least: -2, most: 3, people: 3 });
    expect(move.wishes.map(({ agrees }) => agrees)).toEqual([true, true, false]);
    expect(changeOf(move)).toEqual(heelCurve('inward', 1));
  });

  it('is asked for by nobody where as many want it one way as the other', () => {
    const move = first([heelCurve('inward', 3)], [heelCurve('outward', 1)]);
    expect(move.direction).toBeNull();
    expect(changeOf(move)).toBeNull();
  });

  it('counts who did not say how far, but not in the middle', () => {
    const move = first([heelCurve('inward')], [heelCurve('inward', 2)]);
    expect(move.by).toMatchObject({ median: 2, people: 1 });
    expect(move.wishes).toHaveLength(2);
    expect(changeOf(first([heelCurve('inward')]))).toEqual(heelCurve('inward'));
  });

  it('gives each person one voice, whichever feet they name', () => {
    const move = first(
      [heelCurve('inward', 1, 'left'), heelCurve('inward', 3, 'right')],
      [heelCurve('inward', 2)],
    );
    expect(move.wishes).toHaveLength(2);
    expect(move.by).toEqual({ median: 2, least: 2, most: 2, people: 2 });
    expect(move).not.toHaveProperty('foot');
  });

  it('names the shoe where all speak of one alone', () => {
    const move = first([heelCurve('inward', 1, 'left')], [heelCurve('inward', 3, 'left')]);
    expect(changeOf(move)).toEqual(heelCurve('inward', 2, 'left'));
  });

  it('stands apart by line, side and unit, the one that most agree on first', () => {
    const collar = (side?: 'lateral', unit: 'mm' | 'deg' = 'mm'): StructuredChange => ({
      ...{ part: 'upper-pattern', line: 'collar', direction: 'lower', by: { amount: 2, unit } },
      ...(side && { side }),
    });
    const moves = sumOf(
      [heelCurve('inward', 1), collar()],
      [collar('lateral'), heelCurve('inward', 1)],
      [collar('lateral', 'deg')],
    );
    expect(moves.map(({ line, side, unit, wishes }) => [line, side, unit, wishes.length])).toEqual([
      ['back-curve', undefined, 'mm', 2],
      ['collar', undefined, 'mm', 1],
      ['collar', 'lateral', 'mm', 1],
      ['collar', 'lateral', 'deg', 1],
    ]);
    expect(new Set(moves.map(({ key }) => key)).size).toBe(4);
  });

  it('is asked for in the steps of its unit', () => {
    const foam = (amount: number): StructuredChange => ({
      ...{ part: 'midsole-foam', direction: 'less', by: { amount, unit: 'asker-c' } },
      dimension: { measure: 'hardness', site: 'heel-centre' },
    });
    expect(changeOf(first([foam(2)], [foam(3)]))?.by).toEqual({ amount: 3, unit: 'asker-c' });
  });
});

describe('what moves and which way', () => {
  it('is the same however far, and another by line, side, foot or direction', () => {
    expect(moveKey(heelCurve('inward', 1))).toBe(moveKey(heelCurve('inward', 4)));
    const others = [
      heelCurve('outward'),
      heelCurve('inward', 1, 'left'),
      { ...heelCurve('inward'), side: 'medial' as const },
      { ...heelCurve('inward'), line: 'collar' as const },
    ];
    expect(new Set([heelCurve('inward'), ...others].map(moveKey)).size).toBe(5);
  });
});

const wish = fc
  .record({
    direction: fc.constantFrom('inward' as const, 'outward' as const),
    tenths: fc.integer({ min: 5, max: 100 }),
  })
  .map(({ direction, tenths }) => heelCurve(direction, tenths / 10));

describe('for any wishes', () => {
  it('the middle lies within the ends, which somebody wants', () => {
    fc.assert(
      fc.property(fc.array(wish, { minLength: 1, maxLength: 12 }), (wishes) => {
        const { by, wishes: people } = first(...wishes.map((one) => [one]));
        if (!by) throw new Error('no amounts');
        expect(by.median).toBeGreaterThanOrEqual(by.least);
        expect(by.median).toBeLessThanOrEqual(by.most);
        const amounts = people.map(({ by: far }) => far);
        expect(amounts).toContain(by.least);
        expect(amounts).toContain(by.most);
        expect(by.people).toBe(wishes.length);
      }),
    );
  });

  it('their order changes nothing', () => {
    fc.assert(
      fc.property(
        fc
          .array(wish, { minLength: 1, maxLength: 9 })
          .chain((wishes) =>
            fc.tuple(
              fc.constant(wishes),
              fc.shuffledSubarray(wishes, { minLength: wishes.length, maxLength: wishes.length }),
            ),
          ),
        ([wishes, shuffled]) => {
          const [a, b] = [wishes, shuffled].map((some) => first(...some.map((one) => [one])));
          expect(b?.by).toEqual(a?.by);
          expect(b?.direction).toBe(a?.direction);
        },
      ),
    );
  });

  it('the same wishes the other way round give the same change the other way round', () => {
    const turned = (one: StructuredChange): StructuredChange => ({
      ...one,
      direction: one.direction === 'inward' ? 'outward' : 'inward',
    });
    fc.assert(
      fc.property(fc.array(wish, { minLength: 1, maxLength: 9 }), (wishes) => {
        const change = changeOf(first(...wishes.map((one) => [one])));
        const back = changeOf(first(...wishes.map((one) => [turned(one)])));
        expect(back).toEqual(change && turned(change));
      }),
    );
  });

  it('a person who says the same again, or of the other foot as well, is still one person', () => {
    fc.assert(
      fc.property(fc.array(wish, { minLength: 1, maxLength: 6 }), (wishes) => {
        const once = first(...wishes.map((one) => [one]));
        const twice = first(
          ...wishes.map((one) => [
            { ...one, foot: 'left' as const },
            { ...one, foot: 'right' as const },
          ]),
        );
        expect(twice.by).toEqual(once.by);
        expect(twice.wishes.map(({ agrees }) => agrees)).toEqual(
          once.wishes.map(({ agrees }) => agrees),
        );
      }),
    );
  });

  it('what is asked for goes the way that more than half want', () => {
    fc.assert(
      fc.property(fc.array(wish, { minLength: 1, maxLength: 9 }), (wishes) => {
        const move = first(...wishes.map((one) => [one]));
        const change = changeOf(move);
        if (!change) return;
        const agree = wishes.filter(({ direction }) => direction === change.direction).length;
        expect(2 * agree).toBeGreaterThan(wishes.length);
        expect(change.by?.amount).toBeGreaterThan(0);
      }),
    );
  });
});

/** Which columns are shown, where keys lead, and which rows of a long list are drawn. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readHidden, shownOf, withShown } from '../../../../app/desk/list/columns.ts';
import { rowsAround, withGaps } from '../../../../app/desk/list/drawn-rows.ts';
import { movedTo } from '../../../../app/desk/list/moves.ts';
import { sortedBy } from '../../../../app/desk/list/sorting.ts';

describe('columns that can be hidden', () => {
  const columns = [{ column: 'pair', stays: true }, { column: 'runs' }, { column: 'size' }];
  const names = (hidden: readonly string[] | undefined) =>
    shownOf(columns, hidden).map(({ column }) => column);

  it('are hidden in their own list alone, and come back', () => {
    const hidden = withShown(withShown({}, 'pairs', 'runs', false), 'testers', 'size', false);
    expect(names(hidden['pairs'])).toEqual(['pair', 'size']);
    expect(names(hidden['runs'])).toEqual(['pair', 'runs', 'size']);
    expect(names(withShown(hidden, 'pairs', 'runs', true)['pairs'])).toHaveLength(3);
    expect(withShown(hidden, 'pairs', 'runs', false)['pairs']).toEqual(['runs']);
  });

  it('never hide the name of a row', () => {
    expect(names(['pair', 'runs'])).toEqual(['pair', 'size']);
  });

  it('are all shown where what the device kept cannot be read', () => {
    for (const kept of [undefined, null, 'runs', { pairs: 'runs' }, { pairs: [3] }, [['a']]])
      expect(readHidden(kept)).toEqual({});
    expect(readHidden({ pairs: ['runs'] })).toEqual({ pairs: ['runs'] });
  });
});

describe('keys', () => {
  const to = (key: string, from: number) => movedTo(key, { from, count: 30, page: 10 });
  it('lead one row, one page, or to an end, and never out of the list', () => {
    expect([to('ArrowDown', 3), to('ArrowUp', 3), to('PageDown', 3)]).toEqual([4, 2, 13]);
    expect([to('PageUp', 3), to('Home', 3), to('End', 3)]).toEqual([0, 0, 29]);
    expect([to('ArrowDown', 29), to('ArrowUp', 0), to('PageDown', 25)]).toEqual([29, 0, 29]);
  });
  it('that mean nothing here are left alone', () => {
    for (const key of ['a', 'Enter', 'Tab', ' ', 'ArrowLeft']) expect(to(key, 3)).toBe(null);
  });
});

describe('a long list', () => {
  it('has gaps as high as the rows that are not drawn', () => {
    const rows = [
      { index: 2, start: 90, end: 120 },
      { index: 10, start: 330, end: 360 },
      { index: 11, start: 360, end: 400 },
    ];
    expect(withGaps(rows, 30, 600)).toEqual([
      { is: 'gap', before: 2, px: 60 },
      { is: 'row', at: 2 },
      { is: 'gap', before: 10, px: 210 },
      { is: 'row', at: 10 },
      { is: 'row', at: 11 },
      { is: 'gap', before: 12, px: 230 },
    ]);
    expect(withGaps([], 30, 600)).toEqual([{ is: 'gap', before: 0, px: 600 }]);
  });

  it('is as high in all as its rows, whatever is drawn (property)', () => {
    const heights = fc.array(fc.integer({ min: 1, max: 90 }), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(heights, fc.nat(), fc.nat(), fc.option(fc.nat()), (list, x, y, z) => {
        const count = list.length;
        const [a, b] = [x % count, y % count];
        const focused = z === null ? null : z % count;
        const drawn = rowsAround(
          { first: Math.min(a, b), last: Math.max(a, b) },
          { more: 2, count, focused },
        );
        expect(drawn).toEqual([...new Set(drawn)].sort((one, other) => one - other));
        for (let at = Math.min(a, b); at <= Math.max(a, b); at++) expect(drawn).toContain(at);
        if (focused !== null) expect(drawn).toContain(focused);
        const ends = list.map((_, at) => list.slice(0, at + 1).reduce((sum, px) => sum + px, 7));
        const rows = drawn.map((index) => ({
          index,
          start: (ends[index] as number) - (list[index] as number),
          end: ends[index] as number,
        }));
        const all = list.reduce((sum, px) => sum + px, 0);
        const px = withGaps(rows, 7, all).reduce(
          (sum, one) => sum + (one.is === 'gap' ? one.px : (list[one.at] as number)),
          0,
        );
        expect(px).toBe(all);
      }),
    );
  });
});

describe('a sorted list', () => {
  it('keeps rows that are alike in their order, and loses none (property)', () => {
    const key = fc.option(fc.oneof(fc.nat(4), fc.constantFrom('a', 'b')));
    fc.assert(
      fc.property(fc.array(key), fc.boolean(), (keys, isUp) => {
        const rows = keys.map((one, at) => ({ one, at }));
        const sorted = sortedBy(
          rows,
          { by: 'one', direction: isUp ? 'ascending' : 'descending' },
          ({ one }) => one,
        );
        expect(sorted.map(({ at }) => at).sort((a, b) => a - b)).toEqual(rows.map(({ at }) => at));
        for (const [at, row] of sorted.entries()) {
          const next = sorted[at + 1];
          if (next && next.one === row.one) expect(next.at).toBeGreaterThan(row.at);
        }
        const firstUnknown = sorted.findIndex(({ one }) => one === null);
        if (firstUnknown >= 0)
          expect(sorted.slice(firstUnknown).every(({ one }) => one === null)).toBe(true);
      }),
    );
  });
});

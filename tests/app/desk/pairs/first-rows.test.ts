/** The list of pairs opens on every pair that somebody has, and its kilometres add up to those of the other places. */
import { describe, expect, it } from 'vitest';
import { pairKey, rowsAtFirst } from '../../../../app/desk/pairs/pair-order.ts';
import { sortedBy } from '../../../../app/desk/people/sorting.ts';
import { openedDemo } from '../demo.ts';

const NOW = Date.UTC(2026, 10, 30);

describe('the list of pairs of the demo', () => {
  it('opens on as many pairs with testers as its headline says', async () => {
    const { work, project } = await openedDemo(NOW);
    const { rows, headline } = work.pairList(project);
    const sorted = sortedBy(rows, { by: 'state', direction: 'ascending' }, (row, column) =>
      pairKey(row, column, (tester) => tester),
    );
    const open = sorted.slice(0, rowsAtFirst(sorted));
    expect(open.filter(({ holder }) => holder !== null)).toHaveLength(
      'out' in headline ? headline.out : -1,
    );
    expect(open.map(({ code }) => code)).toContain('988');
  });

  it('tells the kilometres of the runs apart from those of before', async () => {
    const { work, project } = await openedDemo(NOW);
    const { rows } = work.pairList(project);
    const sum = (of: (row: (typeof rows)[number]) => number) =>
      rows.reduce((all, row) => all + of(row), 0);
    const size = work.review(project)?.size;
    expect(sum(({ carriedInM }) => carriedInM)).toBeGreaterThan(0);
    expect(sum(({ totalM, carriedInM }) => totalM - carriedInM)).toBeCloseTo(
      size?.distanceM ?? 0,
      3,
    );
  });

  it('is folded to a screenful where more pairs are with testers', async () => {
    const { work, project } = await openedDemo(NOW);
    const [row] = work.pairList(project).rows;
    if (!row) throw new Error('no pair');
    const held = { ...row, holder: project };
    const many = Array.from({ length: 100 }, () => held);
    expect(rowsAtFirst(many)).toBe(12);
    expect(rowsAtFirst(many.slice(0, 15))).toBe(15);
    expect(rowsAtFirst([])).toBe(12);
  });
});

/** The kilometres of the list of pairs add up to those of the other places. */
import { describe, expect, it } from 'vitest';
import { openedDemo } from '../demo.ts';

const NOW = Date.UTC(2026, 10, 30);

describe('the list of pairs of the demo', () => {
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
});

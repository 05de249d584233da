/** A table of places and pairs becomes a check a pair; what cannot be is told by its cell. */
import { describe, expect, it } from 'vitest';
import {
  cellKey,
  gridRows,
  readGrid,
  withPasted,
  type GridDraft,
} from '../../../app/drafts/check-grid.ts';
import { readBody } from '../../../core/records/index.ts';
import { metres } from '../../../core/units/index.ts';
import { idOf } from '../../core/records/make.ts';

const PROJECT = idOf(1);
const pairs = [{ id: idOf(2) }, { id: idOf(3), carriedInM: metres(5000) }, { id: idOf(4) }];
const rows = gridRows([
  { measure: 'stack-height', site: 'heel-centre', unit: 'mm' },
  { measure: 'mass', site: 'shoe', unit: 'g', foot: 'left' },
]);
const draft = (values: GridDraft['values'], at = '2026-05-01T10:00') => ({
  round: '' as const,
  at,
  arrival: true,
  operator: 'Shop',
  gauges: { 'stack-height mm': 'Height gauge' },
  values,
});
const paste = (text: string, row = 0, column = 0) =>
  withPasted(
    {},
    { row, column },
    text.split('\n').map((line) => line.split(' ')),
    rows,
    pairs,
  );

describe('a table of checks', () => {
  it('has a row a place and foot', () => {
    expect(rows.map(({ measure, foot }) => `${measure} ${foot}`)).toEqual([
      'stack-height left',
      'stack-height right',
      'mass left',
    ]);
  });

  it('makes a check of each pair with a value, on arrival with what was carried before', () => {
    const { values, beyond } = paste('36 35,9\n36.1 36\n280 281');
    expect(beyond).toBe(0);
    const { checks, wrong, noDay } = readGrid(draft(values), rows, pairs, PROJECT);
    expect([wrong, noDay]).toEqual([[], false]);
    expect(checks.map(({ pair, distanceM }) => [pair, distanceM])).toEqual([
      [idOf(2), 0],
      [idOf(3), 5000],
    ]);
    expect(checks[1]?.readings).toEqual([
      {
        measure: 'stack-height',
        site: 'heel-centre',
        foot: 'left',
        value: 35.9,
        unit: 'mm',
        gauge: 'Height gauge',
      },
      expect.objectContaining({ foot: 'right', value: 36 }),
      { measure: 'mass', site: 'shoe', foot: 'left', value: 281, unit: 'g' },
    ]);
    for (const check of checks) {
      expect(check.operator).toBe('Shop');
      expect(readBody('bench-check', check).ok).toBe(true);
    }
  });

  it('tells each wrong value by its cell, and a day that cannot be read', () => {
    const { values } = paste('36 x\n999 36');
    const read = readGrid(draft(values), rows, pairs, PROJECT);
    expect(read.checks).toEqual([]);
    expect(read.wrong).toMatchObject([
      { row: 1, column: 0, value: 999 },
      { row: 0, column: 1, value: null },
    ]);
    expect(readGrid(draft(values, ''), rows, pairs, PROJECT).noDay).toBe(true);
    expect(readGrid(draft({}, ''), rows, pairs, PROJECT)).toEqual({
      checks: [],
      wrong: [],
      noDay: false,
    });
  });

  it('takes a block from a cell on, and counts what stands beyond it', () => {
    const { values, beyond } = paste('1 2 3\n4 5 6', 2, 1);
    expect(beyond).toBe(4);
    const [, , mass] = rows;
    if (!mass) throw new Error('no row');
    expect(values).toEqual({ [cellKey(idOf(3), mass)]: '1', [cellKey(idOf(4), mass)]: '2' });
  });

  it('keeps a value with its pair and place, whatever comes to stand around it', () => {
    const { values } = paste('36');
    const moved = readGrid(draft(values), [...rows].reverse(), [...pairs].reverse(), PROJECT);
    expect(moved.checks).toHaveLength(1);
    expect(moved.checks[0]).toMatchObject({
      pair: idOf(2),
      readings: [{ measure: 'stack-height', foot: 'left', value: 36 }],
    });
  });
});

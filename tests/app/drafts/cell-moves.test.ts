/** Keys among the cells of a table lead where a spreadsheet would lead; what belongs to the cell stays the cell's. */
import { describe, expect, it } from 'vitest';
import {
  isBlock,
  movedTo,
  moveOf,
  type KeyPress,
  type Move,
} from '../../../app/drafts/cell-moves.ts';

const press = (key: string, part: Partial<KeyPress> = {}): KeyPress => ({
  key,
  shift: false,
  withModifier: false,
  caret: { start: 2, end: 2, length: 4 },
  isChoosing: false,
  ...part,
});
const at = (start: number, end = start) => ({ caret: { start, end, length: 4 } });

describe('a key in a cell', () => {
  it.each<[string, Partial<KeyPress>, Move | null]>([
    ['Tab', {}, 'next'],
    ['Tab', { shift: true }, 'previous'],
    ['Enter', {}, 'down'],
    ['Enter', { shift: true }, 'up'],
    ['ArrowUp', {}, 'up'],
    ['ArrowDown', {}, 'down'],
    ['ArrowLeft', {}, null],
    ['ArrowLeft', at(0), 'left'],
    ['ArrowLeft', at(0, 4), 'left'],
    ['ArrowLeft', at(0, 2), null],
    ['ArrowRight', at(4), 'right'],
    ['ArrowRight', at(0, 4), 'right'],
    ['ArrowRight', at(0), null],
    ['ArrowRight', { ...at(4), shift: true }, null],
    ['ArrowRight', { caret: null }, 'right'],
    ['ArrowDown', { isChoosing: true }, null],
    ['Enter', { isChoosing: true }, 'down'],
    ['ArrowDown', { withModifier: true }, null],
    ['a', {}, null],
  ])('%s %o asks for %s', (key, part, move) => {
    expect(moveOf(press(key, part))).toBe(move);
  });
});

describe('a move', () => {
  const size = { rows: 2, columns: 3 };
  const go = (row: number, column: number, move: Move, isStop = () => true) =>
    movedTo({ row, column }, move, size, isStop);

  it('goes to the neighbour, and Tab on to the next row', () => {
    expect(go(0, 1, 'right')).toEqual({ row: 0, column: 2 });
    expect(go(0, 2, 'next')).toEqual({ row: 1, column: 0 });
    expect(go(1, 0, 'previous')).toEqual({ row: 0, column: 2 });
    expect(go(1, 1, 'up')).toEqual({ row: 0, column: 1 });
  });

  it('leaves the table at its ends', () => {
    expect(go(1, 2, 'next')).toBeNull();
    expect(go(0, 0, 'previous')).toBeNull();
    expect(go(0, 2, 'right')).toBeNull();
    expect(go(1, 0, 'down')).toBeNull();
  });

  it('passes over places where nothing can be typed', () => {
    const noMiddle = ({ column }: { column: number }) => column !== 1;
    expect(movedTo({ row: 0, column: 0 }, 'next', size, noMiddle)).toEqual({ row: 0, column: 2 });
    expect(movedTo({ row: 0, column: 0 }, 'down', size, () => false)).toBeNull();
  });
});

it('a text of one cell is no block', () => {
  expect(isBlock('36,5')).toBe(false);
  expect(isBlock('36,5\r\n')).toBe(false);
  expect(isBlock('36\t1')).toBe(true);
  expect(isBlock('36\n28')).toBe(true);
});

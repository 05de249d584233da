/** Where does a key lead among the cells of a table, as in a spreadsheet? Pure. */

/** Both from 0. */
export interface CellAt {
  readonly row: number;
  readonly column: number;
}

export interface TableSize {
  readonly rows: number;
  readonly columns: number;
}

export type Move = 'up' | 'down' | 'left' | 'right' | 'next' | 'previous';

export interface KeyPress {
  readonly key: string;
  readonly shift: boolean;
  /** Ctrl, Alt or Meta is held: the browser's own. */
  readonly withModifier: boolean;
  /** Selection in the cell's text; null: it holds none, as a list to choose from does. */
  readonly caret: { readonly start: number; readonly end: number; readonly length: number } | null;
  /** A list is open, or words for one are half typed: arrows up and down choose from it. */
  readonly isChoosing: boolean;
}

const isWhole = ({ start, end, length }: NonNullable<KeyPress['caret']>): boolean =>
  start === 0 && end === length;

/** The move that a key asks for; null: it belongs to the cell. */
export const moveOf = ({ key, shift, withModifier, caret, isChoosing }: KeyPress): Move | null => {
  if (withModifier) return null;
  switch (key) {
    case 'Tab':
      return shift ? 'previous' : 'next';
    case 'Enter':
      return shift ? 'up' : 'down';
    case 'ArrowUp':
      return isChoosing || shift ? null : 'up';
    case 'ArrowDown':
      return isChoosing || shift ? null : 'down';
    // Within a text the arrows go letter by letter, until its end.
    case 'ArrowLeft':
      return !shift && !isChoosing && (caret === null || caret.end === 0 || isWhole(caret))
        ? 'left'
        : null;
    case 'ArrowRight':
      return !shift &&
        !isChoosing &&
        (caret === null || caret.start === caret.length || isWhole(caret))
        ? 'right'
        : null;
    default:
      return null;
  }
};

const steps: Readonly<Record<Move, readonly [row: number, column: number]>> = {
  up: [-1, 0],
  down: [1, 0],
  left: [0, -1],
  right: [0, 1],
  next: [0, 1],
  previous: [0, -1],
};

/**
 * The cell that a move ends on; null where it leaves the table.
 * @param isStop whether there is anything to type or choose at a place; what is none is passed over
 */
export const movedTo = (
  from: CellAt,
  move: Move,
  { rows, columns }: TableSize,
  isStop: (at: CellAt) => boolean,
): CellAt | null => {
  const [down, across] = steps[move];
  const wraps = move === 'next' || move === 'previous';
  let { row, column } = from;
  for (;;) {
    row += down;
    column += across;
    if (wraps && (column < 0 || column >= columns)) {
      row += across;
      column = across > 0 ? 0 : columns - 1;
    }
    if (row < 0 || row >= rows || column < 0 || column >= columns) return null;
    if (isStop({ row, column })) return { row, column };
  }
};

/** Whether a text is more than one cell: one alone is pasted as any text. */
export const isBlock = (text: string): boolean => /[\t\r\n]/.test(text.replace(/[\r\n]+$/, ''));

/** A column of a list: what it shows of a row, how it is sorted, how wide it is, and where it stands on a card. */
import type { ComponentChildren } from 'preact';
import type { Direction } from './sorting.ts';

export interface ListColumn<Row, Column extends string = string> {
  readonly column: Column;
  readonly title: string;
  readonly cell: (row: Row) => ComponentChildren;
  /** The direction that one wants to see first; absent: the list is not sorted by it. */
  readonly first?: Direction;
  readonly right?: true;
  /** In rem; absent: it takes what the others leave. */
  readonly width?: number;
  /** It cannot be hidden. */
  readonly stays?: true;
  /**
   * Where it stands on a card: `first` beside the name, `corner` at the end of that line, `wide` on a line of its own.
   * Absent: with the others, below the name. The first column is the card's name.
   */
  readonly card?: 'first' | 'corner' | 'wide';
  /** On a card it says itself; else its title stands before it. */
  readonly bare?: true;
  /** Follows the figure on a card, where the title of the column has the unit. */
  readonly unit?: string;
}

/** A column that takes what is left is at least so wide, rem. */
const LEAST = 8;

/** As wide as the table must be, rem. */
export const leastWidth = (columns: readonly { readonly width?: number }[]): number =>
  columns.reduce((sum, { width }) => sum + (width ?? LEAST), 0);

/** A list in the order that a reader asked for, and narrowed to what they look for. Pure. */

export type Direction = 'ascending' | 'descending';

export interface Order<Column extends string> {
  readonly by: Column;
  readonly direction: Direction;
}

/** What a row is sorted by; null, such as "never ran", stands last either way. */
export type SortKey = number | string | null;

/** As people count: T2 before T10. */
const collator = new Intl.Collator('en', { numeric: true });

const compare = (a: number | string, b: number | string): number =>
  typeof a === 'number' && typeof b === 'number' ? a - b : collator.compare(String(a), String(b));

/** Sorted anew; rows that are alike keep their order. */
export const sortedBy = <Row, Column extends string>(
  rows: readonly Row[],
  { by, direction }: Order<Column>,
  keyOf: (row: Row, column: Column) => SortKey,
): readonly Row[] => {
  const turn = direction === 'ascending' ? 1 : -1;
  return rows
    .map((row) => ({ row, key: keyOf(row, by) }))
    .sort((a, b) =>
      a.key === null || b.key === null
        ? Number(a.key === null) - Number(b.key === null)
        : turn * compare(a.key, b.key),
    )
    .map(({ row }) => row);
};

/**
 * The order after a press on a column's head: the same column turns round, another begins with `first`.
 * @param first the direction that a reader of that column wants to see first
 */
export const pressed = <Column extends string>(
  order: Order<Column>,
  by: Column,
  first: Direction,
): Order<Column> =>
  order.by === by
    ? { by, direction: order.direction === 'ascending' ? 'descending' : 'ascending' }
    : { by, direction: first };

/** Whether any of the texts holds what was typed, whatever the case; nothing typed: all do. */
export const holdsText = (texts: readonly string[], typed: string): boolean => {
  const sought = typed.trim().toLowerCase();
  return sought === '' || texts.some((text) => text.toLowerCase().includes(sought));
};

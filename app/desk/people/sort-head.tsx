/** The head of a table that can be sorted: a button in each column, and on a narrow screen one list in their place. */
import { p } from '../../words/index.ts';
import { pressed, type Direction, type Order } from './sorting.ts';

export interface SortColumn<Column extends string> {
  readonly column: Column;
  readonly title: string;
  /** The direction that one wants to see first. */
  readonly first: Direction;
  readonly right?: true;
}

interface Props<Column extends string> {
  readonly columns: readonly SortColumn<Column>[];
  readonly order: Order<Column>;
  readonly onOrder: (order: Order<Column>) => void;
}

export const SortHead = <Column extends string>(
  props: Props<Column> & {
    /** Columns before and after that are not sorted, such as of buttons. */
    readonly before?: string;
    readonly after?: string;
  },
) => {
  const { columns, order, onOrder, before, after } = props;
  return (
    <thead>
      <tr>
        {before !== undefined && (
          <th scope="col">
            <span class="hidden-words">{before}</span>
          </th>
        )}
        {columns.map(({ column, title, first, right }) => (
          <th
            key={column}
            scope="col"
            class={right && 'right'}
            aria-sort={order.by === column ? order.direction : 'none'}
          >
            <button
              type="button"
              class="sort"
              onClick={() => onOrder(pressed(order, column, first))}
            >
              {title}
            </button>
          </th>
        ))}
        {after !== undefined && (
          <th scope="col">
            <span class="hidden-words">{after}</span>
          </th>
        )}
      </tr>
    </thead>
  );
};

/** The same choice where the columns are folded away. */
export const SortSelect = <Column extends string>(props: Props<Column>) => {
  const { columns, order, onOrder } = props;
  return (
    <select
      class="input sort-select"
      aria-label={p().pairs.sortBy}
      value={order.by}
      onChange={(event) => {
        const column = columns.find((one) => one.column === event.currentTarget.value);
        if (column) onOrder({ by: column.column, direction: column.first });
      }}
    >
      {columns.map(({ column, title }) => (
        <option key={column} value={column}>
          {p().pairs.sortedBy(title)}
        </option>
      ))}
    </select>
  );
};

/** The head of a list: a button in each column that it is sorted by; on a narrow screen one choice in their place. */
import { p } from '../../words/index.ts';
import { Select } from '../parts/options.tsx';
import type { ListColumn } from './list-column.ts';
import { pressed, type Order } from './sorting.ts';

interface Props<Row, Column extends string> {
  readonly columns: readonly ListColumn<Row, Column>[];
  readonly order: Order<Column>;
  readonly onOrder: (order: Order<Column>) => void;
}

export const ListHead = <Row, Column extends string>(
  props: Props<Row, Column> & { readonly hasTicks: boolean },
) => {
  const { columns, order, onOrder, hasTicks } = props;
  return (
    <thead role="rowgroup">
      <tr role="row" aria-rowindex={1}>
        {hasTicks && (
          <th scope="col" role="columnheader" class="list-tick">
            <span class="hidden-words">{p().lists.select}</span>
          </th>
        )}
        {columns.map(({ column, title, first, right, width }, at) => (
          <th
            key={column}
            scope="col"
            role="columnheader"
            class={[at === 0 && 'list-name', right && 'right'].filter(Boolean).join(' ')}
            {...(width !== undefined && { style: { inlineSize: `${width}rem` } })}
            {...(first && { 'aria-sort': order.by === column ? order.direction : 'none' })}
          >
            {first ? (
              <button
                type="button"
                class="sort"
                onClick={() => onOrder(pressed(order, column, first))}
              >
                {title}
              </button>
            ) : (
              <span class="list-title">{title}</span>
            )}
          </th>
        ))}
      </tr>
    </thead>
  );
};

/** The same choice where the head is folded away. */
export const SortSelect = <Row, Column extends string>(props: Props<Row, Column>) => {
  const { columns, order, onOrder } = props;
  return (
    <Select
      class="input list-sort"
      aria-label={p().lists.sortBy}
      value={order.by}
      options={columns.flatMap(({ column, title, first }) =>
        first ? [{ value: column, label: p().lists.sortedBy(title) }] : [],
      )}
      onChoose={(by) => {
        const first = columns.find(({ column }) => column === by)?.first;
        if (first) onOrder({ by, direction: first });
      }}
    />
  );
};

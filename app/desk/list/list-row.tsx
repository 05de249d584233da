/** One row of a list: a box to select it by, its name, and what each column says of it. */
import { Component, createRef } from 'preact';
import type { ListColumn } from './list-column.ts';

interface RowProps<Row> {
  readonly row: Row;
  readonly at: number;
  readonly columns: readonly ListColumn<Row>[];
  readonly isOut: boolean;
  /** Null: cannot be chosen. */
  readonly isChosen: boolean | null;
  readonly selectName: (row: Row) => string;
  readonly measure: (row: HTMLTableRowElement | null) => void;
}

const classOf = ({ column, right, card }: ListColumn<never>): string =>
  [`cell-${column}`, right && 'right', card && `card-${card}`].filter(Boolean).join(' ');

/** Drawn again only where something of it has changed: scrolling leaves most rows as they are. */
export class ListRow<Row> extends Component<RowProps<Row>> {
  readonly element = createRef<HTMLTableRowElement>();

  override shouldComponentUpdate(next: RowProps<Row>): boolean {
    const { row, at, columns, isOut, isChosen } = this.props;
    return (
      next.row !== row ||
      next.at !== at ||
      next.columns !== columns ||
      next.isOut !== isOut ||
      next.isChosen !== isChosen
    );
  }

  override componentDidMount(): void {
    this.props.measure(this.element.current);
  }

  override componentDidUpdate(): void {
    this.props.measure(this.element.current);
  }

  override componentWillUnmount(): void {
    this.props.measure(null);
  }

  render({ row, at, columns, isOut, isChosen, selectName }: RowProps<Row>) {
    return (
      <tr
        ref={this.element}
        role="row"
        data-at={at}
        aria-rowindex={at + 2}
        class={isOut ? 'list-out' : undefined}
        data-chosen={isChosen || undefined}
      >
        {isChosen !== null && (
          <td role="cell" class="list-tick">
            <input
              type="checkbox"
              class="tick"
              aria-label={selectName(row)}
              checked={isChosen}
              data-way="tick"
            />
          </td>
        )}
        {columns.map((one, place) => {
          const cell = one.cell(row);
          return place === 0 ? (
            <th key={one.column} scope="row" role="rowheader" class={`list-name ${classOf(one)}`}>
              {cell}
            </th>
          ) : (
            <td
              key={one.column}
              role="cell"
              class={classOf(one)}
              data-title={one.bare ? undefined : one.title}
              data-unit={one.unit}
            >
              {cell}
            </td>
          );
        })}
      </tr>
    );
  }
}

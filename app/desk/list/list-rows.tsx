/** The rows of a list as a table; on a narrow screen a card a row. Drawn, selected and walked through by key. */
import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { leastWidth, type ListColumn } from './list-column.ts';
import { ListHead } from './list-head.tsx';
import { ListRow } from './list-row.tsx';
import { movedTo } from './moves.ts';
import { allToggled, extended, nothingChosen, toggled, upTo, type Selection } from './selection.ts';
import type { Order } from './sorting.ts';
import { useDrawnRows, type DrawnRows } from './use-drawn-rows.ts';

/** About how high a row of a table and a card are, px: what is not measured yet is taken for as high. */
const ROW_PX = 33;
const CARD_PX = 96;

export interface RowsProps<Row, Column extends string> {
  readonly memory: string;
  /** What the list is of, for a reader who hears it. */
  readonly name: string;
  readonly columns: readonly ListColumn<Row, Column>[];
  readonly rows: readonly Row[];
  readonly ids: readonly string[];
  readonly order: Order<Column>;
  readonly onOrder: (order: Order<Column>) => void;
  /** Absent: nothing can be done with several. */
  readonly selection?: Selection<string> | undefined;
  readonly onSelect: (selection: Selection<string>) => void;
  readonly selectName: (row: Row) => string;
  /** Drawn softer: it is in no figure. */
  readonly isOut?: ((row: Row) => boolean) | undefined;
  /** It scrolls in a box of its own, as high as `list.css` says; else with the page. */
  readonly inBox: boolean;
  /** The box is lower. */
  readonly isShort: boolean;
  readonly isWhole: boolean;
  readonly onPart: (inPart: boolean) => void;
}

interface RowPlace {
  readonly at: number;
  readonly isTick: boolean;
}

/** The row that an event happened in, and whether at its box; null: in no row. */
const rowOf = (event: Event): RowPlace | null => {
  const target = event.target as HTMLElement;
  const at = target.closest<HTMLElement>('tr[data-at]')?.dataset['at'];
  return at === undefined ? null : { at: Number(at), isTick: target.matches('[data-way=tick]') };
};

/**
 * Gives the focus to a row as soon as it is drawn: to its box, or to the link of its name. A key that comes sooner
 * counts from the row that is on its way (`ahead`), or quick keys would be lost.
 */
const useFocusRow = (body: RefObject<HTMLElement | null>, show: (at: number) => void) => {
  const wanted = useRef<RowPlace | null>(null);
  useEffect(() => {
    if (!wanted.current) return;
    const { at, isTick } = wanted.current;
    const row = body.current?.querySelector<HTMLElement>(`tr[data-at="${at}"]`);
    if (!row) return;
    wanted.current = null;
    row.querySelector<HTMLElement>(isTick ? '[data-way=tick]' : 'th a')?.focus();
    row.scrollIntoView({ block: 'nearest' });
  });
  return {
    ahead: () => wanted.current,
    focusRow: (row: RowPlace) => {
      wanted.current = row;
      show(row.at);
    },
  };
};

/** What keys and clicks in the rows do to the selection and the focus. */
const useRowKeys = <Row, Column extends string>(
  { ids, selection, onSelect }: RowsProps<Row, Column>,
  shown: DrawnRows,
  { ahead, focusRow }: ReturnType<typeof useFocusRow>,
) => {
  const click = (event: MouseEvent) => {
    const row = rowOf(event);
    const id = row?.isTick ? ids[row.at] : undefined;
    if (!selection || id === undefined) return;
    const next = event.shiftKey ? upTo(selection, ids, id) : toggled(selection, id);
    // The browser has turned the box by itself; a range may leave it as it was.
    (event.target as HTMLInputElement).checked = next.chosen.has(id);
    onSelect(next);
  };
  /** Selects all, or none; whether the key was for that. */
  const selectsMany = (event: KeyboardEvent): boolean => {
    const isAll = event.key.toLowerCase() === 'a' && (event.ctrlKey || event.metaKey);
    if (!selection || (!isAll && event.key !== 'Escape')) return false;
    onSelect(isAll ? allToggled(nothingChosen, ids) : nothingChosen);
    return true;
  };
  /** Whether the key did something. */
  const does = (event: KeyboardEvent): boolean => {
    const row = ahead() ?? rowOf(event);
    const from = ids[row?.at ?? -1];
    if (!row || from === undefined) return false;
    if (selectsMany(event)) return true;
    if (event.ctrlKey || event.metaKey || event.altKey) return false;
    if (event.key === ' ' && selection && !row.isTick) {
      onSelect(event.shiftKey ? upTo(selection, ids, from) : toggled(selection, from));
      return true;
    }
    const at = movedTo(event.key, { from: row.at, count: ids.length, page: shown.page() });
    const to = at === null ? undefined : ids[at];
    if (at === null || to === undefined) return false;
    if (event.shiftKey && selection) onSelect(extended(selection, ids, from, to));
    focusRow({ at, isTick: row.isTick });
    return true;
  };
  const press = (event: KeyboardEvent) => {
    if (does(event)) event.preventDefault();
  };
  return { click, press };
};

export const ListRows = <Row, Column extends string>(props: RowsProps<Row, Column>) => {
  const { name, columns, rows, ids, selection, inBox, onPart } = props;
  const body = useRef<HTMLTableSectionElement>(null);
  const box = useRef<HTMLDivElement>(null);
  const [focused, setFocused] = useState<string | null>(null);
  const at = focused === null ? -1 : ids.indexOf(focused);
  const shown = useDrawnRows({
    ids,
    body,
    box: inBox ? box : null,
    isWhole: props.isWhole,
    focused: at < 0 ? null : at,
    rowPx: inBox ? ROW_PX : CARD_PX,
  });
  const { inPart } = shown;
  useEffect(() => onPart(inPart), [inPart, onPart]);
  const focus = useFocusRow(body, (to) => {
    if (inPart) shown.show(to);
    setFocused(ids[to] ?? null);
  });
  const { click, press } = useRowKeys(props, shown, focus);
  const width = columns.length + (selection ? 1 : 0);
  return (
    <div ref={box} class={props.isShort ? 'list-box list-short' : 'list-box'}>
      <table
        role="table"
        class={`place-table list-table ${props.memory}-table`}
        aria-label={name}
        aria-rowcount={rows.length + 1}
        style={{ '--list-least': `${leastWidth(columns)}rem` }}
      >
        <ListHead
          columns={columns}
          order={props.order}
          onOrder={props.onOrder}
          hasTicks={selection !== undefined}
        />
        <tbody
          ref={body}
          role="rowgroup"
          onClick={click}
          onKeyDown={press}
          onFocusIn={(event) => setFocused(ids[rowOf(event)?.at ?? -1] ?? null)}
          onFocusOut={(event) => {
            if (!body.current?.contains(event.relatedTarget as Node | null)) setFocused(null);
          }}
        >
          {shown.drawn.map((one) => {
            if (one.is === 'gap')
              return (
                <tr key={`gap ${one.before}`} class="list-gap" aria-hidden="true">
                  <td colSpan={width} style={{ blockSize: `${one.px}px` }} />
                </tr>
              );
            const row = rows[one.at] as Row;
            const id = ids[one.at] as string;
            return (
              <ListRow
                key={id}
                row={row}
                at={one.at}
                columns={columns}
                isOut={props.isOut?.(row) ?? false}
                isChosen={selection ? selection.chosen.has(id) : null}
                selectName={props.selectName}
                measure={shown.measure}
              />
            );
          })}
        </tbody>
      </table>
    </div>
  );
};

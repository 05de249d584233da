/**
 * A list of the desk: what it is narrowed to, how many are found or selected and what can be done with those, which
 * columns are shown, then the rows. Every list of pairs, testers, runs, findings and checks is this one.
 */
import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { usePrintWhole } from '../../parts/print-whole.ts';
import { p } from '../../words/index.ts';
import { ColumnChoice } from './column-choice.tsx';
import { shownOf } from './columns.ts';
import { FindField } from './find-field.tsx';
import { useHiddenColumns } from './hidden-columns.ts';
import type { ListColumn } from './list-column.ts';
import { SortSelect } from './list-head.tsx';
import { ListRows } from './list-rows.tsx';
import { allToggled, howMany, nothingChosen, type Selection } from './selection.ts';
import type { Order } from './sorting.ts';
import { useWide } from './use-wide.ts';
import './list.css';

/** More cards are folded: what stands below the list would be far away. */
const FIRST_CARDS = 12;

export interface ListProps<Row, Column extends string> {
  /** Under which the device keeps what is hidden of it, such as `pairs`. */
  readonly memory: string;
  /** What it is of, for a reader who hears it. */
  readonly name: string;
  readonly columns: readonly ListColumn<Row, Column>[];
  /** In their order, as far as the list is narrowed. */
  readonly rows: readonly Row[];
  /** All that could be listed; absent: what was selected is remembered as it was. */
  readonly every?: readonly Row[];
  readonly idOf: (row: Row) => string;
  readonly order: Order<Column>;
  readonly onOrder: (order: Order<Column>) => void;
  readonly find?: {
    readonly label: string;
    readonly value: string;
    readonly onFind: (text: string) => void;
  };
  /** What narrows it besides. */
  readonly narrow?: ComponentChildren;
  /** How many it has: "3 of 24 pairs". */
  readonly counted: string;
  /** In place of the rows where there is none. */
  readonly nothing: string;
  readonly selectName: (row: Row) => string;
  /** What can be done with those that are selected; absent: nothing, and no row can be selected. */
  readonly acts?: (chosen: readonly Row[], none: () => void) => ComponentChildren;
  readonly isOut?: (row: Row) => boolean;
  /** Lower: it is not the only thing of its place. */
  readonly isShort?: boolean;
}

/** The selection of a list, with the rows themselves: also those that it is not narrowed to any more. */
const useSelected = <Row, Column extends string>({ rows, every, idOf }: ListProps<Row, Column>) => {
  const [selection, select] = useState<Selection<string>>(nothingChosen);
  const seen = useRef(new Map<string, Row>());
  for (const row of every ?? rows) {
    const id = idOf(row);
    if (selection.chosen.has(id)) seen.current.set(id, row);
  }
  const known = every && new Set(every.map(idOf));
  const chosen = [...selection.chosen].flatMap((id) => {
    // One that is gone in the meantime is selected no more.
    const row = known && !known.has(id) ? undefined : seen.current.get(id);
    return row === undefined ? [] : [row];
  });
  return { selection, select, chosen };
};

/** Ctrl+F looks through all of a list whose rows are not all drawn; pressed again it is the browser's own. */
const useFindKey = (isOn: boolean) => {
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (!isOn) return;
    const press = (event: KeyboardEvent) => {
      const isFind = event.key.toLowerCase() === 'f' && (event.ctrlKey || event.metaKey);
      if (!isFind || !field.current || document.activeElement === field.current) return;
      event.preventDefault();
      field.current.select();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [isOn]);
  return field;
};

const Bar = <Row, Column extends string>(
  props: ListProps<Row, Column> & {
    readonly ids: readonly string[];
    readonly selected: ReturnType<typeof useSelected<Row, Column>>;
    readonly hidden: ReturnType<typeof useHiddenColumns>;
  },
) => {
  const { acts, ids, counted, columns, hidden } = props;
  const { selection, select, chosen } = props.selected;
  const words = p().lists;
  const many = howMany(selection, ids);
  const none = () => select(nothingChosen);
  return (
    <div class="list-bar no-print" data-chosen={chosen.length > 0 || undefined}>
      {acts && ids.length > 0 && (
        <input
          type="checkbox"
          class="tick"
          aria-label={words.selectAll(ids.length)}
          checked={many === 'all'}
          ref={(box) => {
            if (box) box.indeterminate = many === 'some';
          }}
          onClick={() => select(allToggled(selection, ids))}
        />
      )}
      <span class={chosen.length === 0 ? 'soft small' : undefined} role="status">
        {chosen.length === 0 ? counted : words.selected(chosen.length, counted)}
      </span>
      {acts && chosen.length > 0 && (
        <>
          {acts(chosen, none)}
          <button type="button" class="list-quiet" onClick={none}>
            {words.selectNone}
          </button>
        </>
      )}
      {acts && <span class="list-keys soft small">{words.keys}</span>}
      <ColumnChoice columns={columns} hidden={hidden.hidden} onShow={hidden.show} />
    </div>
  );
};

export const List = <Row, Column extends string>(props: ListProps<Row, Column>) => {
  const { memory, rows, idOf, acts, find, narrow } = props;
  const words = p().lists;
  const isWide = useWide();
  const hidden = useHiddenColumns(memory);
  const [isOpen, setOpen] = useState(false);
  const [isPrinted, setPrinted] = useState(false);
  usePrintWhole(
    () => setPrinted(true),
    () => setPrinted(false),
  );
  const [inPart, setInPart] = useState(false);
  const field = useFindKey(inPart);
  const selected = useSelected(props);
  const isFolded = !isWide && !isOpen && !isPrinted && rows.length > FIRST_CARDS;
  const listed = useMemo(() => (isFolded ? rows.slice(0, FIRST_CARDS) : rows), [rows, isFolded]);
  const ids = useMemo(() => listed.map(idOf), [listed, idOf]);
  const every = useMemo(() => rows.map(idOf), [rows, idOf]);
  const columns = useMemo(
    () => shownOf(props.columns, hidden.hidden),
    [props.columns, hidden.hidden],
  );
  return (
    <section class="list" aria-label={props.name}>
      {(find ?? narrow) && (
        <div class="list-tools no-print">
          {find && <FindField field={field} {...find} />}
          {narrow}
          <SortSelect columns={columns} order={props.order} onOrder={props.onOrder} />
        </div>
      )}
      <Bar {...props} ids={every} selected={selected} hidden={hidden} />
      {rows.length === 0 ? (
        <p>{props.nothing}</p>
      ) : (
        <ListRows
          key={isWide ? 'box' : 'page'}
          memory={memory}
          name={props.name}
          columns={columns}
          rows={listed}
          ids={ids}
          order={props.order}
          onOrder={props.onOrder}
          selection={acts && selected.selection}
          onSelect={selected.select}
          selectName={props.selectName}
          isOut={props.isOut}
          inBox={isWide}
          isShort={props.isShort ?? false}
          isWhole={isPrinted}
          onPart={setInPart}
        />
      )}
      {!isWide && rows.length > FIRST_CARDS && (
        <button type="button" class="list-quiet no-print" onClick={() => setOpen(!isOpen)}>
          {isOpen ? words.showFirst(FIRST_CARDS) : words.showAll(rows.length)}
        </button>
      )}
    </section>
  );
};

/**
 * Cells of a table that are typed in, as in a spreadsheet: arrows, Enter and Tab lead from one to the next, a block is
 * pasted into several, and what is wrong stands in its cell. What each key does: `app/drafts/cell-moves.ts`.
 */
import type { ComponentChildren } from 'preact';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { isBlock, movedTo, moveOf, type CellAt, type TableSize } from '../../drafts/cell-moves.ts';
import './cells.css';

const ROW = 'data-row';
const COLUMN = 'data-column';

/** Attributes that give a control its place. */
export const placeOf = ({ row, column }: CellAt) => ({ [ROW]: row, [COLUMN]: column });

type Control = HTMLInputElement | HTMLSelectElement | HTMLButtonElement;

const controlAt = (table: HTMLElement, { row, column }: CellAt): Control | null =>
  table.querySelector<Control>(`[${ROW}="${row}"][${COLUMN}="${column}"]`);

const placeFrom = (target: EventTarget | null): CellAt | null => {
  const control = target instanceof Element ? target.closest(`[${ROW}]`) : null;
  return control
    ? { row: Number(control.getAttribute(ROW)), column: Number(control.getAttribute(COLUMN)) }
    : null;
};

const caretOf = (control: EventTarget | null) =>
  control instanceof HTMLInputElement
    ? {
        start: control.selectionStart ?? 0,
        end: control.selectionEnd ?? 0,
        length: control.value.length,
      }
    : null;

const focusOn = (control: Control) => {
  control.focus();
  // As in a spreadsheet: what is typed next takes the place of what stands there.
  if (control instanceof HTMLInputElement) control.select();
};

export interface CellsProps extends TableSize {
  /** A block was pasted into a cell. */
  readonly onPaste: (at: CellAt, text: string) => void;
  /** Enter in the last row; absent: nothing comes after it. */
  readonly onBelow?: () => void;
  /** Ctrl+Z; answers whether there was anything of its own to undo, else it is the browser's. */
  readonly onUndo?: () => boolean;
}

/**
 * What makes a table one of cells.
 * @returns `table` for its element, `active` the cell that is typed in, `focus` to go to one once it is drawn
 */
export const useCells = ({ rows, columns, onPaste, onBelow, onUndo }: CellsProps) => {
  const table = useRef<HTMLTableElement>(null);
  const [active, setActive] = useState<CellAt | null>(null);
  /** A list is open, or a word for one is half typed. */
  const isChoosing = useRef(false);
  const goal = useRef<CellAt | null>(null);
  const focus = (at: CellAt) => {
    goal.current = at;
  };
  useEffect(() => {
    const at = goal.current;
    const control = at && table.current && controlAt(table.current, at);
    if (!control) return;
    goal.current = null;
    focusOn(control);
  });

  const onKeyDown = (event: KeyboardEvent) => {
    const from = placeFrom(event.target);
    if (!from || !table.current || event.isComposing) return;
    if ((event.ctrlKey || event.metaKey) && event.key === 'z' && onUndo?.())
      return event.preventDefault();
    const isList = event.target instanceof HTMLSelectElement;
    if (isList && (event.key === ' ' || event.key === 'F4' || event.altKey))
      isChoosing.current = true;
    if (event.key === 'Escape') isChoosing.current = false;
    const move = moveOf({
      key: event.key,
      shift: event.shiftKey,
      withModifier: event.ctrlKey || event.altKey || event.metaKey,
      caret: caretOf(event.target),
      isChoosing: isChoosing.current,
    });
    // A button is pressed by Enter.
    if (!move || (event.key === 'Enter' && event.target instanceof HTMLButtonElement)) return;
    const held = table.current;
    const to = movedTo(from, move, { rows, columns }, (at) => controlAt(held, at) !== null);
    if (to) {
      event.preventDefault();
      const control = controlAt(held, to);
      if (control) focusOn(control);
    } else if (event.key === 'Enter') {
      // The form is saved by its button alone: Enter goes down.
      event.preventDefault();
      if (!event.shiftKey && onBelow) {
        onBelow();
        focus({ row: from.row + 1, column: from.column });
      }
    } else if (event.key.startsWith('Arrow')) event.preventDefault();
  };

  const on = {
    ref: table,
    onKeyDown,
    onPaste: (event: ClipboardEvent) => {
      const at = placeFrom(event.target);
      const text = event.clipboardData?.getData('text/plain') ?? '';
      if (!at || !isBlock(text)) return;
      event.preventDefault();
      onPaste(at, text);
    },
    onMouseDown: (event: MouseEvent) => {
      isChoosing.current = event.target instanceof HTMLSelectElement;
    },
    onInput: (event: Event) => {
      isChoosing.current = event.target instanceof HTMLInputElement && event.target.list !== null;
    },
    onChange: () => {
      isChoosing.current = false;
    },
    onFocusIn: (event: FocusEvent) => {
      isChoosing.current = false;
      setActive(placeFrom(event.target));
    },
    onFocusOut: () => setActive(null),
  };
  return { on, active, focus };
};

/** Gets what ties a cell's label, place and error to its control. */
type CellChild = (ids: {
  readonly 'aria-label': string;
  readonly 'aria-describedby'?: string;
  readonly 'aria-invalid'?: true;
}) => ComponentChildren;

/** A cell with its control, and what is wrong with it. */
export const Cell = (props: {
  /** Of its column, shown above it where the table has no room for a head. */
  readonly title: string;
  /** Said of the control: column, unit and row. */
  readonly label: string;
  readonly error?: string | undefined;
  readonly kind?: 'figure' | 'wide' | 'short';
  readonly children: CellChild;
}) => {
  const id = useId();
  const { title, label, error, kind } = props;
  return (
    <td class={`cell${kind ? ` cell-${kind}` : ''}`} data-title={title}>
      {props.children({
        'aria-label': label,
        ...(error && { 'aria-describedby': id, 'aria-invalid': true as const }),
      })}
      {error && (
        <span class="field-error small" id={id}>
          {error}
        </span>
      )}
    </td>
  );
};

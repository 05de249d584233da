/** Which columns of a list are shown: a box for each but the names of the rows. */
import { useRef, useState } from 'preact/hooks';
import { p } from '../../words/index.ts';
import type { ListColumn } from './list-column.ts';

export const ColumnChoice = <Row, Column extends string>(props: {
  readonly columns: readonly ListColumn<Row, Column>[];
  readonly hidden: readonly string[] | undefined;
  readonly onShow: (column: string, isShown: boolean) => void;
}) => {
  const { columns, hidden, onShow } = props;
  const words = p().lists;
  const fold = useRef<HTMLDetailsElement>(null);
  const [isOpen, setOpen] = useState(false);
  const close = () => {
    if (fold.current) fold.current.open = false;
  };
  const choices = columns.filter(({ stays }) => !stays);
  const gone = choices.filter(({ column }) => hidden?.includes(column)).length;
  return (
    <details
      class="list-columns"
      ref={fold}
      onToggle={(event) => setOpen(event.currentTarget.open)}
      onFocusOut={(event) => {
        if (!fold.current?.contains(event.relatedTarget as Node | null)) close();
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        close();
        fold.current?.querySelector('summary')?.focus();
      }}
    >
      <summary>{words.columns(gone)}</summary>
      {isOpen && (
        <fieldset>
          <legend class="hidden-words">{words.shownColumns}</legend>
          {choices.map(({ column, title }) => (
            <label key={column}>
              <input
                type="checkbox"
                class="tick"
                checked={!hidden?.includes(column)}
                onChange={(event) => onShow(column, event.currentTarget.checked)}
              />
              {title}
            </label>
          ))}
        </fieldset>
      )}
    </details>
  );
};

/** The third step: what becomes of each row, each trouble at its cell, to be mended there. */
import { useId, useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import type { Column } from '../../drafts/tables/columns.ts';
import type { CellTrouble, ReadRow } from '../../drafts/tables/row.ts';
import { mendKey, type Mends } from '../../drafts/tables/table.ts';
import type { SheetRow } from '../../drafts/tables/sheet.ts';
import { p } from '../../words/index.ts';
import { Some } from '../parts/some.tsx';
import { sayTrouble } from './say-trouble.ts';

export interface PreviewProps {
  /** With what was mended. */
  readonly sheet: readonly SheetRow[];
  readonly columns: readonly (Column | null)[];
  readonly rows: readonly ReadRow[];
  readonly mends: Mends;
  readonly out: ReadonlySet<number>;
  readonly right: ReadonlySet<number>;
  readonly tester: (id: RecordId | null) => string;
  readonly onMend: (key: string, text: string) => void;
  readonly onOut: (line: number) => void;
  readonly onRight: (line: number) => void;
}

const ROWS_AT_A_TIME = 25;

export const Preview = (props: PreviewProps) => {
  const words = p().tables;
  const { rows, sheet, mends } = props;
  const mendedLines = new Set([...mends.keys()].map((key) => Number(key.split(' ')[0])));
  const byLine = new Map(sheet.map((row) => [row.line, row]));
  // A row that was mended stays in sight: its cell would vanish from under the fingers.
  const look = rows.filter(
    ({ fate, line }) => ['odd', 'wrong', 'changed'].includes(fate) || mendedLines.has(line),
  );
  const [all, setAll] = useState(false);
  const isAll = all || look.length === 0;
  const shown = props.columns.flatMap((column, at) => (column === null ? [] : [{ column, at }]));
  return (
    <>
      {look.length > 0 && (
        <select
          class="input table-show"
          aria-label={words.show}
          value={isAll ? 'all' : 'look'}
          onChange={(event) => setAll(event.currentTarget.value === 'all')}
        >
          <option value="look">{words.showLook(look.length)}</option>
          <option value="all">{words.showAll(rows.length)}</option>
        </select>
      )}
      <div class="table-wrap">
        <table class="table-preview">
          <thead>
            <tr>
              <th scope="col" class="right">
                {words.row}
              </th>
              <th scope="col">{words.what}</th>
              {shown.map(({ column }) => (
                <th key={column} scope="col">
                  {words.columns[column]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <Some
              key={String(isAll)}
              of={isAll ? rows : look}
              step={ROWS_AT_A_TIME}
              columns={shown.length + 2}
            >
              {(row) => (
                <tr key={row.line} class={props.out.has(row.line) ? 'is-out' : ''}>
                  <th scope="row" class="right">
                    {row.line}
                  </th>
                  {/* Before the cells: the right end of a wide table is out of sight. */}
                  <td>
                    <RowFate {...props} row={row} />
                  </td>
                  {shown.map(({ column, at }) => (
                    <PreviewCell
                      key={column}
                      {...props}
                      column={column}
                      line={row.line}
                      at={at}
                      text={byLine.get(row.line)?.cells[at] ?? ''}
                      troubles={row.troubles.filter((one) => one.column === column)}
                    />
                  ))}
                </tr>
              )}
            </Some>
          </tbody>
        </table>
      </div>
    </>
  );
};

const PreviewCell = (
  props: PreviewProps & {
    readonly column: Column;
    readonly line: number;
    readonly at: number;
    readonly text: string;
    readonly troubles: readonly CellTrouble[];
  },
) => {
  const { column, line, at, text, troubles, mends } = props;
  const words = p().tables;
  const id = useId();
  const key = mendKey(line, at);
  // The preview may be drawn anew amid a word: a sync, say.
  const [typed, setTyped] = useState<string | null>(null);
  if (troubles.length === 0 && !mends.has(key)) return <td>{text}</td>;
  const isWrong = troubles.some(({ grade }) => grade === 'wrong') && !props.out.has(line);
  return (
    <td class={isWrong ? 'is-wrong' : troubles.length > 0 ? 'is-odd' : ''}>
      <input
        class="input"
        autocomplete="off"
        aria-label={words.mend(words.columns[column], line)}
        {...(troubles.length > 0 && { 'aria-describedby': id })}
        {...(isWrong && { 'aria-invalid': true })}
        value={typed ?? text}
        onInput={(event) => setTyped(event.currentTarget.value)}
        // Read anew once it is typed: each letter would judge half a word.
        onChange={(event) => {
          setTyped(null);
          props.onMend(key, event.currentTarget.value);
        }}
      />
      {troubles.length > 0 && (
        <p id={id} class={isWrong ? 'field-error small' : 'small'}>
          {troubles.map((trouble) => sayTrouble(trouble, props.tester)).join(' ')}
        </p>
      )}
    </td>
  );
};

const RowFate = (props: PreviewProps & { readonly row: ReadRow }) => {
  const words = p().tables;
  const { line, fate } = props.row;
  const isOut = props.out.has(line);
  const isRight = props.right.has(line);
  const act = (label: string, run: (line: number) => void) => (
    <button
      type="button"
      class="button button-quiet"
      aria-label={words.aboutRow(label, line)}
      onClick={() => run(line)}
    >
      {label}
    </button>
  );
  const said = isOut ? 'out' : fate === 'odd' && isRight ? 'new' : fate;
  return (
    <>
      <span>{words.fates[said]}</span>{' '}
      {fate === 'odd' && !isOut && act(isRight ? words.isNotRight : words.isRight, props.onRight)}
      {fate === 'new' && act(isOut ? words.takeIn : words.leaveOut, props.onOut)}
    </>
  );
};

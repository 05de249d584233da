/** The dimensions of a round as one table to type in: a row a dimension, pasted as a block or added from the usual ones. */
import { useState } from 'preact/hooks';
import { practiceDimensions } from '../../../core/rounds/index.ts';
import type { CellAt } from '../../drafts/cell-moves.ts';
import type { DimensionTrouble } from '../../drafts/dimension-reading.ts';
import { dimensionColumns, withoutRow, withRow } from '../../drafts/dimension-rows.ts';
import {
  draftOfPractice,
  emptyDimension,
  isBlankDimension,
  usualLeft,
  type DimensionDraft,
} from '../../drafts/round.ts';
import { Button, Field, Notice } from '../../parts/controls/controls.tsx';
import { d, t, terms } from '../../words/index.ts';
import { placeOf, useCells } from '../parts/cells.tsx';
import { DimensionCells, SITES } from './dimension-cells.tsx';
import { namesHere } from './names-here.ts';
import type { PartProps } from './round-parts.tsx';

/** After the cells of a row. */
const REMOVE = dimensionColumns.length;

/** More states than this nobody goes back. */
const MOST_STATES = 50;

/** A usual dimension with its tolerance, to be told from the others. */
const usualName = (at: number): string => {
  const one = practiceDimensions[at];
  if (!one) return '';
  const { sites } = d().blueprint;
  const { tolerance } = one;
  const size =
    tolerance.by === 'share'
      ? `${100 * tolerance.value} %`
      : `${tolerance.value} ${terms().units[one.unit]}`;
  return d().joined.of(
    terms().measures[one.measure],
    d().joined.aside(sites[one.site] ?? one.site, `± ${size}`),
  );
};

/** Is that cell's mistake told? A figure that cannot be as soon as the cell is left; what is missing once saving was tried. */
const isTold = (
  { at, field, why }: DimensionTrouble,
  active: CellAt | null,
  tried: boolean,
): boolean => {
  if (tried) return true;
  if (why === 'missing' || why === 'twice') return false;
  return active?.row !== at || active.column !== dimensionColumns.indexOf(field);
};

export const DimensionTable = ({
  draft,
  change,
  troubles,
  tried,
}: PartProps & {
  readonly troubles: readonly DimensionTrouble[];
  readonly tried: boolean;
}) => {
  const words = d().blueprint.table;
  const names = namesHere();
  const rows = draft.dimensions.length > 0 ? draft.dimensions : [emptyDimension];
  /** The rows before each change of more than one cell, the latest last. */
  const [past, setPast] = useState<readonly (readonly DimensionDraft[])[]>([]);
  /** The rows as the latest of those changes left them. */
  const [after, setAfter] = useState<readonly DimensionDraft[] | null>(null);
  const [said, setSaid] = useState('');
  const [failed, setFailed] = useState(false);
  const put = (dimensions: readonly DimensionDraft[]) => change({ dimensions });
  const putMany = (dimensions: readonly DimensionDraft[], saying: string) => {
    setPast([...past.slice(-MOST_STATES), rows]);
    setAfter(dimensions);
    setSaid(saying);
    put(dimensions);
  };
  const undo = () => {
    const before = past.at(-1);
    if (!before) return;
    setPast(past.slice(0, -1));
    setAfter(before);
    setSaid(words.undone);
    put(before);
  };
  const add = (row: DimensionDraft) => {
    const filled = rows.filter((one, at) => at < rows.length - 1 || !isBlankDimension(one));
    putMany([...filled, row], words.added);
    cells.focus({ row: filled.length, column: row.measure === '' ? 0 : 2 });
  };
  const paste = async (at: CellAt, text: string) => {
    // The reader of tables is fetched with the first block.
    const { pasteInto } = await import('../../drafts/dimension-paste.ts');
    const pasted = pasteInto(rows, at, text, names);
    putMany(pasted.rows, pasted.left > 0 ? words.pastedBut(pasted.left) : words.pasted);
    cells.focus(at);
  };
  const remove = (at: number) => {
    const left = withoutRow(rows, at);
    putMany(left, words.removed(at + 1));
    cells.focus({ row: Math.max(0, Math.min(at, left.length - 1)), column: 0 });
  };
  const cells = useCells({
    rows: rows.length,
    columns: REMOVE + 1,
    onPaste: (at, text) => {
      setFailed(false);
      paste(at, text).catch(() => setFailed(true));
    },
    onBelow: () => put([...rows, emptyDimension]),
    onUndo: () => {
      // Once something was typed since, Ctrl+Z is about that.
      if (past.length === 0 || after !== draft.dimensions) return false;
      undo();
      return true;
    },
  });
  const told = troubles.filter((one) => isTold(one, cells.active, tried));
  return (
    <>
      <h3>{d().rounds.blueprint}</h3>
      <p class="soft small">{words.hint}</p>
      <div class="table-wrap">
        <table class="cells cells-cards" aria-label={d().rounds.blueprint} {...cells.on}>
          <thead>
            <tr>
              <th scope="col">
                <span class="hidden-words">{words.row}</span>
              </th>
              {dimensionColumns.map((column) => (
                <th key={column} scope="col">
                  {words.columns[column]}
                </th>
              ))}
              <th scope="col">
                <span class="hidden-words">{t().remove}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row, at) => (
              <tr key={at}>
                <th scope="row" class="row-number">
                  {at + 1}
                </th>
                <DimensionCells
                  at={at}
                  row={row}
                  sites={names.sites}
                  wrong={told.filter((one) => one.at === at)}
                  onChange={(next) => put(withRow(rows, at, next))}
                />
                <td class="cell-act">
                  <Button
                    kind="quiet"
                    aria-label={words.removeRow(at + 1)}
                    onClick={() => remove(at)}
                    {...placeOf({ row: at, column: REMOVE })}
                  >
                    {t().remove}
                  </Button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <datalist id={SITES}>
        {Object.values(names.sites).map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      {failed && (
        <Notice tone="danger" live>
          {d().trouble}
        </Notice>
      )}
      <div class="cells-tools">
        <Button onClick={() => add(emptyDimension)}>{words.addRow}</Button>
        <Button kind="quiet" disabled={past.length === 0} onClick={undo}>
          {t().undo}
        </Button>
        <span class="soft small" role="status">
          {said}
        </span>
      </div>
      <Field label={d().blueprint.usual} hint={d().blueprint.usualHint}>
        {(ids) => (
          <select
            class="input"
            {...ids}
            value=""
            onChange={(event) => {
              const one = practiceDimensions[Number(event.currentTarget.value)];
              if (event.currentTarget.value !== '' && one) add(draftOfPractice(one));
              event.currentTarget.value = '';
            }}
          >
            <option value="">{d().none}</option>
            {usualLeft(draft).map((at) => (
              <option key={at} value={at}>
                {usualName(at)}
              </option>
            ))}
          </select>
        )}
      </Field>
    </>
  );
};

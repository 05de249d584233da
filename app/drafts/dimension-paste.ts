/** A block of cells pasted into the table of dimensions, by the words of the records or of the reader's language. Pure. */
import { measures, type MeasureUnit } from '../../core/records/index.ts';
import { blockOf } from './cell-block.ts';
import type { CellAt } from './cell-moves.ts';
import {
  dimensionColumns,
  named,
  plain,
  siteOf,
  withFoot,
  withMeasure,
  withoutWord,
  withUnit,
  type DimensionColumn,
  type DimensionNames,
} from './dimension-rows.ts';
import { emptyDimension, type DimensionDraft } from './round.ts';

/** How a head may call a column beside its own word and its name. */
const otherNames: Readonly<Partial<Record<DimensionColumn, readonly string[]>>> = {
  site: ['part', 'place'],
  lower: ['minus', '-', '−'],
  upper: ['plus', '+'],
  leftRight: ['left-right', 'left-to-right'],
};

const notKnown = (
  row: DimensionDraft,
  column: 'measure' | 'unit' | 'foot',
  text: string,
): DimensionDraft => ({ ...row, notKnown: { ...row.notKnown, [column]: text } });

/** The row with a cell as it was typed or pasted; a word that is not known is kept, to be told at its cell. */
const withCell = (
  row: DimensionDraft,
  column: DimensionColumn,
  text: string,
  names: DimensionNames,
): DimensionDraft => {
  switch (column) {
    case 'measure': {
      const measure = named(text, measures, names.measures);
      if (measure !== undefined) return withMeasure(row, measure);
      const empty = { ...withoutWord(row, 'measure'), measure: '' as const };
      return text === '' ? empty : notKnown(empty, column, text);
    }
    case 'unit': {
      // Empty: the usual one of the measure.
      if (text === '') return withoutWord(row, 'unit');
      const known = Object.keys(names.units) as MeasureUnit[];
      const unit = named(text, known, names.units);
      return unit === undefined ? notKnown(row, column, text) : withUnit(row, unit);
    }
    case 'foot': {
      if (text === '') return withFoot(row, 'both');
      const foot = named(text, ['both', 'left', 'right'] as const, names.feet);
      return foot === undefined ? notKnown(row, column, text) : withFoot(row, foot);
    }
    case 'site':
      return { ...row, site: siteOf(text, names.sites) };
    case 'nominal':
    case 'lower':
    case 'upper':
    case 'leftRight':
      return { ...row, [column]: text };
  }
};

const columnOfHead = (cell: string, { columns }: DimensionNames): DimensionColumn | undefined =>
  dimensionColumns.find(
    (column) =>
      column.toLowerCase() === plain(cell) ||
      plain(columns[column]) === plain(cell) ||
      otherNames[column]?.includes(plain(cell)),
  );

export interface PastedRows {
  readonly rows: readonly DimensionDraft[];
  /** Cells that stood to the right of the table, or under a head that is not known: they were left out. */
  readonly left: number;
}

/**
 * The rows with a block pasted into them, from a cell on to the right and down; rows are added as needed. Under a head of
 * the table's columns the cells find their own.
 */
export const pasteInto = (
  rows: readonly DimensionDraft[],
  at: CellAt,
  text: string,
  names: DimensionNames,
): PastedRows => {
  const known = (cells: readonly string[]) => cells.map((cell) => columnOfHead(cell, names));
  // A measure is called as its column in no language, so two known names make a head.
  const isHead = (cells: readonly string[]) => known(cells).filter(Boolean).length >= 2;
  const block = blockOf(text, isHead);
  const [first = []] = block;
  const hasHead = isHead(first);
  const columns = hasHead ? known(first) : dimensionColumns.slice(at.column);
  const next = [...rows];
  let left = 0;
  for (const [down, cells] of block.slice(hasHead ? 1 : 0).entries()) {
    if (cells.every((cell) => cell === '')) continue;
    let row = next[at.row + down] ?? emptyDimension;
    // The measure first: it says which units there are.
    const inOrder = cells
      .map((cell, across) => ({ cell, column: columns[across] }))
      .sort((a, b) => Number(b.column === 'measure') - Number(a.column === 'measure'));
    for (const { cell, column } of inOrder)
      if (column === undefined) left += cell === '' ? 0 : 1;
      else row = withCell(row, column, cell, names);
    while (next.length < at.row + down) next.push(emptyDimension);
    next[at.row + down] = row;
  }
  return { rows: next, left };
};

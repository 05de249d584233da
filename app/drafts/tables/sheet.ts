/** What stands in a table that was pasted, or that a spreadsheet wrote? Cells as text, by line; pure. */
import Papa from 'papaparse';
import { markOf } from '../table.ts';

export interface SheetRow {
  /** From 1, the head included, as a spreadsheet counts. */
  readonly line: number;
  readonly cells: readonly string[];
}

export interface Sheet {
  readonly head: readonly string[];
  readonly rows: readonly SheetRow[];
}

/** Longer tables are brought in in parts: the preview holds all of it. Judgement. */
export const MOST_ROWS = 20_000;

const isEmpty = (cells: readonly string[]): boolean => cells.every((cell) => cell === '');

/** An apostrophe that a table of Pairlog sets before what a spreadsheet would run. */
const plainCell = (cell: string): string => cell.trim().replace(/^'(?=\s*[=+\-@＝＋－＠])/u, '');

/**
 * The head and the rows of a table: tabs, else semicolons, else commas part the cells. Empty lines are left out, and so
 * are columns without a head whose cells are all empty.
 */
export const readSheet = (text: string): Sheet => {
  const plain = text.replace(/^\uFEFF/, '');
  const { data } = Papa.parse<string[]>(plain, { delimiter: markOf(plain) });
  const lines = data
    .map((cells, at) => ({ line: at + 1, cells: cells.map(plainCell) }))
    .filter(({ cells }) => !isEmpty(cells));
  const [first, ...rows] = lines;
  if (!first) return { head: [], rows: [] };
  const width = Math.max(first.cells.length, ...rows.map(({ cells }) => cells.length));
  const kept = Array.from({ length: width }, (_, at) => at).filter(
    (at) => (first.cells[at] ?? '') !== '' || rows.some(({ cells }) => (cells[at] ?? '') !== ''),
  );
  const cut = (cells: readonly string[]) => kept.map((at) => cells[at] ?? '');
  return {
    head: cut(first.cells),
    rows: rows.slice(0, MOST_ROWS).map(({ line, cells }) => ({ line, cells: cut(cells) })),
  };
};

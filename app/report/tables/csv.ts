/**
 * A table as a CSV file, RFC 4180 (CRLF, quotes doubled). Numbers stay numbers; a text that a spreadsheet would run as a
 * formula gets an apostrophe before that.
 */
import Papa from 'papaparse';
import type { Table } from './table.ts';

/** How a text begins that some spreadsheet runs: also after blanks, and full-width as Chinese keyboards type it. */
const FORMULA = /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/u;

/**
 * The same after a mark at which a spreadsheet that parts by semicolons or tabs begins a cell in the midst of a text: it
 * does not know these quotes.
 */
const FORMULA_WITHIN = /([;\t\r\n])(?=[^\S\t\r\n]*[=+\-@＝＋－＠])/gu;

/**
 * The table as the text of a CSV file, its columns named in the first line. It begins with a byte order mark,
 * without which a spreadsheet takes Chinese for something else.
 */
export const csvOf = ({ columns, rows }: Pick<Table, 'columns' | 'rows'>): string =>
  `\ufeff${Papa.unparse(
    {
      fields: [...columns],
      data: rows.map((row) =>
        row.map((cell) =>
          typeof cell === 'string' ? cell.replace(FORMULA_WITHIN, "$1'") : (cell ?? ''),
        ),
      ),
    },
    { escapeFormulae: FORMULA, newline: '\r\n' },
  )}\r\n`;

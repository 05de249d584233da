/**
 * The lines of a table (CSV, RFC 4180) under its heading, for whoever reads them. Lines count from 1, the heading
 * included; empty ones are passed over.
 */
import Papa from 'papaparse';
import * as z from 'zod/mini';

const rowsSchema = z.array(z.array(z.string()));

export interface TableLine<Column extends string> {
  readonly line: number;
  /** As they stand. */
  readonly cells: readonly string[];
  /** The cell of a column, without spaces around it; empty where the table has no such column. */
  readonly cell: (column: Column) => string;
}

export interface TypedTable<Column extends string> {
  /** Columns that the table must have and has not. */
  readonly missing: readonly Column[];
  readonly width: number;
  readonly lines: readonly TableLine<Column>[];
}

const MARKS = ['\t', ';', ','] as const;

/**
 * What parts the cells: tabs, else semicolons, else commas, by the first line, which is the heading. A comma elsewhere may
 * be a decimal one.
 */
export const markOf = (text: string): string => {
  const line = text.split(/\r?\n/).find((one) => one.trim() !== '') ?? '';
  return MARKS.find((mark) => line.includes(mark)) ?? ',';
};

/**
 * Reads the text of a table.
 * @param required columns without which nothing can be read
 */
export const typedTable = <Column extends string>(
  text: string,
  required: readonly Column[],
): TypedTable<Column> => {
  const { data } = Papa.parse(text.replace(/^\uFEFF/, ''), {
    skipEmptyLines: false,
    delimiter: markOf(text),
  });
  const [heading = [], ...rows] = rowsSchema.parse(data);
  const names = heading.map((name) => name.trim().toLowerCase().replaceAll(' ', '_'));
  const lines = rows.flatMap((cells, at): TableLine<Column>[] =>
    cells.every((one) => one.trim() === '')
      ? []
      : [
          {
            line: at + 2,
            cells,
            cell: (column) => (cells[names.indexOf(column)] ?? '').trim(),
          },
        ],
  );
  return {
    missing: required.filter((column) => !names.includes(column)),
    width: names.length,
    lines,
  };
};

/**
 * The text of a file as a spreadsheet wrote it: UTF-8, or GB 18030 where it is not, which is what a Chinese
 * one writes.
 */
export const tableText = (bytes: ArrayBuffer): string => {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('gb18030').decode(bytes);
  }
};

/** A line of a table, with quotes around cells that need them. */
export const tableLine = (cells: readonly string[]): string =>
  `${Papa.unparse([[...cells]], { escapeFormulae: true })}\r\n`;

/** A table with its heading alone, to be filled in. */
export const emptyTable = (columns: readonly string[]): string => `${columns.join(',')}\r\n`;

/** A block of cells as a spreadsheet puts it on the clipboard. Pure. */
import Papa from 'papaparse';

/** The mark that parts the cells: a tab; a semicolon, or under a known head a comma, as a file has them. */
const markOf = (text: string, isHead: (cells: readonly string[]) => boolean): string | null => {
  const [first = ''] = text.split(/\r?\n/);
  if (text.includes('\t')) return '\t';
  if (first.includes(';')) return ';';
  return first.includes(',') && isHead(first.split(',')) ? ',' : null;
};

/**
 * The cells by line. Without tabs, and without a head that says otherwise, a line is one cell: its comma is a decimal one.
 * @param isHead whether cells name columns
 */
export const blockOf = (
  text: string,
  isHead: (cells: readonly string[]) => boolean = () => false,
): readonly (readonly string[])[] => {
  const plain = text.replace(/^\uFEFF/, '').replace(/[\r\n]+$/, '');
  const mark = markOf(plain, isHead);
  const lines =
    mark === null
      ? plain.split(/\r?\n/).map((line) => [line])
      : Papa.parse<string[]>(plain, { delimiter: mark }).data;
  return lines.map((cells) => cells.map((cell) => cell.trim()));
};

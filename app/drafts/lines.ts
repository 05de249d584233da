/** What do lines that were typed, or pasted from a table, say? One record a line; pure. */
import { parseDecimal, plainText } from '../../core/units/index.ts';

/** What one line's cells are read as. */
export type ReadOne<Body, Why> =
  { readonly ok: true; readonly body: Body } | { readonly ok: false; readonly why: Why };

export type ReadLine<Body, Why> = {
  /** From 1, as it stands in the text. */
  readonly line: number;
  readonly text: string;
} & (
  | ReadOne<Body, Why | 'unclear'>
  | {
      readonly ok: false;
      readonly why: 'twice';
      /** The line with the same code. */
      readonly first: number;
    }
);

export interface LineCells {
  /**
   * What parts the line: `table`, each cell is one answer and an empty one is not said; `words`, spaces, so that an
   * answer may be several cells; `unclear`, its commas may part it or be decimal ones.
   */
  readonly by: 'table' | 'words' | 'unclear';
  readonly cells: readonly string[];
}

const tableOf = (line: string, mark: string): LineCells => {
  const cells = line.split(mark).map((cell) => cell.trim());
  return { by: 'table', cells: cells.slice(0, cells.findLastIndex((cell) => cell !== '') + 1) };
};

const wordsOf = (line: string): LineCells => ({
  by: 'words',
  cells: line
    .replace(/,(?!\d)/g, ' ')
    .replace(/(\D),/g, '$1 ')
    .split(/\s+/)
    .filter((cell) => cell !== ''),
});

/**
 * The cells of a line. Tabs, or else semicolons, part it alone. Without them, and without spaces, commas do, where they
 * can be no decimal ones: one alone, none between digits, or beside a decimal point. Else spaces part the line.
 * Full-width letters, digits and marks are read as plain ones; a Chinese comma is no decimal one.
 */
export const cellsOf = (line: string): LineCells => {
  const plain = line
    .replaceAll('，', '、')
    .normalize('NFKC')
    .replace(/ *\/ */g, '/');
  if (plain.includes('\t')) return tableOf(plain, '\t');
  if (plain.includes(';')) return tableOf(plain, ';');
  const tight = plain.trim().replace(/\s*([,、])\s*/g, '$1');
  const hasSpaces = /\s/.test(tight);
  if (tight.includes('、') && !hasSpaces) return tableOf(tight, '、');
  const marks = tight.match(/[,、]/g)?.length ?? 0;
  const maybeDecimal = plain.match(/\d,(?=\d)/g)?.length ?? 0;
  const isMixed = maybeDecimal > 0 && maybeDecimal < marks;
  if (hasSpaces)
    return isMixed || /[,、]{2}/.test(tight)
      ? { ...wordsOf(plain), by: 'unclear' }
      : wordsOf(plain.replaceAll('、', ' '));
  if (marks === 0) return wordsOf(tight);
  const canOnlyPart = marks === 1 || maybeDecimal === 0 || /\d\.\d/.test(tight);
  return canOnlyPart ? tableOf(tight, ',') : { by: 'unclear', cells: tight.split(',') };
};

/** A number that was typed; null also where three or more digits follow a comma, which may part thousands. */
export const parseCell = (typed: string): number | null =>
  /,\d{3,}$/.test(plainText(typed)) ? null : parseDecimal(typed);

/** Every line that is not empty, read; a code that stands in an earlier line too is told from which. */
export const readLines = <Body extends { readonly code: string }, Why>(
  text: string,
  readOne: (line: LineCells) => ReadOne<Body, Why>,
): readonly ReadLine<Body, Why>[] => {
  const firstWith = new Map<string, number>();
  return text.split(/\r?\n/).flatMap((typed, at): ReadLine<Body, Why>[] => {
    const line = cellsOf(typed);
    if (line.cells.length === 0) return [];
    const about = { line: at + 1, text: typed.trim() };
    if (line.by === 'unclear') return [{ ...about, ok: false, why: 'unclear' }];
    const read = readOne(line);
    if (!read.ok) return [{ ...about, ...read }];
    const first = firstWith.get(read.body.code);
    if (first !== undefined) return [{ ...about, ok: false, why: 'twice', first }];
    firstWith.set(read.body.code, at + 1);
    return [{ ...about, ...read }];
  });
};

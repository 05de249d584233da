/** What do lines that were typed, or pasted from a table, say? One record a line; pure. */

/** What one line's cells are read as. */
export type ReadOne<Body, Why> =
  { readonly ok: true; readonly body: Body } | { readonly ok: false; readonly why: Why };

export type ReadLine<Body, Why> = {
  /** From 1, as it stands in the text. */
  readonly line: number;
  readonly text: string;
} & (
  | ReadOne<Body, Why>
  | {
      readonly ok: false;
      readonly why: 'twice';
      /** The line with the same code. */
      readonly first: number;
    }
);

/**
 * The cells of a line: parted by tabs, semicolons, commas or spaces. A comma between digits is a decimal one, unless
 * nothing else parts the line. Full-width letters and digits are read as plain ones.
 */
export const cellsOf = (line: string): readonly string[] => {
  const cells = line
    .normalize('NFKC')
    .replace(/\s*\/\s*/g, '/')
    .replace(/[;、]|,(?!\d)/g, ' ')
    .replace(/([^\d]),/g, '$1 ')
    .trim()
    .split(/\s+/)
    .filter((cell) => cell !== '');
  const [only = ''] = cells;
  const comma = only.indexOf(',');
  return cells.length === 1 && comma > 0 ? [only.slice(0, comma), only.slice(comma + 1)] : cells;
};

/** Every line that is not empty, read; a code that stands in an earlier line too is told from which. */
export const readLines = <Body extends { readonly code: string }, Why>(
  text: string,
  readOne: (cells: readonly string[]) => ReadOne<Body, Why>,
): readonly ReadLine<Body, Why>[] => {
  const firstWith = new Map<string, number>();
  return text.split(/\r?\n/).flatMap((typed, at): ReadLine<Body, Why>[] => {
    const cells = cellsOf(typed);
    if (cells.length === 0) return [];
    const about = { line: at + 1, text: typed.trim() };
    const read = readOne(cells);
    if (!read.ok) return [{ ...about, ...read }];
    const first = firstWith.get(read.body.code);
    if (first !== undefined) return [{ ...about, ok: false, why: 'twice', first }];
    firstWith.set(read.body.code, at + 1);
    return [{ ...about, ...read }];
  });
};

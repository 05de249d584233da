/** What of a long list is drawn: the rows near the reader, and gaps as high as all the others. Pure. */

/** A row that is drawn: which, and from where to where it reaches, px. */
export interface DrawnRow {
  readonly index: number;
  readonly start: number;
  readonly end: number;
}

export type Drawn =
  | { readonly is: 'row'; readonly at: number }
  | { readonly is: 'gap'; readonly before: number; readonly px: number };

/**
 * @param rows that are drawn, by their index
 * @param from where the first row of the list begins, px
 * @param height of the whole list, px
 */
export const withGaps = (
  rows: readonly DrawnRow[],
  from: number,
  height: number,
): readonly Drawn[] => {
  const drawn: Drawn[] = [];
  let down = from;
  const gapTo = (px: number, before: number) => {
    if (px > down) drawn.push({ is: 'gap', before, px: px - down });
  };
  for (const { index, start, end } of rows) {
    gapTo(start, index);
    drawn.push({ is: 'row', at: index });
    down = end;
  }
  gapTo(from + height, rows.length === 0 ? 0 : (rows.at(-1)?.index ?? 0) + 1);
  return drawn;
};

/**
 * The rows of a range with some before and after it, and the one that has the focus wherever it is: a row that is
 * taken away under a reader would lose their place.
 */
export const rowsAround = (
  { first, last }: { readonly first: number; readonly last: number },
  {
    more,
    count,
    focused,
  }: {
    readonly more: number;
    readonly count: number;
    readonly focused: number | null;
  },
): readonly number[] => {
  const [from, to] = [Math.max(0, first - more), Math.min(count - 1, last + more)];
  const rows = Array.from({ length: Math.max(0, to - from + 1) }, (_, at) => from + at);
  if (focused === null || focused < 0 || focused >= count) return rows;
  return focused < from ? [focused, ...rows] : focused > to ? [...rows, focused] : rows;
};

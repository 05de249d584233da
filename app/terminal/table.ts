/** Columns that line up in a terminal, Chinese included. */

/** Columns that a text takes in a terminal: wide East Asian characters take two (UAX #11, ranges of CJK). */
export const widthOf = (text: string): number => {
  let width = 0;
  for (const character of text) {
    const code = character.codePointAt(0) as number;
    const wide =
      (code >= 0x1100 && code <= 0x115f) ||
      (code >= 0x2e80 && code <= 0xa4cf) ||
      (code >= 0xac00 && code <= 0xd7a3) ||
      (code >= 0xf900 && code <= 0xfaff) ||
      (code >= 0xfe30 && code <= 0xfe4f) ||
      (code >= 0xff00 && code <= 0xff60) ||
      (code >= 0xffe0 && code <= 0xffe6) ||
      (code >= 0x20000 && code <= 0x3fffd);
    width += wide ? 2 : 1;
  }
  return width;
};

export interface Column {
  readonly title: string;
  /** Figures stand to the right. */
  readonly right?: boolean;
}

/** A table as lines of text, a rule under the titles. */
export const table = (columns: readonly Column[], rows: readonly (readonly string[])[]): string => {
  const widths = columns.map(({ title }, at) =>
    Math.max(widthOf(title), ...rows.map((row) => widthOf(row[at] ?? ''))),
  );
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, at) => {
        const gap = ' '.repeat((widths[at] as number) - widthOf(cell));
        return columns[at]?.right ? gap + cell : cell + gap;
      })
      .join('  ')
      .trimEnd();
  return [
    line(columns.map(({ title }) => title)),
    widths.map((width) => '─'.repeat(width)).join('  '),
    ...rows.map(line),
  ].join('\n');
};

/** A table for a spreadsheet: one file a subject, numbers as numbers, codes instead of ids. */
export type Cell = string | number | boolean | null | undefined;

export interface Table {
  /** Without an ending. */
  readonly name: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

/** What a row of records says, a column each. */
export type ColumnsOf<T> = Readonly<Record<string, (one: T) => Cell>>;

/** The table of a list, a row each. */
export const tableOf = <T>(name: string, list: readonly T[], columns: ColumnsOf<T>): Table => ({
  name,
  columns: Object.keys(columns),
  rows: list.map((one) => Object.values(columns).map((of) => of(one))),
});

export const km = (metres: number): number => Number((metres / 1000).toFixed(3));

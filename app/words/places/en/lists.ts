/** What every list of the desk says, whatever it is of, and the search over everything. */
export const lists = {
  select: 'Select',
  selectAll: (n: number) => `Select all ${n}`,
  selectNone: 'Select none',
  selected: (n: number, of: string) => `${n} selected · ${of}`,
  keys: '↑ ↓ next row · space selects · shift selects up to there',
  columns: (hidden: number) => (hidden === 0 ? 'Columns' : `Columns (${hidden} hidden)`),
  shownColumns: 'Which columns are shown',
  sortBy: 'Sort by',
  sortedBy: (column: string) => `Sort by: ${column}`,
  showAll: (n: number) => `Show all ${n}`,
  showFirst: (n: number) => `Show the first ${n}`,
};

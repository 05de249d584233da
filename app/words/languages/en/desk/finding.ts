export const finding = {
  make: 'Make it a finding',
  /** After it was saved: what, and on whose sheet it stands now. */
  saved: (title: string, trade: string) => `Saved: “${title}”. It is on the sheet for ${trade}.`,
  openSheet: (trade: string) => `Open the sheet for ${trade}`,
  title: 'Finding',
  part: 'Part that can act',
  priority: 'Priority',
  priorities: { high: 'high', medium: 'medium', low: 'low' },
  wanted: 'Wanted change',
  wantedMm: 'Change in mm, if it has a size',
  carriedBy: 'Round that makes the change',
  undecided: 'not decided',
  frozen: (date: string) => `Evidence as of ${date}, frozen`,
  states: {
    open: 'open',
    'asked-for': 'asked for',
    'carried-out': 'carried out',
    closed: 'closed',
  },
};

export const finding = {
  make: 'Make it a finding',
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

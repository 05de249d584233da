export const bench = {
  none: 'No bench check yet.',
  choose: 'Measure and site',
  xTitle: (unit: string) => `Distance on the pair, ${unit}`,
  point: (pair: string, value: string, distance: string) => `Pair ${pair}: ${value} at ${distance}`,
  limit: (value: string) => `limit of the brief ${value}`,
  load: 'Load, N',
  method: 'Method',
  uncertainty: 'Standard uncertainty',
  distance: 'Distance on the pair if it is known, km',
  photos: 'Photos',
  readFile: 'Read checks from a table (CSV)',
  template: 'Save an empty table',
  saveTable: (round: string) => `Save the table of ${round}`,
  shopTables: 'Tables for the shop',
  paperTable: (round: string) => `Print the table of ${round}`,
  tableName: (round: string) => `bench-checks ${round}.csv`,
  tableHint:
    'A line for each pair, dimension and foot. Write the day once a pair, leave out what is not measured, and read the file in below.',
  unmeasured: (lines: number) =>
    lines === 1
      ? '1 line has no value and is left out.'
      : `${lines} lines have no value and are left out.`,
  /** Beside where a table is pasted or chosen. */
  tableColumns: (needed: string, other: string) =>
    `One reading a line; the first line names the columns: ${needed}. You may add ${other}. Commas, semicolons or tabs part the cells. The day stands once a pair.`,
  templates: 'Save a table to fill in:',
  tableOf: (round: string) => `with the pairs of ${round}`,
  emptyTable: 'with the columns alone',
  chooseFile: 'Choose the table',
  fromFile: (checks: number, readings: number) =>
    `${checks} ${checks === 1 ? 'check' : 'checks'} with ${readings} ${readings === 1 ? 'reading' : 'readings'}`,
  knownChecks: (count: number) =>
    `${count} ${count === 1 ? 'check is' : 'checks are'} in the log already and not taken again.`,
  fromFilePair: (pair: string, day: string, readings: number) =>
    `Pair ${pair}, ${day}: ${readings} ${readings === 1 ? 'reading' : 'readings'}`,
  takeIn: 'Take them in',
  takenIn: (checks: number) => `${checks} ${checks === 1 ? 'check' : 'checks'} taken in`,
  takenOut: (checks: number) => `${checks} ${checks === 1 ? 'check' : 'checks'} taken out again`,
  lineTrouble: (line: number, column: string, typed: string, what: string) =>
    typed === ''
      ? `Line ${line}, ${column}: ${what}`
      : `Line ${line}, ${column} “${typed}”: ${what}`,
  linesLeftOut: (lines: number) =>
    lines === 1
      ? '1 line has a mistake and is left out. Correct it and read the table again: nothing is taken twice.'
      : `${lines} lines have a mistake and are left out. Correct them and read the table again: nothing is taken twice.`,
  tableTroubles: {
    'missing-column': 'this column is missing',
    'open-quote': 'a quotation mark is not closed; nothing was read from here on',
    'number-of-cells':
      'this line has more or fewer cells than the heading; put numbers with a decimal comma in quotation marks',
    differs: 'differs from an earlier line of the same check',
    'unknown-pair': 'no pair has this code',
    'no-day': 'no day here, and none in a line of this pair above',
    'no-date': 'not a date such as 2026-05-01 or 2026-05-01 09:30',
    'no-number': 'not a number',
    'unknown-word': (words: string) => `one of ${words}`,
    'no-site': 'small letters, digits and hyphens, such as heel-centre',
    'too-many': 'more than 200 readings in one check',
    'too-long': 'longer than 200 letters',
  },
  table: 'As a table',
  pair: 'Pair',
  foot: 'Foot',
  readings: 'Reading at distance',
  at: 'Measured',
  temperature: 'Room, °C',
  rested: 'Hours since the last run',
  operator: 'By whom',
  site: 'Site',
  siteHint: 'One word for one place, such as heel-centre.',
  value: 'Value',
  gauge: 'Gauge',
  gaugeFor: (kind: string) => `Gauge: ${kind}`,
  reading: 'Measure',
  addReading: 'One more reading',
  arrival: 'Arrival (before the first run)',
  arrivalCarried: (distance: string) =>
    `Arrival (before the first run; ${distance} were on the pair already)`,
  addAsked: 'Add what blueprint and brief ask for',
  emptyRows: 'A row without a value is not saved.',
  deviations: 'Arrival against the blueprint',
  noBlueprint: 'No blueprint or no arrival check yet.',
  nominal: 'Nominal',
  deviation: 'Deviation',
};

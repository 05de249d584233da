/** Runs and readings that a lead counts or sets aside. */
export const waiting = {
  out: 'In no figure until you decide',
  meanwhile: 'Odd, but in the figures until you decide',
  decided: 'Decided',
  setAside: 'Set aside, in no figure',
  counted: 'Counted after a check',
  reading: (pair: string, place: string, value: string, date: string) =>
    `Pair ${pair}, ${place}: ${value}, ${date}`,
  gauge: (round: string, measure: string, gauge: string, than: string, by: string) =>
    `${round}, ${measure}: “${gauge}” reads ${by} than “${than}”`,
  higher: (share: string) => `${share} higher`,
  lower: (share: string) => `${share} lower`,
  gaugePlaces: (count: number) =>
    count === 1
      ? 'Seen at one place of one shoe, beyond what wear explains.'
      : `Seen at ${count} places of shoes, beyond what wear explains.`,
  pace: (pace: string) => `implausible pace, ${pace} per km`,
  heldThen: (tester: string, codes: string) =>
    `${tester} had ${codes} then. Is it noted in the wrong pair?`,
  canBe: (measure: string, least: string, most: string) =>
    `${measure} can only be ${least} to ${most}.`,
  expected: {
    'same-shoe': (range: string) => `Other readings of this shoe here: ${range}.`,
    'other-shoe': (range: string) => `The other shoe here: ${range}.`,
    'other-pairs': (range: string) => `Other pairs of the round here: ${range}.`,
    blueprint: (range: string) => `The blueprint allows ${range}.`,
  },
  range: (least: string, most: string) => (least === most ? least : `${least} to ${most}`),
  isIt: (value: string) => `Is it ${value}?`,
  countRun: 'Count this run',
  countReading: 'Count this reading',
  countReadings: 'Count its readings',
  setRunAside: 'Set this run aside',
  setReadingAside: 'Set this reading aside',
  setReadingsAside: 'Set its readings aside',
  correctRun: 'Correct this run',
  correctReading: 'Correct this reading',
  rightValue: (unit: string) => `Right value, ${unit}`,
  saveCorrection: 'Save the correction',
  reason: 'Why is it set aside?',
  reasons: {
    run: 'This cannot be right',
    'wrong-pair': 'Noted in the wrong pair',
    reading: 'A typing error',
    gauge: 'The gauge reads apart from the first',
  },
  checked: 'Checked: it is right',
  confirmed: 'Confirmed when it was typed',
  countedNow: 'It counts.',
  setAsideNow: 'Set aside.',
  corrected: 'Corrected.',
  /** Asked when a reading is typed or read from a table. */
  typed: (value: string, place: string) => `You typed ${value} for ${place}.`,
  isRight: 'It is right',
  correct: 'Correct it',
  newGauge: (gauge: string, than: string, by: string) =>
    `With “${gauge}” these readings are ${by} than those with “${than}” let expect. Put both gauges on one shoe before you trust the difference.`,
  ofLine: (line: number, said: string) => `Line ${line}: ${said}`,
  tableAsks: (count: number) =>
    count === 1
      ? 'One reading looks wrong. Correct it in the table and read it again, or tick it if it is right.'
      : `${count} readings look wrong. Correct them in the table and read it again, or tick those that are right.`,
  unticked: (count: number): string =>
    count === 1
      ? 'The one without a tick is taken in too, and waits for your decision.'
      : 'Those without a tick are taken in too, and wait for your decision.',
  inFile: (runs: number, readings: number) =>
    `Waits for your decision once it is taken in: ${[
      runs > 0 ? `${runs} ${runs === 1 ? 'run' : 'runs'}` : '',
      readings > 0 ? `${readings} ${readings === 1 ? 'reading' : 'readings'}` : '',
    ]
      .filter(Boolean)
      .join(', ')}.`,
  outside: (waiting: number, aside: number) =>
    `Not in these figures: ${[
      waiting > 0 ? `${waiting} that ${waiting === 1 ? 'waits' : 'wait'} for a decision` : '',
      aside > 0 ? `${aside} set aside` : '',
    ]
      .filter(Boolean)
      .join(', ')} (runs and readings).`,
};

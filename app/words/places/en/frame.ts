/** The frame around every place of the desk: navigation, stamps, how sure. */
export const frame = {
  allShoes: 'All shoes',
  places: {
    sheet: 'Sheet',
    shoe: 'Shoe',
    wear: 'Wear',
    changes: 'Changes',
    verdict: 'Verdict',
    pairs: 'Pairs',
    testers: 'Testers',
    runs: 'Runs',
  },
  asOf: (date: string) => `as of ${date}`,
  allPairs: 'All pairs',
  inTolerance: 'Without pairs out of tolerance',
  howSure: 'How sure?',
  asTable: 'As a table',
  stamps: { fails: 'fails', open: 'open', holds: 'holds' },
  stampMeaning: {
    fails: 'At least one thing that the brief asks for is proved not to be so.',
    open: 'Nothing is decided yet.',
    holds: 'Everything that the brief asks for is proved.',
  },
  /** Beside the first stamp of a page. */
  sureLegend: (word: string, alone: string) => `“${word}” here means: ${alone}.`,
  sureWords: 'What each word means',
  sureWord: (meaning: string) => `: ${meaning}.`,
  doNotRun: 'do not run',
  outOfTolerance: 'out of tolerance',
  /** Within a sentence. */
  felt: (kind: string, zone: string) =>
    `${kind.charAt(0).toLowerCase()}${kind.slice(1)} at the ${zone}`,
  /** As a title or in a list. */
  feltTitle: (kind: string, zone: string) =>
    `${zone.charAt(0).toUpperCase()}${zone.slice(1)}, ${kind.charAt(0).toLowerCase()}${kind.slice(1)}`,
};

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
  sureness: {
    clear: 'clear',
    'one-tester': 'one tester',
    likely: 'likely',
    'too-early': 'too early to tell',
  },
  surenessMeaning: {
    clear: 'Proved for at least two testers, by the limit that the brief sets.',
    'one-tester': 'Proved for one tester, open for the others.',
    likely: 'Several testers report it; it is not proved yet.',
    'too-early': 'Too few reports to tell.',
  },
  doNotRun: 'do not run',
  outOfTolerance: 'out of tolerance',
  /** Within a sentence. */
  felt: (kind: string, zone: string) =>
    `${kind.charAt(0).toLowerCase()}${kind.slice(1)} at the ${zone}`,
  /** As a title or in a list. */
  feltTitle: (kind: string, zone: string) =>
    `${zone.charAt(0).toUpperCase()}${zone.slice(1)}, ${kind.charAt(0).toLowerCase()}${kind.slice(1)}`,
};

/** The search over everything of a test. */
const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;

export const search = {
  open: 'Search',
  label: 'Search everything: pair, tester, day, words',
  hint: 'A pair or tester by code or name, a day such as 17 Nov, or words that somebody wrote.',
  close: 'Close the search',
  nothing: (text: string) => `Nothing found for “${text}”.`,
  found: (n: number) => count(n, 'result', 'results'),
  groups: {
    places: 'Places',
    shoes: 'Shoes',
    pairs: 'Pairs',
    testers: 'Testers',
    rounds: 'Rounds',
    findings: 'Findings',
    remarks: 'What testers say',
    runs: 'Runs',
    checks: 'Checks',
  },
  more: (group: string, n: number) => `${group}: all ${n}`,
  counted: (shown: number, of: number) => `${shown} of ${of}`,
  pair: (code: string) => `Pair ${code}`,
  of: (first: string, second: string) => [first, second].filter(Boolean).join(', '),
  waiting: 'Waiting for a decision',
};

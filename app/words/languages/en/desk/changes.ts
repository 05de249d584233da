import { countPairs, countTesters } from '../count.ts';

export const changes = {
  against: (later: string, earlier: string) => `${later} against ${earlier}`,
  worn: (both: number, earlier: string, onlyEarlier: number, later: string, onlyLater: number) =>
    `${countTesters(both)} wore both. Only ${earlier}: ${onlyEarlier}. Only ${later}: ${onlyLater}.`,
  oneOrder: (earlier: string) =>
    `Everybody who wore both wore ${earlier} first: part of what is better now may be getting used to it, or the season. A plan that crosses the rounds tells the two apart.`,
  knew: (earlier: string, whoEarlier: string, later: string, whoLater: string) =>
    `Not blind: some knew what was changed (${[whoEarlier && `${earlier}: ${whoEarlier}`, whoLater && `${later}: ${whoLater}`].filter(Boolean).join('; ')}). A description alone has moved comfort by 15 of 100: identical shoes gained 14.6 ± 15.0 (24 runners; Hébert-Losier 2025; see also Chan 2020). What is better here may be that.`,
  blindRead: 'Read with blind hand-outs only.',
  list: 'What was changed, and what came of it',
  noChanges: 'No change is noted for this round.',
  mends: (what: string) => `Meant to mend: ${what}`,
  mendsNothing: 'The list does not say what it was meant to mend, so there is nothing to compare.',
  anywhere: (kind: string) => `${kind}, in any zone`,
  since: (round: string) => `since ${round}`,
  slopes: (earlier: string, later: string) =>
    `Share of each tester’s runs with it, ${earlier} to ${later}, %`,
  byTester: 'Tester by tester',
  tester: 'Tester',
  firstRuns: 'Of as many first runs',
  allRuns: (round: string) => `${round}, all asked runs`,
  notAsked: 'not asked',
  ofRuns: (reported: number, of: number) => `${reported} of ${of}`,
  notCompared: 'too few to compare',
  newTitle: 'What came with the round',
  nothingNew: 'No complaint is proved to have come with this round, and none is worth a look.',
  newWords: { proved: 'proved', look: 'worth a look' },
  newLine: (cell: string, before: string, now: string, p: string | null) =>
    `${cell}: ${before} before, ${now} now${p === null ? '' : ` (adjusted p ${p})`}.`,
  newHow:
    'Proved: the rise over the same testers by flipped signs, or over all testers; of what is called proved at most 10 % is false on average (Benjamini & Hochberg 1995). Worth a look: it recurs now and did not before, or two testers have it at least twice and nobody had it, or its rise would be rare by itself. That proves nothing.',
  comfortSame: 'Comfort, those who wore both',
  comfortOne: 'Comfort, those who wore only one',
  noComfort: 'Nobody has scored the comfort of both rounds.',
  bench: 'Stack height, hardness and mass of new pairs',
  noBench: 'The rounds have no first bench check in common.',
  measuredLate: (count: number) =>
    `${countPairs(count)} had been run in by more than 20 km at the first bench check and ${count === 1 ? 'is' : 'are'} left out.`,
  benchWords: {
    differs: 'differs',
    open: 'no difference is shown',
    single: 'one pair alone: no interval',
  },
  difference: 'Difference (95 %)',
  ofPairs: (count: number) => countPairs(count),
  benchLine: (place: string, earlier: string, later: string, difference: string, word: string) =>
    `${place}: ${earlier} → ${later}; difference with its 95 % interval ${difference}: ${word}.`,
  meanOfPairs: (round: string) => `${round}, mean`,
  allCells: 'Every complaint of both rounds',
  noCells: 'Neither round has a complaint.',
  testersOf: (round: string) => `${round}: testers`,
  runsOf: (round: string) => `${round}: runs`,
  rise: 'Change, points (95 %)',
  how: 'The tester is the unit. Of those who wore both rounds the first asked runs are compared, as many of one as of the other, so that break-in meets break-in. Their changes are tested by flipping signs (Fisher 1935), with the interval that this test leaves (Hartigan 1969), never narrower than that of as many independent runs. Where nothing but the round changed, a false “better” comes in at most 1 of 32 comparisons, a false “worse” in 1 of 64, however testers differ and however long a complaint lingers. Where everybody wore the earlier round first, getting used to the shoe comes on top: in simulations where complaints fade by 8 % a run, a third of unchanged rounds were called better. With fewer than five who wore both, all testers are taken as two panels (Zou & Donner 2008; Donner & Klar 2000). “No different” needs the interval within half of the earlier share, at most 15 points (judgement, no source). Changes are in points of 100 of the share of runs; each interval holds by itself.',
};

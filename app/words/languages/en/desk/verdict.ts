import { countPairs, countRuns, countTesters } from '../count.ts';

export const verdict = {
  of: (round: string, word: string) => `${round} ${word}`,
  items: {
    structure: 'Structure',
    'allowed-rate': (complaint: string, pain: string) =>
      `Complaints in at most ${complaint} of runs, pain in ${pain}`,
    complaints: 'Complaints that grow with kilometres',
    'stop-use': 'Stop-use notices',
  },
  notMeasured: 'nothing was measured for it',
  evidence: (count: number, checks: number) =>
    `${countPairs(count)}, ${checks} ${checks === 1 ? 'check' : 'checks'}`,
  structureShort: (failed: number, count: number, upper: string) =>
    `${failed} of ${countPairs(count)} came apart, and none has gone the brief’s distance yet. Of all such pairs at most ${upper} hold (with 95 % certainty).`,
  pairsDiffer:
    'More checks would hardly tell more: nearly all that is not known is how much pairs differ, and about so many of them hold.',
  onePairDiffers: (pair: string) =>
    `Pair ${pair} alone keeps this open: without it the pairs hardly differ, or the verdict is another. Look at that pair first.`,
  oneReadingDiffers: (pair: string, at: string) =>
    `One reading alone keeps this open: pair ${pair} at ${at}. Check that number before you measure more.`,
  structureNone: (count: number) =>
    `None of ${countPairs(count)} came apart, but none has gone the brief’s distance yet.`,
  structure: (failed: number, count: number, share: string, lower: string, upper: string) =>
    `${failed} of ${countPairs(count)} came apart. At the brief’s distance ${share} of such pairs hold (90 % interval ${lower} to ${upper}); 90 % must.`,
  weibull: (shape: string, share: string, lower: string, upper: string) =>
    `By a Weibull curve ${share} hold (90 % interval ${lower} to ${upper}); its shape is ${shape}, and above 1 pairs break the more the farther they go.`,
  noLimits: 'The brief names no limit of foam or tread yet.',
  holding: 'Pairs that hold, by kilometres on the pair',
  holdingShare: 'Pairs that hold, %',
  cameApart: 'Pairs came apart here',
  tooFewPairs: (count: number) =>
    `${countPairs(count)}: too few to show that it holds, even if no other breaks.`,
  recurs: (cells: string) => `proven to recur across testers: ${cells}`,
  nobodyAsked: 'nobody was asked yet',
  noneRecurs: (asked: number, who: number, complaint: string, pain: string) =>
    `no complaint of a zone is proven to recur across testers; by ${countRuns(asked)} of ${countTesters(who)}, a complaint may still be in up to ${complaint} of runs, pain in up to ${pain} (upper ends of the 95 % intervals)`,
  growing: (cells: string) => `grows: ${cells}`,
  noneGrows: (tested: number) =>
    tested === 0
      ? 'no complaint was reported'
      : `of ${tested} reported ${tested === 1 ? 'complaint' : 'complaints'} none is shown to grow`,
  mayGrow: (cells: string, more: number) =>
    `not ruled out that it grows: ${cells}${more > 0 ? ` and ${more} more` : ''}`,
  nobodyThere: 'nobody was asked at the brief’s distance yet',
  askedThere: (r: number, t: number, p: number, chance: string) =>
    `asked at the brief’s distance: ${countRuns(r)} of ${countTesters(t)} in ${countPairs(p)}. If half of these testers had a complaint there in a fifth of their runs, none would be reported in ${chance} of tests`,
  stopped: (codes: string) => `in force for pair: ${codes}`,
  notStopped: 'none is in force',
  settle: 'What would settle it',
  alone: {
    tester: {
      holds: (name: string) => `Without the answers of ${name} this would hold.`,
      'does-not-hold': (name: string) => `Without the answers of ${name} this would not hold.`,
      'not-known-yet': (name: string) => `Without the answers of ${name} this would be open.`,
    },
    pair: {
      holds: (code: string) => `Without pair ${code} this would hold.`,
      'does-not-hold': (code: string) => `Without pair ${code} this would not hold.`,
      'not-known-yet': (code: string) => `Without pair ${code} this would be open.`,
    },
  },
  aloneNotTried: 'Not tried, for so many: whether one tester or one pair alone decides this.',
  caution:
    'A verdict is for the makers. Whether a shoe may be sold is for the standards and the law where it is sold.',
  how: 'Wear holds if the probability that a new pair is within the limit at the brief’s distance is 95 % or more, and does not if it is 5 % or less. Structure: 90 % of pairs must hold, with 95 % certainty: while none breaks, 29 must have gone so far. Allowed rate: does not hold with a complaint proven to recur across testers; holds if the upper end of every share, of kinds that nobody reported as well, is at or below it and three testers were asked. With 5 % and no report at all that takes 73 testers: the silence of a small panel settles nothing. Complaints that grow: every reported one is tested. It holds only where each is shown to fade or so rare at the brief’s distance, on three pairs at least, that this would be seldom (5 %) if half of the testers had it there in a fifth of their runs (judgement, no source).',
};

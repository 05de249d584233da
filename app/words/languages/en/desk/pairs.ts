import { countPairs } from '../count.ts';

export const pairs = {
  none: 'No pair yet. Add a round, then its pairs.',
  pair: 'Pair',
  round: 'Round',
  size: 'Size',
  distance: 'On the pair',
  ofBrief: 'Of the brief',
  runs: 'Runs',
  surfaces: 'By surface',
  overTime: 'Pairs over time',
  ofWhat: 'What',
  days: (first: string) => `Days since ${first}`,
  steps: 'Steps per shoe',
  stepsThousand: 'Steps per shoe, thousands',
  stepsFrom: (cadence: number, regression: number, unknown: number) =>
    [
      cadence > 0 ? `${cadence} % counted` : '',
      regression > 0 ? `${regression} % by height and pace` : '',
      unknown > 0 ? `${unknown} % unknown` : '',
    ]
      .filter(Boolean)
      .join(', '),
  mostWorn: (shown: number, all: number) => `The ${shown} pairs of ${all} with most kilometres.`,
  load: 'Load per shoe, MN',
  handOut: 'Hand out',
  handOutTo: 'Hand out to',
  handOutSeveral: 'Hand out several pairs',
  severalHint:
    'For each pair that nobody has, a tester: those whom its size fits come first. A pair without one stays where it is.',
  fit: {
    fits: 'The size fits',
    'other-size': 'Another size',
    'size-unknown': 'Foot length not known',
  },
  has: (tester: string, codes: string) => `${tester} (has ${codes})`,
  willBeHandedOut: (count: number) =>
    count === 0 ? 'Nothing is chosen yet.' : `${countPairs(count)} will be handed out.`,
  nobodyChosen: 'Choose a tester for at least one pair.',
  noneFree: 'No pair is free: each is with a tester, or withdrawn.',
  handedOut: (count: number) => `${countPairs(count)} handed out`,
  someNot: (done: number, left: number) =>
    `${countPairs(done)} handed out, ${left} not: the list says why.`,
  foot: (length: string) => `foot ${length} mm`,
  since: 'Since',
  sinceHint: 'Noted late? Put the time before the first run in the pair.',
  notYet: 'This is in the future.',
  heldUntil: (at: string) => `The pair came back from somebody else on ${at}.`,
  promised: (tester: string, at: string) =>
    `It goes to ${tester} on ${at} by the plan, and comes back before that.`,
  blind: 'The tester does not know what was changed',
  stopReason: 'Why must nobody wear it?',
  readBy: (read: number, holders: number) =>
    holders === 0 ? 'in nobody’s hands' : `read by ${read} of ${holders} who hold one`,
  notReadYet: 'Not read yet:',
  toldAt: (at: string) => `phone told ${at}`,
  notTold: 'phone not told yet',
  noNotices: 'no notices on their phone',
  unknownSurface: 'not said',
};

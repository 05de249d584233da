/** The sheet of one trade, in English. */
import { countPairs, countRuns, countTesters } from '../../languages/en/count.ts';

type Joining = (names: readonly string[]) => string;

const pairsOf = (pairs: readonly string[]) =>
  pairs.length === 1
    ? `pair ${pairs.join('')}`
    : `${{ 2: 'two', 3: 'three' }[pairs.length] ?? pairs.length} pairs`;

export const sheet = {
  headline: {
    change: (names: string) => `Change the ${names}.`,
    finding: (n: number) => `${n} ${n === 1 ? 'finding' : 'findings'} for you.`,
    quiet: 'No change is asked of you yet.',
    /** Too much or too little, proved. */
    off: (question: string, side: string, testers: number, of: number) =>
      `${question}: ${side} for ${testers} of ${countTesters(of)}, clear.`,
    watch: (felt: string) => `Watch: ${felt.charAt(0).toLowerCase()}${felt.slice(1)}.`,
    measure: {
      /** @param when null: nobody can tell */
      what: (pairs: readonly string[], distance: string, when: string | null) =>
        `Measure ${pairsOf(pairs)} at ${distance}${when === null ? '' : `, ${when}`}.`,
      now: 'now',
      /** @param alone one pair, so that there is one day */
      from: (day: string, alone: boolean) => (alone ? `about ${day}` : `from about ${day}`),
    },
  },
  complaints: 'What testers feel',
  noComplaint: 'Nobody reported anything that points to you first.',
  complaintColumns: {
    what: 'Complaint',
    testers: 'Testers',
    runs: 'Runs',
    feet: 'Left / right',
    onPair: 'First felt at',
    inRun: 'In a run from',
    sure: 'Recurs in this round?',
  },
  /** How sure a row is, and of what. */
  recurs: {
    clear: 'clear: it recurs',
    'one-tester': 'clear for one tester',
    likely: 'likely to recur',
    'too-early': 'too early to tell if it recurs',
  },
  /** How a change that was made for a complaint has turned out. */
  turned: {
    worked: (word: string) => `the change worked: ${word}`,
    byNone: (word: string, earlier: string) => `${word} than in ${earlier}`,
    mendedByNone: (earlier: string) => `mended since ${earlier}`,
  },
  /** Why a complaint is only watched. */
  reason: {
    above: (share: string, accepted: string) =>
      `More than the brief accepts (${share} of runs, accepted ${accepted}), but too few runs to prove it.`,
    up: (round: string, share: string, proved: boolean) =>
      proved
        ? `Up from ${share} in ${round}.`
        : `Up from ${share} in ${round}; that may be chance.`,
  },
  holds: { fails: 'fails', open: 'limit still open', holds: 'holds' },
  counted: (asked: number, runs: number) =>
    `Counted: the ${asked} of ${countRuns(runs)} after which testers said how their feet felt.`,
  /** Beside a complaint: what it left on the skin. */
  skin: (what: string, runs: number) => `${what.toLowerCase()} after ${countRuns(runs)}`,
  firstRun: 'first run',
  onset: (distance: string, runs: number) => `${distance} (${countRuns(runs)})`,
  silent: (kinds: string, runs: number) =>
    `Reported by nobody in ${countRuns(runs)}: ${kinds.toLowerCase()}.`,
  from: 'First felt at: distance on the pair. In a run from: how far into a run it starts, for the tester in the middle (in so many runs).',
  why: 'Listed are complaints for which your parts are usually looked at first: common practice, not a proved cause.',
  askedOf: (role: string) => `Asked of the ${role}.`,
  firstRound: 'First round: no earlier change to judge.',
  lastChange: (round: string) => `Your changes since ${round}`,
  /** @param others parts that were changed, each with whose it is */
  noChange: (others: string | null) =>
    others === null
      ? 'None of your own parts was changed.'
      : `None of your own parts was changed; by others: ${others}.`,
  otherPart: (part: string, role: string) => `${part} (${role})`,
  askedBefore: 'Asked for earlier:',
  words: 'In their own words',
  wordsNote: 'As the testers wrote it after their runs, in their own language.',
  /** Above words that are all in one language that the reader does not read; null: nobody knows which. */
  wordsForeign: (language: string | null) =>
    `As the testers wrote it after their runs, all of it ${language === null ? 'in another language' : `in ${language}`}.`,
  /** The same of the words of changes. */
  changesForeign: (language: string | null) =>
    `Changes are in the words of whoever made them, all ${language === null ? 'in another language' : `in ${language}`}.`,
  /** Heads words about a place where the same run has no complaint. */
  wordsOnly: (place: string) =>
    `${place.charAt(0).toUpperCase()}${place.slice(1)}: written, not tapped as a complaint`,
  source: (tester: string, distance: string) => `${tester}, ${distance}`,
  comfort: 'How it feels',
  twoSided: 'Too much or too little',
  twoSidedColumns: {
    what: 'Question',
    sides: 'Testers',
    known: 'What is known',
    cost: 'Overall comfort against just right',
  },
  twoSidedKey:
    'Clear: half of the testers or more are on that side, and chance alone would hardly put them there. Likely: a fifth or more, not proved.',
  someTesters: (testers: number, of: number) => `${testers} of ${countTesters(of)}`,
  comfortColumns: {
    what: 'Question',
    mean: 'Without first wearings',
    first: 'First 50 km',
    last: 'Later',
    trend: 'Per 100 km',
  },
  ofTesters: (score: string, n: number) => `${score} (${n})`,
  stretch: (score: string, from: string, to: string) => `${score}, ${from}–${to} km`,
  comfortKey:
    'Mean score (of how many testers); 0 is worst, 100 is best. Per 100 km: – where no change is shown.',
  noSides: 'Testers are not asked whether it is too soft or too firm; their complaints are above.',
  curves: 'Wear',
  wearColumns: {
    what: 'Place',
    new: 'New',
    now: 'At the farthest check',
    change: 'Change',
    brief: (distance: string) => `At ${distance}`,
    limit: 'Limit of the brief',
    sure: 'Holds?',
  },
  valueAt: (value: string, distance: string) => `${value} · ${distance}`,
  expects: (middle: string, low: string, high: string) => `${middle} (${low}–${high})`,
  tooFar: 'too far to tell',
  noLimit: 'none',
  reached: {
    about: (distance: string) => `reached at about ${distance}`,
    after: (distance: string) => `not reached before ${distance}`,
  },
  wearKey:
    'New, at the farthest check and change: of a typical new pair, by the line through all pairs. Each pair’s own readings stand in the list of pairs.',
  reach: (distances: string) =>
    `The checks tell nothing beyond about twice the farthest one (${distances}).`,
  mostChanged: (place: string, pairs: string) => `Most change in ${place}: ${pairs}.`,
  pairChange: (pair: string, change: string, distance: string) =>
    `pair ${pair} ${change} at ${distance}`,
  apart: (pairs: string) => `Unlike the others: ${pairs}.`,
  noneApart: 'No pair stands out.',
  changedAt: (change: string, distance: string) => `${change} at ${distance}`,
  /** How sure a change so far is, with the ends between which a new pair lies. */
  changeSure: {
    clear: (from: string, to: string) => `That is clear: ${from} to ${to} on a new pair.`,
    tooEarly: (from: string, to: string) =>
      `Too early to tell whether it changes: ${from} to ${to} on a new pair.`,
  },
  /** @param reached empty: nothing tells */
  limitIs: (limit: string, reached: string) =>
    reached === '' ? `The limit is ${limit}` : `The limit of ${limit} is ${reached}`,
  settles: {
    measure: (pairs: readonly string[], distance: string, list: Joining) =>
      `Measure ${pairs.length === 1 ? 'pair' : 'pairs'} ${list(pairs)} at ${distance}.`,
    halfWay: (brief: string) =>
      `The soonest check that can settle whether a new pair lasts to ${brief}: about half-way there from the last one.`,
    atBrief: (brief: string) => `No sooner check can settle whether a new pair lasts to ${brief}.`,
    about: (day: string, resumed: boolean) =>
      `about ${day}${resumed ? ', if its tester runs again' : ''}`,
    when: {
      now: 'there now',
      'not-run': 'not being run now',
      'not-known': 'too few runs to say when',
    },
    comesBack: (day: string) => `back before that, on ${day}`,
    lookAtPair: (pair: string) => `Look at pair ${pair}: it wears unlike the others.`,
    lookAtReading: (pair: string, distance: string) =>
      `Check the reading of pair ${pair} at ${distance}.`,
    pairsDiffer: 'The pairs differ, so more checks tell little.',
    change: 'It fails, so change it.',
  },
  nothingMeasured: 'Nothing was measured.',
  surfaces: 'Surfaces',
  runOn: (distance: string, shares: string) => `${distance}: ${shares}.`,
  shareOn: (surface: string, share: string) => `${surface} ${share}`,
  notSaid: 'not said',
  arrival: 'New pairs against the drawing',
  arrivalColumns: {
    what: 'Place',
    nominal: 'Drawing',
    allowed: 'Allowed',
    mean: 'Mean',
    out: 'Pairs out',
    range: 'Each shoe',
  },
  oneDrawing: (from: string, to: string) =>
    `The drawing has one number for all sizes, here ${from} to ${to} mm of foot length: it is not graded.`,
  outOf: (n: number, of: number) => `${n} of ${of}`,
  pairs: 'Pair by pair',
  pairKey: 'Readings: mean of both shoes, new → at the last check.',
  pairColumns: { pair: 'Pair', size: 'Size, mm', testers: 'Testers', checked: 'Checked at' },
  layers: 'Layers of material and heat',
  layersLine: (place: string, layers: number, hot: number, of: number) =>
    `${place}: ${layers} ${layers === 1 ? 'layer' : 'layers'}; hot or wet for ${hot} of ${of}`,
  layersCool: (places: string, layers: number, of: number) =>
    `${layers} ${layers === 1 ? 'layer' : 'layers'}, hot or wet for none of ${of}: ${places}`,
  damages: 'What came apart',
  nothingApart: (pairs: number) => `Nothing came apart on ${countPairs(pairs)}.`,
  damageLine: (pair: string, what: string, date: string) => `Pair ${pair}: ${what}, ${date}.`,
  holdsHow:
    'A limit holds if a new pair keeps it at the brief’s distance with a chance of 95 % or more; it fails with 5 % or less.',
  newToNow: (from: string, to: string) => `${from} → ${to}`,
};

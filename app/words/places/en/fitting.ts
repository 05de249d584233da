/** Fit trials at the desk: sessions, what one of them says, what to ask for, and its sheet. */
import type { FitPlace } from '../../../../core/foot/index.ts';
import type { FitHeadline } from '../../../../core/headlines/index.ts';

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
const people = (n: number) => count(n, 'person', 'people');

type Sides = Readonly<Record<'little' | 'much', string>>;

/** Within a sentence: what is so, and what is wanted instead. */
const clauses: Readonly<Record<FitPlace, Sides>> = {
  length: { little: 'the shoe is too short', much: 'the shoe is too long' },
  'toe-height': { little: 'the toe is too low', much: 'the toe is too high' },
  'toe-width': { little: 'the toe box is too tight', much: 'the toe box is too loose' },
  ball: { little: 'the ball is too tight', much: 'the ball is too loose' },
  instep: { little: 'the instep is too tight', much: 'the instep is too loose' },
  heel: { little: 'the heel is too tight', much: 'the heel is too loose' },
  collar: { little: 'the collar is too low', much: 'the collar is too high' },
};
const places: Readonly<Record<FitPlace, string>> = {
  length: 'the length',
  'toe-height': 'the toe height',
  'toe-width': 'the toe box',
  ball: 'the ball',
  instep: 'the instep',
  heel: 'the heel',
  collar: 'the collar',
};

export const fitting = {
  headline: (h: FitHeadline, number: (value: number) => string): string => {
    switch (h.case) {
      case 'nobody':
        return 'Nobody has tried a pair on yet.';
      case 'few':
        return `${people(h.people)} so far: too early to tell.`;
      case 'off': {
        const says = `${h.people} of ${h.of} say ${clauses[h.place][h.side]}`;
        if (h.mm === null) return `${says}.`;
        return `${says}; they want about ${number(h.mm)} mm ${h.side === 'little' ? 'more' : 'less'}.`;
      }
      case 'divided':
        return `They disagree about ${places[h.place]}.`;
      case 'fits':
        return `It fits: most of ${people(h.people)} want nothing moved.`;
    }
  },
  title: 'Fit trials',
  nothingYet: 'Let people try a pair on before anybody runs.',
  how: 'Several people, some minutes, standing and walking. No kilometres are counted.',
  homeSub: (n: number, latest: string) =>
    n === 1 ? `From ${latest}.` : `From ${latest}, the latest of ${n} fit trials.`,
  sub: (n: number, pairs: number, round: string, day: string) =>
    `${round}, ${day}: ${people(n)}, ${count(pairs, 'pair', 'pairs')}. Nobody ran, so no kilometres are counted.`,
  also: (n: number) => `Also off for most: ${count(n, 'place', 'places')}.`,

  add: 'Add a fit trial',
  name: 'Where, or what you call it',
  at: 'When',
  round: 'Round',
  pairs: 'Pairs to try on',
  noPairs: 'This round has no pairs yet. Add pairs to it first.',
  noRound: 'This shoe has no round yet.',
  addRound: 'Add a round',
  addPairs: 'Add pairs',
  errors: {
    name: 'Give it a name, such as the place.',
    at: 'Choose a day and a time.',
    pairs: 'Choose at least one pair.',
  },
  edit: 'Change this fit trial',
  onPhones: 'Every phone of the group offers it once it has synced. Then no network is needed.',

  addPerson: 'Add a person',
  print: 'Print this sheet',
  end: 'End this fit trial',
  reopen: 'Open it again',
  ended: (day: string) => `ended ${day}`,
  endedNow: 'Ended: phones no longer offer it.',
  reopened: 'Open again: phones offer it.',

  feet: 'Which foot?',
  foot: { both: 'both', left: 'left', right: 'right' },
  bothMeans: 'Of both feet, the one that fits worse.',
  tableTitle: 'How it fits, by place and person',
  place: 'Place',
  most: 'Most say',
  size: (size: string) => `size ${size}`,
  footLength: (mm: string) => `foot ${mm}`,
  legend: {
    little: 'too short, tight or low, mm',
    right: 'right',
    much: 'too long, loose or high, mm',
  },
  says: {
    none: 'no answer',
    right: (n: number, of: number) => `right for ${n} of ${of}`,
    side: (what: string, n: number, of: number) => `${what} for ${n} of ${of}`,
    divided: (of: number) => `${of} disagree`,
    few: (of: number) => `${of} answered: too few`,
  },
  cell: (fit: string, mm: string | null) => (mm === null ? fit : `${fit}, ${mm} mm`),
  picture: 'Where it is off',

  walking: 'While walking',
  heel: (lifts: number, out: number, of: number) =>
    of === 0
      ? 'Nobody said how the heel holds.'
      : `Heel lifts a little for ${lifts}, slips out for ${out}, of ${of}.`,
  noSpots: 'Nothing presses, rubs or gapes.',
  spotsOpen: 'Nobody was asked where it presses.',
  spot: (foot: string, zone: string, what: string, who: string) =>
    `${zone}, ${foot}: ${what} (${who})`,
  pain: (who: string, what: string) =>
    `${who}: ${what} in the shoe. Ask before they put it on again.`,
  disclaimer:
    'This is no medical advice. If it stays, they should see a doctor or physiotherapist.',

  wanted: 'What they want moved',
  wantedHint: 'From 0, the line now. A dot is a person, the mark the middle, the bar the spread.',
  noWanted: 'Nobody has said what should move.',
  agree: (n: number, of: number) => `${n} of ${of}`,
  against: (n: number) => `${n} against`,
  middle: (figure: string) => `in the middle ${figure}`,
  noAmount: 'nobody said how far',
  split: 'as many one way as the other',
  ask: (figure: string | null) => (figure === null ? 'Ask for this' : `Ask for ${figure}`),
  asked: 'Asked for',
  tooFew: (n: number) => `${people(n)}: not yet`,

  sizes: 'Who fits which size',
  noSizes: 'Nobody has said yet whether the length is right.',
  sizesHint: 'Hand-outs offer each tester the size that was right here.',
  short: 'too short',
  fitsThem: 'right',
  long: 'too long',
  nobody: '–',

  people: 'Who tried what',
  said: (pair: string, size: string) => `pair ${pair}, size ${size}`,
  latest: 'counts',
  takeBack: (who: string) => `Take ${who} out`,
  takenBack: (who: string) => `${who} is taken out of this fit trial.`,
  words: (who: string, said: string) => `${who}: “${said}”`,

  finding: {
    title: 'Ask for it in a finding',
    named: (what: string) => `${what} (fit trial)`,
    line: (name: string, day: string, n: number, of: number, what: string, spread: string) =>
      `Fit trial ${name}, ${day}: ${n} of ${of} want this: ${what}${spread}.`,
    spread: (least: string, most: string) => `, from ${least} to ${most}`,
    gone: 'Nobody wants this moved any more.',
  },
  fromTrial: 'Fit trial it comes from',
  link: (n: number) => (n === 0 ? 'Fit trials' : `Fit trials: ${n}`),
};

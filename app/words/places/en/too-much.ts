/** The place Shoe, comfort: the questions whose good point is in the middle. */
import type { ComfortHeadline } from '../../../../core/headlines/index.ts';
import type { TwoSidedId } from '../../../../core/foot/index.ts';
import type { Say } from '../../say-names.ts';

/** What a sentence about it begins with, so that "is too soft" and the like go with it. */
const subjects: Readonly<Record<TwoSidedId, string>> = {
  'heel-cushioning': 'Heel cushioning',
  'forefoot-cushioning': 'Forefoot cushioning',
  'fit-length': 'The shoe',
  'toe-room': 'The toe box',
  'ball-width': 'The ball',
  arch: 'The arch',
  'midfoot-hold': 'The midfoot',
  'heel-hold': 'The heel',
  flexibility: 'The forefoot',
  stability: 'The shoe',
  ventilation: 'The shoe',
};

type OfTwoSided = Extract<ComfortHeadline, { readonly case: 'further' | 'too' | 'none-off' }>;

export const tooMuch = {
  headline: (
    h: OfTwoSided,
    say: Pick<Say, 'round'>,
    end: (id: TwoSidedId, side: 'low' | 'high') => string,
  ): string => {
    if (h.case === 'none-off')
      return `Nothing is clearly too much or too little in ${say.round(h.round)}.`;
    const subject = subjects[h.attribute];
    if (h.case === 'further') return `${subject}: further from just right than before.`;
    const off = end(h.attribute, h.side);
    const counts = `${h.testers} of ${h.asked} testers`;
    // "slips" and "grips too hard" are whole, "too soft" takes a verb.
    const verb = off.startsWith('too ') ? 'is ' : '';
    return h.claims === 'clear'
      ? `${subject} ${verb}${off} for ${counts}.`
      : `${subject} ${verb}probably ${off}: ${counts} say so.`;
  },
  title: 'Too much or too little?',
  note: 'Each tester counts once. Just right is in the middle.',
  question: 'Question',
  sides: 'Testers by side',
  known: 'What is known',
  cost: 'Cost in overall comfort',
  costOf: (points: string, least: string, most: string) => `${points} points (${least} … ${most})`,
  costNone: 'too few to tell what it costs',
  move: 'Since last round',
  moves: {
    better: 'closer',
    worse: 'further off',
    'no-relevant': 'hardly moved',
    open: 'too early to tell',
  },
  bySame: (n: number) => `(${n} in both)`,
  /** Above the lines from 0 to 100. */
  scores: 'Scores from 0 to 100',
  oldLine: (rounds: string, questions: string) =>
    `${rounds}: answered on the earlier line, from bad to just right (${questions}). Those scores stand below and are not mixed with these.`,
  pictureSays: (round: string) =>
    `For how many testers each thing is too little, just right or too much in ${round}`,
  rowSays: (name: string, round: string, sides: string) => `${name}, ${round}: ${sides}`,
};

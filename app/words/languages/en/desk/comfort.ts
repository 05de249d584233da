import type { TwoSidedWord } from '../../../../../core/complaints/index.ts';
import type { ChangeVerdict } from '../../../../../core/records/index.ts';
import { countTesters } from '../count.ts';

export const comfort = {
  nobody: 'Nobody has scored the comfort yet.',
  wear: 'After wearing',
  firstImpressions: 'First impressions',
  attribute: 'Attribute',
  of: (t: number, scores: number) =>
    `${countTesters(t)}, ${scores} ${scores === 1 ? 'score' : 'scores'}`,
  how: '0 to 100, 100 is good. Mean of the testers’ own means, each tester once, with the 95 % interval (Student). First wearings are kept apart, because many change their mind within a day (Anderson 2020). The change per 100 km gives each tester a start and a slope of their own, and is the same on every screen (mixed model, REML). Between rounds, a difference counts from 10 on (Mills 2010; Bishop 2020) and only if its interval leaves zero out.',
  scored: (attribute: string, mean: string, of: string) => `${attribute}: ${mean} of 100; ${of}.`,
  between: (mean: string, lower: string, upper: string) =>
    `${mean} (95 % interval ${lower} to ${upper})`,
  changed: (rounds: string, points: string, word: string) =>
    `${rounds}, points: ${points}: ${word}.`,
  changes: (earlier: string, later: string) => `${later} against ${earlier}`,
  change: 'Change',
  by: { 'same-testers': 'same testers', 'different-testers': 'different testers' },
  drift: 'Change per 100 km (95 %)',
  driftOf: (t: number) => countTesters(t),
  preferred: 'Which pair they prefer',
  noOrder:
    'Nobody has put pairs of two rounds in order yet. Whoever holds two pairs is asked now and then.',
  prefer: (
    first: { name: string; testers: number },
    second: { name: string; testers: number },
    equal: number,
  ) =>
    `${countTesters(first.testers)} prefer ${first.name}, ${countTesters(second.testers)} prefer ${second.name}, ${countTesters(equal)} find them equal.`,
  unblinded: (count: number) =>
    `${count === 1 ? '1 of them' : `${count} of them`} knew what was changed: a description alone has moved scores by 15 of 100.`,
  twoSided: {
    title: 'Too much or too little',
    question: 'Question',
    testers: 'Testers',
    right: 'just right',
    /** "too soft 5, just right 3, too firm 0". */
    sides: (low: string, l: number, r: number, high: string, h: number) =>
      `${low} ${l}, just right ${r}, ${high} ${h}`,
    known: 'What is known',
    /** What a word of the analysis says, with the ends of the line. */
    word: {
      low: (low: string) => low,
      high: (_low: string, high: string) => high,
      split: (low: string, high: string) => `${low} for some, ${high} for others`,
      right: () => 'just right',
      open: () => 'no clear side',
    } satisfies Readonly<Record<TwoSidedWord, (low: string, high: string) => string>>,
    sure: { clear: 'clear', likely: 'likely', 'too-early': 'too early to tell' },
    cost: 'Overall comfort against just right (95 %)',
    costOf: (side: string, points: string, off: number, right: number) =>
      `${side}: ${points}, ${off} against ${right}`,
    noCost: 'too few testers',
    mean: 'Mean mark (95 %)',
    share: 'Share too little, too much (95 %)',
    chance: 'Chance alone: this question, all of them',
    moved: (closer: string, word: string) => `${closer}: ${word}`,
    movedTitle: (earlier: string, later: string) =>
      `${later} against ${earlier}: closer to just right`,
    closer: 'Closer by, points of 100 (95 %)',
    marks: 'Mean mark, before and now',
    /** What a verdict on a change says of it. */
    outcome: {
      mended: 'proved to be closer to just right, and just right now',
      better: 'proved to be closer to just right; that it is just right now is not shown',
      'no-different': 'shown: a move that would matter is ruled out',
      worse: 'proved to be further from just right',
      'too-little': 'the answers so far leave open whether it moved',
    } satisfies Readonly<Record<ChangeVerdict, string>>,
    says: (name: string, sides: string, known: string) => `${name}: ${sides}. ${known}.`,
    how: 'A mark lies between −100 (too little) and 100 (too much). Each tester counts once, with the mean of all runs but first wearings; up to 15 on either side of the middle is just right (one answer can move by 13 by chance, Bishop 2020; the middle of a seven-point scale reaches to 14). “Too soft” needs a fifth of the testers on that side, which is common practice (ASTM MNL63), and more of a lean than chance gives when either side is as likely: whole testers are flipped, over all questions together (Westfall & Young 1993). “Clear” is wrong in at most 5 % of rounds in which nothing is off, “likely” in at most 20 %. The cost is the mean overall comfort of testers for whom it is just right, less that of those on the side, each with Welch’s interval by itself: who finds one thing off often finds others off, so it is no proof of the cause. Between rounds, only testers who answered in both: how much closer to the middle each of them is; it counts from 15 points on, and only if its interval leaves zero out. These answers are never mixed with those of the 0-100 lines that were asked before.',
  },
};

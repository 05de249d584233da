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
};

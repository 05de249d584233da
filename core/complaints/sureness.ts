/** How sure is it that a complaint recurs, in the few words that stand on the first level? The one rule of every place. */
import type { EvidenceWord } from './evidence.ts';

/**
 * How sure it is that a complaint recurs.
 * - `clear`: proved by the rule of the brief, across testers;
 * - `one-tester`: proved for named testers alone;
 * - `likely`: reported in two runs or more and by two testers or more, not proved;
 * - `too-early`: anything less.
 */
export const sureness = ['clear', 'one-tester', 'likely', 'too-early'] as const;
export type Sureness = (typeof sureness)[number];

/** How sure a complaint is. @param testers how many reported it */
export const surenessOf = (word: EvidenceWord, testers: number): Sureness =>
  word === 'recurs-across-testers'
    ? 'clear'
    : word === 'recurs-for-one-tester'
      ? 'one-tester'
      : word === 'early-sign' && testers >= 2
        ? 'likely'
        : 'too-early';

/**
 * The few words that stand on the first level of the desk: what is decided (a stamp), and how sure a complaint is.
 * Each follows from what the review proves; no headline may say more than its stamp.
 */
import type { EvidenceWord } from '../complaints/index.ts';
import type { HoldWord } from '../wear/index.ts';

/** What a round, or one limit of its brief, is known to do. */
export const stamps = ['fails', 'open', 'holds'] as const;
export type Stamp = (typeof stamps)[number];

const stampOfHold: Readonly<Record<HoldWord, Stamp>> = {
  'does-not-hold': 'fails',
  'not-known-yet': 'open',
  holds: 'holds',
};

/** The stamp of a verdict's word. */
export const stampOf = (word: HoldWord): Stamp => stampOfHold[word];

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

/** What a headline claims at most. A property test holds it against the stamp of the same place. */
export type Claim = Stamp | Sureness | 'nothing';

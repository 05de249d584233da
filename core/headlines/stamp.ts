/**
 * The few words that stand on the first level of the desk: what is decided (a stamp), and how sure a complaint is
 * (`complaints/sureness.ts`). Each follows from what the review proves; no headline may say more than its stamp.
 */
import type { Sureness } from '../complaints/index.ts';
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

/** What a headline claims at most. A property test holds it against the stamp of the same place. */
export type Claim = Stamp | Sureness | 'nothing';

/**
 * How long does the shoe last, in one sentence? Which limit is reached first and about when; where the checks cannot
 * tell, how far has been measured. The stamp is that of the latest round with a check.
 */
import type { Limit, RecordId } from '../records/index.ts';
import { reachedAt, type WearCard, type WearRound } from '../review/index.ts';
import type { Metres } from '../units/index.ts';
import type { Claim, Stamp } from './stamp.ts';

interface OfLimit {
  readonly round: RecordId;
  readonly limit: Limit;
}

export type WearHeadline = { readonly claims: Claim } & (
  | { readonly case: 'no-check' }
  /** The brief names no limit. */
  | { readonly case: 'no-limit'; readonly farthestM: Metres }
  | ({ readonly case: 'fails'; readonly atM: Metres | null; readonly briefM: Metres } & OfLimit)
  /** More likely than not reached before the brief's distance, in whichever round tells so. */
  | ({ readonly case: 'weak-point'; readonly atM: Metres; readonly briefM: Metres } & OfLimit)
  | { readonly case: 'holds'; readonly round: RecordId; readonly briefM: Metres }
  /** Measured far enough to tell something; nothing is decided. */
  | {
      readonly case: 'open';
      readonly round: RecordId;
      readonly farthestM: Metres;
      readonly briefM: Metres;
    }
  | {
      readonly case: 'too-early';
      readonly round: RecordId;
      readonly farthestM: Metres;
      readonly briefM: Metres;
    }
);

export interface WearFacts {
  /** By order. */
  readonly rounds: readonly RecordId[];
  readonly cards: readonly WearCard[];
  readonly briefM: Metres;
}

interface Told {
  readonly limit: Limit;
  readonly one: WearRound;
}

const toldOf = ({ cards }: WearFacts): readonly Told[] =>
  cards.flatMap(({ limit, rounds }) => (limit ? rounds.map((one) => ({ limit, one })) : []));

/** The latest round with a check; null where there is none. */
const latestOf = ({ rounds, cards }: WearFacts): RecordId | null =>
  rounds.findLast((id) => cards.some((card) => card.rounds.some(({ round }) => round === id))) ??
  null;

const farthestOf = ({ cards }: WearFacts, round: RecordId | null): Metres =>
  cards
    .flatMap((card) => card.rounds)
    .filter((one) => one.round === round)
    .reduce<Metres>((most, { greatest }) => (greatest > most ? greatest : most), 0 as Metres);

/** What the latest measured round is known to do; every limit must be measured for it to hold. */
export const wearStamp = (facts: WearFacts): Stamp => {
  const latest = latestOf(facts);
  const limits = facts.cards.filter(({ limit }) => limit !== null);
  const words = limits.map(
    ({ rounds }) => rounds.find(({ round }) => round === latest)?.outlook?.hold?.word,
  );
  return words.includes('does-not-hold')
    ? 'fails'
    : words.length > 0 && words.every((word) => word === 'holds')
      ? 'holds'
      : 'open';
};

/** The one that is reached first; one without a distance last. */
const first = (told: readonly Told[]): Told | undefined =>
  told.toSorted((a, b) => (reachedAt(a.one) ?? Infinity) - (reachedAt(b.one) ?? Infinity))[0];

/** @returns the case, and what it is about */
export const wearHeadline = (facts: WearFacts): WearHeadline => {
  const { cards, briefM } = facts;
  const latest = latestOf(facts);
  if (latest === null) return { case: 'no-check', claims: 'nothing' };
  const farthestM = farthestOf(facts, latest);
  if (cards.every(({ limit }) => limit === null))
    return { case: 'no-limit', claims: 'nothing', farthestM };
  const stamp = wearStamp(facts);
  if (stamp === 'holds') return { case: 'holds', claims: 'holds', round: latest, briefM };
  const told = toldOf(facts);
  const failing = first(
    told.filter(({ one }) => one.round === latest && one.outlook?.hold?.word === 'does-not-hold'),
  );
  if (failing)
    return {
      case: 'fails',
      claims: 'fails',
      round: latest,
      limit: failing.limit,
      atM: reachedAt(failing.one),
      briefM,
    };
  const weak = first(told.filter(({ one }) => (reachedAt(one) ?? Infinity) < briefM));
  const atM = weak && reachedAt(weak.one);
  if (weak && atM !== undefined && atM !== null)
    return {
      case: 'weak-point',
      claims: 'likely',
      round: weak.one.round,
      limit: weak.limit,
      atM,
      briefM,
    };
  const tells = told.some(
    ({ one }) => one.round === latest && one.outlook?.hold && !one.outlook.tooFar,
  );
  return {
    case: tells ? 'open' : 'too-early',
    claims: 'nothing',
    round: latest,
    farthestM,
    briefM,
  };
};

/** What one round says of one limit, in a few words. */
export type WearRoundSays =
  | { readonly case: 'holds'; readonly briefM: Metres }
  | { readonly case: 'fails'; readonly atM: Metres | null }
  | { readonly case: 'reached'; readonly atM: Metres }
  /** Of ten new pairs so many would last the brief's distance; nothing is decided. */
  | { readonly case: 'open'; readonly inTen: number; readonly briefM: Metres }
  | { readonly case: 'too-early'; readonly farthestM: Metres }
  /** No pair was measured at two distances. */
  | { readonly case: 'measured-once' };

/** @param briefM what a pair must carry */
export const wearRoundSays = (one: WearRound, briefM: Metres): WearRoundSays => {
  const { outlook, basis, greatest } = one;
  if (basis === 'prior-only') return { case: 'measured-once' };
  const atM = reachedAt(one);
  const word = outlook?.hold?.word;
  if (word === 'does-not-hold') return { case: 'fails', atM };
  if (word === 'holds') return { case: 'holds', briefM };
  if (atM !== null && atM < briefM) return { case: 'reached', atM };
  if (!outlook?.hold || outlook.tooFar) return { case: 'too-early', farthestM: greatest };
  return { case: 'open', inTen: Math.round(outlook.hold.chance * 10), briefM };
};

/**
 * How does the test stand, in one sentence? By rule, from the facts that the latest round's stamp is made of: who may
 * be hurt first, then what is decided, then what a change mended, then what to watch.
 */
import { surenessOf } from '../complaints/index.ts';
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';
import type { DamageReport, RecordId } from '../records/index.ts';
import type { Callout, Overview, Review, Verdict } from '../review/index.ts';
import type { Metres } from '../units/index.ts';
import { stampOf, type Claim, type Stamp } from './stamp.ts';

export interface FeltName {
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind;
}

/** What the sheet says first. `round` is the latest round that anybody has run in. */
export type SheetHeadline = { readonly claims: Claim } & (
  | { readonly case: 'no-round' }
  | { readonly case: 'nobody-ran'; readonly round: RecordId; readonly pairs: number }
  | { readonly case: 'pain'; readonly testers: readonly RecordId[] }
  | { readonly case: 'damage'; readonly pair: RecordId; readonly what: DamageReport['what'] }
  | {
      readonly case: 'recurs';
      readonly round: RecordId;
      /** The worst first; at most two. */
      readonly felt: readonly FeltName[];
      readonly testers: number;
      readonly askedTesters: number;
    }
  /** Proved for one tester alone. */
  | {
      readonly case: 'one-tester';
      readonly round: RecordId;
      readonly felt: FeltName;
      readonly testers: readonly RecordId[];
    }
  | { readonly case: 'fails'; readonly round: RecordId }
  | { readonly case: 'holds'; readonly round: RecordId }
  | {
      readonly case: 'better';
      /** At most two. */
      readonly felt: readonly FeltName[];
      readonly farthestM: Metres;
      readonly briefM: Metres;
    }
  | {
      readonly case: 'watch';
      readonly round: RecordId;
      readonly felt: FeltName;
      readonly testers: number;
      readonly askedTesters: number;
    }
  /** One tester has it in more than one run, which is too few to say that it recurs. */
  | {
      readonly case: 'early';
      readonly round: RecordId;
      readonly felt: FeltName;
      readonly tester: RecordId;
      readonly reported: number;
      readonly asked: number;
    }
  | {
      readonly case: 'nothing-recurs';
      readonly round: RecordId;
      readonly farthestM: Metres;
      readonly briefM: Metres;
    }
);

export interface SheetFacts {
  readonly review: Pick<Review, 'rounds' | 'pairs' | 'project'>;
  readonly verdicts: readonly Verdict[];
  readonly overview: Pick<Overview, 'next'>;
  readonly callouts: readonly Callout[];
}

/** The latest round with a run; null where nobody has run. */
const runIn = ({ rounds }: SheetFacts['review']) =>
  rounds.findLast(({ size }) => size.runs > 0) ?? null;

/** The stamp of the latest round with a run: what the sheet's headline may claim at most. */
export const sheetStamp = ({ review, verdicts }: SheetFacts): Stamp => {
  const word = verdicts.find(({ round }) => round === runIn(review)?.id)?.word;
  return word === undefined ? 'open' : stampOf(word);
};

const urgent = ({ overview, callouts, review }: SheetFacts): SheetHeadline | null => {
  const pain = overview.next.find(({ step }) => step === 'ask-about-pain');
  if (pain && 'testers' in pain) return { case: 'pain', claims: 'nothing', testers: pain.testers };
  const look = overview.next.find(({ step }) => step === 'look-at-damage');
  const damaged = callouts.find(
    (one) => one.what === 'damage' && look && 'pairs' in look && look.pairs.includes(one.pair),
  );
  return damaged?.what === 'damage' && review.pairs.some(({ id }) => id === damaged.pair)
    ? { case: 'damage', claims: 'nothing', pair: damaged.pair, what: damaged.kind }
    : null;
};

/** @returns the sentence's case, and what it is about */
export const sheetHeadline = (facts: SheetFacts): SheetHeadline => {
  const { review, callouts } = facts;
  const hurt = urgent(facts);
  if (hurt) return hurt;
  const round = runIn(review);
  if (!round) {
    const last = review.rounds.at(-1);
    if (!last) return { case: 'no-round', claims: 'nothing' };
    const pairs = review.pairs.filter((pair) => pair.round === last.id).length;
    return { case: 'nobody-ran', claims: 'nothing', round: last.id, pairs };
  }
  const stamp = sheetStamp(facts);
  if (stamp === 'holds') return { case: 'holds', claims: 'holds', round: round.id };
  const complaints = callouts.flatMap((one) =>
    one.what === 'complaint' && one.round === round.id ? [one] : [],
  );
  if (stamp === 'fails')
    return recurring(complaints, 'fails') ?? { case: 'fails', claims: 'fails', round: round.id };
  const farthestM = review.pairs.reduce<Metres>(
    (most, pair) => (pair.totalM > most ? pair.totalM : most),
    0 as Metres,
  );
  const distances = { farthestM, briefM: review.project.brief.distanceM };
  const better = callouts.filter(({ what }) => what === 'better');
  if (better.length > 0)
    return {
      case: 'better',
      claims: 'nothing',
      felt: better.slice(0, 2).flatMap(feltOf),
      ...distances,
    };
  return (
    watched(complaints) ??
    early(round) ?? {
      case: 'nothing-recurs',
      claims: 'nothing',
      round: round.id,
      ...distances,
    }
  );
};

type ComplaintCallout = Extract<Callout, { what: 'complaint' }>;

/** What is proved across testers; null where nothing is. */
const recurring = (
  complaints: readonly ComplaintCallout[],
  claims: Claim,
): SheetHeadline | null => {
  const proved = complaints.filter(({ word }) => word === 'recurs-across-testers');
  const [worst] = proved;
  if (!worst) return null;
  const { round, testers, askedTesters } = worst;
  const felt = proved.slice(0, 2).flatMap(feltOf);
  return { case: 'recurs', claims, round, felt, testers, askedTesters };
};

/** What an open round has to be watched for, as sure as the first of its complaints is. */
const watched = (complaints: readonly ComplaintCallout[]): SheetHeadline | null => {
  const recurs = recurring(complaints, 'clear');
  const [first] = complaints;
  if (recurs || !first) return recurs;
  const { round, zone, kind, word, proved, testers, askedTesters } = first;
  const felt = { zone, kind };
  const claims = surenessOf(word, testers);
  return claims === 'one-tester'
    ? { case: 'one-tester', claims, round, felt, testers: proved }
    : { case: 'watch', claims, round, felt, testers, askedTesters };
};

/** What one tester alone told more than once: the share of their runs decides, then how many they are. */
const early = ({
  id: round,
  complaints,
}: SheetFacts['review']['rounds'][number]): SheetHeadline | null => {
  const [most] = complaints.cells
    .filter(({ word, testersOnce }) => word === 'early-sign' && testersOnce === 1)
    .flatMap(({ zone, kind, byTester }) =>
      byTester.map((one) => ({ felt: { zone, kind }, ...one })),
    )
    .sort((a, b) => b.reported / b.asked - a.reported / a.asked || b.reported - a.reported);
  return most ? { case: 'early', claims: 'too-early', round, ...most } : null;
};

const feltOf = (one: Callout): FeltName[] =>
  one.what === 'complaint' || one.what === 'better' ? [{ zone: one.zone, kind: one.kind }] : [];

/**
 * Did the changes between two rounds work, in one sentence? By rule, from the words that each complaint ends with: what
 * is worse is never left out, what is better is called so only where it was asked about beforehand and proved.
 */
import type { ComfortAttributeId, ComplaintKind, TwoSidedId, ZoneCode } from '../foot/index.ts';
import type { ChangeVerdict, RecordId } from '../records/index.ts';
import { isAbsent, type ChangesLook } from '../review/index.ts';

/** A complaint as a headline names it; in any zone where that is null. */
export interface MovedName {
  readonly kind: ComplaintKind;
  readonly zone: ZoneCode | null;
}

/** What is worse: a complaint, or the answer to a comfort question. */
export type WorseName = MovedName | { readonly attribute: ComfortAttributeId | TwoSidedId };

/** What a pair of rounds is stamped with; `mixed`: something is proved better and something worse. */
export type ChangesStamp = ChangeVerdict | 'mixed';

export type ChangesHeadline =
  | { readonly claims: 'nothing'; readonly case: 'one-round' }
  | { readonly claims: 'nothing'; readonly case: 'nobody-ran'; readonly round: RecordId }
  | {
      readonly claims: 'mixed';
      readonly case: 'mixed';
      readonly better: readonly MovedName[];
      readonly worse: readonly WorseName[];
    }
  | { readonly claims: 'worse'; readonly case: 'worse'; readonly worse: readonly WorseName[] }
  | {
      readonly claims: 'mended' | 'better';
      readonly case: 'mended' | 'better';
      readonly better: readonly MovedName[];
      /** What is not settled, and would be named first. */
      readonly open: MovedName | null;
    }
  | {
      readonly claims: 'no-different';
      readonly case: 'no-different';
      readonly same: readonly MovedName[];
    }
  /** What moved or did not is no doing of a change that is not in the shoe. */
  | {
      readonly claims: 'too-little';
      readonly case: 'not-in-shoe';
      readonly better: readonly MovedName[];
      readonly named: readonly MovedName[];
    }
  | {
      readonly claims: 'too-little';
      readonly case: 'too-early';
      /** What the changes were meant to mend. */
      readonly open: readonly MovedName[];
    }
  | { readonly claims: 'nothing'; readonly case: 'nothing-moved'; readonly round: RecordId };

/** What a headline and its stamp are made of. */
export type ChangesFacts = Pick<ChangesLook, 'felt' | 'comfort'> & {
  readonly comparison: Pick<
    ChangesLook['comparison'],
    'earlier' | 'later' | 'changes' | 'testers' | 'twoSided'
  >;
};

interface Sorted {
  readonly better: readonly MovedName[];
  /** Whether all that is better is proved to be within what the brief allows. */
  readonly mended: boolean;
  readonly worse: readonly WorseName[];
  readonly same: readonly MovedName[];
  readonly open: readonly MovedName[];
  /** What only changes were to mend that are not in the shoe: rarer, and all but what is worse. */
  readonly absent: { readonly better: readonly MovedName[]; readonly named: readonly MovedName[] };
  /** Not asked about and not proved, but worth asking about. */
  readonly look: readonly MovedName[];
}

const nameOf = ({ zone, kind }: MovedName): MovedName => ({ zone, kind });

/** Whether every change that was to mend it is measured not to be in the shoe. */
const isUnmade = (
  { zone, kind }: MovedName,
  changes: ChangesFacts['comparison']['changes'],
): boolean => {
  const meant = changes.filter(
    ({ mends }) => mends?.kind === kind && (mends.zone ?? zone) === (zone ?? mends.zone),
  );
  return meant.length > 0 && meant.every(({ arrival }) => isAbsent(arrival));
};

/** Every complaint by what it ended with. */
const sorted = ({ felt, comfort, comparison }: ChangesFacts): Sorted => {
  const anywhere = comparison.changes.flatMap(({ mends, found }) =>
    mends && found && mends.zone === null
      ? [{ ...nameOf(mends), word: found.verdict, asked: true }]
      : [],
  );
  const everything = [...felt.filter(({ asked }) => asked), ...anywhere];
  const [without, all] = [true, false].map((is) =>
    everything.filter((one) => is === (one.word !== 'worse' && isUnmade(one, comparison.changes))),
  ) as [typeof everything, typeof everything];
  const rest = felt.filter(({ asked }) => !asked);
  // A question may have been answered on both kinds of line.
  const questions = [...comfort, ...comparison.twoSided].flatMap(({ attribute, word }) =>
    word === 'worse' ? [attribute] : [],
  );
  const ended = (...words: readonly string[]) =>
    all.filter(({ word }) => words.includes(word)).map(nameOf);
  return {
    better: ended('mended', 'better'),
    mended: ended('better').length === 0,
    worse: [
      ...ended('worse'),
      ...rest.filter(({ word }) => word === 'worse').map(nameOf),
      ...[...new Set(questions)].map((attribute) => ({ attribute })),
    ],
    same: ended('no-different'),
    open: ended('too-little'),
    absent: {
      better: without.filter(({ word }) => word === 'mended' || word === 'better').map(nameOf),
      named: without.map(nameOf),
    },
    look: rest.filter(({ word }) => word === 'look').map(nameOf),
  };
};

/** What is proved of two rounds, in one word; the headline never claims another. */
export const changesStamp = (facts: ChangesFacts | null): ChangesStamp => {
  if (!facts) return 'too-little';
  const { better, worse, mended, same, open, absent } = sorted(facts);
  if (worse.length > 0) return better.length > 0 ? 'mixed' : 'worse';
  if (better.length > 0) return mended ? 'mended' : 'better';
  return same.length > 0 && open.length + absent.named.length === 0 ? 'no-different' : 'too-little';
};

/**
 * @param facts of the two rounds; null where there are not two
 * @returns the sentence's case, and what it is about: at most two names each
 */
export const changesHeadline = (facts: ChangesFacts | null): ChangesHeadline => {
  if (!facts) return { claims: 'nothing', case: 'one-round' };
  const { earlier, later, testers } = facts.comparison;
  if (testers.both + testers.onlyEarlier === 0)
    return { claims: 'nothing', case: 'nobody-ran', round: earlier };
  if (testers.both + testers.onlyLater === 0)
    return { claims: 'nothing', case: 'nobody-ran', round: later };
  const { better, worse, mended, same, open, look, absent } = sorted(facts);
  if (worse.length > 0)
    return better.length > 0
      ? { claims: 'mixed', case: 'mixed', better: better.slice(0, 1), worse: worse.slice(0, 1) }
      : { claims: 'worse', case: 'worse', worse: worse.slice(0, 2) };
  if (better.length > 0) {
    const word = mended ? 'mended' : 'better';
    const unsettled = open[0] ?? look[0] ?? null;
    const named = better.slice(0, unsettled ? 1 : 2);
    return { claims: word, case: word, better: named, open: unsettled };
  }
  if (absent.named.length > 0)
    return {
      claims: 'too-little',
      case: 'not-in-shoe',
      better: absent.better.slice(0, 2),
      named: absent.named.slice(0, 2),
    };
  if (open.length > 0) return { claims: 'too-little', case: 'too-early', open: open.slice(0, 2) };
  if (same.length > 0)
    return { claims: 'no-different', case: 'no-different', same: same.slice(0, 2) };
  return { claims: 'nothing', case: 'nothing-moved', round: later };
};

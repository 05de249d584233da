/**
 * Is it the shoe, or this foot? One sentence of one tester, from what is proved of their complaints and what the
 * others in the same rounds said. It never says more than the complaint's own stamp.
 */
import { surenessOf, type Sureness } from '../complaints/index.ts';
import type { RecordId } from '../records/index.ts';
import type { FeltByTester, TesterLook } from '../review/index.ts';
import type { FeltName } from './sheet.ts';
import type { Claim } from './stamp.ts';

/** Reported in fewer runs it is an event, not what a tester feels. */
const LEAST_RUNS = 2;
/** "Alone" where the others report it in no more than this share of their runs. Judgement, no source. */
const HARDLY = 0.05;

interface Felt {
  readonly felt: FeltName;
  readonly runs: number;
  readonly of: number;
  readonly others: FeltByTester['others'];
}

export type TesterHeadline = { readonly claims: Claim; readonly tester: RecordId } & (
  | { readonly case: 'pain'; readonly score: number }
  | { readonly case: 'not-run'; readonly pairs: readonly RecordId[] }
  /** Proved for this tester, and hardly anybody else reports it. */
  | ({ readonly case: 'alone' } & Felt)
  /** Proved across testers, and this one feels it too. */
  | ({ readonly case: 'shared' } & Felt)
  /** Reported, and not proved to be theirs alone or everybody's. */
  | ({ readonly case: 'felt' } & Felt)
  | { readonly case: 'silent'; readonly days: number }
  | { readonly case: 'quiet'; readonly asked: number; readonly once: number }
  | { readonly case: 'not-asked'; readonly runs: number }
);

const order: readonly Sureness[] = ['one-tester', 'clear', 'likely', 'too-early'];

/** How sure a complaint of theirs is, as it stands in the rounds that they ran in. */
export const surenessForTester = ({
  word,
  reporters,
  isProved,
}: Pick<FeltByTester, 'word' | 'reporters' | 'isProved'>): Sureness =>
  word === 'recurs-for-one-tester' && !isProved
    ? 'too-early'
    : word === null
      ? 'too-early'
      : surenessOf(word, reporters);

/** What tells most of this tester: what is proved of them, then what they report in most runs. */
export const mostTelling = (felt: readonly FeltByTester[]): FeltByTester | null => {
  const [first] = felt
    .filter(({ marks }) => marks.length >= LEAST_RUNS)
    .toSorted(
      (a, b) =>
        Number(b.isProved) - Number(a.isProved) ||
        b.marks.length - a.marks.length ||
        order.indexOf(surenessForTester(a)) - order.indexOf(surenessForTester(b)),
    );
  return first ?? null;
};

/** The stamp that stands beside the headline: what it may claim at most; null: there is nothing to be sure of. */
export const testerStamp = (look: Pick<TesterLook, 'felt'>): Sureness | null => {
  const most = mostTelling(look.felt);
  return most && surenessForTester(most);
};

/** @returns the sentence's case, and what it is about */
export const testerHeadline = (look: TesterLook): TesterHeadline => {
  const about = { tester: look.id, claims: 'nothing' } as const;
  const pain = look.pains.find(({ stands }) => stands);
  if (pain) return { ...about, case: 'pain', score: pain.score };
  if (look.runs === 0) return { ...about, case: 'not-run', pairs: look.pairs };
  const most = mostTelling(look.felt);
  if (most) {
    const { zone, kind, marks, others } = most;
    const felt: Felt = { felt: { zone, kind }, runs: marks.length, of: look.asked, others };
    const claims = surenessForTester(most);
    const isAlone =
      claims === 'one-tester' && most.isProved && others.runs <= HARDLY * others.askedRuns;
    if (isAlone) return { ...about, claims, case: 'alone', ...felt };
    if (claims === 'clear') return { ...about, claims, case: 'shared', ...felt };
    return { ...about, claims, case: 'felt', ...felt };
  }
  if (look.silentDays !== null) return { ...about, case: 'silent', days: look.silentDays };
  return look.asked === 0
    ? { ...about, case: 'not-asked', runs: look.runs }
    : { ...about, case: 'quiet', asked: look.asked, once: look.felt.length };
};

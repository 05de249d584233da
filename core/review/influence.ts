/**
 * Does one tester or one pair alone decide the verdict on a round? Each is left out in turn, and the word is worked
 * out anew. Nobody doubts them: the verdict only hangs on them.
 *
 * A tester left out is not asked: their answers, their damage reports and their place on the panel go, the kilometres
 * that they put on a pair stay. A pair left out goes with everything that was logged of it.
 */
import type { LoggedRun } from '../mileage/index.ts';
import type { RecordId, Run } from '../records/index.ts';
import type { HoldWord } from '../wear/index.ts';
import type { ProjectLog } from './project-log.ts';
import type { Review, RoundReview } from './review-types.ts';
import { noComfort, reviewRound } from './round-review.ts';
import { verdictWord, type Verdict } from './verdict.ts';
import { fitLimits, type FittedLimit } from './wear-limits.ts';
import { withoutPairs } from './without-pairs.ts';

/** Without this one the verdict would be another. */
export type Influence = (
  | { readonly who: 'tester'; readonly id: RecordId }
  | { readonly who: 'pair'; readonly id: RecordId }
) & { readonly word: HoldWord };

export interface RoundInfluence {
  readonly round: RecordId;
  /** Testers first. Null: so many testers and pairs that none was left out in turn. */
  readonly decisive: readonly Influence[] | null;
}

/** Of more testers and pairs together none is left out: it would take minutes, and one of so many seldom decides. */
export const MOST_LEFT_OUT = 80;

const unanswered = ({
  feet: _feet,
  pain: _pain,
  comfort: _comfort,
  comfort2: _comfort2,
  ...run
}: Run): Run => run;

const withoutAnswersOf = (log: ProjectLog, tester: RecordId): ProjectLog => {
  const silent = (one: LoggedRun): LoggedRun =>
    one.tester === tester ? { ...one, run: unanswered(one.run) } : one;
  return {
    ...log,
    pairs: log.pairs.map((pair) => ({
      ...pair,
      runs: pair.runs.map(silent),
      spans: pair.spans.filter((span) => span.tester !== tester),
    })),
    counted: log.counted.map(silent),
    records: {
      ...log.records,
      'damage-report': log.records['damage-report'].filter(({ body }) => body.tester !== tester),
    },
  };
};

/** The testers and pairs of one round that alone decide its verdict. */
export const influenceOn = (
  whole: ProjectLog,
  round: RoundReview,
  verdict: Verdict,
): RoundInfluence => {
  const record = whole.rounds.find(({ revision }) => revision.id === round.id);
  // Nothing of a verdict reads another round.
  const log = { ...whole, pairs: whole.pairs.filter((pair) => pair.round === round.id) };
  const testers = [...new Set(log.pairs.flatMap(({ runs }) => runs.map(({ tester }) => tester)))];
  if (!record || testers.length + log.pairs.length > MOST_LEFT_OUT)
    return { round: round.id, decisive: null };
  const fitted = verdict.items.filter(
    (item): item is typeof item & FittedLimit => item.what === 'wear',
  );
  const wordOf = (left: ProjectLog, wear: () => readonly FittedLimit[]): HoldWord =>
    verdictWord(left, reviewRound(record, left, noComfort, noComfort), wear);
  const influences = [
    ...testers.sort().map((id): Influence => ({
      who: 'tester',
      id,
      word: wordOf(withoutAnswersOf(log, id), () => fitted),
    })),
    ...log.pairs.map(({ id, checks }): Influence => {
      const left = withoutPairs(log, new Set([id]));
      const wear = () => (checks.length === 0 ? fitted : fitLimits(left, round.id, false));
      return { who: 'pair', id, word: wordOf(left, wear) };
    }),
  ];
  return { round: round.id, decisive: influences.filter(({ word }) => word !== verdict.word) };
};

/** One for each round, in their order. */
export const influences = (
  log: ProjectLog,
  { rounds }: Pick<Review, 'rounds'>,
  verdicts: readonly Verdict[],
): readonly RoundInfluence[] =>
  rounds.flatMap((round, at) => {
    const verdict = verdicts[at];
    return verdict ? [influenceOn(log, round, verdict)] : [];
  });

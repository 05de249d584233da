/**
 * Is something too little or too much, for how many testers, and did a change bring it closer to just right? Of the
 * comfort questions whose good point is in the middle (`core/foot/two-sided.ts`).
 *
 * The tester is the unit: the marks of a tester's runs become one mean, whatever their number. First wearings are left
 * out, as for the 0-100 lines (`comfort.ts`), and the two kinds of line are never mixed.
 *
 * "Too soft" says two things, and needs both: a fifth of the testers or more lie on that side ({@link LEAST_SHARE}), and
 * the testers' means lie on that side more than by chance. If nothing is there, some testers find it softer and some
 * firmer than they like, and either is as likely: signs are flipped by tester, over all questions of the round at once
 * (`signFlipMax`). `clear`: half of the testers or more, and at most 5 % of rounds with nothing in them come with any
 * such word. `likely`: at most 20 %
 * do, and at most 5 % of single questions with either side's word. Figures in DEVELOPERS.md.
 */
import { JUST_RIGHT, sideOf, twoSidedIds, type Side, type TwoSidedId } from '../foot/index.ts';
import type { RecordId, TwoSided } from '../records/index.ts';
import {
  groupBy,
  meanOfUnits,
  signFlipMax,
  wilson,
  type Interval,
  type MeanOfUnits,
} from '../statistics/index.ts';
import { changeWord, type ComfortChange } from './comfort.ts';
import { LEAST_SHARE, penaltyOf, type OneAnswer, type Penalty } from './penalty.ts';

/**
 * From so many points on, a tester's distance from just right has changed. The distance, 0 to 100, is what the 0-100 line
 * "far too hard or too soft … just right" told upside down, on which 10 points matter; a mean of few runs lies further
 * from the middle than one of many, whatever the shoe, and with 15 a round of one run a tester against one of twenty is
 * still called another by chance in less than 5 % of tests (judgement, by simulation).
 */
export const RELEVANT_MOVE = 15;

/** Where fewer testers than this lie on the side, it is never called clear, however sure the lean is. Judgement. */
const MOST_OF_THEM = 0.5;

/** Levels of the words, over all questions of a round; and of one question for either side. */
const LEVELS = { clear: 0.05, likely: 0.2, likelyAlone: 0.1 } as const;

/** The marks of one run. */
export interface TwoSidedAnswer {
  readonly tester: RecordId;
  readonly marks: TwoSided;
  /** Overall comfort of the same run, 0 to 100; null: not answered. */
  readonly overall: number | null;
  readonly firstImpression: boolean;
}

/**
 * - `low`, `high`: too little, too much of it;
 * - `split`: a fifth or more on either side;
 * - `right`: the mean lies within just right, interval and all, and less than a fifth on either side;
 * - `open`: the answers do not decide.
 */
export type TwoSidedWord = 'low' | 'high' | 'split' | 'right' | 'open';

export interface TesterMark {
  readonly tester: RecordId;
  /** Mean of the tester's runs. */
  readonly mark: number;
  readonly overall: number | null;
  readonly runs: number;
}

export interface TwoSidedReview extends Penalty {
  readonly attribute: TwoSidedId;
  /** Lowest first. */
  readonly testers: readonly TesterMark[];
  readonly runs: number;
  /** Of the testers' means, with Student's interval. */
  readonly mean: MeanOfUnits;
  /** Of testers on each side, Wilson's interval. */
  readonly share: Readonly<Record<Side, Interval>>;
  readonly word: TwoSidedWord;
  /** How sure `low` and `high` are; what else there is, is never more than a count. */
  readonly sure: 'clear' | 'likely' | 'too-early';
  /** Of a mean of zero: by itself, and over all questions of the round. */
  readonly p: number;
  readonly adjustedP: number;
}

type Marks = ReadonlyMap<RecordId, TesterMark>;

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** One answer a tester to one question; of those that answered it after a first wearing. */
const marksOf = (answers: readonly TwoSidedAnswer[], attribute: TwoSidedId): Marks => {
  const own = answers.flatMap(({ tester, marks, overall, firstImpression }) => {
    const mark = marks[attribute];
    return mark === undefined || firstImpression ? [] : [{ tester, mark, overall }];
  });
  return new Map(
    [...groupBy(own, ({ tester }) => tester)].map(([tester, runs]) => {
      const overall = runs.flatMap((one) => one.overall ?? []);
      return [
        tester,
        {
          tester,
          mark: meanOf(runs.map(({ mark }) => mark)),
          overall: overall.length > 0 ? meanOf(overall) : null,
          runs: runs.length,
        },
      ];
    }),
  );
};

const sureOf = (p: number, adjustedP: number): TwoSidedReview['sure'] =>
  adjustedP <= LEVELS.clear
    ? 'clear'
    : adjustedP <= LEVELS.likely && p <= LEVELS.likelyAlone
      ? 'likely'
      : 'too-early';

const wordOf = (
  counts: Penalty['counts'],
  mean: MeanOfUnits,
  sure: TwoSidedReview['sure'],
): TwoSidedWord => {
  const many = (side: Side): boolean => counts[side] / mean.n >= LEAST_SHARE;
  const leans = mean.mean < 0 ? 'low' : 'high';
  if (sure !== 'too-early' && many(leans)) return leans;
  if (many('low') && many('high')) return 'split';
  const { interval } = mean;
  return interval &&
    interval.lower >= -JUST_RIGHT &&
    interval.upper <= JUST_RIGHT &&
    !many('low') &&
    !many('high')
    ? 'right'
    : 'open';
};

const isOff = (word: TwoSidedWord): word is 'low' | 'high' => word === 'low' || word === 'high';

/** What the testers of one round found too little and too much, in the order of the questions. */
export const reviewTwoSided = (answers: readonly TwoSidedAnswer[]): readonly TwoSidedReview[] => {
  const asked = twoSidedIds
    .map((attribute) => ({ attribute, marks: marksOf(answers, attribute) }))
    .filter(({ marks }) => marks.size > 0);
  const testers = [...new Set(asked.flatMap(({ marks }) => [...marks.keys()]))].sort();
  const flipped = signFlipMax(
    asked.map(({ marks }) => testers.map((tester) => marks.get(tester)?.mark ?? null)),
  );
  return asked.flatMap(({ attribute, marks }, at): TwoSidedReview[] => {
    const own = [...marks.values()].sort(
      (a, b) => a.mark - b.mark || (a.tester < b.tester ? -1 : 1),
    );
    const mean = meanOfUnits(own.map(({ mark }) => mark));
    const found = flipped[at];
    if (!mean || !found) return [];
    const penalty = penaltyOf(own satisfies readonly OneAnswer[]);
    const sure = sureOf(found.p, found.adjustedP);
    const word = wordOf(penalty.counts, mean, sure);
    const share = (side: Side) => wilson(penalty.counts[side], mean.n);
    return [
      {
        attribute,
        testers: own,
        runs: own.reduce((sum, { runs }) => sum + runs, 0),
        mean,
        ...penalty,
        share: { low: share('low'), right: share('right'), high: share('high') },
        word,
        sure: isOff(word)
          ? penalty.counts[word] / mean.n < MOST_OF_THEM
            ? 'likely'
            : sure
          : 'too-early',
        ...found,
      },
    ];
  });
};

/** One question in two rounds, by those who answered it in both. */
export interface TwoSidedChange {
  readonly attribute: TwoSidedId;
  /** `better`: closer to just right. Beyond {@link RELEVANT_MOVE}, and the interval leaves zero out; the rest as there. */
  readonly word: ComfortChange['word'];
  /** By how many points the testers came closer to just right, on average; negative: further away. */
  readonly closer: number;
  readonly interval: Interval | null;
  readonly p: number | null;
  readonly testers: number;
  /** Their mean marks. */
  readonly from: number;
  readonly to: number;
  /** On which side they lay. */
  readonly earlier: Penalty['counts'];
  readonly later: Penalty['counts'];
}

const countsOf = (marks: readonly number[]): Penalty['counts'] => {
  const on = (side: Side) => marks.filter((mark) => sideOf(mark) === side).length;
  return { low: on('low'), right: on('right'), high: on('high') };
};

/**
 * What came closer to just right from one round to a later one: each tester's own distance from it, before less after.
 * Only of testers who answered in both, because feet differ in what is right for them; absent below two of those.
 */
export const twoSidedChanges = (
  earlier: readonly TwoSidedAnswer[],
  later: readonly TwoSidedAnswer[],
): readonly TwoSidedChange[] =>
  twoSidedIds.flatMap((attribute): TwoSidedChange[] => {
    const [before, after] = [marksOf(earlier, attribute), marksOf(later, attribute)];
    const both = [...before.values()].flatMap(({ tester, mark: from }) => {
      const to = after.get(tester)?.mark;
      return to === undefined ? [] : [{ from, to }];
    });
    if (both.length < 2) return [];
    const found = meanOfUnits(both.map(({ from, to }) => Math.abs(from) - Math.abs(to)));
    if (!found) return [];
    return [
      {
        attribute,
        word: changeWord(found.mean, found.interval, RELEVANT_MOVE),
        closer: found.mean,
        interval: found.interval,
        p: found.p,
        testers: both.length,
        from: meanOf(both.map(({ from }) => from)),
        to: meanOf(both.map(({ to }) => to)),
        earlier: countsOf(both.map(({ from }) => from)),
        later: countsOf(both.map(({ to }) => to)),
      },
    ];
  });

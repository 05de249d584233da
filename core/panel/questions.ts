/**
 * Which testers should the lead talk to, and about what? Each answer is a question, never a mark: a tester who
 * reports more or less than others may be the one who is right. No list here ranks people.
 */
import type { RecordId } from '../records/index.ts';
import { correlation, foretellEach, holm, median, type Correlation } from '../statistics/index.ts';

/** What one tester logged, as the questions need it. */
export interface TesterLogs {
  readonly tester: RecordId;
  /** Overall comfort after wearing, 0 to 100, one a run. */
  readonly overall: readonly number[];
  /** Runs in which the feet question was answered, and those with at least one complaint. */
  readonly asked: number;
  readonly reported: number;
  /** Hours from the end of each run to when it was written down by the tester; negative where clocks disagree. */
  readonly delaysH: readonly number[];
  /** The tester's mean score by cell, a cell being an attribute of a round. */
  readonly profile: ReadonlyMap<string, number>;
}

export type PanelQuestionToAsk = { readonly tester: RecordId } & (
  | {
      /** Nearly the same overall comfort in every log. */
      readonly about: 'same-score';
      readonly logs: number;
      readonly least: number;
      readonly most: number;
    }
  | {
      /** Never a complaint, or far more than the others foretell. */
      readonly about: 'no-complaint' | 'many-complaints';
      readonly reported: number;
      readonly asked: number;
      /** The others' share of asked runs with a complaint, and how many they are. */
      readonly othersShare: number;
      readonly others: number;
      /** Adjusted for the number of testers (Holm). */
      readonly p: number;
    }
  | {
      readonly about: 'written-late';
      readonly late: number;
      readonly logs: number;
      readonly medianH: number;
    }
  /** Runs that were written down before they began: the clock, or the date that was typed. */
  | { readonly about: 'clock'; readonly logs: number }
  | {
      /** Scores rise where the others' fall. */
      readonly about: 'other-way-round';
      readonly correlation: Correlation;
      readonly p: number;
    }
);

/** A spread below this over at least so many logs is called the same. Judgement, no source. */
export const SAME_SD = 3;
export const LEAST_LOGS = 5;
/** Later than this is late, and a question where more than half of the logs are. Judgement, no source. */
export const LATE_H = 48;
/** Written so long before the run began: clocks disagree. Judgement, no source. */
const BEFORE_H = 1;
/** Testers beside the one who is looked at, and cells of a profile, before it is compared. Judgement, no source. */
const LEAST_OTHERS = 4;
const LEAST_CELLS = 8;
/** Level after the adjustment for many testers: a question costs little. Judgement, no source. */
const ASK_BELOW = 0.1;

const sameScore = ({ tester, overall }: TesterLogs): PanelQuestionToAsk[] => {
  if (overall.length < LEAST_LOGS) return [];
  const mean = overall.reduce((a, b) => a + b, 0) / overall.length;
  const sd = Math.sqrt(
    overall.reduce((sum, score) => sum + (score - mean) ** 2, 0) / (overall.length - 1),
  );
  if (sd >= SAME_SD) return [];
  const [least, most] = [Math.min(...overall), Math.max(...overall)];
  return [{ about: 'same-score', tester, logs: overall.length, least, most }];
};

const timing = ({ tester, delaysH }: TesterLogs): PanelQuestionToAsk[] => {
  const before = delaysH.filter((hours) => hours < -BEFORE_H).length;
  const clock: PanelQuestionToAsk[] = before > 0 ? [{ about: 'clock', tester, logs: before }] : [];
  const known = delaysH.filter((hours) => hours >= -BEFORE_H);
  const late = known.filter((hours) => hours > LATE_H).length;
  const middle = median(known);
  if (known.length < LEAST_LOGS || middle === null || late * 2 <= known.length) return clock;
  return [...clock, { about: 'written-late', tester, late, logs: known.length, medianH: middle }];
};

const complaining = (logs: readonly TesterLogs[]): PanelQuestionToAsk[] => {
  const asked = logs.filter((own) => own.asked >= LEAST_LOGS);
  const foretold = foretellEach(asked.map((own) => ({ x: own.reported, n: own.asked })));
  if (!foretold || asked.length <= LEAST_OTHERS) return [];
  // Two questions a tester: none at all, or very many.
  const p = holm(foretold.flatMap(({ asFew, asMany }) => [asFew, asMany]));
  const all = asked.reduce((sum, own) => ({ x: sum.x + own.reported, n: sum.n + own.asked }), {
    x: 0,
    n: 0,
  });
  return asked.flatMap((own, at): PanelQuestionToAsk[] => {
    const [few, many] = [p[2 * at] ?? 1, p[2 * at + 1] ?? 1];
    const common = {
      tester: own.tester,
      reported: own.reported,
      asked: own.asked,
      othersShare: (all.x - own.reported) / (all.n - own.asked),
      others: asked.length - 1,
    };
    if (own.reported === 0 && few <= ASK_BELOW)
      return [{ about: 'no-complaint', ...common, p: few }];
    return many <= ASK_BELOW ? [{ about: 'many-complaints', ...common, p: many }] : [];
  });
};

const otherWayRound = (logs: readonly TesterLogs[]): PanelQuestionToAsk[] => {
  const cells = new Map<string, { sum: number; count: number }>();
  for (const { profile } of logs)
    for (const [cell, score] of profile) {
      const { sum, count } = cells.get(cell) ?? { sum: 0, count: 0 };
      cells.set(cell, { sum: sum + score, count: count + 1 });
    }
  const compared = logs.flatMap(({ tester, profile }) => {
    const own: number[] = [];
    const others: number[] = [];
    for (const [cell, score] of profile) {
      const all = cells.get(cell);
      if (!all || all.count <= LEAST_OTHERS) continue;
      own.push(score);
      others.push((all.sum - score) / (all.count - 1));
    }
    const found = own.length >= LEAST_CELLS ? correlation(own, others) : null;
    return found ? [{ tester, found }] : [];
  });
  const p = holm(compared.map(({ found }) => found.pBelowZero));
  return compared.flatMap(({ tester, found }, at): PanelQuestionToAsk[] =>
    (p[at] ?? 1) <= ASK_BELOW
      ? [{ about: 'other-way-round', tester, correlation: found, p: p[at] ?? 1 }]
      : [],
  );
};

/** The questions to ask, in the order of the testers as they were given. */
export const panelQuestions = (logs: readonly TesterLogs[]): readonly PanelQuestionToAsk[] => {
  const all = [
    ...logs.flatMap(sameScore),
    ...complaining(logs),
    ...otherWayRound(logs),
    ...logs.flatMap(timing),
  ];
  return logs.flatMap(({ tester }) => all.filter((question) => question.tester === tester));
};

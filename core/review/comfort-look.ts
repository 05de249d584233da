/** How do the rounds compare in comfort, attribute by attribute: each tester's mean, and the course over the kilometres? */
import type {
  AttributeComfort,
  ComfortChange,
  TwoSidedChange,
  TwoSidedReview,
} from '../complaints/index.ts';
import {
  comfortAttributeIds,
  twoSidedIds,
  type ComfortAttributeId,
  type TwoSidedId,
} from '../foot/index.ts';
import type { RecordId } from '../records/index.ts';
import { metres } from '../units/index.ts';
import { feltStretches, type FeltScore, type FeltStretch } from '../wear/index.ts';
import type { ProjectLog } from './project-log.ts';
import type { Review } from './review-types.ts';
import { comfortAnswers } from './round-review.ts';

/** An attribute in one round; scores 0 to 100, first wearings left out. */
export interface ComfortRound extends Pick<AttributeComfort, 'wear' | 'drift'> {
  readonly round: RecordId;
  /** Mean of each tester, lowest first. */
  readonly testers: readonly { readonly tester: RecordId; readonly mean: number }[];
  readonly course: readonly FeltStretch[];
  /** Against the round before; null where it cannot be told. */
  readonly change: ComfortChange | null;
}

export interface AttributeLook {
  readonly attribute: ComfortAttributeId;
  /** Rounds in which anybody scored it after wearing, by order. */
  readonly rounds: readonly ComfortRound[];
}

/** More dots than this on one line are not told apart. */
const MOST_TESTERS = 40;

const spread = <T>(list: readonly T[]): readonly T[] =>
  list.length <= MOST_TESTERS
    ? list
    : Array.from(
        { length: MOST_TESTERS },
        (_, at) => list[Math.round((at * (list.length - 1)) / (MOST_TESTERS - 1))] as T,
      );

const meansOf = (scores: readonly FeltScore[]): ComfortRound['testers'] => {
  const sums = new Map<string, { sum: number; n: number }>();
  for (const { tester, score } of scores) {
    const own = sums.get(tester) ?? { sum: 0, n: 0 };
    sums.set(tester, { sum: own.sum + score, n: own.n + 1 });
  }
  return spread(
    [...sums]
      .map(([tester, { sum, n }]) => ({ tester: tester as RecordId, mean: sum / n }))
      .sort((a, b) => a.mean - b.mean || (a.tester < b.tester ? -1 : 1)),
  );
};

/** Comfort after wearing of every round, in the order of the attributes; what nobody scored is absent. */
export const lookAtComfort = (log: ProjectLog, review: Review): readonly AttributeLook[] => {
  const byRound = review.rounds.map((round) => ({
    round,
    answers: comfortAnswers(log.pairs.filter((pair) => pair.round === round.id)).filter(
      ({ firstImpression }) => !firstImpression,
    ),
  }));
  return comfortAttributeIds.flatMap((attribute) => {
    const rounds = byRound.flatMap(({ round, answers }): ComfortRound[] => {
      const own = round.comfort.find((one) => one.attribute === attribute);
      if (!own?.wear) return [];
      const scores = answers.flatMap(({ tester, comfort, pairM }) => {
        const score = comfort[attribute];
        return score === undefined ? [] : [{ tester, score, pairM: metres(pairM) }];
      });
      return [
        {
          round: round.id,
          wear: own.wear,
          drift: own.drift,
          testers: meansOf(scores),
          course: feltStretches(scores),
          change: round.comfortChanges.find((one) => one.attribute === attribute) ?? null,
        },
      ];
    });
    return rounds.length > 0 ? [{ attribute, rounds }] : [];
  });
};

/** A two-sided question in one round. */
export interface TwoSidedRound extends TwoSidedReview {
  readonly round: RecordId;
  /** Against the round before; null: fewer than two testers answered in both. */
  readonly change: TwoSidedChange | null;
}

export interface TwoSidedLook {
  readonly attribute: TwoSidedId;
  /** Rounds in which anybody answered it after wearing, by order. */
  readonly rounds: readonly TwoSidedRound[];
  /** Rounds in which it was answered on the 0-100 line that was asked before: never mixed with these. */
  readonly onOldLine: readonly RecordId[];
}

/** Too little and too much of every round, in the order of the questions; what nobody answered is absent. */
export const lookAtTwoSided = ({ rounds }: Pick<Review, 'rounds'>): readonly TwoSidedLook[] =>
  twoSidedIds.flatMap((attribute): TwoSidedLook[] => {
    const own = rounds.flatMap(({ id, twoSided, twoSidedChanges }): TwoSidedRound[] => {
      const found = twoSided.find((one) => one.attribute === attribute);
      return found
        ? [
            {
              ...found,
              testers: spread(found.testers),
              round: id,
              change: twoSidedChanges.find((one) => one.attribute === attribute) ?? null,
            },
          ]
        : [];
    });
    if (own.length === 0) return [];
    const onOldLine = rounds.flatMap(({ id, comfort }) =>
      comfort.some((one) => one.attribute === attribute) ? [id] : [],
    );
    return [{ attribute, rounds: own, onOldLine }];
  });

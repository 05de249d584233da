/**
 * How comfortable is a round, by attribute, and did it change?
 *
 * The tester is the unit: each tester's mean counts once, whatever the number of runs, with Student's
 * interval. Scores of a first wearing are kept apart: after a day, 65 % of wearers had changed the
 * preference they had after a minute (Anderson J, Williams AE & Nester C, J Foot Ankle Res 2020). A
 * difference is called relevant only beyond 10 of 100, the minimal important difference of 9.3 to 10.2
 * (Mills K, Blanch P & Vicenzino B, Med Sci Sports Exerc 2010;42:1966-1971; Bishop C et al., J Sports
 * Sci 2020;38:2100-2107), and if its interval leaves zero out.
 */
import { comfortAttributeIds, type ComfortAttributeId } from '../foot/index.ts';
import type { Comfort, RecordId } from '../records/index.ts';
import {
  meanOfUnits,
  meanSlope,
  welch,
  type Interval,
  type MeanOfUnits,
} from '../statistics/index.ts';

/** Points of 100 from which a difference matters. */
export const RELEVANT_DIFFERENCE = 10;

/** A drift is told per so many metres. */
const DRIFT_M = 100_000;

export interface ComfortAnswer {
  readonly tester: RecordId;
  readonly comfort: Comfort;
  readonly firstImpression: boolean;
  /** On the pair when the run began, metres. */
  readonly pairM: number;
}

export interface ComfortScore extends MeanOfUnits {
  readonly runs: number;
}

/** How scores change over the kilometres on the pair: the one answer of every screen and file. */
export interface ComfortDrift {
  /** Points of the line per 100 km, each tester with a start and a slope of their own. */
  readonly per100Km: number;
  readonly interval: Interval;
  /** Testers with three scores or more at different kilometres. */
  readonly testers: number;
}

export interface AttributeComfort {
  readonly attribute: ComfortAttributeId;
  /** Testers' means of all but first wearings; null where there is none. */
  readonly wear: ComfortScore | null;
  readonly firstImpression: ComfortScore | null;
  /** Within testers; null below two testers with three scores each, or where they say nothing of it. */
  readonly drift: ComfortDrift | null;
}

/** One answer on a line, with the distance on the pair, metres. */
export interface ScoreAt extends Pick<ComfortAnswer, 'tester' | 'pairM'> {
  readonly score: number;
}

interface Score extends ScoreAt {
  readonly firstImpression: boolean;
}

type Scored = readonly Score[];

/** The answers sorted by attribute, in one pass: most runs answer few of them. */
const byAttribute = (answers: readonly ComfortAnswer[]): ReadonlyMap<string, Scored> => {
  const scores = new Map<string, Score[]>();
  for (const { tester, comfort, firstImpression, pairM } of answers)
    for (const attribute in comfort) {
      const score = comfort[attribute as ComfortAttributeId];
      if (score === undefined) continue;
      const one = { tester, score, firstImpression, pairM };
      const known = scores.get(attribute);
      if (known) known.push(one);
      else scores.set(attribute, [one]);
    }
  return scores;
};

/** Mean score of each tester. */
const testerMeans = (answers: Scored): Map<RecordId, number> => {
  const sums = new Map<RecordId, { sum: number; n: number }>();
  for (const { tester, score } of answers) {
    const own = sums.get(tester);
    if (own) {
      own.sum += score;
      own.n++;
    } else sums.set(tester, { sum: score, n: 1 });
  }
  return new Map([...sums].map(([tester, { sum, n }]) => [tester, sum / n]));
};

const scoreOf = (answers: Scored): ComfortScore | null => {
  const units = meanOfUnits([...testerMeans(answers).values()]);
  return units && { ...units, runs: answers.length };
};

/** How answers change over the kilometres, each tester with a start and a slope of their own; null: too few tell it. */
export const driftOf = (answers: readonly ScoreAt[]): ComfortDrift | null => {
  const found = meanSlope(
    answers.map(({ tester, pairM, score }) => ({ unit: tester, x: pairM / DRIFT_M, y: score })),
  );
  return found && { per100Km: found.mean, interval: found.interval, testers: found.units };
};

/** Comfort of one round by attribute, in the order of the attributes; those never answered are absent. */
export const comfortByAttribute = (answers: readonly ComfortAnswer[]): AttributeComfort[] => {
  const scores = byAttribute(answers);
  return comfortAttributeIds.flatMap((attribute) => {
    const all = scores.get(attribute);
    if (!all) return [];
    const worn = all.filter(({ firstImpression }) => !firstImpression);
    return [
      {
        attribute,
        wear: scoreOf(worn),
        firstImpression: scoreOf(all.filter(({ firstImpression }) => firstImpression)),
        drift: driftOf(worn),
      },
    ];
  });
};

export interface ComfortChange {
  readonly attribute: ComfortAttributeId;
  /**
   * `better`, `worse`: beyond the relevant difference, and the interval leaves zero out. `no-relevant`:
   * the whole interval lies within it. `open`: the data do not decide.
   */
  readonly word: 'better' | 'worse' | 'no-relevant' | 'open';
  /** Later less earlier, points of 100. */
  readonly difference: number;
  readonly interval: Interval | null;
  readonly p: number | null;
  /** `same-testers`: paired by tester; else two sets of testers. */
  readonly by: 'same-testers' | 'different-testers';
  readonly testers: number;
}

/** What a difference is called. @param relevant from where on it matters, in its own points */
export const changeWord = (
  difference: number,
  interval: Interval | null,
  relevant = RELEVANT_DIFFERENCE,
): ComfortChange['word'] => {
  if (interval === null) return 'open';
  const { lower, upper } = interval;
  if (difference >= relevant && lower > 0) return 'better';
  if (difference <= -relevant && upper < 0) return 'worse';
  return lower > -relevant && upper < relevant ? 'no-relevant' : 'open';
};

/**
 * What changed in wear scores from one round to a later one, by attribute. Paired where at least two
 * testers scored both (fits and feet cancel out), else two sets of testers (Welch); absent where neither
 * can be done.
 */
export const comfortChanges = (
  earlier: readonly ComfortAnswer[],
  later: readonly ComfortAnswer[],
): ComfortChange[] => {
  const scores = [earlier, later].map(byAttribute);
  return comfortAttributeIds.flatMap((attribute): ComfortChange[] => {
    const means = scores.map((of) =>
      testerMeans((of.get(attribute) ?? []).filter(({ firstImpression }) => !firstImpression)),
    ) as [Map<RecordId, number>, Map<RecordId, number>];
    const [from, to] = means;
    const pairs = [...from].flatMap(([tester, score]) => {
      const then = to.get(tester);
      return then === undefined ? [] : [then - score];
    });
    const paired = pairs.length >= 2 ? meanOfUnits(pairs) : null;
    if (paired)
      return [
        {
          attribute,
          word: changeWord(paired.mean, paired.interval),
          difference: paired.mean,
          interval: paired.interval,
          p: paired.p,
          by: 'same-testers',
          testers: paired.n,
        },
      ];
    const apart = welch([...to.values()], [...from.values()]);
    return apart
      ? [
          {
            attribute,
            word: changeWord(apart.difference, apart.interval),
            difference: apart.difference,
            interval: apart.interval,
            p: apart.p,
            by: 'different-testers',
            testers: from.size + to.size,
          },
        ]
      : [];
  });
};

/**
 * Does a round hold for what its brief promises? Item by item, each with its evidence: every limit of the
 * brief at every place it was measured, structure, complaints and pain above the allowed rate, complaints that grow with
 * kilometres, stop-use notices that stand. What is not known yet says what would settle it.
 */
import type { AllowedRate, CellName } from '../complaints/index.ts';
import { kindsOfComplaint } from '../foot/index.ts';
import { mileageAt } from '../mileage/index.ts';
import type { Brief, Limit, RecordId } from '../records/index.ts';
import type { Lifetime } from '../statistics/index.ts';
import { reviewStructure, type HoldWord, type Structure } from '../wear/index.ts';
import { observedRuns } from './closer-look.ts';
import { growthOf, type Growth } from './growth.ts';
import { ownRecords, withdrawnPairs, type LoggedPair, type ProjectLog } from './project-log.ts';
import type { RoundReview } from './review-types.ts';
import { summarisePain, type PainSummary } from './summary.ts';
import { fitLimits, type FittedLimit } from './wear-limits.ts';

export type VerdictItem =
  | ({ readonly what: 'wear'; readonly word: HoldWord } & FittedLimit)
  /** A limit of the brief that nothing was measured for. */
  | { readonly what: 'not-measured'; readonly word: 'not-known-yet'; readonly limit: Limit }
  | ({ readonly what: 'structure' } & Structure)
  | {
      readonly what: 'allowed-rate';
      readonly word: HoldWord;
      /** Proven to recur across testers above the brief's allowed rate. */
      readonly cells: readonly CellName[];
      readonly askedTesters: number;
      readonly askedRuns: number;
      readonly allowed: AllowedRate;
      /** The greatest share of runs that any zone and kind, or the answers on pain, may still have. */
      readonly upTo: AllowedRate;
      /** What the testers answered to the question after pain; null where nobody did. */
      readonly pain: PainSummary | null;
    }
  | ({ readonly what: 'complaints'; readonly word: HoldWord } & Growth)
  | { readonly what: 'stop-use'; readonly word: HoldWord; readonly pairs: readonly RecordId[] };

export interface Verdict {
  readonly round: RecordId;
  /** Does not hold if one item does not; holds if all do. */
  readonly word: HoldWord;
  readonly items: readonly VerdictItem[];
}

/** Testers who must have been asked before a share of runs counts. Judgement, no source. */
const LEAST_TESTERS = 3;

/** Each pair as a lifetime: at its first damage, or as far as it has come. */
export const lifetimesOf = (log: ProjectLog, pairs: readonly LoggedPair[]): Lifetime[] => {
  const damages = ownRecords(log.records['damage-report'], log.id);
  return pairs.map(({ id, curve, runs }) => {
    const own = damages
      .filter(({ body }) => body.pair === id)
      .map(({ body }) => {
        // The run in which it came apart is often logged only after the report: it counts to its end.
        const atMs = Date.parse(body.at);
        const during = runs.filter(({ startMs }) => startMs <= atMs).at(-1);
        return mileageAt(curve, Math.max(atMs, during?.endMs ?? atMs));
      });
    const last = runs.reduce((latest, { endMs }) => Math.max(latest, endMs), -Infinity);
    return own.length > 0
      ? { time: Math.min(...own), event: true }
      : { time: mileageAt(curve, last), event: false };
  });
};

/**
 * The brief accepts a complaint in a share of runs. One proven across testers breaks that, and so does pain that
 * their answers prove; it is kept only where the upper end of every share is at or below it. A kind that nobody reported has as upper end the one of none of
 * the testers, each a single witness, so silence of a usual panel is never enough.
 */
const allowedRateItem = (
  { complaints: { asked, cells, unreported }, pain: painAnswers }: RoundReview,
  { complaint, pain }: AllowedRate,
): VerdictItem => {
  const hurts = painAnswers?.word === 'recurs-across-testers';
  const proven = cells.filter(({ word }) => word === 'recurs-across-testers');
  const upTo = (painLike: boolean, silent: number): number =>
    cells
      .filter(({ kind }) => kindsOfComplaint[kind].painLike === painLike)
      .reduce((most, { runShare }) => Math.max(most, runShare.upper), silent);
  const most = {
    complaint: upTo(false, unreported.complaint.testersUpTo),
    pain: Math.max(upTo(true, unreported.pain.testersUpTo), painAnswers?.runShare.upper ?? 0),
  };
  return {
    what: 'allowed-rate',
    cells: proven.map(({ zone, kind }) => ({ zone, kind })),
    askedTesters: asked.testers,
    askedRuns: asked.runs,
    allowed: { complaint, pain },
    upTo: most,
    pain: painAnswers && summarisePain(painAnswers),
    word:
      proven.length > 0 || hurts
        ? 'does-not-hold'
        : asked.testers >= LEAST_TESTERS && most.complaint <= complaint && most.pain <= pain
          ? 'holds'
          : 'not-known-yet',
  };
};

/** Holds only where growth is ruled out for all that was reported, and silence at the brief's distance tells. */
const complaintsItem = (
  pairs: readonly LoggedPair[],
  { distanceM, allowedRate }: Brief,
): VerdictItem => {
  const growth = growthOf(observedRuns(pairs), distanceM, allowedRate);
  return {
    what: 'complaints',
    ...growth,
    word:
      growth.growing.length > 0
        ? 'does-not-hold'
        : growth.silenceTells && growth.open.length === 0
          ? 'holds'
          : 'not-known-yet',
  };
};

/** What a round holds, item by item, beside its wear. */
const itemsBesideWear = (log: ProjectLog, round: RoundReview): VerdictItem[] => {
  const { brief } = log.project;
  const pairs = log.pairs.filter((pair) => pair.round === round.id);
  const stopped = withdrawnPairs(log);
  const open = pairs.map(({ id }) => id).filter((id) => stopped.has(id));
  return [
    { what: 'structure', ...reviewStructure(lifetimesOf(log, pairs), brief.distanceM) },
    allowedRateItem(round, brief.allowedRate),
    complaintsItem(pairs, brief),
    { what: 'stop-use', word: open.length > 0 ? 'does-not-hold' : 'holds', pairs: open },
  ];
};

const wearItems = (fitted: readonly FittedLimit[], limits: readonly Limit[]): VerdictItem[] => [
  ...fitted.map((one): VerdictItem => ({
    what: 'wear',
    word: one.hold?.word ?? 'not-known-yet',
    ...one,
  })),
  ...limits
    .filter((limit) => !fitted.some((one) => one.limit === limit))
    .map((limit): VerdictItem => ({ what: 'not-measured', word: 'not-known-yet', limit })),
];

const wordOf = (items: readonly VerdictItem[]): HoldWord =>
  items.some((item) => item.word === 'does-not-hold')
    ? 'does-not-hold'
    : items.every((item) => item.word === 'holds')
      ? 'holds'
      : 'not-known-yet';

/** The verdict on one round. */
export const verdictOf = (log: ProjectLog, round: RoundReview): Verdict => {
  const items = [
    ...wearItems(fitLimits(log, round.id), log.project.brief.limits),
    ...itemsBesideWear(log, round),
  ];
  return { round: round.id, word: wordOf(items), items };
};

/**
 * The word of a verdict alone: what its wear cannot change is told without it.
 * @param fitted the round's limits, worked out only where they matter
 */
export const verdictWord = (
  log: ProjectLog,
  round: RoundReview,
  fitted: () => readonly FittedLimit[],
): HoldWord => {
  const beside = itemsBesideWear(log, round);
  return wordOf(beside) === 'does-not-hold'
    ? 'does-not-hold'
    : wordOf([...wearItems(fitted(), log.project.brief.limits), ...beside]);
};

/**
 * Does a measured value lie within its limits, or is the gauge too coarse to say?
 *
 * The true value is taken as normal about the reading with the gauge's standard uncertainty; the probability
 * that it lies within the limits is the conformity probability of JCGM 106:2012. Within is proved from
 * 95 % on, which is the guard band of 1.65 standard uncertainties inside each limit of ISO 14253-1:2017 (from memory) where the
 * tolerance is wide against the gauge; outside is proved as far beyond a limit. Between the two nothing is
 * decided. Where no uncertainty is known nothing is proved; it is only said on which side of
 * the limits the reading lies.
 */
import { normalCdf, normalQuantile } from '../statistics/index.ts';

/** `inside` and `outside`: read there, by a gauge whose uncertainty is not known. */
export const conformityWords = [
  'conforming',
  'undecided',
  'not-conforming',
  'inside',
  'outside',
] as const;
export type ConformityWord = (typeof conformityWords)[number];

/** Proved out, or read out by a gauge of unknown uncertainty. */
export const isOut = (word: ConformityWord): boolean =>
  word === 'not-conforming' || word === 'outside';

/** Null: no limit on that side. */
export interface Limits {
  readonly low: number | null;
  readonly high: number | null;
}

export interface Conformity {
  readonly word: ConformityWord;
  /** The value itself lies within the limits; on a limit counts as within. */
  readonly inside: boolean;
  /** Probability that the true value is within the limits; null where the uncertainty is not known. */
  readonly chance: number | null;
  /** Probability that the decision is wrong; null where nothing is decided. */
  readonly risk: number | null;
  /** Width of the guard band at each limit, in the reading's unit; null where the uncertainty is not known. */
  readonly guard: number | null;
}

/** From this conformity probability on, a decision is proved (ISO 14253-1:2017). */
export const PROVED = 0.95;

/** The slack that the decimals of a subtraction need. */
const SLACK = 1e-9;

const chanceWithin = (value: number, { low, high }: Limits, uncertainty: number): number => {
  const upper = high === null ? 1 : normalCdf((high - value) / uncertainty);
  const lower = low === null ? 0 : normalCdf((low - value) / uncertainty);
  return Math.max(0, upper - lower);
};

/**
 * Decides one value.
 * @param uncertainty standard, in the value's unit; null, or 0, which no gauge has: not known
 * @param proved probability from which on a decision is proved, above one half
 */
export const decide = (
  value: number,
  limits: Limits,
  uncertainty: number | null,
  proved = PROVED,
): Conformity => {
  const { low, high } = limits;
  const inside = (low === null || value >= low - SLACK) && (high === null || value <= high + SLACK);
  if (uncertainty === null || !(uncertainty > 0))
    return {
      word: inside ? 'inside' : 'outside',
      inside,
      chance: null,
      risk: null,
      guard: null,
    };
  const chance = chanceWithin(value, limits, uncertainty);
  const guard = normalQuantile(proved) * uncertainty;
  // Out is proved beyond a limit and its guard band. A low probability alone does not prove it: against a
  // narrow tolerance a coarse gauge gives one even at nominal.
  const beyond =
    (high !== null && value >= high + guard - SLACK) ||
    (low !== null && value <= low - guard + SLACK);
  const word = chance >= proved ? 'conforming' : beyond ? 'not-conforming' : 'undecided';
  const risk = word === 'conforming' ? 1 - chance : word === 'not-conforming' ? chance : null;
  return { word, inside, chance, risk, guard };
};

/**
 * Did a change arrive in the samples? By the interval of what was measured (`sample-difference.ts`), in the direction
 * that was asked for, against nothing and against the amount:
 *
 *   arrived       holds the amount, and is above nothing
 *   beyond        lies above the amount: more than was asked for
 *   partly        is above nothing, and lies below the amount
 *   not           lies below the amount, and is not above nothing: none of it is shown, and the whole of it is ruled out
 *   open          holds nothing and the amount: too few pairs to say
 *   not-measured  nothing alike was read, or one pair alone
 *
 * An interval of 95 % that is cut at nothing or at the amount is wrong on that side in 2.5 % (the two one-sided readings of one
 * interval: Schuirmann DJ, J Pharmacokinet Biopharm 1987;15:657-680, turns them the same way). So where nothing arrived
 * "arrived", "partly" or "beyond" is said in 2.5 % at most, and "not" or "partly" in 2.5 % where the whole did. That a change
 * without an amount is there at all is said of an interval above nothing; that it is not there cannot be ruled out
 * without an amount, unless it went the other way. Words and cuts are judgement, no source.
 */
import { practiceDimensions } from './practice.ts';
import type { SampleDifference } from './sample-difference.ts';
import type { Measure, MeasureUnit } from '../records/index.ts';
import { tQuantile, LEVEL, type Interval } from '../statistics/index.ts';

export const arrivalWords = ['arrived', 'beyond', 'partly', 'not', 'open', 'not-measured'] as const;
export type ArrivalWord = (typeof arrivalWords)[number];

/** The slack that the decimals of a subtraction need, of the amount. */
const SLACK = 1e-9;

/**
 * @param amount what is asked for, above 0, in the unit of the interval; null: not said
 * @param interval of the measured change, positive the way that is asked for; null: too few to tell
 */
export const arrivalWord = (amount: number | null, interval: Interval | null): ArrivalWord => {
  if (interval === null) return 'not-measured';
  const { lower, upper } = interval;
  if (amount === null) return lower > 0 ? 'arrived' : upper < 0 ? 'not' : 'open';
  const slack = SLACK * amount;
  const isSome = lower > slack;
  if (lower > amount + slack) return 'beyond';
  if (upper < amount - slack) return isSome ? 'partly' : 'not';
  return isSome ? 'arrived' : 'open';
};

/** Turned the way that is asked for. */
export const turned = ({ lower, upper }: Interval, sign: 1 | -1): Interval =>
  sign === 1 ? { lower, upper } : { lower: -upper, upper: -lower };

/**
 * What was asked for in the unit of the readings; a per cent is of what the round before measured.
 * @returns null where no amount was said, or the unit is none of the bench
 */
export const amountIn = (
  by: { readonly amount: number; readonly unit: string } | undefined,
  unit: MeasureUnit,
  before: number | null,
): number | null => {
  if (!by) return null;
  if (by.unit === unit) return by.amount;
  return by.unit === '%' && before !== null ? (by.amount / 100) * Math.abs(before) : null;
};

/** How much pairs scatter where nobody measured it: half of the usual tolerance (judgement: two standard deviations). */
export const usualScatter = (
  measure: Measure,
  site: string,
  before: number | null,
): number | null => {
  const usual =
    practiceDimensions.find((one) => one.measure === measure && one.site === site) ??
    practiceDimensions.find((one) => one.measure === measure && measure !== 'dimension');
  if (!usual) return null;
  const { by, value } = usual.tolerance;
  return by === 'unit' ? value / 2 : before === null ? null : (value * Math.abs(before)) / 2;
};

/**
 * What a gauge of which nothing is known errs by, as a standard uncertainty: that of one that just passes, 30 % of the
 * usual tolerance at six standard deviations (AIAG, Measurement Systems Analysis, 4th ed.); 0 where no tolerance is usual.
 */
export const usualGaugeError = (measure: Measure, site: string, before: number | null): number =>
  (0.3 * 4 * (usualScatter(measure, site, before) ?? 0)) / 6;

/** More pairs than this nobody makes for it. */
const MOST_PAIRS = 30;

/**
 * How many pairs of each round would tell nothing from the whole: with so many the interval is expected to be narrower
 * than the amount, so that it cannot hold both.
 * @param scatter standard deviation of a pair
 * @param against pairs of a round before scatter as well; a nominal does not
 * @returns null where more than thirty would be needed
 */
export const pairsToTell = (
  amount: number,
  scatter: number,
  against: SampleDifference['against'],
): number | null => {
  for (let n = 2; n <= MOST_PAIRS; n++) {
    const df = against === 'round' ? 2 * n - 2 : n - 1;
    const se = scatter * Math.sqrt((against === 'round' ? 2 : 1) / n);
    if (2 * tQuantile((1 + LEVEL) / 2, df) * se < amount) return n;
  }
  return null;
};

/**
 * Why is it still open whether a limit holds, when further checks would hardly tell more? Because the pairs differ,
 * which is said only if that is so: nearly all that is not known of a new pair is the spread between pairs, and no
 * single pair or reading makes that spread. Where one does, it is named instead: a wrong number looks just like
 * pairs that differ.
 */
import type { Limit } from '../records/index.ts';
import type { Metres } from '../units/index.ts';
import type { AnyWearSeries, RankedCheck, WearFit, WearKind } from '../wear/index.ts';

/** A check that narrows the interval by less would settle nothing. Judgement, no source. */
export const TELLING = 0.05;
/** From this share of the variance on, nearly all is spread between pairs. Judgement, no source. */
const NEARLY_ALL = 0.8;
/** Less than this share of the spread left without it: it made the spread. Judgement, no source. */
const LITTLE_LEFT = 0.25;
/** So many pairs, the farthest from the others, are thought away one by one. */
const MOST_PAIRS = 4;

export type SpreadCause =
  | { readonly by: 'pairs' }
  | { readonly by: 'pair'; readonly pair: string }
  | { readonly by: 'reading'; readonly pair: string; readonly distance: Metres };

/**
 * @param refit the same series with other checks
 * @returns null where further checks would tell more, or more than the spread between pairs is not known
 */
export const spreadCause = (
  fit: WearFit<WearKind>,
  series: AnyWearSeries,
  limit: Limit,
  goal: Metres,
  next: readonly RankedCheck[],
  refit: (series: AnyWearSeries) => WearFit<WearKind>,
): SpreadCause | null => {
  if (fit.basis !== 'checks' || fit.chanceToHold(limit, goal)?.word !== 'not-known-yet')
    return null;
  if (next.some(({ narrowing }) => narrowing >= TELLING)) return null;
  const spread = fit.betweenPairs(limit, goal);
  if (spread === null || spread.share < NEARLY_ALL) return null;
  /** The spread that is left without these checks; null where they do not make it. */
  const leftWithout = (
    drop: (check: AnyWearSeries['checks'][number]) => boolean,
  ): number | null => {
    const checks = series.checks.filter((check) => !drop(check));
    // One kind in both, which the types cannot see through the union.
    const left = refit({ ...series, checks } as AnyWearSeries);
    const rest = left.basis === 'checks' ? left.betweenPairs(limit, goal) : null;
    if (rest === null) return null;
    const decides = left.chanceToHold(limit, goal)?.word !== 'not-known-yet';
    return decides || rest.variance < LITTLE_LEFT * spread.variance ? rest.variance : null;
  };
  const middle = fit.meanChangeAt(goal).median;
  const far = (pair: string) => Math.abs(fit.changeAt(goal, { pair }).median - middle);
  const farthest = [...fit.pairs].sort((a, b) => far(b) - far(a)).slice(0, MOST_PAIRS);
  const pair = leastOf(farthest, (one) => leftWithout((check) => check.pair === one));
  if (pair === null) return { by: 'pairs' };
  const own = series.checks.filter((check) => check.pair === pair);
  // Of two readings nobody can say which one is wrong.
  const reading =
    own.length > 2 ? leastOf(own, (one) => leftWithout((check) => check === one)) : null;
  return reading ? { by: 'reading', pair, distance: reading.distance } : { by: 'pair', pair };
};

/** The candidate with the least value, of those that have one. */
const leastOf = <T>(candidates: readonly T[], valueOf: (one: T) => number | null): T | null => {
  let [best, least] = [null as T | null, Infinity];
  for (const one of candidates) {
    const value = valueOf(one);
    if (value !== null && value < least) [best, least] = [one, value];
  }
  return best;
};

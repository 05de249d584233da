/**
 * How often would so little be reported although something is there? Silence tells the more, the longer it was
 * asked for; this says how much.
 */
import { binomialUpper } from './binomial-test.ts';

/** What is meant by "something is there": so large a share of the units, two at least, have it at this rate. */
export interface Prone {
  readonly share: number;
  readonly rate: number;
}

/**
 * The chance that at most `seen` trials have it if the units are prone like that. Those with the fewest trials are
 * taken to be the prone ones, which makes silence likeliest, so the chance is never more than this.
 * @param trials of each unit that has any
 */
export const chanceOfSoFew = (
  trials: readonly number[],
  seen: number,
  { share, rate }: Prone,
): number => {
  const prone = Math.min(trials.length, Math.max(2, Math.ceil(share * trials.length)));
  const n = [...trials]
    .sort((a, b) => a - b)
    .slice(0, prone)
    .reduce((sum, own) => sum + own, 0);
  return seen >= n ? 1 : 1 - binomialUpper(seen + 1, n, rate);
};

/**
 * Which of many hypotheses may be rejected together?
 *
 * Sources: Holm S, Scand J Stat 1979;6:65-70 (any error at all); Benjamini Y & Hochberg Y, J R Stat Soc B
 * 1995;57:289-300 (false discovery rate); Wang R & Ramdas A, False discovery rate control with e-values,
 * J R Stat Soc B 2022;84:822-852 (e-BH: false discovery rate whatever the dependence); Tarone RE, Biometrics
 * 1990;46:515-522 (hypotheses that could not be rejected whatever came need not be counted; from memory).
 */

/** The indices of the values from the smallest to the greatest; equal ones in their order. */
const ascending = (values: ArrayLike<number>): number[] =>
  Array.from(values, (_, at) => at).sort((a, b) => (values[a] as number) - (values[b] as number));

/** Adjusted p-values of Benjamini and Hochberg, in the order given. */
export const benjaminiHochberg = (p: readonly number[]): number[] => {
  const adjusted = new Array<number>(p.length).fill(1);
  let least = 1;
  for (const [fromEnd, at] of ascending(p).reverse().entries()) {
    least = Math.min(least, ((p[at] as number) * p.length) / (p.length - fromEnd));
    adjusted[at] = least;
  }
  return adjusted;
};

/** Adjusted p-values of Holm, in the order given. */
export const holm = (p: readonly number[]): number[] => {
  const adjusted = new Array<number>(p.length).fill(1);
  let most = 0;
  for (const [rank, at] of ascending(p).entries()) {
    most = Math.min(1, Math.max(most, (p[at] as number) * (p.length - rank)));
    adjusted[at] = most;
  }
  return adjusted;
};

/**
 * Holm's adjusted p-values over those hypotheses that could be rejected at all: of exact tests with few events
 * many cannot. The others are 1.
 * @param p in any order
 * @param leastP the least p that each could have had, by what is conditioned on
 */
export const taroneHolm = (
  p: readonly number[],
  leastP: readonly number[],
  level: number,
): number[] => {
  let k = 1;
  const count = () => leastP.filter((least) => least <= level / k).length;
  while (count() > k) k++;
  const testable = [...p.keys()].filter((at) => (leastP[at] as number) <= level / k);
  const adjusted = holm(testable.map((at) => p[at] as number));
  const all = new Array<number>(p.length).fill(1);
  for (const [place, at] of testable.entries()) all[at] = adjusted[place] as number;
  return all;
};

/**
 * The e-BH procedure: with k the greatest number for which k of the e-values are at least m / (k · level),
 * those k are rejected. The false discovery rate is at most `level` whatever the dependence, because each
 * false rejection among k costs an e-value of m / (k · level) or more, whose mean is at most 1.
 *
 * @param logE natural logarithms of the e-values that are not known to be 0, already multiplied by their
 * prior weights where cells have such (weights fixed in advance, summing to m, keep the guarantee)
 * @param m the number of hypotheses, those with e-value 0 included
 * @returns whether each is rejected, in the order given
 */
export const eBenjaminiHochberg = (
  logE: ArrayLike<number>,
  m: number,
  level: number,
): readonly boolean[] => {
  const order = ascending(logE).reverse();
  const rejected = new Array<boolean>(logE.length).fill(false);
  let last = -1;
  for (const [at, index] of order.entries())
    if ((logE[index] as number) >= Math.log(m / ((at + 1) * level))) last = at;
  for (let at = 0; at <= last; at++) rejected[order[at] as number] = true;
  return rejected;
};

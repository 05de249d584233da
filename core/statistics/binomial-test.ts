/**
 * Exact binomial test. Two-sided: the probability of all counts that are no likelier than the one seen
 * (the rule of Fisher's exact test; Agresti A, Categorical Data Analysis, 2002, section 1.4).
 */
import { betaLower } from './beta.ts';
import { logChoose } from './gamma.ts';

export type Side = 'greater' | 'less' | 'two-sided';

/** A count is as likely as another when their probabilities differ by less than this share. */
export const TIE = 1 + 1e-7;

/** Probability of exactly x successes in n trials at rate p, 0 < p < 1. */
export const binomialPmf = (x: number, n: number, p: number): number =>
  Math.exp(logChoose(n, x) + x * Math.log(p) + (n - x) * Math.log1p(-p));

/** Probability of at least x successes in n trials at rate p. */
export const binomialUpper = (x: number, n: number, p: number): number =>
  x <= 0 ? 1 : x > n ? 0 : betaLower(p, x, n - x + 1);

/** The p-value of x successes in n trials against the rate p. */
export const binomialTest = (x: number, n: number, p = 0.5, side: Side = 'two-sided'): number => {
  if (side === 'greater') return binomialUpper(x, n, p);
  if (side === 'less') return 1 - binomialUpper(x + 1, n, p);
  const seen = binomialPmf(x, n, p) * TIE;
  let sum = 0;
  for (let k = 0; k <= n; k++) {
    const likely = binomialPmf(k, n, p);
    if (likely <= seen) sum += likely;
  }
  return Math.min(1, sum);
};

/**
 * Exact test of McNemar: of the units that changed, did as many change one way as the other? Two-sided
 * (McNemar Q, Psychometrika 1947;12:153-157; exact as in Agresti A, Categorical Data Analysis, 2002, 10.1).
 * @param first units with the feature the first time only
 * @param second the second time only
 */
export const exactMcNemar = (first: number, second: number): number =>
  first + second === 0 ? 1 : binomialTest(first, first + second);

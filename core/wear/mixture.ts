/**
 * Where do the quantiles of a weighted sum of normal distributions lie? By Newton steps on its cumulative
 * distribution, kept inside a bracket.
 *
 * Source of the fast normal distribution: Hart JF et al., Computer Approximations (1968), algorithm 5666, as
 * given by West G, Wilmott Magazine 2005 May:70-76; 14 decimals, and 8 digits of the far tails.
 */
import { normalQuantile } from '../statistics/index.ts';

/** Normal components; the weights sum to one. */
export interface Mixture {
  readonly weights: ArrayLike<number>;
  readonly means: ArrayLike<number>;
  readonly sds: ArrayLike<number>;
}

/** Where the continued fraction takes over from the ratio of polynomials. */
const FAR = 7.07106781186547;

/** Upper tail of the standard normal at z >= 0, given exp(-z²/2). */
const upperTail = (z: number, e: number): number => {
  if (z > 37) return 0;
  if (z >= FAR)
    return e / (z + 1 / (z + 2 / (z + 3 / (z + 4 / (z + 0.65))))) / Math.sqrt(2 * Math.PI);
  const over =
    (((((3.52624965998911e-2 * z + 0.700383064443688) * z + 6.37396220353165) * z +
      33.912866078383) *
      z +
      112.079291497871) *
      z +
      221.213596169931) *
      z +
    220.206867912376;
  const under =
    ((((((8.83883476483184e-2 * z + 1.75566716318264) * z + 16.064177579207) * z +
      86.7807322029461) *
      z +
      296.564248779674) *
      z +
      637.333633378831) *
      z +
      793.826512519948) *
      z +
    440.413735824752;
  return (e * over) / under;
};

/** Probability that a standard normal variable is at most z; fast. */
export const fastNormalCdf = (z: number): number => {
  const tail = upperTail(Math.abs(z), Math.exp((-z * z) / 2));
  return z > 0 ? 1 - tail : tail;
};

/** Probability that the mixture's variable is at most `value`. */
export const mixtureCdf = ({ weights, means, sds }: Mixture, value: number): number => {
  let sum = 0;
  for (let at = 0; at < weights.length; at++) {
    const [sd, away] = [sds[at] as number, value - (means[at] as number)];
    const below = sd > 0 ? fastNormalCdf(away / sd) : away >= 0 ? 1 : 0;
    sum += (weights[at] as number) * below;
  }
  return sum;
};

const mixtureDensity = ({ weights, means, sds }: Mixture, value: number): number => {
  let sum = 0;
  for (let at = 0; at < weights.length; at++) {
    const sd = sds[at] as number;
    if (sd === 0) continue;
    const z = (value - (means[at] as number)) / sd;
    sum += ((weights[at] as number) * Math.exp((-z * z) / 2)) / sd;
  }
  return sum / Math.sqrt(2 * Math.PI);
};

/** Mean and variance of the mixture. */
export const mixtureMoments = ({ weights, means, sds }: Mixture) => {
  let mean = 0;
  for (let at = 0; at < weights.length; at++)
    mean += (weights[at] as number) * (means[at] as number);
  let variance = 0;
  for (let at = 0; at < weights.length; at++)
    variance +=
      (weights[at] as number) * ((sds[at] as number) ** 2 + ((means[at] as number) - mean) ** 2);
  return { mean, variance };
};

/** The quantile of the mixture; p from 0 to 1, exclusive. */
export const mixtureQuantile = (mixture: Mixture, p: number): number => {
  const { mean, variance } = mixtureMoments(mixture);
  const sd = Math.sqrt(variance);
  if (sd === 0) return mean;
  // Cantelli's inequality: no more than 1 / (1 + k²) lies beyond k standard deviations on one side.
  const reach = sd * Math.sqrt(1 / Math.min(p, 1 - p));
  let [low, high] = [mean - reach, mean + reach];
  let at = mean + sd * normalQuantile(p);
  for (let step = 0; step < 100; step++) {
    const miss = mixtureCdf(mixture, at) - p;
    if (miss > 0) high = at;
    else low = at;
    if (Math.abs(miss) < 1e-10 || high - low < 1e-12 * sd) break;
    const next = at - miss / mixtureDensity(mixture, at);
    at = next > low && next < high ? next : (low + high) / 2;
  }
  return at;
};

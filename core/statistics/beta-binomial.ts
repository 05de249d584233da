/**
 * Successes of units whose own rates differ: the beta-binomial distribution (Skellam JG, J R Stat Soc B
 * 1948;10:257-261), and what it foretells of one more unit from the others.
 */
import { logChoose, logGamma } from './gamma.ts';

const isPlain = (mean: number, alike: number): boolean => alike <= 0 || mean <= 0 || mean >= 1;

/** Logarithm of the probability of x of n; −∞ where it cannot be. */
const logPmf = (x: number, n: number, mean: number, alike: number): number => {
  if (mean <= 0) return x === 0 ? 0 : -Infinity;
  if (mean >= 1) return x === n ? 0 : -Infinity;
  if (isPlain(mean, alike))
    return logChoose(n, x) + x * Math.log(mean) + (n - x) * Math.log1p(-mean);
  const size = 1 / alike - 1;
  const [a, b] = [mean * size, (1 - mean) * size];
  return (
    logChoose(n, x) +
    logGamma(size) -
    logGamma(a) -
    logGamma(b) +
    logGamma(x + a) +
    logGamma(n - x + b) -
    logGamma(n + size)
  );
};

/**
 * Probabilities of 0 … n successes of one unit whose own rate is drawn from a beta distribution.
 * @param mean of the rates, 0 to 1
 * @param alike correlation of two trials of one unit, 0 (all units the same rate) to below 1
 */
export const betaBinomialAll = (n: number, mean: number, alike: number): Float64Array =>
  Float64Array.from({ length: n + 1 }, (_, x) => Math.exp(logPmf(x, n, mean, alike)));

/** Successes of a unit in its trials. */
export interface Successes {
  readonly x: number;
  readonly n: number;
}

/** Means at the middle of equal shares of Jeffreys' prior, Beta(½, ½). */
const MEANS = Array.from({ length: 60 }, (_, at) => Math.sin((Math.PI * (at + 0.5)) / 120) ** 2);
/** How alike two trials of a unit may be; each equally likely beforehand. Judgement, no source. */
const ALIKES = [0, 0.02, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.6, 0.75, 0.9];
const GRID = MEANS.flatMap((mean) => ALIKES.map((alike) => ({ mean, alike })));
/** A point of the grid with less of the probability than this changes nothing that is shown. */
const SLIGHT = 1e-6;

/** How a unit's count lies in what the others foretell. */
export interface Foretold {
  /** Probability of so many successes or fewer, and of so many or more. */
  readonly asFew: number;
  readonly asMany: number;
}

/**
 * For each unit: how surprising is its count, if it is one like the others? Posterior predictive tails from the
 * other units, with mean and likeness of the trials integrated out on a grid, so few others foretell little.
 * @param units all of them, n ≥ 1
 * @returns in their order; null below two units
 */
export const foretellEach = (units: readonly Successes[]): readonly Foretold[] | null => {
  if (units.length < 2) return null;
  const name = ({ x, n }: Successes) => `${x}/${n}`;
  const likelihoods = new Map<string, Float64Array>();
  const sum = new Float64Array(GRID.length);
  for (const unit of units) {
    const key = name(unit);
    let own = likelihoods.get(key);
    if (!own) {
      own = Float64Array.from(GRID, ({ mean, alike }) => logPmf(unit.x, unit.n, mean, alike));
      likelihoods.set(key, own);
    }
    for (let at = 0; at < sum.length; at++) sum[at] = (sum[at] as number) + (own[at] as number);
  }
  const answers = new Map<string, Foretold>();
  // Units with the same number of trials are foretold from the same tables.
  const tables = new Map<number, Map<number, Float64Array>>();
  const tableOf = (n: number, at: number): Float64Array => {
    const own = tables.get(n) ?? new Map<number, Float64Array>();
    tables.set(n, own);
    const { mean, alike } = GRID[at] as (typeof GRID)[number];
    const table = own.get(at) ?? betaBinomialAll(n, mean, alike);
    own.set(at, table);
    return table;
  };
  return units.map((unit) => {
    const key = name(unit);
    const known = answers.get(key);
    if (known) return known;
    const own = likelihoods.get(key) as Float64Array;
    const logs = sum.map((all, at) => all - (own[at] as number));
    const top = logs.reduce((most, log) => Math.max(most, log), -Infinity);
    const weights = logs.map((log) => Math.exp(log - top));
    const whole = weights.reduce((all, weight) => all + weight, 0);
    let [asFew, asMany] = [0, 0];
    weights.forEach((of, at) => {
      const weight = of / whole;
      if (weight < SLIGHT) return;
      tableOf(unit.n, at).forEach((p, x) => {
        if (x <= unit.x) asFew += weight * p;
        if (x >= unit.x) asMany += weight * p;
      });
    });
    const answer = { asFew: Math.min(1, asFew), asMany: Math.min(1, asMany) };
    answers.set(key, answer);
    return answer;
  });
};

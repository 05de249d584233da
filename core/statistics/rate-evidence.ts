/**
 * How strong is the evidence that a unit, or at least two units, do something more often than a given
 * rate, when one looks as often as one likes?
 *
 * An **e-value** is a number that is not negative and whose mean is at most 1 if the claim is false: a bet
 * at fair odds against "the rate is at most `allowed`", so 20 is as rare as 1 in 20 (Ville J, Étude critique
 * de la notion de collectif, 1939). An **e-process** keeps that at every stopping time (Ramdas A, Grünwald
 * P, Vovk V & Shafer G, Stat Sci 2023;38:576-601).
 *
 * **One unit.** For a rate q above `allowed` p, the likelihood ratio L(q) = (q/p)^x ((1−q)/(1−p))^(n−x)
 * after x successes in n trials is a test supermartingale: one more trial multiplies it by q/p or
 * (1−q)/(1−p), whose mean is at most 1 at any rate up to p, whatever happened before. A mixture of such
 * bets with weights that sum to 1 is one as well.
 *
 * **At least two units.** The claim is false if all units but at most one, j, keep to p; j may do anything.
 * For each j, F(−j) = Σ weight Π over i ≠ j of (1 − w + w L(q, x_i, n_i)) is a test supermartingale then:
 * each trial of i ≠ j touches one factor, an affine function of a supermartingale, and trials of j touch
 * none. It bets that a share w of the units has the rate q, and mixes over pairs (w, q). The least F(−j)
 * over all j is at most that of the j in question, so it is an e-process for the whole composite claim:
 * the partial conjunction of two (Benjamini Y & Heller R, Biometrics 2008;64:1215-1222; products and
 * averages of e-values: Vovk V & Wang R, E-values: calibration, combination and applications, Ann Stat
 * 2021;49:1736-1754).
 *
 * What it needs: the chance of a success in each trial, given all that came before in any unit, is at most
 * `allowed` if the claim is false. Trials at the same instant must be independent between units. It depends
 * on the counts only, so trials that are told late or in another order change nothing, and a unit that
 * joins later comes in with the factor 1.
 *
 * The weights were chosen by simulation (`tests/calibrate`) for panels of about eight units with a dozen
 * trials each; that choice is about power alone. Validity holds for any.
 */

/** A bet: a share `w` of units at the rate that lies the share `t` of the way from `allowed` to 1. */
interface Bet {
  readonly weight: number;
  readonly w: number;
  readonly t: number;
}

/** Two bets carry the usual panels; the small ones stand for rare, low or very few cases in large ones. */
export const BETS: readonly Bet[] = [
  { weight: 0.745, w: 0.304, t: 0.317 },
  { weight: 0.245, w: 0.229, t: 0.397 },
  { weight: 0.004, w: 0.3, t: 0.1 },
  { weight: 0.002, w: 0.03, t: 0.08 },
  { weight: 0.002, w: 0.02, t: 0.45 },
  { weight: 0.002, w: 0.003, t: 0.45 },
];

/** For one unit alone: the weight of each way from `allowed` to 1. */
const UNIT_BETS: readonly { readonly weight: number; readonly t: number }[] = [
  { weight: 0.1, t: 0.1 },
  { weight: 0.35, t: 0.35 },
  { weight: 0.55, t: 0.65 },
];

/** A rate of 0 is read as this one, so that one success is strong evidence and not infinite. */
const LEAST_RATE = 1e-6;

/** The logarithms of a success's and a failure's likelihood ratio; null where nothing can exceed the rate. */
const logRatios = (allowed: number, t: number): readonly [number, number] => {
  const p = Math.max(allowed, LEAST_RATE);
  const q = p + t * (1 - p);
  return [Math.log(q / p), Math.log1p(-t)];
};

/** ln Σ exp, without overflow. */
const logSum = (terms: readonly number[]): number => {
  const most = Math.max(...terms);
  if (most === -Infinity) return -Infinity;
  return most + Math.log(terms.reduce((sum, term) => sum + Math.exp(term - most), 0));
};

/**
 * ln of the e-value that one unit's rate is above `allowed`.
 * @param x successes in n trials
 * @param allowed 0 to 1
 */
export const logUnitEvidence = (x: number, n: number, allowed: number): number =>
  allowed >= 1
    ? 0
    : logSum(
        UNIT_BETS.map(({ weight, t }) => {
          const [up, down] = logRatios(allowed, t);
          return Math.log(weight) + x * up + (n - x) * down;
        }),
      );

/** ln (1 − w + w exp(logL)), exact for great and small. */
const logFactor = (w: number, logL: number): number =>
  logL > 30
    ? Math.log(w) + logL + Math.log1p(((1 - w) / w) * Math.exp(-logL))
    : Math.log1p(w * Math.expm1(logL));

/** Units with at least one success: who, how often, in how many trials. */
export interface UnitCount {
  readonly x: number;
  readonly n: number;
}

/**
 * A judge of many features over the same units: what the units without a success bring in is worked out
 * once, so that a feature costs in proportion to the units that have it.
 * @param trials of each unit
 * @param allowed the rate per trial that is still accepted, 0 to 1
 */
export const evidenceOverUnits = (trials: readonly number[], allowed: number) => {
  const bets = BETS.map(({ weight, w, t }) => {
    const [up, down] = logRatios(allowed, t);
    return { logWeight: Math.log(weight), w, up, down };
  });
  const asked = trials.filter((n) => n > 0).sort((a, b) => a - b);
  const silent = bets.map(({ w, down }) =>
    asked.reduce((sum, n) => sum + logFactor(w, n * down), 0),
  );

  /** The fewest trials of a unit without a success: it takes away least. */
  const fewestSilent = (reporters: readonly UnitCount[]): number | null => {
    if (reporters.length >= asked.length) return null;
    const taken = new Map<number, number>();
    for (const { n } of reporters) taken.set(n, (taken.get(n) ?? 0) + 1);
    for (const n of asked) {
      const left = taken.get(n) ?? 0;
      if (left === 0) return n;
      taken.set(n, left - 1);
    }
    return null;
  };

  /**
   * ln of the e-value that at least two units are above the rate.
   * @param reporters every unit with a success; each is one of `trials`
   */
  return (reporters: readonly UnitCount[]): number => {
    if (allowed >= 1 || asked.length < 2) return 0;
    const counts = [...reporters];
    const fewest = fewestSilent(reporters);
    if (fewest !== null) counts.push({ x: 0, n: fewest });
    const factors = new Float64Array(counts.length * bets.length);
    const totals = bets.map(({ logWeight, w, up, down }, bet) => {
      let total = logWeight + (silent[bet] as number);
      for (const [at, { x, n }] of counts.entries()) {
        const factor = logFactor(w, x * up + (n - x) * down);
        factors[at * bets.length + bet] = factor;
        if (x > 0) total += factor - logFactor(w, n * down);
      }
      return total;
    });
    let least = Infinity;
    const terms = new Array<number>(bets.length).fill(0);
    for (let at = 0; at < counts.length; at++) {
      for (let bet = 0; bet < bets.length; bet++)
        terms[bet] = (totals[bet] as number) - (factors[at * bets.length + bet] as number);
      least = Math.min(least, logSum(terms));
    }
    return least;
  };
};

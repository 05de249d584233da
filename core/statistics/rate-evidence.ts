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
 * For each j, bet on the others: F(−j) is a mixture, with weights that sum to 1, of
 * - the mean over all sets of k of the other units of the product of their L(q): k of them have the rate q
 *   (products and U-statistics of e-values: Vovk V & Wang R, E-values: calibration, combination and
 *   applications, Ann Stat 2021;49:1736-1754);
 * - Π (1 − w + w L(q)) over the other units: a share w of them has the rate q.
 * Each is a test supermartingale when all units but j keep to p: a trial of i ≠ j touches one factor of each
 * product, an affine function of a supermartingale, and a trial of j touches none. Whatever F(−j) is for
 * the others, the least of them is at most that of the j in question, so it is an e-process for the whole
 * composite claim: the partial conjunction of two (Benjamini Y & Heller R, Biometrics 2008;64:1215-1222).
 *
 * What it needs: the chance of a success in each trial, given all that came before in any unit, is at most
 * `allowed` if the claim is false. Trials at the same instant must be independent between units. The value
 * depends on the counts only, so trials that are told late or in another order change nothing. The sets of
 * k are drawn from the panel, which is to be known beforehand: units without a trial belong to it with the
 * factor 1. A panel that grows later counts as if it had been so from the start; at worst each size it has
 * had is a test of its own (Ville's bound adds up), and `tests/calibrate` measures what that costs.
 *
 * The weights were chosen by simulation (`tests/calibrate`) for panels of about eight units with a dozen
 * trials each; that choice is about power alone. Validity holds for any.
 */

/** A bet on the rate that lies the share `t` of the way from `allowed` to 1. */
type Bet = { readonly weight: number; readonly t: number } & (
  { readonly k: 1 | 2 | 3 } | { readonly w: number }
);

/** One, two or three others carry the usual panels; the rest stands for low rates and large panels. */
export const BETS: readonly Bet[] = [
  { weight: 0.15, k: 1, t: 0.57 },
  { weight: 0.29, k: 2, t: 0.32 },
  { weight: 0.46, k: 3, t: 0.32 },
  { weight: 0.02, k: 3, t: 0.1 },
  { weight: 0.05, w: 0.3, t: 0.32 },
  { weight: 0.01, w: 0.5, t: 0.1 },
  { weight: 0.01, w: 0.05, t: 0.2 },
  { weight: 0.01, w: 0.01, t: 0.45 },
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

/** The greatest e-value that is written out; JSON has no infinity. */
const GREATEST = 1e300;

/** An e-value from its logarithm. */
export const eValueOf = (logE: number): number => Math.min(GREATEST, Math.exp(logE));

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

/** One unit: how many successes, in how many trials, 1 or more. */
export interface UnitCount {
  readonly x: number;
  readonly n: number;
}

/** Units with the same counts. */
interface Group extends UnitCount {
  count: number;
}

/** All units of the panel by their counts, from the trials of all and the counts of those with a success. */
const groupsOf = (panel: ReadonlyMap<number, number>, reporters: readonly UnitCount[]): Group[] => {
  const silent = new Map(panel);
  const groups = new Map<number, Group>();
  for (const { x, n } of reporters) {
    silent.set(n, (silent.get(n) ?? 0) - 1);
    const key = n * 2 ** 24 + x;
    const group = groups.get(key);
    if (group) group.count++;
    else groups.set(key, { x, n, count: 1 });
  }
  for (const [n, count] of silent) if (count > 0) groups.set(n * 2 ** 24, { x: 0, n, count });
  return [...groups.values()];
};

/** The groups that no other has more successes and no more failures than: one of them takes away most. */
const strongest = (groups: readonly Group[]): Group[] => {
  let fewest = Infinity;
  return [...groups]
    .sort((a, b) => b.x - a.x || a.n - b.n)
    .filter(({ x, n }) => {
      const stands = n - x < fewest;
      fewest = Math.min(fewest, n - x);
      return stands;
    });
};

/** The L of groups, divided by the greatest of those with a unit, so that none is out of range. */
interface Scaled {
  readonly top: number;
  readonly l: Float64Array;
}

const scale = (logL: Float64Array, counts: Float64Array): Scaled => {
  let top = -Infinity;
  for (let at = 0; at < logL.length; at++)
    if ((counts[at] as number) > 0 && (logL[at] as number) > top) top = logL[at] as number;
  return { top, l: logL.map((one) => Math.exp(one - top)) };
};

/**
 * ln of the mean over all sets of k units of the product of their L, by group: elementary symmetric
 * functions by adding one group after the other.
 */
const logMeanProduct = ({ top, l: scaled }: Scaled, counts: Float64Array, k: number): number => {
  let units = 0;
  let [one, two, three] = [0, 0, 0];
  for (let at = 0; at < scaled.length; at++) {
    const m = counts[at] as number;
    if (m === 0) continue;
    units += m;
    const l = scaled[at] as number;
    const a = m * l;
    const b = ((m - 1) / 2) * l * a;
    const c = ((m - 2) / 3) * l * b;
    three += two * a + one * b + c;
    two += one * a + b;
    one += a;
  }
  const size = Math.min(k, units);
  if (size === 0) return 0;
  const [sum, sets] =
    size === 1
      ? [one, units]
      : size === 2
        ? [two, (units * (units - 1)) / 2]
        : [three, (units * (units - 1) * (units - 2)) / 6];
  return size * top + Math.log(sum / sets);
};

/**
 * A judge of many features over the same units.
 * @param trials of each unit of the panel; 0 where it has had none yet
 * @param allowed the rate per trial that is still accepted, 0 to 1
 */
export const evidenceOverUnits = (trials: readonly number[], allowed: number) => {
  const bets = BETS.map((bet) => {
    const [up, down] = logRatios(allowed, bet.t);
    return { bet, logWeight: Math.log(bet.weight), up, down };
  });
  const panel = new Map<number, number>();
  for (const n of trials) panel.set(n, (panel.get(n) ?? 0) + 1);

  /**
   * ln of the e-value that at least two units are above the rate.
   * @param reporters every unit with a success; each is one of `trials`
   */
  return (reporters: readonly UnitCount[]): number => {
    if (allowed >= 1 || trials.length < 2) return 0;
    const groups = groupsOf(panel, reporters);
    const counts = Float64Array.from(groups, ({ count }) => count);
    const each = bets.map((one) => {
      const logL = Float64Array.from(groups, ({ x, n }) => x * one.up + (n - x) * one.down);
      const { bet } = one;
      if ('k' in bet) return { ...one, bet, logL, scaled: scale(logL, counts) };
      const logF = logL.map((l) => logFactor(bet.w, l));
      const total = logF.reduce((sum, f, at) => sum + f * (counts[at] as number), 0);
      return { ...one, bet, logF, total };
    });
    let least = Infinity;
    for (const left of strongest(groups)) {
      const at = groups.indexOf(left);
      counts[at] = left.count - 1;
      const terms = each.map((one) => {
        if (!('scaled' in one)) return one.logWeight + one.total - (one.logF[at] as number);
        const { logL, logWeight, bet } = one;
        // Without the only unit at the top, the others must be scaled by a top of their own.
        const isTop = counts[at] === 0 && logL[at] === one.scaled.top;
        return logWeight + logMeanProduct(isTop ? scale(logL, counts) : one.scaled, counts, bet.k);
      });
      counts[at] = left.count;
      least = Math.min(least, logSum(terms));
    }
    return least;
  };
};

/**
 * With the form and the spreads held fixed, what do the checks say about starts and changes? All is normal
 * then, and closed:
 *
 *   y_ij = a_i + w_i g_ij + e_ij,  a_i ~ N(mu, start²),  w_i ~ N(theta, pair²),  e_ij ~ N(0, error²)
 *
 * Sources: Lindley DV & Smith AFM, Bayes estimates for the linear model, J R Stat Soc B 1972;34:1-41; the
 * matrix identity, Woodbury MA, Princeton Stat Res Group Memo 42 (1950). Written for 2 by 2 matrices, so
 * that a pair enters by six sums and a spread may be zero.
 */

/** Standard deviations: of starts, of changes at 500 km between pairs, and of one reading. */
export interface Spreads {
  readonly start: number;
  readonly pair: number;
  readonly error: number;
}

/** Normal prior of the mean start and of the mean change; a precision is one over a variance. */
export interface MeanPrior {
  readonly startMean: number;
  readonly startPrecision: number;
  readonly changeMean: number;
  readonly changePrecision: number;
}

/** A start and a change, jointly normal. */
export interface StartAndChange {
  readonly start: number;
  readonly change: number;
  readonly startVariance: number;
  readonly covariance: number;
  readonly changeVariance: number;
}

/** Six sums a pair, one after the other: n, Σg, Σg², Σy, Σgy, Σy². */
export type Sums = Float64Array;
export const SUMS = 6;

/** What one pair adds: information about (mu, theta), and what is needed to come back to the pair. */
export interface PairTerms {
  readonly w11: number;
  readonly w12: number;
  readonly w22: number;
  readonly v1: number;
  readonly v2: number;
  /**
   * The density of the pair's readings, less the terms with (mu, theta), is exp(-square / 2) over the root
   * of det and of 2 pi error² to the n: its logarithm is taken once for all pairs.
   */
  readonly det: number;
  readonly square: number;
}

const LOG_2PI = Math.log(2 * Math.PI);

/** The terms of pair number `at`. */
export const pairTerms = (sums: Sums, at: number, spreads: Spreads): PairTerms => {
  const from = at * SUMS;
  const n = sums[from] as number;
  const variance = spreads.error * spreads.error;
  const a11 = n / variance;
  const a12 = (sums[from + 1] as number) / variance;
  const a22 = (sums[from + 2] as number) / variance;
  const q1 = (sums[from + 3] as number) / variance;
  const q2 = (sums[from + 4] as number) / variance;
  const d1 = spreads.start * spreads.start;
  const d2 = spreads.pair * spreads.pair;
  const b11 = 1 + a11 * d1;
  const b22 = 1 + a22 * d2;
  const det = b11 * b22 - a12 * a12 * d1 * d2;
  const v1 = (b22 * q1 - a12 * d2 * q2) / det;
  const v2 = (b11 * q2 - a12 * d1 * q1) / det;
  const square = (sums[from + 5] as number) / variance - d1 * q1 * v1 - d2 * q2 * v2;
  return {
    w11: (b22 * a11 - a12 * a12 * d2) / det,
    w12: a12 / det,
    w22: (b11 * a22 - a12 * a12 * d1) / det,
    v1,
    v2,
    det,
    square,
  };
};

/** The mean start and mean change after the checks, with the logarithm of the checks' probability. */
export interface Conditional extends StartAndChange {
  readonly logLikelihood: number;
}

/** All pairs' readings on the means, and how probable they are. */
export const conditional = (sums: Sums, spreads: Spreads, prior: MeanPrior): Conditional => {
  const { startMean, startPrecision, changeMean, changePrecision } = prior;
  let p11 = startPrecision;
  let p12 = 0;
  let p22 = changePrecision;
  let r1 = startPrecision * startMean;
  let r2 = changePrecision * changeMean;
  let log =
    0.5 * Math.log(startPrecision * changePrecision) -
    0.5 * (startPrecision * startMean ** 2 + changePrecision * changeMean ** 2);
  let [n, squares, dets] = [0, 0, 1];
  for (let at = 0; at * SUMS < sums.length; at++) {
    const terms = pairTerms(sums, at, spreads);
    n += sums[at * SUMS] as number;
    squares += terms.square;
    dets *= terms.det;
    if (dets > 1e200) {
      log -= 0.5 * Math.log(dets);
      dets = 1;
    }
    p11 += terms.w11;
    p12 += terms.w12;
    p22 += terms.w22;
    r1 += terms.v1;
    r2 += terms.v2;
  }
  log -= 0.5 * (n * (LOG_2PI + 2 * Math.log(spreads.error)) + Math.log(dets) + squares);
  const det = p11 * p22 - p12 * p12;
  const start = (p22 * r1 - p12 * r2) / det;
  const change = (p11 * r2 - p12 * r1) / det;
  return {
    start,
    change,
    startVariance: p22 / det,
    covariance: -p12 / det,
    changeVariance: p11 / det,
    logLikelihood: log - 0.5 * Math.log(det) + 0.5 * (start * r1 + change * r2),
  };
};

/**
 * How a pair's own start and change hang on the means: own = k + H (mu, theta) + noise of covariance K,
 * with D the diagonal of start² and pair²: k = D v, H = 1 - D W, K = D - D W D.
 */
const ownGivenMeans = (sums: Sums, at: number, spreads: Spreads) => {
  const { w11, w12, w22, v1, v2 } = pairTerms(sums, at, spreads);
  const [d1, d2] = [spreads.start ** 2, spreads.pair ** 2];
  const [h11, h22] = [1 - d1 * w11, 1 - d2 * w22];
  return {
    h11,
    h12: -d1 * w12,
    h21: -d2 * w12,
    h22,
    k1: d1 * v1,
    k2: d2 * v2,
    k11: d1 * h11,
    k12: -d1 * w12 * d2,
    k22: d2 * h22,
  };
};

/** Start and change of pair number `at`, its own readings and those of the others considered. */
export const ofPair = (
  sums: Sums,
  at: number,
  spreads: Spreads,
  means: StartAndChange,
): StartAndChange => {
  const { h11, h12, h21, h22, k1, k2, k11, k12, k22 } = ownGivenMeans(sums, at, spreads);
  const [c11, c12, c22] = [means.startVariance, means.covariance, means.changeVariance];
  return {
    start: k1 + h11 * means.start + h12 * means.change,
    change: k2 + h21 * means.start + h22 * means.change,
    startVariance: k11 + h11 * h11 * c11 + 2 * h11 * h12 * c12 + h12 * h12 * c22,
    covariance: k12 + h11 * h21 * c11 + (h11 * h22 + h12 * h21) * c12 + h12 * h22 * c22,
    changeVariance: k22 + h21 * h21 * c11 + 2 * h21 * h22 * c12 + h22 * h22 * c22,
  };
};

/** Start and change of a pair that was never measured. */
export const ofNewPair = (spreads: Spreads, means: StartAndChange): StartAndChange => ({
  ...means,
  startVariance: means.startVariance + spreads.start ** 2,
  changeVariance: means.changeVariance + spreads.pair ** 2,
});

/**
 * Covariance of the values of two different pairs at the shares g and h: they hang together by the means
 * alone. A pair without a number was never measured.
 */
export const covarianceOfPairs = (
  sums: Sums,
  [first, second]: readonly [number | undefined, number | undefined],
  spreads: Spreads,
  means: StartAndChange,
  [g, h]: readonly [number, number],
): number => {
  /** How a value hangs on the mean start and on the mean change. */
  const onMeans = (at: number | undefined, share: number): readonly [number, number] => {
    if (at === undefined) return [1, share];
    const { h11, h12, h21, h22 } = ownGivenMeans(sums, at, spreads);
    return [h11 + share * h21, h12 + share * h22];
  };
  const [start, change] = onMeans(first, g);
  const [otherStart, otherChange] = onMeans(second, h);
  return (
    start * otherStart * means.startVariance +
    (start * otherChange + change * otherStart) * means.covariance +
    change * otherChange * means.changeVariance
  );
};

/** Covariance of the values of one pair at the shares g and h. */
export const covarianceWithin = (own: StartAndChange, g: number, h: number): number =>
  own.startVariance + (g + h) * own.covariance + g * h * own.changeVariance;

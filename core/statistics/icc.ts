/**
 * How well do judges agree on scores? The six intraclass correlations of Shrout PE & Fleiss JL, Psychol
 * Bull 1979;86:420-428, with their intervals; those of (2,1) and (2,k) by McGraw KO & Wong SP, Psychol
 * Methods 1996;1:30-46 (Satterthwaite).
 *
 * An estimate of analysis of variance may be negative, the share of spread that it estimates may not. Two things
 * of the published intervals then fail: their degrees of freedom, which are computed from the estimate, become
 * meaningless or infinite, and the step from one judge to the mean of k changes its sign. So for (2,1) and (2,k) the
 * degrees of freedom are those of the estimate or of 0, whichever is greater, and both ends are at least 0, which
 * leaves every interval of a positive estimate with a positive lower end as published. That this covers is shown by
 * simulation (tests/calibrate/agreement.ts); no source was found for the choice.
 */
import { fQuantile } from './beta.ts';
import { LEVEL, type Interval } from './interval.ts';

/** All three from −1 to 1. */
export interface Icc extends Interval {
  readonly icc: number;
}

/** A correlation is not below this, whatever the estimate of a mean of judges says. */
const LEAST = -1;
/** What doubles leave of a difference, relative to what is subtracted; with room. */
const ROUNDING = 1e-12;

export interface IntraclassCorrelations {
  /** Each target by other judges; one judge, and the mean of k. */
  readonly single1: Icc;
  readonly mean1: Icc;
  /** The same judges, drawn from many: absolute agreement. */
  readonly single2: Icc;
  readonly mean2: Icc;
  /** The same judges, who are all there are: consistency. */
  readonly single3: Icc;
  readonly mean3: Icc;
  readonly meanSquares: {
    readonly between: number;
    readonly within: number;
    readonly judges: number;
    readonly error: number;
  };
}

/**
 * @param scores a row a target, a column a judge, none missing
 * @returns null below two targets or two judges, or where no score differs from another
 */
export const intraclassCorrelations = (
  scores: readonly (readonly number[])[],
  level = LEVEL,
): IntraclassCorrelations | null => {
  const n = scores.length;
  const k = scores[0]?.length ?? 0;
  if (n < 2 || k < 2) return null;
  const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);
  const rows = scores.map((row) => sum(row) / k);
  const columns = Array.from(
    { length: k },
    (_, j) => sum(scores.map((row) => row[j] as number)) / n,
  );
  const mean = sum(rows) / n;
  const squares = (list: readonly number[], from: number) => sum(list.map((v) => (v - from) ** 2));
  const total = squares(scores.flat(), mean);
  // Sums of squares below this are what rounding leaves where nothing differs.
  const noise = n * k * (ROUNDING * Math.max(...scores.flat().map(Math.abs))) ** 2;
  if (total <= noise) return null;
  const cleared = (squared: number) => (squared > noise + ROUNDING * total ? squared : 0);
  const ssBetween = cleared(k * squares(rows, mean));
  const ssJudges = cleared(n * squares(columns, mean));
  const between = ssBetween / (n - 1);
  const within = cleared(total - ssBetween) / (n * (k - 1));
  const judges = ssJudges / (k - 1);
  const error = cleared(total - ssBetween - ssJudges) / ((n - 1) * (k - 1));
  const p = (1 + level) / 2;

  const single = (f: number) => (f === Infinity ? 1 : (f - 1) / (f + k - 1));
  const meanOf = (f: number) => Math.max(LEAST, 1 - 1 / f);
  const family = (above: number, below: number, df2: number, of: (f: number) => number): Icc => {
    const f = above / below;
    // 0 / 0: nothing differs but the judges' levels, and any correlation can be.
    if (Number.isNaN(f)) return { icc: 0, lower: of(0), upper: 1 };
    return {
      icc: of(f),
      lower: of(f / fQuantile(p, n - 1, df2)),
      upper: of(f * fQuantile(p, df2, n - 1)),
    };
  };
  const [df1, df3] = [n * (k - 1), (n - 1) * (k - 1)];

  const denominator = between + (k - 1) * error + (k * (judges - error)) / n;
  const icc2 = Math.max(LEAST, denominator > 0 ? (between - error) / denominator : LEAST);
  const share = Math.max(0, icc2);
  // The published ratio with both parts times the error, so that no error is no division by 0.
  const blend = n * (1 + (k - 1) * share) - k * share;
  const [ofJudges, ofRest] = [k * share * judges, blend * error];
  const parts = (n - 1) * ofJudges ** 2 + ofRest ** 2;
  const v = parts > 0 ? ((k - 1) * (n - 1) * (ofJudges + ofRest) ** 2) / parts : df3;
  const spread = k * judges + (k * n - k - n) * error;
  const bound = (f: number, above: number) => {
    const below = f * spread + n * above;
    return below > 0 ? Math.max(0, (n * (above - f * error)) / below) : 0;
  };
  const exact = error === 0 && judges === 0;
  const single2 = {
    icc: icc2,
    lower: exact ? 1 : bound(fQuantile(p, n - 1, v), between),
    upper: exact ? 1 : bound(1 / fQuantile(p, v, n - 1), between),
  };
  const stepUp = (icc: number) =>
    icc > -1 / (k - 1) ? Math.max(LEAST, (k * icc) / (1 + (k - 1) * icc)) : LEAST;
  return {
    single1: family(between, within, df1, single),
    mean1: family(between, within, df1, meanOf),
    single2,
    mean2: {
      icc: stepUp(single2.icc),
      lower: stepUp(single2.lower),
      upper: stepUp(single2.upper),
    },
    single3: family(between, error, df3, single),
    mean3: family(between, error, df3, meanOf),
    meanSquares: { between, within, judges, error },
  };
};

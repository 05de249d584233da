/**
 * How well do judges agree on scores? The six intraclass correlations of Shrout PE & Fleiss JL, Psychol
 * Bull 1979;86:420-428, with their intervals; those of (2,1) and (2,k) by McGraw KO & Wong SP, Psychol
 * Methods 1996;1:30-46 (Satterthwaite).
 */
import { fQuantile } from './beta.ts';
import { LEVEL, type Interval } from './interval.ts';

export interface Icc extends Interval {
  readonly icc: number;
}

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
  if (total === 0) return null;
  const ssBetween = k * squares(rows, mean);
  const ssJudges = n * squares(columns, mean);
  const between = ssBetween / (n - 1);
  const within = (total - ssBetween) / (n * (k - 1));
  const judges = ssJudges / (k - 1);
  const error = (total - ssBetween - ssJudges) / ((n - 1) * (k - 1));
  const p = (1 + level) / 2;

  const single = (f: number) => (f - 1) / (f + k - 1);
  const meanOf = (f: number) => 1 - 1 / f;
  const family = (f: number, df2: number, of: (f: number) => number): Icc => ({
    icc: of(f),
    lower: of(f / fQuantile(p, n - 1, df2)),
    upper: of(f * fQuantile(p, df2, n - 1)),
  });
  const [f1, f3] = [between / within, between / error];
  const [df1, df3] = [n * (k - 1), (n - 1) * (k - 1)];

  const icc2 = (between - error) / (between + (k - 1) * error + (k * (judges - error)) / n);
  const fj = judges / error;
  const blend = n * (1 + (k - 1) * icc2) - k * icc2;
  const v =
    ((k - 1) * (n - 1) * (k * icc2 * fj + blend) ** 2) /
    ((n - 1) * k ** 2 * icc2 ** 2 * fj ** 2 + blend ** 2);
  const [fUpper, fLower] = [fQuantile(p, n - 1, v), fQuantile(p, v, n - 1)];
  const spread = k * judges + (k * n - k - n) * error;
  const single2 = {
    icc: icc2,
    lower: (n * (between - fUpper * error)) / (fUpper * spread + n * between),
    upper: (n * (fLower * between - error)) / (spread + n * fLower * between),
  };
  const stepUp = (icc: number) => (k * icc) / (1 + (k - 1) * icc);
  return {
    single1: family(f1, df1, single),
    mean1: family(f1, df1, meanOf),
    single2,
    mean2: {
      icc: (between - error) / (between + (judges - error) / n),
      lower: stepUp(single2.lower),
      upper: stepUp(single2.upper),
    },
    single3: family(f3, df3, single),
    mean3: family(f3, df3, meanOf),
    meanSquares: { between, within, judges, error },
  };
};

/**
 * Does y rise or fall with x, within strata? Kendall's S summed over strata (Mann HB, Econometrica
 * 1945;13:245-259; Kendall MG, Rank Correlation Methods, 1975, the variance with ties; Hirsch RM & Slack
 * JR, Water Resour Res 1984;20:727-732, strata).
 */
import { normalTwoSided } from './normal.ts';

export interface KendallResult {
  /** Concordant less discordant pairs. */
  readonly s: number;
  readonly variance: number;
  /** With continuity correction; 0 where S is 0 or nothing varies. */
  readonly z: number;
  /** Two-sided, by the normal distribution. */
  readonly p: number;
  /** S over the pairs that are tied in neither: −1 to 1; null where there is none. */
  readonly gamma: number | null;
}

interface Points {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

const tieSums = (values: readonly number[]) => {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  let [pairs, triples, spread] = [0, 0, 0];
  for (const t of counts.values()) {
    pairs += t * (t - 1);
    triples += t * (t - 1) * (t - 2);
    spread += t * (t - 1) * (2 * t + 5);
  }
  return { pairs, triples, spread };
};

/** Kendall's S of each stratum, summed. O(n²) within a stratum. */
export const stratifiedKendall = (strata: readonly Points[]): KendallResult => {
  let [s, variance, compared] = [0, 0, 0];
  for (const { x, y } of strata) {
    const n = x.length;
    for (let i = 0; i < n; i++)
      for (let j = i + 1; j < n; j++) {
        const sign =
          Math.sign((x[j] as number) - (x[i] as number)) *
          Math.sign((y[j] as number) - (y[i] as number));
        s += sign;
        compared += Math.abs(sign);
      }
    if (n < 2) continue;
    const [a, b] = [tieSums(x), tieSums(y)];
    variance +=
      (n * (n - 1) * (2 * n + 5) - a.spread - b.spread) / 18 +
      (a.pairs * b.pairs) / (2 * n * (n - 1)) +
      (n > 2 ? (a.triples * b.triples) / (9 * n * (n - 1) * (n - 2)) : 0);
  }
  const z = s === 0 || variance <= 0 ? 0 : (s - Math.sign(s)) / Math.sqrt(variance);
  return { s, variance, z, p: normalTwoSided(z), gamma: compared > 0 ? s / compared : null };
};

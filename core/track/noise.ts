/**
 * How far off are the fixes, and do their errors last? A bend seen by few fixes looks like noise: its fourth
 * differences are as large. Along the way it does not, since a runner's speed hardly changes from fix to fix,
 * whatever the bend. So noise is estimated in several ways to each of which a bend only adds, and the least counts.
 */
import type { Span } from './span.ts';

/** Fewer fixes than this tell nothing. */
const FEWEST = 20;
/** Estimates that differ by less measure the same thing. Judgement. */
const SAME = 1.2;
/** Smoothing where the noise is more than this share of a step. Judgement, by the table in DEVELOPERS.md. */
export const NOISY_SHARE = 0.25;

/** No receiver is off by more from one fix to the next: it is the way. Judgement. */
const MOST_M = 10;
/** Without times fixes may have been left out at will, so only dense ones tell their noise: steps up to this, metres. */
const DENSE_M = 6.5;

/** Standard deviation of a normal error from a quantile of its size: half, and a quarter, are smaller than this. */
const HALF_Z = 0.6745;
const QUARTER_Z = 0.3186;

export interface Noise {
  /** Standard deviation of a fix in east and in north, metres, as its neighbours show it. */
  readonly sigmaM: number;
  /** 0: each error is its own; 1: an error is the one before and a little more, as in a random walk. */
  readonly lasting: number;
  /** Middle length of a step without its noise, metres. */
  readonly stepM: number;
}

const quantile = (sorted: Float64Array, share: number): number =>
  sorted[Math.floor(share * sorted.length)] ?? 0;

/** Sizes of differences of the fixes, each of them of independent errors only where the way is smooth. */
const differencesOf = (span: Span) => {
  const { x, y, length } = span;
  const get = (all: Float64Array, at: number) => all[at] as number;
  const fourth = new Float64Array(2 * length);
  const fourthAlong = new Float64Array(length);
  const secondAlong = new Float64Array(length);
  const steps = new Float64Array(length);
  let count = 0;
  let [pairs, signs, before] = [0, 0, -2];
  for (let at = 2; at < length - 2; at++) {
    if (!span.isEven(at, 2)) continue;
    const of4 = (all: Float64Array) =>
      get(all, at - 2) +
      get(all, at + 2) -
      4 * (get(all, at - 1) + get(all, at + 1)) +
      6 * get(all, at);
    const of2 = (all: Float64Array) => get(all, at - 1) - 2 * get(all, at) + get(all, at + 1);
    const [wideX, wideY] = [get(x, at + 2) - get(x, at - 2), get(y, at + 2) - get(y, at - 2)];
    const [nearX, nearY] = [get(x, at + 1) - get(x, at - 1), get(y, at + 1) - get(y, at - 1)];
    const [east, north] = [of4(x), of4(y)];
    fourth[2 * count] = Math.abs(east);
    fourth[2 * count + 1] = Math.abs(north);
    fourthAlong[count] = Math.abs(east * wideX + north * wideY) / (Math.hypot(wideX, wideY) || 1);
    const along = (of2(x) * nearX + of2(y) * nearY) / (Math.hypot(nearX, nearY) || 1);
    secondAlong[count] = along;
    steps[count] = Math.hypot(get(x, at) - get(x, at - 1), get(y, at) - get(y, at - 1));
    if (before === at - 1 && count > 0) {
      pairs++;
      signs += Math.sign(along * get(secondAlong, count - 1));
    }
    before = at;
    count++;
  }
  return {
    count,
    fourth: fourth.subarray(0, 2 * count).sort(),
    fourthAlong: fourthAlong.subarray(0, count).sort(),
    secondAlong: secondAlong.subarray(0, count).map(Math.abs).sort(),
    stepM: quantile(steps.subarray(0, count).sort(), 0.5),
    pairs,
    meanSign: pairs > 0 ? signs / pairs : -1,
  };
};

/**
 * Of independent errors the fourth differences have 70, the second ones 6 times the variance of one (binomial
 * coefficients), and second differences that follow each other a correlation of −2/3; of a random walk, −1/2. The
 * correlation is taken from the signs alone (sine of half π times their mean product, as for normal errors), and
 * believed where it is twice its standard error away from −2/3.
 */
export const noiseOf = (span: Span): Noise => {
  const { count, fourth, fourthAlong, secondAlong, stepM, pairs, meanSign } = differencesOf(span);
  if (count < FEWEST || (!span.isTimed && stepM > DENSE_M)) return { sigmaM: 0, lasting: 0, stepM };
  const byFourth = quantile(fourth, 0.5) / HALF_Z / Math.sqrt(70);
  const bySecond = quantile(secondAlong, 0.5) / HALF_Z / Math.sqrt(6);
  const least = Math.min(
    byFourth,
    bySecond,
    quantile(fourthAlong, 0.5) / HALF_Z / Math.sqrt(70),
    // Less exact, and hardly touched where a good half of the fixes have a corner near.
    quantile(secondAlong, 0.25) / QUARTER_Z / Math.sqrt(6),
  );
  if (least > MOST_M) return { sigmaM: 0, lasting: 0, stepM };
  const isAgreed = Math.max(byFourth, bySecond) <= SAME * least;
  const sigmaM = isAgreed ? (byFourth + bySecond) / 2 : least;
  // Noise makes the middle step longer, too: its square by 4 variances of the mean, ln 16 of the median.
  const cleanM = Math.max(
    stepM / 3,
    Math.sqrt(Math.max(0, stepM ** 2 - Math.log(16) * sigmaM ** 2)),
  );
  const above = Math.sin((Math.PI / 2) * meanSign) + 2 / 3;
  const isLasting =
    sigmaM <= NOISY_SHARE * cleanM && pairs > 0 && above > Math.PI / Math.sqrt(pairs);
  return { sigmaM, lasting: isLasting ? Math.min(1, 6 * above) : 0, stepM: cleanM };
};

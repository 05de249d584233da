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
  /** False where too few even fixes tell it. */
  readonly isKnown: boolean;
}

/** Differences of the fixes of all spans; their sizes tell the noise where the way is smooth. */
class Differences {
  count = 0;
  pairs = 0;
  signs = 0;
  readonly fourth: Float64Array;
  readonly fourthAlong: Float64Array;
  readonly secondAlong: Float64Array;
  readonly secondAcross: Float64Array;
  readonly steps: Float64Array;

  constructor(spans: readonly Span[]) {
    const most = spans.reduce((sum, { length }) => sum + length, 0);
    this.fourth = new Float64Array(2 * most);
    this.fourthAlong = new Float64Array(most);
    this.secondAlong = new Float64Array(most);
    this.secondAcross = new Float64Array(most);
    this.steps = new Float64Array(most);
    for (const span of spans) {
      let before = -2;
      for (let at = 2; at < span.length - 2; at++) {
        if (!span.isEven(at, 2)) continue;
        this.#take(span, at, before === at - 1);
        before = at;
      }
    }
  }

  #take({ x, y }: Span, at: number, follows: boolean): void {
    const get = (all: Float64Array, i: number) => all[at + i] as number;
    const second = (all: Float64Array) => get(all, -1) - 2 * get(all, 0) + get(all, 1);
    const fourth = (all: Float64Array) =>
      get(all, -2) + get(all, 2) - 4 * (get(all, -1) + get(all, 1)) + 6 * get(all, 0);
    const [wideX, wideY] = [get(x, 2) - get(x, -2), get(y, 2) - get(y, -2)];
    const [nearX, nearY] = [get(x, 1) - get(x, -1), get(y, 1) - get(y, -1)];
    const [east, north, wide] = [fourth(x), fourth(y), Math.hypot(wideX, wideY) || 1];
    const [bendX, bendY, near] = [second(x), second(y), Math.hypot(nearX, nearY) || 1];
    const along = (bendX * nearX + bendY * nearY) / near;
    if (follows) {
      this.pairs++;
      this.signs += Math.sign(along * this.#alongBefore);
    }
    this.#alongBefore = along;
    const { count } = this;
    this.fourth[2 * count] = Math.abs(east);
    this.fourth[2 * count + 1] = Math.abs(north);
    this.fourthAlong[count] = Math.abs(east * wideX + north * wideY) / wide;
    this.secondAlong[count] = Math.abs(along);
    this.secondAcross[count] = Math.abs(bendX * nearY - bendY * nearX) / near;
    this.steps[count] = Math.hypot(get(x, 0) - get(x, -1), get(y, 0) - get(y, -1));
    this.count++;
  }
  #alongBefore = 0;

  /** Smaller than this is that share of them. */
  quantile(sizes: Float64Array, share: number): number {
    const known = sizes.subarray(0, sizes === this.fourth ? 2 * this.count : this.count).sort();
    return known[Math.floor(share * known.length)] ?? 0;
  }
}

/**
 * Of independent errors the fourth differences have 70, the second ones 6 times the variance of one (binomial
 * coefficients), and second differences that follow each other a correlation of −2/3; of a random walk, −1/2. The
 * correlation is taken from the signs alone (sine of half π times their mean product, as for normal errors), and
 * believed from 1.5 standard errors away from −2/3, and wholly from 2.5.
 */
export const noiseOf = (spans: readonly Span[]): Noise => {
  const all = new Differences(spans);
  const stepM = all.quantile(all.steps, 0.5);
  const none = { sigmaM: 0, lasting: 0, stepM, isKnown: false };
  const isTimed = spans.every((span) => span.isTimed);
  if (all.count < FEWEST || (!isTimed && stepM > DENSE_M)) return none;
  const of4 = (sizes: Float64Array) => all.quantile(sizes, 0.5) / HALF_Z / Math.sqrt(70);
  const byFourth = of4(all.fourth);
  const bySecond = all.quantile(all.secondAlong, 0.5) / HALF_Z / Math.sqrt(6);
  const least = Math.min(
    byFourth,
    bySecond,
    of4(all.fourthAlong),
    // Less exact, and hardly touched where a good half of the fixes have a corner near.
    all.quantile(all.secondAlong, 0.25) / QUARTER_Z / Math.sqrt(6),
    // A change of pace adds to those along the way, and nothing to these where it is straight.
    all.quantile(all.secondAcross, 0.25) / QUARTER_Z / Math.sqrt(6),
  );
  if (least > MOST_M) return none;
  const isAgreed = Math.max(byFourth, bySecond) <= SAME * least;
  const sigmaM = isAgreed ? (byFourth + bySecond) / 2 : least;
  // Noise makes the middle step longer, too: its square by 4 variances of the mean, ln 16 of the median.
  const cleanM = Math.max(
    stepM / 3,
    Math.sqrt(Math.max(0, stepM ** 2 - Math.log(16) * sigmaM ** 2)),
  );
  const above = all.pairs > 0 ? Math.sin(((Math.PI / 2) * all.signs) / all.pairs) + 2 / 3 : 0;
  const isDense = sigmaM > NOISY_SHARE * cleanM;
  // π/2 over the root of the pairs is the standard error of the correlation.
  const errors = above / (Math.PI / 2 / Math.sqrt(all.pairs));
  const belief = isDense ? 0 : Math.max(0, Math.min(1, errors - 1.5));
  return { sigmaM, lasting: belief * Math.min(1, 6 * above), stepM: cleanM, isKnown: true };
};

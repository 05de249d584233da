/**
 * From a few pairs checked at a few distances, how does a bench value change with distance, when does it
 * cross a limit, and does a new pair still hold at the brief's distance?
 *
 *   y_ij = a_i + (theta + u_i) share(x_ij) + e_ij,  y the value or, on a ratio scale, its logarithm
 *
 * with a start a_i and a change theta + u_i of each pair's own, under the three forms of `forms.ts`. Every
 * interval is of the value itself, not of a reading of it, at 90 %, and averages over the forms, their bends
 * and the spreads by posterior weight (Hoeting JA et al., Bayesian model averaging, Stat Sci
 * 1999;14:382-417); no random numbers. The same checks in any order give the same bits.
 */
import { holm, type Interval } from '../statistics/index.ts';
import { metres, type Metres } from '../units/index.ts';
import {
  covarianceOfPairs,
  covarianceWithin,
  ofNewPair,
  ofPair,
  SUMS,
  type MeanPrior,
  type StartAndChange,
} from './conditional.ts';
import type { WearPrior } from './foams.ts';
import { forms, FULL_M, type FormName } from './forms.ts';
import {
  fastNormalCdf,
  mixtureCdf,
  mixtureMoments,
  mixtureQuantile,
  type Mixture,
} from './mixture.ts';
import { arrange, placesOf, sharesOf, tableOf, type WeighedPlaces } from './places.ts';
import { isUsable, type WearKind, type WearSeries } from './series.ts';

/** The level of every interval of this room. */
export const WEAR_LEVEL = 0.9;
const TAIL = (1 - WEAR_LEVEL) / 2;

/** From this posterior weight on, the forms count as told apart. */
const TOLD_APART = 0.95;
/** From this chance on a pair holds; below one less it, it does not. */
const SURE = 0.95;
/** A pair is named as outlying at this two-sided level, held over the pairs judged. */
const OUTLYING = 0.01;
/** Among fewer pairs nobody can say which one is the odd one. */
const LEAST_PAIRS = 3;
/** A pair this likely even among all pairs, itself included, is not judged against the others. */
const SCREENED = 0.3;
/** Precision of a start about which nothing was known. */
const VAGUE = 1e-10;

/** Which pair is meant: one that was checked, by its id; absent: a new pair of the same round. */
export interface Of {
  readonly pair?: string;
}

/** A value with its 90 % interval. */
export interface WearEstimate extends Interval {
  readonly median: number;
  /** True where the distance lies beyond every check. */
  readonly beyondChecks: boolean;
}

/** A limit as the brief states it. */
export interface WearLimit {
  readonly bound: 'at-least' | 'at-most';
  readonly value: number;
  /** `reading`: in the kind's unit; `share-of-new`: times the same pair's value at 0 km. */
  readonly basis: 'reading' | 'share-of-new';
}

/** A distance, or that it lies farther than the checks can tell. */
export type Crossing = Metres | 'beyond-checks';

/** Where the limit is crossed: with 5, 50 and 95 % probability it is by here. */
export interface LimitDistance {
  readonly lower: Crossing;
  readonly median: Crossing;
  readonly upper: Crossing;
}

export type HoldWord = 'holds' | 'does-not-hold' | 'not-known-yet';

export interface Hold {
  /** Probability that the value is within the limit at that distance. */
  readonly chance: number;
  /** Never sure beyond the reach of the checks. */
  readonly word: HoldWord;
}

export interface OutlyingPair {
  readonly pair: string;
  /** Two-sided, of its own change against what the other pairs predict, adjusted over the pairs (Holm). */
  readonly p: number;
  /** Its change lies below or above those of the others. */
  readonly change: 'lower' | 'higher';
}

export interface WearFit<Kind extends WearKind> {
  readonly kind: Kind;
  readonly site: string;
  /** `prior-only` where no pair was checked at two distances: all change then comes from the prior. */
  readonly basis: 'checks' | 'prior-only';
  readonly prior: WearPrior<Kind>;
  readonly pairs: readonly string[];
  readonly greatestDistance: Metres;
  /** Beyond this no crossing is told: twice the greatest distance, or 500 km before any check. */
  readonly reach: Metres;
  readonly direction: 'falls' | 'rises' | 'no-change-shown';
  readonly forms: Readonly<Record<FormName, number>>;
  /** The form that the checks single out, or null. */
  readonly toldApart: FormName | null;
  /** The value at a distance; null where no check and no blueprint tells the start. */
  readonly valueAt: (x: Metres, of?: Of) => WearEstimate | null;
  /** The change from new to a distance: a factor on a ratio scale, else a difference. */
  readonly changeAt: (x: Metres, of?: Of) => WearEstimate;
  /** The mean change of the round from new to a distance, without the spread between its pairs. */
  readonly meanChangeAt: (x: Metres) => WearEstimate;
  /** Null where `valueAt` is and the limit needs a start. */
  readonly limitDistance: (limit: WearLimit, of?: Of) => LimitDistance | null;
  readonly chanceToHold: (limit: WearLimit, x: Metres, of?: Of) => Hold | null;
  /**
   * How much of what is not known of a new pair against this limit is spread between pairs, which no further check
   * takes away: its variance, and its share of all. Null where the limit needs a start and there is none.
   */
  readonly betweenPairs: (
    limit: WearLimit,
    x: Metres,
  ) => { readonly variance: number; readonly share: number } | null;
  /** The pairs that wear otherwise than the rest; none is sought among fewer than three. */
  readonly outlyingPairs: () => readonly OutlyingPair[];
  /**
   * By which share the 90 % interval of the value at the goal is expected to narrow if a pair is checked
   * once more: from variances and covariances over all that is not known (linear Bayes, Hartigan JA, J R
   * Stat Soc B 1969;31:446-454), which is exact where the spreads and the form are known.
   */
  readonly narrowing: (candidate: CandidateCheck, goal: Metres, of?: Of) => number;
}

/** One more check: a pair, checked before or new, at a distance. */
export interface CandidateCheck {
  readonly pair: string;
  readonly distance: Metres;
}

/**
 * Fits one series.
 * @throws RangeError where a check is of another kind than series or prior, its value cannot stand on the
 * kind's scale, or its distance is negative; or where a known start's standard deviation is not positive
 */
export const fitWear = <Kind extends WearKind>(
  series: WearSeries<Kind>,
  prior: WearPrior<NoInfer<Kind>>,
): WearFit<Kind> => {
  for (const { kind, value, distance } of series.checks)
    if (kind !== series.kind || kind !== prior.kind || !isUsable(kind, value) || !(distance >= 0))
      throw new RangeError(`not a check of ${series.kind}: ${value} at ${distance} m`);
  if (prior.start && !(prior.start.sd > 0 && isUsable(series.kind, prior.start.value)))
    throw new RangeError(`not a start of ${series.kind}: ${prior.start.value} ± ${prior.start.sd}`);
  const ratio = prior.scale === 'ratio';
  const { rows, offset, pairs, numberOf, sumsFor } = arrange(series.checks, prior);
  const knownStart = prior.start
    ? ratio
      ? { mean: Math.log(prior.start.value), sd: prior.start.sd / prior.start.value }
      : { mean: prior.start.value, sd: prior.start.sd }
    : null;
  const meanPrior: MeanPrior = {
    startMean: knownStart ? knownStart.mean - offset : 0,
    startPrecision: knownStart ? knownStart.sd ** -2 : VAGUE,
    changeMean: prior.change.mean,
    changePrecision: prior.change.sd ** -2,
  };
  const posterior = placesOf(sumsFor, prior, meanPrior);
  const { places, weights } = posterior;
  const greatest = metres(rows.reduce((most, { x }) => Math.max(most, x), 0));
  const reach = metres(greatest > 0 ? 2 * greatest : FULL_M);
  const seenAt = new Map<string, number>();
  const isChange = ({ pair, x }: (typeof rows)[number]): boolean => {
    const first = seenAt.get(pair);
    if (first === undefined) seenAt.set(pair, x);
    return first !== undefined && first !== x;
  };
  const basis = rows.some(isChange) ? 'checks' : 'prior-only';
  const noStart = rows.length === 0 && knownStart === null;

  const tables = new Map<number | undefined, ReturnType<typeof tableOf>>();
  /** Start and change at each place; of a pair never checked those of a new one. */
  const ownOf = (pair: string | undefined) => {
    const number = pair === undefined ? undefined : numberOf.get(pair);
    const table =
      tables.get(number) ??
      tableOf(posterior, ({ sums, spreads, means }) =>
        number === undefined ? ofNewPair(spreads, means) : ofPair(sums, number, spreads, means),
      );
    tables.set(number, table);
    return table;
  };
  /** The mixture of `c` times the start plus the change at x. */
  const mixtureAt = (x: number, c: number, pair: string | undefined): Mixture =>
    ownOf(pair).mixture(c, sharesOf(places, x));
  const estimate = (mixture: Mixture, shift: number, x: number): WearEstimate => {
    const back = (p: number) => {
      const value = mixtureQuantile(mixture, p) + shift;
      return ratio ? Math.exp(value) : value;
    };
    return {
      lower: back(TAIL),
      median: back(0.5),
      upper: back(1 - TAIL),
      beyondChecks: x > greatest,
    };
  };

  const changeAt = (x: Metres, { pair }: Of = {}): WearEstimate =>
    estimate(mixtureAt(x, 0, pair), 0, x);

  const valueAt = (x: Metres, { pair }: Of = {}): WearEstimate | null =>
    noStart ? null : estimate(mixtureAt(x, 1, pair), offset, x);

  /** A limit as a line: `c` times the start plus the change, against a bound; null without a start. */
  const lineOf = ({ value, basis: of }: WearLimit) => {
    if (of === 'share-of-new' && ratio) return { c: 0, bound: Math.log(value) };
    if (noStart) return null;
    if (of === 'share-of-new') return { c: 1 - value, bound: (value - 1) * offset };
    return { c: 1, bound: (ratio ? Math.log(value) : value) - offset };
  };

  const within = (limit: WearLimit, pair: string | undefined) => {
    const line = lineOf(limit);
    if (line === null) return null;
    return (x: number): number => {
      const below = mixtureCdf(mixtureAt(x, line.c, pair), line.bound);
      return limit.bound === 'at-least' ? 1 - below : below;
    };
  };

  const chanceToHold = (limit: WearLimit, x: Metres, { pair }: Of = {}): Hold | null => {
    const chance = within(limit, pair)?.(x);
    if (chance === undefined) return null;
    const sure = x <= reach;
    return {
      chance,
      word:
        sure && chance >= SURE
          ? 'holds'
          : sure && chance <= 1 - SURE
            ? 'does-not-hold'
            : 'not-known-yet',
    };
  };

  const limitDistance = (limit: WearLimit, { pair }: Of = {}): LimitDistance | null => {
    const holds = within(limit, pair);
    if (holds === null) return null;
    const steps = 16;
    const scanned = Array.from({ length: steps + 1 }, (_, at) => {
      const x = (reach * at) / steps;
      return { x, chance: holds(x) };
    });
    /** The last distance known to be before the crossing, and the first known to be after it. */
    const around = (beyond: number): readonly [Crossing, Crossing] => {
      const after = scanned.findIndex(({ chance }) => 1 - chance >= beyond);
      if (after < 0) return ['beyond-checks', 'beyond-checks'];
      let high = scanned[after]?.x ?? 0;
      let low = scanned[after - 1]?.x ?? high;
      while (high - low > reach / 1000) {
        const half = (low + high) / 2;
        if (1 - holds(half) >= beyond) high = half;
        else low = half;
      }
      return [metres(low), metres(high)];
    };
    return { lower: around(TAIL)[0], median: around(0.5)[1], upper: around(1 - TAIL)[1] };
  };

  const betweenPairs = (limit: WearLimit, x: Metres) => {
    const line = lineOf(limit);
    if (line === null) return null;
    const shares = sharesOf(places, x);
    const all = mixtureMoments(mixtureAt(x, line.c, undefined)).variance;
    let variance = 0;
    for (const [at, { spreads }] of places.entries())
      variance +=
        (weights[at] as number) *
        ((line.c * spreads.start) ** 2 + ((shares[at] as number) * spreads.pair) ** 2);
    return { variance, share: all > 0 ? Math.min(1, variance / all) : 0 };
  };

  /** Two-sided probability of a pair's own change among what these places say of a new pair. */
  const changeOdds = (by: WeighedPlaces, number: number) => {
    let below = 0;
    for (const [at, { form, bend, spreads, means }] of by.places.entries()) {
      const sums = sumsFor(form, bend).subarray(number * SUMS);
      const [n = 0, g = 0, gg = 0, y = 0, gy = 0] = sums;
      const squares = gg - (g * g) / n;
      const slope = (gy - (g * y) / n) / squares;
      const variance = means.changeVariance + spreads.pair ** 2 + spreads.error ** 2 / squares;
      below +=
        (by.weights[at] as number) * fastNormalCdf((slope - means.change) / Math.sqrt(variance));
    }
    return { below, p: Math.min(1, 2 * Math.min(below, 1 - below)) };
  };

  const outlyingPairs = (): readonly OutlyingPair[] => {
    const judged = pairs.flatMap((pair, number) => {
      const own = rows.filter((row) => row.pair === pair);
      return own.some(({ x }) => x !== own[0]?.x) ? [{ pair, number }] : [];
    });
    if (judged.length < LEAST_PAIRS) return [];
    const odds = judged.map(({ number }) => {
      const among = changeOdds(posterior, number);
      if (among.p > SCREENED) return among;
      const others = placesOf(
        (form, bend) =>
          sumsFor(form, bend)
            .slice()
            .fill(0, number * SUMS, (number + 1) * SUMS),
        prior,
        meanPrior,
      );
      return changeOdds(others, number);
    });
    const adjusted = holm(odds.map(({ p }) => p));
    return judged.flatMap(({ pair }, at) => {
      const [p, below] = [adjusted[at] as number, (odds[at] as { below: number }).below];
      return p <= OUTLYING ? [{ pair, p, change: below < 0.5 ? 'lower' : 'higher' }] : [];
    });
  };

  const narrowing = (candidate: CandidateCheck, goal: Metres, { pair }: Of = {}): number => {
    const [own, target] = [ownOf(candidate.pair), ownOf(pair)];
    const [g, h] = [sharesOf(places, candidate.distance), sharesOf(places, goal)];
    const number = numberOf.get(candidate.pair);
    const other = pair === undefined ? undefined : numberOf.get(pair);
    const errors = Float64Array.from(places, ({ spreads }) => spreads.error ** 2);
    const reading = own.mixture(1, g, errors);
    const value = target.mixture(1, h);
    const [first, second] = [mixtureMoments(reading), mixtureMoments(value)];
    let covariance = 0;
    for (const [at, { sums, spreads, means }] of places.entries()) {
      const [from, to] = [g[at] as number, h[at] as number];
      const within =
        pair === candidate.pair
          ? covarianceWithin(own.rows[at] as StartAndChange, from, to)
          : covarianceOfPairs(sums, [number, other], spreads, means, [from, to]);
      covariance +=
        (weights[at] as number) *
        (within +
          ((reading.means[at] as number) - first.mean) *
            ((value.means[at] as number) - second.mean));
    }
    const both = first.variance * second.variance;
    // Readings as small as 1e-200 leave variances that are 0 in a double: nothing is left to narrow.
    if (both === 0) return 0;
    return 1 - Math.sqrt(Math.max(0, 1 - covariance ** 2 / both));
  };

  const formWeights = Object.fromEntries(
    forms.map(({ name }) => [
      name,
      places.reduce(
        (sum, { form }, at) => sum + (form.name === name ? (weights[at] as number) : 0),
        0,
      ),
    ]),
  ) as Record<FormName, number>;
  const one = new Float64Array(places.length).fill(1);
  const means = tableOf(posterior, (place) => place.means);
  const meanChange = means.mixture(0, one);
  const notAbove = mixtureCdf(meanChange, 0);

  return {
    kind: series.kind,
    site: series.site,
    basis,
    prior,
    pairs,
    greatestDistance: greatest,
    reach,
    direction:
      basis === 'prior-only'
        ? 'no-change-shown'
        : notAbove >= 1 - TAIL
          ? 'falls'
          : notAbove <= TAIL
            ? 'rises'
            : 'no-change-shown',
    forms: formWeights,
    toldApart: forms.find(({ name }) => formWeights[name] > TOLD_APART)?.name ?? null,
    valueAt,
    changeAt,
    meanChangeAt: (x) => estimate(means.mixture(0, sharesOf(places, x)), 0, x),
    limitDistance,
    chanceToHold,
    betweenPairs,
    outlyingPairs,
    narrowing,
  };
};

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
  conditional,
  covarianceOfPairs,
  covarianceWithin,
  ofNewPair,
  ofPair,
  SUMS,
  type MeanPrior,
  type Spreads,
  type StartAndChange,
  type Sums,
} from './conditional.ts';
import type { WearPrior } from './foams.ts';
import { forms, FULL_M, type Form, type FormName } from './forms.ts';
import { gridAround, type Axis } from './grid.ts';
import {
  fastNormalCdf,
  mixtureCdf,
  mixtureMoments,
  mixtureQuantile,
  type Mixture,
} from './mixture.ts';
import { isUsable, type WearCheck, type WearKind, type WearSeries } from './series.ts';

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
/** The places of least weight are left out up to this sum. */
const NEGLIGIBLE = 1e-3;
/** Precision of a start about which nothing was known. */
const VAGUE = 1e-10;
/** Spread of the logarithm of the error of one check around its size; judgement. */
const ERROR_LOG_SD = 0.5;
const START_DF = 4;
/** Nodes of the rules: bend, pair spread, check error, start spread. */
const NODES = { bend: 5, pair: 5, error: 4, start: 4 } as const;

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
  /** `prior-only` where no two checks differ in distance: all change then comes from the prior. */
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
  /** Null where `valueAt` is and the limit needs a start. */
  readonly limitDistance: (limit: WearLimit, of?: Of) => LimitDistance | null;
  readonly chanceToHold: (limit: WearLimit, x: Metres, of?: Of) => Hold | null;
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

/** A place of the grid with what the checks say there. */
interface Place {
  readonly weight: number;
  readonly form: Form;
  readonly bend: number;
  readonly spreads: Spreads;
  readonly sums: Sums;
  readonly means: StartAndChange & { readonly logLikelihood: number };
  /** Logarithm of rule and prior: what the likelihood is multiplied by. */
  readonly logPrior: number;
}

const byId = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** The checks as the model takes them: by pair, by distance, values on their scale around `offset`. */
const arrange = <Kind extends WearKind>(
  checks: readonly WearCheck<Kind>[],
  prior: WearPrior<Kind>,
) => {
  const ratio = prior.scale === 'ratio';
  const rows = checks
    .map(({ pair, distance, value }) => ({ pair, x: distance, y: ratio ? Math.log(value) : value }))
    .sort((a, b) => byId(a.pair, b.pair) || a.x - b.x || a.y - b.y);
  const offset =
    rows.length > 0
      ? rows.reduce((sum, { y }) => sum + y, 0) / rows.length
      : prior.start
        ? ratio
          ? Math.log(prior.start.value)
          : prior.start.value
        : 0;
  const pairs = [...new Set(rows.map(({ pair }) => pair))];
  const numberOf = new Map(pairs.map((pair, at) => [pair, at]));
  const points = rows.map(({ pair, x, y }) => ({
    at: (numberOf.get(pair) ?? 0) * SUMS,
    x,
    y: y - offset,
  }));
  const sumsFor = (form: Form, bend: number): Sums => {
    const sums = new Float64Array(pairs.length * SUMS);
    const add = (at: number, by: number) => {
      sums[at] = (sums[at] as number) + by;
    };
    for (const { at, x, y } of points) {
      const g = form.share(x, bend);
      add(at, 1);
      add(at + 1, g);
      add(at + 2, g * g);
      add(at + 3, y);
      add(at + 4, g * y);
      add(at + 5, y * y);
    }
    return sums;
  };
  return { rows, offset, pairs, numberOf, sumsFor };
};

/** Logarithm of the prior density of the spreads, the error's on its logarithm, up to a constant. */
const logSpreadPrior = <Kind extends WearKind>(
  spreads: Spreads,
  prior: WearPrior<Kind>,
): number => {
  const start = spreads.start / prior.startSpread.size;
  const pair = spreads.pair / prior.pairSpread.size;
  const error = Math.log(spreads.error / prior.checkError.size) / ERROR_LOG_SD;
  return (
    -0.5 * (START_DF + 1) * Math.log1p((start * start) / START_DF) -
    0.5 * pair * pair -
    0.5 * error * error
  );
};

/** All places of all forms, their weights summing to one. */
const placesOf = <Kind extends WearKind>(
  sumsFor: (form: Form, bend: number) => Sums,
  prior: WearPrior<Kind>,
  means: MeanPrior,
): readonly Place[] => {
  const logError = Math.log(prior.checkError.size);
  const spreadAxes: readonly Axis[] = [
    {
      least: 0,
      most: 5 * prior.pairSpread.size,
      start: prior.pairSpread.size / 2,
      nodes: NODES.pair,
    },
    {
      least: logError - 5 * ERROR_LOG_SD,
      most: logError + 5 * ERROR_LOG_SD,
      start: logError,
      nodes: NODES.error,
    },
    {
      least: 0,
      most: 12 * prior.startSpread.size,
      start: prior.startSpread.size / 2,
      nodes: NODES.start,
    },
  ];
  const places = forms.flatMap((form) => {
    const { bend } = form;
    let known: { readonly bend: number; readonly sums: Sums } | null = null;
    const sumsAt = (at: number): Sums => {
      if (known?.bend !== at) known = { bend: at, sums: sumsFor(form, at) };
      return known.sums;
    };
    const at = (place: readonly number[]) => {
      const [logBend = 0, pair = 0, logOfError = 0, start = 0] = place;
      const spreads = { pair, error: Math.exp(logOfError), start };
      const away = bend ? (logBend - Math.log(bend.median)) / bend.logSd : 0;
      const bendPrior = bend
        ? -0.5 * away * away - Math.log(bend.logSd * Math.sqrt(2 * Math.PI))
        : 0;
      const sums = sumsAt(Math.exp(logBend));
      return {
        form,
        bend: Math.exp(logBend),
        spreads,
        sums,
        means: conditional(sums, spreads, means),
        logPrior: Math.log(form.weight) + bendPrior + logSpreadPrior(spreads, prior),
      };
    };
    const middle = bend ? Math.log(bend.median) : 0;
    const bendAxis: Axis = {
      least: middle - 4 * (bend?.logSd ?? 0),
      most: middle + 4 * (bend?.logSd ?? 0),
      start: middle,
      nodes: NODES.bend,
    };
    return gridAround([bendAxis, ...spreadAxes], (place) => {
      const { means: after, logPrior } = at(place);
      return after.logLikelihood + logPrior;
    }).map(({ place, logWeight }) => {
      const here = at(place);
      return { ...here, logPrior: here.logPrior + logWeight };
    });
  });
  return weighed(places);
};

/** The places with their weights; the least of them are left out, up to a negligible sum. */
const weighed = (places: readonly Omit<Place, 'weight'>[]): readonly Place[] => {
  const logs = places.map(({ logPrior, means }) => logPrior + means.logLikelihood);
  const top = logs.reduce((most, log) => Math.max(most, log), -Infinity);
  const raw = logs.map((log) => Math.exp(log - top));
  const all = raw.reduce((a, b) => a + b, 0);
  let leftOut = 0;
  const least = [...raw]
    .sort((a, b) => a - b)
    .find((weight) => (leftOut += weight) > NEGLIGIBLE * all);
  const kept = places.flatMap((place, at) => {
    const weight = raw[at] as number;
    return weight >= (least ?? 0) ? [{ ...place, weight }] : [];
  });
  const left = kept.reduce((sum, { weight }) => sum + weight, 0);
  return kept.map((place) => ({ ...place, weight: place.weight / left }));
};

/** Starts and changes at all places, and the mixtures of what follows from them. */
const tableOf = (
  places: readonly Place[],
  weights: Float64Array,
  own: (place: Place) => StartAndChange,
) => {
  const rows = places.map(own);
  const start = Float64Array.from(rows, (row) => row.start);
  const change = Float64Array.from(rows, (row) => row.change);
  const startVariance = Float64Array.from(rows, (row) => row.startVariance);
  const covariance = Float64Array.from(rows, (row) => row.covariance);
  const changeVariance = Float64Array.from(rows, (row) => row.changeVariance);
  /** Of `c` times the start plus the shares of the change, and noise of the given variances. */
  const mixture = (c: number, shares: Float64Array, noise?: Float64Array): Mixture => {
    const means = new Float64Array(shares.length);
    const sds = new Float64Array(shares.length);
    for (let at = 0; at < shares.length; at++) {
      const g = shares[at] as number;
      means[at] = c * (start[at] as number) + g * (change[at] as number);
      const variance =
        c * c * (startVariance[at] as number) +
        2 * c * g * (covariance[at] as number) +
        g * g * (changeVariance[at] as number) +
        (noise?.[at] ?? 0);
      sds[at] = Math.sqrt(Math.max(0, variance));
    }
    return { weights, means, sds };
  };
  return { rows, mixture };
};

/** The share of the change at a distance, place by place; places of one bend stand together. */
const sharesOf = (places: readonly Place[], x: number): Float64Array => {
  const shares = new Float64Array(places.length);
  let [form, bend, share]: [Form | null, number, number] = [null, 0, 0];
  for (const [at, place] of places.entries()) {
    if (place.form !== form || place.bend !== bend) {
      ({ form, bend } = place);
      share = form.share(x, bend);
    }
    shares[at] = share;
  }
  return shares;
};

/**
 * Fits one series.
 * @throws RangeError where a check is of another kind than series or prior, its value cannot stand on the
 * kind's scale, or its distance is negative
 */
export const fitWear = <Kind extends WearKind>(
  series: WearSeries<Kind>,
  prior: WearPrior<NoInfer<Kind>>,
): WearFit<Kind> => {
  for (const { kind, value, distance } of series.checks)
    if (kind !== series.kind || kind !== prior.kind || !isUsable(kind, value) || !(distance >= 0))
      throw new RangeError(`not a check of ${series.kind}: ${value} at ${distance} m`);
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
  const places = placesOf(sumsFor, prior, meanPrior);
  const greatest = metres(rows.reduce((most, { x }) => Math.max(most, x), 0));
  const reach = metres(greatest > 0 ? 2 * greatest : FULL_M);
  const basis = rows.some(({ x }) => x !== rows[0]?.x) ? 'checks' : 'prior-only';
  const noStart = rows.length === 0 && knownStart === null;

  const weights = Float64Array.from(places, ({ weight }) => weight);
  const tables = new Map<number | undefined, ReturnType<typeof tableOf>>();
  /** Start and change at each place; of a pair never checked those of a new one. */
  const ownOf = (pair: string | undefined) => {
    const number = pair === undefined ? undefined : numberOf.get(pair);
    const table =
      tables.get(number) ??
      tableOf(places, weights, ({ sums, spreads, means }) =>
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

  /** Two-sided probability of a pair's own change among what these places say of a new pair. */
  const changeOdds = (by: readonly Place[], number: number) => {
    let below = 0;
    for (const { weight, form, bend, spreads, means } of by) {
      const sums = sumsFor(form, bend).subarray(number * SUMS);
      const [n = 0, g = 0, gg = 0, y = 0, gy = 0] = sums;
      const squares = gg - (g * g) / n;
      const slope = (gy - (g * y) / n) / squares;
      const variance = means.changeVariance + spreads.pair ** 2 + spreads.error ** 2 / squares;
      below += weight * fastNormalCdf((slope - means.change) / Math.sqrt(variance));
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
      const among = changeOdds(places, number);
      if (among.p > SCREENED) return among;
      const others = placesOf(
        (form, bend) => sumsFor(form, bend).fill(0, number * SUMS, (number + 1) * SUMS),
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
    for (const [at, { weight, sums, spreads, means }] of places.entries()) {
      const [from, to] = [g[at] as number, h[at] as number];
      const within =
        pair === candidate.pair
          ? covarianceWithin(own.rows[at] as StartAndChange, from, to)
          : covarianceOfPairs(sums, [number, other], spreads, means, [from, to]);
      covariance +=
        weight *
        (within +
          ((reading.means[at] as number) - first.mean) *
            ((value.means[at] as number) - second.mean));
    }
    const told = covariance ** 2 / (first.variance * second.variance);
    return 1 - Math.sqrt(Math.max(0, 1 - told));
  };

  const formWeights = Object.fromEntries(
    forms.map(({ name }) => [
      name,
      places.reduce((sum, { form, weight }) => sum + (form.name === name ? weight : 0), 0),
    ]),
  ) as Record<FormName, number>;
  const one = new Float64Array(places.length).fill(1);
  const meanChange = tableOf(places, weights, ({ means }) => means).mixture(0, one);
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
    limitDistance,
    chanceToHold,
    outlyingPairs,
    narrowing,
  };
};

/**
 * Where do spreads, bends and forms lie after the checks? On the places of a grid, each with its weight and
 * with the closed posterior of starts and changes there: what `fit.ts` averages over.
 */
import {
  conditional,
  SUMS,
  type MeanPrior,
  type Spreads,
  type StartAndChange,
  type Sums,
} from './conditional.ts';
import type { WearPrior } from './foams.ts';
import { forms, type Form } from './forms.ts';
import { gridAround, type Axis } from './grid.ts';
import type { Mixture } from './mixture.ts';
import type { WearCheck, WearKind } from './series.ts';

/** The places of least weight are left out up to this sum. */
const NEGLIGIBLE = 1e-3;
/** Spread of the logarithm of the error of one check around its size; judgement. */
const ERROR_LOG_SD = 0.5;
const START_DF = 4;
/**
 * Nodes of the rules: bend, pair spread, check error, start spread. With these the widths of intervals differ
 * by 2 % at most from those of a grid of twice as many nodes on each axis (2 to 30 pairs tried).
 */
const NODES = { bend: 5, pair: 6, error: 4, start: 6 } as const;

/** A place of the grid with what the checks say there. */
export interface Place {
  readonly form: Form;
  readonly bend: number;
  readonly spreads: Spreads;
  readonly sums: Sums;
  readonly means: StartAndChange & { readonly logLikelihood: number };
  /** Logarithm of rule and prior: what the likelihood is multiplied by. */
  readonly logPrior: number;
}

/** Places, those of one bend in a row, with weights that sum to one. */
export interface WeighedPlaces {
  readonly places: readonly Place[];
  readonly weights: Float64Array;
}

const byId = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** The checks as the model takes them: by pair, by distance, values on their scale around `offset`. */
export const arrange = <Kind extends WearKind>(
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
  let last: { readonly form: Form; readonly bend: number; readonly sums: Sums } | null = null;
  /** The pairs' sums for a bend; those of the last bend are kept, for the grid asks for them in a row. */
  const sumsFor = (form: Form, bend: number): Sums => {
    if (last?.form === form && last.bend === bend) return last.sums;
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
    last = { form, bend, sums };
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

/**
 * All places of all forms, their weights summing to one. The axes are the logarithm of the bend, the root of
 * the spread of changes, the logarithm of the error and the root of the spread of starts: on a root, a
 * spread's density is one hill that ends at zero.
 */
export const placesOf = <Kind extends WearKind>(
  sumsFor: (form: Form, bend: number) => Sums,
  prior: WearPrior<Kind>,
  means: MeanPrior,
): WeighedPlaces => {
  const logError = Math.log(prior.checkError.size);
  const spreadAxes: readonly Axis[] = [
    {
      least: 0,
      most: Math.sqrt(5 * prior.pairSpread.size),
      start: Math.sqrt(prior.pairSpread.size / 2),
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
      most: Math.sqrt(12 * prior.startSpread.size),
      start: Math.sqrt(prior.startSpread.size / 2),
      nodes: NODES.start,
    },
  ];
  const places = forms.flatMap((form) => {
    const { bend } = form;
    const at = (place: readonly number[], logWeight = 0): Place => {
      const [logBend = 0, rootPair = 0, logOfError = 0, rootStart = 0] = place;
      const spreads = { pair: rootPair ** 2, error: Math.exp(logOfError), start: rootStart ** 2 };
      const away = bend ? (logBend - Math.log(bend.median)) / bend.logSd : 0;
      const bendPrior = bend
        ? -0.5 * away * away - Math.log(bend.logSd * Math.sqrt(2 * Math.PI))
        : 0;
      const bendHere = Math.exp(logBend);
      const sums = sumsFor(form, bendHere);
      return {
        form,
        bend: bendHere,
        spreads,
        sums,
        means: conditional(sums, spreads, means),
        logPrior:
          logWeight +
          Math.log(form.weight) +
          bendPrior +
          logSpreadPrior(spreads, prior) +
          Math.log(rootPair * rootStart),
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
    }).map(({ place, logWeight }) => at(place, logWeight));
  });
  return weighed(places);
};

/** The places with their weights; the least of them are left out, up to a negligible sum. */
const weighed = (places: readonly Place[]): WeighedPlaces => {
  const logs = Float64Array.from(places, ({ logPrior, means }) => logPrior + means.logLikelihood);
  const top = logs.reduce((most, log) => Math.max(most, log), -Infinity);
  const raw = logs.map((log) => Math.exp(log - top));
  const all = raw.reduce((a, b) => a + b, 0);
  let leftOut = 0;
  const least = raw.toSorted().find((weight) => (leftOut += weight) > NEGLIGIBLE * all) ?? 0;
  const kept = raw.filter((weight) => weight >= least);
  const left = kept.reduce((a, b) => a + b, 0);
  return {
    places: places.filter((_, at) => (raw[at] as number) >= least),
    weights: kept.map((weight) => weight / left),
  };
};

/** Starts and changes at all places, and the mixtures of what follows from them. */
export const tableOf = (
  { places, weights }: WeighedPlaces,
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
export const sharesOf = (places: readonly Place[], x: number): Float64Array => {
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

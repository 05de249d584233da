/**
 * How far does each limit of the brief hold, all rounds on one scale? A card for each limit at each place where it was
 * measured, then one for each other measure: per round its readings, its curve, and where a new pair reaches the limit.
 */
import type { Limit, RecordId } from '../records/index.ts';
import { metres, type Metres } from '../units/index.ts';
import type { AnyWearSeries, RankedCheck, WearFit, WearKind } from '../wear/index.ts';
import type { ProjectLog } from './project-log.ts';
import { TELLING } from './spread-cause.ts';
import { curveOf, pointsOf, type CurvePoint, type WearPoint } from './wear-look.ts';
import {
  fitOf,
  isOf,
  nextOf,
  outlookOf,
  seriesOf,
  type LimitOutlook,
  type WearPlace,
} from './wear-series.ts';

/** What one round says in a card. */
export interface WearRound {
  readonly round: RecordId;
  /** Against the distance on the pair. */
  readonly points: readonly Pick<WearPoint, 'check' | 'pair' | 'x' | 'value'>[];
  /** Null where nothing tells the start. */
  readonly curve: readonly CurvePoint[] | null;
  readonly basis: WearFit<WearKind>['basis'];
  /** The farthest check, and beyond which nothing is told. */
  readonly greatest: Metres;
  readonly reach: Metres;
  readonly pairs: number;
  /** Null in a card without a limit. */
  readonly outlook: LimitOutlook | null;
  /** The limit as a value of this round; null where it is a share of a start that is not known. */
  readonly limitAt: number | null;
  /** The checks that would narrow it most, the most telling first; empty where it is decided. */
  readonly next: readonly RankedCheck[];
}

export interface WearCard {
  /** Null: the brief names no limit for it. */
  readonly limit: Limit | null;
  /** Null: nothing was measured for the limit. */
  readonly kind: WearKind | null;
  readonly site: string | null;
  /** By order; those with a reading. */
  readonly rounds: readonly WearRound[];
}

/** Pairs whose next checks are thought through: half-way to the brief's distance, and at it. */
const PAIRS_OF_NEXT = 3;

interface Fitted {
  readonly round: RecordId;
  readonly series: AnyWearSeries;
  readonly fit: WearFit<WearKind>;
  readonly points: readonly WearPoint[];
}

const limitValue = (limit: Limit | null, curve: WearRound['curve']): number | null =>
  limit === null
    ? null
    : limit.basis === 'reading'
      ? limit.value
      : curve?.[0]
        ? limit.value * curve[0].median
        : null;

const roundOf = (
  log: ProjectLog,
  { round, series, fit, points }: Fitted,
  limit: Limit | null,
): WearRound => {
  const briefM = log.project.brief.distanceM;
  const curve = curveOf(fit, series.kind, briefM);
  const outlook = limit && outlookOf(fit, limit, briefM);
  const decided = outlook?.hold && outlook.hold.word !== 'not-known-yet';
  return {
    round,
    points: points.map(({ check, pair, x, value }) => ({ check, pair, x, value })),
    curve,
    basis: fit.basis,
    greatest: fit.greatestDistance,
    reach: fit.reach,
    pairs: fit.pairs.length,
    outlook,
    limitAt: limitValue(limit, curve),
    next: limit && !decided ? nextOf(log, fit, series, PAIRS_OF_NEXT, 2 * PAIRS_OF_NEXT) : [],
  };
};

/** The checks that a card of the place would ask for next; empty where it has no readings. */
export const nextForCard = (log: ProjectLog, { round, kind, site }: WearPlace) => {
  const series = seriesOf(log, round, 'distance').series.find(
    (one) => one.kind === kind && one.site === site,
  );
  return series
    ? nextOf(log, fitOf(log, round, series), series, PAIRS_OF_NEXT, 2 * PAIRS_OF_NEXT)
    : [];
};

/** One card for each limit and place, in the order of the brief; then what no limit speaks of, by measure and site. */
export const wearCards = (log: ProjectLog): readonly WearCard[] => {
  const fitted = log.rounds.flatMap(({ revision: { id: round } }): Fitted[] => {
    const { checks, series } = seriesOf(log, round, 'distance');
    return series.map((one) => ({
      round,
      series: one,
      fit: fitOf(log, round, one),
      points: pointsOf(checks, one),
    }));
  });
  const placeOf = ({ kind, site }: AnyWearSeries) => `${kind} ${site}`;
  const places = [...new Map(fitted.map(({ series }) => [placeOf(series), series])).values()];
  const cardAt = (limit: Limit | null, place: AnyWearSeries): WearCard => ({
    limit,
    kind: place.kind,
    site: place.site,
    rounds: fitted
      .filter(({ series }) => placeOf(series) === placeOf(place))
      .map((one) => roundOf(log, one, limit)),
  });
  const { limits } = log.project.brief;
  const ofLimits = limits.flatMap((limit): readonly WearCard[] => {
    const own = places.filter((place) => isOf(limit, place));
    return own.length > 0
      ? own.map((place) => cardAt(limit, place))
      : [{ limit, kind: null, site: limit.site ?? null, rounds: [] }];
  });
  const rest = places
    .filter((place) => !limits.some((limit) => isOf(limit, place)))
    .map((place) => cardAt(null, place));
  return [...ofLimits, ...rest];
};

/**
 * Which check comes next? Of the pair that tells most, the soonest that still tells something: it passes there on its
 * way to the most telling one.
 */
export const nextCheck = ({ next }: Pick<WearRound, 'next'>): RankedCheck | null => {
  const [best] = next;
  if (!best) return null;
  return next
    .filter(({ pair, narrowing }) => pair === best.pair && narrowing >= TELLING)
    .reduce((soonest, one) => (one.distance < soonest.distance ? one : soonest), best);
};

/** Where a new pair of the round most likely reaches the limit, if the checks can tell. */
export const reachedAt = ({ outlook }: Pick<WearRound, 'outlook'>): Metres | null => {
  const at = outlook?.distance?.median;
  return at === undefined || at === 'beyond-checks' ? null : metres(at);
};

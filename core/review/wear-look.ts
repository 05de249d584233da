/** How does one kind of bench reading at one site change on the pairs of a round? */
import type { FoamId } from '../foot/index.ts';
import type { RecordId } from '../records/index.ts';
import type { MeanOfUnits } from '../statistics/index.ts';
import { metres, type Metres } from '../units/index.ts';
import {
  checkWarnings,
  differenceOfChanges,
  kindOf,
  leftAgainstRight,
  scaleOf,
  type AnyWearSeries,
  type BothShoes,
  type ChangeDifference,
  type CheckAt,
  type CheckWarning,
  type FormName,
  type OutlyingPair,
  type RankedCheck,
  type WearEstimate,
  type WearFit,
  type WearKind,
  type WearPrior,
} from '../wear/index.ts';
import type { Dose } from './dose.ts';
import type { ProjectLog } from './project-log.ts';
import {
  fitOf,
  isOf,
  nextOf,
  outlookOf,
  seriesOf,
  type LimitOutlook,
  type WearPlace,
} from './wear-series.ts';

export interface WearPlaceSize extends WearPlace {
  readonly checks: number;
}

export interface WearPoint {
  readonly check: RecordId;
  readonly pair: RecordId;
  /** Metres of the dose's reference runner. */
  readonly x: Metres;
  readonly value: number;
  readonly warnings: readonly CheckWarning[];
}

export interface CurvePoint extends WearEstimate {
  readonly x: Metres;
}

export interface WearLook extends WearPlace {
  readonly dose: Dose;
  readonly foam: FoamId | null;
  readonly points: readonly WearPoint[];
  /** Checks whose dose is not known. */
  readonly leftOut: number;
  readonly basis: WearFit<WearKind>['basis'];
  readonly direction: WearFit<WearKind>['direction'];
  readonly forms: Readonly<Record<FormName, number>>;
  readonly toldApart: FormName | null;
  readonly greatest: Metres;
  readonly reach: Metres;
  readonly prior: Pick<WearPrior<WearKind>, 'scale' | 'change'>;
  /** Of the pair asked for, or of a new one of the round; null where nothing tells its start. */
  readonly curve: readonly CurvePoint[] | null;
  /** Of the same at the farthest check. */
  readonly atGreatest: WearEstimate | null;
  /** How much it has changed from new to there: a factor on a ratio scale, else a difference. */
  readonly changeSoFar: WearEstimate;
  /** Of a new pair at the brief's distance, where the checks reach so far. */
  readonly atBrief: { readonly value: WearEstimate | null; readonly change: WearEstimate } | null;
  readonly outlying: readonly OutlyingPair[];
  readonly limits: readonly LimitOutlook[];
  /** The checks that would tell most of a new pair at the brief's distance. */
  readonly next: readonly RankedCheck[];
  /** By how much more the left shoe changed than the right; null below two such pairs. */
  readonly leftAgainstRight: MeanOfUnits | null;
  /** The change by `at` at every site of the same kind, the greatest first; empty where there is one site. */
  readonly sites: readonly {
    readonly site: string;
    readonly at: Metres;
    readonly change: WearEstimate;
  }[];
  /** The change by `at` against that of other rounds with the same readings. */
  readonly against: readonly {
    readonly round: RecordId;
    readonly at: Metres;
    readonly difference: ChangeDifference;
  }[];
}

/** Points of a drawn curve. */
const CURVE_POINTS = 25;

/** A length cannot be less than nothing, though a straight line through it can. */
const possible = <E extends WearEstimate>(kind: WearKind, estimate: E): E =>
  kind.endsWith(' mm')
    ? {
        ...estimate,
        lower: Math.max(0, estimate.lower),
        median: Math.max(0, estimate.median),
        upper: Math.max(0, estimate.upper),
      }
    : estimate;

/** The curve from new to the brief's distance, as far as the checks reach; null where nothing tells the start. */
export const curveOf = (
  fit: WearFit<WearKind>,
  kind: WearKind,
  briefM: Metres,
  of: { readonly pair?: string } = {},
): readonly CurvePoint[] | null => {
  const end = Math.min(fit.reach, Math.max(briefM, fit.greatestDistance));
  const curve = Array.from({ length: CURVE_POINTS }, (_, at) => {
    const x = metres((end * at) / (CURVE_POINTS - 1));
    const value = fit.valueAt(x, of);
    return value && possible(kind, { x, ...value });
  });
  return curve.every((point) => point !== null) ? curve : null;
};

/** What of a project can be looked at, by round, kind and site. */
export const wearPlaces = (log: ProjectLog): readonly WearPlaceSize[] =>
  log.rounds.flatMap(({ revision }) =>
    seriesOf(log, revision.id, 'distance').series.map(({ kind, site, checks }) => ({
      round: revision.id,
      kind,
      site,
      checks: checks.length,
    })),
  );

/**
 * Looks at one place.
 * @param pair whose curve is wanted; null: that of a new pair of the round
 * @returns null where the round has no such readings
 */
export const lookAtWear = (
  log: ProjectLog,
  { round, kind, site }: WearPlace,
  dose: Dose,
  pair: RecordId | null,
): WearLook | null => {
  const { checks, leftOut, series: all } = seriesOf(log, round, dose);
  const series = all.find((one) => one.kind === kind && one.site === site);
  if (!series) return null;
  const fit = fitOf(log, round, series);
  const { brief } = log.project;
  const of = pair === null ? {} : { pair };
  const inReach = brief.distanceM <= fit.reach;
  const valueThere = fit.valueAt(brief.distanceM);
  const valueSoFar = fit.valueAt(fit.greatestDistance, of);
  return {
    round,
    kind,
    site,
    dose,
    foam: log.rounds.find(({ revision }) => revision.id === round)?.body.foam ?? null,
    points: pointsOf(checks, series),
    leftOut,
    basis: fit.basis,
    direction: fit.direction,
    forms: fit.forms,
    toldApart: fit.toldApart,
    greatest: fit.greatestDistance,
    reach: fit.reach,
    prior: { scale: fit.prior.scale, change: fit.prior.change },
    curve: curveOf(fit, kind, brief.distanceM, of),
    atGreatest: valueSoFar && possible(kind, valueSoFar),
    changeSoFar: fit.changeAt(fit.greatestDistance, of),
    atBrief: inReach
      ? {
          value: valueThere && possible(kind, valueThere),
          change: fit.changeAt(brief.distanceM),
        }
      : null,
    outlying: fit.outlyingPairs(),
    limits: brief.limits
      .filter((limit) => isOf(limit, series))
      .map((limit) => outlookOf(fit, limit, brief.distanceM)),
    next: nextOf(log, fit, series, 4),
    leftAgainstRight: leftAgainstRight(bothShoes(checks, kind, site)),
    sites: changesBySite(log, round, all, kind),
    against: againstOthers(log, fit, { round, kind, site }, dose),
  };
};

/** Where it goes first: the same kind at all its sites, as far as all of them were checked. */
const changesBySite = (
  log: ProjectLog,
  round: RecordId,
  all: readonly AnyWearSeries[],
  kind: WearKind,
): WearLook['sites'] => {
  const fits = all
    .filter((one) => one.kind === kind)
    .map((one) => fitOf(log, round, one))
    .filter(({ basis }) => basis === 'checks');
  if (fits.length < 2) return [];
  const at = metres(Math.min(...fits.map(({ greatestDistance }) => greatestDistance)));
  const middle = scaleOf(kind) === 'ratio' ? 1 : 0;
  return fits
    .map((fit) => ({ site: fit.site, at, change: fit.meanChangeAt(at) }))
    .sort((a, b) => Math.abs(b.change.median - middle) - Math.abs(a.change.median - middle));
};

type Checks = ReturnType<typeof seriesOf>['checks'];

/** The readings of one series with the check of each, and what speaks against reading it as wear. */
export const pointsOf = (
  checks: Checks,
  { kind, site, checks: series }: AnyWearSeries,
): WearPoint[] => {
  const left = [...series] as { pair: string; distance: number; value: number }[];
  return checks.flatMap((own) => {
    const { pair, check, distance, body, readings } = own;
    if (!readings.some((one) => kindOf(one) === kind && one.site === site)) return [];
    const at = left.findIndex((one) => one.pair === pair && one.distance === distance);
    const [found] = at < 0 ? [] : left.splice(at, 1);
    if (!found) return [];
    const here = (one: (typeof checks)[number]): CheckAt => ({
      distance: one.distance,
      readings: one.readings.filter((reading) => kindOf(reading) === kind),
      ...(one.body.restedH !== undefined && { restedH: one.body.restedH }),
      ...(one.body.temperatureC !== undefined && { temperatureC: one.body.temperatureC }),
    });
    const earlier = checks.filter(
      (one) => one.pair === pair && Date.parse(one.body.at) < Date.parse(body.at),
    );
    return [
      {
        check,
        pair,
        x: distance,
        value: found.value,
        warnings: checkWarnings(here(own), earlier.map(here)),
      },
    ];
  });
};

const bothShoes = (checks: Checks, kind: WearKind, site: string): BothShoes[] =>
  checks.flatMap(({ pair, distance, readings }) => {
    const of = (foot: 'left' | 'right') =>
      readings.find((one) => kindOf(one) === kind && one.site === site && one.foot === foot)?.value;
    const [left, right] = [of('left'), of('right')];
    return left === undefined || right === undefined ? [] : [{ pair, distance, left, right }];
  });

const againstOthers = (
  log: ProjectLog,
  fit: WearFit<WearKind>,
  { round, kind, site }: WearPlace,
  dose: Dose,
): WearLook['against'] => {
  if (fit.basis === 'prior-only') return [];
  return log.rounds.flatMap(({ revision }) => {
    if (revision.id === round) return [];
    const series = seriesOf(log, revision.id, dose).series.find(
      (one) => one.kind === kind && one.site === site,
    );
    if (!series) return [];
    const other = fitOf(log, revision.id, series);
    if (other.basis === 'prior-only') return [];
    const at = metres(Math.min(fit.greatestDistance, other.greatestDistance));
    return [{ round: revision.id, at, difference: differenceOfChanges(fit, other, at) }];
  });
};

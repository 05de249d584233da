/** How does one kind of bench reading at one site change on the pairs of a round, and how far does it hold? */
import type { FoamId } from '../foot/index.ts';
import { unitsOf, type Limit, type RecordId, type Round, type Tester } from '../records/index.ts';
import { metres, type Metres } from '../units/index.ts';
import {
  checkWarnings,
  differenceOfChanges,
  fitWear,
  isUsable,
  kindOf,
  leftAgainstRight,
  nextChecks,
  scaleOf,
  wearPrior,
  wearSeries,
  type AnyWearSeries,
  type BothShoes,
  type CandidateCheck,
  type ChangeDifference,
  type CheckAt,
  type CheckWarning,
  type FormName,
  type Hold,
  type LimitDistance,
  type OutlyingPair,
  type RankedCheck,
  type WearEstimate,
  type WearFit,
  type WearKind,
  type WearPrior,
  type WearSeries,
} from '../wear/index.ts';
import type { MeanOfUnits } from '../statistics/index.ts';
import { doseAt, type Dose } from './dose.ts';
import { ownRecords, withdrawnPairs, type LoggedPair, type ProjectLog } from './project-log.ts';

/** Kind and site of a round whose readings can stand in one line. */
export interface WearPlace {
  readonly round: RecordId;
  readonly kind: WearKind;
  readonly site: string;
}

export interface WearPlaceSize extends WearPlace {
  readonly checks: number;
}

/** A limit of the brief at this place, and how far a new pair of the round keeps it. */
export interface LimitOutlook {
  readonly limit: Limit;
  /** Null: nothing tells the start of a new pair. */
  readonly distance: LimitDistance | null;
  /** Null as well where no change was seen yet. */
  readonly hold: Hold | null;
  /** The brief's distance lies beyond twice the distance of the checks: nothing is said of it. */
  readonly tooFar: boolean;
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
const NEXT = 3;

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

const testersOf = ({ records }: ProjectLog): ReadonlyMap<RecordId, Tester> =>
  new Map(records.tester.map(({ body, revision }) => [revision.id, body]));

const pairsOf = (log: ProjectLog, round: RecordId): readonly LoggedPair[] =>
  log.pairs.filter((pair) => pair.round === round);

/** The series of a round's checks, each check at its dose; `leftOut` counts those without one. */
const seriesOf = (log: ProjectLog, round: RecordId, dose: Dose) => {
  const testers = testersOf(log);
  let leftOut = 0;
  const checks = pairsOf(log, round).flatMap((pair) =>
    pair.checks.flatMap(({ body, revision }) => {
      const x = doseAt(pair, body, testers, dose);
      if (x === null) {
        leftOut++;
        return [];
      }
      return [{ pair: pair.id, check: revision.id, distance: x, body, readings: body.readings }];
    }),
  );
  return { checks, leftOut, series: wearSeries(checks) };
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

/** A limit as read is in the measure's usual unit; a share of the value when new has none. */
const isOf = (limit: Limit, { kind, site }: Pick<WearPlace, 'kind' | 'site'>): boolean =>
  limit.value > 0 &&
  (limit.site === undefined || limit.site === site) &&
  (limit.basis === 'reading'
    ? kind === `${limit.measure} ${unitsOf[limit.measure][0]}`
    : kind.startsWith(`${limit.measure} `));

/**
 * The start that a blueprint tells, over both feet; its tolerance is read as two standard deviations either
 * way. Null where it tells none, or one that cannot be.
 */
const startOf = (
  drawn: Round['blueprint'],
  kind: WearKind,
): { readonly value: number; readonly sd: number } | null => {
  const mean = (of: (one: Round['blueprint'][number]) => number) =>
    drawn.reduce((sum, one) => sum + of(one), 0) / drawn.length;
  const value = mean(({ nominal, lower, upper }) => nominal + (lower + upper) / 2);
  const sd = mean(({ lower, upper }) => (upper - lower) / 4);
  return isUsable(kind, value) && sd > 0 ? { value, sd } : null;
};

/** The fit of one series, with the foam's prior and the blueprint's start. */
const fitOf = (log: ProjectLog, round: RecordId, series: AnyWearSeries): WearFit<WearKind> => {
  const body = log.rounds.find(({ revision }) => revision.id === round)?.body;
  const drawn = body?.blueprint.filter(
    ({ measure, unit, site }) => series.kind === `${measure} ${unit}` && site === series.site,
  );
  const start = startOf(drawn ?? [], series.kind);
  const prior = wearPrior(series.kind, body?.foam ?? 'other', start ?? undefined);
  // One kind in both, which the types cannot see through the union.
  return fitWear(series as WearSeries<WearKind>, prior);
};

/** Pairs that came apart or are withdrawn: nobody shall run them to another check. */
const notWorn = (log: ProjectLog): ReadonlySet<string> =>
  new Set([
    ...ownRecords(log.records['damage-report'], log.id).map(({ body }) => body.pair),
    ...withdrawnPairs(log),
  ]);

/**
 * Checks that a shop could make next: the pairs that went farthest, for they are there first, half-way to
 * the brief's distance and at it; in whole tens of kilometres.
 */
const candidates = (
  log: ProjectLog,
  series: AnyWearSeries,
  pairs: number,
): readonly CandidateCheck[] => {
  const briefM = log.project.brief.distanceM;
  const gone = notWorn(log);
  const last = new Map<string, number>();
  for (const { pair, distance } of series.checks)
    last.set(pair, Math.max(last.get(pair) ?? 0, distance));
  const farthest = [...last]
    .filter(([pair, distance]) => distance < briefM && !gone.has(pair))
    .sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1))
    .slice(0, pairs);
  const at = (share: number) =>
    farthest.map(([pair, distance]) => ({
      pair,
      distance: metres(Math.ceil((distance + share * (briefM - distance)) / 10_000) * 10_000),
    }));
  return [...at(1), ...at(0.5)];
};

const outlookOf = (fit: WearFit<WearKind>, limit: Limit, briefM: Metres): LimitOutlook => ({
  limit,
  distance: fit.limitDistance(limit),
  // Without a change seen on this foam nothing is said of holding: the prior is no evidence.
  hold: fit.basis === 'checks' ? fit.chanceToHold(limit, briefM) : null,
  tooFar: briefM > fit.reach,
});

/** The most telling of the next checks; `pairs` bounds how many are thought through. */
const nextOf = (
  log: ProjectLog,
  fit: WearFit<WearKind>,
  series: AnyWearSeries,
  pairs: number,
): readonly RankedCheck[] =>
  nextChecks(fit, candidates(log, series, pairs), log.project.brief.distanceM).slice(0, NEXT);

/** What the series of a round say of the brief's limits: the fit and the outlook of each limit. */
export interface FittedLimit extends WearPlace, LimitOutlook {
  readonly basis: WearFit<WearKind>['basis'];
  readonly pairs: number;
  readonly checks: number;
  readonly next: readonly RankedCheck[];
}

/** The limits of the brief that this round's readings speak to, each place by itself. */
export const fitLimits = (log: ProjectLog, round: RecordId): readonly FittedLimit[] => {
  const { limits, distanceM } = log.project.brief;
  return seriesOf(log, round, 'distance').series.flatMap((series) => {
    const own = limits.filter((limit) => isOf(limit, series));
    if (own.length === 0) return [];
    const fit = fitOf(log, round, series);
    return own.map((limit): FittedLimit => {
      const outlook = outlookOf(fit, limit, distanceM);
      const open = outlook.hold === null || outlook.hold.word === 'not-known-yet';
      return {
        round,
        kind: series.kind,
        site: series.site,
        basis: fit.basis,
        ...outlook,
        pairs: fit.pairs.length,
        checks: series.checks.length,
        next: open ? nextOf(log, fit, series, 2) : [],
      };
    });
  });
};

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
  const end = Math.min(fit.reach, Math.max(brief.distanceM, fit.greatestDistance));
  const curve = Array.from({ length: CURVE_POINTS }, (_, at) => {
    const x = metres((end * at) / (CURVE_POINTS - 1));
    const value = fit.valueAt(x, of);
    return value && possible(kind, { x, ...value });
  });
  const inReach = brief.distanceM <= fit.reach;
  const valueThere = fit.valueAt(brief.distanceM);
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
    curve: curve.every((point) => point !== null) ? curve : null,
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

const pointsOf = (checks: Checks, { kind, site, checks: series }: AnyWearSeries): WearPoint[] => {
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

/**
 * Which series of bench readings has a round, and what is fitted to one: what the verdict's limits and the look at
 * one place share.
 */
import { unitsOf, type Limit, type RecordId, type Round, type Tester } from '../records/index.ts';
import { metres, type Metres } from '../units/index.ts';
import {
  fitWear,
  isUsable,
  nextChecks,
  wearPrior,
  wearSeries,
  type AnyWearSeries,
  type CandidateCheck,
  type Hold,
  type LimitDistance,
  type RankedCheck,
  type WearFit,
  type WearKind,
  type WearSeries,
} from '../wear/index.ts';
import { doseAt, type Dose } from './dose.ts';
import { ownRecords, withdrawnPairs, type LoggedPair, type ProjectLog } from './project-log.ts';

/** Kind and site of a round whose readings can stand in one line. */
export interface WearPlace {
  readonly round: RecordId;
  readonly kind: WearKind;
  readonly site: string;
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

const NEXT = 3;

const testersOf = ({ records }: ProjectLog): ReadonlyMap<RecordId, Tester> =>
  new Map(records.tester.map(({ body, revision }) => [revision.id, body]));

const pairsOf = (log: ProjectLog, round: RecordId): readonly LoggedPair[] =>
  log.pairs.filter((pair) => pair.round === round);

/** What was put together and fitted of a log: verdict, curves and next checks ask for the same again and again. */
interface Known {
  readonly series: Map<string, ReturnType<typeof readSeries>>;
  readonly fits: WeakMap<AnyWearSeries, WearFit<WearKind>>;
}
const knownOf = new WeakMap<ProjectLog, Known>();
const knownBy = (log: ProjectLog): Known => {
  const known = knownOf.get(log) ?? { series: new Map(), fits: new WeakMap() };
  knownOf.set(log, known);
  return known;
};

/** The series of a round's checks, each check at its dose; `leftOut` counts those without one. */
export const seriesOf = (
  log: ProjectLog,
  round: RecordId,
  dose: Dose,
): ReturnType<typeof readSeries> => {
  const { series } = knownBy(log);
  const key = `${round} ${dose}`;
  const found = series.get(key) ?? readSeries(log, round, dose);
  series.set(key, found);
  return found;
};

const readSeries = (log: ProjectLog, round: RecordId, dose: Dose) => {
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

/** A limit as read is in the measure's usual unit; a share of the value when new has none. */
export const isOf = (limit: Limit, { kind, site }: Pick<WearPlace, 'kind' | 'site'>): boolean =>
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

/** The fit of one series of the round, with the foam's prior and the blueprint's start. */
export const fitOf = (
  log: ProjectLog,
  round: RecordId,
  series: AnyWearSeries,
): WearFit<WearKind> => {
  const { fits } = knownBy(log);
  const fit = fits.get(series) ?? fitSeries(log, round, series);
  fits.set(series, fit);
  return fit;
};

const fitSeries = (log: ProjectLog, round: RecordId, series: AnyWearSeries): WearFit<WearKind> => {
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

export const outlookOf = (fit: WearFit<WearKind>, limit: Limit, briefM: Metres): LimitOutlook => ({
  limit,
  distance: fit.limitDistance(limit),
  // Without a change seen on this foam nothing is said of holding: the prior is no evidence.
  hold: fit.basis === 'checks' ? fit.chanceToHold(limit, briefM) : null,
  tooFar: briefM > fit.reach,
});

/** The most telling of the next checks; `pairs` bounds how many are thought through, `most` how many are named. */
export const nextOf = (
  log: ProjectLog,
  fit: WearFit<WearKind>,
  series: AnyWearSeries,
  pairs: number,
  most = NEXT,
): readonly RankedCheck[] =>
  nextChecks(fit, candidates(log, series, pairs), log.project.brief.distanceM).slice(0, most);

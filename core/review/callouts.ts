/**
 * What would a maker point at on the shoe? Complaints that several feel, what a change mended, samples out of
 * tolerance, what came apart, what wears out before the brief's distance. Each names where on the shoe it lies and
 * the record behind it; the most urgent first.
 */
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';
import { mileageAt } from '../mileage/index.ts';
import type {
  Change,
  DamageReport,
  Foot,
  Limit,
  Measure,
  MeasureUnit,
  RecordId,
} from '../records/index.ts';
import type { Metres } from '../units/index.ts';
import { surenessOf, type EvidenceWord, type WeighedCell } from '../complaints/index.ts';
import { changeArrivals, isAbsent } from './change-arrivals.ts';
import { isProven } from './closer-look.ts';
import { compareComplaint } from './compare-rounds.ts';
import { ownRecords, type ProjectLog } from './project-log.ts';
import type { Review, RoundReview } from './review-types.ts';
import { zoneAtSite, zoneOfDamageAt } from './shoe-spots.ts';
import { isOutOfTolerance } from './tolerance.ts';
import type { Verdict } from './verdict.ts';

/** One side, or both where neither has nearly all of the reports. */
export type Side = Foot | 'both';

interface Spot {
  readonly zone: ZoneCode;
  readonly side: Side;
}

/** Reports of a complaint among those asked. */
export interface Reported {
  readonly testers: number;
  readonly askedTesters: number;
  readonly runs: number;
  readonly askedRuns: number;
}

/** A change that names the complaint it was made for. */
export interface MeantChange extends Pick<Change, 'part' | 'what'> {
  /** The round that brought it. */
  readonly round: RecordId;
}

export type Callout = Spot &
  (
    | ({
        readonly what: 'complaint';
        readonly kind: ComplaintKind;
        readonly round: RecordId;
        readonly word: EvidenceWord;
        /** Testers for whom it is proved. */
        readonly proved: readonly RecordId[];
        /** Rounds in which at least two testers reported it. */
        readonly rounds: number;
      } & Reported)
    | {
        readonly what: 'better';
        readonly kind: ComplaintKind;
        readonly earlier: RecordId;
        readonly later: RecordId;
        readonly verdict: 'mended' | 'better';
        readonly before: Reported;
        readonly after: Reported;
        /** The changes after the earlier round, up to the later one, that were meant to mend it. */
        readonly changes: readonly MeantChange[];
      }
    | {
        readonly what: 'out-of-tolerance';
        readonly pair: RecordId;
        readonly measure: Measure;
        readonly site: string;
        readonly unit: MeasureUnit;
        readonly deviation: number;
        /** Pairs that were measured against a blueprint. */
        readonly measured: number;
      }
    | {
        readonly what: 'damage';
        readonly damage: RecordId;
        readonly pair: RecordId;
        readonly kind: DamageReport['what'];
        readonly pairM: Metres;
      }
    | {
        readonly what: 'wear';
        readonly round: RecordId;
        readonly limit: Limit;
        readonly site: string;
        /** Where a new pair most likely reaches the limit. */
        readonly reachedM: Metres;
        readonly briefM: Metres;
      }
  );

/** Nearly all reports on one side point to that shoe. Judgement, no source. */
const ONE_SIDED = 0.9;
/** Of each sort so many: a shoe with more than ten callouts is read by nobody. */
const MOST = 5;

/** The side that nearly all reports are on. */
export const sideOf = ({ left, right }: Readonly<Record<Foot, number>>): Side => {
  const all = left + right;
  return all === 0
    ? 'both'
    : left >= ONE_SIDED * all
      ? 'left'
      : right >= ONE_SIDED * all
        ? 'right'
        : 'both';
};

/** Fewer reports tell no side: of five alike one set in sixteen lies on one side by chance. Judgement, no source. */
const LEAST_ON_SIDE = 5;

/** The shoe whose build is to be looked at first: nearly all of enough reports are on it; null: neither. */
export const oneSided = (byFoot: Readonly<Record<Foot, number>>): Foot | null => {
  const side = sideOf(byFoot);
  return side === 'both' || byFoot.left + byFoot.right < LEAST_ON_SIDE ? null : side;
};

const reportedOf = (
  { complaints: { asked } }: RoundReview,
  cell: WeighedCell | undefined,
): Reported => ({
  testers: cell?.testersOnce ?? 0,
  askedTesters: asked.testers,
  runs: cell?.runs ?? 0,
  askedRuns: asked.runs,
});

const cellIn = (round: RoundReview, zone: ZoneCode, kind: ComplaintKind) =>
  round.complaints.cells.find((one) => one.zone === zone && one.kind === kind);

/** Whether it may be said of it that it is clear, or likely. */
const isTelling = ({ word, testersOnce }: WeighedCell): boolean =>
  surenessOf(word, testersOnce) !== 'too-early';

/** The latest round in which anybody was asked. */
export const latestAsked = ({ rounds }: Review): RoundReview | undefined =>
  rounds.findLast(({ complaints }) => complaints.asked.runs > 0);

const complaintsOf = (review: Review): Callout[] => {
  const latest = latestAsked(review);
  if (!latest) return [];
  return latest.complaints.cells.filter(isTelling).map((cell) => ({
    what: 'complaint',
    zone: cell.zone,
    side: sideOf(cell.byFoot),
    kind: cell.kind,
    round: latest.id,
    word: cell.word,
    proved: cell.provenTesters.map(({ tester }) => tester),
    rounds: review.rounds.filter(
      (round) => (cellIn(round, cell.zone, cell.kind)?.testersOnce ?? 0) >= 2,
    ).length,
    ...reportedOf(latest, cell),
  }));
};

/** Every change after one round, up to another, that names a kind of complaint there or anywhere, and is not measured to be absent. */
const meantFor = (
  log: ProjectLog,
  { zone, kind }: { readonly zone: ZoneCode; readonly kind: ComplaintKind },
  after: number,
  upTo: number,
): readonly MeantChange[] =>
  log.rounds
    .filter(({ body }) => body.order > after && body.order <= upTo)
    .flatMap(({ body, revision }) => {
      const arrivals = changeArrivals(log, revision.id);
      return body.changes.flatMap(({ part, what, mends }, at) =>
        mends?.kind === kind && (mends.zone ?? zone) === zone && !isAbsent(arrivals[at] ?? null)
          ? [{ round: revision.id, part, what }]
          : [],
      );
    });

const bettersOf = (log: ProjectLog, review: Review): Callout[] => {
  const latest = latestAsked(review);
  if (!latest) return [];
  const seen = new Set<string>();
  return review.rounds
    .filter(({ order }) => order < latest.order)
    .reverse()
    .flatMap((round) =>
      round.complaints.cells
        .filter(({ word }) => word === 'recurs-across-testers')
        .flatMap((cell): Callout[] => {
          const { zone, kind } = cell;
          const now = cellIn(latest, zone, kind);
          if (seen.has(`${zone} ${kind}`) || (now && isTelling(now))) return [];
          seen.add(`${zone} ${kind}`);
          const { verdict } = compareComplaint(log, round.id, latest.id, { zone, kind });
          if (verdict !== 'mended' && verdict !== 'better') return [];
          return [
            {
              what: 'better',
              zone,
              kind,
              side: sideOf(cell.byFoot),
              earlier: round.id,
              later: latest.id,
              verdict,
              before: reportedOf(round, cell),
              after: reportedOf(latest, now),
              changes: meantFor(log, cell, round.order, latest.order),
            },
          ];
        }),
    );
};

/** A place of a round, and a pair where it is about one. */
interface Measured {
  readonly round: RecordId | undefined;
  readonly measure: Measure;
  readonly site: string;
  readonly pair?: string;
}

/** Whether a lead closed a finding of these readings: what is settled is pointed at no more. */
const isSettled = (log: ProjectLog, one: Measured): boolean =>
  ownRecords(log.records.finding, log.id).some(
    ({ body: { state, round, evidence } }) =>
      state === 'closed' &&
      round === one.round &&
      evidence?.place?.measure === one.measure &&
      evidence.place.site === one.site &&
      evidence.reading?.pair === one.pair,
  );

const tolerancesOf = (log: ProjectLog, review: Review): Callout[] => {
  const measured = review.pairs.filter(({ outOfTolerance }) => outOfTolerance.judged > 0).length;
  const out = new Set(
    review.pairs.filter((pair) => isOutOfTolerance(pair.outOfTolerance)).map(({ id }) => id),
  );
  const worst = new Map<string, Callout & { readonly what: 'out-of-tolerance' }>();
  for (const { pair, measure, site, unit, deviation, foot, word } of review.deviations) {
    if (!out.has(pair) || (word !== 'not-conforming' && word !== 'outside')) continue;
    const { code, round } = review.pairs.find(({ id }) => id === pair) ?? {};
    if (code !== undefined && isSettled(log, { round, measure, site, pair: code })) continue;
    const key = `${pair} ${measure} ${site}`;
    const known = worst.get(key);
    const isWorse = !known || Math.abs(deviation) > Math.abs(known.deviation);
    worst.set(key, {
      what: 'out-of-tolerance',
      zone: zoneAtSite(site) ?? 'P6',
      side: known && known.side !== foot ? 'both' : foot,
      ...{ pair, measure, site, unit, measured },
      deviation: isWorse ? deviation : known.deviation,
    });
  }
  return [...worst.values()];
};

const damagesOf = (log: ProjectLog, review: Review): Callout[] =>
  review.damages.flatMap(({ id, pair, what, at }): Callout[] => {
    const own = log.pairs.find((one) => one.id === pair);
    const record = log.records['damage-report'].find(({ revision }) => revision.id === id);
    if (!own) return [];
    return [
      {
        what: 'damage',
        zone: zoneOfDamageAt(what),
        side: record?.body.foot ?? 'both',
        damage: id,
        pair,
        kind: what,
        pairM: mileageAt(own.curve, Date.parse(at)),
      },
    ];
  });

/** Of each limit the round in which it is reached first, where that is before the brief's distance. */
const wearsOf = (log: ProjectLog, verdicts: readonly Verdict[]): Callout[] => {
  const { distanceM: briefM } = log.project.brief;
  const soonest = new Map<string, Callout & { readonly what: 'wear' }>();
  for (const { round, items } of verdicts)
    for (const item of items) {
      if (item.what !== 'wear' || item.distance === null) continue;
      const { median } = item.distance;
      if (typeof median !== 'number' || median >= briefM) continue;
      if (isSettled(log, { round, measure: item.limit.measure, site: item.site })) continue;
      const key = `${item.kind} ${item.site} ${item.limit.value}`;
      const known = soonest.get(key);
      if (known && known.reachedM <= median) continue;
      soonest.set(key, {
        what: 'wear',
        zone: zoneAtSite(item.site) ?? 'P6',
        side: 'both',
        round,
        limit: item.limit,
        site: item.site,
        reachedM: median,
        briefM,
      });
    }
  return [...soonest.values()];
};

/**
 * The callouts of a project as it stands.
 * @param verdicts one for each round of the review
 */
export const calloutsOf = (
  log: ProjectLog,
  review: Review,
  verdicts: readonly Verdict[],
): readonly Callout[] => {
  const complaints = complaintsOf(review);
  const isProvedOne = (one: Callout) => one.what === 'complaint' && isProven(one);
  return [
    damagesOf(log, review),
    complaints.filter(isProvedOne),
    wearsOf(log, verdicts),
    tolerancesOf(log, review),
    complaints.filter((one) => !isProvedOne(one)),
    bettersOf(log, review),
  ].flatMap((some) => some.slice(0, MOST));
};

/**
 * What stands in the report of one round? Everything that its sections draw or say, as plain values, so that
 * the desk's worker and the terminal hand the same to the same document.
 */
import { countZones, type CellName, type ZoneCount } from '../complaints/index.ts';
import { trades, tradesOfComplaint, type ComplaintKind, type Trade } from '../foot/index.ts';
import type { BySurface } from '../mileage/index.ts';
import type { Finding, Foot, RecordId, Round } from '../records/index.ts';
import type { Callout } from './callouts.ts';
import { lookAtChanges, type ChangesLook } from './changes-look.ts';
import { isProven } from './closer-look.ts';
import { lookAtComfort, type AttributeLook } from './comfort-look.ts';
import { ownRecords, type ProjectLog } from './project-log.ts';
import {
  calloutsOfRound,
  feltFrom,
  pairLines,
  saidOfRuns,
  settlesOf,
  skinOf,
  surfacesOf,
  type FeltFrom,
  type PairLine,
  type SaidOfRun,
  type SkinFound,
} from './report-parts.ts';
import type { Deviation, Review } from './review-types.ts';
import { lookAtRound, type RoundLook } from './round-look.ts';
import type { Settle } from './settle.ts';
import { feetAnswers } from './round-review.ts';
import { summarise, type ReviewSummary, type RoundSummary } from './summary.ts';
import type { Verdict } from './verdict.ts';
import { lookAtWear, wearPlaces, type WearLook } from './wear-look.ts';

export type ZonesOfFeet = Readonly<Record<Foot, readonly ZoneCount[]>>;

export interface ReportedFinding {
  readonly id: RecordId;
  readonly body: Finding;
}

export interface RoundReport extends RoundLook {
  readonly project: ReviewSummary['project'];
  /** Until when the data go, milliseconds since 1970. */
  readonly nowMs: number;
  readonly round: RoundSummary;
  /** The round before it; null for the first. */
  readonly before: RoundSummary | null;
  /** Names of all rounds, codes of all pairs and testers of the project, by id. */
  readonly names: Readonly<
    Record<'rounds' | 'pairs' | 'testers', Readonly<Record<string, string>>>
  >;
  /** Reports by zone over all kinds. */
  readonly zones: ZonesOfFeet;
  /** The same of each kind that is drawn, that a finding is about, or that a trade's sheet begins with. */
  readonly zonesByKind: Readonly<Partial<Record<ComplaintKind, ZonesOfFeet>>>;
  /** Every place that a limit of the brief or a finding names; else the one that was checked most. */
  readonly wear: readonly WearLook[];
  /** Every place of the round with a reading, for the sheets of the trades. */
  readonly curves: readonly WearLook[];
  /** What shows on the shoe in this round, the most urgent first. */
  readonly callouts: readonly Callout[];
  /** This round against the one before as one story; null for the first. */
  readonly story: ChangesLook | null;
  /** Comfort of this round, attribute by attribute, along the kilometres. */
  readonly comfort: readonly AttributeLook[];
  /** What testers wrote of its runs, the latest first. */
  readonly said: readonly SaidOfRun[];
  /** What its sole is made of, as far as it is noted. */
  readonly sole: Pick<Round, 'foam' | 'midsole' | 'outsole'>;
  /** From where on each complaint was felt. */
  readonly from: readonly FeltFrom[];
  /** Where the skin blistered or broke. */
  readonly skin: readonly SkinFound[];
  /** Testers whose pain keeps them out of one of its pairs until a lead has answered. */
  readonly hurting: readonly RecordId[];
  /** On what its pairs were run. */
  readonly surfaces: BySurface;
  /** What would settle each item of the verdict, in their order; null where it holds. */
  readonly settles: readonly (Settle | null)[];
  /** Its pairs, the one with most kilometres first. */
  readonly lines: readonly PairLine[];
  /** Arrival readings of the round's pairs that are on the blueprint. */
  readonly deviations: readonly Deviation[];
  readonly damages: Review['damages'];
  /** Which rounds testers prefer, as far as this round is one of them. */
  readonly preferences: Review['preferences'];
  /** What the round showed, most urgent first. */
  readonly findings: readonly ReportedFinding[];
  /** By finding: the words that a lead quoted and sent, as far as the record they are from still counts. */
  readonly quotes: Readonly<Record<RecordId, readonly string[]>>;
  /** Findings of other rounds whose change this round carries. */
  readonly carried: readonly ReportedFinding[];
  /** Runs and readings of the round's pairs that are in no figure: they wait for the lead, or were set aside. */
  readonly outside: { readonly waiting: number; readonly setAside: number };
  /** Records that this version cannot read: they count in no figure. */
  readonly leftOut: number;
}

const urgency = ['high', 'medium', 'low'] as const;

/** Most urgent first; of equal ones, by part and then as they were written. */
export const byUrgency = (a: ReportedFinding, b: ReportedFinding): number =>
  urgency.indexOf(a.body.priority) - urgency.indexOf(b.body.priority) ||
  (a.body.part < b.body.part ? -1 : a.body.part > b.body.part ? 1 : 0) ||
  (a.id < b.id ? -1 : 1);

/** All findings of a project, most urgent first. */
export const findingsOf = ({ id, records }: Pick<ProjectLog, 'id' | 'records'>) =>
  ownRecords(records.finding, id)
    .map(({ body, revision }): ReportedFinding => ({ id: revision.id, body }))
    .sort(byUrgency);

/** What was felt that usually points to the trade, most runs first. */
export const cellsOfTrade = <C extends CellName & { readonly runs: number }>(
  cells: readonly C[],
  trade: Trade,
): readonly C[] =>
  cells
    .filter(({ kind, zone }) => tradesOfComplaint(kind, zone).includes(trade))
    .sort((a, b) => b.runs - a.runs);

const sentQuotes = ({ id, records }: ProjectLog): RoundReport['quotes'] => {
  const counting = new Set(
    [...records.run, ...records['damage-report'], ...records['bench-check']].map(
      ({ revision }) => revision.id,
    ),
  );
  const quotes: Record<RecordId, string[]> = {};
  for (const { body } of ownRecords(records.quote, id))
    if (body.finding !== undefined && body.sent !== undefined && counting.has(body.source))
      (quotes[body.finding] ??= []).push(body.words);
  return quotes;
};

/** The looks that the report shows: limits of the brief, places of findings, else the most checked one. */
const looksAtWear = (
  log: ProjectLog,
  round: RecordId,
  { items }: Verdict,
  findings: readonly ReportedFinding[],
): Pick<RoundReport, 'wear' | 'curves'> => {
  const places = wearPlaces(log).filter((place) => place.round === round);
  const wanted = new Set<string>();
  for (const item of items) if (item.what === 'wear') wanted.add(`${item.kind} ${item.site}`);
  for (const { body } of findings) {
    const place = body.evidence?.place;
    if (place) wanted.add(`${place.measure} ${place.unit} ${place.site}`);
  }
  const named = places.filter(({ kind, site }) => wanted.has(`${kind} ${site}`));
  const most = places.reduce<(typeof places)[number] | null>(
    (best, place) => (best === null || place.checks > best.checks ? place : best),
    null,
  );
  const shown = named.length > 0 ? named : most ? [most] : [];
  const looked = places.flatMap((place) => {
    const look = lookAtWear(log, place, 'distance', null);
    return look ? [{ place, look }] : [];
  });
  return {
    wear: looked.flatMap(({ place, look }) => (shown.includes(place) ? [look] : [])),
    curves: looked.map(({ look }) => look),
  };
};

const reportOf = (
  log: ProjectLog,
  review: Review,
  { rounds, project, nowMs }: ReviewSummary,
  at: number,
): RoundReport | null => {
  const [round, reviewed] = [rounds[at], review.rounds[at]];
  if (!round || !reviewed) return null;
  const roundId = round.id;
  const pairs = log.pairs.filter((pair) => pair.round === roundId);
  const own = new Set(pairs.map(({ id }) => id));
  const runs = pairs.flatMap((pair) => pair.runs);
  const zonesOf = (kind: ComplaintKind | null): ZonesOfFeet => {
    const answers = feetAnswers(runs, kind);
    return {
      left: [...countZones(answers, 'left').values()],
      right: [...countZones(answers, 'right').values()],
    };
  };
  const all = findingsOf(log);
  const findings = all.filter(({ body }) => body.round === roundId);
  const earlier = review.rounds[at - 1];
  const look = lookAtRound(log, reviewed, earlier);
  const callouts = calloutsOfRound(log, review, at, look.verdict);
  const wear = looksAtWear(log, roundId, look.verdict, findings);
  const kinds = new Set<ComplaintKind>([
    ...round.complaints.cells.filter(isProven).map(({ kind }) => kind),
    ...findings.flatMap(({ body }) => body.kind ?? []),
    ...callouts.flatMap((one) => (one.what === 'complaint' ? [one.kind] : [])),
    ...trades.flatMap((trade) => cellsOfTrade(round.complaints.cells, trade)[0]?.kind ?? []),
  ]);
  return {
    project,
    nowMs,
    round,
    before: rounds[at - 1] ?? null,
    names: {
      rounds: Object.fromEntries(rounds.map(({ id, name }) => [id, name])),
      pairs: Object.fromEntries(review.pairs.map(({ id, code }) => [id, code])),
      testers: Object.fromEntries(
        log.records.tester.map(({ body, revision }) => [revision.id, body.code]),
      ),
    },
    zones: zonesOf(null),
    zonesByKind: Object.fromEntries([...kinds].map((kind) => [kind, zonesOf(kind)])),
    ...look,
    ...wear,
    callouts,
    story:
      earlier && look.against ? lookAtChanges(log, earlier, reviewed, 'all', look.against) : null,
    comfort: lookAtComfort(log, review).flatMap(({ attribute, rounds: all }) => {
      const own = all.filter(({ round: of }) => of === roundId);
      return own.length > 0 ? [{ attribute, rounds: own }] : [];
    }),
    said: saidOfRuns(pairs),
    sole: soleOf(log, roundId),
    from: feltFrom(pairs, round.complaints.cells),
    skin: skinOf(pairs),
    hurting: [
      ...new Set(
        review.pains.flatMap(({ pair, tester, stands }) =>
          stands && own.has(pair) ? [tester] : [],
        ),
      ),
    ],
    surfaces: surfacesOf(pairs),
    settles: settlesOf(log, look.verdict, wear.curves),
    lines: pairLines(pairs),
    deviations: pairs.flatMap(({ deviations }) => deviations),
    damages: review.damages.filter(({ pair }) => own.has(pair)),
    preferences: review.preferences.filter(
      ({ first, second }) => first === roundId || second === roundId,
    ),
    findings,
    quotes: sentQuotes(log),
    carried: all.filter(({ body }) => body.carriedBy === roundId && body.round !== roundId),
    outside: {
      waiting: review.waiting.filter((one) => !one.counts && own.has(one.pair)).length,
      setAside: review.decided.filter((one) => one.ruling === 'set-aside' && own.has(one.pair))
        .length,
    },
    leftOut: review.leftOut.length,
  };
};

const soleOf = ({ rounds }: ProjectLog, round: RecordId): RoundReport['sole'] => {
  const body = rounds.find(({ revision }) => revision.id === round)?.body;
  return {
    ...(body?.foam !== undefined && { foam: body.foam }),
    ...(body?.midsole !== undefined && { midsole: body.midsole }),
    ...(body?.outsole !== undefined && { outsole: body.outsole }),
  };
};

/**
 * Puts the report of one round together.
 * @param review of the same log
 * @returns null where the project has no such round
 */
export const reportRound = (
  log: ProjectLog,
  review: Review,
  roundId: RecordId,
): RoundReport | null =>
  reportOf(
    log,
    review,
    summarise(review),
    review.rounds.findIndex(({ id }) => id === roundId),
  );

/** The reports of all rounds, in their order. */
export const reportRounds = (log: ProjectLog, review: Review): readonly RoundReport[] => {
  const summary = summarise(review);
  return review.rounds.flatMap((_, at) => reportOf(log, review, summary, at) ?? []);
};

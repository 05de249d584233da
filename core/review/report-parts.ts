/** What does the report of a round say beside its counts: what testers wrote, and each pair's own row? */
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';
import { mileageAt, mileageBefore } from '../mileage/index.ts';
import type { Foot, Measure, MeasureUnit, RecordId } from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';
import { metres, type Metres, type Millimetres } from '../units/index.ts';
import { calloutsOf, type Callout } from './callouts.ts';
import type { LoggedPair, ProjectLog } from './project-log.ts';
import type { Review } from './review-types.ts';
import type { Verdict } from './verdict.ts';

/** What a tester wrote of one run, in whatever language. */
export interface SaidOfRun {
  readonly run: RecordId;
  readonly tester: RecordId;
  readonly pair: RecordId;
  readonly atMs: number;
  /** On the pair after the run. */
  readonly pairM: Metres;
  readonly text: string;
  /** What was tapped in the same run. */
  readonly felt: readonly {
    readonly zone: ZoneCode;
    readonly kind: ComplaintKind;
    readonly foot: Foot;
  }[];
}

/** One measure at one place of one pair: the mean of both shoes at the first and at the last check. */
export interface PairReading {
  readonly measure: Measure;
  readonly site: string;
  readonly unit: MeasureUnit;
  readonly first: { readonly value: number; readonly m: Metres };
  /** Null: checked once. */
  readonly last: { readonly value: number; readonly m: Metres } | null;
}

export interface PairLine {
  readonly pair: RecordId;
  readonly sizeMm: Millimetres;
  /** Those with a run in it, by code of their record's order. */
  readonly testers: readonly RecordId[];
  readonly runs: number;
  readonly totalM: Metres;
  readonly readings: readonly PairReading[];
}

/** Everything that testers wrote of the runs of these pairs, the latest first. */
export const saidOfRuns = (pairs: readonly LoggedPair[]): readonly SaidOfRun[] =>
  pairs
    .flatMap(({ id, curve, runs }) =>
      runs.flatMap(({ id: run, tester, startMs, run: body }): SaidOfRun[] => {
        const text = body.words?.trim() ?? '';
        const complaints = body.feet?.answer === 'complaints' ? body.feet.complaints : [];
        return text === ''
          ? []
          : [
              {
                ...{ run, tester, text, pair: id, atMs: startMs },
                pairM: mileageBefore(curve, startMs),
                felt: complaints.map(({ zone, kind, foot }) => ({ zone, kind, foot })),
              },
            ];
      }),
    )
    .sort((a, b) => b.atMs - a.atMs || (a.run < b.run ? -1 : 1));

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const readingsOf = ({ checks, curve }: LoggedPair): PairReading[] => {
  const all = checks.flatMap(({ body }) => {
    const m = metres(body.distanceM ?? mileageAt(curve, Date.parse(body.at)));
    return body.readings.map(({ measure, site, unit, value }) => ({
      ...{ measure, site, unit, value, m },
      at: body.at,
    }));
  });
  return [
    ...groupBy(all, ({ measure, site, unit }) => `${measure} ${site} ${unit}`).values(),
  ].flatMap((own): PairReading[] => {
    const [one] = own;
    if (!one) return [];
    const { measure, site, unit } = one;
    const byCheck = [...groupBy(own, ({ at }) => at).values()].map((both) => ({
      value: mean(both.map(({ value }) => value)),
      m: (both[0] as (typeof own)[number]).m,
    }));
    const [first, last] = [byCheck[0], byCheck.at(-1)];
    return first
      ? [{ measure, site, unit, first, last: last === first ? null : (last ?? null) }]
      : [];
  });
};

/** One line for each pair, the one with most kilometres first. */
export const pairLines = (pairs: readonly LoggedPair[]): readonly PairLine[] =>
  pairs
    .map((pair): PairLine => {
      const { id, record, runs, curve } = pair;
      return {
        pair: id,
        sizeMm: record.body.sizeMm,
        testers: [...new Set(runs.map(({ tester }) => tester))],
        runs: runs.length,
        totalM: mileageAt(curve, Infinity),
        readings: readingsOf(pair),
      };
    })
    .sort((a, b) => b.totalM - a.totalM || (a.pair < b.pair ? -1 : 1));

/**
 * What one round shows on the shoe: the callouts as they stood with it, without rounds after it.
 * @param at place of the round among the review's
 * @param verdict of the round
 */
export const calloutsOfRound = (
  log: ProjectLog,
  review: Review,
  at: number,
  verdict: Verdict,
): readonly Callout[] => {
  const { round } = verdict;
  const own = new Set(log.pairs.flatMap((pair) => (pair.round === round ? [pair.id] : [])));
  const until: Review = {
    ...review,
    rounds: review.rounds.slice(0, at + 1),
    pairs: review.pairs.filter(({ id }) => own.has(id)),
    deviations: review.deviations.filter(({ pair }) => own.has(pair)),
    damages: review.damages.filter(({ pair }) => own.has(pair)),
  };
  return calloutsOf(log, until, [verdict]).filter(
    (one) =>
      (one.what !== 'complaint' || one.round === round) &&
      (one.what !== 'better' || one.later === round),
  );
};

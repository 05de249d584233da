/** What does the report of a round say beside its counts: what testers wrote, and each pair's own row? */
import { onsetInRun, type CellName, type Onset } from '../complaints/index.ts';
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';
import { mileageAt, mileageBefore, pairMileage, type BySurface } from '../mileage/index.ts';
import type { Complaint, Foot, Measure, MeasureUnit, RecordId } from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';
import { metres, type Metres, type Millimetres } from '../units/index.ts';
import { calloutsOf, type Callout } from './callouts.ts';
import { observedRuns } from './closer-look.ts';
import type { LoggedPair, ProjectLog } from './project-log.ts';
import type { Review } from './review-types.ts';
import { settleOf, type Settle } from './settle.ts';
import type { Verdict } from './verdict.ts';
import { nextForCard } from './wear-cards.ts';
import type { WearLook } from './wear-look.ts';

/** What a tester wrote of one run or of a complaint in it, in whatever language. */
export interface SaidOfRun {
  readonly run: RecordId;
  readonly tester: RecordId;
  readonly pair: RecordId;
  readonly atMs: number;
  /** On the pair after the run. */
  readonly pairM: Metres;
  readonly text: string;
  /** What was tapped in the same run; of a complaint's own words that complaint alone. */
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

/** From where on a complaint was felt. */
export interface FeltFrom extends CellName {
  /** On the pair that was first complained of: the fewest kilometres of all. */
  readonly pairM: Metres;
  /** Within a run; null where no report says from where. */
  readonly onset: Onset | null;
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

/** Everything that testers wrote of the runs of these pairs and of what they felt in them, the latest first. */
export const saidOfRuns = (pairs: readonly LoggedPair[]): readonly SaidOfRun[] =>
  pairs
    .flatMap(({ id, curve, runs }) =>
      runs.flatMap(({ id: run, tester, startMs, run: body }): SaidOfRun[] => {
        const complaints = body.feet?.answer === 'complaints' ? body.feet.complaints : [];
        const said = (words: string | undefined, about: typeof complaints): SaidOfRun[] => {
          const text = words?.trim() ?? '';
          return text === ''
            ? []
            : [
                {
                  ...{ run, tester, text, pair: id, atMs: startMs },
                  pairM: mileageBefore(curve, startMs),
                  felt: about.map(({ zone, kind, foot }) => ({ zone, kind, foot })),
                },
              ];
        };
        return [
          ...said(body.words, complaints),
          ...complaints.flatMap((one) => said(one.words, [one])),
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

/** From where on each complaint was felt in the runs of these pairs. */
export const feltFrom = (
  pairs: readonly LoggedPair[],
  cells: readonly CellName[],
): readonly FeltFrom[] => {
  const runs = observedRuns(pairs);
  return cells.flatMap(({ zone, kind }) => {
    const own = runs.filter(({ complaints }) =>
      complaints.some((one) => one.zone === zone && one.kind === kind),
    );
    return own.length === 0
      ? []
      : [
          {
            ...{ zone, kind },
            pairM: metres(Math.min(...own.map(({ pairM }) => pairM))),
            onset: onsetInRun(own, { zone, kind }),
          },
        ];
  });
};

/** A complaint that left a blister or broken skin, counted over the runs of a round. */
export interface SkinFound extends CellName {
  readonly skin: NonNullable<Complaint['skin']>;
  readonly testers: number;
  readonly runs: number;
}

/** Where the skin blistered or broke in the runs of these pairs, most runs first. */
export const skinOf = (pairs: readonly LoggedPair[]): readonly SkinFound[] => {
  const all = observedRuns(pairs).flatMap(({ run, tester, complaints }) =>
    complaints.flatMap(({ zone, kind, skin }) => (skin ? [{ run, tester, zone, kind, skin }] : [])),
  );
  const counted = [...groupBy(all, ({ zone, kind, skin }) => `${zone} ${kind} ${skin}`).values()];
  return counted
    .flatMap((own): SkinFound[] =>
      own.slice(0, 1).map(({ zone, kind, skin }) => ({
        ...{ zone, kind, skin },
        testers: new Set(own.map(({ tester }) => tester)).size,
        runs: new Set(own.map(({ run }) => run)).size,
      })),
    )
    .sort((a, b) => b.runs - a.runs || (a.zone < b.zone ? -1 : 1));
};

/** On what the pairs were run, metres. */
export const surfacesOf = (pairs: readonly LoggedPair[]): BySurface => {
  const sum: Partial<Record<keyof BySurface, Metres>> = {};
  for (const { id, runs, spans } of pairs)
    for (const [surface, m] of Object.entries(
      pairMileage(id, runs, metres(0), spans).bySurface,
    ) as [keyof BySurface, Metres][])
      sum[surface] = metres((sum[surface] ?? 0) + m);
  return sum;
};

/** What would settle each item of the verdict, in their order: the same as on the desk's verdict. */
export const settlesOf = (
  log: ProjectLog,
  { round, items }: Verdict,
  curves: readonly WearLook[],
): readonly (Settle | null)[] =>
  items.map((item) => {
    if (item.what !== 'wear') return settleOf(log, round, item, undefined);
    const look = curves.find(({ kind, site }) => kind === item.kind && site === item.site);
    return settleOf(
      log,
      round,
      item,
      look && { points: look.points, next: nextForCard(log, look) },
    );
  });

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

/** Which readings of a check look wrong while they are typed or read from a table? By what the log has of the round. Pure. */
import type { BodyOf, Decision, RecordId, Stamp } from '../../../core/records/index.ts';
import { decisionOn, type ReviewSummary, type Subject } from '../../../core/review/index.ts';
import {
  canBe,
  doubtAtEntry,
  doubtInLog,
  gaugeName,
  gaugesApart,
  knownReading,
  knownReadings,
  type GaugeApart,
  type KnownReading,
  type ReadingDoubt,
} from '../../../core/wear/index.ts';
import { toInstant } from '../../parts/instant.ts';
import type { DeskRecords } from '../worker/desk-work.ts';

export type Check = Pick<BodyOf<'bench-check'>, 'pair' | 'at' | 'readings'>;

export interface DoubtedReading {
  readonly check: Check;
  /** Place among its readings, from 0. */
  readonly at: number;
  readonly reading: KnownReading;
  readonly doubt: ReadingDoubt;
}

export interface EntryDoubts {
  readonly readings: readonly DoubtedReading[];
  /** Second gauges that sit apart, which the log did not show before. */
  readonly gauges: readonly GaugeApart[];
}

/** What the question needs of the log. */
export interface EntryLog {
  readonly records: Pick<DeskRecords, 'bench-check' | 'pair' | 'round'>;
  readonly review: Pick<ReviewSummary, 'waiting' | 'decided'>;
}

const keyOf = (record: RecordId, { measure, site, foot, unit }: NonNullable<Subject['reading']>) =>
  `${record} ${measure} ${site} ${foot} ${unit}`;

/** Readings that are in no figure tell nothing of the next. */
const outsideOf = ({ waiting, decided }: EntryLog['review']): ReadonlySet<string> =>
  new Set(
    [
      ...waiting.flatMap((one) => (one.about === 'reading' && !one.counts ? [one.subject] : [])),
      ...decided.flatMap((one) => (one.ruling === 'set-aside' ? [one.subject] : [])),
    ].flatMap(({ record, reading }) => (reading ? [keyOf(record, reading)] : [])),
  );

const gaugeKey = ({ measure, unit, gauge, than }: GaugeApart): string =>
  [measure, unit, ...[gauge, than].map(gaugeName).sort()].join('\n');

/**
 * Looks at checks before they are saved.
 * @param how `typed`: one check, held against what is closest to it; `table`: many at once, of which any may be wrong,
 * so that a reading is doubted only where everything else contradicts it
 */
export const entryDoubts = (
  { records, review }: EntryLog,
  checks: readonly Check[],
  how: 'typed' | 'table',
): EntryDoubts => {
  const roundOf = new Map(records.pair.map(({ body, revision }) => [revision.id, body.round]));
  const outside = outsideOf(review);
  const readings: DoubtedReading[] = [];
  const gauges: GaugeApart[] = [];
  for (const round of new Set(checks.map(({ pair }) => roundOf.get(pair)))) {
    const blueprint =
      records.round.find(({ revision }) => revision.id === round)?.body.blueprint ?? [];
    const logged = records['bench-check'].flatMap(({ body, revision }) =>
      roundOf.get(body.pair) === round
        ? body.readings.flatMap((one) =>
            outside.has(keyOf(revision.id, one)) || !canBe(one) ? [] : [knownReading(body, one)],
          )
        : [],
    );
    const entered = checks.flatMap((check) =>
      roundOf.get(check.pair) === round
        ? check.readings.map((one, at) => ({
            check,
            at,
            reading: knownReading(check, one),
          }))
        : [],
    );
    const all = [...logged, ...entered.map(({ reading }) => reading).filter(canBe)];
    const known = knownReadings(how === 'typed' ? logged : all, blueprint);
    for (const one of entered) {
      const doubt = (how === 'typed' ? doubtAtEntry : doubtInLog)(one.reading, known);
      if (doubt) readings.push({ ...one, doubt });
    }
    const shown = new Set(gaugesApart(logged).map(gaugeKey));
    gauges.push(...gaugesApart(all).filter((apart) => !shown.has(gaugeKey(apart))));
  }
  return { readings, gauges };
};

/** The decisions of a lead who says while typing that doubted readings are right. */
export const confirmedReadings = (
  doubted: readonly Pick<DoubtedReading, 'reading'>[],
  saved: { readonly project: RecordId; readonly record: RecordId; readonly judged: Stamp },
  why: string,
  nowMs: number,
): readonly Decision[] =>
  doubted.map(({ reading: { measure, site, foot, unit } }) =>
    decisionOn(
      {
        record: saved.record,
        recordKind: 'bench-check',
        judged: saved.judged,
        reading: { measure, site, foot, unit },
      },
      { project: saved.project, ruling: 'counted', why, at: toInstant(nowMs) },
    ),
  );

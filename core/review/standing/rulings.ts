/**
 * What did leads decide about single runs and readings, as far as it still holds?
 *
 * A decision holds for the revision that was judged: once the record is corrected it says nothing any more. Of
 * several that hold the one stamped last stands, so a new decision reverses an older one.
 */
import type {
  BenchCheck,
  DecidableKind,
  Decision,
  Reading,
  RecordId,
  RecordOf,
  Ruling,
  Stamp,
} from '../../records/index.ts';
import { groupBy } from '../../statistics/index.ts';

/** The place of a reading within its check. */
export type ReadingPlace = Pick<Reading, 'measure' | 'site' | 'foot' | 'unit'>;

/** What a decision is about: a record as it was judged, or one reading of a bench check. */
export interface Subject {
  readonly record: RecordId;
  readonly recordKind: DecidableKind;
  readonly judged: Stamp;
  /** Null: the whole record. */
  readonly reading: ReadingPlace | null;
}

/** A decision that holds. */
export interface Decided {
  /** The decision's own record. */
  readonly decision: RecordId;
  readonly ruling: Ruling;
  readonly why: string;
  readonly at: string;
}

type DecisionRecord = RecordOf<'decision'>;
type Judged = RecordOf<DecidableKind>;

export const decidedOf = ({ body, revision }: DecisionRecord): Decided => ({
  decision: revision.id,
  ruling: body.ruling,
  why: body.why,
  at: body.at,
});

const isLater = (a: DecisionRecord, b: DecisionRecord): boolean =>
  a.revision.stamp > b.revision.stamp ||
  (a.revision.stamp === b.revision.stamp && a.revision.hash > b.revision.hash);

const latest = (decisions: readonly DecisionRecord[]): DecisionRecord | null =>
  decisions.reduce<DecisionRecord | null>(
    (best, one) => (best === null || isLater(one, best) ? one : best),
    null,
  );

const isAbout = (named: Decision['reading'], place: ReadingPlace): boolean =>
  named === undefined ||
  (named.measure === place.measure &&
    named.site === place.site &&
    named.foot === place.foot &&
    (named.unit === undefined || named.unit === place.unit));

/** The decisions that hold, for questions about any record of the project. */
export interface Rulings {
  /** About the whole record. */
  readonly of: (record: Judged) => Decided | null;
  /** About one reading of a check; one about the whole check counts as well. */
  readonly ofReading: (check: RecordOf<'bench-check'>, place: ReadingPlace) => Decided | null;
}

/** @param decisions of the project */
export const rulingsIn = (decisions: readonly DecisionRecord[]): Rulings => {
  const byRecord = groupBy(decisions, ({ body }) => body.record);
  const holding = ({ kind, revision }: Judged): readonly DecisionRecord[] =>
    (byRecord.get(revision.id) ?? []).filter(
      ({ body }) => body.recordKind === kind && body.judged === revision.stamp,
    );
  const said = (decision: DecisionRecord | null) => decision && decidedOf(decision);
  return {
    of: (record) => said(latest(holding(record).filter(({ body }) => body.reading === undefined))),
    ofReading: (check, place) =>
      said(latest(holding(check).filter(({ body }) => isAbout(body.reading, place)))),
  };
};

/** The decision about a subject as a lead would save it. */
export const decisionOn = (
  { record, recordKind, judged, reading }: Subject,
  { project, ruling, why, at }: Pick<Decision, 'project' | 'ruling' | 'why' | 'at'>,
): Decision => ({
  project,
  record,
  recordKind,
  ...(reading && { reading: { ...reading } }),
  judged,
  ruling,
  why,
  at,
});

/** The readings of a check that `keeps` keeps; null where none is left. */
export const withReadings = (
  check: RecordOf<'bench-check'>,
  keeps: (reading: BenchCheck['readings'][number]) => boolean,
): RecordOf<'bench-check'> | null => {
  const readings = check.body.readings.filter(keeps);
  if (readings.length === check.body.readings.length) return check;
  return readings.length === 0 ? null : { ...check, body: { ...check.body, readings } };
};

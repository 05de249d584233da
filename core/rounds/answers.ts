/**
 * Which of each tester's asked runs of one round reported what?
 *
 * Runs are numbered within their tester, from the first one in a pair of the round on, so that the first
 * runs of one round can be set against the first runs of another: break-in against break-in.
 */
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';
import type { Complaint, RecordId } from '../records/index.ts';

/** One run whose feet question was answered. */
export interface AnsweredRun {
  readonly run: RecordId;
  readonly tester: RecordId;
  /** Start, milliseconds since 1970. */
  readonly startMs: number;
  /** Empty: "nothing bothered me". */
  readonly complaints: readonly Complaint[];
}

/** A complaint that is looked for: of one kind, in one zone, or anywhere where the zone is null. */
export interface Felt {
  readonly kind: ComplaintKind;
  readonly zone: ZoneCode | null;
}

export interface RoundAnswers {
  /** Asked runs of each tester. A tester who was never asked is absent. */
  readonly asked: ReadonlyMap<RecordId, number>;
  /** Every asked run with its number among those of its tester, from 0 on. */
  readonly runs: readonly (AnsweredRun & { readonly at: number })[];
}

/** The numbers of the asked runs that reported it, ascending, of each tester who did. */
export type Reports = ReadonlyMap<RecordId, readonly number[]>;

/** Numbers the asked runs of one round by their start. The order in which they are given changes nothing. */
export const orderAnswers = (answered: readonly AnsweredRun[]): RoundAnswers => {
  const asked = new Map<RecordId, number>();
  const runs = [...answered]
    .sort((a, b) => a.startMs - b.startMs || (a.run < b.run ? -1 : a.run > b.run ? 1 : 0))
    .map((run) => {
      const at = asked.get(run.tester) ?? 0;
      asked.set(run.tester, at + 1);
      return { ...run, at };
    });
  return { asked, runs };
};

const note = (reports: Map<RecordId, number[]>, tester: RecordId, at: number): void => {
  const own = reports.get(tester);
  if (!own) reports.set(tester, [at]);
  else if (own.at(-1) !== at) own.push(at);
};

/** Who reported it, in which of their asked runs; on either foot. */
export const reportsOf = ({ runs }: RoundAnswers, { kind, zone }: Felt): Reports => {
  const reports = new Map<RecordId, number[]>();
  for (const { tester, at, complaints } of runs)
    if (complaints.some((one) => one.kind === kind && (zone === null || one.zone === zone)))
      note(reports, tester, at);
  return reports;
};

/** The same for every zone and kind that was reported, in one pass; by `zone kind`. */
export const reportsByCell = ({
  runs,
}: RoundAnswers): ReadonlyMap<
  string,
  { readonly zone: ZoneCode; readonly kind: ComplaintKind; readonly reports: Reports }
> => {
  const cells = new Map<
    string,
    { zone: ZoneCode; kind: ComplaintKind; reports: Map<RecordId, number[]> }
  >();
  for (const { tester, at, complaints } of runs)
    for (const { zone, kind } of complaints) {
      const key = cellKey({ zone, kind });
      const cell = cells.get(key) ?? { zone, kind, reports: new Map<RecordId, number[]>() };
      cells.set(key, cell);
      note(cell.reports, tester, at);
    }
  return cells;
};

/** A zone and kind as one text. */
export const cellKey = ({
  zone,
  kind,
}: {
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind;
}): string => `${zone} ${kind}`;

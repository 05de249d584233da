/** One asked run with what the questions of when, where and with whom need. */
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';
import type { Complaint, Foot, RecordId } from '../records/index.ts';
import type { Metres } from '../units/index.ts';

/** A run whose feet question was answered. Absent answers are null: not answered, never zero. */
export interface ObservedRun {
  readonly run: RecordId;
  readonly tester: RecordId;
  readonly pair: RecordId;
  readonly round: RecordId;
  /** Start, milliseconds since 1970. */
  readonly startMs: number;
  /** On the pair when the run began. */
  readonly pairM: Metres;
  readonly complaints: readonly Complaint[];
  /** Share of the distance on trail, gravel, grass, sand or snow, 0 to 1. */
  readonly softShare: number | null;
  /** Wet, mud, snow or ice. */
  readonly wet: boolean | null;
  readonly temperatureC: number | null;
  /** 0 none, 1 thin, 2 medium, 3 thick. */
  readonly sock: number | null;
}

export interface CellName {
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind;
}

/** Did the run report the cell, on either foot? */
export const reports = ({ complaints }: Pick<ObservedRun, 'complaints'>, cell: CellName): boolean =>
  complaints.some(({ zone, kind }) => zone === cell.zone && kind === cell.kind);

/** How many of the runs reported each cell, on either foot, found in one pass over them. */
export const countReports = (
  runs: readonly Pick<ObservedRun, 'complaints'>[],
): ((cell: CellName) => number) => {
  const keyOf = ({ zone, kind }: CellName): string => `${zone} ${kind}`;
  const counts = new Map<string, number>();
  for (const { complaints } of runs)
    for (const key of new Set(complaints.map(keyOf))) counts.set(key, (counts.get(key) ?? 0) + 1);
  return (cell) => counts.get(keyOf(cell)) ?? 0;
};

/** Did the run report the cell on this foot? */
export const reportsOn = (
  { complaints }: Pick<ObservedRun, 'complaints'>,
  cell: CellName,
  side: Foot,
): boolean =>
  complaints.some(
    ({ zone, kind, foot }) => zone === cell.zone && kind === cell.kind && foot === side,
  );

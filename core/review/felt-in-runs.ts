/** What was felt in some runs: which complaint, where, in how many of them; and the tester's own words beside it. */
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';
import type { LoggedRun } from '../mileage/index.ts';
import type { Complaint, Foot, RecordId } from '../records/index.ts';

export interface FeltInRuns {
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind;
  /** Runs by foot; a run may count under both. */
  readonly byFoot: Readonly<Record<Foot, number>>;
  /** By time: each run that reported it, with the worst severity of it there; null: none was given. */
  readonly marks: readonly { readonly run: RecordId; readonly severity: number | null }[];
}

/** Everything that a tester wrote of a run, and what they photographed. */
export interface Note {
  readonly run: RecordId;
  readonly tester: RecordId;
  readonly pair: RecordId;
  readonly atMs: number;
  readonly felt: readonly { readonly zone: ZoneCode; readonly kind: ComplaintKind }[];
  readonly words: readonly string[];
  /** SHA-256 of each photo. */
  readonly photos: readonly string[];
}

export const complaintsIn = ({ run }: Pick<LoggedRun, 'run'>): readonly Complaint[] =>
  run.feet?.answer === 'complaints' ? run.feet.complaints : [];

export const cellOf = ({ zone, kind }: { readonly zone: ZoneCode; readonly kind: ComplaintKind }) =>
  `${zone} ${kind}`;

/** The complaints of some runs, those of most runs first. */
export const feltInRuns = (runs: readonly LoggedRun[]): readonly FeltInRuns[] => {
  interface Counted {
    readonly zone: ZoneCode;
    readonly kind: ComplaintKind;
    readonly byFoot: { left: number; right: number };
    readonly marks: { run: RecordId; severity: number | null }[];
  }
  const cells = new Map<string, Counted>();
  for (const one of runs) {
    const counted = new Set<string>();
    for (const { zone, kind, foot, severity } of complaintsIn(one)) {
      const key = cellOf({ zone, kind });
      const cell = cells.get(key) ?? { zone, kind, byFoot: { left: 0, right: 0 }, marks: [] };
      cells.set(key, cell);
      if (!counted.has(`${key} ${foot}`)) cell.byFoot[foot]++;
      counted.add(`${key} ${foot}`);
      const last = cell.marks.at(-1);
      if (last?.run !== one.id) cell.marks.push({ run: one.id, severity: severity ?? null });
      else if (severity !== undefined) last.severity = Math.max(last.severity ?? 0, severity);
    }
  }
  return [...cells.values()].sort(
    (a, b) => b.marks.length - a.marks.length || (cellOf(a) < cellOf(b) ? -1 : 1),
  );
};

/** The runs of which something was written or photographed, latest first. */
export const notesOf = (runs: readonly LoggedRun[]): readonly Note[] =>
  runs
    .flatMap((one): Note[] => {
      const complaints = complaintsIn(one);
      const words = [one.run.words, ...complaints.map((complaint) => complaint.words)].flatMap(
        (text) => (text === undefined || text.trim() === '' ? [] : [text]),
      );
      const photos = [one.run.photos, ...complaints.map((complaint) => complaint.photos)].flatMap(
        (some) => some ?? [],
      );
      if (words.length === 0 && photos.length === 0) return [];
      const felt = [...new Map(complaints.map((cell) => [cellOf(cell), cell])).values()];
      return [
        {
          run: one.id,
          tester: one.tester,
          pair: one.pair,
          atMs: one.startMs,
          felt: felt.map(({ zone, kind }) => ({ zone, kind })),
          words: [...new Set(words)],
          photos: [...new Set(photos)],
        },
      ];
    })
    .reverse();

/** What did one tester do and find in a test? Made of what that tester's own phone holds. */
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';
import type { RecordId, RecordOf, Run, ThanksResult } from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';
import { metres, type Metres } from '../units/index.ts';
import { writtenMs } from './questions.ts';

/** One run of the tester that counts; times in milliseconds since 1970. */
export interface OwnRun {
  readonly pair: RecordId;
  readonly startMs: number;
  readonly distanceM: Metres;
  readonly run: Pick<Run, 'feet'>;
}

export interface FoundComplaint {
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind;
  /** Runs in which they told it. */
  readonly runs: number;
  /** The latest that they were told came of it; null: nothing yet. */
  readonly result: ThanksResult | null;
}

export interface TestSummary {
  readonly runs: number;
  readonly distanceM: Metres;
  /** In the order in which they were first worn. */
  readonly pairs: readonly {
    readonly pair: RecordId;
    readonly runs: number;
    readonly distanceM: Metres;
  }[];
  /** What they told more than once, or were thanked for; what came of something first, then the most told. */
  readonly found: readonly FoundComplaint[];
  /** First and last start, milliseconds since 1970; null: no run. */
  readonly fromMs: number | null;
  readonly untilMs: number | null;
}

const cellKey = (zone: string, kind: string): string => `${zone} ${kind}`;

const toldIn = ({ run: { feet } }: OwnRun): ReadonlySet<string> =>
  new Set(
    feet?.answer === 'complaints' ? feet.complaints.map((one) => cellKey(one.zone, one.kind)) : [],
  );

const foundIn = (
  runs: readonly OwnRun[],
  thanks: readonly RecordOf<'thanks'>[],
): readonly FoundComplaint[] => {
  const told = new Map<string, number>();
  for (const run of runs) for (const cell of toldIn(run)) told.set(cell, (told.get(cell) ?? 0) + 1);
  const results = new Map<string, { readonly ms: number; readonly result: ThanksResult }>();
  for (const one of thanks) {
    const { zone, kind, result } = one.body;
    if (!zone || !kind) continue;
    const ms = writtenMs(one);
    const cell = cellKey(zone, kind);
    if (ms >= (results.get(cell)?.ms ?? -Infinity)) results.set(cell, { ms, result });
  }
  return [...new Set([...results.keys(), ...told.keys()])]
    .map((cell): FoundComplaint => {
      const [zone, kind] = cell.split(' ') as [ZoneCode, ComplaintKind];
      return { zone, kind, runs: told.get(cell) ?? 0, result: results.get(cell)?.result ?? null };
    })
    .filter(({ runs: count, result }) => count > 1 || result !== null)
    .sort((a, b) => Number(b.result !== null) - Number(a.result !== null) || b.runs - a.runs || 0);
};

/**
 * A tester's own test.
 * @param runs of this tester in this project, that count
 * @param thanks to this tester in this project
 */
export const testSummary = (
  runs: readonly OwnRun[],
  thanks: readonly RecordOf<'thanks'>[],
): TestSummary => {
  const sorted = runs.toSorted((a, b) => a.startMs - b.startMs);
  const sum = (some: readonly OwnRun[]): Metres =>
    metres(some.reduce((total, { distanceM }) => total + distanceM, 0));
  return {
    runs: sorted.length,
    distanceM: sum(sorted),
    pairs: [...groupBy(sorted, ({ pair }) => pair)].map(([pair, own]) => ({
      pair,
      runs: own.length,
      distanceM: sum(own),
    })),
    found: foundIn(sorted, thanks),
    fromMs: sorted[0]?.startMs ?? null,
    untilMs: sorted.at(-1)?.startMs ?? null,
  };
};

/**
 * Whether the test is over for a tester: the project was put away, or every pair that they had of it went back.
 * @param handOuts of this tester in this project
 */
export const isTestOver = (
  { archived }: RecordOf<'project'>['body'],
  handOuts: readonly RecordOf<'hand-out'>['body'][],
  nowMs: number,
): boolean =>
  archived !== undefined ||
  (handOuts.length > 0 &&
    handOuts.every(({ until }) => until !== undefined && Date.parse(until) <= nowMs));

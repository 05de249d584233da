/**
 * Of whom did nothing come for a while although they hold a pair? The one rule of the overview, the list of
 * testers, the list of pairs and the terminal.
 *
 * Silence is a person's: any run of theirs in the project breaks it, whatever pair it was in and whether it counts
 * or not. Who never logged one is silent since the hand-out.
 */
import type { RecordId } from '../records/index.ts';
import type { ProjectLog } from './project-log.ts';
import type { Quiet } from './review-types.ts';

/** Somebody with a pair and without a run for so many days is asked about it. Judgement, no source. */
export const SILENT_DAYS = 7;
const DAY_MS = 86_400_000;

export interface Silent {
  readonly tester: RecordId;
  /** The pairs that they hold. */
  readonly pairs: readonly RecordId[];
  /** Whole days since the end of the last run, or since the latest hand-out if that is later. */
  readonly days: number;
}

/** Those who hold a pair and have been silent for a week or more, the longest silent first. */
export const silentOf = ({
  spans,
  heardMs,
  nowMs,
}: Pick<ProjectLog, 'spans' | 'heardMs' | 'nowMs'>): Silent[] => {
  const byTester = new Map<RecordId, { pairs: RecordId[]; lastMs: number }>();
  for (const { tester, pair, fromMs, untilMs } of spans) {
    if (fromMs > nowMs || untilMs <= nowMs) continue;
    const held = byTester.get(tester) ?? { pairs: [], lastMs: heardMs.get(tester) ?? -Infinity };
    held.pairs.push(pair);
    held.lastMs = Math.max(held.lastMs, fromMs);
    byTester.set(tester, held);
  }
  return [...byTester]
    .map(([tester, { pairs, lastMs }]) => ({
      tester,
      pairs,
      days: Math.floor((nowMs - lastMs) / DAY_MS),
    }))
    .filter(({ days }) => days >= SILENT_DAYS)
    .sort((a, b) => b.days - a.days);
};

/** Fewer silent testers are named one by one. */
const LEAST_QUIET = 2;

/**
 * Whether the silence is one of the whole test, to be said once, or of single testers.
 * @returns null where anybody ran within a week, where nobody ever did, or where one tester alone is silent
 */
export const quietOf = (log: Pick<ProjectLog, 'spans' | 'heardMs' | 'nowMs'>): Quiet | null => {
  const sinceMs = Math.max(...log.heardMs.values());
  const days = Math.floor((log.nowMs - sinceMs) / DAY_MS);
  if (!Number.isFinite(sinceMs) || days < SILENT_DAYS) return null;
  const together = silentOf(log).filter(
    (one) => log.heardMs.has(one.tester) && one.days - days < SILENT_DAYS,
  );
  return together.length < LEAST_QUIET
    ? null
    : { sinceMs, days, testers: together.map(({ tester }) => tester) };
};

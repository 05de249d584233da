/**
 * When will a pair have come so far? From the pace of whoever has it, in that pair: kilometres a day over the hand-out
 * so far. A pause counts as a week at most, so that an illness or a holiday does not slow the pace for ever.
 */
import { isWithin } from '../mileage/index.ts';
import type { RecordId } from '../records/index.ts';
import { metres, type Metres } from '../units/index.ts';
import type { LoggedPair, ProjectLog } from './project-log.ts';
import { SILENT_DAYS, silentOf } from './silence.ts';

const DAY_MS = 86_400_000;
/** Longer pauses count as this long. Judgement, no source. */
const LONGEST_PAUSE_MS = SILENT_DAYS * DAY_MS;

export type Expected =
  /** The pair has come so far already. */
  | { readonly when: 'now' }
  | { readonly when: 'later'; readonly atMs: number }
  /** Whoever has it is silent: at their pace so far, from today on. */
  | { readonly when: 'if-resumed'; readonly tester: RecordId; readonly atMs: number }
  /** At this pace it would be later than the planned return. */
  | { readonly when: 'comes-back-first'; readonly atMs: number }
  /** Nobody has it, or a silent tester who never ran in it. */
  | { readonly when: 'not-run' }
  /** It has been handed out, and has too few runs since to tell. */
  | { readonly when: 'not-known' };

/** In the first week fewer runs tell no pace: one long run would promise hundreds of kilometres. Judgement, no source. */
const FEWEST_RUNS = 3;

/** Metres a day of whoever has the pair now; null where their runs in it do not tell. */
const paceOf = ({ runs }: LoggedPair, tester: RecordId, fromMs: number, nowMs: number) => {
  const own = runs.filter(
    (run) => run.tester === tester && run.startMs >= fromMs && run.startMs <= nowMs,
  );
  const isNew = nowMs - fromMs < LONGEST_PAUSE_MS;
  if (own.length < (isNew ? FEWEST_RUNS : 1)) return null;
  const stops = [fromMs, ...own.map(({ startMs }) => startMs), nowMs];
  const countedMs = stops
    .slice(1)
    .reduce((sum, ms, at) => sum + Math.min(LONGEST_PAUSE_MS, ms - (stops[at] ?? ms)), 0);
  const distanceM = own.reduce((sum, one) => sum + one.distanceM, 0);
  // Of less than a day nothing is known: one day is the least.
  return metres(distanceM / Math.max(1, countedMs / DAY_MS));
};

/**
 * When the pair is expected to have come to `atM`.
 * @param atM distance on the pair, metres
 * @returns `later` and `if-resumed` with the instant in ms since 1970, `comes-back-first` with that of the return; `not-known` for a pair that is not in the log
 */
export const expectedAt = (
  log: Pick<ProjectLog, 'pairs' | 'spans' | 'heardMs' | 'nowMs'>,
  pair: RecordId,
  atM: Metres,
): Expected => {
  const { nowMs } = log;
  const own = log.pairs.find(({ id }) => id === pair);
  if (!own) return { when: 'not-known' };
  const leftM = atM - (own.curve.totalM.at(-1) ?? own.curve.carriedInM);
  if (leftM <= 0) return { when: 'now' };
  const held = own.spans.find((span) => isWithin(span, nowMs));
  if (!held) return { when: 'not-run' };
  const { tester } = held;
  const isSilent = silentOf(log).some((one) => one.tester === tester);
  const pace = paceOf(own, tester, held.fromMs, nowMs);
  if (pace === null || pace === 0) return { when: isSilent ? 'not-run' : 'not-known' };
  const atMs = nowMs + (leftM / pace) * DAY_MS;
  if (atMs > held.untilMs) return { when: 'comes-back-first', atMs: held.untilMs };
  return isSilent ? { when: 'if-resumed', tester, atMs } : { when: 'later', atMs };
};

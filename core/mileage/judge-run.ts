/**
 * What speaks against one run by itself, and does it stay out of every figure until a lead decides?
 *
 * A distance or pace that nobody runs, also where the tester confirmed it; a start that has not come yet; a pair
 * that is not in the log, or that was not with this tester then.
 */
import type { RecordId } from '../records/index.ts';
import { seconds, type Metres } from '../units/index.ts';
import { isWithin, type HandOutSpan } from './hand-out-span.ts';
import { isPlausibleDistance, isPlausiblePace, secondsPerKm } from './plausible.ts';
import type { LoggedRun } from './logged-run.ts';

/** What is odd about a run, whatever the others say. */
export type OwnOddity =
  | { readonly why: 'pace'; readonly run: RecordId; readonly secondsPerKm: number }
  | { readonly why: 'distance'; readonly run: RecordId; readonly distanceM: Metres }
  /** The pair was not handed out to this tester at that time. */
  | { readonly why: 'not-handed-out'; readonly run: RecordId }
  | { readonly why: 'in-the-future'; readonly run: RecordId }
  | { readonly why: 'unknown-pair'; readonly run: RecordId };

const HOUR_MS = 3_600_000;

/** A phone's clock may run a little ahead of the reader's. */
const FUTURE_MS = 24 * HOUR_MS;

/**
 * Hand-outs are noted late, often days after the pair was handed over, and runs are typed after the pair went back.
 * So long before and after a hand-out a run counts, if nobody else had the pair then, and is asked about all the
 * same. Judgement, no source.
 */
const NOTED_LATE_MS = 72 * HOUR_MS;
const TYPED_LATE_MS = 24 * HOUR_MS;

/**
 * Whether the pair was with the tester when the run began; `near`: just before or after, and nobody else had it.
 * @param spans of this pair
 */
export const whereWas = (
  { tester, startMs }: Pick<LoggedRun, 'tester' | 'startMs'>,
  spans: readonly HandOutSpan[],
): 'here' | 'near' | 'elsewhere' => {
  const own = spans.filter((span) => span.tester === tester);
  if (own.some((span) => isWithin(span, startMs))) return 'here';
  const near = own.some(
    ({ fromMs, untilMs }) =>
      startMs >= fromMs - NOTED_LATE_MS && startMs <= untilMs + TYPED_LATE_MS,
  );
  return near && !spans.some((span) => isWithin(span, startMs)) ? 'near' : 'elsewhere';
};

/**
 * Judges a run by itself.
 * @param spansOf the project's hand-outs by pair. Where none at all was noted nothing is said of whose pair it was:
 * a group that notes no hand-outs keeps its figures.
 */
export const judgeRun = (
  run: Pick<LoggedRun, 'id' | 'pair' | 'tester' | 'startMs' | 'endMs' | 'distanceM'>,
  context: {
    readonly pairs: ReadonlySet<RecordId>;
    readonly spansOf: ReadonlyMap<RecordId, readonly HandOutSpan[]>;
    readonly nowMs: number;
  },
): { readonly whys: readonly OwnOddity[]; readonly keepsOut: boolean } => {
  const { id, distanceM, startMs, endMs } = run;
  const whys: OwnOddity[] = [];
  let keepsOut = false;
  const add = (oddity: OwnOddity, out = true) => {
    whys.push(oddity);
    keepsOut ||= out;
  };
  if (!isPlausibleDistance(distanceM)) add({ why: 'distance', run: id, distanceM });
  const pace = secondsPerKm(distanceM, seconds((endMs - startMs) / 1000));
  if (pace !== null && !isPlausiblePace(pace)) add({ why: 'pace', run: id, secondsPerKm: pace });
  if (startMs > context.nowMs + FUTURE_MS) add({ why: 'in-the-future', run: id });
  if (!context.pairs.has(run.pair)) add({ why: 'unknown-pair', run: id });
  else {
    const was = whereWas(run, context.spansOf.get(run.pair) ?? []);
    if (was !== 'here')
      add({ why: 'not-handed-out', run: id }, was === 'elsewhere' && context.spansOf.size > 0);
  }
  return { whys, keepsOut };
};

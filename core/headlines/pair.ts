/**
 * What has one pair lived through, in one sentence? Whoever may be hurt first, then what comes from the pair itself
 * and not from its build: a foot that it is too short for, a dimension out of tolerance; then what was felt in it.
 */
import type { DamageReport, RecordId } from '../records/index.ts';
import type { PairBench, PairLook } from '../review/index.ts';
import { USUAL_TOE_MM } from '../rounds/index.ts';
import type { Metres } from '../units/index.ts';
import type { FeltName } from './sheet.ts';
import type { Claim } from './stamp.ts';

/** Reported in fewer runs it is an event, not a habit of the pair. */
const LEAST_RUNS = 2;

interface Felt {
  readonly felt: FeltName;
  readonly runs: number;
  readonly of: number;
}

interface Gone {
  readonly totalM: Metres;
  readonly briefM: Metres;
  /** Who has it now; null: nobody. */
  readonly holder: RecordId | null;
}

export type PairHeadline = { readonly claims: Claim; readonly pair: RecordId } & (
  | { readonly case: 'stopped'; readonly reason: string }
  | { readonly case: 'damaged'; readonly what: DamageReport['what'] }
  /** Whoever wore it last has less room at the toe than is usual; `felt` is what they reported most. */
  | {
      readonly case: 'short';
      readonly tester: RecordId;
      readonly toeMm: number;
      readonly felt: Felt | null;
    }
  | { readonly case: 'past-limit'; readonly kind: PairBench['kind']; readonly site: string }
  | { readonly case: 'out-of-tolerance'; readonly felt: Felt | null }
  | ({ readonly case: 'felt' } & Felt & Gone)
  | ({ readonly case: 'quiet'; readonly asked: number } & Gone)
  | ({ readonly case: 'not-asked' } & Gone)
  | { readonly case: 'not-run'; readonly holder: RecordId | null }
);

/** The shorter room of both feet of whoever has it, or had it last; null where no length is known. */
const toeRoom = ({ hands, fit }: PairLook) => {
  const last = hands.at(-1);
  const own = fit.find(({ tester }) => tester === last?.tester);
  const room = [own?.left?.toeMm, own?.right?.toeMm].filter((mm) => typeof mm === 'number');
  return last && room.length > 0 ? { tester: last.tester, toeMm: Math.min(...room) } : null;
};

const mostFelt = ({ felt, asked }: PairLook): Felt | null => {
  const [first] = felt;
  return first && first.marks.length >= LEAST_RUNS
    ? { felt: { zone: first.zone, kind: first.kind }, runs: first.marks.length, of: asked }
    : null;
};

/** @returns the sentence's case, and what it is about */
export const pairHeadline = (look: PairLook): PairHeadline => {
  const about = { pair: look.id, claims: 'nothing' } as const;
  const stop = look.stops.find(({ untilMs }) => untilMs === null);
  if (stop) return { ...about, case: 'stopped', reason: stop.reason };
  const broken = look.damages.find(({ stands }) => stands);
  if (broken) return { ...about, case: 'damaged', what: broken.what };
  if (look.runs.length === 0) return { ...about, case: 'not-run', holder: look.holder };
  const felt = mostFelt(look);
  const room = toeRoom(look);
  if (room && room.toeMm < USUAL_TOE_MM.least) return { ...about, case: 'short', ...room, felt };
  const past = look.bench.find(({ isPast }) => isPast);
  if (past) return { ...about, case: 'past-limit', kind: past.kind, site: past.site };
  if (look.outOfTolerance) return { ...about, case: 'out-of-tolerance', felt };
  const gone: Gone = { totalM: look.totalM, briefM: look.briefM, holder: look.holder };
  if (felt) return { ...about, case: 'felt', ...felt, ...gone };
  return look.asked === 0
    ? { ...about, case: 'not-asked', ...gone }
    : { ...about, case: 'quiet', asked: look.asked, ...gone };
};

/** What does one run say, in one sentence? Pain first, then an off day, then what was felt. */
import type { Complaint, RecordId } from '../records/index.ts';
import type { RunLook } from '../review/index.ts';
import type { FeltName } from './sheet.ts';
import type { Claim } from './stamp.ts';

/** Fewer other runs than this tell nothing of a tester's usual day. Judgement, no source. */
const LEAST_OTHERS = 4;
/** Smaller differences of comfort do not matter: the smallest that runners call one (Mills 2010). */
const MATTERS = 10;

export type RunHeadline = {
  readonly claims: Claim;
  readonly tester: RecordId;
  /** When the run began. */
  readonly at: string;
} & (
  | { readonly case: 'pain'; readonly score: number }
  | { readonly case: 'off-day' | 'best-day'; readonly score: number; readonly usual: number }
  | { readonly case: 'felt'; readonly felt: FeltName; readonly more: number }
  | { readonly case: 'nothing' }
  | { readonly case: 'not-asked' }
);

const median = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1
    ? (sorted[middle] as number)
    : ((sorted[middle - 1] as number) + (sorted[middle] as number)) / 2;
};

const worst = (complaints: readonly Complaint[]): Complaint | undefined =>
  complaints.toSorted((a, b) => (b.severity ?? 0) - (a.severity ?? 0))[0];

/** @returns the case; an off day lies outside of all other runs and by as much as matters */
export const runHeadline = ({ run, comfort, caution }: RunLook): RunHeadline => {
  const about = { claims: 'nothing', tester: run.tester, at: run.startedAt } as const;
  if (caution && run.pain) return { ...about, case: 'pain', score: run.pain.score };
  const overall = comfort.find(({ attribute }) => attribute === 'overall');
  if (overall && overall.score !== null && overall.others.length >= LEAST_OTHERS) {
    const { score, others } = overall;
    const usual = median(others);
    if (score <= usual - MATTERS && score < Math.min(...others))
      return { ...about, case: 'off-day', score, usual };
    if (score >= usual + MATTERS && score > Math.max(...others))
      return { ...about, case: 'best-day', score, usual };
  }
  if (run.feet === undefined) return { ...about, case: 'not-asked' };
  if (run.feet.answer === 'nothing') return { ...about, case: 'nothing' };
  const { complaints } = run.feet;
  const first = worst(complaints);
  return first
    ? {
        ...about,
        case: 'felt',
        felt: { zone: first.zone, kind: first.kind },
        more: new Set(complaints.map(({ zone, kind }) => `${zone} ${kind}`)).size - 1,
      }
    : { ...about, case: 'nothing' };
};

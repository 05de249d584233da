/** What does the list of rounds, the brief, and the place of reports say first? By rule, from the records alone. */
import type { PartId } from '../foot/index.ts';
import type { Brief, RecordId, Report } from '../records/index.ts';
import type { ReviewSummary } from '../review/index.ts';

export type RoundsHeadline = { readonly claims: 'nothing' } & (
  | { readonly case: 'none' }
  | { readonly case: 'no-pairs' | 'nothing-noted'; readonly round: RecordId }
  | { readonly case: 'first'; readonly round: RecordId; readonly pairs: number }
  | {
      readonly case: 'changes';
      readonly round: RecordId;
      /** Each part once, at most two. */
      readonly parts: readonly PartId[];
      /** How many parts beside them. */
      readonly more: number;
    }
);

/** What the headline of rounds is made of: by order. */
export interface RoundsFacts {
  readonly rounds: readonly Pick<ReviewSummary['rounds'][number], 'id' | 'changes'>[];
  readonly pairs: readonly Pick<ReviewSummary['pairs'][number], 'round'>[];
}

/** What is different in the latest round? */
export const roundsHeadline = ({ rounds, pairs }: RoundsFacts): RoundsHeadline => {
  const last = rounds.at(-1);
  if (!last) return { claims: 'nothing', case: 'none' };
  const own = pairs.filter(({ round }) => round === last.id).length;
  const of = { claims: 'nothing', round: last.id } as const;
  if (own === 0) return { ...of, case: 'no-pairs' };
  if (last.changes.length === 0)
    return rounds.length === 1
      ? { ...of, case: 'first', pairs: own }
      : { ...of, case: 'nothing-noted' };
  const parts = [...new Set(last.changes.map(({ part }) => part))];
  return { ...of, case: 'changes', parts: parts.slice(0, 2), more: Math.max(0, parts.length - 2) };
};

export type BriefHeadline = { readonly claims: 'nothing' } & (
  | { readonly case: 'no-limits'; readonly distanceM: Brief['distanceM'] }
  | { readonly case: 'limits'; readonly distanceM: Brief['distanceM']; readonly limits: number }
);

/** What must a pair do? */
export const briefHeadline = ({ distanceM, limits }: Brief): BriefHeadline =>
  limits.length === 0
    ? { claims: 'nothing', case: 'no-limits', distanceM }
    : { claims: 'nothing', case: 'limits', distanceM, limits: limits.length };

export type ReportHeadline = { readonly claims: 'nothing' } & (
  | { readonly case: 'nothing-to-report' | 'none-sent' }
  | { readonly case: 'sent'; readonly round: RecordId; readonly at: string }
  | { readonly case: 'not-sent'; readonly round: RecordId }
);

/** Has the report of the latest round with runs gone out? */
export const reportHeadline = (
  { rounds }: { readonly rounds: readonly Pick<ReviewSummary['rounds'][number], 'id' | 'size'>[] },
  reports: readonly Pick<Report, 'round' | 'at'>[],
): ReportHeadline => {
  const last = rounds.findLast(({ size }) => size.runs > 0);
  if (!last) return { claims: 'nothing', case: 'nothing-to-report' };
  if (reports.length === 0) return { claims: 'nothing', case: 'none-sent' };
  const [latest] = reports
    .filter(({ round }) => round === last.id)
    .toSorted((a, b) => Date.parse(b.at) - Date.parse(a.at));
  return latest
    ? { claims: 'nothing', case: 'sent', round: last.id, at: latest.at }
    : { claims: 'nothing', case: 'not-sent', round: last.id };
};

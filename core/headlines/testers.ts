/** Who needs a word from the lead: who is in pain, who is silent? In one sentence, by rule. */
import type { RecordId } from '../records/index.ts';
import type { Quiet, TesterRow } from '../review/index.ts';
import type { Claim } from './stamp.ts';

export type TestersHeadline = { readonly claims: Claim } & (
  | { readonly case: 'none' }
  | { readonly case: 'pain'; readonly testers: readonly RecordId[] }
  /** The longest silent first. */
  | { readonly case: 'silent'; readonly testers: readonly RecordId[]; readonly days: number }
  /** Nobody at all has logged for a while. */
  | { readonly case: 'all-quiet'; readonly sinceMs: number; readonly days: number }
  | { readonly case: 'nobody-holds'; readonly of: number }
  /** Nobody is silent yet, because all have had their pair for days only. */
  | { readonly case: 'nobody-ran'; readonly holders: number }
  | { readonly case: 'some-ran'; readonly ran: number; readonly holders: number }
  | { readonly case: 'all-heard'; readonly holders: number }
);

/** What the list of testers says first. */
export const testersHeadline = (
  rows: readonly TesterRow[],
  quiet: Quiet | null = null,
): TestersHeadline => {
  const claims = 'nothing';
  if (rows.length === 0) return { case: 'none', claims };
  const hurt = rows.filter(({ pain }) => pain?.stands);
  if (hurt.length > 0) return { case: 'pain', claims, testers: hurt.map(({ tester }) => tester) };
  if (quiet) return { case: 'all-quiet', claims, sinceMs: quiet.sinceMs, days: quiet.days };
  const silent = rows
    .filter(({ silentDays }) => silentDays !== null)
    .toSorted((a, b) => (b.silentDays ?? 0) - (a.silentDays ?? 0));
  if (silent.length > 0)
    return {
      case: 'silent',
      claims,
      testers: silent.map(({ tester }) => tester),
      days: silent[0]?.silentDays ?? 0,
    };
  const holding = rows.filter(({ pairs }) => pairs.length > 0);
  const holders = holding.length;
  if (holders === 0) return { case: 'nobody-holds', claims, of: rows.length };
  const ran = holding.filter(({ runs }) => runs > 0).length;
  if (ran === 0) return { case: 'nobody-ran', claims, holders };
  return ran < holders
    ? { case: 'some-ran', claims, ran, holders }
    : { case: 'all-heard', claims, holders };
};

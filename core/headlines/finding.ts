/** How far is a finding, in one sentence? Nothing is said of it that nobody wrote down. */
import type { ChangeVerdict, Finding, RecordId } from '../records/index.ts';

export type FindingHeadline =
  | {
      readonly claims: ChangeVerdict;
      readonly case: 'outcome';
      readonly round: RecordId;
      readonly until: string;
    }
  | { readonly claims: 'nothing'; readonly case: 'judge' | 'asked'; readonly round: RecordId }
  | { readonly claims: 'nothing'; readonly case: 'no-round' | 'closed' };

/**
 * @param worn whether anybody has run in a round
 * @returns the outcome that was written down, else what is next
 */
export const findingHeadline = (
  { outcome, carriedBy, state }: Pick<Finding, 'outcome' | 'carriedBy' | 'state'>,
  worn: (round: RecordId) => boolean,
): FindingHeadline => {
  if (outcome) {
    const { round, verdict, until } = outcome;
    return { claims: verdict, case: 'outcome', round, until };
  }
  if (state === 'closed') return { claims: 'nothing', case: 'closed' };
  if (carriedBy === undefined) return { claims: 'nothing', case: 'no-round' };
  return { claims: 'nothing', case: worn(carriedBy) ? 'judge' : 'asked', round: carriedBy };
};

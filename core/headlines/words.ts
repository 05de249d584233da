/** What do testers say, in one sentence? Counts of remarks and of who wrote them; what a search finds only where one was made. */
import type { WordsFacts } from '../words/index.ts';
import type { Claim } from './stamp.ts';

export type WordsHeadline = { readonly claims: Claim } & (
  | { readonly case: 'none' }
  | {
      readonly case: 'all';
      readonly remarks: number;
      readonly testers: number;
      readonly untapped: number;
    }
  /** Nothing fits the search or the filters. */
  | { readonly case: 'nothing'; readonly searched: string | null }
  | {
      readonly case: 'mention';
      readonly searched: string;
      readonly testers: number;
      readonly remarks: number;
    }
  | {
      readonly case: 'some';
      readonly remarks: number;
      readonly of: number;
      readonly testers: number;
    }
);

/** What the list of words says first. */
export const wordsHeadline = (facts: WordsFacts): WordsHeadline => {
  const claims = 'nothing';
  const { all, allTesters, allUntapped, found, foundTesters, searched, narrowed } = facts;
  if (all === 0) return { case: 'none', claims };
  if (found === 0) return { case: 'nothing', claims, searched };
  if (searched !== null)
    return { case: 'mention', claims, searched, testers: foundTesters, remarks: found };
  return narrowed
    ? { case: 'some', claims, remarks: found, of: all, testers: foundTesters }
    : { case: 'all', claims, remarks: all, testers: allTesters, untapped: allUntapped };
};

/** What is there to ask testers, in one sentence? Who may be hurt first, then what came back, then the rest. */
import type { RecordId } from '../records/index.ts';
import type { Doubt } from '../review/index.ts';
import type { Claim } from './stamp.ts';

export type AskHeadline = { readonly claims: Claim } &
  /** Pain that nobody asked about: each tester once. `more`: other things to ask. */
  (
    | { readonly case: 'pain'; readonly testers: readonly RecordId[]; readonly more: number }
    | { readonly case: 'answers'; readonly unread: number; readonly things: number }
    | { readonly case: 'to-ask'; readonly things: number; readonly testers: readonly RecordId[] }
    /** All was asked; so many questions wait. */
    | { readonly case: 'waiting'; readonly questions: number }
    | { readonly case: 'nothing' }
  );

export interface AskFacts {
  /** What nobody asked about yet. */
  readonly toAsk: readonly Pick<Doubt, 'kind' | 'tester'>[];
  /** Questions without an answer. */
  readonly waiting: number;
  /** Answers and messages that were not read on this device. */
  readonly unread: number;
}

export const askHeadline = ({ toAsk, waiting, unread }: AskFacts): AskHeadline => {
  const testersOf = (some: AskFacts['toAsk']) => [...new Set(some.map(({ tester }) => tester))];
  const pains = toAsk.filter(({ kind }) => kind === 'pain');
  const things = toAsk.length;
  if (pains.length > 0)
    return {
      case: 'pain',
      claims: 'nothing',
      testers: testersOf(pains),
      more: things - pains.length,
    };
  if (unread > 0) return { case: 'answers', claims: 'nothing', unread, things };
  if (things > 0) return { case: 'to-ask', claims: 'nothing', things, testers: testersOf(toAsk) };
  return waiting > 0
    ? { case: 'waiting', claims: 'nothing', questions: waiting }
    : { case: 'nothing', claims: 'nothing' };
};

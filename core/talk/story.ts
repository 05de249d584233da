/** What became of a finding, in its order: asked, answered, replied to, carried by a round, and how it ended. */
import { stampParts, type Finding, type RecordId, type RecordOf } from '../records/index.ts';
import type { StandingProposal } from './proposals.ts';
import { writtenMs } from './questions.ts';

export type StoryItem =
  /** `isAsked`: the trade is asked; else it was only written down. */
  | { readonly what: 'asked'; readonly atMs: number; readonly isAsked: boolean }
  /** `isOpen`: it waits for the lead. */
  | {
      readonly what: 'proposal';
      readonly atMs: number;
      readonly proposal: RecordOf<'proposal'>;
      readonly isOpen: boolean;
    }
  | { readonly what: 'reply'; readonly atMs: number; readonly reply: RecordOf<'proposal-reply'> }
  | { readonly what: 'carried'; readonly round: RecordId }
  | {
      readonly what: 'outcome';
      readonly atMs: number;
      readonly outcome: NonNullable<Finding['outcome']>;
    };

/**
 * The story of a finding. A reply stands after the proposal that it answers, whatever the clocks say.
 * @param standing its proposals, by `proposalsTo`
 */
export const storyOf = (
  { body, revision }: RecordOf<'finding'>,
  standing: readonly StandingProposal[],
): readonly StoryItem[] => [
  {
    what: 'asked',
    isAsked: body.asked !== undefined || body.state !== 'open',
    atMs: body.asked === undefined ? stampParts(revision.stamp).ms : Date.parse(body.asked),
  },
  ...standing.flatMap(({ proposal, reply }): readonly StoryItem[] => [
    { what: 'proposal', atMs: writtenMs(proposal), proposal, isOpen: reply === null },
    ...(reply ? [{ what: 'reply', atMs: writtenMs(reply), reply } as const] : []),
  ]),
  ...(body.carriedBy === undefined ? [] : [{ what: 'carried', round: body.carriedBy } as const]),
  ...(body.outcome
    ? [
        {
          what: 'outcome',
          atMs: Date.parse(body.outcome.until),
          outcome: body.outcome,
        } as const,
      ]
    : []),
];

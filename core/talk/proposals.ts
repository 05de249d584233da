/** What stands of the proposals to a finding, and which change comes of an accepted one? */
import type { Change, Finding, RecordId, RecordOf, StructuredChange } from '../records/index.ts';
import { writtenMs } from './questions.ts';

type Proposal = RecordOf<'proposal'>;
type ProposalReply = RecordOf<'proposal-reply'>;

/** A proposal with the lead's reply to it as it stands. */
export interface StandingProposal {
  readonly proposal: Proposal;
  /** The latest reply to the proposal as it is now; null: it waits for the lead. */
  readonly reply: ProposalReply | null;
}

/** The proposals to a finding, earliest first. One that was changed after a reply waits for the lead anew. */
export const proposalsTo = (
  finding: RecordId,
  proposals: readonly Proposal[],
  replies: readonly ProposalReply[],
): readonly StandingProposal[] =>
  proposals
    .filter(({ body }) => body.finding === finding)
    .map((proposal) => {
      const { id, stamp } = proposal.revision;
      const reply = replies
        .filter(({ body }) => body.proposal === id && body.judged === stamp)
        .reduce<ProposalReply | null>(
          (best, one) => (best === null || one.revision.stamp > best.revision.stamp ? one : best),
          null,
        );
      return { proposal, reply };
    })
    .sort(
      (a, b) =>
        writtenMs(a.proposal) - writtenMs(b.proposal) ||
        (a.proposal.revision.id < b.proposal.revision.id ? -1 : 1),
    );

/** The proposal that the lead took; of several the one that was taken last. */
export const acceptedOf = (standing: readonly StandingProposal[]): Proposal | null =>
  standing.reduce<{ readonly proposal: Proposal; readonly stamp: string } | null>(
    (best, { proposal, reply }) =>
      reply?.body.answer === 'accepted' && (!best || reply.revision.stamp > best.stamp)
        ? { proposal, stamp: reply.revision.stamp }
        : best,
    null,
  )?.proposal ?? null;

/** What a proposal offers, so that it can be measured: its own change, or the one asked for; null: neither is structured. */
export const offeredChange = (
  { change: asked }: Pick<Finding, 'change'>,
  { answer, change }: Pick<RecordOf<'proposal'>['body'], 'answer' | 'change'>,
): StructuredChange | null =>
  answer === 'cannot' ? null : (change ?? (answer === 'can' ? (asked ?? null) : null));

/**
 * The change that a round carries, made from an accepted proposal, or from what the finding asks for.
 * @param proposal null: nobody answered, or the lead does not wait for it
 * @param say the structured change in the words of who writes it
 * @returns null where the specialist cannot
 */
export const changeForRound = (
  finding: RecordOf<'finding'>,
  proposal: Proposal | null,
  say: (change: StructuredChange) => string,
): Change | null => {
  if (proposal?.body.answer === 'cannot') return null;
  const structured = proposal
    ? offeredChange(finding.body, proposal.body)
    : (finding.body.change ?? null);
  const { kind, zone, part, title, wanted } = finding.body;
  const words = structured ? say(structured) : (proposal?.body.words ?? wanted ?? title);
  const line = words.trim().replace(/\s+/g, ' ') || title;
  return {
    part: structured?.part ?? part,
    what: [...line].slice(0, MOST_SIGNS).join('').trimEnd(),
    ...(kind && { mends: { kind, ...(zone && { zone }) } }),
    ...(structured && { structured }),
    finding: finding.revision.id,
    ...(proposal && { proposal: proposal.revision.id }),
  };
};

/** Of the line of a change, so that no sign of two code units is cut either. */
const MOST_SIGNS = 100;

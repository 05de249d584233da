/** Where a finding stands for the specialist who reads it. Pure. */
import type { RecordId, RecordOf } from '../../core/records/index.ts';
import {
  daysOfTurn,
  isLate,
  proposalsTo,
  turnOf,
  type StandingProposal,
} from '../../core/talk/index.ts';

export interface ReaderStanding {
  readonly standing: readonly StandingProposal[];
  /** The trade answers next. */
  readonly waits: boolean;
  /** Days for which it has been the trade's turn. */
  readonly days: number;
  /** The day that the lead named has passed while it waits. */
  readonly late: boolean;
  /** The lead asked again after the last answer. */
  readonly again: boolean;
  /** This member's latest answer. */
  readonly own: StandingProposal | null;
  /** Somebody else's answer waits for the lead, or was accepted. */
  readonly byOther: boolean;
  /** Nothing is to be answered any more: it is closed, or a round carries it. */
  readonly settled: boolean;
}

/** A specialist knows no rounds: a finding that one carries is nobody's question any more. */
export const standingOf = (
  finding: RecordOf<'finding'>,
  proposals: readonly RecordOf<'proposal'>[],
  replies: readonly RecordOf<'proposal-reply'>[],
  member: RecordId | undefined,
  nowMs: number,
): ReaderStanding => {
  const standing = proposalsTo(finding.revision.id, proposals, replies);
  const turn = turnOf(finding, standing, () => null);
  // What the lead has not asked yet can be answered all the same, and waits for nobody.
  const waits = turn?.for === 'answer';
  const own = standing.findLast(({ proposal }) => proposal.revision.author === member) ?? null;
  const others = standing.filter(
    ({ proposal, reply }) =>
      proposal.revision.author !== member && reply?.body.answer !== 'ask-again',
  );
  return {
    standing,
    waits,
    days: turn ? daysOfTurn(turn, nowMs) : 0,
    late: turn !== null && waits && isLate(turn, nowMs),
    again: waits && standing.length > 0,
    own,
    byOther: others.length > 0,
    settled:
      finding.body.state === 'closed' ||
      finding.body.state === 'carried-out' ||
      finding.body.carriedBy !== undefined ||
      finding.body.outcome !== undefined,
  };
};

/** Whether this member's answer still waits for the lead: it can be corrected and taken back. */
export const canCorrect = ({ own, settled }: ReaderStanding): boolean =>
  !settled && own !== null && own.reply === null;

/** Whether this member can write an answer. One that waits is corrected, one that was accepted stands. */
export const canAnswer = ({ own, settled }: ReaderStanding): boolean =>
  !settled && (own === null || own.reply?.body.answer === 'ask-again');

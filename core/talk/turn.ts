/** Whose turn is a finding, for what, and since when? */
import { stampParts, type RecordId, type RecordOf } from '../records/index.ts';
import { acceptedOf, type StandingProposal } from './proposals.ts';
import { writtenMs } from './questions.ts';

/**
 * - `ask`: the lead has yet to ask the trade; `answer`: the trade answers; `decide`: the lead takes a proposal or asks
 *   again; `assign`: the lead says which round carries what was accepted; `build`: the trade makes the sample;
 * - `wear`: the testers run in it; `judge`: enough was worn, the lead says what it did; `close`: the outcome is written.
 */
export type TurnFor = 'ask' | 'answer' | 'decide' | 'assign' | 'build' | 'wear' | 'judge' | 'close';

export interface Turn {
  readonly who: 'lead' | 'trade' | 'tester';
  readonly for: TurnFor;
  /** Milliseconds since 1970. */
  readonly sinceMs: number;
  /** Until when, where somebody said so: the finding's date, or the date of the next sample. */
  readonly dueMs: number | null;
}

/** How far the round is that carries the change; milliseconds since 1970, null: not yet. */
export interface CarryingRound {
  /** Since when a pair of it has been with a tester. */
  readonly outMs: number | null;
  /** Since when enough was worn to judge the finding. */
  readonly enoughMs: number | null;
}

const turn = (
  who: Turn['who'],
  what: TurnFor,
  sinceMs: number,
  dueMs: number | null = null,
): Turn => ({ who, for: what, sinceMs, dueMs });

const msOf = (instant: string | undefined): number | null =>
  instant === undefined ? null : Date.parse(instant);

/** Nobody has said yet which round carries it. */
const beforeRound = (finding: RecordOf<'finding'>, standing: readonly StandingProposal[]): Turn => {
  const { body, revision } = finding;
  const askedMs = msOf(body.asked) ?? stampParts(revision.stamp).ms;
  const due = msOf(body.due);
  const accepted = acceptedOf(standing);
  if (accepted) {
    const taken = standing.find(({ proposal }) => proposal === accepted)?.reply;
    return turn('lead', 'assign', taken ? writtenMs(taken) : writtenMs(accepted));
  }
  const waiting = standing.find(({ reply }) => reply === null);
  if (waiting) return turn('lead', 'decide', writtenMs(waiting.proposal));
  if (standing.length > 0) {
    const again = standing.map(({ reply }) => (reply ? writtenMs(reply) : 0));
    return turn('trade', 'answer', Math.max(...again), due);
  }
  return body.state === 'open' && body.asked === undefined
    ? turn('lead', 'ask', askedMs)
    : turn('trade', 'answer', askedMs, due);
};

/**
 * Whose turn a finding is; null: nobody's, it is closed.
 * @param standing its proposals, by `proposalsTo`
 * @param roundOf how far a round is; null: it is not in the log
 */
export const turnOf = (
  finding: RecordOf<'finding'>,
  standing: readonly StandingProposal[],
  roundOf: (round: RecordId) => CarryingRound | null,
): Turn | null => {
  const { state, outcome, carriedBy } = finding.body;
  const savedMs = stampParts(finding.revision.stamp).ms;
  if (state === 'closed') return null;
  if (outcome) return turn('lead', 'close', Date.parse(outcome.until));
  if (carriedBy === undefined) return beforeRound(finding, standing);
  const round = roundOf(carriedBy);
  if (round === null || round.outMs === null) {
    const due = msOf(acceptedOf(standing)?.body.sampleAt) ?? msOf(finding.body.due);
    return turn('trade', 'build', savedMs, due);
  }
  return round.enoughMs === null
    ? turn('tester', 'wear', round.outMs)
    : turn('lead', 'judge', round.enoughMs);
};

const DAY_MS = 86_400_000;

/** Whole days for which it has been somebody's turn. */
export const daysOfTurn = ({ sinceMs }: Pick<Turn, 'sinceMs'>, nowMs: number): number =>
  Math.max(0, Math.floor((nowMs - sinceMs) / DAY_MS));

/** Whether the date that was named has passed. */
export const isLate = ({ dueMs }: Pick<Turn, 'dueMs'>, nowMs: number): boolean =>
  dueMs !== null && nowMs > dueMs;

/**
 * What came of a finding, by the two rounds: of its complaint as every complaint is compared, and of what was too little
 * or too much as testers moved towards just right. A score that was answered from bad to good is no ground of it.
 */
import { reviewTwoSided, twoSidedChanges, type TwoSidedChange } from '../complaints/index.ts';
import type { TwoSidedId } from '../foot/index.ts';
import type { ChangeVerdict, Finding, RecordId } from '../records/index.ts';
import type { CellComparison } from '../rounds/index.ts';
import { arrivalForFinding, isAbsent, type ChangeArrival } from './change-arrivals.ts';
import { compareComplaint } from './compare-rounds.ts';
import type { ProjectLog } from './project-log.ts';
import { twoSidedAnswers } from './round-review.ts';

/** What came of a finding, for the lead to accept: the lines are said in `app/words/say-change.ts`. */
export type ProposedOutcome = {
  /** The round that carried the change. */
  readonly round: RecordId;
  readonly verdict: ChangeVerdict;
  /** The instant until which the log was read, milliseconds since 1970. */
  readonly untilMs: number;
  /** Whether the change is in the shoe; null: it is not said in figures. Of one that is not, nothing is called its doing. */
  readonly arrival: ChangeArrival | null;
} & (
  | { readonly of: 'complaint'; readonly found: CellComparison }
  /** Null: fewer than two testers answered it in both rounds. */
  | {
      readonly of: 'two-sided';
      readonly attribute: TwoSidedId;
      readonly moved: TwoSidedChange | null;
    }
);

const verdictWords: Readonly<Record<TwoSidedChange['word'], ChangeVerdict>> = {
  better: 'better',
  worse: 'worse',
  'no-relevant': 'no-different',
  open: 'too-little',
};

/** `mended`: closer, and just right in the later round. */
const ofTwoSided = (
  log: ProjectLog,
  [earlier, later]: readonly [RecordId, RecordId],
  attribute: TwoSidedId,
): Pick<Extract<ProposedOutcome, { readonly of: 'two-sided' }>, 'verdict' | 'moved'> => {
  const marksIn = (round: RecordId) =>
    twoSidedAnswers(log.pairs.filter((pair) => pair.round === round));
  const after = marksIn(later);
  const moved =
    twoSidedChanges(marksIn(earlier), after).find((one) => one.attribute === attribute) ?? null;
  const isRight = () =>
    reviewTwoSided(after).find((one) => one.attribute === attribute)?.word === 'right';
  if (!moved) return { verdict: 'too-little', moved };
  return {
    verdict: moved.word === 'better' && isRight() ? 'mended' : verdictWords[moved.word],
    moved,
  };
};

/**
 * Proposes what came of a finding; too little to say where its change is not in the shoe.
 * @param id of the finding; null: it has none yet
 * @returns null where it names neither a complaint nor a two-sided question, no round that carries the change, or that
 * round is not a later one of the project
 */
export const proposeOutcome = (
  log: ProjectLog,
  {
    round,
    carriedBy,
    kind,
    zone,
    evidence,
  }: Pick<Finding, 'round' | 'carriedBy' | 'kind' | 'zone' | 'evidence'>,
  id: RecordId | null = null,
): ProposedOutcome | null => {
  const orderOf = (id: RecordId) =>
    log.rounds.find(({ revision }) => revision.id === id)?.body.order;
  const attribute = evidence?.twoSided?.attribute;
  if (carriedBy === undefined || (kind === undefined && attribute === undefined)) return null;
  const [from, to] = [orderOf(round), orderOf(carriedBy)];
  if (from === undefined || to === undefined || to <= from) return null;
  const arrival = arrivalForFinding(log, id, { carriedBy, kind, zone });
  const about = { round: carriedBy, untilMs: log.nowMs, arrival };
  const said = (verdict: ChangeVerdict) => (isAbsent(arrival) ? 'too-little' : verdict);
  if (kind !== undefined) {
    const found = compareComplaint(log, round, carriedBy, { kind, zone: zone ?? null });
    return { ...about, of: 'complaint', verdict: said(found.verdict), found };
  }
  if (attribute === undefined) return null;
  const own = ofTwoSided(log, [round, carriedBy], attribute);
  return { ...about, of: 'two-sided', attribute, ...own, verdict: said(own.verdict) };
};

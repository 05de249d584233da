/** What the places Wear and Verdict ask of the log. */
import {
  verdictHeadline,
  verdictStamp,
  wearHeadline,
  wearStamp,
  type Stamp,
  type VerdictHeadline,
  type WearHeadline,
} from '../../../core/headlines/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import {
  listChecks,
  lookAtCheck,
  verdictGrid,
  wearCards,
  type CheckLook,
  type ListedCheck,
  type ProjectLog,
  type VerdictGrid,
  type WearCard,
} from '../../../core/review/index.ts';
import type { Opened } from './opened.ts';

/** Both places draw the same curves, which take longest. */
const cardsByLog = new WeakMap<ProjectLog, readonly WearCard[]>();

const cardsOf = (log: ProjectLog): readonly WearCard[] => {
  const cards = cardsByLog.get(log) ?? wearCards(log);
  cardsByLog.set(log, cards);
  return cards;
};

export interface WearState {
  readonly headline: WearHeadline;
  readonly stamp: Stamp;
  readonly cards: readonly WearCard[];
  /** All checks, whether or not they count. */
  readonly checks: number;
}

const wearState = ({ log }: Opened): WearState => {
  const cards = cardsOf(log);
  const facts = {
    rounds: log.rounds.map(({ revision }) => revision.id),
    cards,
    briefM: log.project.brief.distanceM,
  };
  return {
    headline: wearHeadline(facts),
    stamp: wearStamp(facts),
    cards,
    checks: log.everyCheck.length,
  };
};

const checkList = ({ log }: Opened): readonly ListedCheck[] => listChecks(log);

const checkLook = ({ log }: Opened, id: RecordId): CheckLook | null => lookAtCheck(log, id);

export interface VerdictState {
  readonly headline: VerdictHeadline;
  readonly stamp: Stamp;
  readonly grid: VerdictGrid;
}

const verdictState = ({ log, review, verdicts }: Opened): VerdictState => {
  const grid = verdictGrid(log, review, verdicts(), cardsOf(log));
  return { headline: verdictHeadline(grid), stamp: verdictStamp(grid), grid };
};

export const wearQuestions = { wearState, checkList, checkLook, verdictState };

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
  type NextVisit,
  type ProjectLog,
  type Settle,
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

/** What would settle a limit: the same as in its row of the verdict. */
export type LimitCard = WearCard & { readonly settle: Settle | null };

export interface WearState {
  readonly headline: WearHeadline;
  readonly stamp: Stamp;
  readonly cards: readonly LimitCard[];
  /** Whose open limits are settled; null: nobody has run. */
  readonly latest: RecordId | null;
  /** All checks, whether or not they count. */
  readonly checks: number;
}

const gridOf = ({ log, review, verdicts }: Opened): VerdictGrid =>
  verdictGrid(log, review, verdicts(), cardsOf(log));

const wearState = (opened: Opened): WearState => {
  const { log } = opened;
  const cards = cardsOf(log);
  const { rows, latest } = gridOf(opened);
  const settleOf = ({ limit, kind, site }: WearCard) =>
    limit === null
      ? null
      : rows.find((row) => row.limit === limit && row.kind === kind && row.site === site)?.settle;
  const facts = {
    rounds: log.rounds.map(({ revision }) => revision.id),
    cards,
    briefM: log.project.brief.distanceM,
  };
  return {
    headline: wearHeadline(facts),
    stamp: wearStamp(facts),
    cards: cards.map((card) => ({ ...card, settle: settleOf(card) ?? null })),
    latest,
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

/** The next checks that would settle a limit; one visit to the bench of the same pairs once. */
const nextVisits = (opened: Opened): readonly NextVisit[] => {
  const visits = gridOf(opened).rows.flatMap(({ settle }) =>
    settle?.by === 'measure' ? [settle] : [],
  );
  const keyOf = ({ pair, also, atM }: NextVisit) => [atM, ...[pair, ...also].sort()].join(' ');
  return visits.filter(
    (one, at) => visits.findIndex((other) => keyOf(other) === keyOf(one)) === at,
  );
};

const verdictState = (opened: Opened): VerdictState => {
  const grid = gridOf(opened);
  return { headline: verdictHeadline(grid), stamp: verdictStamp(grid), grid };
};

export const wearQuestions = { wearState, checkList, checkLook, nextVisits, verdictState };

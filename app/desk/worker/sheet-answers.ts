/** What the sheet and the list of all shoes ask of the log. */
import {
  sheetHeadline,
  sheetStamp,
  stampOf,
  type SheetHeadline,
  type Stamp,
} from '../../../core/headlines/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import {
  calendarOf,
  calloutsOf,
  overviewOf,
  type Calendar,
  type Callout,
  type Overview,
} from '../../../core/review/index.ts';
import type { Metres } from '../../../core/units/index.ts';
import type { Opened } from './opened.ts';

/** More bars than this beside each other are not told apart. */
const MOST_BARS = 12;

export interface SheetRound {
  readonly id: RecordId;
  readonly stamp: Stamp;
  readonly runs: number;
  readonly pairs: number;
  readonly farthestM: Metres;
  /** The farthest pairs, farthest first. */
  readonly bars: readonly {
    readonly pair: RecordId;
    readonly totalM: Metres;
    readonly stopped: boolean;
  }[];
}

export interface Sheet {
  readonly headline: SheetHeadline;
  readonly stamp: Stamp;
  readonly overview: Overview;
  readonly callouts: readonly Callout[];
  /** By order. */
  readonly rounds: readonly SheetRound[];
}

const workOutSheet = ({ log, review, verdicts }: Opened): Sheet => {
  const overview = overviewOf(log, review, verdicts());
  const callouts = calloutsOf(log, review, verdicts());
  const facts = { review, verdicts: verdicts(), overview, callouts };
  const words = new Map(verdicts().map((one) => [one.round, one]));
  return {
    headline: sheetHeadline(facts),
    stamp: sheetStamp(facts),
    overview,
    callouts,
    rounds: review.rounds.map(({ id, size }) => {
      const own = review.pairs
        .filter(({ round }) => round === id)
        .sort((a, b) => b.totalM - a.totalM);
      const verdict = words.get(id);
      return {
        id,
        stamp: verdict ? stampOf(verdict.word) : 'open',
        runs: size.runs,
        pairs: own.length,
        farthestM: own[0]?.totalM ?? (0 as Metres),
        bars: own
          .slice(0, MOST_BARS)
          .map(({ id: pair, totalM, stopUse }) => ({ pair, totalM, stopped: stopUse !== null })),
      };
    }),
  };
};

const sheets = new WeakMap<Opened, Sheet>();

/** Worked out once: the sheet and the card among all shoes show the same. */
const sheet = (opened: Opened): Sheet => {
  const known = sheets.get(opened) ?? workOutSheet(opened);
  sheets.set(opened, known);
  return known;
};

/** A project as its card among all shoes shows it. */
export type ShoeCard = Pick<Sheet, 'headline' | 'stamp' | 'callouts' | 'rounds'> & {
  readonly next: Overview['next'];
  readonly runs: number;
  readonly farthestM: Metres;
};

const shoeCard = (opened: Opened): ShoeCard => {
  const { headline, stamp, callouts, rounds, overview } = sheet(opened);
  const { review } = opened;
  return {
    headline,
    stamp,
    callouts,
    rounds,
    next: overview.next,
    runs: review.size.runs,
    farthestM: rounds.reduce<Metres>(
      (most, one) => (one.farthestM > most ? one.farthestM : most),
      0 as Metres,
    ),
  };
};

const calendar = (
  { log }: Opened,
  span: { readonly fromMs: number; readonly untilMs: number } | null,
  open: RecordId | null,
): Calendar => calendarOf(log, span, open);

export const sheetQuestions = { sheet, shoeCard, calendar };

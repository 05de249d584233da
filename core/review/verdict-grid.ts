/**
 * What does each round hold of what the brief asks, and what would settle the rest? A row for each limit, a cell for
 * each round, with what its small picture needs; the words follow from the same items as the verdict.
 */
import type { CellName } from '../complaints/index.ts';
import type { Limit, RecordId } from '../records/index.ts';
import { metres, type Metres } from '../units/index.ts';
import { type WearKind } from '../wear/index.ts';
import { observedRuns } from './closer-look.ts';
import type { ProjectLog } from './project-log.ts';
import type { Review, RoundReview } from './review-types.ts';
import { lifetimesOf, type Verdict, type VerdictItem } from './verdict.ts';
import { type WearCard, type WearRound } from './wear-cards.ts';
import { settleOf, type Settle } from './verdict-settle.ts';

/** One complaint's share of runs against what the brief allows. */
export interface GridShare extends CellName {
  readonly share: number;
  readonly lower: number;
  readonly upper: number;
  readonly allowed: number;
  readonly runs: number;
  readonly askedRuns: number;
  readonly testers: number;
  readonly askedTesters: number;
  readonly proved: boolean;
}

/** What a cell draws, beside its word. */
export type GridPicture =
  | ({ readonly draw: 'curve' } & Pick<WearRound, 'curve' | 'points' | 'limitAt' | 'greatest'>)
  | {
      readonly draw: 'lives';
      /** The farthest first. */
      readonly lives: readonly {
        readonly pair: RecordId;
        readonly atM: Metres;
        readonly cameApart: boolean;
      }[];
    }
  | { readonly draw: 'shares'; readonly shares: readonly GridShare[] }
  | {
      readonly draw: 'growth';
      /** Runs asked and runs with any complaint, by distance on the pair. */
      readonly bars: readonly {
        readonly fromM: Metres;
        readonly untilM: Metres;
        readonly asked: number;
        readonly complained: number;
      }[];
    }
  | { readonly draw: 'notices'; readonly pairs: number; readonly stopped: readonly RecordId[] };

export interface GridCell {
  readonly round: RecordId;
  readonly item: VerdictItem;
  /** Null: there is nothing to draw yet. */
  readonly picture: GridPicture | null;
}

export interface GridRow {
  readonly key: string;
  readonly what: 'wear' | Exclude<VerdictItem['what'], 'wear' | 'not-measured'>;
  readonly limit: Limit | null;
  readonly kind: WearKind | null;
  readonly site: string | null;
  /** By order of the rounds; null: this place was not measured in the round. */
  readonly cells: readonly (GridCell | null)[];
  /** For the latest round with a run; null: it holds, or nobody has run. */
  readonly settle: Settle | null;
}

export interface VerdictGrid {
  readonly rounds: readonly { readonly id: RecordId; readonly word: Verdict['word'] }[];
  /** Whose open limits the last column settles; null: nobody has run. */
  readonly latest: RecordId | null;
  readonly rows: readonly GridRow[];
}

/** Width of a bar of the complaints by kilometre. */
const BAR_M = 50_000;
const MOST_SHARES = 3;
const sharesOf = ({ complaints }: RoundReview): readonly GridShare[] =>
  complaints.cells.slice(0, MOST_SHARES).map((cell) => ({
    zone: cell.zone,
    kind: cell.kind,
    share: cell.runShare.share,
    lower: cell.runShare.lower,
    upper: cell.runShare.upper,
    allowed: cell.allowedRate,
    runs: cell.runs,
    askedRuns: complaints.asked.runs,
    testers: cell.testersOnce,
    askedTesters: complaints.asked.testers,
    proved: cell.word === 'recurs-across-testers',
  }));

const growthBars = (log: ProjectLog, round: RecordId) => {
  const runs = observedRuns(log.pairs.filter((pair) => pair.round === round));
  const last = runs.reduce((most, { pairM }) => Math.max(most, Math.floor(pairM / BAR_M)), -1);
  return Array.from({ length: last + 1 }, (_, at) => {
    const own = runs.filter(({ pairM }) => Math.floor(pairM / BAR_M) === at);
    return {
      fromM: metres(at * BAR_M),
      untilM: metres((at + 1) * BAR_M),
      asked: own.length,
      complained: own.filter(({ complaints }) => complaints.length > 0).length,
    };
  });
};

const pictureOf = (
  log: ProjectLog,
  round: RoundReview,
  item: VerdictItem,
  wear: WearRound | undefined,
): GridPicture | null => {
  const pairs = log.pairs.filter((pair) => pair.round === round.id);
  switch (item.what) {
    case 'wear':
      return wear
        ? {
            draw: 'curve',
            curve: wear.curve,
            points: wear.points,
            limitAt: wear.limitAt,
            greatest: wear.greatest,
          }
        : null;
    case 'not-measured':
      return null;
    case 'structure': {
      const lifetimes = lifetimesOf(log, pairs);
      return {
        draw: 'lives',
        lives: pairs
          .map(({ id }, at) => ({
            pair: id,
            atM: metres(lifetimes[at]?.time ?? 0),
            cameApart: lifetimes[at]?.event ?? false,
          }))
          .sort((a, b) => b.atM - a.atM),
      };
    }
    case 'allowed-rate': {
      const shares = sharesOf(round);
      return shares.length > 0 ? { draw: 'shares', shares } : null;
    }
    case 'complaints': {
      const bars = growthBars(log, round.id);
      return bars.length > 0 ? { draw: 'growth', bars } : null;
    }
    case 'stop-use':
      return { draw: 'notices', pairs: pairs.length, stopped: item.pairs };
  }
};

interface RowName extends Pick<GridRow, 'key' | 'what' | 'limit' | 'kind' | 'site'> {
  readonly isOf: (item: VerdictItem) => boolean;
}

const wearRows = (cards: readonly WearCard[]): readonly RowName[] =>
  cards.flatMap(({ limit, kind, site }): RowName[] =>
    limit === null
      ? []
      : [
          {
            key: `${limit.measure} ${limit.bound} ${limit.value} ${limit.basis} ${kind} ${site}`,
            what: 'wear',
            limit,
            kind,
            site,
            isOf: (item) =>
              (item.what === 'wear' &&
                item.limit === limit &&
                item.kind === kind &&
                item.site === site) ||
              (item.what === 'not-measured' && item.limit === limit),
          },
        ],
  );

const otherRows = (['structure', 'allowed-rate', 'complaints', 'stop-use'] as const).map(
  (what): RowName => ({
    key: what,
    what,
    limit: null,
    kind: null,
    site: null,
    isOf: (item) => item.what === what,
  }),
);

/** @param verdicts one for each round of the review, in its order */
export const verdictGrid = (
  log: ProjectLog,
  { rounds }: Pick<Review, 'rounds'>,
  verdicts: readonly Verdict[],
  cards: readonly WearCard[],
): VerdictGrid => {
  const latest = rounds.findLast(({ size }) => size.runs > 0)?.id ?? null;
  const rows = [...wearRows(cards), ...otherRows].map(({ isOf, ...row }): GridRow => {
    const card = cards.find(
      ({ limit, kind, site }) => limit === row.limit && kind === row.kind && site === row.site,
    );
    const wearOf = (round: RecordId) => card?.rounds.find((one) => one.round === round);
    const cells = rounds.map((round, at): GridCell | null => {
      const item = verdicts[at]?.items.find(isOf);
      return item
        ? { round: round.id, item, picture: pictureOf(log, round, item, wearOf(round.id)) }
        : null;
    });
    const last = cells.find((cell) => cell?.round === latest);
    return {
      ...row,
      cells,
      settle: last ? settleOf(log, last.round, last.item, wearOf(last.round)) : null,
    };
  });
  return {
    rounds: verdicts.map(({ round, word }) => ({ id: round, word })),
    latest,
    rows,
  };
};

/** What a cell of the verdict says and where it leads; what would settle a row. */
import { wearRoundSays } from '../../../core/headlines/index.ts';
import type { CellName } from '../../../core/complaints/index.ts';
import type {
  GridCell,
  GridRow,
  GridShare,
  Settle,
  WearRound,
} from '../../../core/review/index.ts';
import { metres } from '../../../core/units/index.ts';
import { formatSetPercent } from '../../parts/format.ts';
import { halves, p, terms } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { speakerOf } from '../parts/speaker.ts';
import { boundOf, titleOf } from '../wear/limit-words.ts';

/** The limit of a row, and a note beneath it. */
export const rowWords = (
  row: GridRow,
  { review, records }: TabProps,
): { readonly title: string; readonly note: string } => {
  const { rows, rowNotes } = p().verdict;
  const { complaint, pain } = review.project.brief.allowedRate;
  switch (row.what) {
    case 'wear':
      return {
        title: titleOf(row, speakerOf({ review, records })),
        note: row.limit ? boundOf(row.limit) : '',
      };
    case 'allowed-rate':
      return {
        title: rows['allowed-rate'](formatSetPercent(complaint)),
        note: rowNotes['allowed-rate'](formatSetPercent(pain)),
      };
    case 'structure':
    case 'complaints':
    case 'stop-use':
      return { title: rows[row.what], note: rowNotes[row.what] };
  }
};

const feltOf = ({ zone, kind }: CellName): string =>
  p().frame.feltTitle(terms().kinds[kind].name, terms().zones[zone].name);

const MOST_NAMED = 2;

const named = (cells: readonly CellName[]): string =>
  halves(cells.slice(0, MOST_NAMED).map(feltOf)) +
  (cells.length > MOST_NAMED ? ` ${p().sheet.more(cells.length - MOST_NAMED)}` : '');

/** One share as words, as the first that recurs. */
const shareOf = (cell: GridCell, of: CellName | undefined): GridShare | undefined =>
  cell.picture?.draw === 'shares'
    ? cell.picture.shares.find(({ zone, kind }) => zone === of?.zone && kind === of.kind)
    : undefined;

const cameApart = (
  { failed, pairs }: Extract<GridCell['item'], { what: 'structure' }>,
  picture: GridCell['picture'],
  say: ReturnType<typeof sayOf>,
): string => {
  const lives = picture?.draw === 'lives' ? picture.lives : [];
  const at = lives.findLast((one) => one.cameApart) ?? lives[0];
  return p().verdict.cameApart(failed, pairs, say.distance(at?.atM ?? metres(0)));
};

const rateLine = (
  item: Extract<GridCell['item'], { what: 'allowed-rate' }>,
  cell: GridCell,
): string => {
  const words = p().verdict;
  const [first] = item.cells;
  const share = shareOf(cell, first);
  if (share && first)
    return words.recurs(
      feltOf(first),
      share.runs,
      share.askedRuns,
      share.testers,
      share.askedTesters,
    );
  if (first) return feltOf(first);
  if (item.word === 'does-not-hold') return words.painRecurs;
  return item.askedRuns === 0
    ? words.nobodyAsked
    : words.nothingRecurs(item.askedRuns, item.askedTesters);
};

/** What the cell says in one line. @param wear of a wear cell: the same as on its card */
export const cellLine = (cell: GridCell, props: TabProps): string => {
  const words = p().verdict;
  const say = sayOf(props);
  const { item, picture } = cell;
  const { distanceM: briefM } = props.review.project.brief;
  switch (item.what) {
    case 'wear': {
      const greatest = picture?.draw === 'curve' ? picture.greatest : briefM;
      const one = { outlook: item, basis: item.basis, greatest } as unknown as WearRound;
      return p().wear.roundSays(wearRoundSays(one, briefM), say);
    }
    case 'not-measured':
      return words.notMeasured;
    case 'structure':
      return cameApart(item, picture, say);
    case 'allowed-rate':
      return rateLine(item, cell);
    case 'complaints':
      return item.growing.length > 0
        ? words.grows(named(item.growing))
        : words.noRise(item.runsThere, say.distance(briefM));
    case 'stop-use':
      return item.pairs.length > 0
        ? words.withdrawn(say.list(item.pairs.map(say.pair)), item.pairs.length)
        : words.noneWithdrawn;
  }
};

/** The record behind a cell: a limit's curve in its round, a zone, a pair, or the place that has them. */
export const cellHref = (cell: GridCell, row: GridRow, { review }: TabProps): string => {
  const links = linksOf(review.project.id);
  const { item, picture } = cell;
  switch (item.what) {
    case 'wear':
      return links.place('wear', 'of', item.kind, item.site, cell.round);
    case 'not-measured':
      return row.kind && row.site
        ? links.place('wear', 'of', row.kind, row.site)
        : links.place('wear');
    case 'structure': {
      const lives = picture?.draw === 'lives' ? picture.lives : [];
      const broken = lives.find(({ cameApart }) => cameApart) ?? lives[0];
      return broken ? links.pair(broken.pair) : links.place('pairs');
    }
    case 'allowed-rate': {
      const first = item.cells[0] ?? (picture?.draw === 'shares' ? picture.shares[0] : undefined);
      return first ? links.zone('left', first.zone) : links.place('shoe');
    }
    case 'complaints': {
      const [first] = item.growing;
      return first ? links.zone('left', first.zone) : links.place('shoe');
    }
    case 'stop-use': {
      const [first] = item.pairs;
      return first ? links.pair(first) : links.place('pairs');
    }
  }
};

/** What would settle a row, in one short line, and where that is done. */
export const settleLine = (
  settle: Settle,
  props: TabProps,
  at: Pick<GridRow, 'kind' | 'site'>,
): { readonly line: string; readonly href: string } => {
  const { settles } = p().verdict;
  const say = sayOf(props);
  const links = linksOf(props.review.project.id);
  switch (settle.by) {
    case 'measure':
      return {
        line: settles.measure(settle, say),
        href: links.pair(settle.pair),
      };
    case 'measure-first':
      return { line: settles['measure-first'], href: links.place('wear', 'checks', 'new') };
    case 'look-at-pair':
      return {
        line: settles['look-at-pair'](say.pair(settle.pair)),
        href: links.pair(settle.pair),
      };
    case 'look-at-reading':
      return {
        line: settles['look-at-reading'](say.pair(settle.pair), say.distance(settle.atM)),
        href: settle.check ? links.check(settle.check) : links.pair(settle.pair),
      };
    case 'pairs-differ':
      return {
        line: settles['pairs-differ'],
        href: links.place('wear', ...(at.kind && at.site ? ['of', at.kind, at.site] : [])),
      };
    case 'run-pairs':
      return {
        line: settles['run-pairs'](settle.need, settle.have, say.distance(settle.atM)),
        href: links.place('pairs'),
      };
    case 'ask-testers':
      return {
        line: settles['ask-testers'](settle.need, settle.have),
        href: links.place('testers'),
      };
    case 'decide-by-reports':
      return { line: settles['decide-by-reports'](settle.need), href: links.place('shoe') };
    case 'ask-at':
      return {
        line: settles['ask-at'](settle.need, settle.have, say.distance(settle.atM)),
        href: links.place('pairs'),
      };
    case 'lift-or-keep':
      return {
        line: settles['lift-or-keep']([...settle.pairs], say),
        href: settle.pairs[0] ? links.pair(settle.pairs[0]) : links.place('pairs'),
      };
    case 'change':
      return { line: settles.change, href: links.place('changes') };
  }
};

/** The verdict as a grid: a row a limit, a cell a round, and what would settle the latest. On a narrow screen a card a limit. */
import { stampOf } from '../../../core/headlines/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import type {
  GridCell,
  GridRow,
  RoundInfluence,
  VerdictGrid as Grid,
} from '../../../core/review/index.ts';
import { p } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { Stamp } from '../frame/stamp.tsx';
import { CellPicture } from './cell-picture.tsx';
import { cellHref, cellLine, rowWords, settleLine } from './cell-words.ts';

/** More rounds stand under How sure? alone. */
const MOST_ROUNDS = 4;
const MOST_ALONE = 2;

type GridProps = TabProps & {
  readonly grid: Grid;
  readonly influences: readonly RoundInfluence[] | null;
};

/** Who alone changes the word of a round: named at that word. */
const Alone = (props: TabProps & { readonly of: RoundInfluence | undefined }) => {
  const words = p().verdict;
  const say = sayOf(props);
  const links = linksOf(props.review.project.id);
  const decisive = props.of?.decisive ?? [];
  return (
    <>
      {decisive.slice(0, MOST_ALONE).map(({ who, id, word }) => (
        <a
          key={id}
          class="verdict-alone"
          href={who === 'tester' ? links.tester(id) : links.pair(id)}
        >
          {words.without(
            who === 'tester' ? say.tester(id) : words.pair(say.pair(id)),
            p().frame.stamps[stampOf(word)],
          )}
        </a>
      ))}
    </>
  );
};

const Cell = (
  props: TabProps & {
    readonly row: GridRow;
    readonly cell: GridCell | null;
    readonly round: RecordId;
    readonly title: string;
    /** On a narrow screen the latest round alone is drawn. */
    readonly isLatest: boolean;
  },
) => {
  const { row, cell, round, title, review, isLatest } = props;
  const words = p().verdict;
  const say = sayOf(props);
  const links = linksOf(review.project.id);
  const name = <span class="verdict-round">{say.round(round)}</span>;
  if (!cell)
    return (
      <td role="cell" class={isLatest ? 'verdict-latest' : undefined}>
        {name}
        <span class="soft">{words.noReading}</span>
      </td>
    );
  const stamp = stampOf(cell.item.word);
  const line = cellLine(cell, props);
  return (
    <td role="cell" class={isLatest ? 'verdict-latest' : undefined}>
      {name}
      {cell.picture && (
        <CellPicture
          picture={cell.picture}
          briefM={review.project.brief.distanceM}
          href={({ zone }) => links.zone('left', zone)}
        />
      )}
      <p class="verdict-line">
        <Stamp word={stamp} />
        <a
          href={cellHref(cell, row, props)}
          aria-label={words.cellSays(title, say.round(round), p().frame.stamps[stamp], line)}
        >
          {line}
        </a>
      </p>
    </td>
  );
};

const Row = (
  props: TabProps & {
    readonly row: GridRow;
    readonly rounds: readonly RecordId[];
    readonly latest: RecordId | null;
  },
) => {
  const { row, rounds, latest, records, review } = props;
  const words = p().verdict;
  const { title, note } = rowWords(row, props);
  const settle = row.settle && settleLine(row.settle, props, row);
  return (
    <tr role="row">
      <th scope="row" role="rowheader">
        {title}
        <span class="soft small">{note}</span>
      </th>
      {rounds.map((round) => (
        <Cell
          key={round}
          records={records}
          review={review}
          row={row}
          cell={row.cells.find((one) => one?.round === round) ?? null}
          round={round}
          title={title}
          isLatest={round === latest}
        />
      ))}
      <td role="cell" class="verdict-settle">
        <span class="verdict-round">{words.settleShort}</span>
        {settle ? <a href={settle.href}>{settle.line}</a> : <span class="soft">–</span>}
      </td>
    </tr>
  );
};

export const VerdictGrid = (props: GridProps) => {
  const { grid, influences, records, review } = props;
  const words = p().verdict;
  const say = sayOf(props);
  const links = linksOf(review.project.id);
  const rounds = grid.rounds.slice(-MOST_ROUNDS);
  return (
    <table role="table" class="verdict-grid" aria-label={words.grid}>
      <thead role="rowgroup">
        <tr role="row">
          <th scope="col" role="columnheader">
            {words.limit}
          </th>
          {rounds.map(({ id, word }) => (
            <th scope="col" role="columnheader" key={id}>
              <a href={links.round(id)}>{say.round(id)}</a> <Stamp word={stampOf(word)} />
              <Alone
                records={records}
                review={review}
                of={influences?.find(({ round }) => round === id)}
              />
            </th>
          ))}
          <th scope="col" role="columnheader">
            {grid.latest ? words.settle(say.round(grid.latest)) : words.settleShort}
          </th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        {grid.rows.map((row) => (
          <Row
            key={row.key}
            records={records}
            review={review}
            row={row}
            rounds={rounds.map(({ id }) => id)}
            latest={grid.latest}
          />
        ))}
      </tbody>
    </table>
  );
};

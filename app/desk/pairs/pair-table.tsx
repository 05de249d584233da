/** The list of pairs as a table; on a narrow screen each row stands in two lines. */
import type { RecordId } from '../../../core/records/index.ts';
import type { PairRow } from '../../../core/review/index.ts';
import { formatDate, formatSize } from '../../parts/format.ts';
import { p } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf, type Links } from '../frame/route.ts';
import { roundDistance } from '../frame/say.ts';
import { Mark } from '../frame/stamp.tsx';
import { DistanceBar } from '../people/distance-bar.tsx';
import { SortHead, type SortColumn } from '../people/sort-head.tsx';
import type { Order } from '../people/sorting.ts';
import { Some } from '../parts/some.tsx';
import type { PairColumn } from './pair-order.ts';

const State = (props: {
  readonly row: PairRow;
  readonly links: Links;
  readonly quiet: TabProps['review']['quiet'];
}) => {
  const { row, links, quiet } = props;
  const withAll = row.holder !== null && quiet?.testers.includes(row.holder);
  const words = p();
  return (
    <>
      {row.stopped && <Mark tone="danger">{words.frame.doNotRun}</Mark>}
      {row.damage !== null && <a href={links.damage(row.damage)}>{words.pairs.damaged}</a>}
      {row.outOfTolerance && <Mark tone="fails">{words.frame.outOfTolerance}</Mark>}
      {row.holderSilentDays !== null && !withAll && (
        <span class="soft">{words.pairs.silent(row.holderSilentDays)}</span>
      )}
    </>
  );
};

export const PairTable = (
  props: TabProps & {
    readonly rows: readonly PairRow[];
    readonly columns: readonly SortColumn<PairColumn>[];
    readonly order: Order<PairColumn>;
    readonly onOrder: (order: Order<PairColumn>) => void;
    readonly chosen: ReadonlySet<RecordId>;
    readonly onChosen: (chosen: ReadonlySet<RecordId>) => void;
  },
) => {
  const { review, records, rows, columns, order, onOrder, chosen, onChosen } = props;
  const words = p().pairs;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const { distanceM: briefM } = review.project.brief;
  const toggle = (pair: RecordId) => {
    const next = new Set(chosen);
    if (!next.delete(pair)) next.add(pair);
    onChosen(next);
  };
  return (
    <table class="place-table people-table pair-table" aria-label={p().frame.places.pairs}>
      <SortHead columns={columns} order={order} onOrder={onOrder} before={words.selectAll} />
      <tbody>
        <Some of={rows} columns={columns.length + 1}>
          {(row) => (
            <tr key={row.pair}>
              <td class="cell-select">
                {row.handOut !== null && (
                  <input
                    type="checkbox"
                    class="tick"
                    aria-label={words.select(row.code)}
                    checked={chosen.has(row.pair)}
                    onChange={() => toggle(row.pair)}
                  />
                )}
              </td>
              <th scope="row" class="cell-name">
                <a href={links.pair(row.pair)}>{row.code}</a>
              </th>
              <td class="cell-round">
                <a href={links.round(row.round)}>{names.round(row.round)}</a>
              </td>
              <td class="cell-size">{formatSize(row.sizeMm)}</td>
              <td class="cell-holder">
                {row.holder === null ? (
                  <span class="soft">{words.nobody}</span>
                ) : (
                  <>
                    <a href={links.tester(row.holder)}>{names.tester(row.holder)}</a>{' '}
                    <span class="soft small cell-since">
                      {row.sinceMs !== null && words.since(formatDate(row.sinceMs))}
                    </span>
                  </>
                )}
              </td>
              <td class="cell-distance">
                <DistanceBar
                  share={row.shareOfBrief}
                  words={roundDistance(row.totalM)}
                  title={words.ofBrief(roundDistance(row.totalM), roundDistance(briefM))}
                />
              </td>
              <td class="right cell-runs">{row.runs}</td>
              <td class="one-line cell-last">
                {row.lastRunMs === null ? '–' : formatDate(row.lastRunMs)}
              </td>
              <td class="right cell-complaints">
                {row.asked === 0 ? '–' : words.ofAsked(row.complained, row.asked)}
              </td>
              <td class="right cell-checks">{row.checks}</td>
              <td class="cell-state">
                <State row={row} links={links} quiet={review.quiet} />
              </td>
            </tr>
          )}
        </Some>
      </tbody>
    </table>
  );
};

/** What the list of pairs shows of each pair. */
import { formatDate, formatSize } from '../../parts/format.ts';
import { p } from '../../words/index.ts';
import type { PairRow } from '../../../core/review/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf, type Links } from '../frame/route.ts';
import { roundDistance } from '../frame/say.ts';
import { Mark } from '../frame/stamp.tsx';
import type { ListColumn } from '../list/list-column.ts';
import { DistanceBar } from '../people/distance-bar.tsx';
import type { PairColumn } from './pair-order.ts';

/** What sets a pair apart; empty where there is nothing, so that its cell is. */
const stateOf = (row: PairRow, links: Links, quiet: TabProps['review']['quiet']) => {
  const withAll = row.holder !== null && quiet?.testers.includes(row.holder);
  const words = p();
  return [
    row.stopped && (
      <Mark key="stopped" tone="danger">
        {words.frame.doNotRun}
      </Mark>
    ),
    row.damage !== null && (
      <a key="damage" href={links.damage(row.damage)}>
        {words.pairs.damaged}
      </a>
    ),
    row.outOfTolerance && (
      <Mark key="out" tone="fails">
        {words.frame.outOfTolerance}
      </Mark>
    ),
    row.holderSilentDays !== null && !withAll && (
      <span key="silent" class="soft">
        {words.pairs.silent(row.holderSilentDays)}
      </span>
    ),
  ].filter(Boolean);
};

export const columnsOfPairs = (props: TabProps): readonly ListColumn<PairRow, PairColumn>[] => {
  const { review, records } = props;
  const words = p().pairs;
  const { columns } = words;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const { distanceM: briefM } = review.project.brief;
  return [
    {
      column: 'pair',
      title: columns.pair,
      first: 'ascending',
      width: 5.5,
      stays: true,
      cell: ({ pair, code }) => <a href={links.pair(pair)}>{code}</a>,
    },
    {
      column: 'round',
      title: columns.round,
      first: 'ascending',
      width: 6.5,
      bare: true,
      cell: ({ round }) => <a href={links.round(round)}>{names.round(round)}</a>,
    },
    {
      column: 'size',
      title: columns.size,
      first: 'ascending',
      width: 5,
      bare: true,
      cell: ({ sizeMm }) => formatSize(sizeMm),
    },
    {
      column: 'holder',
      title: columns.holder,
      first: 'ascending',
      width: 11,
      card: 'first',
      bare: true,
      cell: ({ holder, sinceMs }) =>
        holder === null ? (
          <span class="soft">{words.nobody}</span>
        ) : (
          <>
            <a href={links.tester(holder)}>{names.tester(holder)}</a>{' '}
            <span class="soft small">{sinceMs !== null && words.since(formatDate(sinceMs))}</span>
          </>
        ),
    },
    {
      column: 'distance',
      title: columns.distance,
      first: 'descending',
      width: 10.5,
      card: 'wide',
      bare: true,
      cell: ({ shareOfBrief, totalM }) => (
        <DistanceBar
          share={shareOfBrief}
          words={roundDistance(totalM)}
          title={words.ofBrief(roundDistance(totalM), roundDistance(briefM))}
        />
      ),
    },
    {
      column: 'runs',
      title: columns.runs,
      first: 'descending',
      right: true,
      width: 4,
      cell: ({ runs }) => runs,
    },
    {
      column: 'lastRun',
      title: columns.lastRun,
      first: 'descending',
      width: 8.25,
      cell: ({ lastRunMs }) => (lastRunMs === null ? '–' : formatDate(lastRunMs)),
    },
    {
      column: 'complaints',
      title: columns.complaints,
      first: 'descending',
      right: true,
      width: 7.5,
      cell: ({ asked, complained }) => (asked === 0 ? '–' : words.ofAsked(complained, asked)),
    },
    {
      column: 'checks',
      title: columns.checks,
      first: 'descending',
      right: true,
      width: 4.75,
      cell: ({ checks }) => checks,
    },
    {
      column: 'state',
      title: columns.state,
      first: 'ascending',
      card: 'corner',
      bare: true,
      cell: (row) => stateOf(row, links, review.quiet),
    },
  ];
};

/** What the list of runs shows of each run. */
import type { ComponentChildren } from 'preact';
import type { RunRow, RunSort } from '../../../core/review/index.ts';
import { formatDuration, pace } from '../../../core/units/index.ts';
import { distanceFigure, formatDate, formatNumber } from '../../parts/format.ts';
import { settings, type Settings } from '../../parts/settings.ts';
import { p, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { Mark } from '../frame/stamp.tsx';
import { linksOf } from '../frame/route.ts';
import type { ListColumn } from '../list/list-column.ts';

export type RunColumn = RunSort | 'surface' | 'said' | 'state';

const paceOf = ({ distanceM, durationS }: RunRow): string => {
  const perUnit = durationS === null ? null : pace(distanceM, durationS, settings.value.distance);
  return perUnit === null ? '' : formatDuration(perUnit);
};

/** What sets a run apart from one that simply counts; empty where nothing does. */
const marksOf = (row: RunRow): readonly ComponentChildren[] => {
  const words = p().runs;
  const marks: ComponentChildren[] = [];
  if (row.state !== 'counts')
    marks.push(
      <Mark key="state" tone="open" title={words.stateMeaning[row.state]}>
        {words.states[row.state]}
      </Mark>,
    );
  else if (row.odd)
    marks.push(
      <Mark key="odd" tone="plain">
        {words.marks.odd}
      </Mark>,
    );
  if (row.corrected)
    marks.push(
      <Mark key="corrected" tone="plain">
        {words.marks.corrected}
      </Mark>,
    );
  if (row.despiteStop)
    marks.push(
      <Mark key="stop" tone="danger">
        {words.marks.despiteStop}
      </Mark>,
    );
  return marks;
};

const said = (row: RunRow): string =>
  [
    row.words ?? '',
    row.photos > 0 ? p().runs.marks.photos(row.photos) : '',
    row.track ? p().runs.marks.track : '',
  ]
    .filter(Boolean)
    .join(' · ');

export const columnsOfRuns = (
  props: TabProps,
  unit: Settings['distance'],
): readonly ListColumn<RunRow, RunColumn>[] => {
  const { review, records } = props;
  const words = p().runs;
  const { columns } = words;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  return [
    {
      column: 'date',
      title: columns.date,
      first: 'descending',
      width: 8.75,
      stays: true,
      cell: ({ run, startMs, tester }) => (
        <a
          href={links.run(run)}
          aria-label={words.openRun(formatDate(startMs), names.tester(tester))}
        >
          {formatDate(startMs)}
        </a>
      ),
    },
    {
      column: 'tester',
      title: columns.tester,
      first: 'ascending',
      width: 4.5,
      card: 'first',
      bare: true,
      cell: ({ tester }) => <a href={links.tester(tester)}>{names.tester(tester)}</a>,
    },
    {
      column: 'pair',
      title: columns.pair,
      first: 'ascending',
      width: 6.5,
      card: 'first',
      cell: ({ pair }) => <a href={links.pair(pair)}>{names.pair(pair)}</a>,
    },
    {
      column: 'distance',
      title: columns.distance(unit),
      first: 'descending',
      right: true,
      width: 5.25,
      bare: true,
      unit,
      cell: ({ distanceM }) => distanceFigure(distanceM),
    },
    {
      column: 'pace',
      title: columns.pace(unit),
      first: 'ascending',
      right: true,
      width: 5,
      bare: true,
      unit: `/${unit}`,
      cell: paceOf,
    },
    {
      column: 'surface',
      title: columns.surface,
      width: 5,
      bare: true,
      cell: ({ surface }) => surface && terms().surfaces[surface],
    },
    {
      column: 'comfort',
      title: columns.comfort,
      first: 'descending',
      right: true,
      width: 5,
      cell: ({ comfort }) => comfort !== null && formatNumber(comfort, 0),
    },
    {
      column: 'complaints',
      title: columns.complaints,
      first: 'descending',
      right: true,
      width: 6.25,
      cell: ({ complaints }) =>
        complaints === null ? (
          <span class="soft">{words.notAsked}</span>
        ) : complaints > 0 ? (
          <b>{complaints}</b>
        ) : (
          complaints
        ),
    },
    {
      column: 'pain',
      title: columns.pain,
      first: 'descending',
      right: true,
      width: 3.5,
      cell: ({ pain }) => pain,
    },
    {
      column: 'said',
      title: columns.said,
      card: 'wide',
      bare: true,
      cell: (row) => {
        const all = said(row);
        return all !== '' && <span class="runs-said">{all}</span>;
      },
    },
    {
      column: 'state',
      title: columns.state,
      width: 6.5,
      card: 'corner',
      bare: true,
      cell: marksOf,
    },
  ];
};

/** Runs as rows: what was run, what was said, and where each stands. On a narrow screen a card a run. */
import type { ComponentChildren } from 'preact';
import type { RunQuery, RunRow, RunSort } from '../../../core/review/index.ts';
import { formatDuration, pace } from '../../../core/units/index.ts';
import { distanceFigure, formatDate, formatNumber } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { p, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { Mark } from '../frame/stamp.tsx';
import { linksOf } from '../frame/route.ts';

const SortHead = (props: {
  readonly sort: RunSort;
  readonly title: string;
  readonly query: RunQuery;
  readonly right?: boolean;
  readonly sortBy: (sort: RunSort) => void;
}) => {
  const { sort, title, query, right, sortBy } = props;
  const isOn = query.sort === sort;
  const direction = query.descending ? 'descending' : 'ascending';
  return (
    <th scope="col" class={right ? 'right' : undefined} {...(isOn && { 'aria-sort': direction })}>
      <button type="button" class="runs-head" onClick={() => sortBy(sort)}>
        {title}
        {isOn && <span aria-hidden="true">{query.descending ? ' ↓' : ' ↑'}</span>}
      </button>
    </th>
  );
};

const paceOf = ({ distanceM, durationS }: RunRow): string => {
  const perUnit = durationS === null ? null : pace(distanceM, durationS, settings.value.distance);
  return perUnit === null ? '' : formatDuration(perUnit);
};

/** What sets a run apart from one that simply counts. */
const Marks = ({ row }: { readonly row: RunRow }) => {
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
  return <>{marks}</>;
};

const said = (row: RunRow): string =>
  [
    row.words ?? '',
    row.photos > 0 ? p().runs.marks.photos(row.photos) : '',
    row.track ? p().runs.marks.track : '',
  ]
    .filter(Boolean)
    .join(' · ');

export const RunsTable = (
  props: TabProps & {
    readonly rows: readonly RunRow[];
    readonly query: RunQuery;
    readonly sortBy: (sort: RunSort) => void;
  },
) => {
  const { rows, query, sortBy, review } = props;
  const words = p().runs;
  const names = namesIn(review, props.records);
  const links = linksOf(review.project.id);
  const { distance: unit } = settings.value;
  const isSaid = rows.some((row) => said(row) !== '');
  const head = (sort: RunSort, title: string, right = false) => (
    <SortHead sort={sort} title={title} query={query} sortBy={sortBy} right={right} />
  );
  return (
    <div class="table-wrap" tabIndex={0} role="group" aria-label={words.all}>
      <table class="place-table runs-table">
        <thead>
          <tr>
            {head('date', words.columns.date)}
            {head('tester', words.columns.tester)}
            {head('pair', words.columns.pair)}
            {head('distance', words.columns.distance(unit), true)}
            {head('pace', words.columns.pace(unit), true)}
            <th scope="col">{words.columns.surface}</th>
            {head('comfort', words.columns.comfort, true)}
            {head('complaints', words.columns.complaints, true)}
            {head('pain', words.columns.pain, true)}
            {isSaid && <th scope="col">{words.columns.said}</th>}
            <th scope="col">{words.columns.state}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.run} class={row.state === 'counts' ? undefined : 'runs-out'}>
              <th scope="row">
                <a
                  href={links.run(row.run)}
                  aria-label={words.openRun(formatDate(row.startMs), names.tester(row.tester))}
                >
                  {formatDate(row.startMs)}
                </a>
              </th>
              <td>
                <a href={links.tester(row.tester)}>{names.tester(row.tester)}</a>
              </td>
              <td data-label={words.columns.pair}>
                <a href={links.pair(row.pair)}>{names.pair(row.pair)}</a>
              </td>
              <td class="right" data-unit={unit}>
                {distanceFigure(row.distanceM)}
              </td>
              <td class="right" data-unit={`/${unit}`}>
                {paceOf(row)}
              </td>
              <td>{row.surface ? terms().surfaces[row.surface] : ''}</td>
              <td class="right" data-label={words.columns.comfort}>
                {row.comfort === null ? '' : formatNumber(row.comfort, 0)}
              </td>
              <td
                class={row.complaints ? 'right runs-felt' : 'right'}
                data-label={words.columns.complaints}
              >
                {row.complaints ?? <span class="soft">{words.notAsked}</span>}
              </td>
              <td class="right" data-label={words.columns.pain}>
                {row.pain ?? ''}
              </td>
              {isSaid && <td class="runs-said">{said(row)}</td>}
              <td class="runs-state">
                <Marks row={row} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};

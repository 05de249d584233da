/** The runs of a test: what they ask of the lead first, then all of them, to be sorted, narrowed, searched and selected. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import { runsHeadline } from '../../../core/headlines/index.ts';
import {
  runFilters,
  runSorts,
  type RunFilter,
  type RunQuery,
  type RunRow,
  type RunSlice,
  type RunSort,
} from '../../../core/review/index.ts';
import { formatDate } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { d, p, t } from '../../words/index.ts';
import { namesIn, useWork, type PlaceProps, type TabProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { roundDistance, sayOf } from '../frame/say.ts';
import { List } from '../list/list.tsx';
import { Pick } from '../list/pick.tsx';
import type { Order } from '../list/sorting.ts';
import { RunActs } from './run-acts.tsx';
import { columnsOfRuns, type RunColumn } from './run-columns.tsx';
import { ToAsk } from './to-ask.tsx';

/** So many rows are asked for first: they are there at once, and the rest follows. */
const FIRST_ROWS = 60;
/** More are not kept on the page; nobody reads or prints as many. */
const MOST_ROWS = 20_000;

type Query = Omit<RunQuery, 'most'>;

const wholeList: Query = {
  sort: 'date',
  descending: true,
  only: 'all',
  round: null,
  tester: null,
  pair: null,
  text: '',
};

/** The runs that a query finds: the first of them soon, all of them a little later. */
const useRuns = ({ review, records }: TabProps, query: Query): RunSlice | null => {
  const { id } = review.project;
  const asked = JSON.stringify(query);
  const first = useWork((desk) => desk.runList(id, { ...query, most: FIRST_ROWS }), records, [
    id,
    asked,
  ]);
  const isMore = first !== null && first.found > first.rows.length;
  const whole = useWork(
    async (desk) => (isMore ? desk.runList(id, { ...query, most: MOST_ROWS }) : null),
    records,
    [id, asked, isMore],
  );
  const found = (isMore ? whole : null) ?? first;
  // While the next rows are worked out the last ones stay, so that nothing jumps.
  const [shown, setShown] = useState(found);
  useEffect(() => {
    if (found) setShown(found);
  }, [found]);
  return shown;
};

const Narrow = (
  props: TabProps & { readonly query: Query; readonly change: (part: Partial<Query>) => void },
) => {
  const { review, records, query, change } = props;
  const words = p().runs;
  const names = namesIn(review, records);
  const named = <Id extends string>(some: readonly { readonly id: Id }[], of: (id: Id) => string) =>
    some.map(({ id }) => ({ value: id, label: of(id) }));
  return (
    <>
      <Pick<RunFilter>
        label={words.show}
        value={query.only}
        options={runFilters.map((value) => ({ value, label: words.filters[value] }))}
        onChoose={(only) => change({ only: only ?? 'all' })}
      />
      <Pick
        label={words.round}
        value={query.round}
        every={words.everyRound}
        options={named(review.rounds, names.round)}
        onChoose={(round) => change({ round })}
      />
      <Pick
        label={words.columns.tester}
        value={query.tester}
        every={words.everyTester}
        options={named(review.testers, names.tester)}
        onChoose={(tester) => change({ tester })}
      />
      <Pick
        label={words.columns.pair}
        value={query.pair}
        every={words.everyPair}
        options={named(review.pairs, names.pair)}
        onChoose={(pair) => change({ pair })}
      />
    </>
  );
};

const idOfRun = ({ run }: RunRow) => run;

const isSort = (column: RunColumn): column is RunSort =>
  (runSorts as readonly RunColumn[]).includes(column);

const Rows = (
  props: TabProps & {
    readonly query: Query;
    readonly change: (part: Partial<Query>) => void;
    readonly slice: RunSlice;
  },
) => {
  const { review, records, query, change, slice } = props;
  const words = p().runs;
  const names = namesIn(review, records);
  const unit = settings.value.distance;
  const columns = useMemo(() => columnsOfRuns({ review, records }, unit), [review, records, unit]);
  const order: Order<RunColumn> = {
    by: query.sort,
    direction: query.descending ? 'descending' : 'ascending',
  };
  const { rows, found, all } = slice;
  const left = found - rows.length;
  return (
    <>
      <List
        memory="runs"
        name={words.all}
        columns={columns}
        rows={rows}
        idOf={idOfRun}
        order={order}
        onOrder={({ by, direction }) =>
          isSort(by) && change({ sort: by, descending: direction === 'descending' })
        }
        find={{
          label: words.search,
          value: query.text,
          onFind: (text) => change({ text }),
        }}
        narrow={<Narrow records={records} review={review} query={query} change={change} />}
        counted={words.found(found, all)}
        nothing={words.noneFound}
        selectName={({ startMs, tester }) =>
          words.select(formatDate(startMs), names.tester(tester))
        }
        acts={(chosen, none) => (
          <RunActs records={records} review={review} chosen={chosen} none={none} />
        )}
        isOut={({ state }) => state !== 'counts'}
      />
      {rows.length >= MOST_ROWS && left > 0 && <p>{words.tooMany(rows.length, left)}</p>}
      {left > 0 && <p class="only-print">{d().notPrinted(left)}</p>}
    </>
  );
};

export const RunsList = (props: PlaceProps) => {
  const { review, records } = props;
  const words = p().runs;
  const [query, setQuery] = useState(wholeList);
  const shown = useRuns(props, query);
  if (!shown) return <p class="soft">{t().loading}</p>;
  const { size } = review;
  return (
    <>
      <PlaceHead
        headline={words.headline(runsHeadline({ review }), sayOf(props))}
        sub={
          <>
            {shown.all === 0
              ? words.howTheyCome
              : words.sub(shown.all, size.runs, roundDistance(size.distanceM), size.testers)}{' '}
            <a class="no-print" href={linksOf(review.project.id).place('tables')}>
              {p().tables.title}
            </a>
          </>
        }
      />
      <ToAsk {...props} />
      {shown.all > 0 && (
        <Rows
          records={records}
          review={review}
          query={query}
          change={(part) => setQuery((now) => ({ ...now, ...part }))}
          slice={shown}
        />
      )}
    </>
  );
};

/** The runs of a test: what they ask of the lead first, then all of them, to be sorted, narrowed and searched. */
import { useEffect, useState } from 'preact/hooks';
import { runsHeadline } from '../../../core/headlines/index.ts';
import { runFilters, runSorts, type RunQuery, type RunSort } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { d, p, t } from '../../words/index.ts';
import { namesIn, useWork, type PlaceProps, type TabProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { roundDistance, sayOf } from '../frame/say.ts';
import { ToAsk } from './to-ask.tsx';
import { Options, type Option } from '../parts/options.tsx';
import { RunsTable } from './runs-table.tsx';

/** So many rows stand there first; each press then doubles them. */
const FIRST_ROWS = 12;
/** A search waits until the fingers rest so long, ms. */
const REST_MS = 200;

const wholeList: RunQuery = {
  sort: 'date',
  descending: true,
  only: 'all',
  round: null,
  tester: null,
  pair: null,
  text: '',
  most: FIRST_ROWS,
};

/** Columns that one wants to see from their large end first; names begin at A. */
const startsDown = (sort: RunSort): boolean => sort !== 'tester' && sort !== 'pair';

export const RunsList = (props: PlaceProps) => {
  const { review } = props;
  const words = p().runs;
  const [query, setQuery] = useState(wholeList);
  const list = useWork((desk) => desk.runList(review.project.id, query), props.records, [
    review.project.id,
    JSON.stringify(query),
  ]);
  // While the next rows are worked out the last ones stay, so that nothing jumps.
  const [shown, setShown] = useState(list);
  useEffect(() => {
    if (list) setShown(list);
  }, [list]);
  const change = (part: Partial<RunQuery>) =>
    setQuery((now) => ({ ...now, most: FIRST_ROWS, ...part }));
  const sortBy = (sort: RunSort) =>
    change({
      sort,
      descending: query.sort === sort ? !query.descending : startsDown(sort),
    });
  if (!shown) return <p class="soft">{t().loading}</p>;
  const { size } = review;
  const left = shown.found - shown.rows.length;
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
        <section class="runs-all" aria-label={words.all}>
          <Narrow {...props} query={query} change={change} />
          <p class="soft small" role="status">
            {words.found(shown.found, shown.all)}
          </p>
          {shown.rows.length === 0 ? (
            <p>{words.noneFound}</p>
          ) : (
            <RunsTable {...props} rows={shown.rows} query={query} sortBy={sortBy} />
          )}
          {left > 0 && (
            <Button
              kind="quiet"
              onClick={() => setQuery((now) => ({ ...now, most: 2 * now.most }))}
            >
              {words.more(Math.min(left, query.most))}
            </Button>
          )}
          {left > 0 && <p class="only-print">{d().notPrinted(left)}</p>}
        </section>
      )}
    </>
  );
};

const Pick = (props: {
  readonly label: string;
  readonly value: string;
  readonly options: readonly Option[];
  readonly onChange: (value: string) => void;
}) => (
  <select
    aria-label={props.label}
    value={props.value}
    onChange={(event) => props.onChange(event.currentTarget.value)}
  >
    <Options of={props.options} value={props.value} />
  </select>
);

const Narrow = (
  props: TabProps & {
    readonly query: RunQuery;
    readonly change: (part: Partial<RunQuery>) => void;
  },
) => {
  const { review, records, query, change } = props;
  const words = p().runs;
  const names = namesIn(review, records);
  const [text, setText] = useState(query.text);
  useEffect(() => {
    // Nothing was typed: a question anew would fold the list again.
    if (text === query.text) return;
    const timer = setTimeout(() => change({ text }), REST_MS);
    return () => clearTimeout(timer);
    // `change` is a new function at each drawing.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [text]);
  const of = <Id extends string>(every: string, some: readonly Id[], name: (id: Id) => string) => [
    { value: '', label: every },
    ...some.map((id) => ({ value: id, label: name(id) })),
  ];
  return (
    <div class="runs-narrow no-print">
      <h2>{words.all}</h2>
      <Pick
        label={words.show}
        value={query.only}
        options={runFilters.map((one) => ({ value: one, label: words.filters[one] }))}
        onChange={(only) => change({ only: only as RunQuery['only'] })}
      />
      <Pick
        label={words.round}
        value={query.round ?? ''}
        options={of(
          words.everyRound,
          review.rounds.map(({ id }) => id),
          names.round,
        )}
        onChange={(round) => change({ round: (round || null) as RunQuery['round'] })}
      />
      <Pick
        label={words.columns.tester}
        value={query.tester ?? ''}
        options={of(
          words.everyTester,
          review.testers.map(({ id }) => id),
          names.tester,
        )}
        onChange={(tester) => change({ tester: (tester || null) as RunQuery['tester'] })}
      />
      <Pick
        label={words.columns.pair}
        value={query.pair ?? ''}
        options={of(
          words.everyPair,
          review.pairs.map(({ id }) => id),
          names.pair,
        )}
        onChange={(pair) => change({ pair: (pair || null) as RunQuery['pair'] })}
      />
      <span class="runs-sort">
        <Pick
          label={words.sortBy}
          value={query.sort}
          options={runSorts.map((sort) => ({ value: sort, label: words.sorts[sort] }))}
          onChange={(sort) =>
            change({ sort: sort as RunSort, descending: startsDown(sort as RunSort) })
          }
        />
      </span>
      <input
        class="runs-search"
        type="search"
        aria-label={words.search}
        placeholder={words.search}
        value={text}
        onInput={(event) => setText(event.currentTarget.value)}
      />
    </div>
  );
};

/** Every bench check with its readings, sorted and filtered, and the ways to add more. */
import { useMemo, useState } from 'preact/hooks';
import { checksHeadline } from '../../../core/headlines/index.ts';
import { measures } from '../../../core/records/index.ts';
import type { ListedCheck } from '../../../core/review/index.ts';
import { LinkButton } from '../../parts/controls/controls.tsx';
import { formatDate } from '../../parts/format.ts';
import { comma, listed, p, t, terms } from '../../words/index.ts';
import { BenchFile } from '../bench/bench-file.tsx';
import { ShopTables } from '../bench/shop-tables.tsx';
import { useWork, type PlaceProps, type TabProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import type { ListColumn } from '../list/list-column.ts';
import { List } from '../list/list.tsx';
import { Pick } from '../list/pick.tsx';
import { sortedBy, type Order } from '../list/sorting.ts';
import { speakerOf } from '../parts/speaker.ts';
import { CheckActs } from './check-acts.tsx';
import { measuredLines } from './check-lines.ts';
import {
  checkKey,
  everyCheck,
  filteredChecks,
  readingsShown,
  type CheckColumn,
  type CheckFilter,
} from './check-order.ts';

/** Lines of readings in a row. */
const [FEW, MORE] = [1, 6];

/** The first lines of what was measured, and how many more there are. */
const Readings = (
  props: TabProps & { readonly check: ListedCheck; readonly measure: CheckFilter['measure'] },
) => {
  const { check, measure, review } = props;
  const words = p().wear.checks;
  const lines = measuredLines(readingsShown(check, { measure }), speakerOf(props));
  const shown = lines.slice(0, measure === null ? FEW : MORE);
  return (
    <>
      {shown.map(({ name, unit, values }, line) => (
        <span key={name}>
          {name}{' '}
          {values.map(({ text, standing }, at) => (
            <span key={at}>
              {at > 0 && ' / '}
              {standing.state === 'set-aside' ? (
                <s class="reading-aside" title={standing.why}>
                  {text}
                </s>
              ) : (
                text
              )}
            </span>
          ))}{' '}
          {unit}
          {line === shown.length - 1 && lines.length > shown.length && (
            <>
              {comma()}
              <a href={linksOf(review.project.id).check(check.id)}>
                {words.more(lines.length - shown.length)}
              </a>
            </>
          )}
        </span>
      ))}
    </>
  );
};

const columnsOf = (
  tab: TabProps,
  measure: CheckFilter['measure'],
): readonly ListColumn<ListedCheck, CheckColumn>[] => {
  const words = p().wear.checks;
  const say = sayOf(tab);
  const links = linksOf(tab.review.project.id);
  return [
    {
      column: 'date',
      title: words.date,
      first: 'descending',
      width: 8.75,
      stays: true,
      cell: ({ id, at }) => <a href={links.check(id)}>{formatDate(at)}</a>,
    },
    {
      column: 'pair',
      title: words.pair,
      first: 'ascending',
      width: 7,
      card: 'first',
      cell: ({ pair }) => <a href={links.pair(pair)}>{say.pair(pair)}</a>,
    },
    {
      column: 'distance',
      title: words.distance,
      first: 'descending',
      right: true,
      width: 6,
      card: 'corner',
      bare: true,
      cell: ({ distanceM }) => (distanceM === 0 ? words.arrival : say.distance(distanceM)),
    },
    {
      column: 'readings',
      title: words.reading,
      first: 'descending',
      card: 'wide',
      bare: true,
      cell: (check) => <Readings {...tab} check={check} measure={measure} />,
    },
    {
      column: 'gauge',
      title: words.gauge,
      first: 'ascending',
      width: 10,
      bare: true,
      cell: (check) =>
        listed([
          ...new Set(
            measuredLines(readingsShown(check, { measure }), speakerOf(tab))
              .slice(0, measure === null ? FEW : MORE)
              .flatMap(({ gauges }) => gauges),
          ),
        ]),
    },
    {
      column: 'by',
      title: words.by,
      first: 'ascending',
      width: 8,
      bare: true,
      cell: ({ operator }) => operator,
    },
  ];
};

const idOfCheck = ({ id }: ListedCheck) => id;

const Checks = (props: TabProps & { readonly checks: readonly ListedCheck[] }) => {
  const { checks, review, records } = props;
  const words = p().wear.checks;
  const say = sayOf(props);
  const [filter, setFilter] = useState<CheckFilter>(everyCheck);
  const [order, setOrder] = useState<Order<CheckColumn>>({ by: 'date', direction: 'descending' });
  const { measure } = filter;
  const columns = useMemo(
    () => columnsOf({ review, records }, measure),
    [review, records, measure],
  );
  const rows = useMemo(() => {
    const { pair } = sayOf({ review, records });
    return sortedBy(filteredChecks(checks, filter, pair), order, (row, column) =>
      checkKey(row, column, pair),
    );
  }, [checks, filter, order, review, records]);
  const checked = new Set(checks.map(({ pair }) => pair));
  const measured = new Set(checks.flatMap(({ readings }) => readings.map((one) => one.measure)));
  return (
    <List
      memory="checks"
      name={words.title}
      columns={columns}
      rows={rows}
      every={checks}
      idOf={idOfCheck}
      order={order}
      onOrder={setOrder}
      find={{
        label: words.find,
        value: filter.text,
        onFind: (text) => setFilter((now) => ({ ...now, text })),
      }}
      narrow={
        <>
          <Pick
            label={words.pair}
            value={filter.pair}
            every={words.everyPair}
            options={review.pairs
              .filter(({ id }) => checked.has(id))
              .map(({ id, code }) => ({ value: id, label: code }))}
            onChoose={(pair) => setFilter({ ...filter, pair })}
          />
          <Pick
            label={words.measure}
            value={measure}
            every={words.everyMeasure}
            options={measures
              .filter((one) => measured.has(one))
              .map((value) => ({ value, label: terms().measures[value] }))}
            onChoose={(one) => setFilter({ ...filter, measure: one })}
          />
        </>
      }
      counted={words.shown(rows.length, checks.length)}
      nothing={words.none}
      selectName={({ pair, at }) => words.select(say.pair(pair), formatDate(at))}
      acts={(chosen, none) => (
        <CheckActs records={records} review={review} chosen={chosen} none={none} />
      )}
    />
  );
};

export const ChecksPage = (props: PlaceProps) => {
  const { review, records } = props;
  const words = p().wear;
  const { id } = review.project;
  const links = linksOf(id);
  const checks = useWork((desk) => desk.checkList(id), records, [id]);
  if (!checks) return <p class="soft">{t().loading}</p>;
  const readings = checks.flatMap((one) => one.readings);
  const aside = readings.filter(({ standing }) => standing.state === 'set-aside').length;
  const headline = checksHeadline(checks);
  return (
    <>
      <PlaceHead
        crumbs={[
          { words: p().frame.places.wear, href: links.place('wear') },
          { words: words.checks.title },
        ]}
        headline={words.checks.headline(headline, sayOf(props))}
        sub={
          checks.length > 0 && (
            <>
              {words.checks.sub(readings.length, aside)}
              {headline.case === 'waiting' && (
                <>
                  {' '}
                  <a href={links.place('waiting')}>{words.checks.decide}</a>
                </>
              )}
            </>
          )
        }
        actions={
          <>
            <LinkButton href={links.place('wear', 'checks', 'new')}>{words.write}</LinkButton>
            <LinkButton href={links.place('wear', 'checks', 'table')}>
              {words.checkTable.open}
            </LinkButton>
          </>
        }
      />
      {checks.length > 0 && <Checks records={records} review={review} checks={checks} />}
      <div class="forms-row no-print">
        <ShopTables records={records} review={review} />
        <BenchFile records={records} review={review} />
      </div>
    </>
  );
};

/** All pairs: which may not be run, who has which, how far each has come; select several to take back. */
import { useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import type { PairRow } from '../../../core/review/index.ts';
import { metres } from '../../../core/units/index.ts';
import { usePrintWhole } from '../../parts/print-whole.ts';
import { t, p } from '../../words/index.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { roundDistance, sayOf } from '../frame/say.ts';
import { Fold } from '../people/fold.tsx';
import { SortSelect, type SortColumn } from '../people/sort-head.tsx';
import { sortedBy, type Order } from '../people/sorting.ts';
import { OverTime } from './over-time.tsx';
import { PairActions } from './pair-actions.tsx';
import { PairFilters } from './pair-filters.tsx';
import { PairLoads } from './pair-loads.tsx';
import {
  everyPair,
  filteredPairs,
  pairColumns,
  pairKey,
  rowsAtFirst,
  type PairColumn,
  type PairFilter,
} from './pair-order.ts';
import { PairTable } from './pair-table.tsx';
import { Notices } from './stop-use.tsx';
import { TakeBackForm } from './take-back.tsx';

const toTheRight: ReadonlySet<PairColumn> = new Set(['runs', 'complaints', 'checks']);
/** What one looks for in a column: the farthest, the latest, but the first code. */
const fromTheTop: ReadonlySet<PairColumn> = new Set(['pair', 'round', 'size', 'holder', 'state']);

const columnsOf = (): readonly SortColumn<PairColumn>[] =>
  pairColumns.map((column) => ({
    column,
    title: p().pairs.columns[column],
    first: fromTheTop.has(column) ? 'ascending' : 'descending',
    ...(toTheRight.has(column) && { right: true as const }),
  }));

const sumOf = (rows: readonly PairRow[], of: (row: PairRow) => number): number =>
  rows.reduce((sum, row) => sum + of(row), 0);

export const PairList = (props: TabProps) => {
  const { records, review } = props;
  const words = p().pairs;
  const { id } = review.project;
  const list = useWork((desk) => desk.pairList(id), records, [id]);
  const [order, setOrder] = useState<Order<PairColumn>>({ by: 'state', direction: 'ascending' });
  const [filter, setFilter] = useState<PairFilter>(everyPair);
  const [isOpen, setOpen] = useState(false);
  usePrintWhole(() => setOpen(true));
  const [chosen, setChosen] = useState<ReadonlySet<RecordId>>(new Set());
  if (!list) return <p class="soft">{t().loading}</p>;
  const names = namesIn(review, records);
  const say = sayOf(props);
  const { rows, headline } = list;
  const before = sumOf(rows, ({ carriedInM }) => carriedInM);
  const out = rows.filter(({ holder }) => holder !== null);
  const testerNames = new Map(
    records.tester.map(({ revision, body }) => [revision.id, [body.code, body.name ?? '']]),
  );
  const found = filteredPairs(rows, filter, ({ code, holder }) => [
    code,
    ...(holder === null ? [] : (testerNames.get(holder) ?? [])),
  ]);
  const sorted = sortedBy(found, order, (row, column) => pairKey(row, column, names.tester));
  const first = rowsAtFirst(sorted);
  // A pair that came back in the meantime is chosen no more.
  const taken = out.filter(({ pair }) => chosen.has(pair));
  return (
    <>
      <PlaceHead
        headline={words.headline(headline, say)}
        sub={words.sub(
          new Set(out.map(({ holder }) => holder)).size,
          review.rounds.length,
          sumOf(rows, ({ runs }) => runs),
          roundDistance(metres(sumOf(rows, ({ totalM, carriedInM }) => totalM - carriedInM))),
          before > 0 ? roundDistance(metres(before)) : null,
        )}
      />
      <PairActions {...props} />
      {rows.length > 0 && (
        <>
          <div class="people-tools no-print">
            <PairFilters rounds={review.rounds} filter={filter} onFilter={setFilter} />
            <SortSelect columns={columnsOf()} order={order} onOrder={setOrder} />
          </div>
          {taken.length > 0 && (
            <TakeBackForm {...props} rows={taken} done={() => setChosen(new Set())} />
          )}
          {sorted.length === 0 ? (
            <p>{words.nothingFound}</p>
          ) : (
            <PairTable
              {...props}
              rows={isOpen ? sorted : sorted.slice(0, first)}
              columns={columnsOf()}
              order={order}
              onOrder={setOrder}
              chosen={chosen}
              onChosen={setChosen}
            />
          )}
          {sorted.length > first && (
            <button type="button" class="fold-all no-print" onClick={() => setOpen(!isOpen)}>
              {isOpen ? words.showFirst(first) : words.showAll(sorted.length)}
            </button>
          )}
        </>
      )}
      {review.without && review.without.length > 0 && (
        <p>
          {words.leftOut}
          {review.without.map((one) => (
            <span key={one.id}>
              {' '}
              <a href={linksOf(id).pair(one.id)}>{one.code}</a>
            </span>
          ))}
        </p>
      )}
      <Notices {...props} />
      {rows.length > 0 && (
        <div class="people-folds">
          <Fold title={words.overTime}>
            <OverTime {...props} />
          </Fold>
          <Fold title={words.loads}>
            <PairLoads {...props} />
          </Fold>
        </div>
      )}
    </>
  );
};

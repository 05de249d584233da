/** All pairs: which may not be run, who has which, how far each has come; select several to do the same with all. */
import { useMemo, useState } from 'preact/hooks';
import type { PairRow } from '../../../core/review/index.ts';
import { metres } from '../../../core/units/index.ts';
import { t, p } from '../../words/index.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { roundDistance, sayOf } from '../frame/say.ts';
import { List } from '../list/list.tsx';
import { Pick } from '../list/pick.tsx';
import { sortedBy, type Order } from '../list/sorting.ts';
import { Fold } from '../people/fold.tsx';
import { OverTime } from './over-time.tsx';
import { PairActions } from './pair-actions.tsx';
import { PairActs } from './pair-acts.tsx';
import { columnsOfPairs } from './pair-columns.tsx';
import { PairLoads } from './pair-loads.tsx';
import {
  everyPair,
  filteredPairs,
  pairKey,
  pairStates,
  type PairColumn,
  type PairFilter,
} from './pair-order.ts';
import { Notices } from './stop-use.tsx';

const sumOf = (rows: readonly PairRow[], of: (row: PairRow) => number): number =>
  rows.reduce((sum, row) => sum + of(row), 0);

const idOfPair = ({ pair }: PairRow) => pair;

const Rows = (props: TabProps & { readonly rows: readonly PairRow[] }) => {
  const { records, review, rows } = props;
  const words = p().pairs;
  const [order, setOrder] = useState<Order<PairColumn>>({ by: 'state', direction: 'ascending' });
  const [filter, setFilter] = useState<PairFilter>(everyPair);
  const columns = useMemo(() => columnsOfPairs({ records, review }), [records, review]);
  const sorted = useMemo(() => {
    const testers = new Map(
      records.tester.map(({ revision, body }) => [revision.id, [body.code, body.name ?? '']]),
    );
    const found = filteredPairs(rows, filter, ({ code, holder }) => [
      code,
      ...(holder === null ? [] : (testers.get(holder) ?? [])),
    ]);
    const { tester } = namesIn(review, records);
    return sortedBy(found, order, (row, column) => pairKey(row, column, tester));
  }, [rows, filter, order, records, review]);
  return (
    <List
      memory="pairs"
      name={p().frame.places.pairs}
      columns={columns}
      rows={sorted}
      every={rows}
      idOf={idOfPair}
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
            label={words.roundFilter}
            value={filter.round}
            every={words.allRounds}
            options={review.rounds.map(({ id, name }) => ({ value: id, label: name }))}
            onChoose={(round) => setFilter({ ...filter, round })}
          />
          <Pick
            label={words.stateFilter}
            value={filter.state}
            options={pairStates.map((value) => ({ value, label: words.states[value] }))}
            onChoose={(state) => setFilter({ ...filter, state: state ?? 'all' })}
          />
        </>
      }
      counted={words.counted(sorted.length, rows.length)}
      nothing={words.nothingFound}
      selectName={({ code }) => words.select(code)}
      acts={(chosen, none) => (
        <PairActs records={records} review={review} chosen={chosen} none={none} />
      )}
    />
  );
};

/** @param props.isAdding the place was opened to add pairs */
export const PairList = (props: TabProps & { readonly isAdding: boolean }) => {
  const { records, review } = props;
  const words = p().pairs;
  const { id } = review.project;
  const list = useWork((desk) => desk.pairList(id), records, [id]);
  if (!list) return <p class="soft">{t().loading}</p>;
  const { rows, headline } = list;
  const out = rows.filter(({ holder }) => holder !== null);
  return (
    <>
      <PlaceHead
        headline={words.headline(headline, sayOf(props))}
        {...(rows.length > 0 && {
          sub: words.sub(
            new Set(out.map(({ holder }) => holder)).size,
            review.rounds.length,
            sumOf(rows, ({ runs }) => runs),
            roundDistance(metres(sumOf(rows, ({ totalM }) => totalM))),
          ),
        })}
      />
      {/* Where there is no pair yet there is nothing else to do here. */}
      <PairActions
        {...props}
        isAdding={props.isAdding || (review.rounds.length > 0 && rows.length === 0)}
      />
      {rows.length > 0 && <Rows {...props} rows={rows} />}
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

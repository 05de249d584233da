/** All findings of a project, those first that wait: what it is, for whom, which round carries it, what came of it. */
import { useMemo, useState } from 'preact/hooks';
import { tradeOf, trades } from '../../../core/foot/index.ts';
import { findingStates, type RecordOf } from '../../../core/records/index.ts';
import type { Turn } from '../../../core/talk/index.ts';
import { findingHeadline } from '../../../core/headlines/index.ts';
import { LinkButton } from '../../parts/controls/controls.tsx';
import { d, p, proposeWords, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import type { ListColumn } from '../list/list-column.ts';
import { List } from '../list/list.tsx';
import { Pick } from '../list/pick.tsx';
import { sortedBy, type Order } from '../list/sorting.ts';
import { FindingActs } from './finding-acts.tsx';
import { TurnLine, useTurns } from './finding-talk.tsx';
import {
  everyFinding,
  filteredFindings,
  findingKey,
  type FindingColumn,
  type FindingFilter,
} from './finding-order.ts';
import { VerdictStamp } from './verdict-stamp.tsx';

type Row = RecordOf<'finding'>;

const columnsOf = (
  { review, records }: TabProps,
  turns: ReadonlyMap<string, Turn> | null,
): readonly ListColumn<Row, FindingColumn>[] => {
  const words = p().changes;
  const links = linksOf(review.project.id);
  const { round } = namesIn(review, records);
  const hasRun = (id: string) => review.rounds.some((one) => one.id === id && one.size.runs > 0);
  return [
    {
      column: 'finding',
      title: words.finding,
      first: 'ascending',
      stays: true,
      cell: ({ body, revision }) => <a href={links.finding(revision.id)}>{body.title}</a>,
    },
    {
      column: 'state',
      title: words.state,
      first: 'ascending',
      width: 7,
      card: 'corner',
      bare: true,
      cell: ({ body }) => d().finding.states[body.state],
    },
    {
      column: 'turn',
      title: proposeWords().turn,
      first: 'ascending',
      width: 13,
      card: 'wide',
      bare: true,
      cell: ({ revision }) => {
        const turn = turns?.get(revision.id);
        return turn && <TurnLine turn={turn} nowMs={review.nowMs} />;
      },
    },
    {
      column: 'part',
      title: words.part,
      first: 'ascending',
      width: 15,
      card: 'wide',
      bare: true,
      cell: ({ body }) =>
        words.partAndTrade(terms().parts[body.part].name, terms().trades[tradeOf[body.part]]),
    },
    {
      column: 'seenIn',
      title: words.seenIn,
      first: 'descending',
      width: 6.5,
      cell: ({ body }) => <a href={links.round(body.round)}>{round(body.round)}</a>,
    },
    {
      column: 'carried',
      title: words.carried,
      first: 'descending',
      width: 8.5,
      cell: ({ body }) =>
        body.carriedBy === undefined ? (
          <span class="soft">{words.noRound(body.state === 'closed')}</span>
        ) : (
          <a href={links.round(body.carriedBy)}>{round(body.carriedBy)}</a>
        ),
    },
    {
      column: 'outcome',
      title: words.outcome,
      first: 'ascending',
      width: 12,
      bare: true,
      cell: ({ body, revision }) => {
        const said = findingHeadline(body, hasRun);
        return said.case === 'outcome' ? (
          <VerdictStamp word={said.claims} />
        ) : (
          said.case === 'judge' && <a href={links.finding(revision.id)}>{words.judge}</a>
        );
      },
    },
  ];
};

const idOfFinding = ({ revision }: Row) => revision.id;

const Rows = (props: TabProps & { readonly all: readonly Row[] }) => {
  const { records, review, all } = props;
  const words = p().changes;
  const [order, setOrder] = useState<Order<FindingColumn>>({
    by: 'state',
    direction: 'ascending',
  });
  const [filter, setFilter] = useState<FindingFilter>(everyFinding);
  const turns = useTurns(props);
  const columns = useMemo(() => columnsOf({ records, review }, turns), [records, review, turns]);
  const sorted = useMemo(() => {
    const places = new Map(review.rounds.map(({ id }, at) => [id, at]));
    return sortedBy(filteredFindings(all, filter), order, (row, column) =>
      findingKey(
        row,
        column,
        (id) => places.get(id) ?? -1,
        (part) => terms().parts[part].name,
        turns?.get(row.revision.id)?.sinceMs ?? null,
      ),
    );
  }, [all, filter, order, review, turns]);
  return (
    <List
      memory="findings"
      name={words.findings}
      isShort
      columns={columns}
      rows={sorted}
      every={all}
      idOf={idOfFinding}
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
            label={words.state}
            value={filter.state}
            every={words.anyState}
            options={findingStates.map((value) => ({ value, label: d().finding.states[value] }))}
            onChoose={(state) => setFilter({ ...filter, state })}
          />
          <Pick
            label={words.trade}
            value={filter.trade}
            every={words.anyTrade}
            options={trades.map((value) => ({ value, label: terms().trades[value] }))}
            onChoose={(trade) => setFilter({ ...filter, trade })}
          />
        </>
      }
      counted={words.counted(sorted.length, all.length)}
      nothing={words.noneShown}
      selectName={({ body }) => words.selectFinding(body.title)}
      acts={(chosen, none) => (
        <FindingActs records={records} review={review} chosen={chosen} none={none} />
      )}
    />
  );
};

export const FindingList = (props: TabProps) => {
  const { records, review } = props;
  const words = p().changes;
  const all = useMemo(
    () => records.finding.filter(({ body }) => body.project === review.project.id),
    [records, review],
  );
  return (
    <div class="finding-list">
      <div class="finding-list-head">
        <h2>{words.findings}</h2>
        {review.rounds.length > 0 && (
          <LinkButton href={linksOf(review.project.id).place('changes', 'findings', 'new')}>
            {words.newFinding}
          </LinkButton>
        )}
      </div>
      {all.length === 0 ? <p role="status">{words.noFindings}</p> : <Rows {...props} all={all} />}
    </div>
  );
};

/** All testers: who is silent, who is in pain, what each feels most; add them, and get their phones in. */
import { useState } from 'preact/hooks';
import { metres } from '../../../core/units/index.ts';
import { Button, LinkButton } from '../../parts/controls/controls.tsx';
import { usePrintWhole } from '../../parts/print-whole.ts';
import { d, p, t } from '../../words/index.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { Feet } from './feet.tsx';
import { OpenForm } from '../parts/form-parts.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { roundDistance, sayOf } from '../frame/say.ts';
import { InviteCard, type Invite } from '../parts/invite-card.tsx';
import { Fold } from '../people/fold.tsx';
import { SortSelect, type SortColumn } from '../people/sort-head.tsx';
import { sortedBy, type Order } from '../people/sorting.ts';
import { PanelCheckPart } from '../plan/panel-check.tsx';
import { PowerForm } from '../plan/power-form.tsx';
import { codesBut, TesterFields, TestersForm } from './tester-forms.tsx';
import {
  everyTester,
  filteredTesters,
  testerColumns,
  testerKey,
  testerStates,
  type TesterColumn,
  type TesterFilter,
  type TesterState,
} from './tester-order.ts';
import { TesterTable } from './tester-table.tsx';

/** Longer lists are folded. */
const FIRST_ROWS = 12;

const toTheRight: ReadonlySet<TesterColumn> = new Set(['runs', 'distance', 'silent', 'complaints']);

const columnsOf = (): readonly SortColumn<TesterColumn>[] =>
  testerColumns.map((column) => ({
    column,
    title: p().testers.columns[column],
    first: column === 'tester' ? 'ascending' : 'descending',
    ...(toTheRight.has(column) && { right: true as const }),
  }));

/** The place was opened to add testers. */
type Props = TabProps & { readonly isAdding: boolean };

const Actions = (props: Props) => {
  const words = d().testers;
  const [act, setAct] = useState<'add' | 'addSeveral' | null>(props.isAdding ? 'addSeveral' : null);
  const close = () => setAct(null);
  const taken = codesBut(props.records, null);
  if (act !== null)
    return (
      <OpenForm label={words[act]} close={close} takesFocus={props.isAdding}>
        {act === 'add' ? (
          <TesterFields taken={taken} close={close} />
        ) : (
          <TestersForm taken={taken} close={close} />
        )}
      </OpenForm>
    );
  return (
    <div class="row people-actions no-print">
      <Button onClick={() => setAct('add')}>{words.add}</Button>
      <Button onClick={() => setAct('addSeveral')}>{words.addSeveral}</Button>
      <LinkButton href={linksOf(props.review.project.id).place('plan')}>
        {p().testers.plan}
      </LinkButton>
      <LinkButton href={linksOf(props.review.project.id).place('words')}>
        {p().words.title}
      </LinkButton>
      <LinkButton href={linksOf(props.review.project.id).place('tables')}>
        {p().tables.title}
      </LinkButton>
    </div>
  );
};

const Filters = (props: {
  readonly filter: TesterFilter;
  readonly onFilter: (filter: TesterFilter) => void;
}) => {
  const { filter, onFilter } = props;
  const words = p().testers;
  return (
    <>
      <input
        class="input"
        type="search"
        aria-label={words.find}
        placeholder={words.find}
        value={filter.text}
        onInput={(event) => onFilter({ ...filter, text: event.currentTarget.value })}
      />
      <select
        class="input"
        aria-label={words.stateFilter}
        value={filter.state}
        onChange={(event) =>
          onFilter({ ...filter, state: event.currentTarget.value as TesterState })
        }
      >
        {testerStates.map((state) => (
          <option key={state} value={state}>
            {words.states[state]}
          </option>
        ))}
      </select>
    </>
  );
};

export const TesterList = (props: Props) => {
  const { records, review } = props;
  const words = p().testers;
  const { id } = review.project;
  const list = useWork((desk) => desk.testerList(id), records, [id]);
  const [order, setOrder] = useState<Order<TesterColumn>>({
    by: 'silent',
    direction: 'descending',
  });
  const [filter, setFilter] = useState<TesterFilter>(everyTester);
  const [isOpen, setOpen] = useState(false);
  usePrintWhole(() => setOpen(true));
  const [invite, setInvite] = useState<Invite | null>(null);
  if (!list) return <p class="soft">{t().loading}</p>;
  const names = namesIn(review, records);
  const { rows, headline } = list;
  const found = filteredTesters(rows, filter, ({ code, name, pairs }) => [
    code,
    name ?? '',
    ...pairs.map(names.code),
  ]);
  const sorted = sortedBy(found, order, testerKey);
  const sum = (of: (row: (typeof rows)[number]) => number) =>
    rows.reduce((all, row) => all + of(row), 0);
  return (
    <>
      <PlaceHead
        headline={words.headline(headline, sayOf(props))}
        {...(rows.length > 0 && {
          sub: words.sub(
            rows.length,
            rows.filter(({ pairs }) => pairs.length > 0).length,
            rows.filter(({ runs }) => runs > 0).length,
            sum(({ runs }) => runs),
            roundDistance(metres(sum(({ distanceM }) => distanceM))),
          ),
        })}
      />
      {invite && <InviteCard {...invite} />}
      {/* Where there is nobody yet there is nothing else to do here. */}
      <Actions {...props} isAdding={props.isAdding || rows.length === 0} />
      {rows.length > 0 && (
        <>
          <div class="people-tools no-print">
            <Filters filter={filter} onFilter={setFilter} />
            <SortSelect columns={columnsOf()} order={order} onOrder={setOrder} />
          </div>
          {sorted.length === 0 ? (
            <p>{words.nothingFound}</p>
          ) : (
            <TesterTable
              {...props}
              rows={isOpen ? sorted : sorted.slice(0, FIRST_ROWS)}
              columns={columnsOf()}
              order={order}
              onOrder={setOrder}
              onInvite={setInvite}
            />
          )}
          {sorted.length > FIRST_ROWS && (
            <button type="button" class="fold-all no-print" onClick={() => setOpen(!isOpen)}>
              {isOpen ? p().pairs.showFirst(FIRST_ROWS) : p().pairs.showAll(sorted.length)}
            </button>
          )}
        </>
      )}
      <div class="people-folds">
        <Fold title={words.feet}>
          <Feet {...props} />
        </Fold>
        <Fold title={words.steady}>
          <PanelCheckPart {...props} />
        </Fold>
        <Fold title={words.power}>
          <PowerForm testers={review.testers.length} />
        </Fold>
      </div>
    </>
  );
};

/** All testers: who is silent, who is in pain, what each feels most; add them, and get their phones in. */
import { useMemo, useState } from 'preact/hooks';
import type { TesterRow } from '../../../core/review/index.ts';
import { metres } from '../../../core/units/index.ts';
import { Button, LinkButton } from '../../parts/controls/controls.tsx';
import { d, p, t } from '../../words/index.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { Feet } from './feet.tsx';
import { OpenForm } from '../parts/form-parts.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { roundDistance, sayOf } from '../frame/say.ts';
import { InviteCard, type Invite } from '../parts/invite-card.tsx';
import { List } from '../list/list.tsx';
import { Pick } from '../list/pick.tsx';
import { sortedBy, type Order } from '../list/sorting.ts';
import { Fold } from '../people/fold.tsx';
import { PanelCheckPart } from '../plan/panel-check.tsx';
import { PowerForm } from '../plan/power-form.tsx';
import { TesterActs } from './tester-acts.tsx';
import { columnsOfTesters } from './tester-columns.tsx';
import { codesBut, TesterFields, TestersForm } from './tester-forms.tsx';
import {
  everyTester,
  filteredTesters,
  testerKey,
  testerStates,
  type TesterColumn,
  type TesterFilter,
} from './tester-order.ts';

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

const idOfTester = ({ tester }: TesterRow) => tester;

const Rows = (
  props: TabProps & {
    readonly rows: readonly TesterRow[];
    readonly onInvite: (invite: Invite) => void;
  },
) => {
  const { records, review, rows, onInvite } = props;
  const words = p().testers;
  const [order, setOrder] = useState<Order<TesterColumn>>({
    by: 'silent',
    direction: 'descending',
  });
  const [filter, setFilter] = useState<TesterFilter>(everyTester);
  const columns = useMemo(
    () => columnsOfTesters({ records, review }, onInvite),
    [records, review, onInvite],
  );
  const sorted = useMemo(() => {
    const { code: codeOf } = namesIn(review, records);
    const found = filteredTesters(rows, filter, ({ code, name, pairs }) => [
      code,
      name ?? '',
      ...pairs.map(codeOf),
    ]);
    return sortedBy(found, order, testerKey);
  }, [rows, filter, order, records, review]);
  return (
    <List<TesterRow, TesterColumn | 'acts'>
      memory="testers"
      name={p().frame.places.testers}
      columns={columns}
      rows={sorted}
      every={rows}
      idOf={idOfTester}
      order={order}
      onOrder={({ by, direction }) => by !== 'acts' && setOrder({ by, direction })}
      find={{
        label: words.find,
        value: filter.text,
        onFind: (text) => setFilter((now) => ({ ...now, text })),
      }}
      narrow={
        <Pick
          label={words.stateFilter}
          value={filter.state}
          options={testerStates.map((value) => ({ value, label: words.states[value] }))}
          onChoose={(state) => setFilter({ ...filter, state: state ?? 'all' })}
        />
      }
      counted={words.counted(sorted.length, rows.length)}
      nothing={words.nothingFound}
      selectName={({ code }) => words.select(code)}
      acts={(chosen, none) => (
        <TesterActs records={records} review={review} chosen={chosen} none={none} />
      )}
    />
  );
};

export const TesterList = (props: Props) => {
  const { records, review } = props;
  const words = p().testers;
  const { id } = review.project;
  const list = useWork((desk) => desk.testerList(id), records, [id]);
  const [invite, setInvite] = useState<Invite | null>(null);
  if (!list) return <p class="soft">{t().loading}</p>;
  const { rows, headline } = list;
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
      {rows.length > 0 && <Rows {...props} rows={rows} onInvite={setInvite} />}
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

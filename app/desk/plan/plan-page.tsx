/** The hand-out plan: who wears what when, agreed on its own days, and changed when somebody stops. */
import { useLocation } from 'preact-iso';
import { useMemo, useState } from 'preact/hooks';
import { planHeadline } from '../../../core/headlines/index.ts';
import type { HandOutPlan, RecordId, RecordOf } from '../../../core/records/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatDate, formatDateTime } from '../../parts/format.ts';
import { d, p } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { HowSure } from '../frame/how-sure.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { SelectField } from '../parts/form-parts.tsx';
import { Agree } from './agree.tsx';
import { BalanceInWords } from './balance-in-words.tsx';
import { datedPlaces, planCounts, planDays, planFacts } from './plan-facts.ts';
import { roomsIn, type RoomIn } from './plan-fit.ts';
import { PlanMaker } from './plan-maker.tsx';
import { PlanPicture } from './plan-picture.tsx';
import { PlanTable } from './plan-table.tsx';
import { PlanWhen } from './plan-when.tsx';
import { balanceOf, leastOf } from './plan-work.ts';
import { PowerForm } from './power-form.tsx';
import { StopForm } from './stop-form.tsx';

/** The plans of the project, the latest first. */
const plansOf = ({ records, review }: TabProps): readonly RecordOf<'hand-out-plan'>[] =>
  records['hand-out-plan']
    .filter(({ body }) => body.project === review.project.id)
    .sort((a, b) => Date.parse(b.body.at) - Date.parse(a.body.at));

/** The line beneath the answer: who begins with what, and whom the pairs fit. */
const subOf = (props: TabProps, plan: HandOutPlan, room: RoomIn): string => {
  const words = p().plan;
  const names = namesIn(props.review, props.records);
  const say = sayOf(props);
  const { starts, rooms } = planCounts(plan, props.records, room);
  const known = rooms.good.length + rooms.short.length + rooms.long.length;
  return words.sentences(
    [
      words.starts(starts.map(({ round, testers }) => ({ round: names.round(round), testers }))),
      known > 0 ? words.rooms(rooms.good.length, known) : '',
      rooms.short.length > 0 ? words.tooShort(say.testers(rooms.short)) : '',
      rooms.long.length > 0 ? words.tooLong(say.testers(rooms.long)) : '',
      rooms.unknown.length > 0 ? words.notMeasured(say.testers(rooms.unknown)) : '',
    ].filter(Boolean),
  );
};

const SavedPlan = (
  props: TabProps & { readonly plan: RecordOf<'hand-out-plan'>; readonly room: RoomIn },
) => {
  const { records, review, plan } = props;
  const words = p().plan;
  const [preview, setPreview] = useState<HandOutPlan | null>(null);
  const [stopping, setStopping] = useState(false);
  const { body } = plan;
  const shown = preview ?? body;
  const places = datedPlaces(body, records, review.nowMs);
  const toCome = datedPlaces(shown, records, review.nowMs);
  const days = planDays(shown, toCome, review.nowMs);
  const isOver = days.length === 0;
  return (
    <>
      {!isOver && <Agree {...props} places={places} />}
      <div class="plan-grid">
        <PlanPicture {...props} plan={shown} standing={body} />
        <PlanWhen {...props} places={toCome} days={days} />
      </div>
      <div class="only-print">
        <PlanTable {...props} plan={body} />
      </div>
      {stopping ? (
        <StopForm
          {...props}
          onPreview={setPreview}
          close={() => {
            setPreview(null);
            setStopping(false);
          }}
        />
      ) : (
        <div class="row no-print">
          {!isOver && <Button onClick={() => setStopping(true)}>{words.stop.open}</Button>}
          <Button kind="quiet" onClick={() => window.print()}>
            {d().panel.plan.print}
          </Button>
        </div>
      )}
      <details class="how-sure no-print">
        <summary>{p().frame.asTable}</summary>
        <PlanTable {...props} plan={body} />
        <p class="soft small">{words.sentences([words.roomKey, words.roomRough])}</p>
      </details>
      <HowSure>
        {/* One round is handed out, not compared. */}
        {body.rounds.length > 1 && (
          <BalanceInWords balance={balanceOf(body)} basis={body.basis} least={leastOf(body)} />
        )}
        <p class="soft small">{d().panel.plan.seed(body.seed)}</p>
      </HowSure>
    </>
  );
};

/** @param props.isMaking the place was opened to make a plan */
export const PlanPage = (props: TabProps & { readonly isMaking: boolean }) => {
  const words = p().plan;
  const { records, review } = props;
  const plans = plansOf(props);
  const { route } = useLocation();
  const [chosen, setChosen] = useState<RecordId | null>(null);
  const plan = plans.find(({ revision }) => revision.id === chosen) ?? plans[0] ?? null;
  const room = useMemo(() => roomsIn(records), [records]);
  const facts = planFacts(plan?.body ?? null, records, review.project.id, review.nowMs);
  return (
    <>
      <PlaceHead
        crumbs={[
          { words: p().frame.places.testers, href: linksOf(review.project.id).place('testers') },
          { words: plan ? d().panel.plan.saved(formatDate(plan.body.at)) : words.name },
        ]}
        headline={words.headline(planHeadline(facts), sayOf(props))}
        sub={plan ? subOf(props, plan.body, room) : d().panel.plan.lead}
      />
      {plan && <SavedPlan {...props} plan={plan} room={room} key={plan.revision.id} />}
      {plans.length > 1 && plan && (
        <div class="no-print">
          <SelectField
            label={d().panel.plan.which}
            value={plan.revision.id}
            options={plans.map(({ body, revision }) => ({
              value: revision.id,
              label: d().panel.plan.saved(formatDateTime(body.at)),
            }))}
            onChange={setChosen}
          />
        </div>
      )}
      {/* Folded again once the plan that it made is there. */}
      <PlanMaker
        key={plan ? 'another' : 'first'}
        {...props}
        room={room}
        isOpen={props.isMaking || plan === null}
        onSaved={(id) => {
          setChosen(id);
          if (props.isMaking) route(linksOf(review.project.id).place('plan'), true);
        }}
      />
      <PowerForm testers={review.testers.length} />
    </>
  );
};

/** The hand-out plan: draw one, look at it, hand out a period, make it anew when somebody drops out. */
import { useEffect, useState } from 'preact/hooks';
import type { PlanAnswer } from '../../../core/panel/index.ts';
import type { HandOutPlan, RecordId, RecordOf } from '../../../core/records/index.ts';
import { byCode } from '../../../core/review/index.ts';
import { Button, Notice } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDate, formatDateTime } from '../../parts/format.ts';
import { toInstant } from '../../parts/instant.ts';
import { d } from '../../words/index.ts';
import { askWorker, namesIn, noteTrouble, type TabProps } from '../desk-state.ts';
import { saveRecord, SelectField } from '../parts/form-parts.tsx';
import { BalanceInWords } from './balance-in-words.tsx';
import { PlanMaker } from './plan-maker.tsx';
import { PlanTable } from './plan-table.tsx';
import {
  balanceOf,
  drawnAnew,
  dropOut,
  handOutPeriod,
  leastOf,
  nextPeriod,
  type Waiting,
} from './plan-work.ts';
import { PowerForm } from './power-form.tsx';

export const Plan = (props: TabProps) => {
  const words = d().panel.plan;
  const { records, review } = props;
  const plans = records['hand-out-plan']
    .filter(({ body }) => body.project === review.project.id)
    .sort((a, b) => Date.parse(b.body.at) - Date.parse(a.body.at));
  const [chosen, setChosen] = useState<RecordId | null>(null);
  const plan = plans.find(({ revision }) => revision.id === chosen) ?? plans[0];
  return (
    <>
      <div class="row row-apart">
        <h2>{words.title}</h2>
        {plan && (
          <Button kind="quiet" onClick={() => window.print()}>
            {words.print}
          </Button>
        )}
      </div>
      <p class="no-print">{words.lead}</p>
      {plans.length > 1 && plan && (
        <div class="no-print">
          <SelectField
            label={words.which}
            value={plan.revision.id}
            options={plans.map(({ body, revision }) => ({
              value: revision.id,
              label: words.saved(formatDateTime(body.at)),
            }))}
            onChange={setChosen}
          />
        </div>
      )}
      {plan ? (
        <SavedPlan {...props} plan={plan} key={plan.revision.id} />
      ) : (
        <p class="soft">{words.none}</p>
      )}
      <PlanMaker {...props} onSaved={setChosen} />
      <PowerForm testers={review.testers.length} />
    </>
  );
};

const SavedPlan = (props: TabProps & { readonly plan: RecordOf<'hand-out-plan'> }) => {
  const words = d().panel.plan;
  const { records, review, plan } = props;
  const { body, revision } = plan;
  const names = namesIn(review, records);
  const [leaving, setLeaving] = useState<RecordId | null>(null);
  const [waiting, setWaiting] = useState<readonly Waiting[]>([]);
  const next = nextPeriod(body, records);
  const takeBack = (handOut: RecordOf<'hand-out'>) =>
    saveRecord('hand-out', { ...handOut.body, until: toInstant(Date.now()) }, handOut.revision.id);
  const handOut = async (period: number, alsoBack: readonly RecordOf<'hand-out'>[]) => {
    // Pairs that are taken back now are free in the records only after the next reading.
    const back = new Set(alsoBack.map(({ revision: { id } }) => id));
    const after = {
      ...records,
      'hand-out': records['hand-out'].filter(({ revision: { id } }) => !back.has(id)),
    };
    const todo = handOutPeriod(body, period, after, toInstant(Date.now()));
    for (const one of [...alsoBack, ...todo.takeBack]) await takeBack(one);
    let given = 0;
    for (const one of todo.give) if (await saveRecord('hand-out', one)) given++;
    setWaiting(todo.cannot);
    showToast({ text: words.handedOutNow(given) });
  };
  const stillOut = waiting.flatMap((one) => (one.why === 'out' ? [one.by] : []));
  return (
    <section class="sheet" aria-label={words.saved(formatDate(body.at))}>
      <div class="row row-apart">
        <h3>{words.saved(formatDate(body.at))}</h3>
        <span class="soft small">{words.seed(body.seed)}</span>
      </div>
      <hr class="stitch" />
      <PlanTable {...props} plan={body} onDropOut={setLeaving} />
      {leaving !== null && (
        <DropOutPart
          key={leaving}
          {...props}
          body={body}
          id={revision.id}
          tester={leaving}
          from={next ?? body.periods}
          done={() => setLeaving(null)}
        />
      )}
      {waiting.length > 0 && (
        <Notice tone="warn" live>
          <ul>
            {waiting
              .map(({ place, why }) => ({
                code: names.tester(place.tester),
                line: words.cannot[why](names.pair(place.pair), names.tester(place.tester)),
              }))
              .sort(byCode)
              .map(({ line }) => (
                <li key={line}>{line}</li>
              ))}
          </ul>
          {stillOut.length > 0 && (
            <Button onClick={() => void handOut(waiting[0]?.place.period ?? 0, stillOut)}>
              {words.takeAllBack}
            </Button>
          )}
        </Notice>
      )}
      <div class="row no-print">
        {Array.from({ length: body.periods }, (_, period) => period)
          .filter((period) => period === next || hasWaiting(body, period, props))
          .map((period) => (
            <Button
              key={period}
              kind={period === next ? 'main' : 'plain'}
              onClick={() => void handOut(period, [])}
            >
              {words.handOut(period + 1)}
            </Button>
          ))}
        <span class="soft small">{next === null ? words.allHandedOut : words.handOutHow}</span>
      </div>
      <BalanceInWords balance={balanceOf(body)} basis={body.basis} least={leastOf(body)} />
    </section>
  );
};

/** A period that began, with places that were not handed out then. */
const hasWaiting = (plan: HandOutPlan, period: number, { records }: TabProps): boolean => {
  const next = nextPeriod(plan, records) ?? plan.periods;
  if (period >= next || period < next - 1) return false;
  const { give, cannot } = handOutPeriod(plan, period, records, plan.at);
  return give.length + cannot.length > 0;
};

const DropOutPart = (
  props: TabProps & {
    readonly body: HandOutPlan;
    readonly id: RecordId;
    readonly tester: RecordId;
    readonly from: number;
    readonly done: () => void;
  },
) => {
  const words = d().panel.plan;
  const { records, review, body, id, tester, from, done } = props;
  const name = namesIn(review, records).tester(tester);
  // What was asked for when the part opened: a newer log must not change it under the reader's hand.
  const [asked] = useState(() => dropOut(body, tester, from, records));
  const [answer, setAnswer] = useState<PlanAnswer | null>(null);
  useEffect(() => {
    askWorker(async (desk): Promise<PlanAnswer> => await desk.drawPlan(asked.question)).then(
      setAnswer,
      noteTrouble,
    );
  }, [asked]);
  const made = answer?.ok ? drawnAnew(body, asked, answer.plan) : null;
  return (
    <section class="notice stack" aria-label={words.dropOutName(name)}>
      <p>{words.dropOutFrom(name, from + 1)}</p>
      {made === null ? (
        <p aria-live="polite">{answer ? words.notDrawn : words.drawing}</p>
      ) : (
        <p aria-live="polite">
          {words.imbalances(made.before.imbalance, made.untouched.imbalance, made.after.imbalance)}
          {made.empty > 0 && ` ${words.empty(made.empty)}`}
        </p>
      )}
      <div class="row">
        {made && (
          <Button
            kind="main"
            onClick={() =>
              void saveRecord('hand-out-plan', made.plan, id).then((saved) => saved && done())
            }
          >
            {words.keep}
          </Button>
        )}
        <Button kind="quiet" onClick={done}>
          {d().cancel}
        </Button>
      </div>
    </section>
  );
};

/** The plan is agreed: its hand-outs are made on its own days, all of them or those of the next period. */
import { useState } from 'preact/hooks';
import type { HandOutPlan, RecordOf } from '../../../core/records/index.ts';
import { byCode } from '../../../core/review/index.ts';
import { Button, Notice } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDate } from '../../parts/format.ts';
import { toInstant, toLocalMinute } from '../../parts/instant.ts';
import { d, p } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { DateTimeField } from '../parts/form-parts.tsx';
import { useMoveOn } from '../start/guide.ts';
import { carryOut } from './carry-out.ts';
import type { DatedPlace } from './plan-facts.ts';
import { settlePlan, type Settled, type Waiting } from './settle-plan.ts';

type Props = TabProps & {
  readonly plan: RecordOf<'hand-out-plan'>;
  readonly places: readonly DatedPlace[];
};

const otherPlans = ({ records, plan }: Props): readonly HandOutPlan[] =>
  records['hand-out-plan']
    .filter(
      ({ body, revision }) =>
        body.project === plan.body.project && revision.id !== plan.revision.id,
    )
    .map(({ body }) => body);

const Cannot = ({ of, ...tab }: TabProps & { readonly of: readonly Waiting[] }) => {
  const names = namesIn(tab.review, tab.records);
  if (of.length === 0) return null;
  return (
    <Notice tone="warn" live>
      <ul>
        {of
          .map(({ place, why }) => ({
            code: names.tester(place.tester),
            line: p().plan.cannot[why](names.pair(place.pair), names.tester(place.tester)),
          }))
          .sort(byCode)
          .map(({ line }) => (
            <li key={line}>{line}</li>
          ))}
      </ul>
    </Notice>
  );
};

/** Hand-outs that end by this, beside those that the plan hands out itself. */
const endsIn = ({ change, give }: Settled): number =>
  change.filter(({ body }) => body.until !== undefined).length +
  give.filter(({ until }) => until !== undefined).length;

export const Agree = (props: Props) => {
  const { records, review, plan, places } = props;
  const words = p().plan;
  const [late, setLate] = useState<string | null>(null);
  const [waiting, setWaiting] = useState<readonly Waiting[]>([]);
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const moveOn = useMoveOn('plan');
  const toCome = places.filter(({ state }) => state === 'drawn' || state === 'late');
  const lateOnes = toCome.filter(({ state }) => state === 'late');
  const next = toCome[0]?.place.period ?? 0;
  const settled = (periods?: number): Settled => {
    const nowMs = Date.now();
    const lateMs = late === null ? nowMs : new Date(late).getTime();
    return settlePlan(plan.body, records, {
      nowMs,
      instant: toInstant,
      lateAt: toInstant(lateMs),
      before: otherPlans(props),
      ...(periods !== undefined && { periods }),
    });
  };
  const act = async (periods?: number) => {
    const lateMs = late === null ? Date.now() : new Date(late).getTime();
    if (Number.isNaN(lateMs) || lateMs > Date.now()) {
      setTrouble(Number.isNaN(lateMs) ? d().missing : p().pairs.inFuture);
      return;
    }
    setTrouble(null);
    setBusy(true);
    const todo = settled(periods);
    const done = await carryOut(todo, records['hand-out']);
    setBusy(false);
    setWaiting(todo.cannot);
    const undo = async () => {
      showToast({ text: (await done.undo()) ? words.undone : d().trouble });
      setWaiting([]);
    };
    showToast({
      text: done.failed > 0 ? d().trouble : words.agreed(todo.give.length),
      action: { label: words.undo, run: () => void undo() },
    });
    if (done.failed === 0 && todo.cannot.length === 0 && todo.give.length > 0) moveOn();
  };
  if (toCome.length === 0) return <Cannot {...props} of={waiting} />;
  const whole = Number.isNaN(new Date(late ?? 0).getTime()) ? null : settled();
  return (
    <section class="plan-agree no-print" aria-label={words.agree}>
      {lateOnes.length > 0 && (
        <DateTimeField
          label={words.lateField}
          hint={words.lateHint}
          error={trouble ?? undefined}
          value={late ?? toLocalMinute(Date.now())}
          onInput={setLate}
        />
      )}
      <div class="row">
        <Button kind="main" disabled={busy} onClick={() => void act()}>
          {words.agree}
        </Button>
        {next < plan.body.periods - 1 && (
          <Button kind="quiet" disabled={busy} onClick={() => void act(next + 1)}>
            {words.handOutOnly(next + 1)}
          </Button>
        )}
        {whole && (
          <span class="soft small">
            {words.agreeHow(
              whole.give.length,
              endsIn(whole),
              formatDate(
                whole.give.reduce(
                  (first, { from }) => Math.min(first, Date.parse(from)),
                  Math.max(toCome[0]?.fromMs ?? 0, review.nowMs),
                ),
              ),
            )}
          </span>
        )}
      </div>
      <Cannot {...props} of={waiting} />
    </section>
  );
};

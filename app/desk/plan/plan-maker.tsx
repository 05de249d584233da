/** The form that draws a plan, and the plan as it would be before it is saved. */
import { useState } from 'preact/hooks';
import { ALLOWED_MM, type DrawnPlan, type PlanAnswer } from '../../../core/panel/index.ts';
import { isIn, ranges, type HandOutPlan, type RecordId } from '../../../core/records/index.ts';
import { byCode } from '../../../core/review/index.ts';
import { parseDecimal } from '../../../core/units/index.ts';
import { Button, Choices, Field, Notice } from '../../parts/controls/controls.tsx';
import { toInstant, toLocalDay } from '../../parts/instant.ts';
import { typedWhole } from '../../drafts/typed.ts';
import { d, listed } from '../../words/index.ts';
import { askWorker, namesIn, type TabProps } from '../desk-state.ts';
import { HowSure } from '../frame/how-sure.tsx';
import { saveRecord, TextField, Unfold } from '../parts/form-parts.tsx';
import { numberTrouble } from '../parts/in-range.ts';
import { BalanceInWords } from './balance-in-words.tsx';
import { startOf } from './day.ts';
import type { RoomIn } from './plan-fit.ts';
import { PlanTable } from './plan-table.tsx';
import { planBody, questionOf, type PlanChoice } from './plan-work.ts';

/** A new seed for each plan: the one thing that must not be the same twice. */
const newSeed = (): number => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;

type Props = TabProps & {
  readonly room: RoomIn;
  /** From the beginning. */
  readonly isOpen: boolean;
  readonly onSaved: (id: RecordId) => void;
};

export const PlanMaker = (props: Props) => {
  const words = d().panel.plan;
  const { review, records } = props;
  // The headline says what is missing, and the line above it leads there.
  if (review.pairs.length === 0 || records.tester.length === 0) return null;
  return (
    <div class="no-print part">
      <Unfold label={words.make} isOpen={props.isOpen}>
        {(close) => <Maker {...props} close={close} />}
      </Unfold>
    </div>
  );
};

interface Draft {
  readonly choice: PlanChoice;
  readonly drawn: DrawnPlan;
  readonly body: HandOutPlan;
}

const Maker = ({
  records,
  review,
  room,
  onSaved,
  close,
}: Props & { readonly close: () => void }) => {
  const words = d().panel.plan;
  const names = namesIn(review, records);
  const withPairs = review.rounds.filter(({ id }) =>
    review.pairs.some(({ round }) => round === id),
  );
  const testers = [...records.tester].sort((a, b) => byCode(a.body, b.body));
  const [rounds, setRounds] = useState<ReadonlySet<RecordId>>(
    new Set(withPairs.slice(-2).map(({ id }) => id)),
  );
  // Nobody wears a round twice: of one round there is one period.
  const [periods, setPeriods] = useState(String(rounds.size || 1));
  const [weeks, setWeeks] = useState('3');
  const [allowed, setAllowed] = useState(String(ALLOWED_MM));
  const [from, setFrom] = useState(toLocalDay(Date.now()));
  const [outComeBack, setOutComeBack] = useState(true);
  // Only what differs from taking part throughout: testers may come in while the form is open.
  const [away, setAway] = useState<ReadonlyMap<RecordId, readonly number[] | null>>(new Map());
  /** The periods in which a tester is away; null: they take no part. */
  const awayOf = (id: RecordId): readonly number[] | null => {
    const own = away.get(id);
    return own === undefined ? [] : own;
  };
  const [draft, setDraft] = useState<Draft | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [drawing, setDrawing] = useState(false);
  const periodCount = typedWhole(periods, 1, 12) ?? 0;

  const toggleRound = (id: RecordId) => {
    const next = new Set(rounds);
    if (!next.delete(id)) next.add(id);
    setRounds(next);
    setPeriods(String(next.size || 1));
  };
  const setTester = (id: RecordId, periodsAway: readonly number[] | null) => {
    setAway(new Map([...away, [id, periodsAway]]));
  };
  const draw = async () => {
    const weeksEach = typedWhole(weeks, 1, 26);
    const allowedMm = parseDecimal(allowed);
    const start = startOf(from, Date.now());
    setDraft(null);
    if (
      periodCount === 0 ||
      weeksEach === null ||
      allowedMm === null ||
      !isIn(allowedMm, ranges.sizeAllowanceMm) ||
      Number.isNaN(start)
    ) {
      const wrong = numberTrouble(words.allowed, allowedMm, ranges.sizeAllowanceMm);
      setTrouble(wrong ?? d().wrongNumber);
      return;
    }
    const choice = questionOf(
      {
        rounds: review.rounds.flatMap(({ id }) => (rounds.has(id) ? [id] : [])),
        periods: periodCount,
        testers: new Map(
          testers.flatMap(({ revision: { id } }) => {
            const own = awayOf(id);
            return own ? [[id, own.filter((period) => period < periodCount)]] : [];
          }),
        ),
        allowedMm,
        outComeBack,
        seed: newSeed(),
      },
      records,
    );
    setDrawing(true);
    const answer = await askWorker(
      async (desk): Promise<PlanAnswer> => await desk.drawPlan(choice.question),
    ).catch(() => null);
    setDrawing(false);
    if (!answer?.ok) {
      setTrouble(answer ? words.trouble[answer.why] : d().workTrouble);
      return;
    }
    setTrouble(null);
    const about = {
      project: review.project.id,
      at: toInstant(Date.now()),
      from: toInstant(start),
      weeksPerPeriod: weeksEach,
    };
    const body = planBody(choice, answer.plan, about);
    setDraft({ choice, drawn: answer.plan, body });
  };
  const save = async () => {
    if (!draft) return;
    const saved = await saveRecord('hand-out-plan', draft.body);
    if (!saved) return;
    onSaved(saved.revision.id);
    close();
  };

  return (
    <div class="stack">
      <Choices
        label={words.rounds}
        options={withPairs.map(({ id, name }) => ({ value: id, label: name }))}
        values={rounds}
        onToggle={toggleRound}
      />
      <div class="field-row">
        <TextField
          label={words.periods}
          hint={rounds.size === 1 ? words.periodsOfOne : words.periodsHint}
          value={periods}
          onInput={setPeriods}
          numeric
        />
        <TextField label={words.weeks} value={weeks} onInput={setWeeks} numeric />
        <TextField
          label={words.allowed}
          hint={words.allowedHint}
          value={allowed}
          onInput={setAllowed}
          numeric
        />
        <Field label={words.from}>
          {(ids) => (
            <input
              class="input"
              type="date"
              required
              {...ids}
              value={from}
              onInput={(event) => setFrom(event.currentTarget.value)}
            />
          )}
        </Field>
      </div>
      <label class="row">
        <input
          type="checkbox"
          class="tick"
          checked={outComeBack}
          onChange={(event) => setOutComeBack(event.currentTarget.checked)}
        />
        {words.outComeBack}
      </label>
      <div class="table-wrap" tabIndex={0} role="region" aria-label={words.who}>
        <table>
          <caption>{words.who}</caption>
          <thead>
            <tr>
              <th scope="col">{words.tester}</th>
              <th scope="col">{words.takesPart}</th>
              {Array.from({ length: periodCount }, (_, period) => (
                <th scope="col" key={period}>
                  {words.awayShort(period + 1)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {testers.map(({ body: { code, name }, revision: { id } }) => {
              const own = awayOf(id);
              return (
                <tr key={id}>
                  <th scope="row">{[code, name].filter(Boolean).join(' ')}</th>
                  <td>
                    <input
                      type="checkbox"
                      class="tick"
                      aria-label={words.takesPartName(code)}
                      checked={own !== null}
                      onChange={() => setTester(id, own === null ? [] : null)}
                    />
                  </td>
                  {Array.from({ length: periodCount }, (_, period) => (
                    <td key={period}>
                      <input
                        type="checkbox"
                        class="tick"
                        aria-label={words.awayIn(code, period + 1)}
                        disabled={own === null}
                        checked={own?.includes(period) ?? false}
                        onChange={() => {
                          if (!own) return;
                          const others = own.filter((one) => one !== period);
                          setTester(id, own.includes(period) ? others : [...own, period]);
                        }}
                      />
                    </td>
                  ))}
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      {trouble && (
        <Notice tone="danger" live>
          {trouble}
        </Notice>
      )}
      <div class="row">
        <Button kind={draft ? 'plain' : 'main'} disabled={drawing} onClick={() => void draw()}>
          {drawing ? words.drawing : draft ? words.drawAgain : words.draw}
        </Button>
      </div>
      {draft && (
        <section class="stack" aria-live="polite">
          <PlanTable records={records} review={review} plan={draft.body} room={room} />
          {draft.drawn.empty.length > 0 && (
            <Notice tone="warn">{words.empty(draft.drawn.empty.length)}</Notice>
          )}
          {draft.choice.withoutSize.length > 0 && (
            <Notice tone="warn">
              {words.withoutSize(listed(draft.choice.withoutSize.map(names.tester)))}
            </Notice>
          )}
          {draft.choice.pairsOut + draft.choice.pairsWithdrawn > 0 && (
            <p class="soft">{words.leftOut(draft.choice.pairsOut, draft.choice.pairsWithdrawn)}</p>
          )}
          <HowSure>
            {/* One round is handed out, not compared. */}
            {draft.body.rounds.length > 1 && (
              <BalanceInWords
                balance={draft.drawn.balance}
                basis={draft.drawn.basis}
                least={draft.drawn.least}
              />
            )}
            <p class="soft small">{words.seed(draft.body.seed)}</p>
          </HowSure>
          <div class="row">
            <Button kind="main" onClick={() => void save()}>
              {words.save}
            </Button>
          </div>
        </section>
      )}
    </div>
  );
};

/** A tester stops: from which day, and who takes the pairs over. What would change is shown before it is saved. */
import { useEffect, useState } from 'preact/hooks';
import {
  periodStartMs,
  placeSpan,
  stopTester,
  type PlanAnswer,
} from '../../../core/panel/index.ts';
import type { HandOutPlan, RecordId, RecordOf } from '../../../core/records/index.ts';
import { byCode } from '../../../core/review/index.ts';
import { Button, Field } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDate } from '../../parts/format.ts';
import { toInstant, toLocalDay } from '../../parts/instant.ts';
import { store } from '../../parts/state.ts';
import { d, locale, p } from '../../words/index.ts';
import { askWorker, namesIn, noteTrouble, type TabProps } from '../desk-state.ts';
import { OpenForm, saveRecord, SelectField } from '../parts/form-parts.tsx';
import { carryOut } from './carry-out.ts';
import { morningOf } from './day.ts';
import { reservesFor, type Reserve } from './plan-fit.ts';
import { drawnAnew, dropOut } from './plan-work.ts';
import { roomFigure, roomSigns } from './room-sign.tsx';
import { handedOut, settlePlan } from './settle-plan.ts';

/** More who could take over than this are not read. */
const MOST_RESERVES = 30;

type Props = TabProps & {
  readonly plan: RecordOf<'hand-out-plan'>;
  /** Shows the plan as it would be; null: as it stands. */
  readonly onPreview: (plan: HandOutPlan | null) => void;
  readonly close: () => void;
};

type Then = RecordId | 'store' | 'draw';

const roomsInWords = ({ rooms }: Reserve, names: ReturnType<typeof namesIn>): string => {
  const words = p().plan;
  const said = rooms.map(({ pair, room }) => ({
    pair,
    text: room
      ? `${roomSigns[room.word]} ${roomFigure(room)} ${words.roomWord[room.word]}`
      : words.roomUnknown,
  }));
  const [first] = said;
  return first !== undefined && said.every(({ text }) => text === first.text)
    ? words.stop.roomsAll(first.text, said.length)
    : d().joined.clauses(said.map(({ pair, text }) => words.stop.roomOf(names.code(pair), text)));
};

/** The plan drawn anew for the rest, by the worker; null until it is there. */
const useDrawn = (
  props: Props,
  tester: RecordId | '',
  at: string | null,
  wanted: boolean,
): HandOutPlan | null => {
  const { plan, records } = props;
  const [drawn, setDrawn] = useState<HandOutPlan | null>(null);
  useEffect(() => {
    setDrawn(null);
    if (!wanted || tester === '' || at === null) return;
    const asked = dropOut(plan.body, tester, at, records);
    let current = true;
    askWorker(async (desk): Promise<PlanAnswer> => await desk.drawPlan(asked.question)).then(
      (answer) =>
        current && setDrawn(answer.ok ? drawnAnew(plan.body, asked, answer.plan).plan : asked.left),
      noteTrouble,
    );
    return () => {
      current = false;
    };
    // A newer log must not change what is read while it is looked at.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [tester, at, wanted]);
  return drawn;
};

/** Places of one plan that the other has not, of those to come. */
const differing = (plan: HandOutPlan, from: HandOutPlan, atMs: number): number => {
  const keys = new Set(
    from.places.map(({ tester, pair, period }) => `${tester} ${pair} ${period}`),
  );
  return plan.places.filter(
    (place) =>
      placeSpan(plan, place).untilMs > atMs &&
      !keys.has(`${place.tester} ${place.pair} ${place.period}`),
  ).length;
};

/** How far the hand-outs were made ahead: after a change they are made as far again. */
const periodsMade = (plan: HandOutPlan, records: Props['records']): number =>
  Math.max(0, ...[...handedOut(plan, records).keys()].map(({ period }) => period + 1));

const save = async (props: Props, next: HandOutPlan, tester: string): Promise<boolean> => {
  const { plan, records } = props;
  const saved = await saveRecord('hand-out-plan', next, plan.revision.id);
  if (!saved) return false;
  const settled = settlePlan(next, records, {
    nowMs: Date.now(),
    instant: toInstant,
    lateAt: null,
    before: [plan.body],
    periods: periodsMade(plan.body, records),
  });
  const done = await carryOut(settled, records['hand-out']);
  const undo = async () => {
    const back = await store.save('hand-out-plan', plan.body, plan.revision.id);
    const all = await done.undo();
    showToast({ text: back.ok && all ? p().plan.undone : d().trouble });
  };
  showToast({
    text: done.failed > 0 ? d().trouble : p().plan.stop.done(tester),
    action: { label: p().plan.undo, run: () => void undo() },
  });
  return done.failed === 0;
};

export const StopForm = (props: Props) => {
  const { records, review, plan, onPreview, close } = props;
  const words = p().plan.stop;
  const names = namesIn(review, records);
  const { nowMs } = review;
  const [tester, setTester] = useState<RecordId | ''>('');
  const [day, setDay] = useState(toLocalDay(nowMs));
  const [then, setThen] = useState<Then | null>(null);
  const [busy, setBusy] = useState(false);
  const morningMs = morningOf(day, 1);
  // What is past cannot be planned anew.
  const atMs = Number.isNaN(morningMs) ? null : Math.max(morningMs, nowMs);
  const at = atMs === null ? null : toInstant(atMs);
  const stop = tester !== '' && at !== null ? { tester, at } : null;
  const reserves = stop ? reservesFor(plan.body, stop, records).slice(0, MOST_RESERVES) : [];
  const left = stop
    ? plan.body.places.filter(
        (place) => place.tester === tester && placeSpan(plan.body, place).untilMs > (atMs ?? 0),
      )
    : [];
  // The best fit is offered, if it does fit.
  const chosen: Then = then ?? (reserves[0]?.fits ? reserves[0].tester : 'store');
  const drawn = useDrawn(props, tester, at, chosen === 'draw');
  const next =
    stop === null || left.length === 0
      ? null
      : chosen === 'draw'
        ? drawn
        : stopTester(plan.body, { ...stop, reserve: chosen === 'store' ? null : chosen });
  const nextKey = next && JSON.stringify(next.places);
  useEffect(() => {
    onPreview(next);
    // A plan is made anew at each drawing; its places say whether it is another one.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [nextKey]);
  const called = new Map(records.tester.map(({ body, revision }) => [revision.id, body.name]));
  const nameOf = (id: RecordId) => [names.tester(id), called.get(id)].filter(Boolean).join(' ');
  const wearers = new Set(
    plan.body.places
      .filter((place) => placeSpan(plan.body, place).untilMs > nowMs)
      .map((place) => place.tester),
  );
  const pairs = left.map(({ pair }) => names.code(pair));
  const list = new Intl.ListFormat(locale(), { type: 'conjunction' });
  const keep = async () => {
    if (!next || tester === '' || busy) return;
    setBusy(true);
    const done = await save(props, next, names.tester(tester));
    setBusy(false);
    if (done) close();
  };
  const act =
    chosen === 'draw'
      ? words.keepDrawn
      : chosen === 'store'
        ? words.leave
        : words.take(names.tester(chosen));
  return (
    <OpenForm label={words.open} close={close}>
      <div class="field-row">
        <SelectField
          label={words.who}
          value={tester}
          options={records.tester
            .filter(({ revision }) => wearers.has(revision.id))
            .toSorted((a, b) => byCode(a.body, b.body))
            .map(({ revision }) => ({ value: revision.id, label: nameOf(revision.id) }))}
          onChange={(id) => {
            setTester(id);
            setThen(null);
          }}
        />
        <Field
          label={words.lastDay}
          hint={morningMs < nowMs ? words.past : words.lastDayHint}
          error={at === null ? d().missing : undefined}
        >
          {(ids) => (
            <input
              class="input"
              type="date"
              required
              {...ids}
              max={toLocalDay(periodStartMs(plan.body, plan.body.periods))}
              value={day}
              onInput={(event) => setDay(event.currentTarget.value)}
            />
          )}
        </Field>
        {left.length > 0 && (
          <SelectField
            label={words.then}
            value={chosen}
            options={[
              ...reserves.map((one) => ({
                value: one.tester,
                label: words.reserve(nameOf(one.tester), roomsInWords(one, names)),
              })),
              { value: 'store' as const, label: words.store },
              { value: 'draw' as const, label: words.draw },
            ]}
            onChange={setThen}
          />
        )}
      </div>
      {stop && left.length === 0 && <p>{words.nothingLeft(names.tester(stop.tester))}</p>}
      {stop && left.length > 0 && (
        <div aria-live="polite" class="stack">
          <p>
            <strong>
              {words.says(
                nameOf(stop.tester),
                formatDate(morningMs < nowMs ? nowMs : morningOf(day)),
              )}
            </strong>{' '}
            {chosen === 'store' && words.stay(list.format(pairs))}
            {chosen === 'draw' &&
              (next
                ? words.redrawn(differing(next, plan.body, atMs ?? 0))
                : d().panel.plan.drawing)}
            {chosen !== 'store' &&
              chosen !== 'draw' &&
              (pairs.length === 1
                ? words.goesTo(pairs[0] ?? '', nameOf(chosen))
                : words.goTo(list.format(pairs), nameOf(chosen)))}
          </p>
          <div class="row">
            <Button kind="main" disabled={next === null || busy} onClick={() => void keep()}>
              {act}
            </Button>
          </div>
        </div>
      )}
    </OpenForm>
  );
};

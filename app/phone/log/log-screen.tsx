/** Log a run, or change one: on one screen, top to bottom, each answer kept as it is given. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import type { RecordId, Surface } from '../../../core/records/index.ts';
import { surfaces as allSurfaces } from '../../../core/records/index.ts';
import { Button, Choices, Field, Notice, Page } from '../../parts/controls/controls.tsx';
import { LimitedField } from '../../parts/controls/limited-field.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { toLocalMinute } from '../../parts/instant.ts';
import { latePart } from '../../parts/late.tsx';
import { settings } from '../../parts/settings.ts';
import { session, store, useStored } from '../../parts/state.ts';
import { entryWords, t, terms } from '../../words/index.ts';
import { justSaved } from '../just-saved.ts';
import { LeadsNote } from '../leads-note.tsx';
import { cautionIn, withCaution } from '../../drafts/run-pain.ts';
import { ComfortPart } from './comfort-part.tsx';
import { DayPart } from './day-part.tsx';
import { draftKey } from './draft-key.ts';
import { FeetPart } from './feet-part.tsx';
import { keepSentTrack } from '../track/send-track.ts';
import { MorePart } from './more-part.tsx';
import { PainPart } from './pain-part.tsx';
import { dayOf, onItsDay, typedStart, withTime } from './run-day.ts';
import { askDoubts, readClockOff, type Asked } from './ask-doubts.ts';
import { SaveBar } from './save-bar.tsx';
import { TimeHint } from './time-hint.tsx';
import { runOfForm, type RunForm, type RunFormError } from '../../drafts/run.ts';
import './log-screen.css';
import { readContext, USUAL_SURFACE, type Context } from './log-context.ts';

// Reading and measuring tracks is a third of this screen's code and not always needed.
const TrackPart = latePart(async () => (await import('../track/track-part.tsx')).TrackPart);

const AFTER_FIRST_PAINT_MS = 800;
const TICK_MS = 12;

const Form = ({ context }: { context: Context }) => {
  const words = t();
  const said = entryWords();
  const { route } = useLocation();
  const [form, setForm] = useState(context.form);
  const [errors, setErrors] = useState<ReadonlySet<RunFormError>>(new Set());
  const [trouble, setTrouble] = useState<string | null>(null);
  const [saving, setSaving] = useState(false);
  const [doubts, setDoubts] = useState<readonly Asked[]>([]);
  const [touched, setTouched] = useState(false);
  const [hadDraft, setHadDraft] = useState(context.hasDraft);
  const { pair, project, before, stop } = context;
  const key = draftKey(before?.revision.id ?? pair.revision.id);
  const { distance: unit } = settings.value;

  // The first thing to type: where the browser allows it, its keypad is there without a tap.
  const distance = useRef<HTMLInputElement>(null);
  const day = useRef<HTMLDivElement>(null);
  const pain = useRef<HTMLDivElement>(null);
  const caution = cautionIn(form);
  useEffect(() => {
    if (form.distance === '' && !before) distance.current?.focus({ preventScroll: true });
    // Once, when the screen opens.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, []);

  // What few need comes after what everybody waits for.
  const [isQuiet, setQuiet] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setQuiet(true), AFTER_FIRST_PAINT_MS);
    return () => clearTimeout(timer);
  }, []);

  const change = (part: Partial<RunForm>) => {
    setTouched(true);
    setDoubts([]);
    const touchedMs = Date.now();
    setForm((form) => withCaution({ ...onItsDay(form, touchedMs), ...part, touchedMs }));
  };
  // A form may stay open overnight as well as be opened anew.
  useEffect(() => {
    const look = () => setForm((form) => onItsDay(form, Date.now()));
    document.addEventListener('visibilitychange', look);
    return () => document.removeEventListener('visibilitychange', look);
  }, []);
  // Kept as typed, so that a call or a killed tab costs nothing.
  useEffect(() => {
    if (touched) store.saveDraft(key, form).catch(() => setTrouble(words.log.full));
  }, [touched, form, key, words]);

  const save = async (isSure = false) => {
    const tester = before?.body.tester ?? session.value?.member;
    if (!tester || saving || caution === 'unread') return;
    const sentTrack = form.track?.send ? await keepSentTrack(form.track) : null;
    const nowMs = Date.now();
    const dated = onItsDay(form, nowMs);
    const clockOffMs = await readClockOff(context, tester, nowMs);
    const outcome = runOfForm(dated, {
      sentTrack,
      project: project.revision.id,
      tester,
      units: settings.value,
      nowMs,
      clockOffMs,
      firstImpression: context.firstImpression,
      stopped: stop !== null,
      ...(before && { before: before.body }),
    });
    if (!outcome.ok) {
      setErrors(outcome.errors);
      requestAnimationFrame(() => document.querySelector<HTMLElement>('[aria-invalid]')?.focus());
      return;
    }
    setErrors(new Set());
    setSaving(true);
    const found = isSure ? [] : await askDoubts(outcome.run, dated, context, { nowMs, clockOffMs });
    setDoubts(found);
    if (found.length > 0) return setSaving(false);
    const saved = await store.save('run', outcome.run, before?.revision.id);
    setSaving(false);
    if (!saved.ok) {
      setTrouble(
        saved.why === 'storage-full'
          ? words.log.full
          : saved.why === 'storage-lost'
            ? words.log.lost
            : words.log.invalid(saved.problems[0]?.field ?? ''),
      );
      return;
    }
    setTouched(false);
    await store.dropDraft(key);
    const [surface] = form.surfaces;
    if (surface) await store.saveSetting(USUAL_SURFACE, surface);
    // A browser that was never asked may clear the log; some ask the person, so only after a first save.
    void navigator.storage?.persist?.();
    // A tick in the hand, where the phone gives one.
    navigator.vibrate?.(TICK_MS);
    showToast({ text: words.log.saved });
    if (!before) justSaved.value = saved.value.revision.id;
    route(before ? `/run/${before.revision.id}` : '/', true);
  };

  /** Empties the form; what stood in it can be brought back. */
  const startAfresh = async () => {
    const undone = form;
    setTouched(false);
    setHadDraft(false);
    setForm(context.empty);
    setErrors(new Set());
    await store.dropDraft(key);
    showToast({
      text: words.log.afreshDone,
      action: { label: words.undo, run: () => change(undone) },
    });
  };
  /** The same run was logged before: back to the pairs, and what was typed can be brought back. */
  const discard = async () => {
    setTouched(false);
    await store.dropDraft(key);
    const bringBack = async () => {
      await store.saveDraft(key, form);
      route(`/log/${pair.revision.id}`);
    };
    showToast({
      text: words.log.afreshDone,
      action: { label: words.undo, run: () => void bringBack() },
    });
    route('/', true);
  };
  const asks = (why: Asked['why']) => doubts.some((one) => one.why === why);
  const started = touched || hadDraft;

  const toggleSurface = (surface: Surface) =>
    change({
      surfaces: form.surfaces.includes(surface)
        ? form.surfaces.filter((one) => one !== surface)
        : [...form.surfaces, surface],
    });
  const error = (field: RunFormError, text: string) => (errors.has(field) ? text : null);
  // Beside each other while both are one line: the ordinary log has no room to give.
  const isShort = form.track === null && dayOf(form, Date.now()) === 'now';
  const [allOffered, setAllOffered] = useState(false);
  const likely = allSurfaces.filter(
    (one) => project.body.brief.surfaces.includes(one) || form.surfaces.includes(one),
  );

  return (
    <form
      class="stack"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      {before && <LeadsNote run={before.body} />}
      {stop && (
        <Notice tone="danger">
          <p>{words.log.stopped(stop.body.reason)}</p>
          <LimitedField
            label={words.log.whyWorn}
            error={error('worn', words.log.whyWornMissing)}
            most={200}
            value={form.wornDespiteStop}
            onInput={(text) => change({ wornDespiteStop: text })}
          />
        </Notice>
      )}
      <div class="row">
        <div class="grow">
          <Field
            label={words.log.distance(unit)}
            error={error('distance', said.wrongDistance('10.5'))}
          >
            {(ids) => (
              <input
                class="input input-figure"
                inputMode="decimal"
                autocomplete="off"
                enterkeyhint="next"
                ref={distance}
                {...ids}
                value={form.distance}
                onInput={(event) => change({ distance: event.currentTarget.value })}
              />
            )}
          </Field>
        </div>
        <div class="grow">
          <Field label={words.log.time} error={error('time', said.wrongTime)}>
            {(ids) => (
              <input
                class="input input-figure"
                inputMode="numeric"
                autocomplete="off"
                enterkeyhint="done"
                {...ids}
                value={form.time}
                onInput={(event) => change(withTime(event.currentTarget.value, form, Date.now()))}
              />
            )}
          </Field>
        </div>
      </div>
      <TimeHint time={form.time} distance={form.distance} unit={unit} />
      <div class={isShort ? 'day-and-track' : 'stack'} ref={day}>
        <DayPart
          form={form}
          error={error('ahead', said.aheadOfNow) ?? error('start', said.wrongWhen)}
          onChange={change}
        />
        {!before && (
          <div class="track-place">
            {(isQuiet || context.shared !== null || form.track !== null) && (
              <TrackPart form={form} shared={context.shared} onChange={change} />
            )}
          </div>
        )}
      </div>
      <Choices
        label={words.log.surface}
        options={(allOffered ? allSurfaces : likely).map((value) => ({
          value,
          label: terms().surfaces[value],
        }))}
        values={new Set(form.surfaces)}
        onToggle={toggleSurface}
        {...(!allOffered && {
          more: { label: words.log.otherSurface, onOpen: () => setAllOffered(true) },
        })}
      />
      {form.surfaces.length > 1 && <p class="soft small">{words.log.surfaceHint}</p>}
      <hr class="stitch" />
      <ComfortPart brief={project.body.brief} form={form} onChange={change} />
      <hr class="stitch" />
      <FeetPart form={form} unit={unit} errors={errors} onChange={change} />
      <hr class="stitch" />
      <PainPart form={form} place={pain} onChange={change} />
      <hr class="stitch" />
      <MorePart form={form} errors={errors} onChange={change} />
      {started && (
        <Button kind="quiet" onClick={() => void startAfresh()}>
          {words.log.afresh}
        </Button>
      )}
      {trouble && (
        <Notice tone="danger" live>
          {trouble}
        </Notice>
      )}
      <SaveBar
        caution={caution}
        asked={pain}
        questions={doubts.map(({ question }) => question)}
        saving={saving}
        onRead={() => change({ cautionRead: true })}
        onSure={() => void save(true)}
        onSame={!before && asks('logged-twice') ? () => void discard() : null}
        onChange={() => {
          setDoubts([]);
          const clock = doubts.find(({ startMs }) => startMs !== undefined);
          if (clock?.startMs !== undefined) change(typedStart(toLocalMinute(clock.startMs)));
          if (asks('distance-or-pace') || (asks('logged-twice') && !clock))
            distance.current?.focus();
          else day.current?.querySelector('select')?.focus();
        }}
      />
    </form>
  );
};

/** The screen for a new run in `pair`, or for changing `run`. */
export const LogScreen = (props: { pair?: string; run?: string }) => {
  const words = t();
  const context = useStored(
    async () => ({
      found: await readContext(
        (props.pair ?? null) as RecordId | null,
        (props.run ?? null) as RecordId | null,
      ),
    }),
    [],
    [props.pair, props.run],
  );
  return (
    <Page
      title={props.run === undefined ? words.log.title : words.log.titleChange}
      back={{ href: props.run === undefined ? '/' : '/runs', label: words.back }}
      aside={
        context?.found && (
          <span class="soft">
            {words.log.pair} <strong>{context.found.pair.body.code}</strong>
          </span>
        )
      }
    >
      {context === null ? (
        <p class="soft">{words.loading}</p>
      ) : context.found ? (
        <Form context={context.found} />
      ) : (
        <p>{words.log.unknownPair}</p>
      )}
    </Page>
  );
};

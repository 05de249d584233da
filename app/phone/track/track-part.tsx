/** A track from a watch: what it says beside what was typed, the way to paint, and whether it is sent. */
import { useId, useState } from 'preact/hooks';
import { isSameTrack, surfaces, type Sha256, type Surface } from '../../../core/records/index.ts';
import { fromMetres, metres, parseDecimal, seconds, toMetres } from '../../../core/units/index.ts';
import { Button, Choice, Notice } from '../../parts/controls/controls.tsx';
import { latePart } from '../../parts/late.tsx';
import { formatDateTime, formatDistance, formatNumber, formatPace } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { store, useRecords, useStored } from '../../parts/state.ts';
import { clauses, entryWords, saidOf, t, terms } from '../../words/index.ts';
import { withTrackStart } from '../log/run-day.ts';
import type { RunForm, TrackForm } from '../../drafts/run.ts';

// Reading and measuring come with the first track, the map and Leaflet when somebody opens it.
const reading = () => import('./read-track.ts');
const TrackMap = latePart(async () => (await import('../../parts/map/track-map.tsx')).TrackMap);

/** Typed and tracked figures that differ by less are the same, metres: half of the last digit typed. */
const SAME_M = 50;

export const TrackPart = (props: {
  readonly form: RunForm;
  readonly shared: File | null;
  readonly onChange: (part: Partial<RunForm>) => void;
}) => {
  const words = entryWords().track;
  const id = useId();
  const { form, onChange } = props;
  const [trouble, setTrouble] = useState<string | null>(null);
  const [skipped, setSkipped] = useState(0);
  const [busy, setBusy] = useState(false);
  const { distance: unit } = settings.value;

  const take = async (file: File | undefined) => {
    if (!file) return;
    setBusy(true);
    setTrouble(null);
    const taken = await (await reading()).takeTrack(store, file);
    setBusy(false);
    if (!taken.ok) return setTrouble(words.wrong[taken.why](taken.line));
    const { track } = taken;
    setSkipped(taken.skippedPoints);
    const movingS = track.movingS ?? track.elapsedS;
    onChange({
      track,
      ...(form.distance.trim() === '' && {
        distance: String(Number(fromMetres(metres(track.distanceM), unit).toFixed(2))),
      }),
      ...(form.time.trim() === '' && movingS !== null && { time: typedTime(movingS) }),
      ...withTrackStart(form, track.startMs),
    });
  };
  useStored(
    async () => {
      if (props.shared && !form.track) await take(props.shared);
      return null;
    },
    [],
    [props.shared],
  );

  return (
    <div
      class="field"
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        void take(event.dataTransfer?.files[0]);
      }}
    >
      {form.track ? (
        <Taken {...props} track={form.track} unit={unit} skipped={skipped} />
      ) : (
        <>
          <input
            id={id}
            class="hidden-words file-input"
            type="file"
            accept=".gpx,application/gpx+xml,application/xml,text/xml"
            disabled={busy}
            onChange={(event) => void take(event.currentTarget.files?.[0])}
          />
          <label class="button button-quiet" for={id}>
            {busy ? t().loading : words.add}
          </label>
        </>
      )}
      {trouble && (
        <p class="field-error" role="alert">
          {trouble}
        </p>
      )}
    </div>
  );
};

const typedTime = (total: number): string => {
  const [h, m, s] = [Math.floor(total / 3600), Math.floor(total / 60) % 60, Math.round(total % 60)];
  const two = (value: number) => String(value).padStart(2, '0');
  return h > 0 ? `${h}:${two(m)}:${two(s)}` : `${m}:${two(s)}`;
};

const Taken = (props: {
  readonly form: RunForm;
  readonly track: TrackForm;
  readonly skipped: number;
  readonly unit: 'km' | 'mi';
  readonly onChange: (part: Partial<RunForm>) => void;
}) => {
  const words = entryWords().track;
  const { form, track, unit, onChange } = props;
  const runs = useRecords('run');
  const [open, setOpen] = useState(false);
  const whole = useStored(
    async (from) => (await reading()).wholeTrack(from, track.whole),
    [],
    [track.whole],
  );
  const change = (part: Partial<TrackForm>) => onChange({ track: { ...track, ...part } });
  const again = runs?.find(
    ({ body }) => body.track && isSameTrack(body.track.fingerprint, track.fingerprint),
  );
  const typed = parseDecimal(form.distance);
  const typedM = typed === null ? null : toMetres(typed, unit);
  const differs = typedM !== null && Math.abs(typedM - track.distanceM) > SAME_M;
  const facts = [
    formatDistance(metres(track.distanceM)),
    track.movingS === null ? '' : words.moving(typedTime(track.movingS)),
    formatPace(
      metres(track.distanceM),
      track.movingS === null ? undefined : seconds(track.movingS),
    ),
    track.climbM === null ? '' : words.climb(formatNumber(track.climbM, 0)),
  ];
  return (
    <section class="sheet" aria-label={words.title}>
      <div class="row row-apart">
        <h2>{words.title}</h2>
        <Button
          kind="quiet"
          aria-label={saidOf(t().remove, words.title)}
          onClick={() => {
            onChange({ track: null });
            void store.dropAttachment(track.whole as Sha256);
          }}
        >
          {t().remove}
        </Button>
      </div>
      <p>{facts.filter(Boolean).join(' · ')}</p>
      {track.elapsedS === null ? (
        <Notice>{words.noTimes}</Notice>
      ) : (
        <p class="soft small">{words.made[track.distanceBy]}</p>
      )}
      {props.skipped > 0 && <Notice tone="warn">{words.skipped(props.skipped)}</Notice>}
      {again && (
        <Notice tone="warn" live>
          {words.again(formatDateTime(again.body.startedAt))}
        </Notice>
      )}
      {differs && typedM !== null && (
        <Notice>
          <p>
            {words.differs(
              formatDistance(metres(track.distanceM)),
              formatDistance(typedM),
              formatNumber((100 * (typedM - track.distanceM)) / track.distanceM, 1),
            )}
          </p>
          <Button
            onClick={() =>
              onChange({
                distance: String(Number(fromMetres(metres(track.distanceM), unit).toFixed(2))),
              })
            }
          >
            {words.useTrack}
          </Button>
        </Notice>
      )}
      <Painting form={form} track={track} onChange={change} />
      {open && whole ? (
        <TrackMap
          track={whole}
          stretches={track.stretches}
          lengthM={track.distanceM}
          base={form.surfaces[0] ?? null}
          marks={form.complaints.flatMap(({ from, zone, foot }) => {
            const at = parseDecimal(from);
            const label = clauses(t().foot[foot], terms().zones[zone].name);
            return at === null ? [] : [{ atM: toMetres(at, unit), label }];
          })}
          onPaint={(stretches) => change({ stretches })}
        />
      ) : (
        <Button onClick={() => setOpen(true)} disabled={!whole}>
          {words.openMap}
        </Button>
      )}
      <label class="row">
        <input
          type="checkbox"
          class="tick"
          checked={track.send}
          onChange={(event) => change({ send: event.currentTarget.checked })}
        />
        {words.send}
      </label>
      <p class="soft small">
        {words.sendHint(formatNumber(settings.value.privateM, 0), settings.value.trackTimes)}
      </p>
    </section>
  );
};

/** Surfaces along the way without a map: from, to, what. */
const Painting = (props: {
  readonly form: RunForm;
  readonly track: TrackForm;
  readonly onChange: (part: Partial<TrackForm>) => void;
}) => {
  const words = entryWords().track;
  const { track, onChange } = props;
  const { distance: unit } = settings.value;
  const [from, setFrom] = useState('');
  const [to, setTo] = useState('');
  const [surface, setSurface] = useState<Surface | null>(null);
  const [start, end] = [parseDecimal(from), parseDecimal(to)];
  const isWhole = start !== null && end !== null && surface !== null;
  const add = async () => {
    if (!isWhole) return;
    const { paint } = await import('../../../core/track/index.ts');
    const stroke = { fromM: toMetres(start, unit), toM: toMetres(end, unit), surface };
    onChange({ stretches: [...paint(track.stretches, stroke, track.distanceM)] });
    setFrom('');
    setTo('');
  };
  return (
    <details>
      <summary class="button button-quiet">{words.paint}</summary>
      <div class="stack">
        {track.stretches.length > 0 && (
          <ul>
            {track.stretches.map(({ fromM, toM, surface: what }) => (
              <li key={fromM}>
                {words.stretch(
                  formatDistance(metres(fromM)),
                  formatDistance(metres(toM)),
                  terms().surfaces[what],
                )}
              </li>
            ))}
          </ul>
        )}
        <p class="soft small">{words.base}</p>
        <div class="row">
          {(
            [
              [words.from(unit), from, setFrom],
              [words.to(unit), to, setTo],
            ] as const
          ).map(([label, value, set]) => (
            <label class="field grow" key={label}>
              <span class="label">{label}</span>
              <input
                class="input"
                inputMode="decimal"
                autocomplete="off"
                value={value}
                onInput={(event) => set(event.currentTarget.value)}
              />
            </label>
          ))}
        </div>
        <Choice
          label={words.surface}
          options={surfaces.map((value) => ({ value, label: terms().surfaces[value] }))}
          value={surface}
          onChange={setSurface}
        />
        <div class="row">
          <Button disabled={!isWhole} onClick={() => void add()}>
            {words.paintIt}
          </Button>
          {track.stretches.length > 0 && (
            <Button kind="quiet" onClick={() => onChange({ stretches: [] })}>
              {words.clean}
            </Button>
          )}
        </div>
      </div>
    </details>
  );
};

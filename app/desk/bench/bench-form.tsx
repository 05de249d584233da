/** A sample measured on the bench: readings by measure, site and foot, with their circumstances. */
import { useState } from 'preact/hooks';
import { measures, unitsOf, type Reading, type RecordId } from '../../../core/records/index.ts';
import { celsius, metres, parseDecimal, toMetres, type Metres } from '../../../core/units/index.ts';
import { checkWarnings } from '../../../core/wear/index.ts';
import { Button, Choice, Notice } from '../../parts/controls/controls.tsx';
import { formatDistance } from '../../parts/format.ts';
import { toInstant, toLocalMinute } from '../../parts/instant.ts';
import { PhotoPicker } from '../../parts/photos/photo-picker.tsx';
import { d, t, terms } from '../../words/index.ts';
import { warningInWords } from '../../words/say-wear.ts';
import type { TabProps } from '../desk-state.ts';
import {
  DateTimeField,
  saveFromForm,
  SelectField,
  SmallForm,
  TextField,
  Unfold,
} from '../form-parts.tsx';
import { speakerOf } from '../speaker.ts';
import { emptyReading, isTyped, withBlueprint, type ReadingForm } from './bench-rows.ts';

/** What holds for all readings of a check, as typed. */
const emptyCircumstances = {
  km: '',
  room: '',
  rested: '',
  operator: '',
  gauge: '',
  method: '',
};
type Circumstances = typeof emptyCircumstances;

/** Undefined: not said; null: no number. */
const numberOf = (text: string): number | null | undefined =>
  text.trim() === '' ? undefined : parseDecimal(text);

const numbersOf = (typed: Circumstances) => ({
  km: numberOf(typed.km),
  room: numberOf(typed.room),
  rested: numberOf(typed.rested),
});

export const BenchForm = (props: TabProps) => (
  <Unfold label={d().bench.add}>{(close) => <CheckForm {...props} close={close} />}</Unfold>
);

const CheckForm = (props: TabProps & { readonly close: () => void }) => {
  const { review, close } = props;
  const words = d().bench;
  const [pair, setPair] = useState<RecordId | ''>('');
  const [at, setAt] = useState(toLocalMinute(Date.now()));
  const [typed, setTyped] = useState(emptyCircumstances);
  const [readings, setReadings] = useState<readonly ReadingForm[]>([emptyReading]);
  const [photos, setPhotos] = useState<readonly string[]>([]);
  const [arrival, setArrival] = useState(false);
  const chosen = props.records.pair.find(({ revision }) => revision.id === pair)?.body;
  const blueprint =
    props.records.round.find(({ revision }) => revision.id === chosen?.round)?.body.blueprint ?? [];
  /** Before the first run a pair has come as far as it was carried before the test. */
  const carried = chosen?.carriedInM ?? metres(0);
  const change = (index: number, part: Partial<ReadingForm>) =>
    setReadings(readings.map((one, other) => (other === index ? { ...one, ...part } : one)));
  const type = (field: keyof Circumstances) => (value: string) =>
    setTyped({ ...typed, [field]: value });
  const numbers = numbersOf(typed);

  const save = async () => {
    if (pair === '') return `${words.pair}: ${d().missing}`;
    if (Number.isNaN(new Date(at).getTime())) return `${words.at}: ${d().missing}`;
    const { km, room, rested } = numbers;
    for (const [value, label] of [
      [arrival ? undefined : km, words.distance],
      [room, words.temperature],
      [rested, words.rested],
    ] as const)
      if (value === null) return `${label}: ${d().wrongNumber}`;
    const parsed: Reading[] = [];
    for (const { measure, site, foot, value, unit, ...rest } of readings.filter(isTyped)) {
      const number = parseDecimal(value);
      const [uncertainty, load] = [numberOf(rest.uncertainty), numberOf(rest.load)];
      if (number === null) return `${words.value}: ${d().wrongNumber}`;
      if (uncertainty === null) return `${words.uncertainty}: ${d().wrongNumber}`;
      if (load === null) return `${words.load}: ${d().wrongNumber}`;
      parsed.push({
        measure,
        site,
        foot,
        value: number,
        unit,
        ...(typed.gauge.trim() !== '' && { gauge: typed.gauge.trim() }),
        ...(typed.method.trim() !== '' && { method: typed.method.trim() }),
        ...(uncertainty !== undefined && { uncertainty }),
        ...(load !== undefined && { loadN: load }),
      });
    }
    if (parsed.length === 0) return `${words.value}: ${d().missing}`;
    const distanceM = arrival ? carried : typeof km === 'number' ? toMetres(km, 'km') : undefined;
    const saved = await saveFromForm('bench-check', {
      project: review.project.id,
      pair,
      at: toInstant(new Date(at).getTime()),
      ...(distanceM !== undefined && { distanceM }),
      ...(typeof room === 'number' && { temperatureC: celsius(room) }),
      ...(typeof rested === 'number' && { restedH: rested }),
      ...(typed.operator.trim() !== '' && { operator: typed.operator.trim() }),
      readings: parsed,
      ...(photos.length > 0 && { photos: [...photos] }),
    });
    if (typeof saved === 'string') return saved;
    close();
    return null;
  };

  return (
    <SmallForm save={save}>
      <div class="field-row">
        <SelectField
          label={words.pair}
          value={pair}
          options={review.pairs.map(({ id, code }) => ({ value: id, label: code }))}
          onChange={setPair}
        />
        <DateTimeField label={words.at} value={at} onInput={setAt} />
        <TextField
          label={words.rested}
          value={typed.rested}
          onInput={type('rested')}
          numeric
          optional
        />
        <TextField
          label={words.temperature}
          value={typed.room}
          onInput={type('room')}
          numeric
          optional
        />
      </div>
      <label class="row">
        <input
          type="checkbox"
          class="tick"
          checked={arrival}
          onChange={(event) => setArrival(event.currentTarget.checked)}
        />
        {carried > 0 ? words.arrivalCarried(formatDistance(carried)) : words.arrival}
      </label>
      <Careful
        {...props}
        {...numbers}
        // Any distance above 0: a new pair needs no rest, and one that was worn does.
        distance={arrival ? carried : metres(1)}
        hardness={readings}
      />
      {blueprint.length > 0 && (
        <div class="row">
          <Button onClick={() => setReadings(withBlueprint(readings, blueprint))}>
            {words.addBlueprint}
          </Button>
          <span class="soft small">{words.emptyRows}</span>
        </div>
      )}
      <p class="soft small">{`${words.site}: ${words.siteHint}`}</p>
      {readings.map((reading, index) => (
        <fieldset class="field-row reading" key={index}>
          <legend class="hidden-words">{`${words.reading} ${index + 1}`}</legend>
          <SelectField
            label={words.reading}
            value={reading.measure}
            options={measures.map((value) => ({ value, label: terms().measures[value] }))}
            onChange={(measure) => change(index, { measure, unit: unitsOf[measure][0] })}
          />
          <TextField
            label={words.site}
            value={reading.site}
            onInput={(site) => change(index, { site })}
          />
          <Choice
            label={words.foot}
            options={[
              { value: 'left', label: t().left },
              { value: 'right', label: t().right },
            ]}
            value={reading.foot}
            onChange={(foot) => change(index, { foot })}
          />
          <TextField
            label={`${words.value}, ${terms().units[reading.unit]}`}
            value={reading.value}
            onInput={(value) => change(index, { value })}
            numeric
            required={readings.length === 1}
          />
          {unitsOf[reading.measure].length > 1 && (
            <SelectField
              label={d().rounds.unit}
              value={reading.unit}
              options={unitsOf[reading.measure].map((value) => ({
                value,
                label: terms().units[value],
              }))}
              onChange={(unit) => change(index, { unit })}
            />
          )}
          <TextField
            label={`${words.uncertainty}, ${terms().units[reading.unit]}`}
            value={reading.uncertainty}
            onInput={(uncertainty) => change(index, { uncertainty })}
            numeric
            optional
          />
          <TextField
            label={words.load}
            value={reading.load}
            onInput={(load) => change(index, { load })}
            numeric
            optional
          />
          {readings.length > 1 && (
            <Button
              kind="quiet"
              onClick={() => setReadings(readings.filter((_, other) => other !== index))}
            >
              {t().remove}
            </Button>
          )}
        </fieldset>
      ))}
      <Button
        kind="quiet"
        onClick={() =>
          setReadings([...readings, { ...(readings.at(-1) ?? emptyReading), value: '' }])
        }
      >
        {words.addReading}
      </Button>
      <div class="field-row">
        <TextField
          label={words.operator}
          value={typed.operator}
          onInput={type('operator')}
          optional
        />
        <TextField label={words.gauge} value={typed.gauge} onInput={type('gauge')} optional />
        <TextField label={words.method} value={typed.method} onInput={type('method')} optional />
        {!arrival && (
          <TextField
            label={words.distance}
            value={typed.km}
            onInput={type('km')}
            numeric
            optional
          />
        )}
      </div>
      <PhotoPicker label={words.photos} photos={photos} onChange={setPhotos} />
    </SmallForm>
  );
};

/** What already speaks against the check while it is typed: too little rest, a room too warm or too cold. */
const Careful = (
  props: TabProps & {
    readonly rested: number | null | undefined;
    readonly room: number | null | undefined;
    readonly distance: Metres;
    readonly hardness: readonly ReadingForm[];
  },
) => {
  const { rested, room } = props;
  const speaker = speakerOf(props);
  const warnings = checkWarnings(
    {
      distance: props.distance,
      readings: props.hardness.flatMap(({ measure, site, foot, unit, value }) => {
        const number = parseDecimal(value);
        return number === null ? [] : [{ measure, site, foot, unit, value: number }];
      }),
      ...(typeof rested === 'number' && { restedH: rested }),
      ...(typeof room === 'number' && { temperatureC: celsius(room) }),
    },
    [],
  ).filter(({ code }) => code === 'short-rest' || code === 'temperature');
  if (warnings.length === 0) return null;
  return (
    <Notice tone="plain" live>
      <ul>
        {warnings.map((warning) => (
          <li key={warning.code}>{warningInWords(warning, speaker)}</li>
        ))}
      </ul>
    </Notice>
  );
};

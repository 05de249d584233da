/** A sample measured on the bench: readings by measure, site and foot, with their circumstances. */
import { useRef, useState } from 'preact/hooks';
import { measures, rangeOf, ranges, unitsOf, type RecordId } from '../../../core/records/index.ts';
import { celsius, metres, toMetres } from '../../../core/units/index.ts';
import { Button, Choice } from '../../parts/controls/controls.tsx';
import { formatDistance } from '../../parts/format.ts';
import { toInstant, toLocalMinute } from '../../parts/instant.ts';
import { PhotoPicker } from '../../parts/photos/photo-picker.tsx';
import { d, t, terms } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import {
  DateTimeField,
  saveFromForm,
  SelectField,
  SmallForm,
  TextField,
  Unfold,
} from '../form-parts.tsx';
import { saveDecisions } from '../waiting/save-decision.ts';
import {
  emptyReading,
  numberOf,
  readingsOf,
  withBlueprint,
  type ReadingForm,
  type WrongRow,
} from './bench-rows.ts';
import { Careful } from './careful.tsx';
import { confirmedReadings, entryDoubts, type EntryDoubts } from './entry-doubts.ts';
import { EntryQuestion } from './entry-question.tsx';
import { numberTrouble, typedIn } from '../in-range.ts';

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

const inKm = typedIn(ranges.distanceM, 'km', 1 / 1000);

const numbersOf = (typed: Circumstances) => ({
  km: numberOf(typed.km),
  room: numberOf(typed.room),
  rested: numberOf(typed.rested),
});

/** What is wrong with the first row that cannot be, in words. */
const rowTrouble = ({ measure, site, unit, field, value }: WrongRow): string => {
  const words = d().bench;
  const named = `${terms().measures[measure]}, ${site}`;
  return field === 'value'
    ? (numberTrouble(named, value, rangeOf(measure, unit)) ?? '')
    : (numberTrouble(
        `${named}, ${words[field]}`,
        value,
        field === 'load' ? ranges.loadN : ranges.benchWidth,
      ) ?? '');
};

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
  const [doubts, setDoubts] = useState<EntryDoubts | null>(null);
  /** Pressed "it is right": the next save asks nothing. */
  const sure = useRef(false);
  const change = (index: number, part: Partial<ReadingForm>) => {
    setDoubts(null);
    setReadings(readings.map((one, other) => (other === index ? { ...one, ...part } : one)));
  };
  const type = (field: keyof Circumstances) => (value: string) =>
    setTyped({ ...typed, [field]: value });
  const numbers = numbersOf(typed);

  const save = async () => {
    if (pair === '') return `${words.pair}: ${d().missing}`;
    if (Number.isNaN(new Date(at).getTime())) return `${words.at}: ${d().missing}`;
    const { km, room, rested } = numbers;
    const trouble =
      numberTrouble(words.distance, arrival ? undefined : km, inKm) ??
      numberTrouble(words.temperature, room, ranges.temperatureC) ??
      numberTrouble(words.rested, rested, ranges.restedH);
    if (trouble !== null) return trouble;
    const read = readingsOf(readings, typed);
    if ('wrong' in read) return rowTrouble(read.wrong);
    const parsed = read.readings;
    if (parsed.length === 0) return `${words.value}: ${d().missing}`;
    const instant = toInstant(new Date(at).getTime());
    const isSure = sure.current;
    sure.current = false;
    const found = entryDoubts(props, [{ pair, at: instant, readings: parsed }], 'typed');
    if (!isSure && found.readings.length + found.gauges.length > 0) {
      setDoubts(found);
      return null;
    }
    const distanceM = arrival ? carried : typeof km === 'number' ? toMetres(km, 'km') : undefined;
    const saved = await saveFromForm('bench-check', {
      project: review.project.id,
      pair,
      at: instant,
      ...(distanceM !== undefined && { distanceM }),
      ...(typeof room === 'number' && { temperatureC: celsius(room) }),
      ...(typeof rested === 'number' && { restedH: rested }),
      ...(typed.operator.trim() !== '' && { operator: typed.operator.trim() }),
      readings: parsed,
      ...(photos.length > 0 && { photos: [...photos] }),
    });
    if (typeof saved === 'string') return saved;
    const { id: record, stamp: judged } = saved.revision;
    await saveDecisions(
      confirmedReadings(
        found.readings,
        { project: review.project.id, record, judged },
        d().waiting.confirmed,
        Date.now(),
      ),
      null,
    );
    close();
    return null;
  };

  return (
    <SmallForm
      save={save}
      {...(doubts && {
        ask: (
          <EntryQuestion
            {...props}
            doubts={doubts}
            onSure={() => (sure.current = true)}
            onCorrect={() => setDoubts(null)}
          />
        ),
      })}
    >
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

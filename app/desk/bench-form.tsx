/** A sample measured on the bench: readings by measure, site and foot, with their circumstances. */
import { useState } from 'preact/hooks';
import {
  measures,
  type Foot,
  type Measure,
  type MeasureUnit,
  type Reading,
  type RecordId,
} from '../../core/records/index.ts';
import { celsius, parseDecimal } from '../../core/units/index.ts';
import { Button, Choice } from '../parts/controls/controls.tsx';
import { toInstant, toLocalMinute } from '../parts/instant.ts';
import { d, t, terms } from '../words/index.ts';
import type { TabProps } from './desk-state.ts';
import {
  DateTimeField,
  saveRecord,
  SelectField,
  SmallForm,
  TextField,
  Unfold,
} from './form-parts.tsx';

/** The unit that a measure is usually given in. */
export const usualUnit: Readonly<Record<Measure, MeasureUnit>> = {
  'stack-height': 'mm',
  hardness: 'asker-c',
  mass: 'g',
  'tread-depth': 'mm',
  'impact-peak': 'N',
  'energy-absorbed': 'J',
  'energy-returned': '%',
  dimension: 'mm',
};

interface ReadingForm {
  readonly measure: Measure;
  readonly site: string;
  readonly foot: Foot;
  readonly value: string;
}

const emptyReading: ReadingForm = {
  measure: 'stack-height',
  site: 'heel-centre',
  foot: 'left',
  value: '',
};

export const BenchForm = ({ review }: TabProps) => {
  const words = d().bench;
  const [pair, setPair] = useState<RecordId | ''>('');
  const [at, setAt] = useState(toLocalMinute(Date.now()));
  const [room, setRoom] = useState('');
  const [rested, setRested] = useState('');
  const [operator, setOperator] = useState('');
  const [gauge, setGauge] = useState('');
  const [readings, setReadings] = useState<readonly ReadingForm[]>([emptyReading]);
  const change = (index: number, part: Partial<ReadingForm>) =>
    setReadings(readings.map((one, other) => (other === index ? { ...one, ...part } : one)));

  const save = async (close: () => void) => {
    if (pair === '') return `${words.pair}: ${d().missing}`;
    const parsed: Reading[] = [];
    for (const { measure, site, foot, value } of readings) {
      const number = parseDecimal(value);
      if (number === null) return `${words.value}: ${d().wrongNumber}`;
      parsed.push({
        measure,
        site,
        foot,
        value: number,
        unit: usualUnit[measure],
        ...(gauge.trim() !== '' && { gauge: gauge.trim() }),
      });
    }
    const temperature = parseDecimal(room);
    const hours = parseDecimal(rested);
    const saved = await saveRecord('bench-check', {
      project: review.project.id,
      pair,
      at: toInstant(new Date(at).getTime()),
      ...(temperature !== null && { temperatureC: celsius(temperature) }),
      ...(hours !== null && { restedH: hours }),
      ...(operator.trim() !== '' && { operator: operator.trim() }),
      readings: parsed,
    });
    if (!saved) return d().trouble;
    setReadings([emptyReading]);
    close();
    return null;
  };

  return (
    <Unfold label={words.add}>
      {(close) => (
        <SmallForm save={() => save(close)}>
          <div class="field-row">
            <SelectField
              label={words.pair}
              value={pair}
              options={review.pairs.map(({ id, code }) => ({ value: id, label: code }))}
              onChange={setPair}
            />
            <DateTimeField label={words.at} value={at} onInput={setAt} />
            <TextField label={words.temperature} value={room} onInput={setRoom} numeric />
            <TextField label={words.rested} value={rested} onInput={setRested} numeric />
            <TextField label={words.operator} value={operator} onInput={setOperator} />
            <TextField label={words.gauge} value={gauge} onInput={setGauge} />
          </div>
          {readings.map((reading, index) => (
            <div class="field-row" key={index}>
              <SelectField
                label={words.reading}
                value={reading.measure}
                options={measures.map((value) => ({ value, label: terms().measures[value] }))}
                onChange={(measure) => change(index, { measure })}
              />
              <TextField
                label={words.site}
                hint={words.siteHint}
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
                label={`${words.value}, ${terms().units[usualUnit[reading.measure]]}`}
                value={reading.value}
                onInput={(value) => change(index, { value })}
                numeric
              />
            </div>
          ))}
          <Button
            kind="quiet"
            onClick={() =>
              setReadings([...readings, { ...(readings.at(-1) ?? emptyReading), value: '' }])
            }
          >
            {words.addReading}
          </Button>
        </SmallForm>
      )}
    </Unfold>
  );
};

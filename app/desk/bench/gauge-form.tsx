/** A new gauge study: its readings typed into a grid of operators, trials and parts, pasted, or read from a table. */
import { useState } from 'preact/hooks';
import {
  isIn,
  measures,
  rangeOf,
  ranges,
  unitsOf,
  type GaugeStudy,
  type Measure,
  type MeasureUnit,
} from '../../../core/records/index.ts';
import { parseDecimal } from '../../../core/units/index.ts';
import { toInstant } from '../../parts/instant.ts';
import { d, terms } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { saveFromForm, SelectField, SmallForm, TextField, Unfold } from '../form-parts.tsx';
import { numberTrouble } from '../in-range.ts';
import type { ReadGaugeTable } from './gauge-csv.ts';
import { FromTable } from './gauge-table.tsx';

/** The handbook's usual design, and the most that a grid holds. */
const usual = { parts: 10, operators: 3, trials: 3 } as const;
const most = { parts: 20, operators: 6, trials: 5 } as const;
type Size = Record<keyof typeof usual, number>;

const upTo = (least: number, greatest: number) =>
  Array.from({ length: greatest - least + 1 }, (_, at) => String(least + at)).map((value) => ({
    value,
    label: value,
  }));

const count = (many: number) => Array.from({ length: many }, (_, at) => at);
const keyOf = (operator: number, trial: number, part: number) => `${operator} ${trial} ${part}`;

export const GaugeForm = (props: TabProps) => (
  <Unfold label={d().blueprint.gaugeAdd}>
    {(close) => <StudyForm {...props} close={close} />}
  </Unfold>
);

const StudyForm = ({ review, close }: TabProps & { readonly close: () => void }) => {
  const words = d().blueprint;
  const [gauge, setGauge] = useState('');
  const [measure, setMeasure] = useState<Measure>('dimension');
  const [unit, setUnit] = useState<MeasureUnit>('mm');
  const [site, setSite] = useState('');
  const [width, setWidth] = useState('');
  const [size, setSize] = useState<Size>(usual);
  const [names, setNames] = useState<Readonly<Record<number, string>>>({});
  const [cells, setCells] = useState<Readonly<Record<string, string>>>({});
  const [table, setTable] = useState<ReadGaugeTable | null>(null);

  const operatorName = (at: number) => names[at]?.trim() || words.operator(at + 1);
  const typed = (): GaugeStudy['readings'] | null => {
    const readings: GaugeStudy['readings'] = [];
    for (const operator of count(size.operators))
      for (const trial of count(size.trials))
        for (const part of count(size.parts)) {
          const said = (cells[keyOf(operator, trial, part)] ?? '').trim();
          const value = parseDecimal(said);
          if (value === null && said !== '') return null;
          if (value !== null)
            readings.push({ part: words.part(part + 1), operator: operatorName(operator), value });
        }
    return readings;
  };
  const save = async () => {
    const possible = rangeOf(measure, unit);
    const toleranceWidth = width.trim() === '' ? undefined : parseDecimal(width);
    if (gauge.trim() === '') return `${d().bench.gauge}: ${d().missing}`;
    const widths = { ...ranges.toleranceWidth, most: possible.most, unit };
    const wrong = numberTrouble(words.toleranceWidth, toleranceWidth, widths);
    if (wrong !== null || toleranceWidth === null) return wrong;
    const fromTable = table && table.readings.length > 0 ? table.readings : null;
    const operators = new Set(count(size.operators).map(operatorName));
    if (!fromTable && operators.size < size.operators) return words.sameName;
    const readings = fromTable ?? typed();
    if (readings === null) return `${words.grid}: ${d().wrongNumber}`;
    const impossible = readings.find(({ value }) => !isIn(value, possible));
    if (impossible)
      return numberTrouble(
        `${impossible.part}, ${impossible.operator}`,
        impossible.value,
        possible,
      );
    if (readings.length < 4) return `${words.grid}: ${d().missing}`;
    const saved = await saveFromForm('gauge-study', {
      project: review.project.id,
      at: toInstant(Date.now()),
      gauge: gauge.trim(),
      measure,
      unit,
      ...(site.trim() !== '' && { site: site.trim() }),
      ...(toleranceWidth !== undefined && { toleranceWidth }),
      readings,
    });
    if (typeof saved === 'string') return saved;
    close();
    return null;
  };
  return (
    <SmallForm save={save}>
      <div class="field-row">
        <TextField label={d().bench.gauge} value={gauge} onInput={setGauge} />
        <SelectField
          label={d().bench.reading}
          value={measure}
          options={measures.map((value) => ({ value, label: terms().measures[value] }))}
          onChange={(value) => {
            setMeasure(value);
            setUnit(unitsOf[value][0]);
          }}
        />
        <SelectField
          label={d().rounds.unit}
          value={unit}
          options={unitsOf[measure].map((value) => ({ value, label: terms().units[value] }))}
          onChange={setUnit}
        />
        <TextField
          label={d().bench.site}
          optional={words.everySite}
          value={site}
          onInput={setSite}
        />
        <TextField
          label={`${words.toleranceWidth}, ${terms().units[unit]}`}
          value={width}
          onInput={setWidth}
          numeric
          optional
        />
      </div>
      {(table === null || table.readings.length === 0) && (
        <>
          <h3>{words.typeIn}</h3>
          <div class="field-row">
            {(['parts', 'operators', 'trials'] as const).map((field) => (
              <SelectField
                key={field}
                label={words[field]}
                value={String(size[field])}
                options={upTo(2, most[field])}
                onChange={(value) => setSize({ ...size, [field]: Number(value) })}
              />
            ))}
          </div>
          <div class="table-wrap" tabIndex={0} role="region" aria-label={words.grid}>
            <table class="grid">
              <thead>
                <tr>
                  <th scope="col">{words.operators}</th>
                  <th scope="col">{words.trials}</th>
                  {count(size.parts).map((part) => (
                    <th scope="col" key={part}>
                      {words.part(part + 1)}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {count(size.operators).flatMap((operator) =>
                  count(size.trials).map((trial) => (
                    <tr key={`${operator} ${trial}`}>
                      <td>
                        {trial === 0 ? (
                          <input
                            class="input"
                            aria-label={words.operatorName(operator + 1)}
                            placeholder={words.operator(operator + 1)}
                            value={names[operator] ?? ''}
                            onInput={(event) =>
                              setNames({ ...names, [operator]: event.currentTarget.value })
                            }
                          />
                        ) : (
                          <span class="soft">{operatorName(operator)}</span>
                        )}
                      </td>
                      <th scope="row">{words.trial(trial + 1)}</th>
                      {count(size.parts).map((part) => (
                        <td key={part}>
                          <input
                            class="input"
                            inputMode="decimal"
                            autocomplete="off"
                            aria-label={words.cell(
                              operatorName(operator),
                              trial + 1,
                              words.part(part + 1),
                            )}
                            value={cells[keyOf(operator, trial, part)] ?? ''}
                            onInput={(event) =>
                              setCells({
                                ...cells,
                                [keyOf(operator, trial, part)]: event.currentTarget.value,
                              })
                            }
                          />
                        </td>
                      ))}
                    </tr>
                  )),
                )}
              </tbody>
            </table>
          </div>
        </>
      )}
      <FromTable table={table} onRead={setTable} />
    </SmallForm>
  );
};

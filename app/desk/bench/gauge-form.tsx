/** A new gauge study: its readings typed into a grid of operators, trials and parts, pasted, or read from a table. */
import { useState } from 'preact/hooks';
import { measures, unitsOf } from '../../../core/records/index.ts';
import { toInstant } from '../../parts/instant.ts';
import {
  gridKey,
  mostOfGrid,
  newGaugeDraft,
  operatorOf,
  typedStudy,
  type GaugeDraft,
  type GaugeTrouble,
} from '../../drafts/gauge.ts';
import type { ReadGaugeTable } from '../../drafts/gauge-table.ts';
import { d, terms } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { saveFromForm, SelectField, SmallForm, TextField, Unfold } from '../parts/form-parts.tsx';
import { numberTrouble } from '../parts/in-range.ts';

import { FromTable } from './gauge-table.tsx';

const upTo = (least: number, greatest: number) =>
  Array.from({ length: greatest - least + 1 }, (_, at) => String(least + at)).map((value) => ({
    value,
    label: value,
  }));

const count = (many: number) => Array.from({ length: many }, (_, at) => at);

/** What is wrong, in words; empty only where nothing is. */
const troubleInWords = (trouble: GaugeTrouble): string => {
  const words = d().blueprint;
  switch (trouble.what) {
    case 'no-gauge':
      return `${d().bench.gauge}: ${d().missing}`;
    case 'tolerance-width':
      return numberTrouble(words.toleranceWidth, trouble.value, trouble.range) ?? '';
    case 'same-name':
      return words.sameName;
    case 'no-number':
      return `${words.grid}: ${d().wrongNumber}`;
    case 'reading': {
      const { part, operator, value } = trouble.reading;
      return numberTrouble(`${part}, ${operator}`, value, trouble.range) ?? '';
    }
    case 'too-few':
      return `${words.grid}: ${d().missing}`;
  }
};

export const GaugeForm = (props: TabProps) => (
  <Unfold label={d().blueprint.gaugeAdd}>
    {(close) => <StudyForm {...props} close={close} />}
  </Unfold>
);

const StudyForm = ({ review, close }: TabProps & { readonly close: () => void }) => {
  const words = d().blueprint;
  const [draft, setDraft] = useState<GaugeDraft>(newGaugeDraft);
  const [table, setTable] = useState<ReadGaugeTable | null>(null);
  const { measure, unit, size, names, cells } = draft;
  const put = (part: Partial<GaugeDraft>) => setDraft({ ...draft, ...part });
  const operatorName = (at: number) => operatorOf(draft, at, words);
  const save = async () => {
    const typed = { ...draft, table: table?.readings ?? [] };
    const read = typedStudy(typed, review.project.id, toInstant(Date.now()), words);
    if ('trouble' in read) return troubleInWords(read.trouble);
    const saved = await saveFromForm('gauge-study', read.study);
    if (typeof saved === 'string') return saved;
    close();
    return null;
  };
  return (
    <SmallForm save={save}>
      <div class="field-row">
        <TextField
          label={d().bench.gauge}
          value={draft.gauge}
          onInput={(gauge) => put({ gauge })}
        />
        <SelectField
          label={d().bench.reading}
          value={measure}
          options={measures.map((value) => ({ value, label: terms().measures[value] }))}
          onChange={(value) => {
            put({ measure: value, unit: unitsOf[value][0] });
          }}
        />
        <SelectField
          label={d().rounds.unit}
          value={unit}
          options={unitsOf[measure].map((value) => ({ value, label: terms().units[value] }))}
          onChange={(chosen) => put({ unit: chosen })}
        />
        <TextField
          label={d().bench.site}
          optional={words.everySite}
          value={draft.site}
          onInput={(site) => put({ site })}
        />
        <TextField
          label={`${words.toleranceWidth}, ${terms().units[unit]}`}
          value={draft.toleranceWidth}
          onInput={(toleranceWidth) => put({ toleranceWidth })}
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
                options={upTo(2, mostOfGrid[field])}
                onChange={(value) => put({ size: { ...size, [field]: Number(value) } })}
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
                              put({ names: { ...names, [operator]: event.currentTarget.value } })
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
                            value={cells[gridKey(operator, trial, part)] ?? ''}
                            onInput={(event) =>
                              put({
                                cells: {
                                  ...cells,
                                  [gridKey(operator, trial, part)]: event.currentTarget.value,
                                },
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

/** A new gauge study: its readings typed into a grid of operators, trials and parts, pasted, or read from a table. */
import { useState } from 'preact/hooks';
import { measures, unitsOf } from '../../../core/records/index.ts';
import type { ReadGaugeTable } from '../../drafts/gauge-table.ts';
import {
  mostOfGrid,
  newGaugeDraft,
  typedStudy,
  type GaugeDraft,
  type GaugeTrouble,
} from '../../drafts/gauge.ts';
import { gaugeSchema } from '../../drafts/kept.ts';
import { Notice } from '../../parts/controls/controls.tsx';
import { toInstant } from '../../parts/instant.ts';
import { clauses, d, terms } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { saveFromForm, SelectField, SmallForm, TextField, Unfold } from '../parts/form-parts.tsx';
import { sayRange } from '../parts/in-range.ts';
import { useKept } from '../../parts/kept.tsx';
import { FromTable } from './gauge-table.tsx';
import { GaugeGrid } from './gauge-grid.tsx';

const upTo = (least: number, greatest: number) =>
  Array.from({ length: greatest - least + 1 }, (_, at) => String(least + at)).map((value) => ({
    value,
    label: value,
  }));

/** What is wrong, in words, by where it is said. */
const errorsOf = (troubles: readonly GaugeTrouble[], lines: readonly number[]) => {
  const words = d().blueprint;
  const cells = new Map<string, string>();
  const names = new Map<number, string>();
  const table: string[] = [];
  let gauge: string | undefined;
  let width: string | undefined;
  let tooFew = false;
  const said = ({ value, range }: Pick<GaugeTrouble & { what: 'cell' }, 'value' | 'range'>) =>
    value === null ? d().wrongNumber : sayRange(range);
  for (const trouble of troubles)
    switch (trouble.what) {
      case 'no-gauge':
        gauge = d().missing;
        break;
      case 'tolerance-width':
        width = said(trouble);
        break;
      case 'same-name':
        names.set(trouble.operator, words.sameName);
        break;
      case 'cell':
        cells.set(trouble.key, said(trouble));
        break;
      case 'table':
        table.push(
          d().bench.lineTrouble(lines[trouble.at] ?? 0, 'value', '', sayRange(trouble.range)),
        );
        break;
      case 'too-few':
        tooFew = true;
    }
  return { cells, names, table, gauge, width, tooFew };
};

export const GaugeForm = (props: TabProps) => (
  <Unfold label={d().blueprint.gaugeAdd}>
    {(close) => <StudyForm {...props} close={close} />}
  </Unfold>
);

const StudyForm = ({ review, close }: TabProps & { readonly close: () => void }) => {
  const words = d().blueprint;
  const kept = useKept<GaugeDraft>({
    key: `new gauge-study ${review.project.id}`,
    schema: gaugeSchema,
    begin: () => newGaugeDraft,
  });
  const { draft, setDraft } = kept;
  const [table, setTable] = useState<ReadGaugeTable | null>(null);
  /** Saving was tried: from then on each field says what is wrong with it. */
  const [tried, setTried] = useState(false);
  const [failed, setFailed] = useState(false);
  const { measure, unit, size } = draft;
  const put = (part: Partial<GaugeDraft>) => setDraft((now) => ({ ...now, ...part }));
  const read = typedStudy(
    { ...draft, table: table?.readings ?? [] },
    review.project.id,
    toInstant(Date.now()),
    words,
  );
  const errors = errorsOf(tried && 'troubles' in read ? read.troubles : [], table?.lines ?? []);
  const save = async () => {
    setTried(true);
    if ('troubles' in read) return '';
    const saved = await saveFromForm('gauge-study', read.study);
    if (typeof saved === 'string') return saved;
    await kept.done();
    close();
    return null;
  };
  return (
    <SmallForm save={save} kept={kept}>
      <div class="field-row">
        <TextField
          label={d().bench.gauge}
          value={draft.gauge}
          onInput={(gauge) => put({ gauge })}
          error={errors.gauge}
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
          label={clauses(words.toleranceWidth, terms().units[unit])}
          value={draft.toleranceWidth}
          onInput={(toleranceWidth) => put({ toleranceWidth })}
          error={errors.width}
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
          <p class="soft small">{words.gridHint}</p>
          <GaugeGrid
            draft={draft}
            onChange={(next) => setDraft(() => next)}
            onFail={() => setFailed(true)}
            cellErrors={errors.cells}
            nameErrors={errors.names}
          />
          {failed && (
            <Notice tone="danger" live>
              {d().trouble}
            </Notice>
          )}
        </>
      )}
      <FromTable table={table} troubles={errors.table} onRead={setTable} />
      {errors.tooFew && (
        <p class="field-error" aria-invalid tabIndex={-1}>
          {words.tooFew}
        </p>
      )}
    </SmallForm>
  );
};

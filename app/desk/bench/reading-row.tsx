/** One reading of a check as it is typed. */
import { measures, unitsOf } from '../../../core/records/index.ts';
import { Button, Choice } from '../../parts/controls/controls.tsx';
import { clauses, d, t, terms } from '../../words/index.ts';
import { SelectField, TextField } from '../parts/form-parts.tsx';
import type { ReadingForm } from '../../drafts/check-readings.ts';
import type { RowErrors } from './check-errors.ts';

export const ReadingRow = (props: {
  readonly reading: ReadingForm;
  /** Place among the readings, from 0. */
  readonly at: number;
  readonly only: boolean;
  /** What is wrong with its fields, in words. */
  readonly errors: RowErrors;
  readonly onChange: (part: Partial<ReadingForm>) => void;
  readonly onRemove: () => void;
}) => {
  const { reading, at, only, errors, onChange, onRemove } = props;
  const words = d().bench;
  return (
    <fieldset class="field-row reading">
      <legend class="hidden-words">{`${words.reading} ${at + 1}`}</legend>
      <SelectField
        label={words.reading}
        value={reading.measure}
        options={measures.map((value) => ({ value, label: terms().measures[value] }))}
        onChange={(measure) => onChange({ measure, unit: unitsOf[measure][0] })}
      />
      <TextField label={words.site} value={reading.site} onInput={(site) => onChange({ site })} />
      <Choice
        label={words.foot}
        options={[
          { value: 'left', label: t().left },
          { value: 'right', label: t().right },
        ]}
        value={reading.foot}
        onChange={(foot) => onChange({ foot })}
      />
      <TextField
        label={clauses(words.value, terms().units[reading.unit])}
        value={reading.value}
        onInput={(value) => onChange({ value })}
        numeric
        error={errors.value}
        required={only}
      />
      {unitsOf[reading.measure].length > 1 && (
        <SelectField
          label={d().rounds.unit}
          value={reading.unit}
          options={unitsOf[reading.measure].map((value) => ({
            value,
            label: terms().units[value],
          }))}
          onChange={(unit) => onChange({ unit })}
        />
      )}
      <TextField
        label={clauses(words.uncertainty, terms().units[reading.unit])}
        value={reading.uncertainty}
        error={errors.uncertainty}
        onInput={(uncertainty) => onChange({ uncertainty })}
        numeric
        optional
      />
      <TextField
        label={words.load}
        value={reading.load}
        error={errors.load}
        onInput={(load) => onChange({ load })}
        numeric
        optional
      />
      {!only && (
        <Button kind="quiet" onClick={onRemove}>
          {t().remove}
        </Button>
      )}
    </fieldset>
  );
};

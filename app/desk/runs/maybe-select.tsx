/** A select in which nothing may be chosen: not said. */
import { Field } from '../../parts/controls/controls.tsx';
import { p } from '../../words/index.ts';

export const MaybeSelect = <T extends string>(props: {
  readonly label: string;
  readonly value: T | null;
  readonly options: readonly (readonly [T, string])[];
  readonly error?: string | undefined;
  readonly onChange: (value: T | null) => void;
}) => (
  <Field label={props.label} error={props.error}>
    {(ids) => (
      <select
        class="input"
        {...ids}
        value={props.value ?? ''}
        onChange={(event) =>
          props.onChange(event.currentTarget.value === '' ? null : (event.currentTarget.value as T))
        }
      >
        <option value="">{p().runs.form.unsaid}</option>
        {props.options.map(([value, label]) => (
          <option key={value} value={value}>
            {label}
          </option>
        ))}
      </select>
    )}
  </Field>
);

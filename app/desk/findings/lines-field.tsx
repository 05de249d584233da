/** Several lines that a person writes, one statement each. */
import { Field } from '../../parts/controls/controls.tsx';
import { labelOf } from '../parts/form-parts.tsx';

export const LinesField = (props: {
  readonly label: string;
  readonly value: string;
  readonly onInput: (value: string) => void;
  readonly optional?: boolean;
  /** What is wrong with it. */
  readonly error?: string | undefined;
}) => (
  <Field label={labelOf(props.label, props.optional)} error={props.error}>
    {(ids) => (
      <textarea
        class="input"
        rows={4}
        required={!props.optional}
        {...ids}
        value={props.value}
        onInput={(event) => props.onInput(event.currentTarget.value)}
      />
    )}
  </Field>
);

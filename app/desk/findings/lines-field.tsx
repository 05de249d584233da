/** Several lines that a person writes, one statement each. */
import { Field } from '../../parts/controls/controls.tsx';
import { labelOf } from '../form-parts.tsx';

/** The lines of a text, trimmed, without empty ones. */
export const linesOf = (text: string): string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

export const LinesField = (props: {
  readonly label: string;
  readonly value: string;
  readonly onInput: (value: string) => void;
  readonly optional?: boolean;
}) => (
  <Field label={labelOf(props.label, props.optional)}>
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

/** Narrows a list to one of some, or shows every one. */
import { Select, type Option } from '../parts/options.tsx';

export const Pick = <T extends string>(props: {
  readonly label: string;
  /** Null: every one. */
  readonly value: T | null;
  /** The choice of every one; absent: it is among the options. */
  readonly every?: string;
  readonly options: readonly Option<T>[];
  readonly onChoose: (value: T | null) => void;
}) => (
  <Select<T | ''>
    class="input"
    aria-label={props.label}
    value={props.value ?? ''}
    options={[
      ...(props.every === undefined ? [] : [{ value: '' as const, label: props.every }]),
      ...props.options,
    ]}
    onChoose={(value) => props.onChoose(value === '' ? null : value)}
  />
);

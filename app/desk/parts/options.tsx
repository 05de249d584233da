/** The options of a choice that may be of a thousand pairs: a part at a time, the page answers between. */
import { useEffect, useState } from 'preact/hooks';

const AT_ONCE = 250;

export interface Option<T extends string = string> {
  readonly value: T;
  readonly label: string;
}

/** @param value what is chosen: its option is there from the start */
export const Options = (props: { readonly of: readonly Option[]; readonly value: string }) => {
  const { of, value } = props;
  const [up, setUp] = useState(AT_ONCE);
  useEffect(() => {
    if (up >= of.length) return;
    const timer = setTimeout(() => setUp(up + AT_ONCE));
    return () => clearTimeout(timer);
  }, [up, of.length]);
  return (
    <>
      {of.map(
        (one, at) =>
          (at < up || one.value === value) && (
            <option key={one.value} value={one.value}>
              {one.label}
            </option>
          ),
      )}
    </>
  );
};

/** A native choice of one of some. */
export const Select = <T extends string>(props: {
  readonly class?: string;
  readonly id?: string;
  readonly 'aria-label'?: string;
  readonly 'aria-describedby'?: string;
  readonly 'aria-invalid'?: true;
  readonly required?: boolean;
  readonly value: T;
  readonly options: readonly Option<T>[];
  readonly onChoose: (value: T) => void;
}) => {
  const { options, onChoose, ...rest } = props;
  return (
    <select {...rest} onChange={(event) => onChoose(event.currentTarget.value as T)}>
      <Options of={options} value={props.value} />
    </select>
  );
};

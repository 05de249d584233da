/** The options of a choice that may be of a thousand pairs: a part at a time, the page answers between. */
import { useEffect, useState } from 'preact/hooks';

const AT_ONCE = 250;

export interface Option {
  readonly value: string;
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

/** What a list is searched by. */
import type { RefObject } from 'preact';
import { useTyped } from './use-typed.ts';

export const FindField = (props: {
  readonly label: string;
  readonly value: string;
  readonly onFind: (text: string) => void;
  readonly field?: RefObject<HTMLInputElement | null>;
}) => {
  const [typed, setTyped] = useTyped(props.value, props.onFind);
  return (
    <input
      class="input"
      type="search"
      ref={props.field ?? null}
      aria-label={props.label}
      placeholder={props.label}
      value={typed}
      onInput={(event) => setTyped(event.currentTarget.value)}
    />
  );
};

/** Words up to a limit, which is told before it is reached: nothing is cut in silence. */
import type { TargetedClipboardEvent } from 'preact';
import { useState } from 'preact/hooks';
import { entryWords } from '../../words/index.ts';
import { formatNumber } from '../format.ts';
import { Field } from './controls.tsx';

/** From so many characters before the limit on it is told how many are left. Judgement, no source. */
const NEAR = 100;

type Control = HTMLInputElement | HTMLTextAreaElement;

interface Limit {
  /** What keeps the control within its limit. */
  readonly limits: {
    readonly maxLength: number;
    readonly onPaste: (event: TargetedClipboardEvent<Control>) => void;
  };
  /** How near the limit is, and what of a pasted text did not fit; null while there is room. */
  readonly note: string | null;
}

/** How near a text is to its limit. The browser cuts what is pasted beyond it: how much of it, is told. */
export const useLimit = (value: string, most: number): Limit => {
  const words = entryWords().limit;
  // Told as long as the text is the one that the paste left.
  const [cut, setCut] = useState({ count: 0, text: '' });
  const left = most - value.length;
  return {
    limits: {
      maxLength: most,
      onPaste({ currentTarget, clipboardData }) {
        const { selectionStart, selectionEnd, value: before } = currentTarget;
        const pasted = clipboardData?.getData('text').replaceAll('\r\n', '\n') ?? '';
        const head = before.slice(0, selectionStart ?? 0);
        const tail = before.slice(selectionEnd ?? 0);
        const room = most - head.length - tail.length;
        setCut({ count: pasted.length - room, text: head + pasted.slice(0, room) + tail });
      },
    },
    note:
      left > NEAR
        ? null
        : left > 0
          ? words.left(left)
          : cut.count > 0 && cut.text === value
            ? words.cut(formatNumber(most, 0), formatNumber(cut.count, 0))
            : words.reached(formatNumber(most, 0)),
  };
};

/** One line of words, or several with `rows`. */
export const LimitedField = (props: {
  readonly label: string;
  readonly value: string;
  readonly onInput: (value: string) => void;
  readonly most: number;
  readonly rows?: number;
  readonly error?: string | null;
}) => {
  const { value, rows, onInput } = props;
  const { limits, note } = useLimit(value, props.most);
  return (
    <div class="stack">
      <Field label={props.label} error={props.error}>
        {(ids) =>
          rows === undefined ? (
            <input
              class="input"
              {...ids}
              {...limits}
              value={value}
              onInput={(event) => onInput(event.currentTarget.value)}
            />
          ) : (
            <textarea
              class="input"
              rows={rows}
              {...ids}
              {...limits}
              value={value}
              onInput={(event) => onInput(event.currentTarget.value)}
            />
          )
        }
      </Field>
      <p class="small" role="status" hidden={note === null}>
        {note}
      </p>
    </div>
  );
};

/** The first of a long list, and a button for the next: a thousand rows at once would stall the screen. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { Button } from '../../parts/controls/controls.tsx';
import { d } from '../../words/index.ts';

export const Some = <T,>(props: {
  readonly of: readonly T[];
  readonly children: (one: T) => ComponentChildren;
  /** How many at a time. */
  readonly step?: number;
  /** In a table: the columns that the button's row spans. */
  readonly columns?: number;
}) => {
  const { of, step = 50, columns } = props;
  const [shown, setShown] = useState(step);
  const left = of.length - shown;
  const more = left > 0 && (
    <>
      <Button kind="quiet" onClick={() => setShown(shown + step)}>
        {d().more(Math.min(step, left), left)}
      </Button>
      <span class="only-print">{d().notPrinted(left)}</span>
    </>
  );
  return (
    <>
      {of.slice(0, shown).map(props.children)}
      {more &&
        (columns === undefined ? (
          <li class="plain">{more}</li>
        ) : (
          <tr>
            <td colSpan={columns}>{more}</td>
          </tr>
        ))}
    </>
  );
};

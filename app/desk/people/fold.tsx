/** Something that is looked at now and then: drawn, and asked of the log, only once it is opened. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

export const Fold = (props: { readonly title: string; readonly children: ComponentChildren }) => {
  const [opened, setOpened] = useState(false);
  return (
    <details class="how-sure" onToggle={(event) => event.currentTarget.open && setOpened(true)}>
      <summary>{props.title}</summary>
      {opened && <div class="people-fold">{props.children}</div>}
    </details>
  );
};

/** Folded until somebody wants it: drawn, and asked of the log, only once it is opened. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

export const OnceOpened = (props: {
  readonly title: string;
  readonly class?: string;
  readonly bodyClass?: string;
  readonly children: ComponentChildren | (() => ComponentChildren);
}) => {
  const { title, bodyClass, children } = props;
  const [opened, setOpened] = useState(false);
  return (
    <details
      class={`how-sure ${props.class ?? ''}`.trim()}
      onToggle={(event) => event.currentTarget.open && setOpened(true)}
    >
      <summary>{title}</summary>
      {opened && (
        <div class={bodyClass}>{typeof children === 'function' ? children() : children}</div>
      )}
    </details>
  );
};

/** A change in figures, behind a fold until it is said: what is measured later can only be measured against figures. */
import { useState } from 'preact/hooks';
import type { ComponentChildren } from 'preact';
import { saysChange, type ChangeFormDraft } from '../../drafts/change.ts';
import { ChangeFields } from '../../parts/change-fields.tsx';
import { p, proposeWords } from '../../words/index.ts';

export const InFigures = (props: {
  readonly draft: ChangeFormDraft;
  readonly set: (draft: ChangeFormDraft) => void;
  readonly troubles: readonly { readonly field: string }[];
  /** What else is asked of a change in figures. */
  readonly children?: ComponentChildren;
}) => {
  const { draft, set, troubles } = props;
  // Open from the beginning where something is said; what a person opens stays open while they type.
  const [open, setOpen] = useState(saysChange(draft));
  return (
    <details class="in-figures" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary class="button button-quiet">{p().changes.sayInFigures}</summary>
      {open && (
        <div class="stack">
          <p class="soft small">{proposeWords().changeHint}</p>
          <ChangeFields draft={draft} set={set} troubles={troubles} noPart />
          {props.children}
        </div>
      )}
    </details>
  );
};

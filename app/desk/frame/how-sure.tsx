/** The figures, the method and the source behind an answer: folded, and one press away. */
import type { ComponentChildren } from 'preact';
import { p } from '../../words/index.ts';

export const HowSure = (props: {
  readonly title?: string;
  readonly children: ComponentChildren;
}) => (
  <details class="how-sure">
    <summary>{props.title ?? p().frame.howSure}</summary>
    <div class="how-sure-body">{props.children}</div>
  </details>
);

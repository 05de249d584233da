/** The figures, the method and the source behind an answer: folded, and one press away. */
import type { ComponentChildren } from 'preact';
import { p } from '../../words/index.ts';
import { OnceOpened } from './once-opened.tsx';

export const HowSure = (props: {
  readonly title?: string;
  readonly children: ComponentChildren;
}) => (
  <OnceOpened title={props.title ?? p().frame.howSure} bodyClass="how-sure-body">
    {props.children}
  </OnceOpened>
);
